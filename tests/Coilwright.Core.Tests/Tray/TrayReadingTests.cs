using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Tray;

namespace Coilwright.Core.Tests.Tray;

/// <summary>Lists of beads, read line by line against a tray.</summary>
public class TrayReadingTests
{
    private static readonly BeadMaterial Jasper = new("jasper", 2.6, false, "test");
    private static readonly ReckoningData Data = SamplePieces.Data with { Materials = SamplePieces.Data.Materials.SetItem("jasper", Jasper) };
    private static readonly TrayWords Words = new([("lengthMm", "Länge"), ("drawer", "Fach"), ("boreMm", "Loch"), ("size", "Größe")], [("round", "Kugel"), ("rondelle", "Rondell")], [("focal", "Blickfang")], []);

    private static TrayImport Read(string heads, string[] lines, params TrayKind[] there)
    {
        ImmutableArray<string> columns = [.. heads.Split(';')];
        return TrayReading.Read(new TrayTable(columns, [.. lines.Select((l, i) => new TrayLine(i + 2, [.. l.Split(';')]))]), TrayMatching.Of(columns, Words),
            there.ToDictionary(k => k.Key, StringComparer.Ordinal), Words, Data);
    }

    private static TrayRow Only(string heads, string line, params TrayKind[] there) => Assert.Single(Read(heads, [line], there).Rows);

    private static Fault Wrong(string heads, string line) => Assert.Single(Only(heads, line).Faults);

    [Fact]
    public void Heads_are_matched_by_their_own_names_and_by_words_in_any_spelling()
    {
        Assert.Equal(["id", "lengthMm", "drawer", "boreMm", null, "size"], TrayMatching.Of(["ID", "LANGE (in mm)", "fach", "Loch mm", "remark", "größe"], Words).Columns);
        // One column of the tray is filled from one column of the list.
        Assert.Equal(["drawer", null], TrayMatching.Of(["Fach", "drawer"], Words).Columns);
        Assert.Equal([null, "name"], new TrayMatching(["name", null]).With(1, "name").Columns);
    }

    [Theory]
    [InlineData("4.5")]
    [InlineData("4,5")]
    [InlineData("4,5 mm")]
    [InlineData(" +4.50 ")]
    public void A_number_has_a_decimal_point_or_a_decimal_comma(string number)
    {
        var row = Only("name;shape;lengthMm", $"Dot;Kugel;{number}");
        Assert.Equal((TrayRowDoes.Adds, 4.5, "round", "dot"), (row.Does, row.Kind!.Bead.LengthMm, row.Kind.Bead.Shape.Name, row.Key));
    }

    [Theory]
    [InlineData("name;shape;lengthMm", "Dot;round;1.234,5", "tray.number", "lengthMm", "1.234,5")]
    [InlineData("name;shape;lengthMm", "Dot;round;four", "tray.number", "lengthMm", "four")]
    [InlineData("name;shape;lengthMm", "Dot;round;0", "value.above", "lengthMm", "0")]
    [InlineData("name;shape;lengthMm", "Dot;round;400", "value.at-most", "lengthMm", "400")]
    [InlineData("name;shape;lengthMm", "Dot;roond;4", "word.unknown", "shape", "roond")]
    [InlineData("name;shape;lengthMm", "Dot;;4", "field.missing", "shape", "")]
    [InlineData("name;shape;lengthMm", "Dot;round;", "bead.length-missing", "lengthMm", "")]
    [InlineData("name;shape;lengthMm", ";round;4", "field.missing", "name", "")]
    [InlineData("id;shape;lengthMm", "—;round;4", "id.form", "id", "—")]
    [InlineData("name;shape;lengthMm;colours", "Dot;round;4;#12345", "colour.form", "colours", "#12345")]
    [InlineData("name;shape;lengthMm;material", "Dot;round;4;Moonrock", "bead.material-unknown", "material", "Moonrock")]
    [InlineData("name;shape;lengthMinMm", "Dot;round;4", "field.missing", "lengthMaxMm", "")]
    [InlineData("name;shape;lengthMinMm;lengthMaxMm", "Dot;round;5;4", "value.range-reversed", "lengthMinMm", "[5, 4]")]
    [InlineData("name;shape;row.count;row.totalMm", "Dot;round;2.5;9", "field.type", "row.count", "2.5")]
    [InlineData("name;shape;size", "Dot;round;4 x", "tray.size", "size", "4 x")]
    [InlineData("name;shape;lengthMm;pack.unit", "Dot;round;4;strand", "field.missing", "pack.beads", "")]
    [InlineData("name;shape;lengthMm;role", "Dot;round;4;lead", "word.unknown", "role", "lead")]
    [InlineData("name;shape;lengthMm;boreMm", "Dot;round;4;4", "bead.bore-too-wide", "boreMm", "4")]
    [InlineData("name;shape;lengthMm;price", "Dot;round;4;-1", "value.at-least", "price", "-1")]
    public void What_is_wrong_is_said_with_its_line_field_and_value(string heads, string line, string code, string field, string value)
    {
        var fault = Wrong(heads, line);
        Assert.Equal((code, field, value, 2), (fault.Code, fault.Field, fault.Value, fault.Line));
    }

