using System.Collections.Immutable;
using Coilwright.Core.Fit;
using Coilwright.Core.Geometry;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Loads;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Settle;

/// <summary>The one entry point: how a piece lies on a wrist.</summary>
public static class Settling
{
    /// <summary>Pushes below this are not told, N: a tenth of a gram.</summary>
    public const double LeastPushN = 1e-3;

    /// <summary>Bodies nearer than this touch, mm: no eye sees between them. Our choice.</summary>
    public const double TouchMm = 0.05;

    /// <summary>Settles a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="choices">Our choices.</param>
    /// <param name="request">The wrist and how the arm is held.</param>
    /// <param name="cancel">Stops it.</param>
    /// <exception cref="ArgumentOutOfRangeException">The wrist is not from <see cref="Wearer.LeastWristMm"/> to <see cref="Wearer.MostWristMm"/>, or its form not within <see cref="SettleRequest"/>'s limits.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Settled Of(Piece piece, ReckoningChoices choices, SettleRequest request, CancellationToken cancel = default)
    {
        // Written so that NaN is refused too.
        if (!(request.WristMm >= Wearer.LeastWristMm && request.WristMm <= Wearer.MostWristMm)) throw new ArgumentOutOfRangeException(nameof(request), request.WristMm, "No such wrist.");
        if (!(request.Aspect >= SettleRequest.LeastAspect && request.Aspect <= 1)) throw new ArgumentOutOfRangeException(nameof(request), request.Aspect, "No such aspect.");
        if (!(Math.Abs(request.Taper) <= SettleRequest.MostTaper)) throw new ArgumentOutOfRangeException(nameof(request), request.Taper, "No such taper.");
        var bench = BenchCorrection.Of(piece, choices.RulerErrorMm);
        var corrected = piece with { Beads = bench.Kinds };
        var lies = new WornLies(corrected, bench.Factors, choices);
        var turn = lies.Turns.On(request.WristMm);
        var quick = lies.At(turn.CircumferenceMm);
        var blank = new Settled { Outcome = SettleOutcome.DidNotSettle, Request = request, Quick = quick, Focal = lies.Focal };
        if (piece.Wire.Steel is not { } steel) return blank with { Reason = SettleReason.SteelUnknown };
        if (piece.Order.Count < 3) return blank with { Reason = SettleReason.TooFewBeads };
        var strung = new StrungRod(corrected, bench.Factors, steel);
        if (strung.SharpestRad > MostBendRad) return blank with { Reason = SettleReason.BeadsTooLong };
        if (!(strung.ShortestEdgeMm > LeastEdgeMm)) return blank with { Reason = SettleReason.BeadsInOnePlace };
        return new OneSettling(strung, steel, turn, blank, cancel).Run();
    }

    // A wire that bends by more than this between two beads is no smooth curve any more. Our choice.
    private const double MostBendRad = 1.2;
    private const double LeastEdgeMm = 0.02;
}

/// <summary>One run of settling: what is shared between its parts.</summary>
internal sealed class OneSettling(StrungRod strung, WireSteel steel, WornTurn turn, Settled blank, CancellationToken cancel)
{
    // From a barrier that keeps bodies well apart to one at which 0.1 N stand a ten-thousandth of a millimetre apart. Our choice.
    // While it is still far from rest the wire stretches more easily: a stiff one turns but a little in each step.
    private static readonly Stage[] Stages = [new(new(1e-2, 0.5), 1.0 / 300), new(new(1e-3, 0.2), 1.0 / 30), new(new(1e-4, 0.1), 1), new(new(1e-5, 0.05), 1)];
    // Room that the helix has at the start, mm: the first barrier then sets it right, and the less it has to go the sooner it rests. Our choice.
    private const double RoomMm = 0.05;
    // The helix is a little wider than the beads were strung, so that none touches its neighbour yet. Our choice.
    private const double Open = 1.002;
    // Where beads stand in one another's place then, a wider one is tried. Our choice.
    private static readonly double[] Wider = [1, 1.02, 1.1];
    // Less than this hangs on to nothing.
    private const double LeastTurns = 0.55;
    // What keeps loose things from wandering within a stage. Our choice.
    private const double HairNPerMm = 1e-5, HairNmmPerRad = 1e-4;
    // A residual within this is rest, N: a thousandth of what a small bead weighs. Our choice.
    private const double RestN = 1e-6;

