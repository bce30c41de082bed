using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>Words of the pack to sell a pattern with. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record PublishWords
{
    /// <summary>What <c>publish</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary><c>--pixels</c>; {usual}.</summary>
    public required string PixelsOption { get; init; }

    /// <summary><c>--white</c>.</summary>
    public required string WhiteOption { get; init; }

    /// <summary>A pack in the examples.</summary>
    public required string ExamplePack { get; init; }

    /// <summary>The pack was written: {file}, with so many {files} in it.</summary>
    public required string Written { get; init; }

    /// <summary>A document on paper: {name}, {paper}; {large} where it is in large print.</summary>
    public required string OnPaper { get; init; }

    /// <summary>A document for a screen: {name}.</summary>
    public required string OnScreen { get; init; }

    /// <summary>US Letter.</summary>
    public required string Letter { get; init; }

    /// <summary>Names of documents, by the name of their kind.</summary>
    public required FrozenDictionary<string, string> Documents { get; init; }

    /// <summary>The table of materials.</summary>
    public required string Materials { get; init; }

    /// <summary>The model to turn.</summary>
    public required string Model { get; init; }

    /// <summary>What the model is where the piece stands in it as it sits.</summary>
    public required string ModelSettled { get; init; }

    /// <summary>The listing.</summary>
    public required string ListingText { get; init; }

    /// <summary>Has the model in the pack as the piece sits.</summary>
    public required string SaveAsItSits { get; init; }

    /// <summary>Saves the pack from the browser.</summary>
    public required string Save { get; init; }

    /// <summary>What is in it.</summary>
    public required string SaveNote { get; init; }
}
