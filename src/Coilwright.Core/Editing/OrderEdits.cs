using System.Collections.Immutable;

namespace Coilwright.Core.Editing;

/// <summary>A change to the stringing order.</summary>
/// <remarks>
/// <para>Beads are meant by their places on the wire. How the order is written there is found out: where the text strings a place more than once (a
/// count, a repeat, a group used again, a mirrored half), only the place meant is changed and as little as possible is written out for it; with
/// <see cref="EveryPass"/> what is written is changed, and so every place that it strings.</para>
/// <para>A group that comes to differ in one place from where else it is used goes by a name of its own there, as <c>cluster-2</c>.</para>
/// </remarks>
public abstract record OrderEdit : PieceEdit
{
    private protected OrderEdit() { }

    /// <summary>Whether every place is changed that the same words string.</summary>
    public bool EveryPass { get; init; }
}

/// <summary>Where new beads belong when they are put just at the edge of a group.</summary>
public enum Beside
{
    /// <summary>Outside of it, beside the whole group.</summary>
    Apart,

    /// <summary>With the bead before them, in its group.</summary>
    WithPrevious,

    /// <summary>With the bead after them, in its group.</summary>
    WithNext,
}

/// <summary>New beads are strung.</summary>
/// <param name="At">The gap: how many beads are before it, 0 at the starting end.</param>
/// <param name="What">Beads and groups of the order, by name, in the order in which they are strung.</param>
/// <param name="Beside">Where they belong at the edge of a group. With <see cref="OrderEdit.EveryPass"/> they always go with the bead before them, or,
/// for <see cref="Beside.WithNext"/> and at the starting end, with the one after.</param>
public sealed record InsertBeads(int At, ImmutableArray<string> What, Beside Beside = Beside.Apart) : OrderEdit;

/// <summary>Beads are taken off.</summary>
/// <param name="Where">The beads.</param>
public sealed record RemoveBeads(BeadPlaces Where) : OrderEdit;

/// <summary>Beads are strung elsewhere, in the order in which they are. A group that is moved whole stays a group.</summary>
/// <param name="Where">The beads.</param>
/// <param name="To">The gap that they go to, as counted before they are taken off.</param>
/// <param name="Beside">Where they belong at the edge of a group.</param>
/// <remarks><see cref="OrderEdit.EveryPass"/> has no meaning here.</remarks>
public sealed record MoveBeads(BeadPlaces Where, int To, Beside Beside = Beside.Apart) : OrderEdit;

/// <summary>Each of some beads is replaced.</summary>
/// <param name="Where">The beads.</param>
/// <param name="With">The name of a bead, or of a group of the order, that takes the place of each.</param>
public sealed record ReplaceBeads(BeadPlaces Where, string With) : OrderEdit;

/// <summary>One kind of bead is replaced by another wherever the order names it, in groups that are not strung too.</summary>
/// <param name="Bead">Id of the bead that goes.</param>
/// <param name="With">Id of the bead that comes.</param>
/// <remarks><see cref="OrderEdit.EveryPass"/> has no meaning here.</remarks>
public sealed record ReplaceEverywhere(string Bead, string With) : OrderEdit;

/// <summary>Each row of neighbouring beads among some is strung a second time just after itself.</summary>
/// <param name="Where">The beads.</param>
public sealed record DuplicateBeads(BeadPlaces Where) : OrderEdit;

/// <summary>Each row of neighbouring beads among some is strung so many times in all.</summary>
/// <param name="Where">The beads.</param>
/// <param name="Times">How many times, 2 or more.</param>
public sealed record RepeatBeads(BeadPlaces Where, int Times) : OrderEdit;

/// <summary>Neighbouring beads are followed by themselves from the other end: a mirrored half.</summary>
/// <param name="Where">The beads.</param>
/// <param name="Centre">How many of the last of them stand once in the middle; 0 for two whole halves.</param>
public sealed record MirrorBeads(BeadPlaces Where, int Centre = 0) : OrderEdit;

/// <summary>Something is put between each two neighbours among some beads.</summary>
/// <param name="Where">The beads.</param>
/// <param name="What">Beads and groups of the order, by name.</param>
public sealed record PutBetween(BeadPlaces Where, ImmutableArray<string> What) : OrderEdit;

/// <summary>Neighbouring beads become a group; a group that is just these beads gets another name.</summary>
/// <param name="Where">The beads.</param>
/// <param name="Name">The name. One that is a group's already serves again for the same beads.</param>
public sealed record NameGroup(BeadPlaces Where, string Name) : OrderEdit;

/// <summary>The innermost group that holds some beads is a group no more; its beads stay.</summary>
/// <param name="Where">Beads of the group.</param>
public sealed record Ungroup(BeadPlaces Where) : OrderEdit;

/// <summary>Runs of one kind of bead get other counts, several at once.</summary>
/// <param name="Runs">The runs, from the starting end, none over another.</param>
/// <remarks><see cref="OrderEdit.EveryPass"/> has no meaning here.</remarks>
public sealed record SetRuns(ImmutableArray<RunCount> Runs) : OrderEdit;

/// <summary>Another count for a run of one kind of bead.</summary>
/// <param name="First">Its first bead, from 0, as counted before the edit.</param>
/// <param name="Count">How many beads it has, 1 or more.</param>
/// <param name="To">How many it is to have, 1 or more.</param>
public sealed record RunCount(int First, int Count, int To);

/// <summary>The piece is strung anew as another order of the same sort: rows change places, beads stand in for others, runs get other counts; all at
/// once, in this order.</summary>
/// <param name="Swaps">Rows that change places, one exchange after the other, each counted in the order that the ones before left.</param>
/// <param name="StandIns">Beads that are replaced, counted after all exchanges.</param>
/// <param name="Runs">Runs with other counts, as in <see cref="SetRuns"/>, counted after all exchanges.</param>
/// <remarks><see cref="OrderEdit.EveryPass"/> has no meaning here.</remarks>
public sealed record Restring(ImmutableArray<RowSwap> Swaps, ImmutableArray<RowStandIn> StandIns, ImmutableArray<RunCount> Runs) : OrderEdit;

/// <summary>Two rows of beads change places, each moved whole; what stands between them stays between them.</summary>
/// <param name="First">First bead of the one nearer the starting end, from 0.</param>
/// <param name="Count">How many beads it has, 1 or more.</param>
/// <param name="OtherFirst">First bead of the other, after the end of the one.</param>
/// <param name="OtherCount">How many beads it has, 1 or more.</param>
public sealed record RowSwap(int First, int Count, int OtherFirst, int OtherCount);

/// <summary>Each bead of a kind in a row is replaced.</summary>
/// <param name="First">First bead of the row, from 0.</param>
/// <param name="Count">How many beads it has, 1 or more.</param>
/// <param name="Bead">Id of the bead that goes.</param>
/// <param name="With">Id of the bead that comes.</param>
public sealed record RowStandIn(int First, int Count, string Bead, string With);

/// <summary>The order is written anew, as notation.</summary>
/// <param name="Text">The whole text.</param>
/// <remarks><see cref="OrderEdit.EveryPass"/> has no meaning here.</remarks>
public sealed record SetOrderText(string Text) : OrderEdit;