    // What is left near rest, N, from which on the hair holds by a tenth each time, and the least share of it. Our choice.
    private const double NearRestN = 100 * RestN, LeastHair = 1e-3;

    // How often the last stage is begun anew where it ended, until the hair's hold is within that too. Our choice.
    private const int MostLets = 20;
    // After so many steps in all it is not begun anew any more: 2,000 beads have then taken some minutes. Our choice.
    private const int MostLastSteps = 2000;

    // The arm lies along y.
    private static readonly Point3 Arm = new(0, 1, 0);

    private readonly SettleRequest _request = blank.Request;
    private readonly WristSection _wrist = new(blank.Request.WristMm, blank.Request.Aspect, blank.Request.Taper);

    public Settled Run()
    {
        var held = blank.Focal ?? HalfWay();
        var angle = blank.Quick.AngleDegAt(blank.Quick.BeadMiddleMm(held)) * Math.PI / 180;
        // Neither search needs anything of the other.
        (RodState? relaxed, SettleReason? relaxedExit, Resting worn) = (null, null, null!);
        SharedWork.Run(2, (from, to) =>
        {
            if (from == 0) relaxed = Relaxed(held, out relaxedExit);
            if (to == 2) worn = FromHelix(held, angle, _request.Pose);
        }, cancel);
        if (relaxed is null) return Failed(blank, relaxedExit);
        var size = SizeOf(relaxed, null);

        if (size.Turns < LeastTurns) return blank with { Reason = SettleReason.FallsOff, Relaxed = size };
        var done = blank with { Steps = worn.StageSteps.Sum(), StageSteps = worn.StageSteps, StartedFrom = (worn.StartRadiusMm, Start().PitchMm), ResidualN = worn.ResidualN, Relaxed = size };
        if (worn.Reason is { } reason) return Failed(done, reason);
        // Nothing rubs, so what does not go round the arm is gone.
        if (SizeOf(worn.State, Arm).Turns < LeastTurns) return Failed(done, SettleReason.FallsOff);
        return Answers(done, worn, held);
    }

    private Resting FromHelix(int held, double angle, ArmPose pose, int? heldRoll = null)
    {
        var (radius, pitch) = Start();
        Resting worn = null!;
        foreach (var wider in Wider)
        {
            worn = Rest(strung.Helix(wider * radius, pitch, held, angle), held, pose, Stages, 400, heldRoll) with { StartRadiusMm = wider * radius };
            if (worn.Reason != SettleReason.BeadsTooThick) break;
        }
        return worn;
    }

    private static Settled Failed(Settled blank, SettleReason? reason) =>
        blank with { Reason = reason, Outcome = reason == SettleReason.BeadsTooThick ? SettleOutcome.CannotClose : SettleOutcome.DidNotSettle };

