namespace Coilwright.Wording;

/// <summary>Words of an order without a visible repeat.</summary>
public sealed record ScatterWords
{
    /// <summary>Heading of it.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>No repeat shows.</summary>
    public required string NoneShows { get; init; }

    /// <summary>Some repeat shows all the same.</summary>
    public required string SomeShows { get; init; }

    /// <summary>What is alike at the worst distance: {period} for the distance, {share}, {upTo}.</summary>
    public required string Alike { get; init; }

    /// <summary>The longest stretch that comes again: {beads}, {upTo}.</summary>
    public required string Longest { get; init; }

    /// <summary>What lies against the wish then: {after}.</summary>
    public required string Against { get; init; }

    /// <summary>That the order's text is written anew.</summary>
    public required string TextAnew { get; init; }

    /// <summary>Fewer than two kinds may change places.</summary>
    public required string OneKind { get; init; }

    /// <summary>No allowed order was found.</summary>
    public required string NoneAllowed { get; init; }

    /// <summary>It cannot be written.</summary>
    public required string NotWritten { get; init; }

    /// <summary>Makes one.</summary>
    public required string Make { get; init; }

    /// <summary>Makes another one.</summary>
    public required string Another { get; init; }

    /// <summary>It was written: {file}.</summary>
    public required string Written { get; init; }
}
