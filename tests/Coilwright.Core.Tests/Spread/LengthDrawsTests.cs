using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Spread;
using CsCheck;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;

namespace Coilwright.Core.Tests.Spread;

/// <summary>Draws of the length against distributions in closed form. Seeds are fixed, so nothing here fails by luck.</summary>
public class LengthDrawsTests
{
    private const int Draws = 100_000;

    private static Bead Of(BeadLength length, string id = "chip") => SamplePieces.Bead(id, "chip", 5, 8, 6, with: d => d with { Length = length });

    private static LengthDraws Straight(ulong seed, params (Bead Bead, int Count)[] beads) => new([.. beads.Select(b => b.Bead)],
        [.. beads.SelectMany((b, k) => Enumerable.Repeat(k, b.Count))], [.. beads.SelectMany(b => Enumerable.Repeat(b.Bead.LengthMm, b.Count))], seed);

    // The share of draws at or below each place against the closed form. A share of N draws has the standard error sqrt(F (1 - F) / N); five of them.
    private static void Follows(double[] drawn, Func<double, double> cdf, IEnumerable<double> places)
    {
        foreach (var place in places)
        {
            var expected = cdf(place);
            Near.Equal(expected, (double)drawn.Count(d => d <= place) / drawn.Length, 5 * Math.Sqrt(expected * (1 - expected) / drawn.Length) + 1e-9, place);
        }
    }

    private static double[] Drawn(LengthDraws draws) => [.. Enumerable.Range(0, Draws).Select(k => Length(draws, (ulong)k))];

    private static double Length(LengthDraws draws, ulong k) => draws.Draw(k, new double[draws.Beads], new double[draws.Beads]);

    // Sum of n independent lengths: mean n times the mean, sd = t sqrt(n / 3) for a tolerance of t. Worked apart from this code for 23 beads of 8 mm within 0.5 mm:
    // 184 mm, 1.3844 mm, 95 in 100 within 2.71 mm, all within 11.5 mm. Tolerances: half of the last digit; five standard errors of a share of the draws.
    [Fact]
    public void Twenty_three_beads_of_8_within_half_a_millimetre_come_out_as_worked_by_hand()
    {
        var draws = Straight(1, (Of(new BeadLength.Nominal(8, 0.5)), 23));
        Near.Equal(1.3844, draws.LengthSdMm, 0.00005);
        var drawn = Drawn(draws);
        var statistics = new RunningStatistics(drawn);
        Near.Equal(184, statistics.Mean, 5 * 1.3844 / Math.Sqrt(Draws));
        Near.Equal(1.3844, statistics.StandardDeviation, 5 * 1.3844 / Math.Sqrt(2 * Draws));
        Near.Equal(0.95, drawn.Count(l => Math.Abs(l - 184) <= 2.71) / (double)Draws, 0.0005 + 5 * Math.Sqrt(0.95 * 0.05 / Draws)); // 2.71 is rounded
        Assert.All(drawn, l => Assert.InRange(l, 184 - 11.5, 184 + 11.5));
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(40)]
    [InlineData(300)]
    public void Lengths_within_a_tolerance_add_up_as_a_sum_of_uniform_numbers(int beads)
    {
        const double mean = 6, tolerance = 1.5;
        var drawn = Drawn(Straight(7, (Of(new BeadLength.Nominal(mean, tolerance)), beads)));
        var sd = tolerance * Math.Sqrt(beads / 3.0);
        Follows(drawn, length => SumOfUniforms.Cdf(beads, (length - beads * (mean - tolerance)) / (2 * tolerance)),
            Enumerable.Range(-8, 17).Select(i => beads * mean + i * 0.3 * sd));
    }

