using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Tests.Readings;

/// <summary>Each notice: when it comes, when it does not, what it says, and that what it asks for cures it.</summary>
public class NoticeTests
{
    private static readonly ReckoningData Quick = SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 1, SpreadDraws = 1, CurveStepMm = 20 } };
    private static readonly Bead Round8 = SamplePieces.Bead("round", "round", 8);
    private static readonly Bead Star = SamplePieces.Bead("star", "focal", 24, 16, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2 });

    private static Piece Rounds(int beads = 94, double wrist = 165) => SamplePieces.Piece([Round8], Enumerable.Repeat(0, beads), wrist);

    private static Reckoned Of(Piece piece) => Reckoning.Of(piece, Quick);

    private static Notice? Find(Piece piece, string code) => Of(piece).Notices.SingleOrDefault(n => n.Code == code);

    private static void Says(Notice? notice, Severity severity, params (string Name, double Value)[] numbers)
    {
        Assert.NotNull(notice);
        Assert.Equal(severity, notice.Severity);
        Assert.Equal(numbers.Select(n => n.Name).Order(StringComparer.Ordinal), notice.Numbers.Keys);
        foreach (var (name, value) in numbers) Near.Equal(value, notice.Numbers[name], 1e-9, name); // rounding
    }

    [Fact]
    public void Wire_too_short_for_beads_and_finishes_stops_and_too_short_for_the_grip_warns()
    {
        var piece = Rounds();
        var planned = Of(piece).Wire;
        var (beadsAndEnds, needed) = (planned.BeadedMm + planned.EndsMm, planned.BeadedMm + planned.EndsMm + planned.GripMm);
        Notice? Cut(double mm) => Find(piece with { Wire = piece.Wire with { CutMm = mm } }, NoticeCodes.WireTooShort);
        Assert.Null(Find(piece, NoticeCodes.WireTooShort));
        Says(Cut(beadsAndEnds - 7), Severity.Stop, ("cutMm", beadsAndEnds - 7), ("neededMm", needed), ("shortMm", 47));
        Says(Cut(beadsAndEnds + 30), Severity.Warn, ("cutMm", beadsAndEnds + 30), ("neededMm", needed), ("shortMm", 10));
        // What the notice asks for cures it.
        Assert.Null(Cut(Cut(beadsAndEnds - 7)!.Numbers["neededMm"]));
        Assert.Equal([NoticeCodes.WireTooShort], Of(piece with { Wire = piece.Wire with { CutMm = beadsAndEnds - 7 } }).Fit.Reasons);
    }

    [Fact]
    public void A_gap_is_told_where_she_wants_whole_turns_or_an_overlap()
    {
        var free = Rounds(92);
        var gap = -Of(free).Fit.EndsOverlapMm;
        Assert.InRange(gap, 5, 40);
        // Memory wire may end anywhere: nothing was wanted.
        Assert.Null(Find(free, NoticeCodes.GapAtTheEnd));
        var whole = free with { Wishes = new Wishes { Turns = 4 } };
        Says(Find(whole, NoticeCodes.GapAtTheEnd), Severity.Warn, ("gapMm", gap), ("turns", 4), ("wantedMm", 0));
        Assert.Equal([0, 91], Find(whole, NoticeCodes.GapAtTheEnd)!.Positions);
        Assert.Null(Find(free with { Wishes = new Wishes { Turns = 3.75 } }, NoticeCodes.GapAtTheEnd));
        Piece Wants(double mm) => free with { Ends = free.Ends with { OverlapMm = mm } };
        Assert.Null(Find(Wants(-gap + 4.9), NoticeCodes.GapAtTheEnd));
        Says(Find(Wants(-gap + 5.1), NoticeCodes.GapAtTheEnd), Severity.Warn, ("gapMm", gap), ("turns", 4), ("wantedMm", -gap + 5.1));
        // Where so much is missing that there are fewer turns, that is said instead.
        var short_ = Rounds(80) with { Wishes = new Wishes { Turns = 4 } };
        Assert.NotNull(Find(short_, NoticeCodes.FewerTurns));
        Assert.Null(Find(short_, NoticeCodes.GapAtTheEnd));
    }

    [Fact]
    public void An_overlap_other_than_wanted_is_told()
    {
        var free = Rounds(100);
        var overlap = Of(free).Fit.EndsOverlapMm;
        Assert.InRange(overlap, 20, 90);
        Piece Wants(double mm) => free with { Ends = free.Ends with { OverlapMm = mm } };
        Assert.Null(Find(Wants(overlap - 4.9), NoticeCodes.OverlapOff));
        Assert.Null(Find(Wants(overlap + 4.9), NoticeCodes.OverlapOff));
        Says(Find(Wants(overlap - 5.1), NoticeCodes.OverlapOff), Severity.Info, ("overlapMm", overlap), ("wantedMm", overlap - 5.1), ("turns", 4));
        Says(Find(Wants(overlap + 5.1), NoticeCodes.OverlapOff), Severity.Info, ("overlapMm", overlap), ("wantedMm", overlap + 5.1), ("turns", 4));
        Assert.Null(Find(Wants(overlap + 5.1), NoticeCodes.GapAtTheEnd));
    }

    [Fact]
    public void A_bead_that_does_not_pass_passes_tightly_or_has_an_unknown_hole_is_told()
    {
        Piece With(double? bore) => SamplePieces.Piece([Round8, SamplePieces.Bead("tube", "tube", 12, 4, bore: bore)], Enumerable.Range(0, 60).Select(i => i % 4 == 0 ? 1 : 0));
        var needed = Of(With(null)).Passing.Single(p => p.BeadId == "tube").NeededBoreMm!.Value;
        int[] tubes = [.. Enumerable.Range(0, 15).Select(i => 4 * i)];

        var unknown = Find(With(null), NoticeCodes.BoreUnknown);
        Says(unknown, Severity.Warn, ("wireMm", 0.62), ("lengthMm", 12), ("neededBoreMm", needed));
        Assert.Equal("tube", unknown!.BeadId);
        Assert.Equal(tubes, unknown.Positions);

        var stops = Find(With(needed - 0.05), NoticeCodes.BeadWillNotPass);
        var longest = Of(With(needed - 0.05)).Passing.Single(p => p.BeadId == "tube").LongestMm!.Value;
        Says(stops, Severity.Stop, ("boreMm", needed - 0.05), ("wireMm", 0.62), ("lengthMm", 12), ("clearanceMm", needed - 0.05 - 0.62),
            ("longestMm", longest), ("neededBoreMm", needed));
        Assert.InRange(longest, 10, 12);

        var tight = Find(With(needed + 0.05), NoticeCodes.BeadPassesTightly);
        Says(tight, Severity.Warn, ("boreMm", needed + 0.05), ("wireMm", 0.62), ("lengthMm", 12), ("clearanceMm", needed + 0.05 - 0.62),
            ("longestMm", Of(With(needed + 0.05)).Passing.Single(p => p.BeadId == "tube").LongestMm!.Value), ("neededBoreMm", needed));

        var fine = Of(With(needed + 0.11));
        Assert.DoesNotContain(fine.Notices, n => n.Code is NoticeCodes.BoreUnknown or NoticeCodes.BeadWillNotPass or NoticeCodes.BeadPassesTightly);
        Assert.True(fine.Fit.Fits);
        Assert.False(Of(With(needed - 0.05)).Fit.Fits);
    }

    [Fact]
    public void A_bead_too_long_for_any_hole_does_not_pass_whether_its_hole_is_known_or_not()
    {
        // A straight tube of 50 mm would need a hole of some 15 mm on this coil, and is 3 mm across.
        Piece With(double? bore) => SamplePieces.Piece([Round8, SamplePieces.Bead("pipe", "tube", 50, 3, bore: bore)], [0, 0, 1, 0, 0]);
        Says(Find(With(null), NoticeCodes.BeadWillNotPass), Severity.Stop, ("wireMm", 0.62), ("lengthMm", 50));
        Assert.Null(Find(With(null), NoticeCodes.BoreUnknown));
        Assert.DoesNotContain("neededBoreMm", Find(With(2), NoticeCodes.BeadWillNotPass)!.Numbers.Keys);
    }

    [Fact]
    public void A_coil_whose_middle_a_bead_reaches_is_too_small_until_its_loop_is_as_long_as_told()
    {
        var thick = SamplePieces.Bead("thick", "round", 20);
        Piece On(double loop) => SamplePieces.Piece([Round8, thick], [0, 1, 0], loopMm: loop);
        Assert.Null(Find(On(188.5), NoticeCodes.CoilTooSmall));
        var notice = Find(On(60), NoticeCodes.CoilTooSmall)!;
        Says(notice, Severity.Stop, ("reachMm", 10), ("radiusMm", 60 / (2 * Math.PI)), ("neededLoopMm", 2 * Math.PI * 11));
        Assert.Equal(("thick", 1), (notice.BeadId, Assert.Single(notice.Positions)));
        Assert.Null(Find(On(notice.Numbers["neededLoopMm"]), NoticeCodes.CoilTooSmall));
        Assert.NotNull(Find(On(notice.Numbers["neededLoopMm"] - 0.001), NoticeCodes.CoilTooSmall));
    }

    [Fact]
    public void An_unknown_flat_at_the_ends_is_told_where_it_decides_the_hinge()
    {
        Piece With(double? face) => SamplePieces.Piece([SamplePieces.Bead("cut", "faceted-rondelle", 5, 8, with: d => d with { EndFaceMm = face })], Enumerable.Repeat(0, 100));
        Says(Find(With(null), NoticeCodes.EndFaceUnknown), Severity.Info, ("thicknessMm", 8));
        Assert.Null(Find(With(4), NoticeCodes.EndFaceUnknown));
        Assert.Null(Find(Rounds(), NoticeCodes.EndFaceUnknown));
    }

    [Fact]
    public void An_end_bead_slides_over_a_loop_no_wider_than_its_hole_until_the_loop_is_as_wide_as_told()
    {
        // A loop of 3 mm inside is 4.24 mm across.
        Piece With(double bore, double inside = 3)
        {
            var wide = SamplePieces.Bead("wide", "round", 12, bore: bore);
            var piece = SamplePieces.Piece([Round8, wide], Enumerable.Range(0, 60).Select(i => i == 59 ? 1 : 0));
            return piece with { Ends = piece.Ends with { Finish = new WireEnd(EndFinish.TurnedLoop, inside) } };
        }
        Assert.Null(Find(With(4.1), NoticeCodes.EndBeadSlidesOff));
        Says(Find(With(4.2), NoticeCodes.EndBeadSlidesOff), Severity.Warn, ("boreMm", 4.2), ("loopMm", 4.24), ("neededInsideMm", 4.2 + 0.1 - 1.24));
        var stops = Find(With(4.3), NoticeCodes.EndBeadSlidesOff)!;
        Says(stops, Severity.Stop, ("boreMm", 4.3), ("loopMm", 4.24), ("neededInsideMm", 4.3 + 0.1 - 1.24));
        Assert.Equal(("wide", "finish", 59), (stops.BeadId, stops.Words["end"], Assert.Single(stops.Positions)));
        // The loop that it asks for holds the bead.
        Assert.Null(Find(With(4.3, stops.Numbers["neededInsideMm"]), NoticeCodes.EndBeadSlidesOff));
        Assert.NotNull(Find(With(4.3, stops.Numbers["neededInsideMm"] - 0.001), NoticeCodes.EndBeadSlidesOff));
        var capped = With(4.3);
        Assert.Null(Find(capped with { Ends = capped.Ends with { Finish = new WireEnd(EndFinish.GluedCap, 5) } }, NoticeCodes.EndBeadSlidesOff));
    }

    private static readonly Bead Tube = SamplePieces.Bead("tube", "tube", 12, 4, role: Role.Connector, colour: "#b08d57");
    private static readonly Bead Chip = SamplePieces.Bead("chip", "chip", 4, 6, 5, colour: "#7d5a7d");

    /// <summary>Clusters a (rounds) and b (chips) between tubes, as many to a turn as bring like over like, or like over other.</summary>
    private static Piece Clusters(bool lineUp, Wishes wishes)
    {
        var order = new List<int>();
        var groups = new List<GroupRun>();
        for (var c = 0; c < 15; c++)
        {
            var a = c % 2 == 0;
            groups.Add(new GroupRun(a ? "a" : "b", order.Count, a ? 4 : 8));
            order.AddRange(Enumerable.Repeat(a ? 0 : 2, a ? 4 : 8));
            order.Add(1);
        }
        // A turn of four clusters brings like over like; of three, the one over the other.
        var piece = SamplePieces.Piece([Round8, Tube, Chip], order, groups: [.. groups]) with { Wishes = wishes };
        var length = Of(piece).RelaxedBeadedMm;
        return piece with { Wire = piece.Wire with { SizeMm = length / 15 * (lineUp ? 4 : 3) }, Wearer = new Wearer(50, 0) };
    }

    [Fact]
    public void Like_over_like_is_a_warning_to_who_wants_a_mix_and_names_the_squarest_pairs()
    {
        var piece = Clusters(lineUp: true, new Wishes { LiningUp = LiningUpWish.Mix });
        var r = Of(piece);
        var told = r.Notices.Where(n => n.Code == NoticeCodes.LikeOverLike).ToArray();
        Assert.Equal(3, told.Length);
        for (var i = 0; i < 3; i++)
        {
            var pair = r.LiningUp.Pairs[i];
            Says(told[i], Severity.Warn, ("cover", r.LiningUp.Cover!.Value), ("turn", pair.TurnA), ("nextTurn", pair.TurnB), ("offSquareMm", pair.OffSquareMm),
                ("overlapMm", pair.OverlapMm), ("angleDeg", pair.AngleDeg));
            Assert.Equal(pair.Name, told[i].Words["group"]);
            Assert.Equal(Enumerable.Range(pair.FirstA, pair.CountA).Concat(Enumerable.Range(pair.FirstB, pair.CountB)), told[i].Positions);
        }
        Assert.DoesNotContain(Of(Clusters(lineUp: false, new Wishes { LiningUp = LiningUpWish.Mix })).Notices, n => n.Code == NoticeCodes.LikeOverLike);
    }

    [Fact]
    public void Like_over_like_is_worth_knowing_to_who_said_nothing_and_none_of_her_business_who_wants_columns()
    {
        Assert.Equal(3, Of(Clusters(true, Wishes.None)).Notices.Count(n => n is { Code: NoticeCodes.LikeOverLike, Severity: Severity.Info }));
        Assert.DoesNotContain(Of(Clusters(false, Wishes.None)).Notices, n => n.Code == NoticeCodes.LikeOverLike);
        var columns = Of(Clusters(true, new Wishes { LiningUp = LiningUpWish.Columns }));
        Assert.DoesNotContain(columns.Notices, n => n.Code is NoticeCodes.LikeOverLike or NoticeCodes.ColumnsMissed);
        Assert.False(columns.LiningUp.FailsWish);
    }

    [Fact]
    public void Columns_that_do_not_come_are_told_with_the_cover_of_the_groups_that_should_stand_in_them()
    {
        var missed = Of(Clusters(false, new Wishes { LiningUp = LiningUpWish.Columns }));
        Says(missed.Notices.Single(n => n.Code == NoticeCodes.ColumnsMissed), Severity.Warn, ("cover", missed.LiningUp.ColumnsCover!.Value));
        Assert.InRange(missed.LiningUp.ColumnsCover!.Value, 0, 0.3);
    }

    [Fact]
    public void Wishes_for_groups_are_judged_apart()
    {
        Wishes Groups(LiningUpWish a, LiningUpWish b) => new() { Groups = Wishes.None.Groups.Add("a", a).Add("b", b) };
        // All lines up: who wants columns of a and a mix of b is told of b alone.
        var r = Of(Clusters(true, Groups(LiningUpWish.Columns, LiningUpWish.Mix)));
        Assert.DoesNotContain(r.Notices, n => n.Code == NoticeCodes.ColumnsMissed);
        Assert.All(r.Notices.Where(n => n.Code == NoticeCodes.LikeOverLike), n => Assert.Equal("b", n.Words["group"]));
        Assert.Equal(3, r.Notices.Count(n => n.Code == NoticeCodes.LikeOverLike));
        Assert.True(r.LiningUp is { FailsMix: true, FailsColumns: false, FailsWish: true });
        // Nothing lines up: of a alone.
        var mixed = Of(Clusters(false, Groups(LiningUpWish.Columns, LiningUpWish.Mix)));
        Assert.Single(mixed.Notices, n => n.Code == NoticeCodes.ColumnsMissed);
        Assert.DoesNotContain(mixed.Notices, n => n.Code == NoticeCodes.LikeOverLike);
        Assert.True(mixed.LiningUp is { FailsMix: false, FailsColumns: true });
        // Columns in one stretch of the wrist that come, and a mix elsewhere that does not.
        var place = Of(Clusters(true, new Wishes { LiningUp = LiningUpWish.Mix, Places = [new PlaceWish(-60, 60, LiningUpWish.Columns)] }));
        Assert.DoesNotContain(place.Notices, n => n.Code == NoticeCodes.ColumnsMissed);
        Assert.All(place.Notices.Where(n => n.Code == NoticeCodes.LikeOverLike), n => Assert.True(Math.Abs(n.Numbers["angleDeg"]) > 30));
        Assert.True(place.LiningUp.FailsMix);
    }

    [Fact]
    public void What_cannot_be_judged_fails_no_wish()
    {
        var piece = Rounds(10) with { Wishes = new Wishes { LiningUp = LiningUpWish.Columns, Groups = Wishes.None.Groups.Add("round", LiningUpWish.Mix) } };
        Assert.True(Of(piece).LiningUp is { FailsWish: false, Cover: null });
        Assert.Empty(Of(piece).Wrists.WishFails);
    }

    [Theory]
    [InlineData(180)]
    [InlineData(-35)]
    [InlineData(90)]
    public void A_focal_off_the_top_is_told_how_far_and_the_start_it_asks_for_centres_it(double start)
    {
        var order = Enumerable.Repeat(0, 70).ToArray();
        order[31] = 1;
        var piece = SamplePieces.Piece([Round8, Star], order) with { Wearer = new Wearer(165, 0) { StartAngleDeg = start } };
        var r = Of(piece);
        var notice = Find(piece, NoticeCodes.FocalOffTop)!;
        Says(notice, Severity.Warn, ("offDeg", Math.Abs(r.Focal!.AngleDeg)), ("offMm", Math.Abs(r.Focal.OffMm)), ("withinDeg", 20), ("turn", r.Lie.Turn(31)),
            ("startDeg", notice.Numbers["startDeg"]));
        Assert.Equal(r.Focal.AngleDeg > 0 ? "past" : "before", notice.Words["side"]);
        Assert.Equal(("star", 31), (notice.BeadId, Assert.Single(notice.Positions)));
        Assert.True(notice.Numbers["startDeg"] is > -180 and <= 180);
        var cured = Of(piece with { Wearer = piece.Wearer with { StartAngleDeg = notice.Numbers["startDeg"] } });
        Near.Equal(0, cured.Focal!.AngleDeg, 1e-9); // rounding
        Assert.DoesNotContain(cured.Notices, n => n.Code == NoticeCodes.FocalOffTop);
        // As far as she allows it may lie off.
        var off = Math.Abs(r.Focal.AngleDeg);
        Assert.Null(Find(piece with { Wishes = new Wishes { FocalWithinDeg = off + 0.01 } }, NoticeCodes.FocalOffTop));
        Assert.NotNull(Find(piece with { Wishes = new Wishes { FocalWithinDeg = off - 0.01 } }, NoticeCodes.FocalOffTop));
    }

    [Fact]
    public void Fewer_turns_than_designed_are_told_from_a_quarter_turn_on()
    {
        var piece = Rounds(94, 190.5);
        var turns = Of(piece).Fit.TurnsWorn;
        Piece Designed(double t) => piece with { Wishes = new Wishes { Turns = t } };
        Assert.Null(Find(piece, NoticeCodes.FewerTurns));
        Assert.Null(Find(Designed(turns + 0.249), NoticeCodes.FewerTurns));
        Says(Find(Designed(turns + 0.251), NoticeCodes.FewerTurns), Severity.Warn, ("turnsWorn", turns), ("turnsDesigned", turns + 0.251), ("wristMm", 190.5));
    }

    [Fact]
    public void Less_than_one_turn_is_told_unless_only_by_the_tolerance_of_its_ends()
    {
        for (var beads = 20; beads < 27; beads++)
        {
            var r = Of(Rounds(beads));
            var notice = r.Notices.SingleOrDefault(n => n.Code == NoticeCodes.UnderOneTurn);
            Assert.Equal(r.Worn.WirePerTurnMm - r.Lie.BeadedMm > 5, notice is not null);
            if (notice is not null) Says(notice, Severity.Warn, ("turnsWorn", r.Fit.TurnsWorn));
        }
        Assert.NotNull(Find(Rounds(20), NoticeCodes.UnderOneTurn));
        Assert.Null(Find(Rounds(26), NoticeCodes.UnderOneTurn));
    }

    [Fact]
    public void A_coil_with_much_room_hangs_loose()
    {
        // 188.5 mm of coil less 25.13 mm for the beads leaves 163.4 mm: from 15 mm less on it is loose.
        var room = 188.5 - 8 * Math.PI;
        Assert.Null(Find(Rounds(94, room - 14.9), NoticeCodes.HangsLoose));
        Says(Find(Rounds(94, room - 15.1), NoticeCodes.HangsLoose), Severity.Info, ("looseMm", 15.1), ("wristMm", room - 15.1));
        // Where she measured it as worn, it is as she measured it.
        Assert.DoesNotContain(Reckoning.Of(Rounds(94, room - 30), Quick, new ReckonRequest { WornCircumferenceMm = 170 }).Notices, n => n.Code == NoticeCodes.HangsLoose);
    }

    [Fact]
    public void A_measured_row_that_differs_by_more_than_two_readings_is_told()
    {
        var piece = Rounds();
        var reckoned = Of(piece).RelaxedBeadedMm * 20 / 94;
        Notice? Measured(double mm) => Find(piece with { MeasuredRows = [new MeasuredRow(5, 24, mm)] }, NoticeCodes.MeasuredDiffers);
        Assert.Null(Measured(reckoned + 0.99));
        Assert.Null(Measured(reckoned - 0.99));
        var told = Measured(reckoned + 3);
        Says(told, Severity.Info, ("measuredMm", reckoned + 3), ("reckonedMm", reckoned), ("differenceMm", 3), ("firstBead", 5), ("lastBead", 24));
        Assert.Equal(Enumerable.Range(4, 20), told!.Positions);
    }

    [Fact]
    public void A_row_that_ends_in_a_long_bead_beside_a_short_one_is_read_to_its_own_end()
    {
        // 8 + 12 mm and so on to the face of a tube, with a disc beside it that is no part of the row.
        var disc = SamplePieces.Bead("disc", "heishi", 1.2, 4, role: Role.Spacer);
        var ball = SamplePieces.Bead("ball", "curved-tube", 8, 4, with: d => d with { Matched = true });
        var long_ = SamplePieces.Bead("long", "curved-tube", 12, 4, with: d => d with { Matched = true });
        var piece = SamplePieces.Piece([ball, long_, disc], [0, 1, 0, 1, 2, 2, 2, 0, 0, 0]) with { MeasuredRows = [new MeasuredRow(1, 4, 40)] };
        Assert.Null(Find(piece, NoticeCodes.MeasuredDiffers));
    }

    [Fact]
    public void A_childs_piece_has_its_cautions()
    {
        var piece = Rounds();
        Assert.Null(Find(piece, NoticeCodes.ChildCautions));
        Says(Find(piece with { Wearer = piece.Wearer with { IsChild = true } }, NoticeCodes.ChildCautions), Severity.Info);
    }

    [Fact]
    public void A_piece_heavy_for_its_turns_is_told()
    {
        var heavy = SamplePieces.Bead("stone", "round", 10, with: d => d with { DensityGPerCm3 = 5.26 });
        var piece = SamplePieces.Piece([heavy], Enumerable.Repeat(0, 60));
        var mass = Of(piece).Mass;
        Assert.True(mass.PerTurnG > 20);
        Says(Find(piece, NoticeCodes.HeavyForItsTurns), Severity.Info, ("perTurnG", mass.PerTurnG!.Value), ("heavyG", 20), ("totalG", mass.TotalG!.Value));
        Assert.Null(Find(Rounds(), NoticeCodes.HeavyForItsTurns));
    }

    [Fact]
    public void A_wire_opened_near_its_strength_is_told()
    {
        var steel = SamplePieces.Stainless with { Strengths = [new StrengthBand(0.5, 0.7, 1900, null)] };
        // A coil of 110 mm opened to 190 mm and more: E d / 2 (1/R0 - 1/R) is about 1700 MPa.
        Piece On(double loop) => Rounds(94, 165) with { Wire = new CoilWire(0.62, CoilDatum.MeasuredLoop, loop, steel) };
        var strength = Of(On(110)).Strength!;
        Assert.Equal(strength.StressMPa / 1900 >= SamplePieces.Choices.StressShareFrom, Find(On(110), NoticeCodes.StressNearStrength) is not null);
        Says(Find(On(110), NoticeCodes.StressNearStrength), Severity.Warn, ("stressMPa", strength.StressMPa), ("strengthMPa", 1900), ("share", strength.StressMPa / 1900));
        Assert.Null(Find(On(188.5), NoticeCodes.StressNearStrength));
    }

    [Fact]
    public void Notices_come_worst_first()
    {
        var piece = Rounds(20, 120) with { Wearer = new Wearer(120, 0) { IsChild = true } };
        var severities = Of(piece with { Wire = piece.Wire with { CutMm = 50 } }).Notices.Select(n => n.Severity).ToArray();
        Assert.Equal(severities.OrderDescending(), severities);
        Assert.Equal([Severity.Stop, Severity.Warn, Severity.Info], severities.Distinct());
    }

    [Fact]
    public void Every_notice_code_has_a_test_here_by_name()
    {
        // The list of codes and this file grow together.
        string[] tested =
        [
            NoticeCodes.WireTooShort, NoticeCodes.GapAtTheEnd, NoticeCodes.OverlapOff, NoticeCodes.CoilTooSmall, NoticeCodes.BeadWillNotPass, NoticeCodes.BeadPassesTightly,
            NoticeCodes.BoreUnknown, NoticeCodes.EndFaceUnknown, NoticeCodes.EndBeadSlidesOff, NoticeCodes.LikeOverLike, NoticeCodes.ColumnsMissed,
            NoticeCodes.FocalOffTop, NoticeCodes.FewerTurns, NoticeCodes.UnderOneTurn, NoticeCodes.HangsLoose, NoticeCodes.MeasuredDiffers,
            NoticeCodes.HeavyForItsTurns, NoticeCodes.StressNearStrength, NoticeCodes.ChildCautions, NoticeCodes.RunTooLong, NoticeCodes.TooClose,
            NoticeCodes.NotApart, NoticeCodes.NotTogether, NoticeCodes.OtherEnd,
            // In SettledNoticesTests.
            NoticeCodes.TurnsGape, NoticeCodes.FocalTips, NoticeCodes.OnAKnifesEdge,
        ];
        Assert.Equal(typeof(NoticeCodes).GetFields().Select(f => (string)f.GetValue(null)!).Order(StringComparer.Ordinal), tested.Order(StringComparer.Ordinal));
    }
}
