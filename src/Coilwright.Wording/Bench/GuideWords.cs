using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>A step of the look round.</summary>
/// <param name="Heading">What is looked at.</param>
/// <param name="Text">What it is for.</param>
public sealed record TourStepWords(string Heading, string Text);

/// <summary>The manual, the list of keys and the look round for a first visit.</summary>
public sealed record GuideWords
{
    /// <summary>The manual.</summary>
    public required string Manual { get; init; }

    /// <summary>What it is.</summary>
    public required string ManualLead { get; init; }

    /// <summary>The chapters.</summary>
    public required string Contents { get; init; }

    /// <summary>What stands in a chapter.</summary>
    public required string OnThisPage { get; init; }

    /// <summary>What is looked for in it.</summary>
    public required string Search { get; init; }

    /// <summary>How many places were found: {places}.</summary>
    public required string Found { get; init; }

    /// <summary>Nothing was found.</summary>
    public required string NotFound { get; init; }

    /// <summary>The chapter before: {chapter}.</summary>
    public required string Before { get; init; }

    /// <summary>The next chapter: {chapter}.</summary>
    public required string Next { get; init; }

    /// <summary>The list of keys.</summary>
    public required string Keys { get; init; }

    /// <summary>What it is.</summary>
    public required string KeysLead { get; init; }

    /// <summary>Column of the keys.</summary>
    public required string Key { get; init; }

    /// <summary>Column of what they do.</summary>
    public required string Does { get; init; }

    /// <summary>What stands between two keys of which either does it.</summary>
    public required string Or { get; init; }

    /// <summary>Keys by their name in a browser, where they are not called by what they write.</summary>
    public required FrozenDictionary<string, string> KeyNames { get; init; }

    /// <summary>Places where keys do something, by their own name.</summary>
    public required FrozenDictionary<string, string> KeyPlaces { get; init; }

    /// <summary>What keys do, by its own name.</summary>
    public required FrozenDictionary<string, string> KeyUses { get; init; }

    /// <summary>Asks on a first visit.</summary>
    public required string TourAsk { get; init; }

    /// <summary>Begins the look round.</summary>
    public required string TourBegin { get; init; }

    /// <summary>Leaves it out.</summary>
    public required string TourNo { get; init; }

    /// <summary>Where in it she is: {step} of {steps}.</summary>
    public required string TourAt { get; init; }

    /// <summary>The step before.</summary>
    public required string TourBack { get; init; }

    /// <summary>The next step.</summary>
    public required string TourNext { get; init; }

    /// <summary>Ends it before its end.</summary>
    public required string TourLeave { get; init; }

    /// <summary>Ends it at its end.</summary>
    public required string TourDone { get; init; }

    /// <summary>Takes it again, from the manual.</summary>
    public required string TourAgain { get; init; }

    /// <summary>The steps, in their order.</summary>
    public required IReadOnlyList<TourStepWords> Tour { get; init; }
}
