using System.Collections.Frozen;
using Coilwright.Core.Palettes;

namespace Coilwright.Wording;

/// <summary>Words of how the colours of a piece go together. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record PaletteWords
{
    /// <summary>What <c>palette</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary>Title.</summary>
    public required string Heading { get; init; }

    /// <summary>What is looked at and what not.</summary>
    public required string Lead { get; init; }

    /// <summary>The piece: {title}.</summary>
    public required string For { get; init; }

    /// <summary>Who looks, by sight.</summary>
    public required FrozenDictionary<Sight, string> Sights { get; init; }

    /// <summary>What such an eye is, or what such a print is for, by sight.</summary>
    public required FrozenDictionary<Sight, string> Explained { get; init; }

    /// <summary>Every kind is told from its neighbours.</summary>
    public required string AllApart { get; init; }

    /// <summary>Nothing is lost that others see.</summary>
    public required string NothingMore { get; init; }

    /// <summary>No two kinds with a colour lie beside each other.</summary>
    public required string NoneBeside { get; init; }

    /// <summary>Two kinds, {one} and {other}, vanish beside each other; {where}; their difference is {difference}.</summary>
    public required string Vanishes { get; init; }

    /// <summary>By some simulations {one} and {other} vanish beside each other; {where}; differences from {least} to {most}.</summary>
    public required string Unsure { get; init; }

    /// <summary>Where they lie beside each other along the wire: in {places} places.</summary>
    public required string Along { get; init; }

    /// <summary>Where they lie beside each other across turns: {mm}.</summary>
    public required string Across { get; init; }

    /// <summary>A kind: {letter}, {name}.</summary>
    public required string Kind { get; init; }

    /// <summary>A kind has no colour: {name}.</summary>
    public required string WithoutColour { get; init; }

    /// <summary>How strongly the colours change along the wire, {difference}.</summary>
    public required string AlongMean { get; init; }

    /// <summary>How strongly across turns, {difference}.</summary>
    public required string AcrossMean { get; init; }

    /// <summary>What to do about what vanishes.</summary>
    public required string WhatToDo { get; init; }

    /// <summary>Heading of the table of kinds.</summary>
    public required string KindsHeading { get; init; }

    /// <summary>Column of the key letter.</summary>
    public required string Letter { get; init; }

    /// <summary>Column of the bead.</summary>
    public required string Bead { get; init; }

    /// <summary>Column of its colours.</summary>
    public required string Colours { get; init; }

    /// <summary>Column of how light it is, 0 black to 100 white.</summary>
    public required string Lightness { get; init; }

    /// <summary>Heading of where the figures come from.</summary>
    public required string SourcesHeading { get; init; }

    /// <summary>What the differences mean, {vanish} and {grey}, and whose simulations these are.</summary>
    public required string Sources { get; init; }
}
