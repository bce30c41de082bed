using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Alignment;

/// <summary>The groups that the headline is read by: the named groups of the order, or for want of any the runs of one kind.</summary>
/// <remarks>Where the order names no group, a run of neighbouring beads of one kind counts as one, spacers and connectors apart: they are what
/// stands between. Where it names groups, beads outside them belong to none.</remarks>
internal sealed class GroupStretches
{
    public GroupStretches(Piece piece)
    {
        var named = piece.Order.ReadingGroups;
        AreRuns = named.IsEmpty;
        Runs = AreRuns ? RunsOfKind(piece) : named;
        var names = new List<string>();
        var ids = new Dictionary<string, int>(StringComparer.Ordinal);
        NameOfRun = new int[Runs.Length];
        for (var r = 0; r < Runs.Length; r++)
        {
            if (!ids.TryGetValue(Runs[r].Name, out var id))
            {
                ids[Runs[r].Name] = id = names.Count;
                names.Add(Runs[r].Name);
            }
            NameOfRun[r] = id;
        }
        Names = [.. names];
        WishOfRun = WishesOf(piece);
    }

    /// <summary>Whether the groups are runs of one kind.</summary>
    public bool AreRuns { get; }

    /// <summary>The groups, by first bead, not overlapping.</summary>
    public ImmutableArray<GroupRun> Runs { get; }

    /// <summary>For each group, the index of its name.</summary>
    public int[] NameOfRun { get; }

    /// <summary>The names.</summary>
    public ImmutableArray<string> Names { get; }

    /// <summary>For each group, the wish written for it or for the nearest group round it; null where there is none.</summary>
    public LiningUpWish?[] WishOfRun { get; }

    private static ImmutableArray<GroupRun> RunsOfKind(Piece piece)
    {
        var runs = ImmutableArray.CreateBuilder<GroupRun>();
        var order = piece.Order.Kinds;
        for (var i = 0; i < order.Length;)
        {
            var end = i + 1;
            while (end < order.Length && order[end] == order[i]) end++;
            var bead = piece.Beads[order[i]];
            if (bead.Role is not (Role.Spacer or Role.Connector)) runs.Add(new GroupRun(bead.Id, i, end - i));
            i = end;
        }
        return runs.ToImmutable();
    }

    private LiningUpWish?[] WishesOf(Piece piece)
    {
        var wishes = new LiningUpWish?[Runs.Length];
        var ofName = piece.Wishes.Groups;
        if (ofName.IsEmpty) return wishes;
        // Outer groups come before inner ones, so those that are open at a place stand in a stack, innermost on top.
        var open = new Stack<(int End, LiningUpWish? Wish)>();
        var next = 0;
        for (var r = 0; r < Runs.Length; r++)
        {
            for (; next < piece.Order.Groups.Length && piece.Order.Groups[next].First <= Runs[r].First; next++)
            {
                var group = piece.Order.Groups[next];
                while (open.Count > 0 && open.Peek().End <= group.First) open.Pop();
                open.Push((group.End, ofName.TryGetValue(group.Name, out var own) ? own : open.Count > 0 ? open.Peek().Wish : null));
            }
            while (open.Count > 0 && open.Peek().End <= Runs[r].First) open.Pop();
            wishes[r] = ofName.TryGetValue(Runs[r].Name, out var wish) ? wish : open.Count > 0 ? open.Peek().Wish : null;
        }
        return wishes;
    }
}
