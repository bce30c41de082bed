using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Making;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Grading;

/// <summary>Makes one size of a design after the other.</summary>
/// <remarks>How: docs/theory/sizes.md.</remarks>
internal sealed class SizeMaker
{
    // Half a percent of the groups' length, as for ideas: what gains less is not worth an uneven string.
    private const double LeastGain = 0.005;

    // Ways that come out are looked at till the wish holds in one; so many at most, lest a wish that no size can keep takes all the time.
    private const int MostWays = 4;

    // Of the tolerance, so that what the tables leave out has room.
    private const double NearlyAll = 0.8;

    // A size is one of many, and its counts matter more than their proof.
    private const int MostStates = 1 << 14;

    // Whole groups at an end: a size with as many more or fewer is another design.
    private const int MostSteps = 300;

    private readonly Piece _piece;
    private readonly ReckoningData _data;
    private readonly SizesRequest _request;
    private readonly Reckoned _base;
    private readonly CoilChooser _coils;
    private readonly WantedLength _wanted;
    private readonly bool _isMirrored, _hasFocal;
    private readonly OrderJudgement? _baseJudged;

    public SizeMaker(Piece piece, ReckoningData data, SizesRequest request, CancellationToken cancel)
    {
        (_piece, _data, _request) = (piece, data, request);
        _base = Reckoning.Of(piece, data, new ReckonRequest { Seed = request.Seed }, cancel);
        (_coils, _wanted) = (new CoilChooser(_base), new WantedLength(_base));
        _isMirrored = piece.Wishes.Free.MirroredHalves || IsMirrored(piece);
        _hasFocal = piece.Order.Kinds.Any(kind => piece.Beads[kind].Role == Role.Focal);
        _baseJudged = Judged(piece);
        Gaps = Arrangement.Gaps.Of(piece, data.Choices);
    }

    public Reckoned Base => _base;

    public ImmutableArray<Gap> Gaps { get; }

    public WantedLength Wanted => _wanted;

    public bool Mirrored => _isMirrored;

    private double ToleranceMm => _wanted.ToleranceMm;

    /// <summary>The size for a wrist.</summary>
    public Size Make(double wristMm, CancellationToken cancel)
    {
        if (wristMm == _piece.Wearer.WristMm) return Finished(Made.Unchanged(Regrouped.Unchanged(_piece)), _coils.Own(wristMm), cancel);
        var coil = _coils.On(wristMm);
        var start = Regrouped.Unchanged(On(_piece, wristMm, coil.Wire));
        var (beaded, wanted) = _wanted.Of(start.Piece, _data.Choices);
        if (Math.Abs(beaded - wanted) <= ToleranceMm && !FailsMoreThanBase(Judged(start.Piece))) return Finished(Made.Unchanged(start), coil, cancel);

        Made? best = null, nearest = null;
        var ways = 0;
        foreach (var regrouped in Steps(start, more: wanted > beaded))
        {
            Made? here = null;
            foreach (var reach in Reaches())
            {
                cancel.ThrowIfCancellationRequested();
                here = Even(regrouped, reach);
                if (here is null) continue;
                if (nearest is null || Math.Abs(here.OffMm) < Math.Abs(nearest.OffMm) - 1e-9) nearest = here;
                if (!here.ComesOut(ToleranceMm)) continue;
                var made = WellLined(here, reach, cancel);
                if (best is null || IsBetter(made, best)) best = made;
                if (!FailsMoreThanBase(best.Judged) || ++ways == MostWays) return Finished(best, coil, cancel);
            }
            // With the runs as short as they may be it is too long already, or the other way round: more of the same leads further away.
            if (_base.Repeat is null && here is not null && (wanted > beaded ? here.OffMm > ToleranceMm : here.OffMm < -ToleranceMm)) break;
        }
        return Finished(best ?? nearest ?? Made.Unchanged(start), coil, cancel);
    }

    /// <summary>The order of another size on this one's wrist and coil.</summary>
    public Size Worn(Size order, double wristMm, SizeCoil coil, CancellationToken cancel) =>
        Read(On(order.Piece, wristMm, coil.Wire), coil, order.Runs, order.Groups, order.IsProven, cancel);

    // What may be put on or taken off at the ends, from nothing on; but a plain repeat is its own measure: as many whole ones as come nearest, and so on.
    private IEnumerable<Regrouped> Steps(Regrouped start, bool more)
    {
        if (_base.Repeat is null) return Stepped(start, more);
        var (all, past) = (new List<(Regrouped Regrouped, double OffMm)>(), false);
        foreach (var regrouped in Stepped(start, more))
        {
            var (beaded, wanted) = _wanted.Of(regrouped.Piece, _data.Choices);
            all.Add((regrouped, beaded - wanted));
            if (past) break;
            past = beaded > wanted == more;
        }
        return all.OrderBy(s => Math.Abs(s.OffMm)).Select(s => s.Regrouped);
    }

