using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>Makes the tables of a piece: what groups on either side of some gaps share, for every sum of beads in those gaps, all wrists together.</summary>
/// <remarks>Between two groups only the beads in the gaps between them move; so what they share depends on the sum alone, when a bead more takes the same wire
/// wherever it is put and the wire of a turn stays. Wishes are taken where each group stands now, and what a focal hides is not left out.</remarks>
internal sealed class TableMaker(Piece piece, double[]? factors, ReckoningChoices choices, ImmutableArray<Gap> gaps, ImmutableArray<WeighedWrist> wrists)
{
    // Less than this of all the groups' length is nothing: a window that never shares more is left out.
    private const double Nothing = 1e-15;

    private readonly GroupStretches _groups = new(piece);
    private readonly Dictionary<(int First, int End), double[]> _windows = [];
    private readonly ImmutableArray<int> _freeKinds = [.. gaps.Select(g => g.Kind).Distinct().Order()];
    private double _fixed;

    public (GapProblem Problem, bool HasWish) Make()
    {
        var kinds = gaps.Select(g => _freeKinds.IndexOf(g.Kind)).ToImmutableArray();
        var lies = new WornLies(piece, factors, choices);
        // Gap g stands between block g and block g + 1.
        var blockOf = _groups.Runs.Select(run => gaps.Count(g => g.First < run.First)).ToArray();
        var wished = false;
        foreach (var wrist in wrists)
        {
            var worn = lies.Turns.On(wrist.WristMm);
            wished |= Add(wrist.Weight, lies.At(worn.CircumferenceMm), worn, StepsMm(worn.RadiusMm), kinds, blockOf);
        }
        var windows = ImmutableArray.CreateBuilder<GapWindow>();
        foreach (var ((first, end), loss) in _windows.OrderBy(w => w.Key))
        {
            var least = loss.Min();
            if (loss.Max() - least < Nothing) _fixed += least;
            else windows.Add(new GapWindow(first, end, Strides(kinds, first, end).Strides, [.. loss]));
        }
        var own = lies.Turns.On(piece.Wearer.WristMm);
        var steps = StepsMm(own.RadiusMm);
        var room = LengthRoom.Of(piece.Wishes.Free, lies.At(own.CircumferenceMm), choices);
        return (new GapProblem(gaps, kinds, [.. steps], windows.ToImmutable(), _fixed)
        {
            ShorterMm = room.ShorterMm,
            LongerMm = room.LongerMm,
            TiedTo = Ties(),
            MostMoreOfKind = [.. _freeKinds.Select(MostMore)],
        }, wished);
    }

    // One wrist's share of every table. False when nothing is wished there.
    private bool Add(double weight, Lie lie, WornTurn worn, double[] stepMm, ImmutableArray<int> kinds, int[] blockOf)
    {
        var runs = _groups.Runs;
        var (sign, columns, wished) = WishesOf(_groups, piece.Wishes, lie);
        if (wished <= 0) return false;
        var scale = weight / wished;
        _fixed += columns * scale;
        var length = runs.Select(r => (r.End < lie.Count ? lie.StartsMm[r.End] : lie.BeadedMm) - lie.StartsMm[r.First]).ToArray();
        var longest = length.Max();
        double half = worn.AveragingMm, turn = lie.WirePerTurnMm;
        for (var a = 0; a < runs.Length; a++)
        {
            if (sign[a] == 0) continue;
            for (var b = a; b < runs.Length; b++)
            {
                if (_groups.NameOfRun[b] != _groups.NameOfRun[a]) continue;
                var apart = lie.StartsMm[runs[b].First] - lie.StartsMm[runs[a].First];
                var (least, most) = Reach(stepMm, kinds, blockOf[a], blockOf[b]);
                if (apart + least > turn + half + length[a]) break;
                if (apart + most < turn - half - length[b]) continue;
                if (blockOf[a] == blockOf[b])
                {
                    _fixed += sign[a] * scale * AveragedOverlap.Mm(apart, length[a], length[b], turn, half);
                    continue;
                }
                Fill(blockOf[a], blockOf[b], stepMm, kinds, more => sign[a] * scale * AveragedOverlap.Mm(apart + more, length[a], length[b], turn, half));
            }
        }
        return true;
    }