    private Settled Answers(Settled done, Resting worn, int held)
    {
        var state = worn.State;
        var beads = Beads(state);
        var size = SizeOf(state, Arm);
        var (gaps, touching) = Gaps(state, beads, worn.Turns);
        var pushes = Pushes(state, worn);
        var stress = StressMPa(state);
        var strength = steel.LeastStrengthMPa(strung.Piece.Wire.WireMm);
        var outcome = stress > strength ? SettleOutcome.WristBeyondYield
            : strung.StrungRadiusMm > strung.Piece.Wire.RelaxedRadiusMm ? SettleOutcome.CannotClose : SettleOutcome.Settled;
        var overlap = 0.0;
        for (var i = 0; i < strung.Balls.Count; i++) overlap = Math.Max(overlap, -worn.Wrist.GapMm(state, i));
        foreach (var pair in worn.Turns.Pairs) overlap = Math.Max(overlap, -worn.Turns.GapMm(state, pair));
        for (var h = 0; h < strung.Hinges.Count; h++) overlap = Math.Max(overlap, -worn.Row.GapMm(state, h));
        var reach = beads[held].Place;
        var (stands, kept) = done.Focal is { } focal ? Stands(worn, focal) : ([], null);
        return done with
        {
            Outcome = outcome,
            OnEdge = worn.OnEdge,
            Worn = size,
            WorstOverlapMm = overlap,
            Beads = beads,
            Gaps = gaps,
            Touching = touching,
            Pushes = pushes,
            BearingShare = beads.Count(b => b.OffWristMm < Settling.TouchMm) / (double)beads.Length,
            Held = (worn.Turning.ForceN(state) * Math.Sqrt(reach.X * reach.X + reach.Z * reach.Z), worn.Sliding.ForceN(state)),
            StressMPa = stress,
            StrengthMPa = strength,
            WithoutWeight = [.. strung.Piece.Order.Kinds.Distinct().Order().Select(k => strung.Piece.Beads[k]).Where(b => b.MassG is null).Select(b => b.Id)],
            FocalStands = stands,
            FocalKept = kept,
            Lie = new Lie([.. strung.SharesMm], size.WirePerTurnMm, size.CircumferenceMm / (2 * Math.PI),
                Angles.NormalizedDeg(beads[held].AngleDeg - 360 * strung.MiddlesMm[held] / size.WirePerTurnMm)).WithBeadMiddles([.. strung.MiddlesMm]),
        };
    }

    private int HalfWay()
    {
        var half = strung.SharesMm.Sum() / 2;
        return Enumerable.Range(0, strung.MiddlesMm.Count).MinBy(i => Math.Abs(strung.MiddlesMm[i] - half));
    }

    // The widest that anything reaches inwards and along the arm.
    private (double RadiusMm, double PitchMm) Start()
    {
        double inward = 0, along = 0;
        foreach (var ball in strung.Balls)
        {
            inward = Math.Max(inward, ball.RadiusMm - ball.OutwardMm);
            along = Math.Max(along, ball.RadiusMm + Math.Abs(ball.DownMm));
        }
        var pitch = 2 * along + RoomMm;
        var height = pitch * (strung.SharesMm.Sum() / (2 * Math.PI * strung.StrungRadiusMm) + 1) / 2;
        var wide = Math.Max(_wrist.ScaleAt(height), _wrist.ScaleAt(-height)) * _wrist.HalfWidthMm;
        return (Math.Max(Open * strung.StrungRadiusMm, wide + inward + RoomMm), pitch);
    }

    /// <summary>What one stage of the search keeps bodies apart with, and the share of its own stiffness with which the wire resists stretching.</summary>
    private readonly record struct Stage(ContactBarrier Barrier, double Axial);

    private IEnergyTerm[] WireOf(Stage stage)
    {
        var rod = stage.Axial == 1 ? strung.Rod : strung.Rod.Stretching(stage.Axial * strung.Rod.AxialStiffness);
        return [new BendTerm(rod), new StretchTerm(rod)];
    }

    /// <summary>A shape at rest with what acts on it.</summary>
    private sealed record Resting(RodState State, RowTerm Row, TurnsTerm Turns, WristTerm Wrist, HoldTerm Turning, HoldTerm Sliding, ImmutableArray<int> StageSteps, double ResidualN, bool OnEdge, SettleReason? Reason)
    {
        /// <summary>Radius of the helix that it was reached from, mm; 0 where it was reached from another shape.</summary>
        public double StartRadiusMm { get; init; }
    }

