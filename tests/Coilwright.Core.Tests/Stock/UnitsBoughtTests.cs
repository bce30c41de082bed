using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Stock;

namespace Coilwright.Core.Tests.Stock;

/// <summary>Units of sale in beads, millimetres and grams.</summary>
public class UnitsBoughtTests
{
    private static decimal Reckon(UnitsBought bought, StockUnit unit = StockUnit.Each)
    {
        Assert.Null(bought.Reckon(unit, out var quantity));
        return quantity.Units;
    }

    private static Fault Why(UnitsBought bought, StockUnit unit = StockUnit.Each)
    {
        var why = bought.Reckon(unit, out var quantity);
        Assert.Equal(default, quantity);
        return why!;
    }

    private static UnitsBought Strand(double inches, double beadMm) => new(SaleUnit.Strand, 1) { LengthMm = inches * InchFraction.MmPerInch, BeadMm = beadMm };

    [Fact]
    public void A_strand_holds_the_whole_beads_of_its_length()
    {
        foreach (var row in ReferenceTable.Read("beads-per-strand.csv").Rows)
        {
            Assert.Equal((decimal)Math.Floor(row["quotient_16in"]), Reckon(Strand(16, row["diameter_mm"])));
            Assert.Equal((decimal)Math.Floor(row["quotient_15_5in"]), Reckon(Strand(15.5, row["diameter_mm"])));
        }
    }

    [Fact]
    public void Printed_charts_are_met_once_their_inch_of_25_mm_is_taken()
    {
        var seen = 0;
        foreach (var row in ReferenceTable.Read("beads-per-strand.csv").Rows)
        {
            if (row.Text("chart_16in") is not { Length: > 0 } chart) continue;
            seen++;
            var ours = (double)Reckon(new UnitsBought(SaleUnit.Strand, 1) { LengthMm = 16 * 25, BeadMm = row["diameter_mm"] });
            // The chart multiplies beads per inch, as printed, by sixteen: half of the last printed digit sixteenfold, and the part of a bead that we leave out.
            var digits = row.Text("chart_per_in") is var text && text.Contains('.', StringComparison.Ordinal) ? text.Length - 1 - text.IndexOf('.', StringComparison.Ordinal) : 0;
            Assert.InRange(double.Parse(chart, CultureInfo.InvariantCulture) - ours, -8 * Math.Pow(10, -digits), 1 + 8 * Math.Pow(10, -digits));
        }
        Assert.Equal(9, seen);
    }

    // What was counted is less than what fits where beads are a little larger than their label: 0.3 mm is usual for round stone (common practice, no source).
    [Theory]
    [InlineData("real_15_5in", 15.5)]
    [InlineData("real_16in", 16)]
    public void Real_strands_hold_no_more_than_fit_and_as_many_as_beads_three_tenths_larger_would(string column, double inches)
    {
        // A count that was rounded to tens may be above: 200 for 196.85.
        var seen = 0;
        foreach (var row in ReferenceTable.Read("beads-per-strand.csv").Rows.Where(r => r.Text(column).Length > 0 && r["diameter_mm"] > 2))
        {
            seen++;
            Assert.InRange((decimal)row[column], Reckon(Strand(inches, row["diameter_mm"] + 0.3)), Reckon(Strand(inches, row["diameter_mm"])));
        }
        Assert.True(seen >= 5);
    }

    [Fact]
    public void Seed_beads_by_weight_go_by_how_many_weigh_a_gram()
    {
        foreach (var row in ReferenceTable.Read("seed-beads-per-gram.csv").Rows)
        {
            var perGram = row["per_gram"];
            Assert.Equal((decimal)perGram * 10, Reckon(new UnitsBought(SaleUnit.Gram, 10) { BeadsPerG = perGram }));
            // An ounce is 28.349523125 g by definition.
            Assert.Equal(Math.Floor((decimal)perGram * 28.349523125m * 3), Reckon(new UnitsBought(SaleUnit.Ounce, 3) { BeadsPerG = perGram }));
            Assert.Equal(2 * Math.Floor((decimal)perGram * 7.2m), Reckon(new UnitsBought(SaleUnit.Pack, 2) { MassG = 7.2, BeadsPerG = perGram }));
        }
    }

