using Coilwright.Core.Numerics;
using CsCheck;
using MathNet.Numerics.Distributions;

namespace Coilwright.Core.Tests.Numerics;

public class NormalQuantileTests
{
    private static readonly ReferenceTable Table = ReferenceTable.Read("normal-quantiles.csv");

    // Tolerance: half of the last of 13 decimals, and what rounding the probability to a double makes: half its last place over the normal density there.
    [Fact]
    public void Quantiles_are_those_of_the_table()
    {
        foreach (var row in Table.Rows)
        {
            var tolerance = 5e-14 + 1.2e-16 / Normal.PDF(0, 1, row["z"]);
            Near.Equal(row["z"], NormalQuantile.Of(row["p"]), tolerance, row);
            Near.Equal(-row["z"], NormalQuantile.Of(1 - row["p"]), tolerance, row);
            if (row.Text("printed").Length > 0) Near.Equal(row["printed"], NormalQuantile.Of(row["p"]), 0.0005, row);
        }
    }

    // Second way: another routine of the same function (a library's, by the inverse error function). 16 digits each, a few roundings apart.
    [Fact]
    public void Quantiles_are_those_of_a_library_far_into_both_tails() => Gen.Select(Gen.Double[-280, 0], Gen.Bool).Sample((power, upper) =>
    {
        var p = 0.5 * Math.Pow(10, upper ? power / 18 : power);
        if (upper) p = 1 - p;
        var library = Normal.InvCDF(0, 1, p);
        Near.Equal(library, NormalQuantile.Of(p), 1e-14 * Math.Max(1, Math.Abs(library)), p);
    });

    [Fact]
    public void The_middle_is_nought_and_halves_mirror_each_other() => Gen.Double[0.001, 0.499].Sample(p =>
    {
        Assert.Equal(0, NormalQuantile.Of(0.5));
        // 1 - p is rounded; the slope of the quantile is at most 300 there.
        Near.Equal(-NormalQuantile.Of(p), NormalQuantile.Of(1 - p), 300 * 1.2e-16 + 1e-14);
    });

    [Fact]
    public void A_larger_probability_never_gives_a_smaller_quantile() => Gen.Select(Gen.Double[1e-12, 1 - 1e-12], Gen.Double[1e-12, 1 - 1e-12]).Sample((a, b) =>
        Assert.True(NormalQuantile.Of(Math.Min(a, b)) <= NormalQuantile.Of(Math.Max(a, b))));

    [Theory]
    [InlineData(-0.1)]
    [InlineData(1.1)]
    [InlineData(double.NaN)]
    public void Outside_the_range_there_is_no_quantile(double p) => Assert.True(double.IsNaN(NormalQuantile.Of(p)));
}
