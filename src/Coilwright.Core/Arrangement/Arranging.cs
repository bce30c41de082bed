using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Fit;
using Coilwright.Core.Measures;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Arrangement;

/// <summary>What an idea is for.</summary>
public enum IdeaKind
{
    /// <summary>The fewest beads put in and taken out with which the wish holds on every wrist.</summary>
    SmallestCure,

    /// <summary>The best that a few beads can do.</summary>
    FewBeads,

    /// <summary>The best of all that was found.</summary>
    Best,

    /// <summary>The best that two groups do that change places.</summary>
    OneSwap,

    /// <summary>The best that one bead does that stands in for another everywhere.</summary>
    StandIn,

    /// <summary>The same order, its start elsewhere round the wrist.</summary>
    OtherStart,

    /// <summary>The same order on another coil.</summary>
    OtherCoil,

    /// <summary>The best of all that was found where groups may change places and beads stand in for others, and then runs have other counts.</summary>
    OtherOrder,
}

/// <summary>A better order.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Edit">The edit that comes to it.</param>
/// <param name="Changed">Beads put in, taken out, moved and replaced, all together; 0 where the same order is only worn otherwise.</param>
/// <param name="Judged">How it does, in full.</param>
/// <param name="After">The piece afterwards on the wearer's wrist.</param>
/// <param name="IsProven">For <see cref="IdeaKind.SmallestCure"/>: that every smaller change was tried in full and none cures. For <see cref="IdeaKind.OneSwap"/> and
/// <see cref="IdeaKind.StandIn"/>, <see cref="IdeaKind.OtherStart"/> on the places of its grid and <see cref="IdeaKind.OtherCoil"/>: that every other was judged in full and none is better. For <see cref="IdeaKind.OtherOrder"/> never: with groups
/// free there is only a weak bound. For the others: that by the tables none is better; and where what nineteen in twenty do not exceed is judged, which no table
/// holds, that every other was judged in full and none is better.</param>
public sealed record Idea(IdeaKind Kind, PieceEdit Edit, int Changed, OrderJudgement Judged, Reckoned After, bool IsProven)
{
    /// <summary>The runs that it gives other counts; where it moves groups too, counted after those are moved.</summary>
    public ImmutableArray<RunCount> Runs => Edit switch
    {
        SetRuns set => set.Runs,
        Restring restring => restring.Runs,
        _ => [],
    };
}

/// <summary>Why there are no ideas.</summary>
public enum NoIdeas
{
    /// <summary>There are some.</summary>
    None,

    /// <summary>No group is wished to mix or to stand in columns.</summary>
    NoWish,

    /// <summary>There is no run of spacers or connectors between groups that may change, nor any group or bead.</summary>
    NoGap,

    /// <summary>No counts are allowed: see <see cref="Arranged.Conflict"/>.</summary>
    NoneAllowed,

    /// <summary>No allowed order does better than the one that is strung.</summary>
    NoneBetter,
}

/// <summary>Something that a better order has to keep.</summary>
/// <param name="Code"><c>length</c>, <c>on-hand</c>, <c>focal</c> or <c>rule</c>.</param>
/// <param name="BeadId">The kind that there is too little of; null for anything but <c>on-hand</c>.</param>
/// <param name="Rule">The rule of the order; null for anything but <c>rule</c>.</param>
public sealed record CountRule(string Code, string? BeadId, OrderRule? Rule = null);

/// <summary>What came of looking for a better order.</summary>
public sealed record Arranged
{
    /// <summary>The piece as it is, on the wearer's wrist.</summary>
    public required Reckoned Before { get; init; }

    /// <summary>How it does as it is.</summary>
    public required OrderJudgement BeforeJudged { get; init; }

    /// <summary>The gaps that were free.</summary>
    public required ImmutableArray<Gap> Gaps { get; init; }

    /// <summary>The wrists that it was judged on.</summary>
    public required ImmutableArray<WeighedWrist> Wrists { get; init; }

    /// <summary>In how many ways the counts can be chosen within their ranges.</summary>
    public required double Ways { get; init; }

    /// <summary>How many groups may change places, or take beads that stand in; 0 when none may.</summary>
    public int FreeGroups { get; init; }

