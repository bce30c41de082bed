namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="StandInsWords"/>.</summary>
internal static class GermanBenchStandIns
{
    internal static StandInsWords Make() => new()
    {
        Open = "Was sonst ginge",
        Hint = "Gesucht wird im Vorrat und in deinen anderen Stücken. Das Stück wird mit jeder neu gerechnet.",
        Looking = "Es wird gesucht …",
        Have = "{have} im Vorrat.",
        WhatItDoes = "Was sie am Stück ändert",
        String = "Stattdessen auffädeln",
    };
}
