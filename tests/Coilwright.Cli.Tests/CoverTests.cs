using System.IO.Compression;
using System.Text;
using System.Text.Json.Nodes;
using Coilwright.Core.Pieces;
using Coilwright.Documents.Tests.Rasters;

namespace Coilwright.Cli.Tests;

/// <summary><c>--cover</c> of <c>pattern</c> and <c>publish</c>: a picture of hers on the cover, or why it cannot be there.</summary>
public class CoverTests
{
    private static string Written(OwnFolder folder, string name, byte[] bytes)
    {
        File.WriteAllBytes(folder[name], bytes);
        return folder[name];
    }

    [Fact]
    public void A_picture_stands_on_the_cover_and_says_nothing_of_its_taking()
    {
        const string secret = "47.3769N 8.5417E";
        using var folder = new OwnFolder();
        var jpeg = SampleRasters.Jpeg(800, 600);
        byte[] exif = [.. "Exif\0\0"u8, .. Encoding.ASCII.GetBytes(secret)];
        var photo = Written(folder, "photo.jpg", [.. jpeg[..2], 0xFF, 0xE1, 0, (byte)(exif.Length + 2), .. exif, .. jpeg[2..]]);
        var ran = TheProgram.Run("pattern", TheProgram.Example("boardwalk"), "--out", folder["made"], "--cover", photo);
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        Assert.Contains("data:image/jpeg;base64," + Convert.ToBase64String(jpeg), File.ReadAllText(folder["made/boardwalk-pattern.html"]), StringComparison.Ordinal);
        var pdf = File.ReadAllBytes(folder["made/boardwalk-pattern.pdf"]);
        Assert.True(pdf.AsSpan().IndexOf(jpeg) > 0);
        Assert.True(pdf.AsSpan().IndexOf(Encoding.ASCII.GetBytes(secret)) < 0);
    }

    [Fact]
    public void A_pack_has_it_on_its_cover_and_in_every_size()
    {
        using var folder = new OwnFolder();
        var photo = Written(folder, "photo.png", SampleRasters.Png(800, 600));
        var ran = TheProgram.Run("publish", TheProgram.Example("boardwalk"), "--out", folder["b.zip"], "--pixels", "120x90", "--pixels", "90x120", "--cover", photo, "--json");
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        new AnswerSchema("publish").Valid(ran.Out);
        using var zip = ZipFile.OpenRead(folder["b.zip"]);
        using var reader = new StreamReader(zip.GetEntry("manifest.json")!.Open());
        var told = new AnswerSchema("pack").Valid(reader.ReadToEnd())["files"]!.AsArray().Where(f => ((string)f!["name"]!).StartsWith("pictures/cover-", StringComparison.Ordinal)).ToArray();
        Assert.Equal(["pictures/cover-120x90.png", "pictures/cover-90x120.png"], told.Select(f => (string)f!["name"]!));
        Assert.All(told, f => Assert.Equal("Boardwalk, the finished piece", (string)f!["about"]!));
        using var page = new StreamReader(zip.GetEntry("boardwalk-pattern.html")!.Open());
        Assert.Contains("data:image/png;base64,", page.ReadToEnd(), StringComparison.Ordinal);
    }

    public static TheoryData<string, string> Unfit => new()
    {
        { "nowhere.jpg", "file.unreadable" },
        { "letter.jpg", "photo.kind" },
        { "cut.png", "photo.broken" },
        { "huge.png", "photo.too-many-pixels" },
        { "dot.png", "photo.too-small" },
        { "heavy.jpg", "photo.too-large" },
    };

    [Theory, MemberData(nameof(Unfit))]
    public void What_cannot_be_printed_is_told_with_its_file_and_nothing_is_written(string name, string code)
    {
        using var folder = new OwnFolder();
        byte[]? bytes = name switch
        {
            "letter.jpg" => "Dear customer"u8.ToArray(),
            "cut.png" => SampleRasters.Png(400, 300)[..400],
            "huge.png" => SampleRasters.BlackPng(10_000, 10_000),
            "dot.png" => SampleRasters.BlackPng(1, 1),
            "heavy.jpg" => [0xFF, 0xD8, 0xFF, .. new byte[PhotoSize.MostBytes]],
            _ => null,
        };
        if (bytes is not null) Written(folder, name, bytes);
        foreach (var verb in new[] { "pattern", "publish" })
        {
            var ran = TheProgram.Run(verb, TheProgram.Example("boardwalk"), "--out", folder["made"], "--cover", folder[name], "--json");
            Assert.Equal(2, ran.Code);
            var error = JsonNode.Parse(ran.Out)!["error"]!;
            Assert.Equal((code, folder[name]), ((string)error["code"]!, (string)error["file"]!));
            Assert.False(Path.Exists(folder["made"]));
        }
    }
}
