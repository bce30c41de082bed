using System.Collections.Immutable;
using Coilwright.Core.Editing;
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
}

/// <summary>A better order.</summary>
/// <param name="Kind">What it is for.</param>
/// <param name="Edit">The edit that comes to it.</param>
/// <param name="Changed">Beads put in and taken out, all together.</param>
/// <param name="Judged">How it does, in full.</param>
/// <param name="After">The piece afterwards on the wearer's wrist.</param>
/// <param name="IsProven">For <see cref="IdeaKind.SmallestCure"/>: that every smaller change was tried in full and none cures. For the others: that by the
/// tables none is better.</param>
public sealed record Idea(IdeaKind Kind, SetRuns Edit, int Changed, OrderJudgement Judged, Reckoned After, bool IsProven);

/// <summary>Why there are no ideas.</summary>
public enum NoIdeas
{
    /// <summary>There are some.</summary>
    None,

    /// <summary>No group is wished to mix or to stand in columns.</summary>
    NoWish,

    /// <summary>There is no run of spacers or connectors between groups that may change.</summary>
    NoGap,

    /// <summary>No counts are allowed: see <see cref="Arranged.Conflict"/>.</summary>
    NoneAllowed,

    /// <summary>No allowed order does better than the one that is strung.</summary>
    NoneBetter,
}

/// <summary>A rule that counts have to keep.</summary>
/// <param name="Code"><c>length</c> or <c>on-hand</c>.</param>
/// <param name="BeadId">The kind that there is too little of; null for the length.</param>
public sealed record CountRule(string Code, string? BeadId);

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

    /// <summary>The ideas, from the smallest change to the largest; no two the same.</summary>
    public required ImmutableArray<Idea> Ideas { get; init; }

    /// <summary>Why there are none.</summary>
    public required NoIdeas WhyNone { get; init; }

    /// <summary>Rules that cannot all be kept, as few as say so; empty when they can.</summary>
    public ImmutableArray<CountRule> Conflict { get; init; } = [];

    /// <summary>The least loss found by the tables with at most so many beads changed, from 0 on; as far as every change was looked at.</summary>
    public ImmutableArray<double> LeastLossByChange { get; init; } = [];

    /// <summary>The best counts by the tables, and what is known of better ones; null when none are allowed.</summary>
    public FoundCounts? Best { get; init; }

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
    private const int MostChanges = 1_000_000, MostJudgings = 20_000;

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

        private GapProblem Problem => _space.Problem;

        public Arranged Run()
        {
            int[] start = [.. Problem.Start];
            _before = _space.Judge(start);
            if (!_space.HasWish) return Outcome(NoIdeas.NoWish);
            if (Problem.Count == 0) return Outcome(NoIdeas.NoGap);
            if (CountRules.Conflict(Problem, _space.KindIds) is { IsEmpty: false } conflict) return Outcome(NoIdeas.NoneAllowed) with { Conflict = conflict };
            try
            {
                LookAtSmallChanges();
            }
            catch (OperationCanceledException)
            {
                // What was found so far is given back.
            }
            var best = new BestCounts(request.Effort, request.Seed).Find(Problem, progress, cancel);
            if (best is not null) Offer(IdeaKind.Best, best.Counts.AsSpan(), best.IsProven);
            return Outcome(best is null ? NoIdeas.NoneAllowed : _ideas.Count == 0 ? NoIdeas.NoneBetter : NoIdeas.None) with { Best = best };
        }

        private Arranged Outcome(NoIdeas why) => new()
        {
            Before = Reckoning.Of(piece, data),
            BeforeJudged = _before,
            Gaps = _space.Gaps,
            Wrists = _space.Wrists,
            Ways = Problem.Ways,
            Ideas = [.. _ideas.OrderBy(i => i.Changed).ThenBy(i => i.Kind)],
            WhyNone = why,
            LeastLossByChange = [.. _leastByChange],
            TableLoss = Problem.Loss(Problem.Start.AsSpan()),
            WasStopped = cancel.IsCancellationRequested,
        };

        // Every change of one bead, then of two, and so on, as long as the effort reaches; each judged in full until one cures.
        private void LookAtSmallChanges()
        {
            var judgings = Math.Min(200L * request.Effort, MostJudgings);
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
            if (leastFew is not null) Offer(IdeaKind.FewBeads, leastFew, allFew);
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
            if (_space.Edit(counts) is not { } edit || _ideas.Exists(i => i.Edit.Runs.SequenceEqual(edit.Runs))) return;
            var judged = _space.Judge(counts);
            // The tables leave something out: what only they hold for better is no idea. A cure may cost elsewhere; it is offered for what it cures.
            if (kind != IdeaKind.SmallestCure && judged.Loss > _before.Loss - LeastGain) return;
            if (PieceEditing.Apply(piece, edit, data) is not EditOutcome.Done done) return;
            _ideas.Add(new Idea(kind, edit, Problem.Changed(counts), judged, Reckoning.Of(done.Piece, data), proven));
        }
    }
}
