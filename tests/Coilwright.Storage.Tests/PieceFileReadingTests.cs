using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Storage.Tests;

/// <summary>What a sound file comes to, and how a file on the disk that cannot be read is told.</summary>
public class PieceFileReadingTests
{
    [Fact]
    public void Every_field_reaches_the_piece()
    {
        var piece = TestData.Read(FilesWithEveryField.All[0]).Piece!;
        Assert.Equal("Every field, one way", piece.Title);
        var round = piece.Beads[0].Description;
        Assert.Equal(new BeadLength.Nominal(6, 0.1), round.Length);
        Assert.Equal(("Round", "round", 1, 0.1, 0.3), (round.Name, round.Shape, round.BoreMm, round.HoleOffsetMm, round.WallMm));
        Assert.Equal(["#336699", "#ffffff"], round.Colours.Select(c => c.ToString()));
        Assert.Equal(("matt", "quartz", 2.6, 0.4, Role.Accent, 0.7), (round.Coating, round.Material!.Key, round.DensityGPerCm3, round.MassG, round.Role, round.Shows));
        Assert.Equal((new Pack("strand", 60), 3.5m, "7", "ball six"), (round.Pack, round.Price, round.Lot, round.Aliases.Single()));
        Assert.Equal(new BeadLength.Row(20, 90, TestData.Data.Choices.RulerErrorMm), piece.Beads[1].Description.Length);
        Assert.Equal(("lava", null), (piece.Beads[1].Description.OtherMaterial, piece.Beads[1].Description.Material));
        Assert.Equal(new BeadLength.Range(8, 11), piece.Beads[2].Description.Length);
        Assert.Equal(4, piece.Beads[3].Description.EndFaceMm);
        var tube = piece.Beads[4].Description;
        Assert.Equal((30, true, CurvedLength.Chord, Role.Connector), (tube.CurveRadiusMm, tube.Matched, tube.CurvedLength, tube.Role));
        Assert.Equal(new Seat(11, 2), piece.Beads[5].Description.Seat);
        Assert.Equal((0.62, CoilDatum.MeasuredLoop, 185.0, "music-wire", 900.0),
            (piece.Wire.WireMm, piece.Wire.Datum, piece.Wire.SizeMm, piece.Wire.Steel!.Key, piece.Wire.CutMm));
        Assert.Equal(new WireEnd(EndFinish.TurnedLoop, 3) { MeasuredMm = 11.5 }, piece.Ends.Start);
        Assert.Equal(new WireEnd(EndFinish.GluedCap, 4), piece.Ends.Finish);
        Assert.Equal((10, 20, 5), (piece.Ends.GripMm, piece.Ends.SpareMm, piece.Ends.OverlapMm));
        Assert.Equal(new Wearer(160, 2) { BearingReachMm = 3, StartAngleDeg = 170 }, piece.Wearer);
        Assert.Equal([new MeasuredRow(1, 2, 10.6)], piece.MeasuredRows);
        Assert.Equal("cluster = round, chip   # a pair\ncluster, tube, nugget, disc, star, cluster", piece.OrderText);
        Assert.Equal([0, 1, 4, 2, 3, 5, 0, 1], piece.Order.Kinds);
        Assert.Equal([("cluster", 0, 2), ("cluster", 6, 2)], piece.Order.Groups.Select(g => (g.Name, g.First, g.Count)));
        Assert.Equal((LiningUpWish.Mix, 1.5, 10), (piece.Wishes.LiningUp, piece.Wishes.Turns, piece.Wishes.FocalWithinDeg));
        Assert.Equal([new PlaceWish(-30, 30, LiningUpWish.Any)], piece.Wishes.Places);
        Assert.Equal(LiningUpWish.Columns, piece.Wishes.Groups["cluster"]);
    }

