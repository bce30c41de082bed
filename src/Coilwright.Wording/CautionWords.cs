namespace Coilwright.Wording;

/// <summary>The cautions that must stand wherever they apply. One sentence or two each, whole in themselves.</summary>
public sealed record CautionWords
{
    /// <summary>Memory wire: what it is cut with.</summary>
    public required string Cutters { get; init; }

    /// <summary>Memory wire: cut pieces fly.</summary>
    public required string FlyingPieces { get; init; }

    /// <summary>Memory wire: the coil is not pulled straight.</summary>
    public required string Springs { get; init; }

    /// <summary>Memory wire: sharp ends.</summary>
    public required string SharpEnds { get; init; }

    /// <summary>Memory wire: children make pieces with an adult.</summary>
    public required string AdultCuts { get; init; }

    /// <summary>Every loose bead is a small part.</summary>
    public required string SmallParts { get; init; }

    /// <summary>Metals: flagged, never claimed to comply.</summary>
    public required string Metals { get; init; }

    /// <summary>The cautions of work with memory wire, in the order they are met.</summary>
    public IReadOnlyList<string> OfMemoryWire => [Cutters, FlyingPieces, Springs, SharpEnds, AdultCuts];
}
