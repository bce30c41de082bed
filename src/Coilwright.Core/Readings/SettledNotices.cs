using System.Collections.Immutable;
using Coilwright.Core.Settle;

namespace Coilwright.Core.Readings;

/// <summary>What a maker should know of how her piece sits, among all else that she should know.</summary>
public static class SettledNotices
{
    // Reckoning judges these two by a formula; settling knows better.
    private static readonly ImmutableArray<string> Replaced = [NoticeCodes.HangsLoose, NoticeCodes.StressNearStrength];

    /// <summary>The readings with what settling found among their notices, worst first. The same readings where no rest was found.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="settled">How the same piece lies.</param>
    public static Reckoned Among(Reckoned reckoned, Settled settled) => settled.Worn is null ? reckoned : reckoned with
    {
        Notices = [.. reckoned.Notices.Where(n => !Replaced.Contains(n.Code)).Concat(Of(reckoned, settled)).OrderByDescending(n => n.Severity)],
    };

    private static IEnumerable<Notice> Of(Reckoned reckoned, Settled settled)
    {
        var choices = reckoned.Choices;
        foreach (var sign in SettleSigns.Of(settled, choices))
            switch (sign)
            {
                case SettleSign.Gapes when settled.Widest is { } widest:
                    yield return Notice.Of(NoticeCodes.TurnsGape, Severity.Info,
                        numbers: [("gapMm", widest.GapMm), ("overMm", choices.GapesOverMm), ("angleDeg", settled.Beads[widest.Bead].AngleDeg), ("number", widest.Bead + 1)], positions: [widest.Bead, widest.Over]);
                    break;
                case SettleSign.Tips when SettleSigns.MostTipped(settled) is { } most && settled.Focal is { } focal:
                    yield return Notice.Of(NoticeCodes.FocalTips, Severity.Warn, reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[focal]].Id,
                        [("tipsDeg", Math.Abs(most.TipsDeg)), ("overDeg", choices.TipsOverDeg), ("angleDeg", settled.Beads[focal].AngleDeg)], positions: [focal]);
                    break;
                case SettleSign.TooTight when settled.StrengthMPa is { } strength:
                    yield return Notice.Of(NoticeCodes.StressNearStrength, Severity.Warn, numbers: [("stressMPa", settled.StressMPa), ("strengthMPa", strength), ("share", settled.StressMPa / strength)]);
                    break;
                case SettleSign.TooLoose when settled.Relaxed is { } relaxed:
                    yield return Notice.Of(NoticeCodes.HangsLoose, Severity.Info, numbers: [("looseMm", relaxed.InsideMm - settled.Request.WristMm), ("wristMm", settled.Request.WristMm)]);
                    break;
                case SettleSign.Jumps:
                    yield return Notice.Of(NoticeCodes.OnAKnifesEdge, Severity.Info);
                    break;
            }
    }
}
