using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>The page of a piece's history: its steps, and the versions that have a name.</summary>
public sealed record HistoryWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>The states that have a name: heading.</summary>
    public required string Versions { get; init; }

    /// <summary>None has one.</summary>
    public required string NoVersions { get; init; }

    /// <summary>Every step: heading.</summary>
    public required string Steps { get; init; }

    /// <summary>A state by its number, and when it came about: {state}, {date}.</summary>
    public required string State { get; init; }

    /// <summary>A state by its number alone: {state}.</summary>
    public required string StateAlone { get; init; }

    /// <summary>A state by its name and number: {name}, {state}.</summary>
    public required string NamedState { get; init; }

    /// <summary>The state that the piece is in.</summary>
    public required string Now { get; init; }

    /// <summary>Makes a state the newest again.</summary>
    public required string GoBack { get; init; }

    /// <summary>Shows a state beside the newest.</summary>
    public required string BesideNow { get; init; }

    /// <summary>Opens the box for a name.</summary>
    public required string NameIt { get; init; }

    /// <summary>Opens it for another name.</summary>
    public required string Rename { get; init; }

    /// <summary>The box for a name.</summary>
    public required string Name { get; init; }

    /// <summary>Keeps the name.</summary>
    public required string KeepName { get; init; }

    /// <summary>Takes the name away.</summary>
    public required string DropName { get; init; }

    /// <summary>Leaves the name as it is.</summary>
    public required string Leave { get; init; }

    /// <summary>Shows steps further back: {steps} more.</summary>
    public required string Earlier { get; init; }

    /// <summary>What was done, by the code of the step. An undo and the like know {state}, the state whose contents they led back to.</summary>
    public required FrozenDictionary<string, string> Done { get; init; }

    /// <summary>What was done, by the code of the edit, with its particulars: {places}, {what}, {with}, {bead}, {name}, {times}, {at}, {mm}.</summary>
    public required FrozenDictionary<string, string> DoneTo { get; init; }

    /// <summary>A step that this program does not know.</summary>
    public required string DoneOtherwise { get; init; }

    /// <summary>One bead by its place: {first}.</summary>
    public required string OneBead { get; init; }

    /// <summary>Neighbouring beads: {first}, {last}.</summary>
    public required string RowOfBeads { get; init; }

    /// <summary>Beads here and there: {beads}.</summary>
    public required string SeveralBeads { get; init; }

    /// <summary>Several of a kind: {count}, {name}.</summary>
    public required string SeveralOf { get; init; }
}
