namespace Coilwright.Wording;

/// <summary>The order as cards and as text.</summary>
public sealed record OrderViewWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Which of the two is shown.</summary>
    public required string View { get; init; }

    /// <summary>A group to a card.</summary>
    public required string AsCards { get; init; }

    /// <summary>As it is written.</summary>
    public required string AsText { get; init; }

    /// <summary>Name of a card that holds what is strung between groups.</summary>
    public required string Between { get; init; }
}
