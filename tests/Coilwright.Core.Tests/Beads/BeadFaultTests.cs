using Coilwright.Core.Beads;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Tests.Beads;

/// <summary>What is wrong with a bead, each fault by its code, its field and its value, and all of them at once.</summary>
public class BeadFaultTests
{
    private static readonly BeadDescription Sound = new()
    {
        Id = "disc",
        Shape = "rondelle",
        Length = new BeadLength.Nominal(5),
        WidthMm = 8,
        BoreMm = 1,
    };

    private static readonly Dictionary<string, (Func<BeadDescription, BeadDescription> Change, string Code, string Field, string Value)> Wrong = new()
    {
        ["no id"] = (d => d with { Id = "" }, FaultCodes.TextEmpty, "id", ""),
        ["an id of 61 letters"] = (d => d with { Id = new string('a', 61) }, FaultCodes.TextTooLong, "id", new string('a', 60) + "..."),
        ["a capital in the id"] = (d => d with { Id = "Disc" }, FaultCodes.IdForm, "id", "Disc"),
        ["a digit first in the id"] = (d => d with { Id = "8mm" }, FaultCodes.IdForm, "id", "8mm"),
        ["a line break after the id"] = (d => d with { Id = "disc\n" }, FaultCodes.IdForm, "id", "disc\n"),
        ["a word of the notation as id"] = (d => d with { Id = "between" }, FaultCodes.IdReserved, "id", "between"),
        ["an unknown shape"] = (d => d with { Shape = "rondele" }, FaultCodes.WordUnknown, "shape", "rondele"),
        ["no length"] = (d => d with { Length = null }, FaultCodes.LengthMissing, "lengthMm", ""),
        ["a length of nought"] = (d => d with { Length = new BeadLength.Nominal(0) }, FaultCodes.ValueAbove, "lengthMm", "0"),
        ["a negative length"] = (d => d with { Length = new BeadLength.Nominal(-5) }, FaultCodes.ValueAbove, "lengthMm", "-5"),
        ["a length that is no number"] = (d => d with { Length = new BeadLength.Nominal(double.NaN) }, FaultCodes.ValueNotFinite, "lengthMm", "NaN"),
        ["a length without end"] = (d => d with { Length = new BeadLength.Nominal(double.PositiveInfinity) }, FaultCodes.ValueNotFinite, "lengthMm", "Infinity"),
        ["an absurd length"] = (d => d with { Length = new BeadLength.Nominal(2000) }, FaultCodes.ValueAtMost, "lengthMm", "2000"),
        ["a tolerance wider than the bead"] = (d => d with { Length = new BeadLength.Nominal(5, 6) }, FaultCodes.ValueAtMost, "toleranceMm", "6"),
        ["a negative tolerance"] = (d => d with { Length = new BeadLength.Nominal(5, -1) }, FaultCodes.ValueAbove, "toleranceMm", "-1"),
        ["a range the wrong way round"] = (d => d with { Length = new BeadLength.Range(9, 7) }, FaultCodes.RangeReversed, "lengthRangeMm", "[9, 7]"),
        ["a range from nought"] = (d => d with { Length = new BeadLength.Range(0, 7) }, FaultCodes.ValueAbove, "lengthRangeMm[0]", "0"),
        ["a range to too much"] = (d => d with { Length = new BeadLength.Range(5, 201) }, FaultCodes.ValueAtMost, "lengthRangeMm[1]", "201"),
        ["a row of none"] = (d => d with { Length = new BeadLength.Row(0, 50, 0.5) }, FaultCodes.ValueAtLeast, "row.count", "0"),
        ["a row of no length"] = (d => d with { Length = new BeadLength.Row(10, 0, 0.5) }, FaultCodes.ValueAbove, "row.totalMm", "0"),
        ["a row of absurd length"] = (d => d with { Length = new BeadLength.Row(10, 2001, 0.5) }, FaultCodes.ValueAtMost, "row.totalMm", "2001"),
        ["a width of nought"] = (d => d with { WidthMm = 0 }, FaultCodes.ValueAbove, "widthMm", "0"),
        ["an absurd width"] = (d => d with { WidthMm = 201 }, FaultCodes.ValueAtMost, "widthMm", "201"),
        ["a thickness that is no number"] = (d => d with { ThicknessMm = double.NaN }, FaultCodes.ValueNotFinite, "thicknessMm", "NaN"),
        ["no width"] = (d => d with { WidthMm = null }, FaultCodes.ShapeNeeds, "widthMm", ""),
        ["a coin without thickness"] = (d => d with { Shape = "coin", WidthMm = null }, FaultCodes.ShapeNeeds, "thicknessMm", ""),
        ["a focal without its hole's place"] = (d => d with { Shape = "focal", ThicknessMm = 5 }, FaultCodes.ShapeNeeds, "holeOffsetMm", ""),
        ["a curved tube without its curve"] = (d => d with { Shape = "curved-tube" }, FaultCodes.ShapeNeeds, "curveRadiusMm", ""),
        ["a chord without a curve"] = (d => d with { Shape = "curved-tube", Matched = true, CurvedLength = CurvedLength.Chord }, FaultCodes.ShapeNeeds, "curveRadiusMm", ""),
        ["a curve on a rondelle"] = (d => d with { CurveRadiusMm = 30 }, FaultCodes.ShapeHasNo, "curveRadiusMm", "30"),
        ["a rondelle matched to the coil"] = (d => d with { Matched = true }, FaultCodes.ShapeHasNo, "matched", ""),
        ["a chord of a rondelle"] = (d => d with { CurvedLength = CurvedLength.Chord }, FaultCodes.ShapeHasNo, "lengthIs", ""),
        ["a seat under a rondelle"] = (d => d with { Seat = new Seat(2, 1) }, FaultCodes.ShapeHasNo, "seat", ""),
        ["an end face on a round"] = (d => d with { Shape = "round", EndFaceMm = 2 }, FaultCodes.ShapeHasNo, "endFaceMm", "2"),
        ["a wall on a seed bead"] = (d => d with { Shape = "seed-bead", WallMm = 0.3 }, FaultCodes.ShapeHasNo, "wallMm", "0.3"),
        ["an offset on a curved tube"] = (d => d with { Shape = "curved-tube", CurveRadiusMm = 30, HoleOffsetMm = 1 }, FaultCodes.ShapeHasNo, "holeOffsetMm", "1"),
        ["a hole as wide as the bead"] = (d => d with { BoreMm = 8 }, FaultCodes.BoreTooWide, "boreMm", "8"),
        ["a hole wider than a thin bead is thick"] = (d => d with { ThicknessMm = 3, BoreMm = 3.5 }, FaultCodes.BoreTooWide, "boreMm", "3.5"),
        ["a negative hole"] = (d => d with { BoreMm = -1 }, FaultCodes.ValueAbove, "boreMm", "-1"),
        ["a hole that leaves the bead"] = (d => d with { HoleOffsetMm = 3.6 }, FaultCodes.HoleOutside, "holeOffsetMm", "3.6"),
        ["a hole that leaves the bead outwards"] = (d => d with { HoleOffsetMm = -3.6 }, FaultCodes.HoleOutside, "holeOffsetMm", "-3.6"),
        ["an offset that is no number"] = (d => d with { HoleOffsetMm = double.NaN }, FaultCodes.ValueNotFinite, "holeOffsetMm", "NaN"),
        ["an end face wider than the bead"] = (d => d with { EndFaceMm = 9 }, FaultCodes.ValueAtMost, "endFaceMm", "9"),
        ["walls thicker than the bead"] = (d => d with { WallMm = 2.6 }, FaultCodes.ValueAtMost, "wallMm", "2.6"),
        ["a curve tighter than the tube is thick"] = (d => d with { Shape = "curved-tube", CurveRadiusMm = 4 }, FaultCodes.ValueAbove, "curveRadiusMm", "4"),
        ["a chord longer than its circle is wide"] = (d => d with { Shape = "curved-tube", CurveRadiusMm = 5, Length = new BeadLength.Nominal(10), CurvedLength = CurvedLength.Chord },
            FaultCodes.ValueAtMost, "lengthMm", "10"),
        ["a tube of more than half a circle"] = (d => d with { Shape = "curved-tube", CurveRadiusMm = 5, Length = new BeadLength.Nominal(16) }, FaultCodes.ValueAtMost, "lengthMm", "16"),
        ["a seat longer than the focal"] = (d => d with { Shape = "focal", ThicknessMm = 6, HoleOffsetMm = 1, Seat = new Seat(6, 1) }, FaultCodes.ValueAtMost, "seat.lengthMm", "6"),
        ["a seat higher than the focal"] = (d => d with { Shape = "focal", ThicknessMm = 6, HoleOffsetMm = 1, Seat = new Seat(3, 4.5) }, FaultCodes.ValueAtMost, "seat.clearMm", "4.5"),
        ["a seat of no length"] = (d => d with { Shape = "focal", ThicknessMm = 6, HoleOffsetMm = 1, Seat = new Seat(0, 1) }, FaultCodes.ValueAbove, "seat.lengthMm", "0"),
        ["a mass of nought"] = (d => d with { MassG = 0 }, FaultCodes.ValueAbove, "massG", "0"),
        ["a density of no stuff on earth"] = (d => d with { DensityGPerCm3 = 26 }, FaultCodes.ValueAtMost, "densityGPerCm3", "26"),
        ["a show below nought"] = (d => d with { Shows = -0.1 }, FaultCodes.ValueAtLeast, "shows", "-0.1"),
        ["a show above one"] = (d => d with { Shows = 1.1 }, FaultCodes.ValueAtMost, "shows", "1.1"),
        ["a show that is no number"] = (d => d with { Shows = double.NaN }, FaultCodes.ValueNotFinite, "shows", "NaN"),
        ["a negative price"] = (d => d with { Price = -0.01m }, FaultCodes.ValueAtLeast, "price", "-0.01"),
        ["a pack of none"] = (d => d with { Pack = new Pack("strand", 0) }, FaultCodes.ValueAtLeast, "pack.beads", "0"),
    };