    private Resting Rest(RodState state, int held, ArmPose pose, ReadOnlySpan<Stage> stages, int mostSteps, int? heldRoll = null)
    {
        var isFixed = new bool[state.Unknowns];
        if (heldRoll is { } roll) isFixed[roll] = true;
        var node = state.Positions[held];
        var round = new Point3(node.Z, 0, -node.X).Unit;
        var (turning, sliding) = (new HoldTerm(held, node, round), new HoldTerm(held, node, Arm));
        var weight = new WeightTerm(strung.Weights, strung.NodesG, SettleRequest.Down(pose));
        var steps = ImmutableArray.CreateBuilder<int>();
        Resting? last = null;
        for (var s = 0; s < stages.Length; s++)
        {
            var barrier = stages[s].Barrier;
            var row = new RowTerm(strung.Hinges, strung.Nodes, barrier);
            var turns = TurnsOf(barrier);
            var wrist = new WristTerm(strung.Balls, _wrist, barrier);
            IEnergyTerm[] acting = [.. WireOf(stages[s]), row, turns, wrist, weight, turning, sliding];
            var isLast = s == stages.Length - 1;
            var (took, left) = (0, 0.0);
            RestResult rest;
            var (less, least) = (1.0, LeastHair);
            for (var lets = 0; ; lets++)
            {
                var hair = new HairTerm(state, less * HairNPerMm, less * HairNmmPerRad);
                if (Look([.. acting, hair], isFixed, state, isLast ? RestN / 10 : 1e-4, mostSteps) is not { } found)
                    return new Resting(state, row, turns, wrist, turning, sliding, steps.ToImmutable(), double.PositiveInfinity, false, SettleReason.BeadsTooThick);
                (rest, state, took) = (found, found.State, took + found.Steps);
                // What the hair holds pulls as well: without it that much more is left.
                left = rest.ResidualN + hair.MostN(state, strung.StrungRadiusMm);
                if (less < 1 && rest.ResidualN > RestN && lets < MostLets)
                {
                    // Held so little it goes further than the steps allowed: by the whole hair from now on.
                    (less, least) = (1, 1);
                    continue;
                }
                if (!isLast || left <= RestN || rest.ResidualN > RestN || lets == MostLets || took >= MostLastSteps) break;
                // What pulls as little as this has not far to go any more: held by a tenth it gets there sooner. What falls off pulls as before.
                if (left < NearRestN) less = Math.Max(less / 10, least);
            }
            steps.Add(took);
            SettleReason? reason = rest.ResidualN > (isLast ? RestN : 1e-2) ? ReasonOf(rest)
                // However often it is let go it goes further: only the hair keeps it on.
                : !isLast || left <= RestN ? null : took >= MostLastSteps && left < NearRestN ? SettleReason.OutOfSteps : SettleReason.FallsOff;
            last = new Resting(state, row, turns, wrist, turning, sliding, steps.ToImmutable(), isLast ? left : rest.ResidualN, rest.Falling > 0, reason);
            if (reason is not null) break;
        }
        return last!;
    }

    // Without a wrist and without weight nothing holds it: the held bead stays where it is, and no bead rolls.
    private RodState? Relaxed(int held, out SettleReason? reason)
    {
        RodState? found = null;
        reason = null;
        foreach (var wider in Wider)
        {
            // Laid as it was strung it is so near to rest that wide barriers would only drive it off; where the narrowest alone leads nowhere, the way from wide to narrow.
            if ((found = Relaxed(wider, held, Stages.AsSpan(Stages.Length - 1), out reason) ?? Relaxed(wider, held, Stages, out reason)) is not null || reason != SettleReason.BeadsTooThick) break;
        }
        return found;
    }

