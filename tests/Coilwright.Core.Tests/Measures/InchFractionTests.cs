using Coilwright.Core.Measures;
using CsCheck;

namespace Coilwright.Core.Tests.Measures;

public class InchFractionTests
{
    [Fact]
    public void Each_sixteenth_has_the_millimetres_and_the_reduced_fraction_of_the_ruler()
    {
        foreach (var row in ReferenceTable.Read("inch-sixteenths.csv").Rows)
        {
            var fraction = new InchFraction((long)row["numerator_16ths"]);
            Near.Equal(row["mm"], fraction.Mm, 1e-12, row); // exact but for rounding
            Assert.Equal(row.Text("fraction"), fraction.ToString());
            Assert.Equal(fraction, InchFraction.FromMm(row["mm"]));
        }
    }

    [Theory]
    [InlineData(190.5, "7 1/2")]
    [InlineData(190, "7 1/2")] // 7.480 in
    [InlineData(160, "6 5/16")] // 6.299 in
    [InlineData(25.4, "1")]
    [InlineData(25.39, "1")] // rounds up over the whole
    [InlineData(0.7, "0")]
    [InlineData(0.8, "1/16")]
    [InlineData(0, "0")]
    [InlineData(-38.1, "-1 1/2")]
    [InlineData(-0.3, "0")] // no minus before nothing
    [InlineData(1000, "39 3/8")]
    public void A_length_is_shown_to_the_nearest_sixteenth(double mm, string shown) => Assert.Equal(shown, InchFraction.FromMm(mm).ToString());

    [Fact]
    public void What_is_shown_is_never_further_off_than_half_a_sixteenth() =>
        Gen.Double[-1e6, 1e6].Sample(mm =>
            // 1e-9: rounding of 1e6 mm in binary.
            Near.Equal(mm, InchFraction.FromMm(mm).Mm, 25.4 / 32 + 1e-9, mm));

    [Fact]
    public void What_is_shown_reads_back_as_the_same_fraction() =>
        Gen.Long[0, 16_000].Sample(sixteenths =>
        {
            var fraction = new InchFraction(sixteenths);
            Assert.True(LengthText.TryParse(fraction + " in", out var mm), fraction.ToString());
            Assert.Equal(fraction, InchFraction.FromMm(mm));
        });

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(1e13)]
    public void What_is_no_length_to_show_is_the_callers_mistake(double mm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => InchFraction.FromMm(mm));
}
