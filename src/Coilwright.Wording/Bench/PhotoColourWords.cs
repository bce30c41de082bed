using System.Collections.Frozen;
using Coilwright.Core.Colour;

namespace Coilwright.Wording;

/// <summary>Where a colour is read off her own photo.</summary>
public sealed record PhotoColourWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for, and where the photo stays.</summary>
    public required string Lead { get; init; }

    /// <summary>The button for a photo.</summary>
    public required string Choose { get; init; }

    /// <summary>What kinds of files are read.</summary>
    public required string ChooseHint { get; init; }

    /// <summary>What a tap takes.</summary>
    public required string Takes { get; init; }

    /// <summary>A bead's colour.</summary>
    public required string TakesBead { get; init; }

    /// <summary>White paper.</summary>
    public required string TakesWhite { get; init; }

    /// <summary>How large the ring is.</summary>
    public required string Ring { get; init; }

    /// <summary>A small one.</summary>
    public required string Small { get; init; }

    /// <summary>A middling one.</summary>
    public required string Middling { get; init; }

    /// <summary>A large one.</summary>
    public required string Large { get; init; }

    /// <summary>Name of the picture for those who hear it.</summary>
    public required string Photo { get; init; }

    /// <summary>How it is done by hand and by keys.</summary>
    public required string Keys { get; init; }

    /// <summary>The button that takes what is in the ring.</summary>
    public required string Take { get; init; }

    /// <summary>A photo was opened: {wide} and {high} pixels.</summary>
    public required string Opened { get; init; }

    /// <summary>It was made smaller to be read: {wide} and {high} pixels.</summary>
    public required string SampledDown { get; init; }

    /// <summary>It moves; its first picture is shown.</summary>
    public required string Moves { get; init; }

    /// <summary>Its name says another kind than it is, {kind}.</summary>
    public required string CalledOtherwise { get; init; }

    /// <summary>Why a file was not opened, by what is wrong with it: no-picture, heic, too-large, broken, cut-short, inks. {megapixels}, {most}.</summary>
    public required FrozenDictionary<string, string> Refused { get; init; }

    /// <summary>What was taken: {colour}, its lightness {l}, green to red {a}, blue to yellow {b}.</summary>
    public required string Taken { get; init; }

    /// <summary>How much of the ring counted: {counted} of {pixels} pixels.</summary>
    public required string Counted { get; init; }

    /// <summary>The ring lies on an edge or on a pattern.</summary>
    public required string Mixed { get; init; }

    /// <summary>No screen shows it as it is.</summary>
    public required string OffScreen { get; init; }

    /// <summary>Colours are as the camera balanced them.</summary>
    public required string AsTaken { get; init; }

    /// <summary>Colours are balanced by white paper.</summary>
    public required string Balanced { get; init; }

    /// <summary>Takes the balance back.</summary>
    public required string Unbalance { get; init; }

    /// <summary>Why paper was not taken, by its trouble.</summary>
    public required FrozenDictionary<WhiteTrouble, string> WhiteTroubles { get; init; }

    /// <summary>How it is worked out: heading.</summary>
    public required string How { get; init; }

    /// <summary>How it is worked out.</summary>
    public required string HowText { get; init; }

    /// <summary>The bead that it is put on.</summary>
    public required string PutOn { get; init; }

    /// <summary>Makes it the bead's colour.</summary>
    public required string MakeColour { get; init; }

    /// <summary>Adds it to the bead's colours.</summary>
    public required string AddColour { get; init; }

    /// <summary>It was put on {name}.</summary>
    public required string Put { get; init; }
}