    [Theory]
    [InlineData(SaleUnit.Each, 1)]
    [InlineData(SaleUnit.Dozen, 12)]
    [InlineData(SaleUnit.Gross, 12 * 12)]
    [InlineData(SaleUnit.Mass, 1200)]
    public void Some_units_always_hold_the_same(SaleUnit unit, int count)
    {
        Assert.Equal(count * 3, Reckon(new UnitsBought(unit, 3)));
        // Whatever a label says of it: a gross is a gross.
        Assert.Equal(count, Reckon(new UnitsBought(unit, 1) { Holds = Quantity.Of(7), MassG = 5 }));
    }

    [Fact]
    public void A_real_count_overrules_a_length()
    {
        Assert.Equal(98 * 2, Reckon(Strand(16, 4) with { HowMany = 2, Holds = Quantity.Of(98) }));
        Assert.Equal(49, Reckon(Strand(16, 4) with { HowMany = 0.5m, Holds = Quantity.Of(98) }));
        Assert.Equal(50, Reckon(Strand(16, 4) with { HowMany = 0.5m })); // 101 fit on a whole one
    }

    [Fact]
    public void A_hank_is_so_many_strands()
    {
        var hank = new UnitsBought(SaleUnit.Hank, 1) { Strands = 12, LengthMm = 20 * InchFraction.MmPerInch, BeadMm = 1.5 };
        // No bead goes over from one strand to the next: 508 mm holds 338 of 1.5 mm.
        Assert.Equal(12 * 338, Reckon(hank));
        Assert.Equal(4000, Reckon(hank with { Holds = Quantity.Of(4000) }));
    }

    [Fact]
    public void A_length_in_whole_beads_loses_none_to_rounding() => Assert.Equal(3, Reckon(new UnitsBought(SaleUnit.Strand, 1) { LengthMm = 0.3, BeadMm = 0.1 }));

    [Fact]
    public void Wire_and_weight_are_taken_in_by_their_own_measure()
    {
        Assert.Equal(3 * 1250.5m, Reckon(new UnitsBought(SaleUnit.Pack, 3) { LengthMm = 1250.5 }, StockUnit.Millimetre));
        Assert.Equal(28.349m, Reckon(new UnitsBought(SaleUnit.Ounce, 1), StockUnit.Gram));
        Assert.Equal(15m, Reckon(new UnitsBought(SaleUnit.Pack, 2) { MassG = 7.5 }, StockUnit.Gram));
    }

