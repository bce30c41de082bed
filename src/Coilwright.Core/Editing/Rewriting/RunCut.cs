using System.Collections.Immutable;
using Coilwright.Core.Editing.Marking;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>Marks on a run of items, parted: what is done between the items, to some of them together, and inside each.</summary>
internal sealed class RunCut
{
    /// <summary>A run without marks.</summary>
    private RunCut(int items)
    {
        Inside = new Mark[items][];
        Array.Fill(Inside, []);
        Gaps = new List<Mark>?[items + 1];
    }

    /// <summary>For each item the marks inside it, on its own places.</summary>
    public Mark[][] Inside { get; }

    /// <summary>For each gap, the one before the first item and the one after the last included, what is put there.</summary>
    public List<Mark>?[] Gaps { get; }

    /// <summary>What is done to some whole items together: from one to another, and what.</summary>
    public List<(int From, int To, Wrapping Doing)> Wraps { get; } = [];

    /// <summary>Parts the marks on a run.</summary>
    /// <param name="items">The run's items.</param>
    /// <param name="lengths">How long they are.</param>
    /// <param name="marks">The marks, on the run's places.</param>
    public static RunCut Of(ImmutableArray<OrderItem> items, OrderLengths lengths, Mark[] marks)
    {
        var cut = new RunCut(items.Length);
        if (marks.Length == 0) return cut;
        var starts = new int[items.Length + 1];
        for (var i = 0; i < items.Length; i++) starts[i + 1] = starts[i] + lengths.Of(items[i]);
        var inside = new List<Mark>?[items.Length];
        foreach (var mark in marks) cut.Take(mark, starts, inside);
        for (var i = 0; i < items.Length; i++)
            if (inside[i] is { } own)
                cut.Inside[i] = [.. own];
        return cut;
    }

    private void Take(Mark mark, int[] starts, List<Mark>?[] inside)
    {
        var found = Array.BinarySearch(starts, mark.First);
        if (mark.Count == 0 && mark.Depth == 0 && found >= 0)
        {
            (Gaps[found] ??= []).Add(mark);
            return;
        }
        var item = found >= 0 ? found : ~found - 1;
        if (mark is { Depth: 0, Doing: Wrapping wrapping } && found >= 0 && Array.BinarySearch(starts, mark.End) is var end and >= 0)
        {
            Wraps.Add((found, end - 1, wrapping));
            return;
        }
        // A gap at the edge of a group belongs to the item before it, unless it is said to go with the next.
        if (mark.Count == 0 && found >= 0 && mark.Side != Side.Next) item--;
        (inside[item] ??= []).Add(mark.From(starts[item]));
    }
}

/// <summary>Marks on a mirror, parted.</summary>
/// <param name="Half">On the first half.</param>
/// <param name="Centre">On what stands in the middle.</param>
/// <param name="OtherHalf">On the second half, on the places of the half as it is written.</param>
/// <param name="Middle">What is put where the halves of a mirror without a centre meet.</param>
/// <param name="OfCentre">What is made of the whole centre.</param>
internal sealed record MirrorCut(Mark[] Half, Mark[] Centre, Mark[] OtherHalf, Inserting? Middle, Wrapping? OfCentre)
{
    /// <summary>Parts the marks on a mirror.</summary>
    public static MirrorCut Of(OrderMirror mirror, OrderLengths lengths, Mark[] marks)
    {
        var half = lengths.Of(mirror.Half);
        var centre = mirror.Centre is null ? 0 : lengths.Of(mirror.Centre);
        List<Mark> first = [], middle = [], second = [];
        Inserting? between = null;
        Wrapping? ofCentre = null;
        foreach (var mark in marks)
        {
            // What is put just beside the centre belongs to the halves, so that both can have it.
            if (mark is { Count: 0, Depth: 0, Side: Side.Neither } && mark.First == half && centre == 0) between = (Inserting)mark.Doing;
            else if (mark is { Count: 0, Depth: 0, Side: Side.Next } && mark.First == half && centre == 0) second.Add(mark.From(half));
            else if (mark is { Depth: 0, Doing: Wrapping wrapping } && mark.First == half && mark.Count == centre) ofCentre = wrapping;
            else if (mark is { Count: 0, Depth: 0 } && mark.First == half) first.Add(mark);
            else if (mark is { Count: 0, Depth: 0 } && mark.First == half + centre) second.Add(mark.From(half + centre));
            else if (Marks.BelongsTo(mark, 0, half)) first.Add(mark);
            else if (centre > 0 && Marks.BelongsTo(mark, half, half + centre)) middle.Add(mark.From(half));
            else second.Add(mark.From(half + centre));
        }
        return new MirrorCut([.. first], [.. middle], Marks.Turned([.. second], half), between, ofCentre);
    }

    /// <summary>Whether both halves are marked alike, so that they can stay one.</summary>
    public bool HalvesAreAlike => Marks.Same(Half, OtherHalf);
}
