using System.Globalization;

namespace Coilwright.Storage.Tests;

/// <summary>The strengths of spring wire in the data against the printed tables, row by row: a slip of a digit in a data file must not pass.</summary>
public class SpringWireTests
{
    private const double MPaPerKsi = 6.894757; // from the definitions of pound, inch and standard gravity
    private const double Tolerance = 0.05; // MPa, half of the last digit kept in the data

    // Sources and misprints: the heads of the tables.
    [Fact]
    public void Music_wire_is_as_strong_as_printed_at_every_printed_diameter()
    {
        var steel = TestData.Data.Steels["music-wire"];
        var rows = Rows("spring-wire-music.csv");
        Assert.Equal(rows.Count, steel.Strengths.Length);
        foreach (var row in rows)
        {
            var wireMm = Number(row[0])!.Value * 25.4;
            var band = steel.Strengths.Single(b => wireMm > b.OverMm && wireMm <= b.ToMm + 1e-9);
            Assert.Equal(wireMm, band.ToMm, 1e-9); // rounding
            Same(row[1], band.LeastMPa);
            Same(row[2], band.MostMPa);
        }
    }

    [Fact]
    public void Between_two_printed_diameters_music_wire_counts_as_the_thicker_and_weaker()
    {
        var steel = TestData.Data.Steels["music-wire"];
        var rows = Rows("spring-wire-music.csv");
        foreach (var (thinner, thicker) in rows.Zip(rows.Skip(1)))
            Same(thicker[1], steel.LeastStrengthMPa(0.5 * 25.4 * (Number(thinner[0])!.Value + Number(thicker[0])!.Value)));
    }

    [Fact]
    public void Stainless_wire_is_as_strong_as_printed_in_every_printed_band()
    {
        var steel = TestData.Data.Steels["stainless-302"];
        var rows = Rows("spring-wire-stainless-302.csv");
        Assert.Equal(rows.Count, steel.Strengths.Length);
        foreach (var (row, band) in rows.Zip(steel.Strengths))
        {
            Assert.Equal(Number(row[0])!.Value * 25.4, band.OverMm, 1e-9); // rounding
            Assert.Equal(Number(row[1])!.Value * 25.4, band.ToMm, 1e-9);
            Same(row[2], band.LeastMPa);
            Same(row[3], band.MostMPa);
        }
    }

    [Theory]
    [InlineData("music-wire")]
    [InlineData("stainless-302")]
    public void The_bands_of_a_steel_leave_no_gap_and_beyond_them_its_strength_is_unknown(string key)
    {
        var steel = TestData.Data.Steels[key];
        foreach (var (thinner, thicker) in steel.Strengths.Zip(steel.Strengths.Skip(1))) Assert.Equal(thinner.ToMm, thicker.OverMm);
        Assert.Null(steel.LeastStrengthMPa(steel.Strengths[^1].ToMm + 0.01));
    }

    private static void Same(string printedKsi, double? inData)
    {
        if (Number(printedKsi) is not { } ksi) Assert.Null(inData);
        else Assert.Equal(ksi * MPaPerKsi, inData!.Value, Tolerance);
    }

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    private static List<string[]> Rows(string file) => [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", file))
        .Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(','))];
}