    public static TheoryData<string> Cases => new(Wrong.Keys);

    [Theory]
    [MemberData(nameof(Cases))]
    public void One_thing_wrong_is_said_once_with_its_field_and_value(string what)
    {
        var (change, code, field, value) = Wrong[what];
        Assert.False(Bead.TryMake(change(Sound), out var bead, out var faults));
        Assert.Null(bead);
        var fault = Assert.Single(faults);
        Assert.Equal((code, field, value), (fault.Code, fault.Field, fault.Value));
    }

    [Fact]
    public void A_sound_bead_has_no_faults()
    {
        Assert.True(Bead.TryMake(Sound, out var bead, out var faults));
        Assert.Empty(faults);
        Assert.Equal((5, 8, 8), (bead!.LengthMm, bead.WidthMm, bead.ThicknessMm));
    }

    [Fact]
    public void A_fault_carries_the_limit_that_was_passed()
    {
        Bead.TryMake(Sound with { ThicknessMm = 3, BoreMm = 3.5 }, out _, out var faults);
        Assert.Equal("3", faults[0].Values["limit"]);
        Bead.TryMake(Sound with { EndFaceMm = 9 }, out _, out faults);
        Assert.Equal(("8", "mm"), (faults[0].Values["max"], faults[0].Values["unit"]));
        Bead.TryMake(Sound with { Shape = "rondele" }, out _, out faults);
        Assert.Equal("rondelle", faults[0].Values["nearest"]);
        Assert.Contains("bicone", faults[0].Values["known"], StringComparison.Ordinal);
        Bead.TryMake(Sound with { HoleOffsetMm = 3.6 }, out _, out faults);
        Assert.Equal("3.5", faults[0].Values["limit"]);
    }

