using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Findings;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Readings;

/// <summary>Turns readings into what the maker should know: one place for what is worth saying.</summary>
internal sealed class NoticeWriter(Reckoned r, ReckoningChoices choices, ImmutableArray<RowDifference> rows)
{
    /// <summary>At most this many pairs are named one by one; the report has them all.</summary>
    private const int NamedPairs = 3;

    private readonly List<Notice> _notices = [];

    private Piece Piece => r.Piece;

    public ImmutableArray<Notice> Write()
    {
        Wire();
        Coil();
        Holes();
        Ends();
        Turns();
        Focal();
        LiningUp();
        Rules();
        Bench();
        Strain();
        if (Piece.Wearer.IsChild) Add(NoticeCodes.ChildCautions, Severity.Info);
        // Worst first; within one severity the order above is the order of the work.
        return [.. _notices.OrderByDescending(n => n.Severity)];
    }

    private void Add(string code, Severity severity, string? bead = null, (string, double)[]? numbers = null, (string, string)[]? words = null,
        ImmutableArray<int> positions = default) => _notices.Add(Notice.Of(code, severity, bead, numbers, words, positions));

    private void Wire()
    {
        if (r.Wire.SlackMm is not { } slack || Piece.Wire.CutMm is not { } cut) return;
        // Told with the wire that the pliers hold, so that the length it asks for is enough to work with. A hair less is rounding.
        var missing = r.Wire.GripMm - slack;
        if (missing > 1e-9)
            Add(NoticeCodes.WireTooShort, slack < 0 ? Severity.Stop : Severity.Warn, numbers: [("cutMm", cut), ("neededMm", cut + missing), ("shortMm", missing)]);
    }

    private void Coil()
    {
        var least = CurveShares.LeastRadiusMm(Piece.Beads, Piece.Order);
        if (Piece.Wire.RelaxedRadiusMm >= least - 1e-9) return;
        var thickest = r.Counts.MaxBy(k => k.Bead.BearingReachMm)!;
        Add(NoticeCodes.CoilTooSmall, Severity.Stop, thickest.Bead.Id,
            [("reachMm", thickest.Bead.BearingReachMm), ("radiusMm", Piece.Wire.RelaxedRadiusMm), ("neededLoopMm", 2 * Math.PI * least)],
            positions: PositionsOf(thickest.KindIndex));
    }

    private void Holes()
    {
        for (var k = 0; k < r.Passing.Length; k++)
        {
            var (passing, kind) = (r.Passing[k], r.Counts[k]);
            var bead = kind.Bead;
            var (code, severity) = passing.Passes switch
            {
                Passes.No => (NoticeCodes.BeadWillNotPass, Severity.Stop),
                Passes.Tight => (NoticeCodes.BeadPassesTightly, Severity.Warn),
                Passes.Unknown => (NoticeCodes.BoreUnknown, Severity.Warn),
                _ => ("", Severity.Info),
            };
            if (passing.Passes != Passes.Yes)
                Add(code, severity, bead.Id, Known(("boreMm", bead.BoreMm), ("wireMm", Piece.Wire.WireMm), ("lengthMm", bead.LengthOnWireMm),
                    ("clearanceMm", passing.ClearanceMm), ("longestMm", passing.LongestMm), ("neededBoreMm", passing.NeededBoreMm)),
                    positions: PositionsOf(kind.KindIndex));
            if (bead.Shape.EndFaceMatters && bead.Description.EndFaceMm is null)
                Add(NoticeCodes.EndFaceUnknown, Severity.Info, bead.Id, [("thicknessMm", bead.ThicknessMm)], positions: PositionsOf(kind.KindIndex));
        }
    }

    private static (string, double)[] Known(params (string Name, double? Value)[] numbers) =>
        [.. numbers.Where(n => n.Value is not null).Select(n => (n.Name, n.Value!.Value))];

