namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CureWords"/>.</summary>
internal static class EnglishBenchCure
{
    internal static CureWords Make() => new()
    {
        TryIt = "Try it: {cure}",
        Brings = "Then this comes: {notices}.",
        Tried = "Tried: {cure}.",
        TakeBack = "Back to how it was",
    };
}
