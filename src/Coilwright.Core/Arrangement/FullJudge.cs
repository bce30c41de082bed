using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Spread;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>Judges orders in full: on each wrist every bead is laid, and what a focal hides and wishes for places are taken as they then are.</summary>
/// <remarks>By the mean over what is not known of T; or, where the wishes say so, by what nineteen of twenty draws of the piece do not exceed: each bead of
/// its own length, each lot off by its own mean, C anywhere in its band. The draws are the same for every order.</remarks>
/// <param name="piece">The piece, its beads corrected from the bench.</param>
/// <param name="choices">Our choices.</param>
/// <param name="wrists">The wrists; their weights sum to 1.</param>
internal sealed class FullJudge(Piece piece, ReckoningChoices choices, ImmutableArray<WeighedWrist> wrists)
{
    // Not the search's own: how an order does must not hang on how it was looked for.
    private const ulong Seed = 1;

    // Of the draws, the share that may fail.
    private const double MayFail = 0.05;

    /// <summary>Judges an order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="factors">What measured rows scale each bead by; null for none.</param>
    /// <param name="stopAtFailure">Whether to stop at the first wrist on which the wish fails; the loss is then null.</param>
    public OrderJudgement Of(StringingOrder order, double[]? factors, bool stopAtFailure = false)
    {
        var strung = piece with { Order = order, Written = null, MeasuredRows = [] };
        var lies = new WornLies(strung, factors, choices);
        var model = new LiningUpModel(strung, choices);
        var room = new GlanceRoom();
        var failing = ImmutableArray.CreateBuilder<double>();
        double loss = 0;
        foreach (var wrist in wrists)
        {
            var (against, fails) = piece.Wishes.JudgedBy == JudgedBy.Mean ? Mean(lies, model, room, wrist.WristMm) : NineteenInTwenty(strung, lies, model, room, wrist.WristMm);
            loss += wrist.Weight * (against ?? 0);
            if (!fails) continue;
            failing.Add(wrist.WristMm);
            if (stopAtFailure) return new OrderJudgement(null, failing.ToImmutable());
        }
        return new OrderJudgement(loss, failing.ToImmutable());
    }

    private static (double? AgainstWish, bool Fails) Mean(WornLies lies, LiningUpModel model, GlanceRoom room, double wristMm)
    {
        var worn = lies.Turns.On(wristMm);
        var glance = model.Glance(lies.At(worn.CircumferenceMm), worn.PitchMm, worn.AveragingMm, room);
        return (glance.AgainstWish, glance.FailsMix || glance.FailsColumns);
    }

    private (double? AgainstWish, bool Fails) NineteenInTwenty(Piece strung, WornLies lies, LiningUpModel model, GlanceRoom room, double wristMm)
    {
        var worn = lies.Turns.On(wristMm);
        var mean = lies.At(worn.CircumferenceMm);
        var draws = new LengthDraws(strung.Beads, strung.Order.Kinds, mean.SharesMm, Seed);
        var ends = new double[draws.Beads];
        var against = new double[choices.JudgedDraws];
        var failed = 0;
        for (var k = 0; k < against.Length; k++)
        {
            var shares = new double[draws.Beads];
            draws.Draw((ulong)k, shares, ends);
            // On a stream of its own, as in the spread: the beads' draws keep their numbers.
            var turnMm = lies.Turns.WirePerTurnMm(worn.CircumferenceMm + worn.BandMm * new SeededDraws(~Seed, (ulong)k).Signed(0));
            var lie = lies.FocalOnTop(new Lie(ImmutableCollectionsMarshal.AsImmutableArray(shares), turnMm, mean.RadiusMm, strung.Wearer.StartAngleDeg));
            if (model.DrawnWish(lie, worn.PitchMm, room) is not ({ } share, var fails)) return (null, false);
            against[k] = share;
            if (fails) failed++;
        }
        return (SpreadModel.NineteenInTwenty(against), failed > MayFail * against.Length);
    }
}