    private void Ends()
    {
        End(Piece.Ends.Start, 0, "start");
        End(Piece.Ends.Finish, Piece.Order.Count - 1, "finish");

        void End(WireEnd end, int index, string which)
        {
            var bead = Piece.Beads[Piece.Order.Kinds[index]];
            // A loop as wide as the hole can be holds; the hair beside it is for rounding, so that the size the notice asks for ends it.
            if (end.OutsideMm(Piece.Wire.WireMm) is not { } loop || bead.BoreMm is not { } bore || bore + choices.BoreToleranceMm <= loop + 1e-9) return;
            Add(NoticeCodes.EndBeadSlidesOff, bore >= loop ? Severity.Stop : Severity.Warn, bead.Id,
                [("boreMm", bore), ("loopMm", loop), ("neededInsideMm", bore + choices.BoreToleranceMm - 2 * Piece.Wire.WireMm)], [("end", which)], [index]);
        }
    }

    private void Turns()
    {
        var fit = r.Fit;
        var fewer = fit.TurnsDesigned - fit.TurnsWorn >= choices.FewerTurnsFrom;
        if (fewer && fit.TurnsDesigned is { } designed)
            Add(NoticeCodes.FewerTurns, Severity.Warn, numbers: [("turnsWorn", fit.TurnsWorn), ("turnsDesigned", designed), ("wristMm", r.WristMm)]);
        if (fit.TurnsWorn < 1 - choices.OverlapToleranceMm / r.Worn.WirePerTurnMm)
            Add(NoticeCodes.UnderOneTurn, Severity.Warn, numbers: [("turnsWorn", fit.TurnsWorn)]);
        // How the ends meet is only judged where she said how: memory wire may end anywhere. A whole number of turns says it too, unless so much is
        // missing that there are fewer turns: then that has been said, and is no gap to close with a bead.
        if (Piece.Ends.OverlapMm is { } wanted || (WholeTurnsDesigned(out wanted) && !fewer))
        {
            var off = fit.EndsOverlapMm - wanted;
            if (off < -choices.OverlapToleranceMm && fit.EndsOverlapMm < 0)
                Add(NoticeCodes.GapAtTheEnd, Severity.Warn,
                    numbers: [("gapMm", -fit.EndsOverlapMm), ("turns", fit.OverlapTurns), ("wantedMm", wanted)], positions: [0, Piece.Order.Count - 1]);
            else if (Math.Abs(off) > choices.OverlapToleranceMm)
                Add(NoticeCodes.OverlapOff, Severity.Info,
                    numbers: [("overlapMm", fit.EndsOverlapMm), ("wantedMm", wanted), ("turns", fit.OverlapTurns)], positions: [0, Piece.Order.Count - 1]);
        }
        if (r.Worn.RoomMm > choices.LooseFromMm && r.Worn.By == WornBy.Coil)
            Add(NoticeCodes.HangsLoose, Severity.Info, numbers: [("looseMm", r.Worn.RoomMm), ("wristMm", r.WristMm)]);

        bool WholeTurnsDesigned(out double overlapMm)
        {
            overlapMm = 0;
            return Piece.Wishes.Turns is { } turns && turns == Math.Floor(turns);
        }
    }

    private void Focal()
    {
        if (r.Focal is not { } focal) return;
        var within = Piece.Wishes.FocalWithinDeg ?? choices.FocalWithinDeg;
        if (Math.Abs(focal.AngleDeg) <= within) return;
        Add(NoticeCodes.FocalOffTop, Severity.Warn, focal.BeadId,
            [("offDeg", Math.Abs(focal.AngleDeg)), ("offMm", Math.Abs(focal.OffMm)), ("withinDeg", within), ("turn", focal.Turn),
                ("startDeg", r.Lie.StartingAt(r.Lie.StartAngleDeg + focal.MoveStartDeg).StartAngleDeg)],
            [("side", focal.AngleDeg > 0 ? "past" : "before")], [focal.Index]);
    }

