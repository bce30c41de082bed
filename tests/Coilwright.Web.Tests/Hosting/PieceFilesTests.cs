using System.IO.Compression;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coilwright.Storage;
using Coilwright.Web.Hosting;
using Coilwright.Web.Tests.Components;
using CsCheck;

namespace Coilwright.Web.Tests.Hosting;

public sealed partial class PieceFilesTests(RunningBench bench) : IClassFixture<RunningBench>
{
    private static readonly HttpClient Client = new();

    private async Task<string> FirstPiece() => FirstLink().Match(await Client.GetStringAsync(new Uri(bench.Address, "/pieces"))).Value;

    [Fact]
    public async Task A_piece_saved_as_a_file_is_the_piece_to_the_byte()
    {
        using var answer = await Client.GetAsync(new Uri(bench.Address, await FirstPiece() + "/file"));
        Assert.Equal("Tidewrack.piece.json", answer.Content.Headers.ContentDisposition!.FileName);
        Assert.Equal(PieceFile.Write(Examples.Tidewrack), await answer.Content.ReadAsByteArrayAsync());
    }

    [Fact]
    public async Task A_publish_pack_is_saved_as_a_zip_whose_manifest_lists_what_is_in_it()
    {
        using var answer = await Client.GetAsync(new Uri(bench.Address, await FirstPiece() + "/sheet/publish.zip?paper=letter&language=de"));
        Assert.Equal(("application/zip", "Tidewrack.zip"), (answer.Content.Headers.ContentType!.MediaType, answer.Content.Headers.ContentDisposition!.FileName));
        using var zip = new ZipArchive(await answer.Content.ReadAsStreamAsync());
        using var manifest = await JsonDocument.ParseAsync(zip.GetEntry("manifest.json")!.Open());
        Assert.Equal(("letter", "de"), (manifest.RootElement.GetProperty("paper").GetString(), manifest.RootElement.GetProperty("language").GetString()));
        Assert.Equal(zip.Entries.Select(e => e.FullName).Where(n => n != "manifest.json"), manifest.RootElement.GetProperty("files").EnumerateArray().Select(f => f.GetProperty("name").GetString()!));
    }

    [Fact]
    public async Task A_pattern_and_its_pack_are_saved_as_they_are_asked_for()
    {
        var piece = await FirstPiece();
        const string how = "?paper=letter&language=de&large=true&grey=true&spare=true";
        using var pdf = await Client.GetAsync(new Uri(bench.Address, piece + "/pattern/pattern.pdf" + how));
        Assert.Equal(("application/pdf", "Tidewrack-pattern.pdf"), (pdf.Content.Headers.ContentType!.MediaType, pdf.Content.Headers.ContentDisposition!.FileName));
        Assert.Contains("/MediaBox[0 0 612 792]", Encoding.Latin1.GetString(await pdf.Content.ReadAsByteArrayAsync()), StringComparison.Ordinal);
        using var pack = new ZipArchive(await Client.GetStreamAsync(new Uri(bench.Address, piece + "/pattern/publish.zip" + how)));
        using var manifest = await JsonDocument.ParseAsync(pack.GetEntry("manifest.json")!.Open());
        Assert.All(["largePrint", "greyscale", "inkSaving"], name => Assert.True(manifest.RootElement.GetProperty(name).GetBoolean()));
        // The page that is saved is the one in the pack, and the one that is looked at.
        using var packed = new StreamReader(pack.GetEntry("Tidewrack-pattern.html")!.Open());
        var saved = await Client.GetStringAsync(new Uri(bench.Address, piece + "/pattern/pattern.html" + how));
        Assert.Equal(await packed.ReadToEndAsync(), saved);
        Assert.Equal(saved, await Client.GetStringAsync(new Uri(bench.Address, piece + "/pattern/look.html" + how)));
        Assert.Contains("lang=\"de\"", saved, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_pieces_rows_are_a_picture_that_may_be_kept()
    {
        using var answer = await Client.GetAsync(new Uri(bench.Address, await FirstPiece() + "/rows/1.svg"));
        Assert.Equal("image/svg+xml", answer.Content.Headers.ContentType!.MediaType);
        Assert.True(answer.Headers.CacheControl!.MaxAge > TimeSpan.FromDays(1));
        Assert.Contains("Tidewrack", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "top of the wrist")]
    [InlineData("?language=de", "Oberseite")]
    [InlineData("?language=nowhere", "top of the wrist")]
    public async Task A_pieces_rows_speak_the_language_asked_for(string query, string words) =>
        Assert.Contains(words, await Client.GetStringAsync(new Uri(bench.Address, await FirstPiece() + "/rows/1.svg" + query)), StringComparison.Ordinal);

    [Theory]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/file")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/rows/1.svg")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/sheet/publish.zip")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/pattern/pattern.pdf")]
    [InlineData("/piece/00000000-0000-0000-0000-000000000000/pattern/errata/errata.pdf?old=1&new=1")]
    [InlineData("/piece/../../etc/passwd/file")]
    public async Task What_is_not_there_is_not_found(string path)
    {
        using var answer = await Client.GetAsync(new Uri(bench.Address, path));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("")]
    [InlineData("?old=1")]
    [InlineData("?old=1&new=99")]
    [InlineData("?old=0&new=1")]
    [InlineData("?old=-1&new=x")]
    public async Task Corrections_between_states_that_the_shelf_has_not_are_not_found(string query)
    {
        using var answer = await Client.GetAsync(new Uri(bench.Address, await FirstPiece() + "/pattern/errata/errata.pdf" + query));
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Theory]
    [InlineData("Tidewrack", "Tidewrack")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("C:\\con?*\"<>|", "C-con")]
    [InlineData("<script>alert(1)</script>", "script-alert(1)-script")]
    [InlineData("Meeresgrün, drei Reihen", "Meeresgrün, drei Reihen")]
    [InlineData("\u202Egnp", "gnp")]
    [InlineData("🪨", "piece")]
    [InlineData("...", "piece")]
    public void A_title_becomes_a_name_that_any_system_takes(string title, string expected) => Assert.Equal(expected, PieceFiles.FileName(title));

    [Fact]
    public void Whatever_the_title_the_name_is_no_path_and_not_too_long() =>
        Gen.String.Sample(title => PieceFiles.FileName(title) is var name && name.Length is > 0 and <= 61 && name.IndexOfAny(['/', '\\', ':', '\0', '.']) < 0);

    [GeneratedRegex("/piece/[0-9a-f-]{36}")]
    private static partial Regex FirstLink();
}
