namespace Coilwright.Wording;

/// <summary>Words of the page of quotes for custom orders. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record QuotePageWords
{
    /// <summary>Heading of the page.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Heading of what is asked.</summary>
    public required string AskHeading { get; init; }

    /// <summary>Who asks.</summary>
    public required string For { get; init; }

    /// <summary>The wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>How many.</summary>
    public required string Count { get; init; }

    /// <summary>The rule.</summary>
    public required string Rule { get; init; }

    /// <summary>The deposit.</summary>
    public required string Deposit { get; init; }

    /// <summary>The day.</summary>
    public required string On { get; init; }

    /// <summary>Until when.</summary>
    public required string Until { get; init; }

    /// <summary>It is worked out.</summary>
    public required string Working { get; init; }

    /// <summary>It cannot be worked out.</summary>
    public required string NotMade { get; init; }

    /// <summary>The quote as PDF.</summary>
    public required string SavePdf { get; init; }

    /// <summary>The workings as PDF.</summary>
    public required string SaveWorkings { get; init; }

    /// <summary>The quote as web page.</summary>
    public required string SavePage { get; init; }

    /// <summary>The workings as web page.</summary>
    public required string SaveWorkingsPage { get; init; }

    /// <summary>Heading of the beads strung in place of others.</summary>
    public required string Swaps { get; init; }

    /// <summary>What they are chosen from.</summary>
    public required string SwapsHint { get; init; }

    /// <summary>A bead stays what it is.</summary>
    public required string AsItIs { get; init; }

    /// <summary>How to open a figure.</summary>
    public required string OpenHint { get; init; }
}
