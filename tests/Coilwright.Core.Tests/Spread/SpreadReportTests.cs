using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Spread;
using CsCheck;
using MathNet.Numerics.Distributions;

namespace Coilwright.Core.Tests.Spread;

/// <summary>The spread as the reckoning tells it: bands, and whether it fits, against closed forms. Seeds are fixed, so nothing here fails by luck.</summary>
public class SpreadReportTests
{
    private const int Draws = 40_000;
    private const double CircumferenceMm = 200;

    // The worn circumference as she measured it has no band: only the beads vary.
    private static readonly ReckonRequest Measured = new() { WornCircumferenceMm = CircumferenceMm };

    private static ReckoningData With(int draws) => SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 1, SpreadDraws = draws, CurveStepMm = 20 } };

    private static Bead Round(BeadLength length) => SamplePieces.Bead("round", "round", 8, colour: "#6fa3a8", with: d => d with { Length = length });

    private static Bead Chip(double minMm, double maxMm) =>
        SamplePieces.Bead("chip", "chip", 5, 8, 6, colour: "#6fa3a8", with: d => d with { Length = new BeadLength.Range(minMm, maxMm) });

    private static readonly Bead Disc = SamplePieces.Bead("disc", "heishi", 1.2, 6, role: Role.Accent, colour: "#d9785a");

    // Ninety beads of which only the lot's mean is in doubt: the length is one normal number.
    private static readonly Piece OneLot = SamplePieces.Piece([Round(new BeadLength.Row(20, 160, 2))], Enumerable.Repeat(0, 90));

    // Standard error of a share of the draws, five times.
    private static double Error(double share) => 5 * Math.Sqrt(share * (1 - share) / Draws);

    // A normal number cut at three sd.
    private static double Cut(double z) => (Normal.CDF(0, 1, Math.Clamp(z, -3, 3)) - Normal.CDF(0, 1, -3)) / (Normal.CDF(0, 1, 3) - Normal.CDF(0, 1, -3));

    [Theory]
    [InlineData(-6)]
    [InlineData(0)]
    [InlineData(4)]
    [InlineData(15)]
    [InlineData(40)]
    public void That_the_wire_is_long_enough_is_as_likely_as_one_normal_number_says(double slackMm)
    {
        var cut = OneLot with { Wire = OneLot.Wire with { CutMm = 900 } };
        var slack = Reckoning.Of(cut, With(1), Measured).Wire.SlackMm!.Value;
        var reckoned = Reckoning.Of(cut with { Wire = cut.Wire with { CutMm = 900 - slack + slackMm } }, With(Draws), Measured);
        var expected = Cut(slackMm / reckoned.Spread.LengthSdMm);
        Near.Equal(expected, reckoned.Spread.FitsShare!.Value, Error(expected) + 1e-9);
        Near.Equal(90 * 0.1, reckoned.Spread.LengthSdMm, 0.05 * 9); // the curve takes a little more wire than the ruler
    }

    [Theory]
    [InlineData(0)]
    [InlineData(7)]
    public void That_the_ends_meet_as_wanted_is_as_likely_as_one_normal_number_says(double offMm)
    {
        var plain = Reckoning.Of(OneLot, With(1), Measured);
        var turns = Math.Round(plain.Lie.Turns);
        var overlap = plain.Lie.BeadedMm - turns * plain.Worn.WirePerTurnMm + offMm;
        var reckoned = Reckoning.Of(OneLot with { Ends = OneLot.Ends with { OverlapMm = overlap } }, With(Draws), Measured);
        double tolerance = SamplePieces.Choices.OverlapToleranceMm, sd = reckoned.Spread.LengthSdMm;
        var expected = Cut((offMm + tolerance) / sd) - Cut((offMm - tolerance) / sd);
        Near.Equal(expected, reckoned.Spread.FitsShare!.Value, Error(expected));
    }

    // The turns are as designed while the length is above so many turns less the data's quarter, on a turn of the mean size: the wrist's own band has no say.
    [Theory]
    [InlineData(0.02)]
    [InlineData(-0.04)]
    public void That_the_turns_suffice_is_as_likely_as_one_normal_number_says(double moreTurns)
    {
        var plain = Reckoning.Of(OneLot, With(1));
        Assert.NotEqual(0, plain.Worn.BandMm);
        var designed = plain.Lie.Turns + SamplePieces.Choices.FewerTurnsFrom - moreTurns;
        var reckoned = Reckoning.Of(OneLot with { Wishes = new Wishes { Turns = designed } }, With(Draws));
        var expected = Cut(moreTurns * plain.Worn.WirePerTurnMm / reckoned.Spread.LengthSdMm);
        Near.Equal(expected, reckoned.Spread.FitsShare!.Value, Error(expected));
    }

    [Fact]
    public void What_was_not_asked_for_is_not_judged() => Assert.Null(Reckoning.Of(OneLot, With(10), Measured).Spread.FitsShare);

    // Cut at three sd, the 5th percentile of a normal number lies a little nearer than 1.645 sd below. A percentile of N draws has the standard error sqrt(0.05 x 0.95 / N) over the density there.
    [Fact]
    public void The_band_of_one_normal_length_runs_from_its_5th_to_its_95th_percentile()
    {
        var reckoned = Reckoning.Of(OneLot, With(Draws), Measured);
        var sd = reckoned.Spread.LengthSdMm;
        var within = Normal.CDF(0, 1, 3) - Normal.CDF(0, 1, -3);
        var z = Normal.InvCDF(0, 1, Normal.CDF(0, 1, -3) + 0.05 * within);
        var error = 5 * Math.Sqrt(0.05 * 0.95 / Draws) / (Normal.PDF(0, 1, z) / within) * sd;
        Near.Equal(reckoned.Lie.BeadedMm + z * sd, reckoned.Spread.LengthMm.From, error);
        Near.Equal(reckoned.Lie.BeadedMm - z * sd, reckoned.Spread.LengthMm.To, error);
    }

    [Fact]
    public void A_band_holds_nine_in_ten_of_other_draws() => Gen.Select(Gen.Double[2, 6], Gen.Double[1.05, 3], Gen.Double[0, 1], Gen.Int[1, 60], Gen.Int[0, 60]).Sample(
        (min, times, tolerance, chips, rounds) =>
        {
            var piece = SamplePieces.Piece([Chip(min, min * times), SamplePieces.Bead("other", "round", 6,
                with: d => d with { Length = new BeadLength.Nominal(6, tolerance) })], Enumerable.Range(0, chips + rounds).Select(i => i < chips ? 0 : 1));
            const int draws = 4000;
            var reckoned = Reckoning.Of(piece, With(draws), Measured);
            var others = new LengthDraws(reckoned.Piece.Beads, piece.Order.Kinds, reckoned.Lie.SharesMm, 99);
            var (from, to) = reckoned.Spread.LengthMm;
            var held = Enumerable.Range(0, draws).Count(k => others.Draw((ulong)k, new double[others.Beads], new double[others.Beads]) is var l && l >= from && l <= to);
            // Both the band and the count are of so many draws: five standard errors of the one and of the other.
            Near.Equal(0.9, (double)held / draws, 5 * Math.Sqrt(2 * 0.9 * 0.1 / draws));
        }, iter: 30);

    // Type 7 of Hyndman and Fan 1996: with n numbers in order the share p lies (n - 1) p places after the first.
    [Fact]
    public void Percentiles_lie_between_two_draws_in_proportion()
    {
        Is(1.45, 9.55, [3, 1, 2, 10, 9, 8, 4, 5, 6, 7]);
        Is(1.2, 4.8, [5, null, 1, 4, 3, null, 2]);
        Assert.Equal(new SpreadBand(7, 7), SpreadModel.Band([7]));
        Assert.Null(SpreadModel.Band([null]));
        Assert.Null(SpreadModel.Band([]));

        static void Is(double from, double to, double?[] values)
        {
            var band = SpreadModel.Band(values)!.Value;
            Near.Equal(from, band.From, 1e-12); // rounding
            Near.Equal(to, band.To, 1e-12);
        }
    }

    [Fact]
    public void With_nothing_in_doubt_every_band_closes_on_the_reading()
    {
        var star = SamplePieces.Bead("star", "focal", 20, 14, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2 });
        var piece = SamplePieces.Piece([Round(new BeadLength.Nominal(8)), Disc, star], Enumerable.Range(0, 121).Select(i => i == 60 ? 2 : i % 3 == 0 ? 1 : 0)) with
        {
            Wishes = new Wishes { Turns = 3 },
        };
        var reckoned = Reckoning.Of(piece, With(20), Measured);
        var spread = reckoned.Spread;
        Assert.Equal(0, spread.LengthSdMm);
        Closed(reckoned.Lie.BeadedMm, spread.LengthMm);
        Closed(reckoned.LiningUp.CoverExact!.Value, spread.Cover!.Value);
        Closed(reckoned.LiningUp.Relative!.Value, spread.Relative!.Value);
        Closed(reckoned.Focal!.AngleDeg, spread.FocalDeg!.Value);
        Assert.Equal(reckoned.Lie.Turns > 2.75 ? 1 : 0, spread.FitsShare);

        // The same sums in another order: rounding.
        static void Closed(double reading, SpreadBand band)
        {
            Near.Equal(reading, band.From, 1e-9);
            Near.Equal(reading, band.To, 1e-9);
        }
    }

    [Fact]
    public void The_angle_of_a_focal_at_the_underside_is_told_as_one_band()
    {
        var star = SamplePieces.Bead("star", "focal", 20, 14, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2 });
        var piece = SamplePieces.Piece([Round(new BeadLength.Range(7.5, 8.5)), star], Enumerable.Range(0, 51).Select(i => i == 25 ? 1 : 0));
        var angle = Reckoning.Of(piece, With(1), Measured).Focal!.AngleDeg;
        // Turned so that it lies just before the underside, where angles jump from 180 to -180.
        var turned = Reckoning.Of(piece with { Wearer = piece.Wearer with { StartAngleDeg = piece.Wearer.StartAngleDeg + 179.5 - angle } }, With(2000), Measured);
        Near.Equal(179.5, turned.Focal!.AngleDeg, 1e-6);
        var band = turned.Spread.FocalDeg!.Value;
        Assert.InRange(band.From, 150, 179.5);
        Assert.InRange(band.To, 180, 210);
    }

    [Fact]
    public void However_far_the_beads_vary_the_bands_are_numbers_in_order() =>
        Gen.Select(Gen.Double[0.1, 5], Gen.Double[1, 40], Gen.Double[0, 0.99], Gen.Int[0, 2].Array[1, 400], Gen.ULong).Sample((min, times, tolerance, order, seed) =>
        {
            var piece = SamplePieces.Piece([Chip(min, min * times), SamplePieces.Bead("other", "round", 6,
                with: d => d with { Length = new BeadLength.Nominal(6, 6 * tolerance) }), Disc], order) with
            { Wishes = new Wishes { Turns = 3 } };
            var spread = Reckoning.Of(piece, With(60), new ReckonRequest { Seed = seed, WornCircumferenceMm = 800 }).Spread;
            Assert.True(double.IsFinite(spread.LengthSdMm) && spread.LengthSdMm >= 0);
            InOrder(spread.LengthMm, 0, 1e6);
            Assert.InRange(spread.FitsShare!.Value, 0, 1);
            if (spread.Cover is { } cover) InOrder(cover, 0, 1);
            if (spread.Relative is { } relative) InOrder(relative, 0, double.MaxValue);

            static void InOrder(SpreadBand band, double least, double most) =>
                Assert.True(band.From >= least - 1e-9 && band.From <= band.To && band.To <= most + 1e-9, $"{band}");
        }, iter: 200);

    [Fact]
    public void The_same_seed_gives_the_same_spread_and_another_seed_nearly_the_same()
    {
        var piece = SamplePieces.Piece([Round(new BeadLength.Range(7, 9)), Disc], Enumerable.Range(0, 140).Select(i => i % 3 == 0 ? 1 : 0)) with { Wishes = new Wishes { Turns = 4 } };
        var once = Reckoning.Of(piece, With(400), new ReckonRequest { Seed = 5 }).Spread;
        Assert.Equal(once, Reckoning.Of(piece, With(400), new ReckonRequest { Seed = 5 }).Spread);
        var other = Reckoning.Of(piece, With(400), new ReckonRequest { Seed = 6 }).Spread;
        Assert.NotEqual(once.LengthMm, other.LengthMm);
        // A 5th percentile of 400 draws has a standard error of 0.11 sd; two of them, five times.
        Near.Equal(once.LengthMm.From, other.LengthMm.From, 5 * Math.Sqrt(2) * 0.11 * once.LengthSdMm);
        Near.Equal(once.LengthMm.To, other.LengthMm.To, 5 * Math.Sqrt(2) * 0.11 * once.LengthSdMm);
    }
}
