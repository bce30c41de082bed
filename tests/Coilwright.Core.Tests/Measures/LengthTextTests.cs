using System.Globalization;
using Coilwright.Core.Measures;

namespace Coilwright.Core.Tests.Measures;

public class LengthTextTests
{
    [Theory]
    [InlineData("190 mm", 190)]
    [InlineData("190mm", 190)]
    [InlineData("19 cm", 190)]
    [InlineData("19.05 CM", 190.5)]
    [InlineData("7 1/2 in", 190.5)]
    [InlineData("7-1/2 in", 190.5)]
    [InlineData("7½ in", 190.5)]
    [InlineData("½ in", 12.7)]
    [InlineData("7 ½ in", 190.5)]
    [InlineData("7.5in", 190.5)]
    [InlineData("7 1/2\"", 190.5)]
    [InlineData("7 1/2″", 190.5)]
    [InlineData("7 1/2”", 190.5)]
    [InlineData("7.5 inches", 190.5)]
    [InlineData("1 inch", 25.4)]
    [InlineData("7 1/2 Zoll", 190.5)]
    [InlineData("3/4 in", 19.05)]
    [InlineData("  6 5/16 in  ", 160.3375)]
    [InlineData(".5 in", 12.7)]
    [InlineData("0 mm", 0)]
    public void A_length_is_read_with_its_unit(string written, double mm)
    {
        Assert.True(LengthText.TryParse(written, out var read));
        Near.Equal(mm, read, 1e-10, written); // exact but for rounding
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("in")]
    [InlineData("7.5")] // 7.5 what?
    [InlineData("7,5 in")] // 7 and a half, or 75?
    [InlineData("1,000 mm")]
    [InlineData("-7 in")]
    [InlineData("+7 in")]
    [InlineData("1e3 mm")]
    [InlineData("NaN mm")]
    [InlineData("Infinity mm")]
    [InlineData("0x10 mm")]
    [InlineData("7 3/2 in")]
    [InlineData("7 1/0 in")]
    [InlineData("7 0/0 in")]
    [InlineData("7 1/128 in")]
    [InlineData("7 1/2/2 in")]
    [InlineData("7.5 1/2 in")]
    [InlineData("1 7 1/2 in")]
    [InlineData("/2 in")]
    [InlineData("7 in 3 mm")]
    [InlineData("7 ft")]
    [InlineData("7 1/2 in long, loosely, as she said it over the telephone on a windy day")]
    public void What_is_not_plainly_a_length_is_refused(string? written)
    {
        Assert.False(LengthText.TryParse(written, out var mm), $"{written} -> {mm}");
        Assert.Equal(0, mm);
    }

    [Fact]
    public void A_comma_locale_changes_nothing()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("de-DE");
            Assert.True(LengthText.TryParse("160.5 mm", out var mm));
            Assert.Equal(160.5, mm);
            Assert.False(LengthText.TryParse("160,5 mm", out _));
            Assert.Equal("-1 1/2", InchFraction.FromMm(-38.1).ToString());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