    private IEnumerable<Regrouped> Stepped(Regrouped start, bool more)
    {
        yield return start;
        var now = start;
        for (var step = 0; step < MostSteps; step++)
        {
            // Where a focal or mirrored halves are to stay where they are, at both ends alike.
            var next = _isMirrored || _hasFocal ? EndGroups.StepBoth(now, _data, more) : EndGroups.Step(now, _data, atStart: step % 2 == 1, more);
            if (next is null || next.Piece.Order.Count == now.Piece.Order.Count) yield break;
            yield return now = next;
        }
    }

    // How far runs may reach: as in the same size, then one bead further each time. Where she said how many a run may have, it is that.
    private IEnumerable<int> Reaches() => !_piece.Wishes.Free.Runs.IsEmpty ? [_data.Choices.FreeRunReach]
        : Enumerable.Range(_data.Choices.FreeRunReach, Math.Max(1, _data.Choices.SizeRunReach - _data.Choices.FreeRunReach + 1));

    private ReckoningData Reaching(int reach) => _data with { Choices = _data.Choices with { FreeRunReach = reach } };

    // The most even counts of the wanted length, or those nearest to it; null where stock allows none.
    private Made? Even(Regrouped regrouped, int reach)
    {
        var space = new OrderSpace(regrouped.Piece with { Wishes = WithoutWish(regrouped.Piece.Wishes, regrouped.Piece.Wearer.WristMm) }, Reaching(reach));
        var (beaded, wanted) = _wanted.Of(regrouped.Piece, _data.Choices);
        var (target, missed, made) = (wanted - beaded, 0.0, (Made?)null);
        // The wire of a bead more is nearly the same everywhere, and the turn hardly moves with what is strung: what was missed is asked for on top.
        for (var round = 0; round < 4; round++)
        {
            if (EvenCounts.Of(space.Problem, target - missed, NearlyAll * ToleranceMm) is not { } counts) break;
            var now = Written(regrouped, space, counts, target);
            if (!IsInStock(now.Piece)) break;
            if (made is null || Math.Abs(now.OffMm) < Math.Abs(made.OffMm)) made = now;
            if (made.ComesOut(ToleranceMm) || Math.Abs(now.MissedMm - missed) < 0.01) break;
            missed = now.MissedMm;
        }
        return made;
    }

    // Counts that line up better, where there are any worth it.
    private Made WellLined(Made even, int reach, CancellationToken cancel)
    {
        // The ranges that the even counts were found in.
        var space = new OrderSpace(even.Start.Piece with { Wishes = WithWrist(even.Start.Piece.Wishes, even.Start.Piece.Wearer.WristMm) }, Reaching(reach));
        if (!space.HasWish) return even with { IsProven = true };
        even = even with { Judged = space.Judge(even.Counts) };
        if (space.Problem.Count == 0) return even with { IsProven = true };
        var missed = even.MissedMm;
        for (var round = 0; round < 3; round++)
        {
            var problem = Rebased(space.Problem, even.Counts, even.TargetMm - missed);
            if (!problem.Allows(even.Counts)) break;
            if (new BestCounts(_request.Effort, _request.Seed, MostStates).Find(problem, null, cancel) is not { } found) break;
            cancel.ThrowIfCancellationRequested();
            if (found.Loss > problem.Loss(even.Counts) - LeastGain) return even with { IsProven = found.IsProven };
            var counts = Evened(problem, [.. found.Counts], even.Counts, found.Loss + LeastGain);
            var made = Written(even.Start, space, counts, even.TargetMm);
            if (!made.ComesOut(ToleranceMm))
            {
                missed = made.MissedMm;
                continue;
            }
            made = made with { Judged = space.Judge(counts), IsProven = found.IsProven };
            // The tables leave something out: what is not better in full is not taken, nor what moves the focal too far.
            return IsBetter(made, even) && FocalStays(made.Piece, even.Piece) ? made : even with { IsProven = false };
        }
        return even with { IsProven = false };
    }

    private static bool IsBetter(Made one, Made other) => (one.Judged, other.Judged) is ({ } a, { } b)
        && (a.FailingMm.IsEmpty, b.FailingMm.IsEmpty) switch
        {
            (true, false) => true,
            (false, true) => false,
            _ => a.Loss < b.Loss - LeastGain,
        };

