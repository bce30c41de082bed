namespace Coilwright.Wording;

/// <summary>The page of two versions side by side.</summary>
public sealed record CompareWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>The way to it.</summary>
    public required string Link { get; init; }

    /// <summary>What is seen.</summary>
    public required string Lead { get; init; }

    /// <summary>Chooses the one.</summary>
    public required string One { get; init; }

    /// <summary>Chooses the other.</summary>
    public required string Other { get; init; }

    /// <summary>What comes out otherwise: heading.</summary>
    public required string Differs { get; init; }

    /// <summary>Nothing does.</summary>
    public required string Same { get; init; }

    /// <summary>Beads of a kind: {name}.</summary>
    public required string Beads { get; init; }

    /// <summary>How many: {count}.</summary>
    public required string Count { get; init; }

    /// <summary>All beads.</summary>
    public required string AllBeads { get; init; }

    /// <summary>Length under the beads.</summary>
    public required string Length { get; init; }

    /// <summary>Turns when worn.</summary>
    public required string Turns { get; init; }

    /// <summary>The wrist it is made for.</summary>
    public required string Wrist { get; init; }

    /// <summary>Only the order in which the beads are strung differs.</summary>
    public required string OrderAlone { get; init; }
}
