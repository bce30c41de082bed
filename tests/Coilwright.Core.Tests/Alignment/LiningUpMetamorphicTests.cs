using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Findings;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

/// <summary>What must stay, turn or scale when a piece is mirrored, recoloured, turned round the wrist or made twice as large.</summary>
public class LiningUpMetamorphicTests
{
    private static readonly ReckoningChoices Choices = SamplePieces.Choices with { Shuffles = 5 };

    private static LiningUpReport Measure(LatticePiece p) => new LiningUpModel(p.Piece, Choices).Measure(p.Lie, p.PitchMm, p.AveragingMm, 1);

    private static void Same(double? expected, double? actual, object what)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is { } e) Near.Equal(e, actual!.Value, 1e-9, what); // rounding
    }

    // Symmetric under mirroring: what lies over anything, share, strict share, chance, each kind's and each name's overlap, pairs with their distance off
    // square. Not symmetric: cover and a kind's share, whose denominators count what lies on the earlier turn, and the rank, which draws its shuffles
    // from the order as it is written.
    [Fact]
    public void Strung_the_other_way_round_everything_is_mirrored() => LatticePieces.Any(focals: true, places: false).Sample(p =>
    {
        var n = p.Lie.Count;
        // Reversed, an outer group still comes before an inner one that starts with it.
        var groups = p.Piece.Order.Groups.Select((g, i) => (Run: g with { First = n - g.End }, i)).OrderBy(g => g.Run.First).ThenByDescending(g => g.Run.Count).ThenBy(g => g.i);
        var mirrored = p with
        {
            Piece = p.Piece with { Order = new StringingOrder([.. p.Piece.Order.Kinds.Reverse()], [.. groups.Select(g => g.Run)]) },
            Lie = new Lie([.. p.Lie.SharesMm.Reverse()], p.Lie.WirePerTurnMm, p.Lie.RadiusMm, -(p.Lie.StartAngleDeg + 360 * p.Lie.Turns)),
        };
        for (var i = 0; i < n; i++) Near.Equal(0, Math.IEEERemainder(p.Lie.AngleDeg(i) + mirrored.Lie.AngleDeg(n - 1 - i), 360), 1e-8, p);
        var (there, back) = (Measure(p), Measure(mirrored));
        Near.Equal(there.OverMm, back.OverMm, 1e-9, p);
        Near.Equal(there.HiddenMm, back.HiddenMm, 1e-9, p);
        Same(there.Share, back.Share, p);
        Same(there.Chance, back.Chance, p);
        Same(there.Relative, back.Relative, p);
        Same(there.RelativeAveraged, back.RelativeAveraged, p);
        Same(there.StrictShare, back.StrictShare, p);
        foreach (var (a, b) in there.Kinds.Zip(back.Kinds))
        {
            Assert.Equal(a.BeadId, b.BeadId);
            Near.Equal(a.OverOwnMm, b.OverOwnMm, 1e-9, p);
            Same(a.Chance, b.Chance, p);
        }
        Assert.Equal(there.Pairs.Length, back.Pairs.Length);
        foreach (var pair in there.Pairs)
        {
            var twin = Assert.Single(back.Pairs, x => x.FirstA == n - pair.FirstB - pair.CountB && x.FirstB == n - pair.FirstA - pair.CountA);
            Near.Equal(pair.OverlapMm, twin.OverlapMm, 1e-9, p);
            Near.Equal(pair.OffSquareMm, twin.OffSquareMm, 1e-9, p);
            Near.Equal(0, Math.IEEERemainder(pair.AngleDeg + twin.AngleDeg, 360), 1e-7, p);
        }
        // Where everything is in a group and nothing hidden, both turns have the same length under groups: then cover is symmetric too.
        if (there.GroupsAreRuns && p.Piece.Order.Kinds.All(k => LatticePieces.Kinds[k].Role is Role.Main or Role.Accent)) Same(there.CoverExact, back.CoverExact, p);
    }, iter: 400);

    [Fact]
    public void Cover_counts_groups_of_the_earlier_turn()
    {
        // Turn one: a group of 20 mm and 30 mm of connectors; turn two: all 50 mm a group of that name. Of the earlier turn's 20 mm all lie over their
        // own; strung the other way round it is 20 of 50.
        var (ball, tube) = (LatticePieces.Kinds[0], LatticePieces.Kinds[2]);
        double CoverOf(int[] kinds, GroupRun[] groups)
        {
            var piece = SamplePieces.Piece([ball, tube], kinds, groups: [.. groups]);
            var lie = new Lie([.. kinds.Select(_ => 10.0)], 50, 50 / (2 * Math.PI), 180);
            return new LiningUpModel(piece, Choices).Measure(lie, 8, 4, 1).CoverExact!.Value;
        }
        Near.Equal(1, CoverOf([0, 0, 1, 1, 1, 0, 0, 0, 0, 0], [new GroupRun("g", 0, 2), new GroupRun("g", 5, 5)]), 1e-12);
        Near.Equal(0.4, CoverOf([0, 0, 0, 0, 0, 1, 1, 1, 0, 0], [new GroupRun("g", 0, 5), new GroupRun("g", 8, 2)]), 1e-12);
    }

    [Fact]
    public void One_colour_for_all_is_as_good_as_another() => Gen.Select(LatticePieces.Any(focals: true, places: false), Gen.Byte, Gen.Byte, Gen.Byte).Sample((p, red, green, blue) =>
    {
        LatticePiece Coloured(Srgb colour) => p with
        {
            Piece = p.Piece with { Beads = [.. p.Piece.Beads.Select(b => Bead.TryMake(b.Description with { Colours = [colour] }, out var bead, out _) ? bead! : b)] },
        };
        var (one, other) = (Measure(Coloured(new Srgb(0, 0, 0))), Measure(Coloured(new Srgb(red, green, blue))));
        Same(one.Share, other.Share, p);
        Same(one.Relative, other.Relative, p);
        Assert.Equal(one.Rank, other.Rank);
        Assert.Equal((one.Cover, one.CoverExact, one.StrictShare), (other.Cover, other.CoverExact, other.StrictShare));
    }, iter: 100);

    [Fact]
    public void A_pattern_of_exactly_one_turn_lines_up_all_over() => Gen.Select(Gen.Int[0, 5].Array[2, 20], Gen.Int[2, 6], Gen.Int[20, 600].Array[20]).Sample((pattern, turns, steps) =>
    {
        var kinds = Enumerable.Range(0, pattern.Length * turns).Select(i => pattern[i % pattern.Length]).ToArray();
        var lie = new Lie([.. kinds.Select((_, i) => steps[i % pattern.Length] / 32.0)], Enumerable.Range(0, pattern.Length).Sum(i => steps[i] / 32.0), 30, 180);
        var report = new LiningUpModel(SamplePieces.Piece(LatticePieces.Kinds, kinds), Choices).Measure(lie, 8, lie.WirePerTurnMm / 10, 1);
        Assert.Equal(1, report.StrictShare);
        if (report.CoverExact is { } cover) Assert.Equal(1, cover);
        // Every pair that is told really lies over its own, square, and none only touches by rounding.
        Assert.All(report.Pairs.Where(p => p.FirstB - p.FirstA == pattern.Length && p.CountA == p.CountB), p => Near.Equal(0, p.OffSquareMm, 1e-9));
        Assert.All(report.Pairs, p => Assert.True(p.OverlapMm > 0.01));
        Near.Equal(lie.BeadedMm - lie.WirePerTurnMm, report.OverMm, 1e-9);
    }, iter: 200);

    [Fact]
    public void Groups_that_only_touch_are_no_pair()
    {
        // A turn of three equal groups, each name on every third place but one further on: they touch end to end and lie over nothing of their own.
        var kinds = Enumerable.Range(0, 90).Select(i => i / 5 % 2).ToArray();
        var lie = new Lie([.. kinds.Select(_ => 0.1 + 0.2)], 15 * 0.3, 0.7, 180);
        var report = new LiningUpModel(SamplePieces.Piece(LatticePieces.Kinds, kinds), Choices).Measure(lie, 8, 0.3, 1);
        Assert.Equal(0, report.CoverExact!.Value, 12);
        Assert.Empty(report.Pairs);
    }

    [Fact]
    public void Averaging_over_a_turn_or_more_is_refused()
    {
        var model = new LiningUpModel(SamplePieces.Piece(LatticePieces.Kinds, [0, 0, 0]), Choices);
        var lie = new Lie([8, 8, 8], 10, 1.6, 180);
        Assert.Throws<ArgumentOutOfRangeException>(() => model.Measure(lie, 8, 10, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => model.Glance(lie, 8, 0));
        _ = model.Glance(lie, 8, 9.99);
    }

    [Fact]
    public void A_piece_twice_as_large_has_twice_the_millimetres_and_the_same_ratios() =>
        Gen.Select(Gen.Int[0, 2].Array[20, 70], Gen.Double[70, 140], Gen.Double[80, 150], Gen.Bool, Gen.Enum<LiningUpWish>()).Sample((order, wrist, loop, focal, wish) =>
        {
            if (focal) order[order.Length / 2] = 3;
            var (once, twice) = (Reckoning.Of(Scaled(1), Data(1)), Reckoning.Of(Scaled(2), Data(2)));
            Near.Equal(2 * once.Worn.CircumferenceMm, twice.Worn.CircumferenceMm, 1e-9);
            Near.Equal(2 * once.Worn.WirePerTurnMm, twice.Worn.WirePerTurnMm, 1e-9);
            Near.Equal(2 * once.Worn.AveragingMm, twice.Worn.AveragingMm, 1e-9);
            // Two neighbours' contact is found to about 1e-8 mm each.
            Near.Equal(2 * once.Lie.BeadedMm, twice.Lie.BeadedMm, 1e-6);
            Near.Equal(2 * once.Wire.CutMm, twice.Wire.CutMm, 1e-6);
            Near.Equal(2 * once.Fit.EndsOverlapMm, twice.Fit.EndsOverlapMm, 1e-6);
            Near.Equal(once.Fit.TurnsWorn, twice.Fit.TurnsWorn, 1e-8);
            Near.Equal(4 * once.Wire.LoopMassG!.Value * 2, twice.Wire.LoopMassG!.Value, 1e-9);
            Near.Equal(8 * once.Mass.TotalG!.Value, twice.Mass.TotalG!.Value, 1e-5);
            if (once.Focal is { } f) Near.Equal(f.AngleDeg, twice.Focal!.AngleDeg, 1e-6);
            Near.Equal(2 * once.LiningUp.OverMm, twice.LiningUp.OverMm, 1e-5);
            Near.Equal(2 * once.LiningUp.HiddenMm, twice.LiningUp.HiddenMm, 1e-5);
            Ratio(once.LiningUp.Cover, twice.LiningUp.Cover);
            Ratio(once.LiningUp.CoverExact, twice.LiningUp.CoverExact);
            Ratio(once.LiningUp.Share, twice.LiningUp.Share);
            Ratio(once.LiningUp.Relative, twice.LiningUp.Relative);
            Ratio(once.LiningUp.StrictRelative, twice.LiningUp.StrictRelative);
            Assert.Equal(once.Passing.Select(p => p.Passes), twice.Passing.Select(p => p.Passes));
            Assert.Equal(once.Notices.Select(n => (n.Code, n.Severity)), twice.Notices.Select(n => (n.Code, n.Severity)));

            // Edges are off by up to 1e-6 mm over an overlap of some millimetres or more.
            static void Ratio(double? one, double? two)
            {
                Assert.Equal(one is null, two is null);
                if (one is { } r) Near.Equal(r, two!.Value, 1e-5);
            }

            Piece Scaled(double by) => SamplePieces.Piece(
                [
                    SamplePieces.Bead("ball", "round", 8 * by, bore: by), SamplePieces.Bead("disc", "heishi", 1.2 * by, 4 * by, bore: by, role: Role.Spacer),
                    SamplePieces.Bead("tube", "tube", 7 * by, 4 * by, bore: 1.3 * by), SamplePieces.Bead("star", "focal", 24 * by, 16 * by, 8 * by, 1.1 * by, Role.Focal,
                        with: d => d with { HoleOffsetMm = 2 * by, Seat = new Seat(9 * by, 2.5 * by) }),
                ], order, wrist * by, loop * by) with
            {
                Wire = SamplePieces.Piece(LatticePieces.Kinds, [0]).Wire with { WireMm = 0.62 * by, SizeMm = loop * by },
                Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3 * by), new WireEnd(EndFinish.TurnedLoop, 2.5 * by), 20 * by, 5 * by),
                Wishes = new Wishes { LiningUp = wish, Turns = 3 },
            };

            ReckoningData Data(double by) => SamplePieces.Data with
            {
                Choices = Choices with
                {
                    SpreadDraws = 1,
                    WornBandWristMm = 10 * by,
                    WornBandLabelMm = 7.5 * by,
                    WornBandMeasuredMm = 5 * by,
                    LeastAveragingMm = 4 * by,
                    OverlapToleranceMm = 5 * by,
                    BoreToleranceMm = 0.1 * by,
                    LooseFromMm = 15 * by,
                    CurveStepMm = 30,
                    // Mass does not scale with length: left out of the comparison.
                    HeavyTurnG = 1e9,
                },
            };
        }, iter: 60);

    [Fact]
    public void Turning_the_starting_end_turns_places_and_moves_nothing_else() => Gen.Select(LatticePieces.Any(focals: true, places: false), Gen.Double[-360, 360]).Sample((p, by) =>
    {
        var turned = p with { Lie = p.Lie.StartingAt(p.Lie.StartAngleDeg + by) };
        var (there, here) = (Measure(p), Measure(turned));
        Assert.Equal((there.Cover, there.CoverExact, there.Share, there.Rank, there.StrictShare), (here.Cover, here.CoverExact, here.Share, here.Rank, here.StrictShare));
        Assert.Equal(there.Pairs.Select(x => (x.FirstA, x.FirstB, x.TurnA, x.TurnB, x.OverlapMm)), here.Pairs.Select(x => (x.FirstA, x.FirstB, x.TurnA, x.TurnB, x.OverlapMm)));
        foreach (var (a, b) in there.Pairs.Zip(here.Pairs)) Near.Equal(0, Math.IEEERemainder(b.AngleDeg - a.AngleDeg - by, 360), 1e-8, p);
    }, iter: 200);
}
