using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>The wire cut into blocks: groups and what stands between them, each group's with the wish that holds for it there.</summary>
internal sealed class GroupBlocks
{
    /// <summary>The bin of what stands between groups, after one bin for each wish.</summary>
    public const int NoGroup = (int)LiningUpWish.Columns + 1;

    public GroupBlocks(GroupStretches groups, Wishes wishes, Lie lie)
    {
        var cuts = PlaceCuts(wishes, lie);
        var most = 2 * groups.Runs.Length + 1 + cuts.Count;
        (Lengths, RunOf, NameOf, BinOf) = (new double[most], new int[most], new int[most], new int[most]);
        double along = 0;
        var nextCut = 0;
        var bead = 0;
        for (var r = 0; r <= groups.Runs.Length; r++)
        {
            var first = r < groups.Runs.Length ? groups.Runs[r].First : lie.Count;
            if (first > bead) Add(first, -1);
            if (r < groups.Runs.Length) Add(groups.Runs[r].End, r);
            bead = r < groups.Runs.Length ? groups.Runs[r].End : lie.Count;
        }

        void Add(int end, int run)
        {
            var stop = end < lie.Count ? lie.StartsMm[end] : lie.BeadedMm;
            var ofGroup = run >= 0 ? groups.WishOfRun[run] : null;
            while (along < stop)
            {
                while (nextCut < cuts.Count && cuts[nextCut] <= along) nextCut++;
                var to = nextCut < cuts.Count ? Math.Min(stop, cuts[nextCut]) : stop;
                Lengths[Count] = to - along;
                RunOf[Count] = run;
                NameOf[Count] = run >= 0 ? groups.NameOfRun[run] : -1;
                BinOf[Count] = run >= 0 ? (int)(ofGroup ?? PlaceWish(wishes, lie, (along + to) / 2)) : NoGroup;
                along = to;
                Count++;
            }
        }
    }

    /// <summary>How many blocks there are; the arrays may be longer.</summary>
    public int Count { get; private set; }

    /// <summary>Length of each block, mm.</summary>
    public double[] Lengths { get; }

    /// <summary>The group each block is of, or -1 for what stands between.</summary>
    public int[] RunOf { get; }

    /// <summary>The index of the name of the group each block is of, or -1 likewise: blocks of one name are of one kind.</summary>
    public int[] NameOf { get; }

    /// <summary>The bin that each block's sums go into: the wish that holds for its group there, or <see cref="NoGroup"/>.</summary>
    public int[] BinOf { get; }

    private static LiningUpWish PlaceWish(Wishes wishes, Lie lie, double alongMm)
    {
        if (!wishes.Places.IsEmpty)
        {
            var angle = lie.AngleDegAt(alongMm);
            foreach (var place in wishes.Places)
                if (place.Covers(angle)) return place.LiningUp;
        }
        return wishes.LiningUp;
    }

    // A wish for a place starts and ends at the same angle on every turn.
    private static List<double> PlaceCuts(Wishes wishes, Lie lie)
    {
        if (wishes.Places.IsEmpty) return [];
        var cuts = new List<double>();
        foreach (var place in wishes.Places)
            foreach (var deg in new[] { place.FromDeg, place.ToDeg })
            {
                var turns = (deg - lie.StartAngleDeg) / 360;
                for (var s = (turns - Math.Floor(turns)) * lie.WirePerTurnMm; s < lie.BeadedMm; s += lie.WirePerTurnMm) cuts.Add(s);
            }
        cuts.Sort();
        return cuts;
    }
}
