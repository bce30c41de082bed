using System.IO.Compression;
using System.Security.Cryptography;

namespace Coilwright.Cli.Tests;

/// <summary><c>publish</c>: what it writes, what it says, and what it refuses.</summary>
public class PublishTests
{
    private static readonly AnswerSchema Schema = new("publish"), Manifest = new("pack");

    private static readonly string[] Small = ["--pixels", "120x90"];

    [Fact]
    public void A_zip_is_written_with_a_manifest_by_its_schema_and_the_answer_tells_the_same_files()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], .. Small, "--pixels", "90x120", "--paper", "letter", "--json"]);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        var answer = Schema.Valid(ran.Out);
        Assert.Equal(new FileInfo(folder["b.zip"]).Length, (long)answer["bytes"]!);
        Assert.Equal(["b.zip"], Directory.GetFiles(folder.Path).Select(Path.GetFileName));
        using var zip = ZipFile.OpenRead(folder["b.zip"]);
        using var reader = new StreamReader(zip.GetEntry("manifest.json")!.Open());
        var manifest = Manifest.Valid(reader.ReadToEnd());
        Assert.Equal("letter", (string)manifest["paper"]!);
        Assert.Equal(answer["files"]!.AsArray().Select(f => (string)f!["sha256"]!), manifest["files"]!.AsArray().Select(f => (string)f!["sha256"]!));
        foreach (var file in manifest["files"]!.AsArray())
        {
            using var entry = zip.GetEntry((string)file!["name"]!)!.Open();
            Assert.Equal((string)file["sha256"]!, Convert.ToHexStringLower(SHA256.HashData(entry)));
        }
        Assert.Equal(8, zip.Entries.Count(e => e.FullName.EndsWith(".png", StringComparison.Ordinal)));
    }

    [Fact]
    public void How_it_is_printed_is_heeded_by_every_document_and_told_and_pictures_stay_as_they_are()
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["usual.zip"], .. Small]).Code);
        Assert.Equal(0, TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["other.zip"], .. Small, "--large-print", "--greyscale", "--ink-saving"]).Code);
        using ZipArchive usual = ZipFile.OpenRead(folder["usual.zip"]), other = ZipFile.OpenRead(folder["other.zip"]);
        Assert.Equal(usual.Entries.Select(e => e.FullName), other.Entries.Select(e => e.FullName));
        foreach (var (zip, told) in new[] { (usual, false), (other, true) })
        {
            var manifest = Manifest.Valid(Text(zip, "manifest.json"));
            Assert.Equal((told, told, told), ((bool)manifest["largePrint"]!, (bool)manifest["greyscale"]!, (bool)manifest["inkSaving"]!));
            string[] pages = [.. zip.Entries.Select(e => e.FullName).Where(n => n.EndsWith(".html", StringComparison.Ordinal))];
            Assert.Equal(2, pages.Length);
            foreach (var page in pages.Select(name => Text(zip, name)))
            {
                Assert.Equal(told, PaperMarks.IsLarge(page));
                Assert.Equal(told, PaperMarks.IsGrey(page));
                Assert.Equal(told, PaperMarks.HasNoGround(page));
            }
        }
        foreach (var picture in usual.Entries.Where(e => e.FullName.EndsWith(".png", StringComparison.Ordinal)))
            Assert.Equal(picture.Crc32, other.GetEntry(picture.FullName)!.Crc32);
    }

    [Fact]
    public void Colourways_stand_in_its_pattern_and_another_order_is_none()
    {
        using var folder = new OwnFolder();
        var dusk = folder.Write("dusk.piece.json", File.ReadAllText(Path.Combine(TheProgram.Root, TheProgram.Example("boardwalk"))).Replace("\"Boardwalk\"", "\"Boardwalk at dusk\"", StringComparison.Ordinal));
        Assert.Equal(0, TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], .. Small, "--colourway", dusk]).Code);
        using (var zip = ZipFile.OpenRead(folder["b.zip"])) Assert.Contains("Boardwalk at dusk", Text(zip, "boardwalk-pattern.html"), StringComparison.Ordinal);
        var ran = TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["none.zip"], .. Small, "--colourway", TheProgram.Example("tidewrack")]);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("Tidewrack", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["none.zip"]));
    }

    [Fact]
    public void Its_model_stands_as_it_sits_where_that_is_asked_for_and_the_manifest_says_so()
    {
        using var folder = new OwnFolder();
        Assert.Equal(0, TheProgram.Run(["publish", TheProgram.Example("puddle-hop"), "--out", folder["quick.zip"], .. Small]).Code);
        Assert.Equal(0, TheProgram.Run(["publish", TheProgram.Example("puddle-hop"), "--out", folder["sits.zip"], .. Small, "--settled"]).Code);
        using ZipArchive quick = ZipFile.OpenRead(folder["quick.zip"]), sits = ZipFile.OpenRead(folder["sits.zip"]);
        Assert.Contains("\"pose\":\"worn\"", Text(quick, "coil.glb"), StringComparison.Ordinal);
        Assert.Contains("\"pose\":\"settled\"", Text(sits, "coil.glb"), StringComparison.Ordinal);
        string About(ZipArchive zip) => (string)Manifest.Valid(Text(zip, "manifest.json"))["files"]!.AsArray().Single(f => (string)f!["name"]! == "coil.glb")!["about"]!;
        Assert.StartsWith("The piece as worn", About(quick), StringComparison.Ordinal);
        Assert.StartsWith("The piece as it sits", About(sits), StringComparison.Ordinal);
        // Only the model is another, and so is what tells of it.
        Assert.Equal(["coil.glb", "manifest.json"], quick.Entries.Where(e => e.Crc32 != sits.GetEntry(e.FullName)!.Crc32).Select(e => e.FullName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void What_finds_no_rest_is_no_pack_as_it_sits()
    {
        using var folder = new OwnFolder();
        // No steel is named in it.
        var ran = TheProgram.Run(["publish", folder.Write("plain.piece.json", Pieces.Sound), "--out", folder["none.zip"], .. Small, "--settled"]);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("steel is not known", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["none.zip"]));
    }

    private static string Text(ZipArchive zip, string name)
    {
        using var reader = new StreamReader(zip.GetEntry(name)!.Open());
        return reader.ReadToEnd();
    }

    [Fact]
    public void The_same_call_writes_the_same_bytes_under_any_locale_and_clock()
    {
        using var folder = new OwnFolder();
        foreach (var (place, locale) in new[] { ("one", "C.UTF-8"), ("two", "de_DE.UTF-8") })
            Assert.Equal(0, TheProgram.Run([("LANG", locale), ("LC_ALL", locale), ("TZ", place == "one" ? "UTC" : "Asia/Tokyo")], ["publish", TheProgram.Example("boardwalk"), "--out", folder[place], .. Small]).Code);
        Assert.Equal(File.ReadAllBytes(folder["one"]), File.ReadAllBytes(folder["two"]));
    }

    [Theory]
    [InlineData("--pixels", "120")]
    [InlineData("--pixels", "120x")]
    [InlineData("--pixels", "15x100")]
    [InlineData("--pixels", "99999x99999")]
    [InlineData("--pixels", "10000x10000")]
    [InlineData("--pixels", "-5x100")]
    [InlineData("--paper", "a3")]
    [InlineData("--language", "xx")]
    public void A_wrong_option_is_told_and_nothing_is_written(string option, string value)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], option + "=" + value);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains(value, ran.Error, StringComparison.Ordinal);
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void Too_many_sizes_a_missing_target_and_an_unwritable_one_are_told()
    {
        using var folder = new OwnFolder();
        string[] many = [.. Enumerable.Range(100, 13).SelectMany(w => new[] { "--pixels", w + "x100" })];
        Assert.Contains("13", TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], .. many]).Error, StringComparison.Ordinal);
        Assert.Contains("--out", TheProgram.Run("publish", TheProgram.Example("boardwalk")).Error, StringComparison.Ordinal);
        var ran = TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["none/b.zip"], .. Small]);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Empty(Directory.GetFiles(folder.Path));
    }

    [Fact]
    public void What_cannot_be_printed_leaves_no_half_pack()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run(["publish", folder.Write("odd.piece.json", Pieces.With("Two turns", "珠")), "--out", folder["b.zip"], .. Small]);
        Assert.Equal((2, ""), (ran.Code, ran.Out));
        Assert.Contains("U+73E0", ran.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["b.zip"]));
    }

    [Fact]
    public void The_language_asked_for_is_spoken()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run(["publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], .. Small, "--language", "de", "--white"]);
        Assert.StartsWith("Geschrieben: ", ran.Out, StringComparison.Ordinal);
    }
}
