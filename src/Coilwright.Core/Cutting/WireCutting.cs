using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Cutting;

/// <summary>The one entry point: a plan for cutting the wire of all pieces from the wire there is.</summary>
/// <remarks>Pieces and coils that have no wire in common are planned apart: what is proven of each is proven of all. Model: docs/theory/cutting.md.</remarks>
public static class WireCutting
{
    // Prices are counted in ten-thousandths.
    private const decimal PriceUnits = 10_000;

    /// <summary>Plans.</summary>
    /// <param name="pieces">What is to be cut, at least one; at most <see cref="CuttingRules.MostPieces"/> lengths in all.</param>
    /// <param name="lots">The wire there is.</param>
    /// <param name="rules">What holds for every cut.</param>
    /// <param name="choices">When two coils are the same wire, and which offcuts are kept.</param>
    /// <param name="effort">How much is looked at at most for each kind of wire.</param>
    /// <param name="progress">Is told how the search for each kind of wire comes on.</param>
    /// <param name="cancel">Stops the search: the best plan till then is the answer.</param>
    /// <exception cref="ArgumentOutOfRangeException">There are no pieces, or too many, or one is not longer than nought.</exception>
    public static CuttingPlan Of(IReadOnlyList<WireDemand> pieces, IReadOnlyList<WireLot> lots, CuttingRules rules, ReckoningChoices choices, long effort = CuttingSearch.UsualEffort,
        IProgress<CuttingProgress>? progress = null, CancellationToken cancel = default)
    {
        if (pieces.Count == 0 || pieces.Any(p => p.Count < 1) || pieces.Sum(p => (long)p.Count) > CuttingRules.MostPieces)
            throw new ArgumentOutOfRangeException(nameof(pieces), pieces.Sum(p => (long)p.Count), $"From 1 to {CuttingRules.MostPieces} lengths are planned at once.");
        // Written so that NaN is refused too.
        if (pieces.Any(p => !(p.CutMm > 0 && p.CutMm < int.MaxValue))) throw new ArgumentOutOfRangeException(nameof(pieces), "A length is not above nought.");
        var plan = new Planning(pieces, lots, (int)Math.Ceiling(rules.LossMm - 1e-9), rules.KeepFromMm, choices, effort, progress, cancel);
        return plan.Run();
    }

