using System.Text;
using Coilwright.Core.Faults;

namespace Coilwright.Storage.Tests;

/// <summary>Bad input: one clear fault each, with its code and the place a maker can go to.</summary>
public class PieceFileBadInputTests
{
    // Every case starts from this sound file and spoils one thing in it, so that the place is known by its line here.
    private const string Sound = """
        {
          "format": "coilwright.piece/1",
          "title": "Pebble walk",
          "beads": [
            { "id": "round", "shape": "round", "lengthMm": 6, "boreMm": 1, "colours": ["#336699"], "material": "quartz" },
            { "id": "disc", "shape": "rondelle", "lengthMm": 2, "widthMm": 5, "boreMm": 1, "role": "spacer" }
          ],
          "stringingMaterial": { "kind": "memoryWire", "wireMm": 0.62, "steel": "stainless-302", "insideMm": 57 },
          "ends": { "start": { "finish": "turnedLoop", "insideMm": 3 }, "finish": { "finish": "turnedLoop", "insideMm": 3 } },
          "wearer": { "wristMm": 155 },
          "measured": [ { "what": "row", "lastBead": 2, "totalMm": 8.1 } ],
          "order": { "list": ["round", "disc", { "group": "cluster", "of": ["disc", "round"] }] },
          "wishes": { "liningUp": "mix", "groups": { "cluster": "any" }, "turns": 1 }
        }
        """;

    // What no schema can see: one value against another, names against the data, fields that stand twice, what is no JSON at all; and three numbers
    // whose range follows from another field.
    private static readonly string[] BeyondASchema =
    [
        FaultCodes.FieldTwice, FaultCodes.IdTwice, FaultCodes.RangeReversed, FaultCodes.BoreTooWide, FaultCodes.ShapeNeeds, FaultCodes.MaterialUnknown,
        FaultCodes.SteelUnknown, FaultCodes.MeasuredBeyond, FaultCodes.MeasuredAbsurd, FaultCodes.OrderUnknownName, FaultCodes.OrderGroupIsBead,
        FaultCodes.RuleMixed, FaultCodes.StandInItself, FaultCodes.ValueNotFinite, FaultCodes.FileNotJson, "stringingMaterial.gauge", "measured[1].totalMm",
        "wishes.inAnyRow[0].ofAny",
    ];

    [Fact]
    public void The_file_that_the_cases_spoil_is_sound()
    {
        Assert.True(PieceSchema.Accepts(Encoding.UTF8.GetBytes(Sound)));
        var read = TestData.Read(Sound);
        Assert.Empty(read.Faults);
        Assert.Equal(4, read.Piece!.Order.Count);
    }