    private RodState? Relaxed(double wider, int held, ReadOnlySpan<Stage> stages, out SettleReason? reason)
    {
        var (_, pitch) = Start();
        var state = strung.Helix(wider * Open * strung.StrungRadiusMm, pitch, held, 0);
        var fast = new bool[state.Unknowns];
        for (var u = 4 * held; u < 4 * held + 7; u++) fast[u] = true;
        for (var u = state.FirstRoll; u < state.Unknowns; u++) fast[u] = true;
        reason = null;
        foreach (var stage in stages)
        {
            IEnergyTerm[] terms = [.. WireOf(stage), new RowTerm(strung.Hinges, strung.Nodes, stage.Barrier), TurnsOf(stage.Barrier)];
            if (Look(terms, fast, state, RestN / 10, 400) is not { } rest)
            {
                reason = SettleReason.BeadsTooThick;
                return null;
            }
            state = rest.State;
            reason = rest.ResidualN <= 1e-4 ? null : ReasonOf(rest);
            if (reason is not null) return null;
        }
        return state;
    }

    private TurnsTerm TurnsOf(ContactBarrier barrier) => new(strung.Balls, strung.MiddlesMm, Math.PI * strung.StrungRadiusMm, barrier);

    // Null where bodies stand in one another's place to begin with.
    private RestResult? Look(IEnergyTerm[] terms, bool[] fast, RodState state, double residualN, int mostSteps)
    {
        var options = new RestOptions { ResidualN = residualN, MostSteps = mostSteps, ReachMm = strung.StrungRadiusMm, LeastStiffnessNPerMm = 10 * HairNPerMm };
        foreach (var term in terms)
        {
            if (term is IContactTerm contact) contact.Renew(state);
            if (!double.IsFinite(term.Value(state))) return null;
        }
        return new Newton(terms, fast, Newton.GroupsOf(state, strung.RollingBeads), AnglesOf, options).Run(state, cancel);
    }

    private static double[] AnglesOf(RodState state) => Array.ConvertAll(state.Positions, p => Math.Atan2(p.X, p.Z));

    private static SettleReason ReasonOf(RestResult rest) => rest.Exit == RestExit.OutOfSteps ? SettleReason.OutOfSteps : SettleReason.NoProgress;

    private ImmutableArray<SettledBead> Beads(RodState state)
    {
        var off = new double[strung.MiddlesMm.Count];
        Array.Fill(off, double.PositiveInfinity);
        foreach (var ball in strung.Balls) off[ball.Bead] = Math.Min(off[ball.Bead], _wrist.DistanceMm(new BallPlace(state, ball).Centre) - ball.RadiusMm);
        var beads = ImmutableArray.CreateBuilder<SettledBead>(off.Length);
        for (var i = 0; i < off.Length; i++)
        {
            var place = new BallPlace(state, strung.Middle(i)).Centre;
            // A round bead has no outward side of its own: away from the arm's middle.
            var t = state.Tangents[i];
            var away = new Point3(place.X, 0, place.Z);
            var outwards = strung.Angles[i] >= 0 ? BallPlace.Axes(state, i, strung.Angles[i]).Outward : (away - away.Dot(t) * t).Unit;
            beads.Add(new SettledBead(i, place, t, outwards, Angles.NormalizedDeg(Math.Atan2(place.X, place.Z) * 180 / Math.PI), off[i]));
        }
        return beads.MoveToImmutable();
    }