    // A range has an unsure lot mean besides, one for all its beads: the sum of uniform numbers is moved by it. Its distribution by Simpson's rule over the
    // lot's mean, which is smooth and of six sd: 200 steps are good to far below a draw's share.
    [Theory]
    [InlineData(1)]
    [InlineData(4)]
    [InlineData(12)]
    public void Chips_of_a_range_add_up_as_a_sum_of_uniform_numbers_about_one_unsure_mean(int chips)
    {
        const double min = 4, max = 7, mean = 5.5;
        var draws = Straight(3, (Of(new BeadLength.Range(min, max)), chips));
        var lotSd = (max - min) / Math.Sqrt(12) / 2;
        Near.Equal(Math.Sqrt(chips * Math.Pow(2 * lotSd, 2) + Math.Pow(chips * lotSd, 2)), draws.LengthSdMm, 1e-12);
        Follows(Drawn(draws), Cdf, Enumerable.Range(-6, 13).Select(i => chips * mean + i * 0.4 * draws.LengthSdMm));

        double Cdf(double length)
        {
            const int steps = 200;
            double sum = 0, weight = 0;
            for (var s = 0; s <= steps; s++)
            {
                var z = -3 + 6.0 * s / steps;
                var w = Normal.PDF(0, 1, z) * (s is 0 or steps ? 1 : s % 2 == 0 ? 2 : 4);
                weight += w;
                sum += w * SumOfUniforms.Cdf(chips, (length - chips * (z * lotSd + min)) / (max - min));
            }
            return sum / weight;
        }
    }

    // A row measured with a ruler leaves one doubt for the whole lot: normal, cut at three sd, so its own sd is 0.98658 of the uncut one.
    [Fact]
    public void A_measured_row_moves_all_its_beads_by_one_normal_number_that_is_cut_at_three_sd()
    {
        var draws = Straight(5, (Of(new BeadLength.Row(20, 160, 2)), 40));
        var sd = 40 * 2.0 / 20;
        Near.Equal(sd, draws.LengthSdMm, 1e-12);
        var drawn = Drawn(draws);
        var within = Normal.CDF(0, 1, 3) - Normal.CDF(0, 1, -3);
        Follows(drawn, length => (Normal.CDF(0, 1, (length - 320) / sd) - Normal.CDF(0, 1, -3)) / within, Enumerable.Range(-9, 19).Select(i => 320 + i * 0.3 * sd));
        Assert.All(drawn, l => Assert.InRange(l, 320 - 3 * sd, 320 + 3 * sd));
        var cut = sd * Math.Sqrt(1 - 6 * Normal.PDF(0, 1, 3) / within);
        Near.Equal(cut, new RunningStatistics(drawn).StandardDeviation, 5 * sd / Math.Sqrt(2 * Draws));
        Near.Equal(0.98658, cut / sd, 0.000005);
    }

    [Fact]
    public void A_lot_that_is_hardly_known_is_cut_above_nought()
    {
        // One bead of 2 mm measured to 1.5 mm: nought lies 1.33 sd below.
        const double lowest = -0.999 * 2 / 1.5;
        var drawn = Drawn(Straight(11, (Of(new BeadLength.Row(1, 2, 1.5)), 10)));
        Assert.All(drawn, l => Assert.True(l > 0));
        var within = Normal.CDF(0, 1, 3) - Normal.CDF(0, 1, lowest);
        Follows(drawn, length => (Normal.CDF(0, 1, (length - 20) / 15) - Normal.CDF(0, 1, lowest)) / within, Enumerable.Range(-4, 15).Select(i => 20 + i * 4.0));
    }

    [Fact]
    public void Lots_vary_apart_from_each_other()
    {
        var draws = Straight(13, (Of(new BeadLength.Row(20, 160, 2)), 40), (Of(new BeadLength.Row(10, 50, 2), "other"), 15), (Of(new BeadLength.Nominal(6, 1), "third"), 30));
        var sd = Math.Sqrt(Math.Pow(40 * 0.1, 2) + Math.Pow(15 * 0.2, 2) + 30.0 / 3);
        Near.Equal(sd, draws.LengthSdMm, 1e-12);
        var statistics = new RunningStatistics(Drawn(draws));
        Near.Equal(40 * 8 + 15 * 5 + 30 * 6, statistics.Mean, 5 * sd / Math.Sqrt(Draws));
        // The two lots' cut at three sd takes 1.4 % of theirs, which is most of it.
        Assert.InRange(statistics.StandardDeviation, 0.985 * sd - 5 * sd / Math.Sqrt(2 * Draws), sd + 5 * sd / Math.Sqrt(2 * Draws));
    }

