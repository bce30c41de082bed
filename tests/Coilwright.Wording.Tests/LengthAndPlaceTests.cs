using System.Globalization;
using CsCheck;

namespace Coilwright.Wording.Tests;

public class LengthAndPlaceTests
{
    private static readonly Language English = Languages.English;

    [Theory]
    [InlineData(178, "178 mm (7 in)")]
    [InlineData(190.5, "191 mm (7 1/2 in)")]
    [InlineData(6, "6 mm (1/4 in)")]
    [InlineData(99.96, "100 mm (3 15/16 in)")]
    [InlineData(0.7, "0.7 mm")]
    [InlineData(0, "0 mm")]
    [InlineData(-0.04, "0 mm")]
    [InlineData(12.25, "12.3 mm (1/2 in)")]
    public void A_length_is_in_mm_and_in_sixteenths_of_an_inch(double mm, string expected) => Assert.Equal(expected, English.Length(mm));

    // 25.4 mm is an inch by definition, so it stays one; a hair over it may only go up.
    [Theory]
    [InlineData(25.4, "26 mm (1 in)")]
    [InlineData(25.41, "26 mm (1 1/16 in)")]
    [InlineData(812.8, "813 mm (32 in)")]
    [InlineData(813.0, "813 mm (32 1/16 in)")]
    public void Wire_to_cut_is_rounded_up_and_never_down(double mm, string expected) => Assert.Equal(expected, English.LengthUp(mm));

    [Theory]
    [InlineData(LengthUnits.Both, "178 mm (7 in), 7.9 mm, 1.02 mm, 180 mm (7 1/16 in)")]
    [InlineData(LengthUnits.Mm, "178 mm, 7.9 mm, 1.02 mm, 180 mm")]
    [InlineData(LengthUnits.Inches, "7 in, 5/16 in, 1.02 mm, 7 1/16 in")]
    public void Sentences_speak_in_the_units_asked_for_save_of_holes_and_wire(LengthUnits units, string expected) =>
        Assert.Equal(expected, English.In(units).Fill("{long:length}, {short:mm}, {bore:fine}, {cut:cut}", ("long", 177.8), ("short", 7.9), ("bore", 1.02), ("cut", 179.2)));

    [Fact]
    public void Asking_for_other_units_leaves_the_language_as_it_was()
    {
        _ = English.In(LengthUnits.Inches);
        Assert.Equal(LengthUnits.Both, Languages.English.Units);
        Assert.Same(English, English.In(LengthUnits.Both));
    }

    [Fact]
    public void A_number_is_written_with_a_point_whatever_the_machine_speaks()
    {
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal("1234.5", English.Number(1234.5, 1));
            Assert.Equal("12.5 mm (1/2 in)", English.Length(12.5));
            Assert.Equal("2.5 turns", English.Fill("{t} {t:turn|turns}", ("t", 2.5)));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    // A decimal comma for people; no thousands sign; sixteenths as a ruler has them.
    [Theory]
    [InlineData(165, "165 mm (6 1/2 Zoll)")]
    [InlineData(12.25, "12,3 mm (1/2 Zoll)")]
    [InlineData(0.7, "0,7 mm")]
    [InlineData(1234.4, "1234 mm (48 5/8 Zoll)")]
    public void German_lengths_have_a_comma_and_Zoll(double mm, string expected) => Assert.Equal(expected, Languages.German.Length(mm));

    [Fact]
    public void German_numbers_have_a_comma_and_what_programs_read_a_point()
    {
        Assert.Equal("3,95", Languages.German.Number(3.949, 2));
        Assert.Equal("12,50", Languages.German.Amount(12.5m));
        Assert.Equal("12.50", English.Amount(12.5m));
        Assert.Equal("0,62 mm, 2,5 Windungen, 1 Windung", Languages.German.Fill("{w:fine}, {t} {t:Windung|Windungen}, {o} {o:Windung|Windungen}", ("w", 0.62), ("t", 2.5), ("o", 1.0)));
        Assert.Equal("3.95", Language.PlainNumber(3.949, 2));
    }

    [Theory]
    [InlineData(0, "on top")]
    [InlineData(-22.5, "on top")]
    [InlineData(22.6, "past the top")]
    [InlineData(-45, "before the top")]
    [InlineData(90, "a quarter turn past the top")]
    [InlineData(-90, "a quarter turn before the top")]
    [InlineData(135, "before the underside")]
    [InlineData(-135, "past the underside")]
    [InlineData(180, "on the underside")]
    [InlineData(-179.9, "on the underside")]
    public void A_place_is_said_the_way_the_beads_run(double deg, string expected) => Assert.Equal(expected, English.Place(deg));

    // Turning the piece over swaps before and past and nothing else: no word may depend on the hand.
    [Fact]
    public void A_place_mirrored_swaps_before_and_past() =>
        Gen.Double[0.001, 179.99].Sample(deg =>
            English.Place(-deg) == English.Place(deg).Replace("past", "#", StringComparison.Ordinal).Replace("before", "past", StringComparison.Ordinal)
                .Replace("#", "before", StringComparison.Ordinal));
}