    /// <summary>In how many ways they may, the rules not looked at; 1 when none may.</summary>
    public double GroupWays { get; init; } = 1;

    /// <summary>The best order of the groups with the runs as they are, by the tables; null when it was not looked for or none is allowed. Its bound is weak
    /// where not every order was gone through.</summary>
    public FoundOrder? BestOrder { get; init; }

    /// <summary>The ideas, from the smallest change to the largest; no two the same.</summary>
    public required ImmutableArray<Idea> Ideas { get; init; }

    /// <summary>Why there are none.</summary>
    public required NoIdeas WhyNone { get; init; }

    /// <summary>Things that cannot all be kept together, and could if any one of them were not asked for; empty when they can, or that is not known.</summary>
    public ImmutableArray<CountRule> Conflict { get; init; } = [];

    /// <summary>The least loss found by the tables with at most so many beads changed, from 0 on; as far as every change was looked at.</summary>
    public ImmutableArray<double> LeastLossByChange { get; init; } = [];

    /// <summary>The best counts by the tables, and what is known of better ones; null when none are allowed.</summary>
    public FoundCounts? Best { get; init; }

    /// <summary>What was judged. Tables and bounds are of the mean, whatever is judged in full.</summary>
    public JudgedBy JudgedBy { get; init; }

    /// <summary>The loss of the order as it is, by the tables.</summary>
    public double TableLoss { get; init; }

    /// <summary>Whether the search was stopped before its end.</summary>
    public bool WasStopped { get; init; }
}

/// <summary>What is asked of a search.</summary>
/// <param name="Effort">How much to try, 1 to <see cref="MostEffort"/>. The same effort and seed give the same ideas on any machine.</param>
/// <param name="Seed">Seed of the draws.</param>
public sealed record ArrangeRequest(int Effort = 10, ulong Seed = 1)
{
    /// <summary>The most that can be asked for.</summary>
    public const int MostEffort = 100_000;
}

/// <summary>The one entry point: better orders for a piece under its wishes, smallest change first.</summary>
public static class Arranging
{
    // A few beads are what a maker restrings without taking the whole piece off. The sentences of this idea say "three".
    private const int Few = 3;

    // Beyond that many beads a smallest cure is no small change any more.
    private const int MostChangedInCure = 6;

    // Half a percent of the groups' length is about one bead of a hundred that no longer lies over its like: less is not worth restringing.
    private const double LeastGain = 0.005;

    // Whatever the effort: more changes do not fit into memory, and judging more in full would leave no time for the search.
    private const int MostChanges = 1_000_000, MostJudgings = 20_000, MostSwaps = 500;