    // The bar in a slip marks the place that the fault must name; it is taken out before reading.
    [Theory]
    // unknown and duplicate fields
    [InlineData("\"boreMm\": 1, \"colours\"", "¦\"boreMM\": 1, \"colours\"", FaultCodes.FieldUnknown, "beads[0].boreMM", "boreMM")]
    [InlineData("\"title\":", "¦\"titel\": \"x\", \"title\":", FaultCodes.FieldUnknown, "titel", "titel")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": 155, ¦\"wristMm\": 160", FaultCodes.FieldTwice, "wearer.wristMm", "wristMm")]
    [InlineData("\"turns\": 1", "\"turns\": 1, ¦\"colour\": 2", FaultCodes.FieldUnknown, "wishes.colour", "colour")]
    [InlineData("\"lastBead\": 2", "¦\"lastBeed\": 2", FaultCodes.FieldUnknown, "measured[0].lastBeed", "lastBeed")]
    // wrong types
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦\"6\"", FaultCodes.FieldType, "beads[0].lengthMm", "6")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦null", FaultCodes.FieldType, "beads[0].lengthMm", "null")]
    [InlineData("\"lengthMm\": 6", "\"lengthRangeMm\": ¦[5]", FaultCodes.FieldType, "beads[0].lengthRangeMm", "")]
    [InlineData("\"title\": \"Pebble walk\"", "\"title\": ¦7", FaultCodes.FieldType, "title", "7")]
    [InlineData("\"lastBead\": 2", "\"lastBead\": ¦2.5", FaultCodes.FieldType, "measured[0].lastBead", "2.5")]
    [InlineData("{ \"wristMm\": 155 }", "¦[155]", FaultCodes.FieldType, "wearer", "")]
    [InlineData("[\"round\", \"disc\", {", "[\"round\", ¦3, {", FaultCodes.FieldType, "order.list[1]", "3")]
    [InlineData("\"liningUp\": \"mix\"", "\"liningUp\": ¦[\"mix\"]", FaultCodes.FieldType, "wishes.liningUp", "")]
    // zero, negative, not finite, absurd
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦0", FaultCodes.ValueAbove, "beads[0].lengthMm", "0")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦-6", FaultCodes.ValueAbove, "beads[0].lengthMm", "-6")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦NaN", FaultCodes.ValueNotFinite, "beads[0].lengthMm", "NaN")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦-Infinity", FaultCodes.ValueNotFinite, "beads[0].lengthMm", "-Infinity")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦1e999", FaultCodes.ValueNotFinite, "beads[0].lengthMm", "1e999")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": ¦6000", FaultCodes.ValueAtMost, "beads[0].lengthMm", "6000")]
    [InlineData("\"lengthMm\": 6", "\"lengthRangeMm\": ¦[7, 5]", FaultCodes.RangeReversed, "beads[0].lengthRangeMm", "[7, 5]")]
    [InlineData("\"lengthMm\": 6", "\"row\": {\"count\": ¦0, \"totalMm\": 60}", FaultCodes.ValueAtLeast, "beads[0].row.count", "0")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": ¦15.5", FaultCodes.ValueAtLeast, "wearer.wristMm", "15.5")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": ¦0", FaultCodes.ValueAtLeast, "wearer.wristMm", "0")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": ¦1e400", FaultCodes.ValueNotFinite, "wearer.wristMm", "1e400")]
    [InlineData("\"wireMm\": 0.62", "\"wireMm\": ¦22", FaultCodes.ValueAtMost, "stringingMaterial.wireMm", "22")]
    [InlineData("\"insideMm\": 57", "\"insideMm\": ¦2.25", FaultCodes.ValueAtLeast, "stringingMaterial.insideMm", "2.25")]
    [InlineData("\"turns\": 1", "\"turns\": ¦0", FaultCodes.ValueAbove, "wishes.turns", "0")]
    // beads
    [InlineData("\"boreMm\": 1, \"colours\"", "\"boreMm\": ¦6, \"colours\"", FaultCodes.BoreTooWide, "beads[0].boreMm", "6")]
    [InlineData("\"id\": \"disc\"", "\"id\": ¦\"round\"", FaultCodes.IdTwice, "beads[1].id", "round")]
    [InlineData("\"id\": \"disc\"", "\"id\": ¦\"Disc 1\"", FaultCodes.IdForm, "beads[1].id", "Disc 1")]
    [InlineData("\"shape\": \"rondelle\"", "\"shape\": ¦\"rondel\"", FaultCodes.WordUnknown, "beads[1].shape", "rondel")]
    [InlineData("{ \"id\": \"disc\", \"shape\": \"rondelle\", \"lengthMm\": 2, \"widthMm\": 5,", "¦{ \"id\": \"disc\", \"shape\": \"rondelle\", \"lengthMm\": 2,",
        FaultCodes.ShapeNeeds, "beads[1].widthMm", "")]
    [InlineData("{ \"id\": \"round\", \"shape\": \"round\", \"lengthMm\": 6,", "¦{ \"id\": \"round\", \"shape\": \"round\",", FaultCodes.LengthMissing,
        "beads[0].lengthMm", "")]
    [InlineData("\"lengthMm\": 6", "\"lengthMm\": 6, \"lengthRangeMm\": ¦[5, 7]", FaultCodes.LengthTwice, "beads[0].lengthRangeMm", "")]
    [InlineData("\"lengthMm\": 6", "\"lengthRangeMm\": [5, 7], \"toleranceMm\": ¦1", FaultCodes.FieldNotWith, "beads[0].toleranceMm", "1")]
    [InlineData("\"#336699\"", "¦\"#33669\"", FaultCodes.ColourForm, "beads[0].colours[0]", "#33669")]
    [InlineData("\"quartz\"", "¦\"quarz\"", FaultCodes.MaterialUnknown, "beads[0].material", "quarz")]
    [InlineData("\"role\": \"spacer\"", "\"role\": ¦\"spaser\"", FaultCodes.WordUnknown, "beads[1].role", "spaser")]
    // the wire and the ends
    [InlineData("\"wireMm\": 0.62", "\"gauge\": ¦\"22\"", FaultCodes.GaugeForm, "stringingMaterial.gauge", "22")]
    [InlineData("\"wireMm\": 0.62", "\"gauge\": ¦\"2 AWG\"", FaultCodes.ValueAtMost, "stringingMaterial.gauge", "6.544")]
    [InlineData("\"wireMm\": 0.62", "\"wireMm\": 0.62, \"gauge\": ¦\"22 AWG\"", FaultCodes.FieldOneOf, "stringingMaterial.gauge", "22 AWG")]
    [InlineData("{ \"kind\": \"memoryWire\", \"wireMm\": 0.62,", "¦{ \"kind\": \"memoryWire\",", FaultCodes.FieldOneOf, "stringingMaterial.wireMm", "")]
    [InlineData("\"stainless-302\"", "¦\"stainless-320\"", FaultCodes.SteelUnknown, "stringingMaterial.steel", "stainless-320")]
    [InlineData("{ \"kind\": \"memoryWire\", \"wireMm\": 0.62, \"steel\": \"stainless-302\", \"insideMm\": 57 }",
        "¦{ \"kind\": \"memoryWire\", \"wireMm\": 0.62, \"steel\": \"stainless-302\" }", FaultCodes.CoilSize, "stringingMaterial.loopMm", "")]
    [InlineData("\"insideMm\": 57", "\"insideMm\": 57, \"centreMm\": ¦58", FaultCodes.CoilSize, "stringingMaterial.centreMm", "58")]
    [InlineData("\"insideMm\": 57", "\"insideMm\": 57, \"cutMm\": 500, \"cutLoops\": ¦3", FaultCodes.FieldOneOf, "stringingMaterial.cutLoops", "3")]
    [InlineData("\"memoryWire\"", "¦\"elastic\"", FaultCodes.WordUnknown, "stringingMaterial.kind", "elastic")]
    [InlineData("\"finish\": { \"finish\": \"turnedLoop\", \"insideMm\": 3 }", "\"finish\": { \"finish\": \"gluedCap\", \"depthMm\": 4, \"insideMm\": ¦3 }",
        FaultCodes.FieldNotWith, "ends.finish.insideMm", "3")]
    [InlineData("\"finish\": { \"finish\": \"turnedLoop\", \"insideMm\": 3 }", "\"finish\": { \"finish\": \"turnedLoop\", \"insideMm\": 3, \"dangle\": ¦\"leaf\" }",
        FaultCodes.FieldNotWith, "ends.finish.dangle", "leaf")]
    [InlineData("\"finish\": { \"finish\": \"turnedLoop\", \"insideMm\": 3 }", "\"finish\": { \"finish\": \"dangle\", \"insideMm\": 3, \"dangleMm\": ¦301 }",
        FaultCodes.ValueAtMost, "ends.finish.dangleMm", "301")]
    [InlineData("{ \"start\": { \"finish\": \"turnedLoop\", \"insideMm\": 3 }, ", "¦{ ", FaultCodes.FieldMissing, "ends.start", "")]
    [InlineData("{ \"wristMm\": 155 }", "¦{ }", FaultCodes.FieldMissing, "wearer.wristMm", "")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": 155, \"startAngleDeg\": ¦\"focalontop\"", FaultCodes.WordUnknown, "wearer.startAngleDeg", "focalontop")]
    // what was measured
    [InlineData("\"lastBead\": 2", "\"lastBead\": ¦5", FaultCodes.MeasuredBeyond, "measured[0].lastBead", "5")]
    [InlineData("\"totalMm\": 8.1", "\"totalMm\": ¦81", FaultCodes.MeasuredAbsurd, "measured[0].totalMm", "81")]
    [InlineData("\"what\": \"row\"", "\"what\": ¦\"raw\"", FaultCodes.WordUnknown, "measured[0].what", "raw")]
    [InlineData("\"totalMm\": 8.1 }", "\"totalMm\": 8.1 }, {\"what\": \"loop\", \"loops\": 3, \"totalMm\": ¦54}", FaultCodes.ValueAtLeast, "measured[1].totalMm", "54")]
    // the order and the wishes
    [InlineData("\"round\", \"disc\", {", "\"round\", ¦\"disk\", {", FaultCodes.OrderUnknownName, "order.list[1]", "disk")]
    [InlineData("[\"disc\", \"round\"]", "[\"disc\", ¦\"ruond\"]", FaultCodes.OrderUnknownName, "order.list[2].of[1]", "ruond")]
    [InlineData("[\"disc\", \"round\"]", "¦[]", FaultCodes.OrderEmpty, "order.list[2].of", "cluster")]
    [InlineData("\"group\": \"cluster\"", "\"group\": ¦\"disc\"", FaultCodes.OrderGroupIsBead, "order.list[2].group", "disc")]
    [InlineData("\"list\": [\"round\"", "\"text\": [], \"list\": ¦[\"round\"", FaultCodes.FieldOneOf, "order.list", "")]
    [InlineData("\"cluster\": \"any\"", "¦\"clutser\": \"any\"", FaultCodes.OrderUnknownName, "wishes.groups.clutser", "clutser")]
    [InlineData("\"turns\": 1 }", "\"turns\": 1 }, \"pattern\": { \"level\": ¦\"easy\" }", FaultCodes.WordUnknown, "pattern.level", "easy")]
    [InlineData("\"turns\": 1 }", "\"turns\": 1 }, \"pattern\": { \"minutes\": ¦0 }", FaultCodes.ValueAtLeast, "pattern.minutes", "0")]
    [InlineData("\"turns\": 1 }", "\"turns\": 1 }, \"pattern\": { \"words\": [¦{ \"text\": \"Snip.\" }] }", FaultCodes.FieldMissing, "pattern.words[0].step", "")]
    [InlineData("\"turns\": 1 }", "\"turns\": 1 }, \"pattern\": { \"testers\": [{ \"note\": ¦\" \" }] }", FaultCodes.TextEmpty, "pattern.testers[0].note", " ")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"free\": { \"coils\": [¦{}] }", FaultCodes.CoilSize, "wishes.free.coils[0].loopMm", "")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"free\": { \"coils\": [{ \"insideMm\": ¦55, \"loopMm\": 180 }] }", FaultCodes.CoilSize, "wishes.free.coils[0].insideMm", "55")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"free\": { \"coils\": [{ \"insideMm\": ¦500 }] }", FaultCodes.ValueAtMost, "wishes.free.coils[0].insideMm", "500")]
    [InlineData("\"cluster\": \"any\"", "\"cluster\": ¦\"column\"", FaultCodes.WordUnknown, "wishes.groups.cluster", "column")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"longestRun\": [{ \"name\": \"round\", \"most\": ¦0 }]", FaultCodes.ValueAtLeast, "wishes.longestRun[0].most", "0")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"longestRun\": [¦{ \"name\": \"round\" }]", FaultCodes.FieldMissing, "wishes.longestRun[0].most", "")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"inAnyRow\": [{ \"names\": [\"round\"], \"upTo\": 2, \"ofAny\": ¦2 }]", FaultCodes.ValueAtLeast, "wishes.inAnyRow[0].ofAny", "2")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"inAnyRow\": [{ \"names\": ¦[], \"upTo\": 2, \"ofAny\": 3 }]", FaultCodes.TextEmpty, "wishes.inAnyRow[0].names", "")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"inAnyRow\": [{ \"names\": [\"round\", ¦\"clutser\"], \"upTo\": 2, \"ofAny\": 3 }]", FaultCodes.OrderUnknownName, "wishes.inAnyRow[0].names[1]", "clutser")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"apart\": [{ \"name\": \"round\", \"beside\": ¦\"cluster\" }]", FaultCodes.RuleMixed, "wishes.apart[0].beside", "round")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"together\": [{ \"name\": \"cluster\", \"beside\": ¦\"clutser\" }]", FaultCodes.OrderUnknownName, "wishes.together[0].beside", "clutser")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"startsWith\": ¦\"clutser\"", FaultCodes.OrderUnknownName, "wishes.startsWith", "clutser")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"endsWith\": ¦3", FaultCodes.FieldType, "wishes.endsWith", "3")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"free\": { \"standIns\": [{ \"bead\": \"round\", \"with\": ¦\"round\" }] }", FaultCodes.StandInItself, "wishes.free.standIns[0].with", "round")]
    [InlineData("\"turns\": 1", "\"turns\": 1, \"free\": { \"standIns\": [{ \"bead\": \"round\", \"with\": ¦\"no-bead\" }] }", FaultCodes.OrderUnknownName, "wishes.free.standIns[0].with", "no-bead")]
    // the format
    [InlineData("\"coilwright.piece/1\"", "¦\"coilwright.piece/9\"", FaultCodes.FormatUnknown, "format", "coilwright.piece/9")]
    [InlineData("{\n  \"format\": \"coilwright.piece/1\",", "¦{\n", FaultCodes.FieldMissing, "format", "")]
    [InlineData("\"coilwright.piece/1\"", "¦1", FaultCodes.FieldType, "format", "1")]
    // not JSON
    [InlineData("\"insideMm\": 57 }", "\"insideMm\": 57, ¦}", FaultCodes.FileNotJson, "stringingMaterial.insideMm", "}")]
    [InlineData("\"beads\": [", "\"beads\": [ ¦// all of them", FaultCodes.FileNotJson, "beads[0]", "/")]
    [InlineData("\"wristMm\": 155", "\"wristMm\": 155,¦5", FaultCodes.FileNotJson, "wearer.wristMm", "5")]
    [InlineData("\"wristMm\": 155", "¦wristMm: 155", FaultCodes.FileNotJson, "wearer", "wristMm")]
    public void One_slip_gives_one_fault_with_its_place(string old, string slip, string code, string field, string value)
    {
        var at = Sound.IndexOf(old, StringComparison.Ordinal);
        Assert.True(at >= 0);
        var marked = Sound[..at] + slip + Sound[(at + old.Length)..];
        var before = marked[..marked.IndexOf('¦', StringComparison.Ordinal)];
        var (line, column) = (before.Count(c => c == '\n') + 1, before.Length - before.LastIndexOf('\n'));
        var spoilt = marked.Replace("¦", "", StringComparison.Ordinal);
        var fault = TestData.OnlyFault(spoilt);
        Assert.Equal((code, field, line, column, value), (fault.Code, fault.Field, fault.Line, fault.Column, fault.Value));
        if (!BeyondASchema.Contains(code) && !BeyondASchema.Contains(field)) Assert.False(PieceSchema.Accepts(Encoding.UTF8.GetBytes(spoilt)));
    }

    [Fact]
    public void A_file_cut_off_anywhere_inside_is_told_as_cut_off_or_at_its_end()
    {
        var bytes = Encoding.UTF8.GetBytes(Sound);
        for (var length = 1; length < bytes.Length; length++)
        {
            var fault = Assert.Single(PieceFile.Read(bytes.AsMemory(0, length), null, TestData.Data).Faults);
            Assert.Equal(FaultCodes.FileTruncated, fault.Code);
            Assert.Equal(Encoding.UTF8.GetString(bytes.AsSpan(0, length)).Count(c => c == '\n') + 1, fault.Line);
        }
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \r\n\t\n")]
    public void An_empty_file_is_told_as_empty(string text)
    {
        var fault = TestData.OnlyFault(text);
        Assert.Equal((FaultCodes.FileNotJson, FaultDetails.Empty), (fault.Code, fault.Values["detail"]));
    }

    [Fact]
    public void Bytes_that_are_not_UTF8_are_told_by_offset_line_and_column()
    {
        var bytes = Encoding.UTF8.GetBytes(Sound.Replace("Pebble", "Pébble", StringComparison.Ordinal));
        var at = bytes.AsSpan().IndexOf("walk"u8);
        bytes[at] = 0xE9; // é in Latin-1
        var fault = Assert.Single(PieceFile.Read(bytes, null, TestData.Data).Faults);
        Assert.Equal((FaultCodes.FileNotUtf8, "0xe9", 3, 20), (fault.Code, fault.Value, fault.Line, fault.Column));
        Assert.Equal(at.ToString(System.Globalization.CultureInfo.InvariantCulture), fault.Values["offset"]);
    }

    [Fact]
    public void A_byte_order_mark_is_accepted_and_takes_no_column()
    {
        Assert.Empty(PieceFile.Read(Encoding.UTF8.GetBytes("\uFEFF" + Sound), null, TestData.Data).Faults);
        var fault = TestData.OnlyFault("\uFEFF[]");
        Assert.Equal((FaultCodes.FieldType, 1, 1), (fault.Code, fault.Line, fault.Column));
    }

    [Fact]
    public void Brackets_too_deep_are_told_where_the_limit_is_passed()
    {
        var fault = TestData.OnlyFault("{ \"beads\":\n" + new string('[', 200) + new string(']', 200) + "}");
        // The outer object is the first level, so the 64th bracket of the list passes the limit.
        Assert.Equal((FaultCodes.FileTooDeep, "64", 2, 64), (fault.Code, fault.Values["max"], fault.Line, fault.Column));
    }

    [Fact]
    public void Text_after_the_end_is_told_there()
    {
        var fault = TestData.OnlyFault(Sound + "\n}");
        Assert.Equal((FaultCodes.FileNotJson, FaultDetails.AfterTheEnd, 15, 1), (fault.Code, fault.Values["detail"], fault.Line, fault.Column));
    }

    [Fact]
    public void Half_of_an_escaped_pair_is_no_character()
    {
        var fault = TestData.OnlyFault(Sound.Replace("Pebble", "\\ud83d", StringComparison.Ordinal));
        Assert.Equal((FaultCodes.FileNotJson, FaultDetails.Escape, "title", 3), (fault.Code, fault.Values["detail"], fault.Field, fault.Line));
    }

    [Fact]
    public void An_unknown_field_names_the_nearest_one()
    {
        var fault = TestData.OnlyFault(Sound.Replace("\"thick", "\"thik", StringComparison.Ordinal).Replace("\"widthMm\"", "\"widhtMm\": 4, \"widthMm\"", StringComparison.Ordinal));
        Assert.Equal("widthMm", fault.Values["nearest"]);
    }

    [Fact]
    public void Several_slips_are_told_at_once_in_the_order_of_the_file()
    {
        var read = TestData.Read(Sound.Replace("\"boreMm\": 1, \"colours\"", "\"boreMm\": -1, \"colours\"", StringComparison.Ordinal)
            .Replace("155", "\"155\"", StringComparison.Ordinal).Replace("\"turns\"", "\"turn\"", StringComparison.Ordinal)
            .Replace("\"disc\", {", "\"disk\", {", StringComparison.Ordinal));
        Assert.Equal(["beads[0].boreMm", "wearer.wristMm", "order.list[1]", "wishes.turn"], read.Faults.Select(f => f.Field));
    }

    [Fact]
    public void A_file_wrong_throughout_tells_the_first_hundred_faults()
    {
        var read = TestData.Read("{\"format\": \"coilwright.piece/1\"," + string.Join(",", Enumerable.Range(0, 5000).Select(i => $"\"f{i}\": 1")) + "}");
        Assert.Equal(100, read.Faults.Length);
    }
}
