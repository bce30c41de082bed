using System.Collections.Frozen;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;

namespace Coilwright.Wording;

/// <summary>Words of the written pattern. Names in braces are filled in; see <see cref="Template"/>. What it shares with the pattern sheet is said there.</summary>
public sealed record PatternWords
{
    /// <summary>After a step: {beads}, {alongMm} of wire under them.</summary>
    public required string SoFar { get; init; }

    /// <summary>After the last bead, likewise.</summary>
    public required string InAll { get; init; }

    // The document.

    /// <summary>At the foot of every page: {title}.</summary>
    public required string Foot { get; init; }

    /// <summary>Who designed it: {by}.</summary>
    public required string By { get; init; }

    /// <summary>Beneath a photo on the cover: {title}.</summary>
    public required string CoverPhoto { get; init; }

    /// <summary>Beneath a still of the coil in space on the cover: {title}.</summary>
    public required string CoverStill { get; init; }

    /// <summary>What a picture on the cover shows: {title}, {beads} on {turns}.</summary>
    public required string CoverAlt { get; init; }

    /// <summary>Heading of what is told at a glance.</summary>
    public required string AtAGlance { get; init; }

    /// <summary>Row: what it asks of the hands.</summary>
    public required string Level { get; init; }

    /// <summary>The levels.</summary>
    public required FrozenDictionary<PatternLevel, string> Levels { get; init; }

    /// <summary>Row: how long it takes.</summary>
    public required string Time { get; init; }

    /// <summary>A time: {hours} where there are some, {minutes} where there are some.</summary>
    public required string TimeIs { get; init; }

    /// <summary>Heading of techniques.</summary>
    public required string Techniques { get; init; }

    /// <summary>Under the heading of the steps: how figures are to be read.</summary>
    public required string FiguresNote { get; init; }

    /// <summary>Beneath a figure: {number}.</summary>
    public required string Figure { get; init; }

    /// <summary>After a step's sentence, where its figure stands elsewhere: {number}.</summary>
    public required string SeeFigure { get; init; }

    /// <summary>What a figure shows: {first}, {last} of its beads; {before} beads where some are strung already.</summary>
    public required string FigureAlt { get; init; }

    /// <summary>In a figure, seen end-on: the top of the wrist.</summary>
    public required string Top { get; init; }

    /// <summary>Heading of colourways.</summary>
    public required string Colourways { get; init; }

    /// <summary>Under it.</summary>
    public required string ColourwaysNote { get; init; }

    /// <summary>Column: the colourway's name.</summary>
    public required string Colourway { get; init; }

    /// <summary>Heading of care.</summary>
    public required string Care { get; init; }

    /// <summary>Heading of the usage note.</summary>
    public required string Usage { get; init; }

    // The proof-reader.

    /// <summary>What the proof-reader found: {said}, {known}.</summary>
    public required FrozenDictionary<ProofSlip, string> Slips { get; init; }

    /// <summary>Numbers, units and letters as this language writes them.</summary>
    public required ProofLanguage Proof { get; init; }
}