    [Fact]
    public void Everything_wrong_is_said_at_once_and_then_nothing_is_taken_in()
    {
        var import = Read("name;shape;lengthMm;boreMm", ["Dot;round;4;1", "Dash;roond;four;-1", "Dot;round;5;1"]);
        Assert.False(import.IsSound);
        Assert.Empty(import.Edits);
        Assert.Equal(["word.unknown", "tray.number", "value.above"], import.Rows[1].Faults.Select(f => f.Code).OrderBy(c => c == "value.above").ThenBy(c => c == "tray.number"));
        var twice = Assert.Single(import.Rows[2].Faults);
        Assert.Equal((FaultCodes.IdTwice, "dot", "2", 4), (twice.Code, twice.Value, twice.Values["first"], twice.Line));
    }

    [Fact]
    public void A_list_needs_a_column_to_know_kinds_by()
    {
        Assert.Equal((FaultCodes.FieldMissing, "name"), Assert.Single(Read("shape;lengthMm", ["round;4"]).Faults) is var f ? (f.Code, f.Field) : default);
        Assert.Equal(FaultCodes.TableNoRows, Assert.Single(Read("name;shape", []).Faults).Code);
    }

    [Theory]
    [InlineData("rondelle", "4 x 6", 4, 6)]
    [InlineData("rondelle", "6x4 mm", 4, 6)]
    [InlineData("tube", "4 x 6", 6, 4)]
    [InlineData("round", "6", 6, 6)]
    public void A_label_is_read_the_way_its_shape_is_labelled(string shape, string size, double lengthMm, double widthMm)
    {
        var bead = Only("name;shape;size", $"Dot;{shape};{size}").Kind!.Bead;
        Assert.Equal((lengthMm, widthMm), (bead.LengthMm, bead.WidthMm));
    }

    [Fact]
    public void What_no_column_is_matched_to_stays_and_an_empty_cell_empties()
    {
        Assert.True(Bead.TryMake(new BeadDescription { Id = "dot", Name = "Dot", Shape = "round", Length = new BeadLength.Nominal(4, 0.1), BoreMm = 1, Coating = "matt", Aliases = ["spot"], Material = Jasper }, out var bead, out _));
        var there = new TrayKind(bead!, "A 1");
        Assert.Equal(TrayRowDoes.Nothing, Only("id;shape;lengthMm", "dot;ROUND;4", there).Does);
        var changed = Only("id;coating;boreMm;Fach", "Dot;;1,2;B 2", there);
        Assert.Equal([new TrayCellChange("boreMm", "1", "1.2"), new TrayCellChange("coating", "matt", ""), new TrayCellChange("drawer", "A 1", "B 2")], changed.Changes);
        Assert.Equal((0.1, "spot", "jasper"), (((BeadLength.Nominal)changed.Kind!.Bead.Description.Length!).ToleranceMm, changed.Kind.Bead.Description.Aliases[0], changed.Kind.Bead.Description.Material!.Key));
        // A kind that has no length cannot be: an empty cell leaves the one it has.
        Assert.Equal(TrayRowDoes.Nothing, Only("id;lengthMm;shape", "dot;;", there).Does);
    }

    [Fact]
    public void A_tray_that_is_written_down_and_read_again_is_the_same()
    {
        var kinds = GeneratedTray.Of(600, seed: 3);
        var table = new TrayTable([.. TrayColumns.All.Select(c => c.Name)], [.. kinds.Select((k, i) => new TrayLine(i + 2, [.. TrayColumns.All.Select(c => c.TextOf(k))]))]);
        var matching = TrayMatching.Of(table.Heads, Words);
        var same = TrayReading.Read(table, matching, kinds.ToDictionary(k => k.Key, StringComparer.Ordinal), Words, Data);
        Assert.All(same.Rows, r => Assert.Equal(TrayRowDoes.Nothing, r.Does));
        var anew = TrayReading.Read(table, matching, new Dictionary<string, TrayKind>(), Words, Data);
        Assert.All(anew.Rows, r => Assert.True(r.Faults.IsEmpty, string.Join(", ", r.Faults)));
        Assert.Equal(table.Lines.SelectMany(l => l.Cells), anew.Rows.SelectMany(r => TrayColumns.All.Select(c => c.TextOf(r.Kind!))));
    }

    [Theory]
    [InlineData("'=1+2", "=1+2")]
    [InlineData("'-dull", "-dull")]
    [InlineData("'tis", "'tis")]
    public void The_apostrophe_that_guards_a_formula_is_none_of_the_text(string cell, string coating) =>
        Assert.Equal(coating, Only("name;shape;lengthMm;coating", $"Dot;round;4;{cell}").Kind!.Bead.Description.Coating);
}