    // The same problem seen from counts of the wanted length, so that what may change of it lies round nought.
    private GapProblem Rebased(GapProblem problem, int[] counts, double targetMm)
    {
        var change = problem.LengthChangeMm(counts);
        var more = new int[problem.StepMm.Length];
        for (var g = 0; g < counts.Length; g++) more[problem.Kinds[g]] += counts[g] - problem.Start[g];
        return new GapProblem([.. problem.Gaps.Select((gap, g) => gap with { Count = counts[g] })], problem.Kinds, problem.StepMm, problem.Windows, problem.Fixed)
        {
            TiedTo = problem.TiedTo,
            ShorterMm = Math.Max(0, NearlyAll * ToleranceMm + change - targetMm),
            LongerMm = Math.Max(0, NearlyAll * ToleranceMm - change + targetMm),
            MostMoreOfKind = [.. problem.MostMoreOfKind.Select((most, kind) => most == int.MaxValue ? most : most - more[kind])],
        };
    }

    // As near to the even counts as the loss allows: one run at a time, or one bead from a run to another.
    private static int[] Evened(GapProblem problem, int[] counts, int[] even, double most)
    {
        var together = Enumerable.Range(0, problem.Count).Where(g => problem.TiedTo[g] == g)
            .Select(g => Enumerable.Range(g, problem.Count - g).Where(o => problem.TiedTo[o] == g).ToArray()).ToArray();
        while (Array.Exists(together, NearerWith)) { }
        return counts;

        bool NearerWith(int[] one)
        {
            var by = Math.Sign(even[one[0]] - counts[one[0]]);
            if (by == 0) return false;
            Move(one, by);
            if (IsGood()) return true;
            foreach (var other in together)
            {
                var otherBy = Math.Sign(even[other[0]] - counts[other[0]]);
                if (other == one || otherBy == 0) continue;
                Move(other, otherBy);
                if (IsGood()) return true;
                Move(other, -otherBy);
            }
            Move(one, -by);
            return false;
        }

        void Move(int[] one, int by)
        {
            foreach (var gap in one) counts[gap] += by;
        }

        bool IsGood() => problem.Allows(counts) && problem.Loss(counts) <= most;
    }

    private bool FocalStays(Piece piece, Piece even)
    {
        if (piece.Wearer.FocalOnTop || OffTopDeg(piece) is not { } off) return true;
        return off <= Math.Max(piece.Wishes.FocalWithinDeg ?? _data.Choices.FocalWithinDeg, OffTopDeg(even) ?? 0);
    }

    private double? OffTopDeg(Piece piece)
    {
        var bench = BenchCorrection.Of(piece, _data.Choices.RulerErrorMm);
        var lies = new WornLies(piece with { Beads = bench.Kinds }, bench.Factors, _data.Choices);
        if (lies.Focal is not { } focal) return null;
        var lie = lies.At(lies.Turns.On(piece.Wearer.WristMm).CircumferenceMm);
        return Math.Abs(Angles.NormalizedDeg(lie.AngleDegAt(lie.MiddleMm(focal))));
    }

    private OrderJudgement? Judged(Piece piece)
    {
        var space = new OrderSpace(piece with { Wishes = WithWrist(piece.Wishes, piece.Wearer.WristMm) }, _data);
        return space.HasWish ? space.Judge(space.Problem.Start.AsSpan()) : null;
    }

    // What fails in the design itself no size needs to cure.
    private bool FailsMoreThanBase(OrderJudgement? judged) => judged is { FailingMm.IsEmpty: false } && _baseJudged is not { FailingMm.IsEmpty: false };

    private Made Written(Regrouped start, OrderSpace space, int[] counts, double targetMm)
    {
        var piece = RunsWritten.Apply(start.Piece, space.Gaps, counts, space.Strung(counts), _data);
        var (beaded, wanted) = _wanted.Of(piece, _data.Choices);
        return new Made(start, piece, space.Gaps, counts, targetMm, beaded - wanted, beaded - wanted - (space.Problem.LengthChangeMm(counts) - targetMm));
    }

    private static bool IsInStock(Piece piece) =>
        piece.Wishes.Free.OnHand.All(kind => piece.Order.Kinds.Count(k => piece.Beads[k].Id == kind.Key) <= kind.Value);

    private static Piece On(Piece piece, double wristMm, CoilWire wire) => piece with { Wearer = piece.Wearer with { WristMm = wristMm }, Wire = wire };

    private Wishes WithWrist(Wishes wishes, double wristMm) => wishes with
    {
        Wrists = [new WeighedWrist(wristMm, 1)],
        // Counts of a size are chosen by the tables, which hold the mean, and judged alike.
        JudgedBy = JudgedBy.Mean,
        Free = wishes.Free with { MirroredHalves = _isMirrored },
    };

    private Wishes WithoutWish(Wishes wishes, double wristMm) => WithWrist(wishes, wristMm) with
    {
        LiningUp = LiningUpWish.Any,
        Places = [],
        Groups = wishes.Groups.Clear(),
    };

