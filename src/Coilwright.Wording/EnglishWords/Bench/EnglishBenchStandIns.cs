namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="StandInsWords"/>.</summary>
internal static class EnglishBenchStandIns
{
    internal static StandInsWords Make() => new()
    {
        Open = "What else would do",
        Hint = "Looked for in stock and in your other pieces. The piece is reckoned again with each.",
        Looking = "Looking…",
        Have = "{have} in stock.",
        WhatItDoes = "What it does to the piece",
        String = "String it instead",
    };
}
