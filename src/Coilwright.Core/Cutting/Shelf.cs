using System.Collections.Immutable;

namespace Coilwright.Core.Cutting;

/// <summary>Pieces and lots of one planning as a problem in whole numbers, and back: lengths that are alike are one item, lots that are alike one kind of bar.</summary>
internal sealed class Shelf
{
    // Beyond so many coils what is left is not gathered: it takes as long as the search, and nobody cuts so many by one plan.
    private const int MostToGather = 400;

    private readonly IReadOnlyList<WireDemand> _pieces;
    private readonly IReadOnlyList<WireLot> _lots;
    private readonly int _lossMm;
    private readonly int[][] _items;
    private readonly int[] _its;
    private readonly Func<int, int, bool> _same;

    public Shelf(IReadOnlyList<WireDemand> pieces, IReadOnlyList<WireLot> lots, List<int> toCut, List<int> its, int lossMm, Func<int, int, bool> same)
    {
        (_pieces, _lots, _lossMm, _same) = (pieces, lots, lossMm, same);
        _its = [.. its.Where(l => lots[l].WholeMm > 0)];
        _items = [.. toCut.GroupBy(p => (pieces[p].WholeMm, Lots: string.Concat(_its.Select(l => same(p, l) ? '1' : '0')))).Select(g => g.ToArray())];
    }

    /// <summary>The problem, with a cost for each lot.</summary>
    public CuttingProblem Problem(Func<int, long> costOf) => Problem([.. _its.Select(l => (l, _lots[l].Count, costOf(l)))]);

    /// <summary>The problem in which all that there is costs nothing, and one more of a lot costs 1.</summary>
    public CuttingProblem ProblemWithMore(int lot) =>
        Problem([.. _its.Select(l => (l, _lots[l].Count, l == lot && _lots[l].Count is null ? 1L : 0L)), (lot, null, 1)]);

    private CuttingProblem Problem(IReadOnlyList<(int Lot, int? Count, long Cost)> bars) => new(
        [.. _items.Select(i => new CutItem(_pieces[i[0]].WholeMm, i.Sum(p => _pieces[p].Count)))], [.. bars.Select(b => new BarKind(_lots[b.Lot].WholeMm, b.Count, b.Cost))], _lossMm)
    {
        May = [.. bars.Select(b => _items.Select(i => _same(i[0], b.Lot)).ToImmutableArray())],
    };

    /// <summary>The pieces of what is missing.</summary>
    public IEnumerable<(int Piece, int Count)> Missing(CuttingSolution found)
    {
        for (var i = 0; i < _items.Length; i++)
        {
            var missing = found.Missing[i];
            // Of pieces that are cut alike the last ones go without.
            foreach (var p in _items[i].Reverse())
            {
                var here = Math.Min(missing, _pieces[p].Count);
                if (here > 0) yield return (p, here);
                missing -= here;
            }
        }
    }

    /// <summary>The coils of a way to cut, those alike together, each with its pieces longest first.</summary>
    public IEnumerable<(int Lot, int Times, ImmutableArray<int> Pieces)> Coils(CuttingSolution found, Func<int, long> costOf)
    {
        var coils = found.Patterns.SelectMany(p => Enumerable.Range(0, p.Times)
            .Select(_ => new Coil(_its[p.Bar], [.. p.Counts.SelectMany((n, i) => Enumerable.Repeat(i, n))]))).ToList();
        BeginShorter(coils, costOf);
        if (coils.Count <= MostToGather) Gather(coils, costOf);
        coils.RemoveAll(c => c.Items.Count == 0);
        BeginShorter(coils, costOf);

        var queues = _items.Select(i => new Queue<int>(i.SelectMany(p => Enumerable.Repeat(p, _pieces[p].Count)))).ToArray();
        return [.. coils.OrderBy(c => c.Lot).ThenBy(Room).Select(c => (c.Lot, Pieces: c.Items.OrderByDescending(LengthOf).ThenBy(i => i).Select(i => queues[i].Dequeue()).ToImmutableArray()))
            .GroupBy(c => (c.Lot, Key: string.Join(',', c.Pieces))).Select(g => (g.Key.Lot, g.Count(), g.First().Pieces))];
    }

    private int LengthOf(int item) => _pieces[_items[item][0]].WholeMm;

    // What is left, with the cut that would come next taken as free: that of a coil that comes out exactly is none.
    private int Room(Coil coil) => _lots[coil.Lot].WholeMm + _lossMm - coil.Items.Sum(i => LengthOf(i) + _lossMm);

    // A coil whose pieces a shorter one holds as well, at no more cost, is left whole.
    private void BeginShorter(List<Coil> coils, Func<int, long> costOf)
    {
        var free = _its.ToDictionary(l => l, l => _lots[l].Count is { } n ? n - coils.Count(c => c.Lot == l) : int.MaxValue);
        foreach (var coil in coils.OrderByDescending(c => _lots[c.Lot].WholeMm - Room(c)))
        {
            var needs = _lots[coil.Lot].WholeMm - Room(coil);
            var shorter = _its.Where(l => free[l] > 0 && _lots[l].WholeMm < _lots[coil.Lot].WholeMm && _lots[l].WholeMm >= needs && costOf(l) <= costOf(coil.Lot) && coil.Items.All(i => _same(_items[i][0], l)))
                .OrderBy(l => _lots[l].WholeMm).ThenBy(l => l).Cast<int?>().FirstOrDefault();
            if (shorter is not { } lot) continue;
            if (_lots[coil.Lot].Count is not null) free[coil.Lot]++;
            if (_lots[lot].Count is not null) free[lot]--;
            coil.Lot = lot;
        }
    }

    // Moves pieces from the coil with more left into one with less: one long end is worth more than two short ones. Ends, as the sum of the squares only grows.
    private void Gather(List<Coil> coils, Func<int, long> costOf)
    {
        while (true)
        {
            var moved = false;
            foreach (var from in coils.OrderByDescending(Room).ToList())
            {
                foreach (var item in from.Items.Distinct().OrderBy(LengthOf).ToList())
                {
                    var room = Room(from);
                    var to = coils.Where(c => c != from && c.Items.Count > 0 && costOf(c.Lot) <= costOf(from.Lot) && _same(_items[item][0], c.Lot) && Room(c) <= room && Room(c) >= LengthOf(item) + _lossMm)
                        .OrderBy(Room).FirstOrDefault();
                    if (to is null) continue;
                    from.Items.Remove(item);
                    to.Items.Add(item);
                    moved = true;
                }
            }
            if (!moved) return;
        }
    }

    private sealed class Coil(int lot, List<int> items)
    {
        public int Lot { get; set; } = lot;

        public List<int> Items { get; } = items;
    }
}
