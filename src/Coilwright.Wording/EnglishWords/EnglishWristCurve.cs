namespace Coilwright.Wording.EnglishWords;

/// <summary>English words on the lining-up curve.</summary>
internal static class EnglishWristCurve
{
    internal static WristCurveWords Make() => new()
    {
        Title = "Lining up from wrist to wrist",
        LinesUp = "lines up",
        Mixed = "mixed",
        Shows = "How much lies over its own kind, on wrists from {from} to {to}.",
        Fails = "Not as wished from {from} to {to}.",
    };
}
