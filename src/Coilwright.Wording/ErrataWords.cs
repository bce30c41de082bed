using System.Collections.Frozen;
using Coilwright.Core.Making;

namespace Coilwright.Wording;

/// <summary>Words of the corrections to a pattern. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ErrataWords
{
    /// <summary>What <c>errata</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary>The older version.</summary>
    public required string OldPiece { get; init; }

    /// <summary>The newer version.</summary>
    public required string NewPiece { get; init; }

    /// <summary>Title: {title}.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Another name: {old}, {title}.</summary>
    public required string Renamed { get; init; }

    /// <summary>There is nothing to correct.</summary>
    public required string Nothing { get; init; }

    /// <summary>Heading of what to mind first.</summary>
    public required string MindFirst { get; init; }

    /// <summary>Wire cut by the old version is too short: {mm}.</summary>
    public required string WireTooShort { get; init; }

    /// <summary>A letter that stands for another bead: {letter}, {old}, {name}.</summary>
    public required string LetterMoved { get; init; }

    /// <summary>Heading of the beads.</summary>
    public required string Beads { get; init; }

    /// <summary>Heading of the figures.</summary>
    public required string Figures { get; init; }

    /// <summary>Heading of the steps.</summary>
    public required string Steps { get; init; }

    /// <summary>Heading of steps with other figures to check by.</summary>
    public required string Checks { get; init; }

    /// <summary>What those are.</summary>
    public required string ChecksNote { get; init; }

    /// <summary>Heading of testers' notes.</summary>
    public required string Settled { get; init; }

    /// <summary>Column of the step's number.</summary>
    public required string StepColumn { get; init; }

    /// <summary>Column of what is wrong.</summary>
    public required string OldColumn { get; init; }

    /// <summary>Column of what is right.</summary>
    public required string NewColumn { get; init; }

    /// <summary>Column of what a figure is of.</summary>
    public required string FigureColumn { get; init; }

    /// <summary>A step that comes at another place: {old}, {new}.</summary>
    public required string MovedNumber { get; init; }

    /// <summary>A step that is not there any more.</summary>
    public required string LeftOut { get; init; }

    /// <summary>A step that was not there.</summary>
    public required string NotThere { get; init; }

    /// <summary>What to check by: {beads}, {alongMm}.</summary>
    public required string Check { get; init; }

    /// <summary>A tester's note with who made it: {note}, {by}.</summary>
    public required string NoteBy { get; init; }

    /// <summary>A mass: {grams}.</summary>
    public required string Grams { get; init; }

    /// <summary>Loops: {loops}.</summary>
    public required string Loops { get; init; }

    /// <summary>Names of the figures.</summary>
    public required FrozenDictionary<PatternFigure, string> FigureNames { get; init; }
}
