namespace Coilwright.Wording;

/// <summary>Beads that may stand in for another, on the bench.</summary>
public sealed record StandInsWords
{
    /// <summary>Opens it.</summary>
    public required string Open { get; init; }

    /// <summary>What is looked through.</summary>
    public required string Hint { get; init; }

    /// <summary>It is being looked for.</summary>
    public required string Looking { get; init; }

    /// <summary>So many are in stock: {have}.</summary>
    public required string Have { get; init; }

    /// <summary>Opens what the piece then is.</summary>
    public required string WhatItDoes { get; init; }

    /// <summary>Strings it in place of the other.</summary>
    public required string String { get; init; }
}
