using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Spread;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Readings;

/// <summary>The one entry point: every reading of a piece on one wrist.</summary>
public static class Reckoning
{
    /// <summary>Reckons a piece.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="request">Another wrist, a measured circumference, a seed.</param>
    /// <param name="cancel">Stops long work.</param>
    /// <exception cref="ArgumentOutOfRangeException">The request's wrist is not from <see cref="Wearer.LeastWristMm"/> to
    /// <see cref="Wearer.MostWristMm"/>, or its circumference not from <see cref="LeastCircumferenceMm"/> to <see cref="LargestCircumferenceMm"/>.</exception>
    public static Reckoned Of(Piece piece, ReckoningData data, ReckonRequest? request = null, CancellationToken cancel = default)
    {
        request ??= new ReckonRequest();
        if (request.WristMm is { } wrist) Check(wrist, Wearer.LeastWristMm, Wearer.MostWristMm, nameof(ReckonRequest.WristMm));
        if (request.WornCircumferenceMm is { } c) Check(c, LeastCircumferenceMm(piece), LargestCircumferenceMm, nameof(ReckonRequest.WornCircumferenceMm));
        var bench = BenchCorrection.Of(piece, data.Choices.RulerErrorMm);
        var corrected = piece with { Beads = bench.Kinds };
        return new OneReckoning(corrected, bench, data.Choices, request, cancel).Run();
    }

    /// <summary>Largest worn circumference accepted, mm: twice the largest wrist, so that no bead is too thick for it.</summary>
    public const double LargestCircumferenceMm = 2 * Wearer.MostWristMm;

    /// <summary>Least worn circumference that can be reckoned, mm: inside the thickest bead it leaves the smallest wrist.</summary>
    public static double LeastCircumferenceMm(Piece piece) =>
        Wearer.LeastWristMm + 2 * Math.PI * piece.Order.Kinds.Distinct().Max(k => piece.Beads[k].BearingReachMm);

    private static void Check(double value, double least, double most, string name)
    {
        // Written so that NaN is refused too.
        if (!(value >= least && value <= most))
            throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"Must be from {least} to {most} mm."));
    }
}

/// <summary>One run of the reckoning: what is shared between its parts.</summary>
internal sealed class OneReckoning(Piece piece, BenchCorrected bench, ReckoningChoices choices, ReckonRequest request, CancellationToken cancel)
{
    private readonly WornLies _lies = new(piece, bench.Factors, choices);
    private readonly LiningUpModel _liningUp = new(piece, choices);

    public Reckoned Run()
    {
        var wrist = request.WristMm ?? piece.Wearer.WristMm;
        var worn = _lies.Turns.On(wrist, request.WornCircumferenceMm);
        var lie = _lies.At(worn.CircumferenceMm);
        var narrow = worn.BandMm == 0 ? lie : _lies.At(worn.CircumferenceMm - worn.BandMm);
        var wide = worn.BandMm == 0 ? lie : _lies.At(worn.CircumferenceMm + worn.BandMm);
        var relaxedShares = worn.By == WornBy.Coil ? lie.SharesMm : _lies.Shares.AtRadius(piece.Wire.RelaxedRadiusMm);
        var relaxed = worn.By == WornBy.Coil ? lie.BeadedMm : relaxedShares.Sum();

        var counts = Counts();
        var passing = counts.Select(k => PassingCheck.Of(k.Bead, piece.Wire, choices.BoreToleranceMm)).ToImmutableArray();
        var wire = WireCut.Of(piece, lie.BeadedMm, relaxed);
        var liningUp = _liningUp.Measure(lie, worn.PitchMm, worn.AveragingMm, request.Seed, cancel);
        var curve = Curve(wrist);
        var focal = _lies.Focal is { } f ? FocalModel.Of(piece, f, lie, narrow, wide) : null;
        var fit = FitModel.Of(piece, lie, narrow, wide, worn, relaxed, []);

        var draft = new Reckoned
        {
            Piece = piece,
            WristMm = wrist,
            Choices = choices,
            Counts = counts,
            Worn = worn,
            Lie = lie.WithBeadMiddles(_lies.Shares.MiddlesAtRadius(worn.RadiusMm)),
            RelaxedSharesMm = relaxedShares,
            RelaxedBeadedMm = relaxed,
            RuledMm = counts.Sum(k => k.RuledMm),
            Fit = fit,
            Passing = passing,
            LiningUp = liningUp,
            Curve = curve,
            Wire = wire,
            Focal = focal,
            Repeat = RepeatDriftModel.Of(piece.Order.Kinds, lie),
            Mass = MassOf(counts, wire, lie.Turns),
            Spread = new SpreadModel(piece, choices, _lies.Turns, _liningUp).Of(lie, worn, wire, _lies.Focal, request.Seed, cancel),
            Strength = StrengthOf(worn),
            Wrists = WristsOf(curve, fit.OverlapTurns),
            Notices = [],
        };
        var notices = new NoticeWriter(draft, choices, bench.Differences).Write();
        ImmutableArray<string> stops = [.. notices.Where(n => n.Severity == Severity.Stop).Select(n => n.Code).Distinct()];
        return draft with { Notices = notices, Fit = fit with { Fits = stops.IsEmpty, Reasons = stops } };
    }