    /// <summary>Looks for better orders.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">Materials, steels, our choices and adults' wrists.</param>
    /// <param name="request">How much to try.</param>
    /// <param name="progress">Is told of each better choice of counts.</param>
    /// <param name="cancel">Stops the search: the ideas so far are given back.</param>
    /// <exception cref="ArgumentOutOfRangeException">The effort is not from 1 to <see cref="ArrangeRequest.MostEffort"/>.</exception>
    public static Arranged Of(Piece piece, ReckoningData data, ArrangeRequest? request = null, IProgress<FoundCounts>? progress = null,
        CancellationToken cancel = default)
    {
        request ??= new ArrangeRequest();
        ArgumentOutOfRangeException.ThrowIfLessThan(request.Effort, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(request.Effort, ArrangeRequest.MostEffort);
        return new Search(piece, data, request, progress, cancel).Run();
    }

    private sealed class Search(Piece piece, ReckoningData data, ArrangeRequest request, IProgress<FoundCounts>? progress, CancellationToken cancel)
    {
        private readonly OrderSpace _space = new(piece, data);
        private readonly List<Idea> _ideas = [];
        private readonly List<double> _leastByChange = [];
        private OrderJudgement _before = null!;
        private Reckoned _strung = null!;
        private GroupOrders? _orders;
        private FoundOrder? _bestOrder;
        private int[]? _fewInFull;

        private GapProblem Problem => _space.Problem;

        private bool ByMean => piece.Wishes.JudgedBy == JudgedBy.Mean;

        private long MostJudged => Math.Min(200L * request.Effort, MostJudgings);

        public Arranged Run()
        {
            int[] start = [.. Problem.Start];
            _before = _space.Judge(start);
            _strung = Reckoning.Of(piece, data);
            if (!_space.HasWish) return Outcome(NoIdeas.NoWish);
            var free = piece.Wishes.Free;
            if ((free.GroupOrder || !free.StandIns.IsDefaultOrEmpty) && new GroupOrders(piece, data) is { HasChoice: true } orders) _orders = orders;
            var everywhere = free.StandIns.IsDefault ? [] : free.StandIns.Where(s => s.Everywhere).ToImmutableArray();
            var (starts, coils) = (Refits.Starts(piece), Refits.Coils(piece));
            var noRefit = starts.IsEmpty && coils.IsEmpty;
            if (Problem.Count == 0 && _orders is null && everywhere.IsEmpty && noRefit) return Outcome(NoIdeas.NoGap);
            try
            {
                LookAtRefits(IdeaKind.OtherStart, starts);
                LookAtRefits(IdeaKind.OtherCoil, coils);
            }
            catch (OperationCanceledException)
            {
                // What was found so far is given back.
            }
            // What no count can keep, a turn of the whole may.
            if (new WishConflict(piece, _space, _orders).Find(cancel) is { IsEmpty: false } conflict)
                return Outcome(_ideas.Count == 0 ? NoIdeas.NoneAllowed : NoIdeas.None) with { Conflict = conflict };
            FoundCounts? best = null;
            try
            {
                LookAtSmallChanges();
                if (_orders is not null) LookAtSwaps(_orders);
                LookAtStandIns(everywhere);
            }
            catch (OperationCanceledException)
            {
                // What was found so far is given back.
            }
            if (Problem.Count > 0) best = new BestCounts(request.Effort, request.Seed).Find(Problem, ByMean ? progress : null, cancel);
            if (best is not null && ByMean) Offer(IdeaKind.Best, best.Counts.AsSpan(), best.IsProven);
            if (best is not null && !ByMean) LookInFull(best);
            if (_orders is not null) LookAtOrders(_orders);
            var none = best is null && _bestOrder is null && everywhere.IsEmpty && noRefit ? NoIdeas.NoneAllowed : NoIdeas.NoneBetter;
            return Outcome(_ideas.Count == 0 ? none : NoIdeas.None) with { Best = best };
        }

        private Arranged Outcome(NoIdeas why) => new()
        {
            Before = _strung,
            BeforeJudged = _before,
            Gaps = _space.Gaps,
            Wrists = _space.Wrists,
            Ways = Problem.Ways,
            FreeGroups = _orders?.Places.Length ?? 0,
            GroupWays = _orders?.Problem.Ways ?? 1,
            BestOrder = _bestOrder,
            Ideas = [.. _ideas.OrderBy(i => i.Changed).ThenBy(i => i.Kind)],
            WhyNone = why,
            JudgedBy = piece.Wishes.JudgedBy,
            LeastLossByChange = [.. _leastByChange],
            TableLoss = Problem.Loss(Problem.Start.AsSpan()),
            WasStopped = cancel.IsCancellationRequested,
        };

        // The same order worn otherwise: every way in full.
        private void LookAtRefits(IdeaKind kind, ImmutableArray<Refit> refits)
        {
            var judged = new OrderJudgement[refits.Length];
            SharedWork.Run(refits.Length, (from, to) =>
            {
                for (var i = from; i < to; i++)
                {
                    cancel.ThrowIfCancellationRequested();
                    judged[i] = JudgeStrung(refits[i].After);
                }
            }, cancel);
            // One that cures before any that does not; of equally good ones the nearest to what is.
            foreach (var (refit, how) in refits.Zip(judged).OrderBy(r => r.Second.FailingMm.Length > 0).ThenBy(r => Math.Round(r.Second.Loss!.Value, 9))
                .ThenBy(r => Math.Abs(r.First.TurnedDeg)).ThenBy(r => Math.Abs(r.First.After.Wire.LoopMm - piece.Wire.LoopMm)))
            {
                cancel.ThrowIfCancellationRequested();
                // All is turned by as much, the focal too.
                var bringsFocal = kind == IdeaKind.OtherStart && _strung.Focal is { } focal && !IsOnTop(focal.AngleDeg) && IsOnTop(Angles.NormalizedDeg(focal.AngleDeg + refit.TurnedDeg));
                if (!bringsFocal && how.Loss > _before.Loss - LeastGain) continue;
                // The edit leads to the piece that was judged.
                if (PieceEditing.Apply(piece, refit.Edit, data) is not EditOutcome.Done done) continue;
                var after = Reckoning.Of(done.Piece, data);
                if (!KeepsButLength(after) || WarnsMore(after)) continue;
                _ideas.Add(new Idea(kind, refit.Edit, 0, how, after, true));
                return;
            }
        }

        // Another coil may be too large or too small, and another start may hide something: what she would be told of then, and is not now.
        private bool WarnsMore(Reckoned after) =>
            after.Notices.Where(n => n.Severity >= Severity.Warn || n.Code == NoticeCodes.HangsLoose).Select(n => n.Code).Except(_strung.Notices.Select(n => n.Code)).Any();

        // Every change of one bead, then of two, and so on, as long as the effort reaches; each judged in full until one cures.
        private void LookAtSmallChanges()
        {
            var judgings = MostJudged;
            var few = new List<int[]>();
            var least = Problem.Allows(Problem.Start.AsSpan()) ? Problem.Loss(Problem.Start.AsSpan()) : double.PositiveInfinity;
            int[]? leastFew = null;
            var (cured, all, allFew) = (_before.FailingMm.IsEmpty, true, true);
            _leastByChange.Add(least);
            for (var changed = 1; changed <= MostChangedInCure && (!cured || changed <= Few); changed++)
            {
                if (SmallChanges.Of(Problem, changed, most: (int)Math.Min(20_000L * request.Effort, MostChanges), cancel) is not { } list)
                {
                    allFew &= changed > Few;
                    break;
                }
                var changes = list.Select(counts => (Counts: counts, Loss: Problem.Loss(counts))).OrderBy(c => c.Loss).ToArray();
                if (changes.Length > 0 && changes[0].Loss < least - FoundCounts.Rounding)
                {
                    least = changes[0].Loss;
                    if (changed <= Few) leastFew = changes[0].Counts;
                }
                if (changed <= Few && !ByMean) few.AddRange(changes.Select(c => c.Counts));
                _leastByChange.Add(least);
                if (cured) continue;
                var tried = (int)Math.Min(changes.Length, judgings);
                judgings -= tried;
                if (FirstCure(changes.AsSpan(0, tried)) is { } cure)
                {
                    cured = true;
                    Offer(IdeaKind.SmallestCure, cure, all);
                }
                all &= tried == changes.Length;
            }
            if (leastFew is not null && ByMean) Offer(IdeaKind.FewBeads, leastFew, allFew);
            if (ByMean) return;
            // The likeliest first: by the tables, which hold the mean.
            var judged = new InFull(_space, MostJudged, cancel).Judge([.. few.OrderBy(counts => Problem.Loss(counts))]);
            if (InFull.Best(judged) is not { } best) return;
            _fewInFull = best.Counts;
            Offer(IdeaKind.FewBeads, best.Counts, allFew && judged.Length == few.Count);
        }

        // What nineteen in twenty do not exceed does not add up over pairs of groups: no table holds it, and no bound is known of it.
        private void LookInFull(FoundCounts byMean)
        {
            IEnumerable<int[]> starts = [[.. byMean.Counts], .. Problem.Allows(Problem.Start.AsSpan()) ? [Problem.Start.ToArray()] : Array.Empty<int[]>()];
            if (new InFull(_space, MostJudged, cancel).Find(_fewInFull is null ? starts : starts.Append(_fewInFull)) is { } found)
                Offer(IdeaKind.Best, found.Counts, found.IsProven);
        }

        private int[]? FirstCure(ReadOnlySpan<(int[] Counts, double Loss)> changes)
        {
            // Several are judged at once, and of those that cure the first in order is taken: the outcome does not hang on the number of threads.
            const int AtOnce = 64;
            for (var from = 0; from < changes.Length; from += AtOnce)
            {
                var some = changes.Slice(from, Math.Min(AtOnce, changes.Length - from)).ToArray();
                var cures = new bool[some.Length];
                SharedWork.Run(some.Length, (first, end) =>
                {
                    for (var i = first; i < end; i++)
                    {
                        cancel.ThrowIfCancellationRequested();
                        cures[i] = _space.Judge(some[i].Counts, stopAtFailure: true).FailingMm.IsEmpty;
                    }
                }, cancel);
                if (Array.IndexOf(cures, true) is >= 0 and var found) return some[found].Counts;
            }
            return null;
        }

        private void Offer(IdeaKind kind, ReadOnlySpan<int> counts, bool proven)
        {
            if (_space.Edit(counts) is not { } edit || _ideas.Exists(i => i.Edit is SetRuns set && set.Runs.SequenceEqual(edit.Runs))) return;
            Offer(kind, edit, Problem.Changed(counts), _space.Judge(counts), proven);
        }

        private void Offer(IdeaKind kind, OrderEdit edit, int changed, OrderJudgement judged, bool proven)
        {
            // The tables leave something out: what only they hold for better is no idea. A cure may cost elsewhere; it is offered for what it cures.
            if (kind != IdeaKind.SmallestCure && judged.Loss > _before.Loss - LeastGain) return;
            if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done) return;
            var after = Reckoning.Of(done.Piece, data);
            if (KeepsAll(after)) _ideas.Add(new Idea(kind, edit, changed, judged, after, proven));
        }

        // What binds every idea, as it comes out in full: rules, length, beads to hand, the focal.
        private bool KeepsAll(Reckoned after) => LengthRoom.Keeps(piece.Wishes.Free, _strung.Lie, after.Lie, data.Choices) && KeepsButLength(after);

        private bool IsOnTop(double focalDeg) => piece.Wishes.FocalWithinDeg is not { } within || Math.Abs(focalDeg) <= within + 0.5;

        private bool KeepsButLength(Reckoned after)
        {
            var free = piece.Wishes.Free;
            return RuleBreaks.Keeps(after.Piece.Order, after.Piece.Beads, piece.Wishes.Rules)
                && free.OnHand.All(hand => after.Counts.Where(c => c.Bead.Id == hand.Key).Sum(c => c.Count) <= hand.Value)
                && (after.Focal is not { } focal || IsOnTop(focal.AngleDeg));
        }

        // Two groups that change places: every pair by the tables, and the best of them in full.
        private void LookAtSwaps(GroupOrders orders)
        {
            var problem = orders.Problem;
            var all = new List<(int P, int Q)>();
            for (var p = 0; p < problem.Places; p++)
                for (var q = p + 1; q < problem.Places; q++)
                    if (problem.Start[p] != problem.Start[q]) all.Add((p, q));
            // Of very many some, drawn by the seed.
            var most = (int)Math.Min(MostSwaps * request.Effort, MostChanges);
            var draws = new SeededDraws(request.Seed, ulong.MaxValue);
            for (var i = 0; i < most && all.Count > most; i++)
            {
                var j = i + draws.Below((ulong)i, all.Count - i);
                (all[i], all[j]) = (all[j], all[i]);
            }
            var losses = new double?[Math.Min(all.Count, most)];
            SharedWork.Run(losses.Length, (from, to) =>
            {
                for (var i = from; i < to; i++)
                {
                    cancel.ThrowIfCancellationRequested();
                    losses[i] = EveryOrder.Kept(problem, Swapped(problem, all[i]));
                }
            }, cancel);
            (int[] Things, double Loss)[] pairs = [.. losses.Select((loss, i) => (Loss: loss, Pair: all[i])).Where(pair => pair.Loss is not null)
                .OrderBy(pair => pair.Loss).Select(pair => (Swapped(problem, pair.Pair), pair.Loss!.Value))];
            var tried = (int)Math.Min(pairs.Length, 20L * request.Effort);
            var judged = new OrderJudgement[tried];
            SharedWork.Run(tried, (from, to) =>
            {
                for (var i = from; i < to; i++)
                {
                    cancel.ThrowIfCancellationRequested();
                    var (order, factors) = orders.Strung(pairs[i].Things);
                    judged[i] = orders.Judge.Of(order, factors);
                }
            }, cancel);
            // One that cures before any that does not.
            var best = Enumerable.Range(0, tried).OrderBy(i => judged[i].FailingMm.Length > 0).ThenBy(i => judged[i].Loss).Cast<int?>().FirstOrDefault();
            if (best is { } at) OfferOrder(IdeaKind.OneSwap, orders.Edit(pairs[at].Things)!, tried == pairs.Length && losses.Length == all.Count);
        }

        private static int[] Swapped(OrderProblem problem, (int P, int Q) pair)
        {
            int[] things = [.. problem.Start];
            (things[pair.P], things[pair.Q]) = (things[pair.Q], things[pair.P]);
            if (problem.IsMirrored) (things[^(pair.P + 1)], things[^(pair.Q + 1)]) = (things[pair.P], things[pair.Q]);
            return things;
        }

        private void LookAtStandIns(ImmutableArray<StandIn> everywhere)
        {
            var best = (Edit: (ReplaceEverywhere?)null, Judged: _before, Changed: 0);
            foreach (var standIn in everywhere)
            {
                cancel.ThrowIfCancellationRequested();
                var edit = new ReplaceEverywhere(standIn.Bead, standIn.With);
                if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done || !KeepsAll(Reckoning.Of(done.Piece, data))) continue;
                var judged = JudgeStrung(done.Piece);
                if (judged.Loss < best.Judged.Loss) best = (edit, judged, done.Beads.Count);
            }
            if (best.Edit is not null) Offer(IdeaKind.StandIn, best.Edit, best.Changed, best.Judged, true);
        }