    [Fact]
    public void The_other_ways_of_writing_reach_the_piece_too()
    {
        var piece = TestData.Read(FilesWithEveryField.All[1]).Piece!;
        // 22 AWG is 0.127 mm x 92^((36 - 22)/39) = 0.64380 mm (formula of ASTM B 258, not read in the standard itself); half of the last digit.
        Assert.Equal(0.64380, piece.Wire.WireMm, 0.000005);
        Assert.Equal(("22 AWG", CoilDatum.CentreLine, 58, null), (piece.Wire.GaugeName, piece.Wire.Datum, piece.Wire.SizeMm, piece.Wire.Steel));
        Assert.Equal(3 * Math.PI * 58, piece.Wire.CutMm!.Value, 1e-9);
        Assert.Equal((true, true), (piece.Wearer.FocalOnTop, piece.Wearer.IsChild));
        Assert.Equal((12, 12), (piece.Ends.Start.MeasuredMm, piece.Ends.Finish.MeasuredMm));
        Assert.Equal((0, 0, null), (piece.Ends.GripMm, piece.Ends.SpareMm, piece.Ends.OverlapMm));
        Assert.Null(piece.OrderText);
        Assert.Equal([0, 0, 1, 1], piece.Order.Kinds);
        Assert.Equal([("pair", 1, 2), ("inner", 2, 1)], piece.Order.Groups.Select(g => (g.Name, g.First, g.Count)));
    }

    [Fact]
    public void Measured_loops_overrule_a_label_and_a_written_loop()
    {
        var text = FilesWithEveryField.All[2].Replace("\"loops\": 1, \"totalMm\": 180", "\"loops\": 3, \"totalMm\": 555", StringComparison.Ordinal);
        Assert.Equal(185, TestData.Read(text).Piece!.Wire.LoopMm, 1e-9);
        Assert.Equal(185, TestData.Read(text.Replace("\"24 SWG\"", "\"24 SWG\", \"insideMm\": 50, \"loopMm\": 200", StringComparison.Ordinal)).Piece!.Wire.LoopMm, 1e-9);
    }

    // The notation's own line and column are those of its text; a maker's editor shows those of the file.
    [Fact]
    public void A_fault_in_the_notation_is_told_at_its_place_in_the_file()
    {
        const string text = """
            {
              "format": "coilwright.piece/1",
              "title": "Pebble walk",
              "beads": [{ "id": "round", "shape": "round", "lengthMm": 6 }],
              "stringingMaterial": { "kind": "memoryWire", "wireMm": 0.62, "insideMm": 57 },
              "ends": { "start": { "finish": "turnedLoop", "insideMm": 3 }, "finish": { "finish": "turnedLoop", "insideMm": 3 } },
              "wearer": { "wristMm": 155 },
              "order": { "text": [
                "round",
                "# \u00e9\t\"quoted\" \ud83d\ude00 two",
                "round, ruond",
                "2 round\n4 roud"
              ] }
            }
            """;
        var read = TestData.Read(text);
        Assert.Equal(2, read.Faults.Length);
        Assert.All(read.Faults, f => Assert.Equal((FaultCodes.OrderUnknownName, "round"), (f.Code, f.Values["nearest"])));
        Assert.Equal(("order.text[2]", "ruond", 11, 13), (read.Faults[0].Field, read.Faults[0].Value, read.Faults[0].Line, read.Faults[0].Column));
        Assert.Equal(("order.text[3]", "roud", 12, 17), (read.Faults[1].Field, read.Faults[1].Value, read.Faults[1].Line, read.Faults[1].Column));

        // Behind escapes the file's columns run ahead of the notation's.
        var escaped = TestData.Read(text.Replace("\"round, ruond\"", "\"r\\u006fund, \\u0072uond\"", StringComparison.Ordinal));
        Assert.Equal((11, 18), (escaped.Faults[0].Line, escaped.Faults[0].Column));
    }