    [Fact]
    public void What_cannot_be_said_is_asked_for()
    {
        (UnitsBought, StockUnit, string, string?)[] none =
        [
            (new(SaleUnit.Gram, 10), StockUnit.Each, FaultCodes.SaleUnitNeeds, "beadsPerG"),
            (new(SaleUnit.Strand, 1) { LengthMm = 400 }, StockUnit.Each, FaultCodes.SaleUnitNeeds, "beadMm"),
            (new(SaleUnit.Strand, 1), StockUnit.Each, FaultCodes.SaleUnitNeeds, "holds"),
            (new(SaleUnit.Hank, 1) { MassG = 40 }, StockUnit.Each, FaultCodes.SaleUnitNeeds, "holds"),
            (new(SaleUnit.Pack, 1) { MassG = 40 }, StockUnit.Each, FaultCodes.SaleUnitNeeds, "beadsPerG"),
            (new(SaleUnit.Pack, 1), StockUnit.Millimetre, FaultCodes.SaleUnitNeeds, "lengthMm"),
            (new(SaleUnit.Pack, 1), StockUnit.Gram, FaultCodes.SaleUnitNeeds, "massG"),
            (new(SaleUnit.Dozen, 1), StockUnit.Gram, FaultCodes.SaleUnitOther, null),
            (new(SaleUnit.Gram, 1), StockUnit.Millimetre, FaultCodes.SaleUnitOther, null),
            (new(SaleUnit.Each, 0), StockUnit.Each, FaultCodes.ValueAbove, null),
            (new(SaleUnit.Each, -2), StockUnit.Each, FaultCodes.ValueAbove, null),
            (new(SaleUnit.Each, 100_000_000), StockUnit.Each, FaultCodes.ValueAtMost, null),
            (new(SaleUnit.Mass, 9_000_000), StockUnit.Each, FaultCodes.ValueAtMost, null),
            (new(SaleUnit.Pack, 1) { MassG = double.NaN, BeadsPerG = 1 }, StockUnit.Each, FaultCodes.ValueNotFinite, null),
            (new(SaleUnit.Pack, 1) { MassG = -1, BeadsPerG = 1 }, StockUnit.Each, FaultCodes.ValueAbove, null),
            (new(SaleUnit.Strand, 1) { Holds = default(Quantity) }, StockUnit.Each, FaultCodes.ValueAbove, null),
            (new(SaleUnit.Hank, 1) { Strands = 0 }, StockUnit.Each, FaultCodes.ValueAtLeast, null),
            (new(SaleUnit.Hank, 1) { Strands = int.MaxValue }, StockUnit.Each, FaultCodes.ValueAtMost, null),
            (new(SaleUnit.Strand, 2) { Holds = new Quantity(2500) }, StockUnit.Each, FaultCodes.StockWhole, null),
            (new(SaleUnit.Strand, 1) { LengthMm = 400, BeadMm = 1e-300 }, StockUnit.Each, FaultCodes.ValueAbove, null),
            (new(SaleUnit.Hank, 10_000_000) { LengthMm = 1e7, BeadMm = 1e-6, Strands = 10_000 }, StockUnit.Each, FaultCodes.ValueAtMost, null),
            (new(SaleUnit.Pack, 10_000_000) { MassG = 1e7, BeadsPerG = 1e7 }, StockUnit.Each, FaultCodes.ValueAtMost, null),
            (new(SaleUnit.Strand, 1) { LengthMm = 3, BeadMm = 4 }, StockUnit.Each, FaultCodes.SaleUnitHoldsNone, null),
        ];
        foreach (var (bought, unit, code, needs) in none)
        {
            var why = Why(bought, unit);
            Assert.Equal((code, needs), (why.Code, why.Values.GetValueOrDefault("needs")));
        }
    }

    // A short form that means two things is a question, whatever its letters' case and point.
    [Theory]
    [InlineData("GR", SaleUnit.Gram, SaleUnit.Gross)]
    [InlineData("gr", SaleUnit.Gram, SaleUnit.Gross)]
    [InlineData("Gr.", SaleUnit.Gram, SaleUnit.Gross)]
    [InlineData("G", SaleUnit.Gram, SaleUnit.Gross)]
    [InlineData("St.", SaleUnit.Strand, SaleUnit.Each)]
    public void A_word_that_means_two_things_is_asked_about(string word, SaleUnit one, SaleUnit other)
    {
        var ask = Assert.IsType<SaleUnitReading.Ambiguous>(SaleUnits.Read(word));
        Assert.Equal([one, other], ask.Either);
        Assert.Equal((FaultCodes.SaleUnitUnclear, SaleUnits.Word(one), SaleUnits.Word(other)), (ask.Why.Code, ask.Why.Values["one"], ask.Why.Values["other"]));
    }

    [Theory]
    [InlineData("g", SaleUnit.Gram)]
    [InlineData("Gross", SaleUnit.Gross)]
    [InlineData(" oz. ", SaleUnit.Ounce)]
    [InlineData("Stück", SaleUnit.Each)]
    [InlineData("STRANDS", SaleUnit.Strand)]
    [InlineData("Tüte", SaleUnit.Pack)]
    public void A_clear_word_is_read(string word, SaleUnit unit) => Assert.Equal(unit, Assert.IsType<SaleUnitReading.Known>(SaleUnits.Read(word)).Unit);

    [Fact]
    public void Every_unit_is_read_by_the_word_that_it_is_written_by() =>
        Assert.All(Enum.GetValues<SaleUnit>(), unit => Assert.Equal(unit, Assert.IsType<SaleUnitReading.Known>(SaleUnits.Read(SaleUnits.Word(unit))).Unit));

    [Fact]
    public void An_unknown_word_is_told_with_its_neighbour()
    {
        var why = Assert.IsType<SaleUnitReading.Unknown>(SaleUnits.Read("strnd")).Why;
        Assert.Equal((FaultCodes.WordUnknown, "strand"), (why.Code, why.Values["nearest"]));
        Assert.IsType<SaleUnitReading.Unknown>(SaleUnits.Read(""));
    }
}