    [Fact]
    public void Everything_wrong_is_said_at_once()
    {
        var faults = Faults(Sound with
        {
            Id = "Disc 5",
            BoreMm = -1,
            WidthMm = double.NaN,
            CurveRadiusMm = 30,
            Seat = new Seat(0, 0),
            Length = new BeadLength.Row(0, 10, 0.5),
            Shows = 2,
            Price = -1,
            Pack = new Pack("hank", -3),
            MassG = 0,
            DensityGPerCm3 = 99,
        });
        Assert.Equal(
        [
            (FaultCodes.IdForm, "id"), (FaultCodes.ValueAtLeast, "row.count"), (FaultCodes.ValueNotFinite, "widthMm"),
            (FaultCodes.ValueAbove, "boreMm"), (FaultCodes.ValueAbove, "massG"), (FaultCodes.ValueAtMost, "densityGPerCm3"),
            (FaultCodes.ValueAbove, "seat.lengthMm"), (FaultCodes.ValueAbove, "seat.clearMm"), (FaultCodes.ValueAtMost, "shows"),
            (FaultCodes.ValueAtLeast, "price"), (FaultCodes.ValueAtLeast, "pack.beads"), (FaultCodes.ShapeHasNo, "curveRadiusMm"), (FaultCodes.ShapeHasNo, "seat"),
        ], faults);
    }

    [Fact]
    public void Measures_that_do_not_go_together_are_said_beside_other_faults()
    {
        var faults = Faults(Sound with { Id = "Disc", BoreMm = 8, EndFaceMm = 9, WallMm = 3, HoleOffsetMm = 5, CurvedLength = CurvedLength.Arc });
        Assert.Equal(
        [
            (FaultCodes.IdForm, "id"), (FaultCodes.ShapeHasNo, "lengthIs"), (FaultCodes.BoreTooWide, "boreMm"), (FaultCodes.HoleOutside, "holeOffsetMm"),
            (FaultCodes.ValueAtMost, "endFaceMm"), (FaultCodes.ValueAtMost, "wallMm"),
        ], faults);
    }

    [Fact]
    public void Both_missing_measures_are_asked_for() =>
        Assert.Equal([(FaultCodes.ShapeNeeds, "widthMm"), (FaultCodes.ShapeNeeds, "thicknessMm")],
            Faults(Sound with { Shape = "nugget", WidthMm = null }));

    private static IEnumerable<(string, string)> Faults(BeadDescription description)
    {
        Assert.False(Bead.TryMake(description, out _, out var faults));
        return faults.Select(f => (f.Code, f.Field));
    }
}
