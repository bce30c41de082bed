using System.Collections.Immutable;

namespace Coilwright.Documents.Pages;

/// <summary>A document described once: what stands in it and in which order, not where. Canvases draw it, as PDF and as HTML.</summary>
/// <remarks>All words are final: sentences and number forms come from Coilwright.Wording, quantities from the core. Nothing here reckons.</remarks>
public sealed record PageDocument
{
    /// <summary>Its title: shown in the window, spoken first, and the first words of the foot.</summary>
    public required string Title { get; init; }

    /// <summary>Language of its words (BCP 47), as <c>en</c> or <c>de</c>.</summary>
    public required string Language { get; init; }

    /// <summary>What stands in it, from top to bottom.</summary>
    public required ImmutableArray<Block> Blocks { get; init; }

    /// <summary>The few words that the pages themselves need.</summary>
    public required PageWords Words { get; init; }

    /// <summary>Words at the foot of every page, beside the page number; null repeats the title.</summary>
    public string? Foot { get; init; }

    /// <summary>Who made it; null leaves it out.</summary>
    public string? Author { get; init; }

    /// <summary>When it was made; null leaves it out, so that the same document is the same file on every day.</summary>
    public DateTimeOffset? Created { get; init; }
}

/// <summary>The words that pages need of themselves, in the document's language.</summary>
public sealed record PageWords
{
    /// <summary>The page number, from the page and how many there are: "Page 2 of 3".</summary>
    public required Func<int, int, string> PageOf { get; init; }

    /// <summary>Where a strip too long for the paper is joined, from the letter of the joint: "join a to a".</summary>
    public required Func<string, string> JoinAt { get; init; }
}
