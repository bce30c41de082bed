using Coilwright.Core.Beads;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Tests;

/// <summary>The program's own data: every file of the repository is read, and a broken one is told with its place.</summary>
public class DataFilesTests
{
    [Fact]
    public void The_data_delivered_beside_the_program_is_the_data_of_the_repository()
    {
        var source = Path.Combine(TestData.Root, "data");
        var files = Directory.GetFiles(source, "*.json", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(source, f)).Order().ToArray();
        Assert.NotEmpty(files);
        foreach (var file in files)
            Assert.Equal(File.ReadAllText(Path.Combine(source, file)), File.ReadAllText(Path.Combine(DataFiles.DefaultFolder, file)));
    }

    [Fact]
    public void Every_material_file_of_the_folder_is_in_the_data()
    {
        var keys = Directory.GetFiles(Path.Combine(TestData.Root, "data", "materials")).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal);
        Assert.Equal(keys, TestData.Data.Materials.Keys);
    }

    [Fact]
    public void Every_bead_of_the_catalogue_is_read_has_a_source_and_goes_on_the_wire()
    {
        var (beads, faults) = DataFiles.LoadCatalogue(DataFiles.DefaultFolder, TestData.Data);
        Assert.Empty(faults);
        var keys = Directory.GetFiles(Path.Combine(TestData.Root, "data", "beads")).Select(Path.GetFileNameWithoutExtension).Order(StringComparer.Ordinal);
        Assert.Equal(keys, beads.Select(b => b.Key));
        Assert.All(beads, b => Assert.Equal("common practice, no source", b.Source));
        // A colour is hers, and a size without a hole would be no help with memory wire.
        Assert.All(beads, b => Assert.True(b.Bead.Colours.IsDefaultOrEmpty && b.Bead.BoreMm > 0));
    }

    // Sources of the ranges across: three trade tables of seed beads, as read; they differ, so the middle of what was read is taken.
    [Theory]
    [InlineData("seed-15-0", 1.3, 1.5)]
    [InlineData("seed-11-0", 1.8, 2.2)]
    [InlineData("seed-8-0", 2.5, 3.0)]
    [InlineData("seed-6-0", 3.3, 4.0)]
    public void Seed_beads_are_as_wide_as_the_middle_of_what_trade_tables_say(string key, double leastMm, double mostMm) =>
        Assert.Equal((leastMm + mostMm) / 2, DataFiles.LoadCatalogue(DataFiles.DefaultFolder, TestData.Data).Beads.Single(b => b.Key == key).Bead.WidthMm, 0.005);

    [Fact]
    public void A_broken_bead_of_the_catalogue_is_told_with_its_file()
    {
        using var folder = new TempFolder();
        Directory.CreateDirectory(Path.Combine(folder.Path, "beads"));
        File.WriteAllText(Path.Combine(folder.Path, "beads", "odd.json"), """{ "key": "odd", "kind": "round", "label": "6", "bead": { "id": "other", "shape": "round", "lengthMm": 6 }, "sizes": {} }""");
        var (beads, faults) = DataFiles.LoadCatalogue(folder.Path, TestData.Data);
        Assert.Empty(beads);
        Assert.Equal(["key", "sizes.source"], faults.Select(f => f.Field).Order(StringComparer.Ordinal));
        Assert.All(faults, f => Assert.Contains("odd.json", f.Values["file"], StringComparison.Ordinal));
    }

    // Source: a spring-trade property table, 0.286 and 0.284 lb/in3, 28e6 and 30e6 psi. 1 lb/in3 = 27.679905 g/cm3 and 1 psi = 0.006894757 MPa (from
    // the definitions of pound, inch and standard gravity). Tolerances: half of the last digit of the printed figure.
    [Theory]
    [InlineData("stainless-302", 0.286, 28e6, 10e6)]
    [InlineData("music-wire", 0.284, 30e6, 11.5e6)]
    public void Steels_agree_with_the_figures_they_were_converted_from(string key, double lbPerCubicInch, double youngPsi, double shearPsi)
    {
        var steel = TestData.Data.Steels[key];
        Assert.Equal(lbPerCubicInch * 27.679905, steel.DensityGPerCm3, 0.0005 * 27.68);
        Assert.Equal(youngPsi * 0.006894757, steel.YoungsModulusMPa, 0.5);
        Assert.Equal(shearPsi * 0.006894757, steel.ShearModulusMPa, 0.5);
    }

    // Source: ASTM A313 class 1 and A228 as reprinted in a spring-trade table, ksi as printed; 1 ksi = 6.894757 MPa. Tolerance: half of the last digit kept in the data, 0.05 MPa.
    [Theory]
    [InlineData("stainless-302", 0.62, 291, 320)]
    [InlineData("stainless-302", 0.6096, 292, 322)]
    [InlineData("stainless-302", 0.65, 291, 320)]
    [InlineData("music-wire", 0.62, 337, 373)]
    [InlineData("music-wire", 0.6096, 341, 377)]
    public void The_strength_of_coil_wire_is_that_of_its_standard_at_its_thickness(string key, double wireMm, double leastKsi, double mostKsi)
    {
        var steel = TestData.Data.Steels[key];
        Assert.Equal(leastKsi * 6.894757, steel.LeastStrengthMPa(wireMm)!.Value, 0.05);
        Assert.Equal(mostKsi * 6.894757, steel.Strengths.Single(b => wireMm > b.OverMm && wireMm <= b.ToMm).MostMPa!.Value, 0.05);
    }

    [Fact]
    public void Choices_are_as_decided()
    {
        var c = TestData.Data.Choices;
        Assert.Equal(1.0 / 6, c.BearingShare);
        Assert.Equal((10, 7.5, 5), (c.WornBandWristMm, c.WornBandLabelMm, c.WornBandMeasuredMm));
        Assert.Equal((0.30, 0.20, 4), (c.LinesUpFrom, c.MixedUpTo, c.LeastAveragingMm));
        Assert.Equal([1, 0.8, 0.3, 0.5, 1], new[] { Role.Main, Role.Accent, Role.Spacer, Role.Connector, Role.Focal }.Select(r => c.ShowsByRole[r]));
        Assert.Equal((8, 0.4, 0.05, 400, 0.1), (c.LikenessColourWidth, c.LikenessAreaWidth, c.LikenessFloor, c.Shuffles, c.LeastOverShare));
        Assert.Equal((5, 8), (c.VanishDifference, c.GreyStep));
        Assert.Equal((20, 5, 0.1, 0.25, 15), (c.FocalWithinDeg, c.OverlapToleranceMm, c.BoreToleranceMm, c.FewerTurnsFrom, c.LooseFromMm));
        Assert.Equal((2, 10), (c.GapesOverMm, c.TipsOverDeg));
        Assert.Equal((138, 198, 1, 0.5, 0.25), (c.CurveFromMm, c.CurveToMm, c.CurveStepMm, c.RulerErrorMm, c.MeasuredAbsurdShare));
        Assert.Equal((400, 200, 20, 0.7), (c.SpreadDraws, c.JudgedDraws, c.HeavyTurnG, c.StressShareFrom));
    }

    // Source: Reference/ansur2_circumferences.csv, the 1st percentile of women's wrists and the 99th of men's.
    [Fact]
    public void The_curve_runs_over_the_wrists_of_the_survey()
    {
        Assert.Equal(Of("female", "p1"), FormattableString.Invariant($"{TestData.Data.Choices.CurveFromMm:0.0}"));
        Assert.Equal(Of("male", "p99"), FormattableString.Invariant($"{TestData.Data.Choices.CurveToMm:0.0}"));
    }

    private static string Of(string sex, string column)
    {
        var rows = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Reference", "ansur2_circumferences.csv"))
            .Where(l => !l.StartsWith('#')).Select(l => l.Split(',')).ToArray();
        return rows.Single(r => r[0] == sex && r[1] == "wristcircumference")[Array.IndexOf(rows[0], column)];
    }

    [Fact]
    public void Adults_wrists_are_percentiles_of_the_survey()
    {
        var wrists = TestData.Data.AdultWrists;
        string[] percentiles = ["p5", "p25", "p50", "p75", "p95"];
        Assert.Equal(new[] { "female", "male" }.SelectMany(sex => percentiles.Select(p => double.Parse(Of(sex, p), System.Globalization.CultureInfo.InvariantCulture))),
            wrists.Select(w => w.WristMm));
        Assert.Equal(1, wrists.Sum(w => w.Weight), 1e-12);
        // Each stands for the percentiles nearest to it: 15, 22.5, 25, 22.5 and 15 of a hundred, women and men half each.
        Assert.Equal([0.075, 0.1125, 0.125, 0.1125, 0.075, 0.075, 0.1125, 0.125, 0.1125, 0.075], wrists.Select(w => w.Weight));
    }

    [Fact]
    public void Usual_sizes_of_an_example_are_those_percentiles_and_its_own_wrist()
    {
        foreach (var name in new[] { "tidewrack", "boardwalk" })
        {
            var piece = PieceFile.ReadFrom(Path.Combine(TestData.Examples, name + ".piece.json"), TestData.Data).Piece!;
            Assert.Equal(TestData.Data.AdultWrists.Select(w => w.WristMm).Append(piece.Wearer.WristMm).Order(), Core.Grading.UsualWrists.Of(piece, TestData.Data));
        }
    }

    [Fact]
    public void A_folder_that_is_not_there_is_told_file_by_file()
    {
        var read = DataFiles.Load(Path.Combine(Path.GetTempPath(), "no-such-folder-of-beads"));
        Assert.Null(read.Data);
        Assert.Equal(4, read.Faults.Length);
        Assert.All(read.Faults, f => Assert.Equal((FaultCodes.DataBroken, FaultDetails.NotFound), (f.Code, f.Values["detail"])));
    }

    [Theory]
    [InlineData("materials/brass.json", "\"g/cm3\"", "\"kg/m3\"", FaultCodes.WordUnknown, "density.unit", 8)]
    [InlineData("materials/brass.json", "\"isMetal\"", "\"isMettle\"", FaultCodes.FieldUnknown, "isMettle", 4)]
    [InlineData("materials/brass.json", "8.5,", "-8.5,", FaultCodes.ValueAbove, "density.value", 7)]
    [InlineData("materials/brass.json", "\"source\"", "\"note\"", FaultCodes.FieldMissing, "density.source", 6)]
    [InlineData("materials/brass.json", "\"key\": \"brass\"", "\"key\": \"gold\"", FaultCodes.WordUnknown, "key", 2)]
    [InlineData("choices.json", "\"our choice\"", "\"they say\"", FaultCodes.WordUnknown, "bearingShare.basis", 5)]
    [InlineData("choices.json", "\"bearingShare\"", "\"baringShare\"", FaultCodes.FieldUnknown, "baringShare", 2)]
    [InlineData("choices.json", "\"mm\"", "mm", FaultDetails.Unexpected, "wornBandWristMm.unit", 10)]
    public void A_broken_data_file_is_told_with_file_field_and_line(string file, string old, string broken, string detail, string field, int line)
    {
        using var folder = new TempFolder();
        var source = Path.Combine(TestData.Root, "data");
        foreach (var from in Directory.GetFiles(source, "*.json", SearchOption.AllDirectories))
        {
            var to = Path.Combine(folder.Path, Path.GetRelativePath(source, from));
            Directory.CreateDirectory(Path.GetDirectoryName(to)!);
            File.Copy(from, to);
        }
        var target = Path.Combine(folder.Path, file);
        var text = File.ReadAllText(target);
        var at = text.IndexOf(old, StringComparison.Ordinal);
        File.WriteAllText(target, text[..at] + broken + text[(at + old.Length)..]);

        var read = DataFiles.Load(folder.Path);
        Assert.Null(read.Data);
        var fault = read.Faults.First(f => f.Field == field);
        Assert.Equal((FaultCodes.DataBroken, detail, target, line), (fault.Code, fault.Values["detail"], fault.Values["file"], fault.Line));
    }
}
