namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="WristWords"/>.</summary>
internal static class EnglishBenchWrist
{
    internal static WristWords Make() => new()
    {
        Heading = "On the wrist",
        Slider = "Wrist",
        Typed = "Wrist, typed",
        TypedHint = "In millimetres or inches: 165, 6 1/2 in",
        TypedWrong = "Type a length from {min} to {max}, as 165 or 6 1/2 in.",
        Smaller = "One millimetre smaller",
        Larger = "One millimetre larger",
        Back = "Back to {mm:length}",
        Elsewhere = "The piece is made for {mm:length}; this is how it looks on another wrist.",
    };
}
