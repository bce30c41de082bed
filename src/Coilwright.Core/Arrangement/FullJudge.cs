using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>Judges orders in full: on each wrist every bead is laid, and what a focal hides and wishes for places are taken as they then are.</summary>
/// <param name="piece">The piece, its beads corrected from the bench.</param>
/// <param name="choices">Our choices.</param>
/// <param name="wrists">The wrists; their weights sum to 1.</param>
internal sealed class FullJudge(Piece piece, ReckoningChoices choices, ImmutableArray<WeighedWrist> wrists)
{
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
            var worn = lies.Turns.On(wrist.WristMm);
            var glance = model.Glance(lies.At(worn.CircumferenceMm), worn.PitchMm, worn.AveragingMm, room);
            loss += wrist.Weight * (glance.AgainstWish ?? 0);
            if (!(glance.FailsMix || glance.FailsColumns)) continue;
            failing.Add(wrist.WristMm);
            if (stopAtFailure) return new OrderJudgement(null, failing.ToImmutable());
        }
        return new OrderJudgement(loss, failing.ToImmutable());
    }
}
