using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>Finds the edit that cures a notice.</summary>
/// <remarks>
/// <para>Proposals are made in the order of least trouble at the bench and each is tried: the piece with it is reckoned again on the same wrist. It is a
/// cure when the notice is gone and nothing new stops the piece; one that brings no new warning goes before one that does. Nothing is proposed that
/// was not reckoned.</para>
/// <para>Looks no further than <see cref="MostTried"/> proposals, so null says that none was found, not that there is none.</para>
/// </remarks>
public static class CureFinder
{
    /// <summary>How many proposals are reckoned for one notice at most: about as long as it takes to read the notice.</summary>
    public const int MostTried = 120;

    /// <summary>The cure of a notice; null when none is looked for or none was found.</summary>
    /// <param name="notice">One of the notices of <paramref name="reckoned"/>.</param>
    /// <param name="piece">The piece as she has it, that the edit is for.</param>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="data">Materials, steels and choices.</param>
    /// <param name="request">What it was reckoned with.</param>
    /// <param name="cancel">Stops the search.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Cure? Of(Notice notice, Piece piece, Reckoned reckoned, ReckoningData data, ReckonRequest? request = null, CancellationToken cancel = default)
    {
        // Notices hang on no shuffle, no draw and no other wrist: those are what takes the time.
        var quick = data with { Choices = data.Choices with { Shuffles = 1, SpreadDraws = 1, CurveStepMm = Wearer.MostWristMm } };
        Cure? second = null;
        foreach (var cure in Proposals(notice, piece, reckoned, data).Take(MostTried))
        {
            cancel.ThrowIfCancellationRequested();
            if (PieceEditing.Apply(piece, cure.Edit, data) is not EditOutcome.Done done) continue;
            var after = Reckoning.Of(done.Piece, quick, request, cancel);
            if (after.Notices.Any(n => SameMatter(n, notice))) continue;
            var fresh = after.Notices.Where(n => !reckoned.Notices.Any(b => b.Severity == n.Severity && SameMatter(b, n))).ToImmutableArray();
            if (fresh.Any(n => n.Severity == Severity.Stop)) continue;
            var cures = cure with { Brings = [.. fresh.Where(n => n.Severity == Severity.Warn)] };
            if (cures.Brings.IsEmpty) return cures;
            second ??= cures;
        }
        return second;
    }

    // Where like lies over like it is the piece that does not mix: another pair in the place of the one named would be no cure.
    private static bool SameMatter(Notice one, Notice other) => one.Code == other.Code && one.BeadId == other.BeadId
        && one.Words.GetValueOrDefault("end") == other.Words.GetValueOrDefault("end");

    private static IEnumerable<Cure> Proposals(Notice notice, Piece piece, Reckoned reckoned, ReckoningData data) => notice.Code switch
    {
        NoticeCodes.WireTooShort => WireProposals.CutAnew(notice, piece),
        NoticeCodes.CoilTooSmall => WireProposals.LargerCoil(piece, notice.Numbers["neededLoopMm"]),
        NoticeCodes.HangsLoose => WireProposals.SmallerCoil(piece, notice.Numbers["looseMm"]),
        NoticeCodes.StressNearStrength => WireProposals.LessStrain(piece, reckoned, data.Choices.StressShareFrom),
        NoticeCodes.BeadWillNotPass or NoticeCodes.BeadPassesTightly => WireProposals.Passing(notice, piece, data.Choices.BoreToleranceMm),
        NoticeCodes.EndBeadSlidesOff => EndProposals.Holding(notice, piece, data.Choices.BoreToleranceMm),
        NoticeCodes.GapAtTheEnd => EndProposals.Longer(piece, reckoned, notice.Numbers["gapMm"] + notice.Numbers["wantedMm"]),
        NoticeCodes.OverlapOff when notice.Numbers["overlapMm"] < notice.Numbers["wantedMm"] =>
            EndProposals.Longer(piece, reckoned, notice.Numbers["wantedMm"] - notice.Numbers["overlapMm"]),
        NoticeCodes.OverlapOff => EndProposals.Shorter(piece, reckoned, notice.Numbers["overlapMm"] - notice.Numbers["wantedMm"]),
        NoticeCodes.FewerTurns => TurnProposals.MoreTurns(piece, reckoned, notice.Numbers["turnsDesigned"]),
        NoticeCodes.UnderOneTurn => TurnProposals.MoreTurns(piece, reckoned, 1),
        NoticeCodes.FocalOffTop => [TurnProposals.FocalOnTop(notice, piece)],
        NoticeCodes.LikeOverLike => ShiftProposals.Apart(notice, piece, reckoned),
        NoticeCodes.ColumnsMissed => ShiftProposals.Everywhere(piece, reckoned),
        _ => [],
    };
}