    [Fact]
    public void A_bead_that_takes_twice_its_length_of_wire_spreads_twice_as_far()
    {
        var chip = Of(new BeadLength.Range(4, 7));
        Gen.Select(Gen.ULong, Gen.Int[1, 60]).Sample((seed, count) =>
        {
            var straight = Straight(seed, (chip, count));
            var wide = new LengthDraws([chip], [.. Enumerable.Repeat(0, count)], [.. Enumerable.Repeat(11.0, count)], seed);
            Near.Equal(2 * Length(straight, 4), Length(wide, 4), 1e-10); // rounding
            Near.Equal(2 * straight.LengthSdMm, wide.LengthSdMm, 1e-10);
        });
    }

    [Fact]
    public void What_is_not_in_doubt_does_not_vary()
    {
        var draws = Straight(1, (Of(new BeadLength.Nominal(8)), 40));
        Assert.Equal(0, draws.LengthSdMm);
        for (ulong k = 0; k < 100; k++) Assert.Equal(320, Length(draws, k));
    }

    private static readonly Gen<BeadLength> Lengths = Gen.OneOf<BeadLength>(
        Gen.Select(Gen.Double[1, 20], Gen.Double[0, 0.9], (mm, t) => (BeadLength)new BeadLength.Nominal(mm, t * mm)),
        Gen.Select(Gen.Double[0.1, 20], Gen.Double[1, 30], (min, times) => (BeadLength)new BeadLength.Range(min, Math.Min(200, min * times))),
        Gen.Select(Gen.Int[1, 40], Gen.Double[1, 10], Gen.Double[0, 4], (count, mm, error) => (BeadLength)new BeadLength.Row(count, count * mm, error)));

    [Fact]
    public void Each_share_of_a_draw_ends_where_the_next_begins_and_none_is_less_than_nothing() =>
        Gen.Select(Lengths.Array[1, 4], Gen.Int[0, 3].Array[1, 600], Gen.ULong, Gen.ULong).Sample((lengths, order, seed, k) =>
        {
            ImmutableArray<Bead> kinds = [.. lengths.Select((l, i) => Of(l, "chip-" + i))];
            ImmutableArray<int> strung = [.. order.Select(i => i % kinds.Length)];
            var draws = new LengthDraws(kinds, strung, [.. strung.Select(i => 1.1 * kinds[i].LengthMm)], seed);
            var shares = new double[strung.Length];
            var ends = new double[strung.Length];
            var length = draws.Draw(k, shares, ends);
            Assert.All(shares, s => Assert.True(s >= 0));
            var along = 0.0;
            // The same summands, put together otherwise: rounding.
            Assert.All(shares.Zip(ends), b => Near.Equal(along += b.First, b.Second, 1e-12 * along));
            Assert.Equal(ends[^1], length);
        });

    [Fact]
    public void A_draw_is_the_same_in_any_order_and_on_any_thread()
    {
        var draws = Straight(17, (Of(new BeadLength.Range(4, 7)), 40), (Of(new BeadLength.Row(20, 160, 1), "other"), 12));
        double[] inOrder = [.. Enumerable.Range(0, 2000).Select(k => Length(draws, (ulong)k))];
        var backwards = new double[2000];
        for (var k = 1999; k >= 0; k--) backwards[k] = Length(draws, (ulong)k);
        var apart = new double[2000];
        Parallel.For(0, 2000, k => apart[k] = Length(draws, (ulong)k));
        Assert.Equal(inOrder, backwards);
        Assert.Equal(inOrder, apart);
        Assert.Equal(2000, inOrder.Distinct().Count());
        Assert.NotEqual(inOrder, [.. Enumerable.Range(0, 2000).Select(k => Length(Straight(18, (Of(new BeadLength.Range(4, 7)), 40), (Of(new BeadLength.Row(20, 160, 1), "other"), 12)), (ulong)k))]);
    }

    [Fact]
    public void A_draw_allocates_nothing()
    {
        var draws = Straight(1, (Of(new BeadLength.Range(4, 7)), 40));
        var (shares, ends) = (new double[40], new double[40]);
        Draw(100);
        var before = GC.GetAllocatedBytesForCurrentThread();
        Draw(1000);
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());

        void Draw(int times)
        {
            for (var k = 0; k < times; k++) draws.Draw((ulong)k, shares, ends);
        }
    }
}
