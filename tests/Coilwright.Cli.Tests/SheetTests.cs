using System.Text;
using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>sheet</c>: what it writes, and what it says.</summary>
public class SheetTests
{
    private static readonly AnswerSchema Schema = new("sheet");

    public static TheoryData<string> Examples => [.. TheProgram.Examples.Select(p => Path.GetRelativePath(TheProgram.Root, p))];

    // The files of a sheet by the name of its piece, in the order of their names; where only one turn lies there is no curve.
    private static string[] SheetOf(string name, bool hasPdf = true, bool hasCurve = true) =>
        [.. new[] { "-cards.svg", "-coil.svg", hasCurve ? "-curve.svg" : "", "-ends.svg", "-sheet.html", hasPdf ? "-sheet.pdf" : "", "-strips.svg", "-turns.svg" }.Where(e => e.Length > 0).Select(e => name + e)];

    private static string[] Files(string folder) => [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(folder, f)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Examples))]
    public void Every_example_has_its_sheet_as_pdf_and_web_page_and_all_its_drawings(string example)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", example, "--out", folder["made/here"], "--json");
        Assert.True(ran.Code is 0 or 1, ran.Error);
        Assert.Empty(ran.Error);
        var answer = Schema.Valid(ran.Out);
        var name = Path.GetFileName(example).Replace(".piece.json", "", StringComparison.Ordinal);
        Assert.Equal(SheetOf(name, hasCurve: name != "puddle-hop"), Files(folder["made/here"]));
        Assert.Equal(Files(folder["made/here"]), answer["files"]!.AsArray().Select(f => Path.GetFileName((string)f!)).Order(StringComparer.Ordinal));
        Assert.Equal("%PDF-"u8.ToArray(), File.ReadAllBytes(folder[$"made/here/{name}-sheet.pdf"])[..5]);
        var reckoned = JsonNode.Parse(TheProgram.Run("reckon", example, "--json").Out)!;
        foreach (var bead in answer["materials"]!["beads"]!.AsArray())
            Assert.Equal((int)reckoned["counts"]![(string)bead!["bead"]!]!, (int)bead["use"]!);
    }

    [Fact]
    public void The_same_call_writes_the_same_bytes_under_any_locale()
    {
        using var folder = new OwnFolder();
        foreach (var (place, locale) in new[] { ("one", "C.UTF-8"), ("two", "de_DE.UTF-8") })
            Assert.Equal(0, TheProgram.Run([("LANG", locale), ("LC_ALL", locale), ("TZ", place == "one" ? "UTC" : "Asia/Tokyo")], ["sheet", TheProgram.Example("boardwalk"), "--out", folder[place]]).Code);
        foreach (var file in Files(folder["one"])) Assert.Equal(File.ReadAllBytes(folder["one/" + file]), File.ReadAllBytes(folder["two/" + file]));
    }

    [Fact]
    public void Paper_large_print_greyscale_and_spared_ink_are_heeded()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", folder.Path, "--paper", "letter", "--large-print", "--greyscale", "--ink-saving", "--json");
        Assert.Equal(0, ran.Code);
        var answer = Schema.Valid(ran.Out);
        Assert.Equal(("letter", true, true, true), ((string)answer["paper"]!, (bool)answer["largePrint"]!, (bool)answer["greyscale"]!, (bool)answer["inkSaving"]!));
        var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(folder["boardwalk-sheet.pdf"]));
        Assert.Contains("/MediaBox[0 0 612 792]", pdf, StringComparison.Ordinal);
        Assert.Contains("size: letter", File.ReadAllText(folder["boardwalk-sheet.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public void The_piece_in_space_is_written_beside_it_where_it_is_asked_for()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", folder.Path, "--glb", "--json");
        Assert.Equal(0, ran.Code);
        Assert.Equal(SheetOf("boardwalk").Concat(["boardwalk-coil-at-rest.glb", "boardwalk-coil-worn.glb"]).Order(StringComparer.Ordinal), Files(folder.Path));
        Assert.Contains(Schema.Valid(ran.Out)["files"]!.AsArray(), f => ((string)f!).EndsWith("boardwalk-coil-worn.glb", StringComparison.Ordinal));
        foreach (var model in new[] { "boardwalk-coil-at-rest.glb", "boardwalk-coil-worn.glb" }) Assert.Equal("glTF"u8.ToArray(), File.ReadAllBytes(folder[model])[..4]);
    }

    [Fact]
    public void The_piece_in_space_stands_as_it_sits_where_that_is_asked_for_and_as_the_verb_settle_writes_it()
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, TheProgram.Run("sheet", TheProgram.Example("puddle-hop"), "--out", folder.Path, "--wrist", "170", "--glb", "--settled").Code);
        Assert.Contains("puddle-hop-coil-at-rest.glb", Files(folder.Path));
        Assert.DoesNotContain("puddle-hop-coil-worn.glb", Files(folder.Path));
        Assert.Equal(0, TheProgram.Run("settle", TheProgram.Example("puddle-hop"), "--wrist", "170", "--glb", folder["settled.glb"]).Code);
        Assert.Equal(File.ReadAllBytes(folder["settled.glb"]), File.ReadAllBytes(folder["puddle-hop-coil-as-it-sits.glb"]));
    }

    [Fact]
    public void What_finds_no_rest_has_its_sheet_without_a_model_and_says_why()
    {
        using var folder = new OwnFolder();
        // No steel is named in it.
        var plain = folder.Write("plain.piece.json", Pieces.Sound);
        var ran = TheProgram.Run("sheet", plain, "--out", folder["sheets"], "--glb", "--settled");
        Assert.Equal(2, ran.Code);
        Assert.Contains("steel is not known", ran.Error, StringComparison.Ordinal);
        Assert.Contains("plain-sheet.pdf", Files(folder["sheets"]));
        Assert.DoesNotContain(Files(folder["sheets"]), f => f!.EndsWith(".glb", StringComparison.Ordinal));
    }

    [Fact]
    public void As_it_sits_is_how_the_model_is_meant_so_it_does_not_stand_alone()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", TheProgram.Example("puddle-hop"), "--out", folder["sheets"], "--settled", "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("usage.only-with", (string?)System.Text.Json.Nodes.JsonNode.Parse(ran.Out)!["error"]!["code"]);
        Assert.False(Directory.Exists(folder["sheets"]));
    }

    [Fact]
    public void A_piece_that_cannot_be_made_has_its_sheet_with_a_warning_and_ends_with_1()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sheet", folder.Write("tight.piece.json", Pieces.With("\"boreMm\": 1.0", "\"boreMm\": 0.5")), "--out", folder["out"]);
        Assert.Equal(1, ran.Code);
        Assert.Contains("Before you cut", File.ReadAllText(folder["out/tight-sheet.html"]), StringComparison.Ordinal);
    }

    [Fact]
    public void Letters_that_cannot_be_printed_are_named_and_the_other_files_are_written()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("far.piece.json", Pieces.With("Green round", "שלום"));
        var ran = TheProgram.Run("sheet", path, "--out", folder["out"]);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains("ש (U+05E9)", ran.Error, StringComparison.Ordinal);
        Assert.Equal(SheetOf("far", hasPdf: false, hasCurve: Files(folder["out"]).Contains("far-curve.svg")), Files(folder["out"]));
        var error = JsonNode.Parse(TheProgram.Run("sheet", path, "--out", folder["out"], "--json").Out)!["error"]!;
        Assert.Equal("document.glyphs-missing", (string)error["code"]!);
    }

    [Theory]
    [InlineData("usage.option-missing", "sheet", "x")]
    [InlineData("word.unknown", "sheet", "x", "--out", "y", "--paper", "a5")]
    [InlineData("usage.length-bounds", "sheet", "x", "--out", "y", "--wrist", "9999")]
    [InlineData("file.unreadable", "sheet", "nowhere.piece.json", "--out", "y")]
    public void A_wrong_call_is_answered_and_writes_nothing(string code, params string[] args)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Shell($"cd '{folder.Path}' && $P {string.Join(' ', args)} --json");
        Assert.Equal(2, ran.Code);
        var error = JsonNode.Parse(ran.Out)!["error"]!;
        Assert.Equal(code, (string)error["code"]!);
        Assert.DoesNotContain("...", (string)error["message"]!, StringComparison.Ordinal);
        Assert.Empty(Files(folder.Path));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_an_error_that_names_it()
    {
        using var folder = new OwnFolder();
        var file = folder.Write("file", "in the way");
        var ran = TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", file);
        Assert.Equal(2, ran.Code);
        Assert.Contains(file, ran.Error, StringComparison.Ordinal);
        Assert.Equal(["file"], Files(folder.Path));
    }

    [Fact]
    public void When_a_later_file_cannot_be_written_those_that_are_written_are_named()
    {
        using var folder = new OwnFolder();
        Directory.CreateDirectory(folder["boardwalk-coil.svg"]);
        var ran = TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", folder.Path);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.DoesNotContain("Nothing was written", ran.Error, StringComparison.Ordinal);
        string[] written = ["boardwalk-sheet.pdf", "boardwalk-sheet.html", "boardwalk-turns.svg"];
        Assert.All(written, f => Assert.True(new FileInfo(folder[f]).Length > 0));
        Assert.Equal(written.Order(StringComparer.Ordinal), Files(folder.Path));
        var error = JsonNode.Parse(TheProgram.Run("sheet", TheProgram.Example("boardwalk"), "--out", folder.Path, "--json").Out)!["error"]!;
        Assert.Equal("file.unwritable-after", (string)error["code"]!);
        Assert.All(written, f => Assert.Contains(f, (string)error["mend"]!, StringComparison.Ordinal));
    }

    [Fact]
    public void A_piece_from_a_pipe_is_called_piece()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Shell($"$P sheet /dev/stdin --out '{folder.Path}' < {TheProgram.Example("boardwalk")}");
        Assert.Equal(0, ran.Code);
        Assert.Equal(SheetOf("piece"), Files(folder.Path));
    }

    [Fact]
    public void Help_has_every_option_and_an_example()
    {
        var ran = TheProgram.Run("sheet", "--help");
        Assert.Equal(0, ran.Code);
        foreach (var word in new[] { "--out DIR", "--paper a4|letter", "--large-print", "--greyscale", "--ink-saving", "--glb", "--wrist MM", "--json", "coilwright sheet my-bracelet.piece.json --out sheets" })
            Assert.Contains(word, ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }
}