    // What reads the same from both ends, in beads and groups; a row of one kind does so without being meant to.
    private static bool IsMirrored(Piece piece)
    {
        var (kinds, groups) = (piece.Order.Kinds, piece.Order.ReadingGroups);
        return kinds.Distinct().Skip(1).Any() && kinds.SequenceEqual(kinds.Reverse())
            && groups.Zip(groups.Reverse(), (a, b) => a.Name == b.Name && a.First == kinds.Length - b.End).All(same => same);
    }

    private Size Finished(Made made, SizeCoil coil, CancellationToken cancel)
    {
        var groups = ImmutableArray.CreateBuilder<GroupChange>();
        groups.AddRange(GroupsAt(made, atStart: true));
        groups.AddRange(GroupsAt(made, atStart: false));
        return Read(made.Piece, coil, [.. RunsOf(made)], groups.ToImmutable(), made.IsProven, cancel);
    }

    private Size Read(Piece piece, SizeCoil coil, ImmutableArray<RunChange> runs, ImmutableArray<GroupChange> groups, bool proven, CancellationToken cancel)
    {
        var reckoned = Reckoning.Of(piece, _data, new ReckonRequest { Seed = _request.Seed }, cancel);
        var wanted = _wanted.Mm(reckoned.Lie.WirePerTurnMm);
        return new Size
        {
            WristMm = piece.Wearer.WristMm,
            IsBase = piece.Wearer.WristMm == _piece.Wearer.WristMm,
            Piece = piece,
            Reckoned = reckoned,
            Coil = coil,
            WantedMm = wanted,
            ComesOut = Math.Abs(reckoned.Lie.BeadedMm - wanted) <= ToleranceMm,
            Runs = runs,
            Groups = groups,
            Against = Judged(piece)?.Loss,
            IsProven = proven,
        };
    }

    // Runs of the design with another count; those beside groups that were put on go with these.
    private IEnumerable<RunChange> RunsOf(Made made)
    {
        for (var g = 0; g < made.Gaps.Length; g++)
            for (var own = 0; own < Gaps.Length; own++)
                if (Gaps[own].First == made.Start.BaseBead[made.Gaps[g].First] && Gaps[own].Count != made.Counts[g])
                    yield return new RunChange(own + 1, _piece.Beads[Gaps[own].Kind].Id, Gaps[own].Count, made.Counts[g]);
    }

    private IEnumerable<GroupChange> GroupsAt(Made made, bool atStart)
    {
        var by = atStart ? made.Start.AtStart : made.Start.AtFinish;
        var piece = by > 0 ? made.Piece : _piece;
        var (groups, isNamed) = (EndGroups.Of(piece), !piece.Order.ReadingGroups.IsEmpty);
        for (var i = 0; i < Math.Abs(by); i++)
        {
            var group = atStart ? groups[i] : groups[^(i + 1)];
            var (first, end) = groups.Length == 1 ? (0, 0) : atStart ? (group.End, groups[i + 1].First) : (groups[^(i + 2)].End, group.First);
            yield return new GroupChange(atStart, by > 0, isNamed ? group.Name : null, Runs(group.First, group.End), Runs(first, end));
        }

        ImmutableArray<RunPart> Runs(int first, int end)
        {
            var runs = ImmutableArray.CreateBuilder<RunPart>();
            for (var bead = first; bead < end; bead++)
                if (runs.Count > 0 && runs[^1].Kind == piece.Order.Kinds[bead]) runs[^1] = runs[^1] with { Count = runs[^1].Count + 1 };
                else runs.Add(new RunPart(piece.Order.Kinds[bead], 1));
            return runs.ToImmutable();
        }
    }

    /// <summary>A way to come to a size.</summary>
    /// <param name="Start">With its groups, before the runs were changed.</param>
    /// <param name="Piece">The piece.</param>
    /// <param name="Gaps">The runs, as they are in <paramref name="Start"/>.</param>
    /// <param name="Counts">What each has.</param>
    /// <param name="TargetMm">By how much the runs were to change the length, mm.</param>
    /// <param name="OffMm">How much longer the beads are than wanted, mm.</param>
    /// <param name="MissedMm">How much longer than was reckoned beforehand, mm.</param>
    private sealed record Made(Regrouped Start, Piece Piece, ImmutableArray<Gap> Gaps, int[] Counts, double TargetMm, double OffMm, double MissedMm)
    {
        public OrderJudgement? Judged { get; init; }

        public bool IsProven { get; init; }

        public static Made Unchanged(Regrouped start) => new(start, start.Piece, [], [], 0, 0, 0) { IsProven = true };

        public bool ComesOut(double toleranceMm) => Math.Abs(OffMm) <= toleranceMm;
    }
}
