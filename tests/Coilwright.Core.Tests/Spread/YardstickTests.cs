using System.Globalization;
using MathNet.Numerics.Statistics;

namespace Coilwright.Core.Tests.Spread;

/// <summary>What the draws are measured with in these tests: the model itself has its standard deviation in closed form and takes none of data.</summary>
public class YardstickTests
{
    // Tolerance: a datum is rounded to a double, so it is off by up to half a unit in its last place, and so are the steps of a running mean; both lie
    // within four units in the last place of the mean. For NumAcc4 that leaves seven digits of the sd. The sd itself is printed to 15 digits.
    [Fact]
    public void Running_mean_and_sd_are_the_certified_ones_of_NIST()
    {
        foreach (var row in ReferenceTable.Read("nist-univariate.csv").Rows)
        {
            double mean = row["mean"], sd = row["sd"];
            double[] values = row.Text("values").Length == 0
                ? [mean, .. Enumerable.Range(1, (int)row["n"] - 1).Select(i => mean + (i % 2 == 0 ? 0.1 : -0.1))]
                : [.. row.Text("values").Split(' ').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
            Assert.Equal(row["n"], values.Length);
            var statistics = new RunningStatistics(values);
            var place = 4 * Math.BitIncrement(Math.Abs(mean)) - 4 * Math.Abs(mean);
            Near.Equal(mean, statistics.Mean, place, row.Text("name"));
            Near.Equal(sd, statistics.StandardDeviation, place + 1e-14 * sd, row.Text("name"));
        }
    }
}
