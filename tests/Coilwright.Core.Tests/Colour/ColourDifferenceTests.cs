using Coilwright.Core.Colour;
using CsCheck;

namespace Coilwright.Core.Tests.Colour;

public class ColourDifferenceTests
{
    private static readonly Gen<Lab> AnyColour = Gen.Select(Gen.Double[0, 100], Gen.Double[-110, 110], Gen.Double[-110, 110], (l, a, b) => new Lab(l, a, b));

    [Fact]
    public void The_34_pairs_of_Sharma_Wu_and_Dalal_come_out_as_printed()
    {
        var rows = ReferenceTable.Read("ciede2000.csv").Rows;
        Assert.Equal(34, rows.Count);
        foreach (var row in rows)
        {
            var one = new Lab(row["L1"], row["a1"], row["b1"]);
            var other = new Lab(row["L2"], row["a2"], row["b2"]);
            // Half of the last printed digit.
            Near.Equal(row["dE00"], ColourDifference.Ciede2000(one, other), 0.00005, row);
            Near.Equal(row["dE00"], ColourDifference.Ciede2000(other, one), 0.00005, row);
        }
    }

    // Two further pairs, printed in an extract of the ICC's working group on high dynamic range.
    [Fact]
    public void Black_is_a_hundred_from_white_and_one_yellow_1_6743_from_another()
    {
        Near.Equal(100, ColourDifference.Ciede2000(new Lab(100, 0, 0), new Lab(0, 0, 0)), 1e-12); // exact but for rounding
        Near.Equal(1.6743, ColourDifference.Ciede2000(new Lab(84.25, 5.74, 96.00), new Lab(84.46, 8.88, 96.49)), 0.00005); // half of the last digit
    }

    [Fact]
    public void A_colour_does_not_differ_from_itself() =>
        AnyColour.Sample(c => Assert.Equal(0, ColourDifference.Ciede2000(c, c)));

    [Fact]
    public void It_does_not_matter_which_colour_comes_first() =>
        Gen.Select(AnyColour, AnyColour).Sample((one, other) =>
        {
            var there = ColourDifference.Ciede2000(one, other);
            Assert.True(there >= 0);
            // Rounding of the two orders of the same sums.
            Near.Equal(there, ColourDifference.Ciede2000(other, one), 1e-9 * (1 + there), (one, other));
        });
}