    // Turns by the angle that the beads' middles sweep about the axis; it is the arm's, or where there is none that about which the wire turns.
    private TurnSize SizeOf(RodState state, Point3? arm)
    {
        var places = Enumerable.Range(0, strung.MiddlesMm.Count).Select(i => new BallPlace(state, strung.Middle(i)).Centre).ToArray();
        var axis = arm ?? Turned(state).Unit;
        var across = new Point3(1, 0, 0);
        var first = (across - across.Dot(axis) * axis).Unit;
        var second = axis.Cross(first);
        var flat = Array.ConvertAll(places, p => (X: p.Dot(first), Y: p.Dot(second)));
        var centre = arm is null ? CircleFit.CentreOf(flat) : (0, 0);
        double swept = 0;
        for (var i = 0; i + 1 < flat.Length; i++)
        {
            double ax = flat[i].X - centre.Item1, ay = flat[i].Y - centre.Item2, bx = flat[i + 1].X - centre.Item1, by = flat[i + 1].Y - centre.Item2;
            swept += Math.Atan2(ax * by - ay * bx, ax * bx + ay * by);
        }
        var between = Math.Abs(swept) / (2 * Math.PI);
        var wire = strung.MiddlesMm[^1] - strung.MiddlesMm[0];
        var perTurn = wire / between;
        var pitch = Math.Abs((places[^1] - places[0]).Dot(axis)) / between;
        var round = Math.Sqrt(perTurn * perTurn - pitch * pitch);
        return new TurnSize(strung.SharesMm.Sum() / perTurn, perTurn, pitch, round, round - 2 * Math.PI * turn.BearingReachMm);
    }

    private static Point3 Turned(RodState state)
    {
        Point3 sum = default;
        for (var e = 0; e + 1 < state.Edges; e++) sum += state.Tangents[e].Cross(state.Tangents[e + 1]);
        return sum;
    }

    private (ImmutableArray<TurnGap> Gaps, ImmutableArray<TurnGap> Touching) Gaps(RodState state, ImmutableArray<SettledBead> beads, TurnsTerm turns)
    {
        // How far round each bead is, counted on over the turns.
        var round = new double[beads.Length];
        for (var i = 1; i < round.Length; i++) round[i] = round[i - 1] + Angles.NormalizedDeg(beads[i].AngleDeg - beads[i - 1].AngleDeg);
        var nearest = new TurnGap?[beads.Length];
        var touching = new SortedDictionary<(int, int), double>();
        // Further apart than a turn's own width twice over there is no neighbour.
        foreach (var pair in turns.Nearer(state, 2 * turn.PitchMm))
        {
            var (a, b) = (strung.Balls[pair.First].Bead, strung.Balls[pair.Second].Bead);
            if (a > b) (a, b) = (b, a);
            var gap = turns.GapMm(state, pair);
            if (gap < Settling.TouchMm && (!touching.TryGetValue((a, b), out var least) || gap < least)) touching[(a, b)] = gap;
            // What lies over it on the turn after its own.
            if (Math.Abs(round[b] - round[a] - 360) / 360 * strung.SharesMm.Sum() > 0.5 * (strung.SharesMm[a] + strung.SharesMm[b]) * Math.Abs(round[^1]) / 360) continue;
            if (nearest[a] is not { } near || gap < near.GapMm) nearest[a] = new TurnGap(a, b, gap);
        }
        return ([.. nearest.OfType<TurnGap>()], [.. touching.Select(t => new TurnGap(t.Key.Item1, t.Key.Item2, t.Value))]);
    }

    private ImmutableArray<Push> Pushes(RodState state, Resting worn)
    {
        var pushes = ImmutableArray.CreateBuilder<Push>();
        for (var h = 0; h < strung.Hinges.Count; h++)
            if (worn.Row.ForceN(state, h) is >= Settling.LeastPushN and var force) pushes.Add(new Push(PushKind.Row, h, h + 1, force));
        var between = new SortedDictionary<(int, int), double>();
        foreach (var pair in worn.Turns.Pairs)
        {
            var key = (strung.Balls[pair.First].Bead, strung.Balls[pair.Second].Bead);
            between[key] = between.GetValueOrDefault(key) + worn.Turns.ForceN(state, pair);
        }
        foreach (var (key, force) in between)
            if (force >= Settling.LeastPushN) pushes.Add(new Push(PushKind.Turns, key.Item1, key.Item2, force));
        var onWrist = new double[strung.MiddlesMm.Count];
        for (var i = 0; i < strung.Balls.Count; i++) onWrist[strung.Balls[i].Bead] += worn.Wrist.ForceN(state, i);
        for (var i = 0; i < onWrist.Length; i++)
            if (onWrist[i] >= Settling.LeastPushN) pushes.Add(new Push(PushKind.Wrist, i, null, onWrist[i]));
        return pushes.ToImmutable();
    }

