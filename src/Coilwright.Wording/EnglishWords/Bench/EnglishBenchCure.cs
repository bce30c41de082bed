namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="CureWords"/>.</summary>
internal static class EnglishBenchCure
{
    internal static CureWords Make() => new()
    {
        TryIt = "Try it: {cure}",
        Brings = "Then this comes: {notices}.",
        SettleAnew = "Whether a change helps shows once you look again how it sits.",
        Tried = "Tried: {cure}.",
        TakeBack = "Back to how it was",
    };
}
