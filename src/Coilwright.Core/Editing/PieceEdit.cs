using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Editing;

/// <summary>One change that a maker makes to a piece. A closed list: the edits are those of this folder.</summary>
/// <remarks>Says what she wants, not how the order's text comes to say it: that is for <see cref="PieceEditing"/>. Immutable.</remarks>
public abstract record PieceEdit
{
    private protected PieceEdit() { }

    /// <summary>Stable code of the kind of edit, as <c>insert-beads</c>: for a history, and for the form in which edits are stored.</summary>
    public string Code => PieceEdits.CodeOf(GetType());
}

/// <summary>Another title.</summary>
/// <param name="Title">The title.</param>
public sealed record SetTitle(string Title) : PieceEdit;

/// <summary>Another wire.</summary>
/// <param name="Wire">The wire.</param>
public sealed record SetWire(CoilWire Wire) : PieceEdit;

/// <summary>Other ends.</summary>
/// <param name="Ends">Both ends.</param>
public sealed record SetEnds(WireEnds Ends) : PieceEdit;

/// <summary>Another wearer, or worn otherwise.</summary>
/// <param name="Wearer">Who wears it and how.</param>
public sealed record SetWearer(Wearer Wearer) : PieceEdit;

/// <summary>Other wishes.</summary>
/// <param name="Wishes">The wishes.</param>
public sealed record SetWishes(Wishes Wishes) : PieceEdit;

/// <summary>Other words for the pattern.</summary>
/// <param name="Pattern">What is written for it.</param>
public sealed record SetPattern(PatternNotes Pattern) : PieceEdit;

/// <summary>A row was measured on the wire at the bench.</summary>
/// <param name="Row">The row.</param>
public sealed record AddMeasuredRow(MeasuredRow Row) : PieceEdit;

/// <summary>A measured row is taken out.</summary>
/// <param name="Index">Its index in <see cref="Piece.MeasuredRows"/>, from 0.</param>
public sealed record RemoveMeasuredRow(int Index) : PieceEdit;

/// <summary>A kind of bead more, after those that are there: the key letters of the others stay.</summary>
/// <param name="Bead">The bead.</param>
public sealed record AddBead(BeadDescription Bead) : PieceEdit;

/// <summary>A kind of bead is described anew. With another id it is renamed wherever the order and the wishes name it.</summary>
/// <param name="Id">Its id so far.</param>
/// <param name="Bead">The bead.</param>
public sealed record ChangeBead(string Id, BeadDescription Bead) : PieceEdit;

/// <summary>A kind of bead goes. Refused while the order still names it.</summary>
/// <param name="Id">Its id.</param>
public sealed record RemoveBead(string Id) : PieceEdit;

/// <summary>The list of edits and their codes.</summary>
public static class PieceEdits
{
    private static readonly ImmutableDictionary<Type, string> Codes = new Dictionary<Type, string>
    {
        [typeof(InsertBeads)] = "insert-beads",
        [typeof(RemoveBeads)] = "remove-beads",
        [typeof(MoveBeads)] = "move-beads",
        [typeof(ReplaceBeads)] = "replace-beads",
        [typeof(ReplaceEverywhere)] = "replace-everywhere",
        [typeof(DuplicateBeads)] = "duplicate-beads",
        [typeof(RepeatBeads)] = "repeat-beads",
        [typeof(MirrorBeads)] = "mirror-beads",
        [typeof(PutBetween)] = "put-between",
        [typeof(NameGroup)] = "name-group",
        [typeof(Ungroup)] = "ungroup",
        [typeof(SetRuns)] = "set-runs",
        [typeof(Restring)] = "restring",
        [typeof(SetOrderText)] = "set-order-text",
        [typeof(AddBead)] = "add-bead",
        [typeof(ChangeBead)] = "change-bead",
        [typeof(RemoveBead)] = "remove-bead",
        [typeof(SetTitle)] = "set-title",
        [typeof(SetWire)] = "set-wire",
        [typeof(SetEnds)] = "set-ends",
        [typeof(SetWearer)] = "set-wearer",
        [typeof(SetWishes)] = "set-wishes",
        [typeof(SetPattern)] = "set-pattern",
        [typeof(AddMeasuredRow)] = "add-measured-row",
        [typeof(RemoveMeasuredRow)] = "remove-measured-row",
    }.ToImmutableDictionary();

    /// <summary>All codes, by letter.</summary>
    public static ImmutableSortedSet<string> All { get; } = [.. Codes.Values];

    internal static string CodeOf(Type edit) => Codes[edit];
}