    /// <summary>One run of the planning: what its parts share.</summary>
    private sealed class Planning(IReadOnlyList<WireDemand> pieces, IReadOnlyList<WireLot> lots, int lossMm, double? keepFromMm, ReckoningChoices choices, long effort, IProgress<CuttingProgress>? progress,
        CancellationToken cancel)
    {
        private readonly bool _priced = lots.All(l => l.IsOffcut || l.Price is not null);
        private readonly List<CutCoil> _coils = [];
        private readonly List<NotCut> _notCut = [];
        private readonly List<MoreWouldDo> _more = [];
        private long _bound, _missingBound;
        private bool _proven = true, _stopped;

        public CuttingPlan Run()
        {
            foreach (var (mine, its) in Apart()) Plan(mine, its);
            var comesOut = _notCut.Count == 0;
            decimal? cost = _priced ? _coils.Sum(c => (lots[c.Lot].IsOffcut ? 0 : lots[c.Lot].Price ?? 0) * c.Times) : null;
            return new CuttingPlan
            {
                Pieces = [.. pieces],
                Lots = [.. lots],
                LossMm = lossMm,
                Coils = [.. _coils.OrderBy(c => !lots[c.Lot].IsOffcut).ThenBy(c => c.Lot).ThenBy(c => c.LeftMm)],
                NotCut = [.. _notCut.OrderBy(n => n.Piece)],
                More = [.. _more.OrderBy(m => m.Lot)],
                Aim = _priced ? CuttingAim.Cost : CuttingAim.NewCoils,
                Cost = cost,
                LeastCost = _priced && comesOut ? _bound / PriceUnits : null,
                LeastNewCoils = !_priced && comesOut ? (int)_bound : null,
                LeastMissingMm = _missingBound,
                IsProven = _proven,
                WasStopped = _stopped,
            };
        }

        // Pieces and lots that hang together: a piece with every lot it may be cut from, a lot with every piece.
        private IEnumerable<(List<int> Pieces, List<int> Lots)> Apart()
        {
            var done = new bool[pieces.Count];
            for (var first = 0; first < pieces.Count; first++)
            {
                if (done[first]) continue;
                done[first] = true;
                var (mine, its) = (new List<int> { first }, new List<int>());
                for (var n = 0; n < mine.Count; n++)
                {
                    for (var l = 0; l < lots.Count; l++)
                    {
                        if (its.Contains(l) || !Same(mine[n], l)) continue;
                        its.Add(l);
                        for (var p = 0; p < pieces.Count; p++)
                        {
                            if (done[p] || !Same(p, l)) continue;
                            done[p] = true;
                            mine.Add(p);
                        }
                    }
                }
                yield return (mine, its);
            }
        }

        private bool Same(int piece, int lot) => WireKinds.Same(pieces[piece].Wire, lots[lot].Wire, choices);

        private void Plan(List<int> mine, List<int> its)
        {
            var toCut = new List<int>();
            foreach (var p in mine)
            {
                if (its.Count == 0) Miss(p, pieces[p].Count, WhyNotCut.NoSuchWire);
                else if (!its.Any(l => Same(p, l) && lots[l].WholeMm >= pieces[p].WholeMm)) Miss(p, pieces[p].Count, WhyNotCut.LongerThanAny);
                else toCut.Add(p);
            }
            if (toCut.Count == 0) return;
            var shelf = new Shelf(pieces, lots, toCut, its, lossMm, Same);
            var found = CuttingSearch.Solve(shelf.Problem(CostOf), effort, progress, cancel);
            // What comes from offcuts alone costs nothing in any way; then as few of them as can be are begun.
            if (found is { ComesOut: true, Cost: 0 })
            {
                shelf = new Shelf(pieces, lots, toCut, [.. its.Where(l => lots[l].IsOffcut)], lossMm, Same);
                found = CuttingSearch.Solve(shelf.Problem(_ => 1), effort, progress, cancel) with { Cost = 0, Bound = 0 };
            }
            _stopped |= found.WasStopped;
            _proven &= found.IsProven;
            _bound += Math.Max(0, found.Bound);
            _missingBound += found.MissingBound;
            foreach (var (piece, count) in shelf.Missing(found)) Miss(piece, count, WhyNotCut.TooLittle);
            if (!found.ComesOut) AskForMore(shelf, its);
            _coils.AddRange(shelf.Coils(found, CostOf).Select(Told));
        }

        private long CostOf(int lot) => lots[lot].IsOffcut ? 0 : _priced ? (long)Math.Ceiling(lots[lot].Price!.Value * PriceUnits) : 1;

        private void Miss(int piece, int count, WhyNotCut why) => _notCut.Add(new NotCut(piece, count, (long)count * pieces[piece].WholeMm, why));

        private void AskForMore(Shelf shelf, List<int> its)
        {
            foreach (var lot in its.Where(l => !lots[l].IsOffcut))
            {
                var found = CuttingSearch.Solve(shelf.ProblemWithMore(lot), effort, progress, cancel);
                _stopped |= found.WasStopped;
                if (found.ComesOut) _more.Add(new MoreWouldDo(lot, (int)found.Cost, found.IsProven));
            }
        }

        private CutCoil Told((int Lot, int Times, ImmutableArray<int> Pieces) coil)
        {
            var lot = lots[coil.Lot];
            var loopMm = lot.Wire.LoopMm;
            var from = 0;
            var cuts = ImmutableArray.CreateBuilder<WireCutMark>();
            foreach (var p in coil.Pieces)
            {
                var mm = pieces[p].WholeMm;
                cuts.Add(new WireCutMark(p, mm, LoopMark.Of(mm, loopMm), from));
                from += mm + lossMm;
            }
            // The last cut takes its part of what is left, unless nothing is.
            var left = Math.Max(0, lot.WholeMm - from);
            return new CutCoil(coil.Lot, coil.Times, cuts.ToImmutable(), left, LoopMark.Of(left, loopMm), left > 0 && left >= (keepFromMm ?? choices.KeepOffcutLoops * loopMm));
        }
    }
}
