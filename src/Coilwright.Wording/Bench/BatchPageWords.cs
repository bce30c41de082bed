namespace Coilwright.Wording;

/// <summary>Words of the page of several alike. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record BatchPageWords
{
    /// <summary>Heading of the page.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Heading of what is asked.</summary>
    public required string AskHeading { get; init; }

    /// <summary>How many.</summary>
    public required string Count { get; init; }

    /// <summary>Wells of a tray.</summary>
    public required string Wells { get; init; }

    /// <summary>Round beads in a well.</summary>
    public required string Rounds { get; init; }

    /// <summary>It is worked out.</summary>
    public required string Working { get; init; }

    /// <summary>It cannot be worked out.</summary>
    public required string NotMade { get; init; }

    /// <summary>The plan as PDF.</summary>
    public required string SavePlan { get; init; }

    /// <summary>The tick sheet as PDF.</summary>
    public required string SaveTicks { get; init; }

    /// <summary>From the wire at hand.</summary>
    public required string WireAtHand { get; init; }
}