    private ImmutableArray<KindCount> Counts()
    {
        var counts = new int[piece.Beads.Length];
        foreach (var kind in piece.Order.Kinds) counts[kind]++;
        var used = ImmutableArray.CreateBuilder<KindCount>();
        for (var k = 0; k < counts.Length; k++)
            if (counts[k] > 0)
                used.Add(new KindCount(piece.Beads[k], k, KeyLetters.Of(used.Count), counts[k], counts[k] * piece.Beads[k].LengthMm));
        return used.ToImmutable();
    }

    private ImmutableArray<WristPoint> Curve(double wristMm)
    {
        // The curve covers the data's wrists and always this wearer's, on the same step. A wrist is at most the largest, so the curve stays short.
        var step = choices.CurveStepMm;
        var from = Math.Min(choices.CurveFromMm, choices.CurveFromMm + step * Math.Floor((wristMm - 10 - choices.CurveFromMm) / step));
        var to = Math.Max(choices.CurveToMm, wristMm + 10);
        var count = (int)Math.Floor((to - from) / step + 1e-9) + 1;
        var points = new WristPoint[count];
        // As long as the coil is larger than the wrist asks, every wrist wears the same: one point serves them all.
        var resting = 0;
        while (resting < count && _lies.Turns.On(from + resting * step).By == WornBy.Coil) resting++;
        var first = Math.Max(0, resting - 1);
        SharedWork.Run(count - first, (begin, end) =>
        {
            var room = new GlanceRoom();
            for (var i = first + begin; i < first + end; i++)
            {
                cancel.ThrowIfCancellationRequested();
                var wrist = from + i * step;
                points[i] = PointAt(wrist, room);
            }
        }, cancel);
        for (var i = 0; i < first; i++) points[i] = points[first] with { WristMm = from + i * step };
        return ImmutableCollectionsMarshal.AsImmutableArray(points);
    }

    private WristPoint PointAt(double wristMm, GlanceRoom room)
    {
        var worn = _lies.Turns.On(wristMm);
        var lie = _lies.At(worn.CircumferenceMm);
        var glance = _liningUp.Glance(lie, worn.PitchMm, worn.AveragingMm, room);
        return new WristPoint(wristMm, worn.CircumferenceMm, worn.WirePerTurnMm, lie.Turns, glance.Cover, glance.CoverExact, glance.RelativeAveraged,
            glance.FailsMix, glance.FailsColumns);
    }