        // The best order of the groups, and from there the best counts.
        private void LookAtOrders(GroupOrders orders)
        {
            _bestOrder = new BestOrder(request.Effort, request.Seed).Find(orders.Problem, progress is null || !ByMean ? null : new Teller(progress), cancel);
            if (_bestOrder is null || orders.Edit(_bestOrder.Things.AsSpan()) is not { } edit || PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done) return;
            var space = new OrderSpace(done.Piece, data);
            var counts = cancel.IsCancellationRequested || space.Problem.Count == 0 ? null : new BestCounts(request.Effort, request.Seed).Find(space.Problem, null, cancel);
            if (counts is not null && space.Edit(counts.Counts.AsSpan()) is { } runs && space.Judge(counts.Counts.AsSpan()).Loss < JudgeStrung(done.Piece).Loss)
            {
                OfferOrder(IdeaKind.OtherOrder, edit with { Runs = runs.Runs }, false);
                // Kept or not, by the length of the piece as it was; where not, the order alone may be.
                if (_ideas.Exists(i => i.Kind == IdeaKind.OtherOrder)) return;
            }
            OfferOrder(IdeaKind.OtherOrder, edit, false);
        }

        private void OfferOrder(IdeaKind kind, Restring edit, bool proven)
        {
            if (_ideas.Exists(i => i.Edit is Restring other && other.Swaps.SequenceEqual(edit.Swaps) && other.StandIns.SequenceEqual(edit.StandIns) && other.Runs.SequenceEqual(edit.Runs))) return;
            if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done) return;
            var moved = PieceEditing.Apply(piece, edit with { Runs = [] }, data) is EditOutcome.Done groups ? groups.Beads.Count : 0;
            var changed = moved + edit.Runs.Sum(r => Math.Abs(r.To - r.Count));
            Offer(kind, edit, changed, JudgeStrung(done.Piece), proven);
        }

        private OrderJudgement JudgeStrung(Piece strung)
        {
            var bench = BenchCorrection.Of(strung, data.Choices.RulerErrorMm);
            return new FullJudge(strung with { Beads = bench.Kinds }, data.Choices, _space.Wrists).Of(strung.Order, bench.Factors);
        }

        // Orders of groups are told as counts are: by their loss and bound.
        private sealed class Teller(IProgress<FoundCounts> to) : IProgress<FoundOrder>
        {
            public void Report(FoundOrder value) => to.Report(new FoundCounts([], value.Loss, value.Bound, value.Looked));
        }
    }
}
