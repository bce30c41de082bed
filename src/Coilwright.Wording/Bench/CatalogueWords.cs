using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>The small catalogue of beads, and the beads of her other pieces.</summary>
public sealed record CatalogueWords
{
    /// <summary>Opens it.</summary>
    public required string Open { get; init; }

    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What is searched by.</summary>
    public required string Search { get; init; }

    /// <summary>Where the beads come from: the choice.</summary>
    public required string From { get; init; }

    /// <summary>From the catalogue.</summary>
    public required string OfTheTrade { get; init; }

    /// <summary>From her other pieces.</summary>
    public required string OfMyPieces { get; init; }

    /// <summary>How to go on from there.</summary>
    public required string Hint { get; init; }

    /// <summary>None has these words.</summary>
    public required string None { get; init; }

    /// <summary>More than are shown have these words: {more}.</summary>
    public required string More { get; init; }

    /// <summary>A kind and its size: {kind}, {label}.</summary>
    public required string Name { get; init; }

    /// <summary>In a piece: {piece}.</summary>
    public required string InPiece { get; init; }

    /// <summary>Closes it.</summary>
    public required string Close { get; init; }

    /// <summary>What each kind is called.</summary>
    public required FrozenDictionary<string, string> Kinds { get; init; }

    /// <summary>Other words by which each kind is looked for.</summary>
    public required FrozenDictionary<string, string> OtherWords { get; init; }
}