    private void Fill(int first, int end, double[] stepMm, ImmutableArray<int> kinds, Func<double, double> loss)
    {
        var (strides, ranges) = Strides(kinds, first, end);
        if (!_windows.TryGetValue((first, end), out var table)) _windows[(first, end)] = table = new double[ranges.Aggregate(1, (all, range) => checked(all * range))];
        double fewest = 0;
        for (var g = first; g < end; g++) fewest += (gaps[g].Least - gaps[g].Count) * stepMm[kinds[g]];
        for (var key = 0; key < table.Length; key++)
        {
            var more = fewest;
            for (var k = 0; k < ranges.Length; k++)
                if (strides[k] > 0) more += key / strides[k] % ranges[k] * stepMm[k];
            table[key] += loss(more);
        }
    }

    // A kind's key runs from no bead above its fewest to all of them.
    private (ImmutableArray<int> Strides, int[] Ranges) Strides(ImmutableArray<int> kinds, int first, int end)
    {
        var ranges = new int[_freeKinds.Length];
        Array.Fill(ranges, 1);
        for (var g = first; g < end; g++) ranges[kinds[g]] += gaps[g].Most - gaps[g].Least;
        var strides = new int[ranges.Length];
        var stride = 1;
        for (var k = 0; k < ranges.Length; k++)
        {
            if (ranges[k] == 1) continue;
            strides[k] = stride;
            stride = checked(stride * ranges[k]);
        }
        return ([.. strides], ranges);
    }

    private (double Least, double Most) Reach(double[] stepMm, ImmutableArray<int> kinds, int first, int end)
    {
        double least = 0, most = 0;
        for (var g = first; g < end; g++)
        {
            least += (gaps[g].Least - gaps[g].Count) * stepMm[kinds[g]];
            most += (gaps[g].Most - gaps[g].Count) * stepMm[kinds[g]];
        }
        return (least, most);
    }

    // The wire that one bead more takes among its own kind, for each kind that is free, mm; as measured rows scale it where it stands now.
    private double[] StepsMm(double radiusMm) => [.. _freeKinds.Select(kind =>
    {
        var step = new CurveShares(piece.Beads, new StringingOrder([kind, kind, kind], [])).AtRadius(radiusMm)[1];
        return factors is null ? step : step * gaps.Where(g => g.Kind == kind).SelectMany(g => Enumerable.Range(g.First, g.Count)).Average(bead => factors[bead]);
    })];

    // For each group: what of it is to mix less what is to stand in columns, as a share of it; the length of all columns, and of all with a wish.
    internal static (double[] Sign, double ColumnsMm, double WishedMm) WishesOf(GroupStretches groups, Wishes wishes, Lie lie)
    {
        var blocks = new GroupBlocks(groups, wishes, lie);
        var (mix, columns, all) = (new double[groups.Runs.Length], new double[groups.Runs.Length], new double[groups.Runs.Length]);
        for (var i = 0; i < blocks.Count; i++)
        {
            if (blocks.RunOf[i] is not (>= 0 and var run)) continue;
            all[run] += blocks.Lengths[i];
            if (blocks.BinOf[i] == (int)LiningUpWish.Mix) mix[run] += blocks.Lengths[i];
            if (blocks.BinOf[i] == (int)LiningUpWish.Columns) columns[run] += blocks.Lengths[i];
        }
        return ([.. all.Select((length, run) => (mix[run] - columns[run]) / length)], columns.Sum(), mix.Sum() + columns.Sum());
    }

    // Runs that mirror each other about the middle keep equal counts, where they are alike to begin with.
    private ImmutableArray<int> Ties()
    {
        var ties = Enumerable.Range(0, gaps.Length).ToArray();
        if (piece.Wishes.Free.MirroredHalves)
            for (int a = 0, b = gaps.Length - 1; a < b; a++, b--)
                if (gaps[a] with { First = 0 } == gaps[b] with { First = 0 }) ties[b] = a;
        return [.. ties];
    }

    private int MostMore(int kind)
    {
        if (!piece.Wishes.Free.OnHand.TryGetValue(piece.Beads[kind].Id, out var onHand)) return int.MaxValue;
        return onHand - piece.Order.Kinds.Count(k => k == kind);
    }
}