    // Bending and twisting beyond the shape at rest, as one stress (R. von Mises).
    private double StressMPa(RodState state)
    {
        double most = 0;
        var half = strung.Piece.Wire.WireMm / 2;
        for (var i = 1; i + 1 < strung.Nodes; i++)
        {
            var bend = new NodeBend(state, i);
            var length = strung.Rod.RestLengthAt[i];
            double k1 = bend.Bend1 - strung.Rod.RestBend1[i], k2 = bend.Bend2 - strung.Rod.RestBend2[i], t = bend.Twist - strung.Rod.RestTwist[i];
            var bending = steel.YoungsModulusMPa * half * Math.Sqrt(k1 * k1 + k2 * k2) / length;
            var twisting = steel.ShearModulusMPa * half * t / length;
            most = Math.Max(most, Math.Sqrt(bending * bending + 3 * twisting * twisting));
        }
        return most;
    }

    // Held each way in turn: how the focal stands. Each from the shape as worn, with bodies let apart again first, since they slide while they press; where that leads nowhere, from a wide helix.
    private (ImmutableArray<FocalStand> Stands, FocalKept? Kept) Stands(Resting worn, int focal)
    {
        var place = worn.State.Positions[focal];
        Resting RestOf(ArmPose pose)
        {
            if (pose == _request.Pose) return worn;
            var rest = Rest(worn.State, focal, pose, Stages, 400);
            return rest.Reason is null ? rest : FromHelix(focal, Math.Atan2(place.X, place.Z), pose);
        }
        // Each from the shape as worn alone, so they may be looked for side by side.
        var rests = new Resting[Enum.GetValues<ArmPose>().Length];
        SharedWork.Run(rests.Length, (from, to) =>
        {
            for (var pose = from; pose < to; pose++) rests[pose] = RestOf((ArmPose)pose);
        }, cancel);
        ImmutableArray<FocalStand> stands = [.. rests.Select((rest, pose) => StandOf(rest, rests[(int)ArmPose.TopUp], focal, (ArmPose)pose))];
        return (stands, SettleSigns.MostTipped(stands) is { } most ? Kept(focal, Math.Atan2(place.X, place.Z), most.Pose) : null);
    }

    // With its roll held from the start, where it faces away from the arm's middle.
    private FocalKept? Kept(int focal, double angle, ArmPose pose)
    {
        if (!strung.Bodies[strung.Piece.Order.Kinds[focal]].Rolls) return null;
        var rest = FromHelix(focal, angle, pose, strung.Angles[focal]);
        if (rest.Reason is not null) return null;
        var weight = new WeightTerm(strung.Weights, strung.NodesG, SettleRequest.Down(pose));
        var (hold, presses) = FocalHold.Of(strung, rest.State, focal, rest.Row, rest.Turns, rest.Wrist, weight);
        return new FocalKept(pose, Math.Abs(hold), presses, StandOf(rest, rest, focal, pose).TipsDeg);
    }

    private FocalStand StandOf(Resting rest, Resting level, int focal, ArmPose pose)
    {
        var bead = Beads(rest.State)[focal];
        var was = new BallPlace(level.State, strung.Middle(focal)).Centre;
        Span<double> second = stackalloc double[6];
        _wrist.Distance(bead.Place, out var away, second);
        away = away.Unit;
        var t = bead.Along;
        var square = (away - away.Dot(t) * t).Unit;
        var tips = Turning.SignedAngle(square, bead.Outwards, t) * 180 / Math.PI;
        var leans = Math.Asin(Math.Clamp(away.Dot(t), -1, 1)) * 180 / Math.PI;
        return new FocalStand(pose, bead.AngleDeg, bead.Place.Y - was.Y, tips, leans, rest.Reason is null);
    }
}