    private void LiningUp()
    {
        var (report, wishes) = (r.LiningUp, Piece.Wishes);
        if (report.FailsColumns)
            Add(NoticeCodes.ColumnsMissed, Severity.Warn, numbers: [("cover", report.ColumnsCover!.Value)]);
        // Where she wants a mix it is a warning. Where she said nothing at all it is worth knowing, but not that a long run of one kind lies over itself.
        var saidNothing = wishes.LiningUp == LiningUpWish.Any && wishes.Places.IsEmpty && wishes.Groups.IsEmpty;
        if (report.FailsMix)
            Name(report.Pairs.Where(p => p.Wish == LiningUpWish.Mix), Severity.Warn, report.MixCover!.Value);
        else if (saidNothing && report.Word == LiningUpWord.LinesUp)
            Name(report.Pairs.Where(p => p.FirstA != p.FirstB), Severity.Info, report.Cover!.Value);

        void Name(IEnumerable<LiningUpPair> pairs, Severity severity, double cover)
        {
            foreach (var pair in pairs.Take(NamedPairs))
                Add(NoticeCodes.LikeOverLike, severity,
                    numbers: [("cover", cover), ("turn", pair.TurnA), ("nextTurn", pair.TurnB), ("offSquareMm", pair.OffSquareMm),
                        ("overlapMm", pair.OverlapMm), ("angleDeg", pair.AngleDeg)],
                    words: [("group", pair.Name)],
                    positions: [.. Enumerable.Range(pair.FirstA, pair.CountA).Union(Enumerable.Range(pair.FirstB, pair.CountB))]);
        }
    }

    private void Rules()
    {
        foreach (var (rule, places, found) in RuleBreaks.Of(Piece.Order, Piece.Beads, Piece.Wishes.Rules))
        {
            var positions = places.SelectMany(p => Enumerable.Range(p.First, p.Count)).Distinct().ToImmutableArray();
            (string, double)[] where = [("firstBead", places[0].First + 1), ("lastBead", places[0].First + places[0].Count), ("times", places.Length)];
            switch (rule)
            {
                case OrderRule.LongestRun run:
                    Add(NoticeCodes.RunTooLong, Severity.Warn, null, [("beads", found), ("most", run.Most), .. where], [("group", run.Name)], positions);
                    break;
                case OrderRule.InAnyRow row:
                    Add(NoticeCodes.TooClose, Severity.Warn, null, [("beads", found), ("upTo", row.UpTo), ("ofAny", row.OfAny), .. where],
                        [("groups", string.Join(", ", row.Names))], positions);
                    break;
                case OrderRule.Apart apart:
                    Add(NoticeCodes.NotApart, Severity.Warn, null, where, [("group", apart.Name), ("beside", apart.Beside)], positions);
                    break;
                case OrderRule.Together together:
                    Add(NoticeCodes.NotTogether, Severity.Warn, null, where, [("group", together.Name), ("beside", together.Beside)], positions);
                    break;
                default:
                    Add(NoticeCodes.OtherEnd, Severity.Warn, null, where[..2], [("group", rule.Named[0]), ("end", rule is OrderRule.StartsWith ? "start" : "finish")], positions);
                    break;
            }
        }
    }

    private void Bench()
    {
        foreach (var (row, reckoned) in rows)
            if (Math.Abs(row.TotalMm - reckoned) > 2 * choices.RulerErrorMm)
                Add(NoticeCodes.MeasuredDiffers, Severity.Info,
                    numbers: [("measuredMm", row.TotalMm), ("reckonedMm", reckoned), ("differenceMm", row.TotalMm - reckoned),
                        ("firstBead", row.FirstBead), ("lastBead", row.LastBead)],
                    positions: [.. Enumerable.Range(row.FirstBead - 1, row.LastBead - row.FirstBead + 1)]);
    }

    private void Strain()
    {
        if (r.Mass is { PerTurnG: { } perTurn, TotalG: { } total } && perTurn >= choices.HeavyTurnG)
            Add(NoticeCodes.HeavyForItsTurns, Severity.Info, numbers: [("perTurnG", perTurn), ("heavyG", choices.HeavyTurnG), ("totalG", total)]);
        if (r.Strength is { Share: { } share, LeastStrengthMPa: { } strength } strain && share >= choices.StressShareFrom)
            Add(NoticeCodes.StressNearStrength, Severity.Warn, numbers: [("stressMPa", strain.StressMPa), ("strengthMPa", strength), ("share", share)]);
    }

    private ImmutableArray<int> PositionsOf(int kind) => [.. Enumerable.Range(0, Piece.Order.Count).Where(i => Piece.Order.Kinds[i] == kind)];
}
