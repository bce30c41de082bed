namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CureWords"/>.</summary>
internal static class GermanBenchCure
{
    internal static CureWords Make() => new()
    {
        TryIt = "Ausprobieren: {cure}",
        Brings = "Dann kommt das: {notices}.",
        SettleAnew = "Ob eine Änderung hilft, zeigt sich, wenn du wieder ansiehst, wie es sitzt.",
        Tried = "Ausprobiert: {cure}.",
        TakeBack = "Wieder wie vorher",
    };
}
