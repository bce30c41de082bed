using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>The wire cut into blocks: groups and what stands between them, each with the wish that holds for it.</summary>
internal sealed class GroupBlocks
{
    private readonly List<double> _lengths = [];
    private readonly List<int> _runs = [];
    private readonly List<LiningUpWish> _wishes = [];

    public GroupBlocks(GroupStretches groups, Wishes wishes, Lie lie)
    {
        var cuts = PlaceCuts(wishes, lie);
        double along = 0;
        var nextCut = 0;
        var bead = 0;
        for (var r = 0; r <= groups.Runs.Length; r++)
        {
            var first = r < groups.Runs.Length ? groups.Runs[r].First : lie.Count;
            if (first > bead) Add(bead, first, -1);
            if (r < groups.Runs.Length) Add(first, groups.Runs[r].End, r);
            bead = r < groups.Runs.Length ? groups.Runs[r].End : lie.Count;
        }
        Lengths = [.. _lengths];
        RunOf = [.. _runs];
        WishOf = [.. _wishes];
        Tags = [.. Enumerable.Range(0, Lengths.Length)];

        void Add(int from, int end, int run)
        {
            var stop = end < lie.Count ? lie.StartsMm[end] : lie.BeadedMm;
            var ofGroup = run >= 0 ? groups.WishOfRun[run] : null;
            while (along < stop)
            {
                while (nextCut < cuts.Count && cuts[nextCut] <= along) nextCut++;
                var to = nextCut < cuts.Count ? Math.Min(stop, cuts[nextCut]) : stop;
                _lengths.Add(to - along);
                _runs.Add(run);
                _wishes.Add(ofGroup ?? PlaceWish(wishes, lie, (along + to) / 2));
                along = to;
            }
        }
    }

    /// <summary>Length of each block, mm.</summary>
    public double[] Lengths { get; }

    /// <summary>The group each block is of, or -1 for what stands between.</summary>
    public int[] RunOf { get; }

    /// <summary>The wish that holds for each block.</summary>
    public LiningUpWish[] WishOf { get; }

    /// <summary>Each block's own number: its tag.</summary>
    public int[] Tags { get; }

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