    [Theory]
    [InlineData("[]", FaultCodes.OrderEmpty)]
    [InlineData("[\"\"]", FaultCodes.OrderEmpty)]
    [InlineData("[\"# only a remark\"]", FaultCodes.OrderEmpty)]
    [InlineData("[\"pair = 2 pair\", \"pair\"]", FaultCodes.OrderGroupInItself)]
    [InlineData("[\"a = b\", \"b = a\", \"a\"]", FaultCodes.OrderGroupInItself)]
    [InlineData("[\"3 (round\"]", FaultCodes.OrderUnclosed)]
    [InlineData("[\"0 round\"]", FaultCodes.OrderCount)]
    [InlineData("[\"200000 (200000 (200000 round))\"]", FaultCodes.OrderTooMany)]
    public void Faults_of_the_notation_are_told_with_a_line_of_the_file(string lines, string code)
    {
        var text = FilesWithEveryField.All[2].Replace("\"list\": [\"round\"]", "\"text\": " + lines, StringComparison.Ordinal);
        var fault = TestData.OnlyFault(text);
        Assert.Equal((code, 9), (fault.Code, fault.Line));
        Assert.StartsWith("order.text", fault.Field, StringComparison.Ordinal);
    }

    [Fact]
    public void A_file_that_is_not_there_is_told_so() => Assert.Equal(FaultDetails.NotFound, Unreadable("/no/such/folder/a.piece.json"));

    [Fact]
    public void A_folder_is_no_piece()
    {
        using var folder = new TempFolder();
        Assert.Equal(FaultDetails.IsFolder, Unreadable(folder.Path));
    }

    [Fact]
    public void An_impossible_path_is_told_so()
    {
        Assert.Equal(FaultDetails.PathForm, Unreadable(""));
        Assert.Equal(FaultDetails.PathForm, Unreadable("a\0b"));
        Assert.Equal(FaultDetails.PathForm, Unreadable(new string('n', 5000)));
    }

    [Fact]
    public void A_file_larger_than_the_limit_is_refused_before_it_is_read()
    {
        using var folder = new TempFolder();
        var path = folder.File("large.piece.json");
        // A sparse file: were it read, the test would take minutes and 50 GB.
        using (var file = new FileStream(path, FileMode.CreateNew)) file.SetLength(50L * 1024 * 1024 * 1024);
        var fault = Assert.Single(PieceFile.ReadFrom(path, TestData.Data).Faults);
        Assert.Equal((FaultCodes.FileTooLarge, path, "8 MB"), (fault.Code, fault.Value, fault.Values["max"]));
    }

    [Fact]
    public void A_device_without_end_is_refused_at_the_limit()
    {
        if (!OperatingSystem.IsLinux()) return;
        Assert.Equal(FaultCodes.FileTooLarge, Assert.Single(PieceFile.ReadFrom("/dev/zero", TestData.Data).Faults).Code);
    }

    [Fact]
    public void An_order_of_ten_megabytes_is_refused_as_too_large()
    {
        var text = FilesWithEveryField.All[2].Replace("\"list\": [\"round\"]", "\"text\": [\"" + string.Concat(Enumerable.Repeat("round, ", 1_500_000)) + "\"]", StringComparison.Ordinal);
        Assert.Equal(FaultCodes.FileTooLarge, TestData.OnlyFault(text).Code);
    }

    [Fact]
    public void A_file_keeps_its_name_in_the_result()
    {
        var path = TestData.ExampleFiles.First();
        Assert.Equal(path, PieceFile.ReadFrom(path, TestData.Data).FileName);
    }

    [Fact]
    public void Line_ends_of_either_kind_give_the_same_places()
    {
        var text = FilesWithEveryField.All[2].Replace("160", "1600", StringComparison.Ordinal);
        var feeds = TestData.OnlyFault(text.ReplaceLineEndings("\n"));
        var returns = PieceFile.Read(Encoding.UTF8.GetBytes(text.ReplaceLineEndings("\r\n")), null, TestData.Data).Faults.Single();
        Assert.Equal((feeds.Line, feeds.Column), (returns.Line, returns.Column));
    }

    private static string Unreadable(string path)
    {
        var fault = Assert.Single(PieceFile.ReadFrom(path, TestData.Data).Faults);
        Assert.Equal((FaultCodes.FileUnreadable, path), (fault.Code, fault.Value));
        return fault.Values["detail"];
    }
}
