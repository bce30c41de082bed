using Coilwright.Core.Measures;

namespace Coilwright.Core.Tests.Measures;

public class WireGaugeTests
{
    private static readonly ReferenceTable Gauges = ReferenceTable.Read("wire-gauges.csv");

    [Fact]
    public void Awg_follows_the_rule_of_its_standard()
    {
        foreach (var row in Gauges.Rows)
            // Half of the last printed digit.
            Near.Equal(row["awg_mm_exact"], WireGauge.AwgMm((int)row["gauge"]), 0.000005, row);
    }

    [Fact]
    public void Awg_agrees_with_a_printed_table()
    {
        foreach (var row in Gauges.Rows)
        {
            var mm = WireGauge.AwgMm((int)row["gauge"]);
            Near.Equal(row["awg_in_printed"], mm / 25.4, 0.00005, row); // half of the last printed digit
            Near.Equal(row["awg_mm_printed"], mm, 0.0012, row); // several rows were converted from the rounded inch: see the table's head
        }
    }

    // Worked example printed with the rule: n = 14: 22/39 = 0.5641; 92^0.5641 = 12.82; 0.0641 in; 1.63 mm (encyclopaedia copies of the rule).
    [Fact]
    public void Awg_14_comes_out_as_in_the_worked_example()
    {
        Near.Equal(12.82, WireGauge.AwgMm(14) / 0.127, 0.005);
        Near.Equal(0.0641, WireGauge.AwgMm(14) / 25.4, 0.00005);
        Near.Equal(1.63, WireGauge.AwgMm(14), 0.005);
    }

    // ASTM B 258 fixes two sizes and puts 38 equal steps of ratio between them: 0000 is 0.4600 in and 36 is 0.0050 in (encyclopaedia copies).
    [Fact]
    public void Awg_runs_through_its_two_fixed_sizes()
    {
        Near.Equal(0.46 * 25.4, WireGauge.AwgMm(-3), 1e-12); // exact but for rounding
        Near.Equal(0.005 * 25.4, WireGauge.AwgMm(36), 1e-15);
        for (var n = WireGauge.AwgFrom; n < WireGauge.AwgTo; n++)
            Near.Equal(1.1229322, WireGauge.AwgMm(n) / WireGauge.AwgMm(n + 1), 5e-8, n); // 92^(1/39) to 7 decimals
    }

    [Fact]
    public void Swg_agrees_with_its_table()
    {
        foreach (var row in Gauges.Rows)
        {
            var mm = WireGauge.SwgMm((int)row["gauge"]);
            Near.Equal(row["swg_in"], mm / 25.4, 1e-12, row); // the table is the definition
            Near.Equal(row["swg_mm_exact"], mm, 0.000005, row); // half of the last printed digit
        }
        Assert.Equal(17, Gauges.Rows.Count);
        Assert.Equal((14, 30), (WireGauge.SwgFrom, WireGauge.SwgTo));
    }

    [Theory]
    [InlineData("22 AWG", "22 AWG")]
    [InlineData("awg 22", "22 AWG")]
    [InlineData("  Awg22 ", "22 AWG")]
    [InlineData("20awg", "20 AWG")]
    [InlineData("0 AWG", "0 AWG")]
    [InlineData("0000 AWG", "0000 AWG")]
    [InlineData("4/0 AWG", "0000 AWG")]
    [InlineData("1/0 AWG", "0 AWG")]
    [InlineData("24 SWG", "24 SWG")]
    [InlineData("swg 30", "30 SWG")]
    public void A_gauge_is_read_in_the_ways_it_is_written_and_kept_in_one(string written, string name)
    {
        Assert.True(WireGauge.TryParse(written, out var mm, out var kept));
        Assert.Equal(name, kept);
        Assert.True(WireGauge.TryParse(written, out var again));
        Assert.Equal(mm, again);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("AWG")]
    [InlineData("22")] // which scale?
    [InlineData("22 gauge")]
    [InlineData("22 AWG SWG")]
    [InlineData("SWG 22 AWG")]
    [InlineData("AWG 22 AWG")]
    [InlineData("-1 AWG")]
    [InlineData("41 AWG")]
    [InlineData("00000 AWG")]
    [InlineData("022 AWG")]
    [InlineData("5/0 AWG")]
    [InlineData("22.5 AWG")]
    [InlineData("2 2 AWG")]
    [InlineData("13 SWG")]
    [InlineData("31 SWG")]
    [InlineData("0000 SWG")]
    [InlineData("99999999999 AWG")]
    public void What_is_no_gauge_is_refused(string? written)
    {
        Assert.False(WireGauge.TryParse(written, out var mm, out var name));
        Assert.Equal(0, mm);
        Assert.Empty(name);
    }

    [Fact]
    public void Every_name_reads_back_as_itself_and_runs_from_thick_to_thin()
    {
        var last = double.PositiveInfinity;
        var lastScale = "AWG";
        foreach (var name in WireGauge.Names)
        {
            Assert.True(WireGauge.TryParse(name, out var mm, out var kept));
            Assert.Equal(name, kept);
            if (name[^3..] != lastScale) last = double.PositiveInfinity;
            Assert.True(mm < last, name);
            (last, lastScale) = (mm, name[^3..]);
        }
        Assert.Equal(WireGauge.Names.Length, WireGauge.Names.Distinct().Count());
        Assert.Equal(44 + 17, WireGauge.Names.Length);
    }

    [Fact]
    public void A_number_outside_its_scale_is_the_callers_mistake()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.AwgMm(-4));
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.AwgMm(41));
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.SwgMm(13));
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.SwgMm(31));
    }
}