    private WristsServed WristsOf(ImmutableArray<WristPoint> curve, int overlapTurns)
    {
        var failing = Failing(curve);
        var from = Math.Max(Wearer.LeastWristMm, _lies.Turns.WristForMm(piece.Wire.LoopMm) - choices.LooseFromMm);
        // Where she did not say how many turns it is designed for, it is designed for as many as her wearer's own wrist takes.
        var designed = piece.Wishes.Turns ?? _lies.At(_lies.Turns.On(piece.Wearer.WristMm).CircumferenceMm).Turns;
        var c = piece.Wire.LoopMm;
        var most = MostPerTurnMm(_lies.At(c).BeadedMm);
        if (most < _lies.Turns.WirePerTurnMm(c)) return new WristsServed(null, null, failing);
        // A larger wrist takes more wire a turn. The wire under the beads hardly changes with the radius, so a few rounds settle it.
        for (var round = 0; round < 40; round++)
        {
            var next = Math.Max(piece.Wire.LoopMm, _lies.Turns.CircumferenceForMm(most));
            if (Math.Abs(next - c) < 1e-7) break;
            c = next;
            most = MostPerTurnMm(_lies.At(c).BeadedMm);
        }
        var to = Math.Min(Wearer.MostWristMm, _lies.Turns.WristForMm(c));
        return to < from ? new WristsServed(null, null, failing) : new WristsServed(from, to, failing);

        // The most wire a turn may take before something is not as she wants it: turns too few, less than one turn, ends not far enough over.
        double MostPerTurnMm(double beadedMm)
        {
            var wire = beadedMm + choices.OverlapToleranceMm;
            if (designed > choices.FewerTurnsFrom) wire = Math.Min(wire, beadedMm / (designed - choices.FewerTurnsFrom));
            if (piece.Ends.OverlapMm is { } wanted) wire = Math.Min(wire, (beadedMm - wanted + choices.OverlapToleranceMm) / overlapTurns);
            return wire;
        }
    }

    private ImmutableArray<WishFailure> Failing(ImmutableArray<WristPoint> curve)
    {
        var room = new GlanceRoom();
        var stretches = ImmutableArray.CreateBuilder<WishFailure>();
        for (var i = 0; i < curve.Length;)
        {
            var first = i++;
            while (i < curve.Length && Alike(curve[i], curve[first])) i++;
            if (!curve[first].FailsWish) continue;
            stretches.Add(new WishFailure(first == 0 ? curve[0].WristMm : Border(curve[first], curve[first - 1]),
                i == curve.Length ? curve[^1].WristMm : Border(curve[i - 1], curve[i]), curve[first].FailsMix, curve[first].FailsColumns));
        }
        return stretches.ToImmutable();

        static bool Alike(WristPoint one, WristPoint other) => (one.FailsMix, one.FailsColumns) == (other.FailsMix, other.FailsColumns);

        // The last wrist found to be as the one inside is.
        double Border(WristPoint inside, WristPoint outside)
        {
            while (Math.Abs(outside.WristMm - inside.WristMm) > WishFailure.BorderMm)
            {
                cancel.ThrowIfCancellationRequested();
                var middle = PointAt((inside.WristMm + outside.WristMm) / 2, room);
                (inside, outside) = Alike(middle, inside) ? (middle, outside) : (inside, middle);
            }
            return inside.WristMm;
        }
    }

    private MassReport MassOf(ImmutableArray<KindCount> counts, WireReport wire, double turns)
    {
        double? beads = 0;
        var unknown = ImmutableArray.CreateBuilder<string>();
        foreach (var kind in counts)
        {
            if (kind.Bead.MassG is { } mass) beads += kind.Count * mass;
            else
            {
                beads = null;
                unknown.Add(kind.Bead.Id);
            }
        }
        if (unknown.Count > 0) beads = null;
        var left = (wire.BeadedMm + wire.EndsMm) / piece.Wire.LoopMm * wire.LoopMassG;
        var total = beads + left;
        return new MassReport(beads, left, total, total / turns, total is { } g ? Math.Ceiling(g) : null, unknown.ToImmutable());
    }

    private StrengthReport? StrengthOf(WornTurn worn)
    {
        if (piece.Wire.Steel is not { } steel) return null;
        var (wire, rest) = (piece.Wire.WireMm, piece.Wire.RelaxedRadiusMm);
        var stress = WireStrength.SurfaceStressMPa(wire, steel.YoungsModulusMPa, rest, worn.RadiusMm);
        var strength = steel.LeastStrengthMPa(wire);
        return new StrengthReport(WireStrength.OpeningMomentNmm(wire, steel.YoungsModulusMPa, rest, worn.RadiusMm), stress, strength, stress / strength);
    }
}
