using Coilwright.Core.Beads;
using Coilwright.Core.Stock;
using CsCheck;

namespace Coilwright.Core.Tests.Stock;

/// <summary>Counting by weight and by a row.</summary>
public class CountingHelpTests
{
    private static Bead Round(BeadLength length)
    {
        Assert.True(Bead.TryMake(new BeadDescription { Id = "dot", Shape = "round", Length = length }, out var bead, out _));
        return bead!;
    }

    // Whatever beads weigh and however a scale rounds: the true count is never outside what is told.
    [Fact]
    public void The_true_count_lies_between_least_and_most_whatever_the_scale_rounds() =>
        Gen.Select(Gen.Int[1, 2000], Gen.Double[0.004, 2], Gen.Int[1, 100], Gen.Int[0, 2].Select(i => new[] { 0.01, 0.1, 1.0 }[i])).Sample((count, beadG, sample, stepG) =>
        {
            double Shown(double grams) => Math.Round(grams / stepG) * stepG;
            var help = CountingHelp.ByWeight(sample, Shown(sample * beadG), Shown(count * beadG), stepG);
            if (Shown(sample * beadG) <= stepG / 2) Assert.Null(help);
            else if (help is not null) Assert.InRange(count, help.Least, help.Most);
        });

    // By hand: 50 weigh 6.0 g on a scale of 0.1 g, all weigh 49.4 g. 49.4 x 50 / 6 = 411.67; at worst 49.35 x 50 / 6.05 = 407.85 and 49.45 x 50 / 5.95 = 415.55.
    [Fact]
    public void Hand_worked_example_by_weight() => Assert.Equal(new CountingHelp(412, 408, 415), CountingHelp.ByWeight(50, 6.0, 49.4, 0.1));

    [Fact]
    public void A_larger_sample_tells_more_closely()
    {
        var small = CountingHelp.ByWeight(10, 1.2, 49.4, 0.1)!;
        var large = CountingHelp.ByWeight(100, 12.0, 49.4, 0.1)!;
        Assert.True(large.Most - large.Least < small.Most - small.Least);
    }

    [Theory]
    [InlineData(0, 1, 10, 0.1)]
    [InlineData(10, 0.05, 10, 0.1)]
    [InlineData(10, 0, 10, 0)]
    [InlineData(10, 1, -1, 0.1)]
    [InlineData(10, 1, 10, -0.1)]
    [InlineData(10, double.NaN, 10, 0.1)]
    [InlineData(10, 1, double.PositiveInfinity, 0.1)]
    public void A_reading_that_is_none_counts_nothing(int sample, double sampleG, double totalG, double stepG) => Assert.Null(CountingHelp.ByWeight(sample, sampleG, totalG, stepG));

    [Fact]
    public void A_row_of_measured_beads_is_counted_to_the_bead()
    {
        // Twenty in a row were 121 mm: 6.05 mm each, to 0.5/20 mm. A row of 300 mm is 49.59, and a millimetre of the ruler and 2 x 49.59 x 0.025 mm make that 3.48 mm, 0.575 of a bead.
        var bead = Round(new BeadLength.Row(20, 121, 0.5));
        Assert.Equal(new CountingHelp(50, 50, 50), CountingHelp.ByRow(300, bead));
        Assert.Equal(0, CountingHelp.ByRow(0, bead)!.Count);
        Assert.Null(CountingHelp.ByRow(-1, bead));
        Assert.Null(CountingHelp.ByRow(double.NaN, bead));
        Assert.Null(CountingHelp.ByRow(1e12, bead));
    }

    [Fact]
    public void Beads_that_differ_widen_what_is_told()
    {
        var even = CountingHelp.ByRow(600, Round(new BeadLength.Nominal(6)))!;
        var mixed = CountingHelp.ByRow(600, Round(new BeadLength.Range(5, 7)))!;
        Assert.Equal((100, 100), (even.Count, mixed.Count));
        Assert.True(mixed.Least < even.Least && mixed.Most > even.Most);
    }
}
