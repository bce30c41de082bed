using System.Globalization;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;
using System.Text.Json.Nodes;
using Coilwright.Core.Faults;
using Coilwright.Core.Listings;
using Coilwright.Core.Readings;
using Coilwright.Documents.Packs;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tables;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Storage;
using Coilwright.Wording;
using CsvHelper;

namespace Coilwright.Documents.Tests.Packs;

/// <summary>A pack to sell a pattern with, opened by others than the one that wrote it.</summary>
public class PublishPackTests
{
    private static readonly SmallPartsCylinder Cylinder = DataFiles.LoadCautions(DataFiles.DefaultFolder).Cautions!.SmallParts;

    private static PackRequest Request(Reckoned reckoned, Language? language = null) => new()
    {
        Listing = Listing.Of(reckoned, Cylinder),
        Language = language ?? Languages.English,
        Stem = "my-bracelet",
        PieceFormat = PieceFile.Format,
        Pixels = [(320, 240), (90, 200)],
    };

    private static readonly Lazy<MadePack> Made = new(() => PublishPack.Of(Request(DrawnPieces.Reckoned("tidewrack"))));

    private static byte[] Read(ZipArchive zip, string name)
    {
        using var bytes = new MemoryStream();
        using var entry = zip.GetEntry(name)!.Open();
        entry.CopyTo(bytes);
        return bytes.ToArray();
    }

    [Fact]
    public void Every_file_is_in_it_once_and_is_what_the_manifest_says()
    {
        using var zip = new ZipArchive(new MemoryStream(Made.Value.Zip.ToArray()));
        var manifest = JsonNode.Parse(Read(zip, "manifest.json"))!;
        string[] pictures = [.. from picture in (string[])["coil", "near", "turns", "key"] from size in (string[])["320x240", "90x200"] select $"pictures/{picture}-{size}.png"];
        string[] documents = [.. from kind in DocumentKinds.All from ending in (string[])[".pdf", ".html"] select $"my-bracelet-{kind.Name}{ending}"];
        Assert.Equal([.. documents, .. pictures, "coil.glb", "materials.csv", "listing.txt", "manifest.json"], zip.Entries.Select(e => e.FullName));
        Assert.Equal(zip.Entries.Select(e => e.FullName).SkipLast(1), manifest["files"]!.AsArray().Select(f => (string)f!["name"]!));
        foreach (var file in manifest["files"]!.AsArray())
        {
            var bytes = Read(zip, (string)file!["name"]!);
            Assert.Equal((long)file["bytes"]!, bytes.Length);
            Assert.Equal((string)file["sha256"]!, Convert.ToHexStringLower(SHA256.HashData(bytes)));
            if ((string)file["is"]! != "picture") continue;
            var png = Png.Read(bytes);
            Assert.Equal(($"{file["widthPx"]}x{file["heightPx"]}", true), ($"{png.Width}x{png.Height}", ((string)file["name"]!).EndsWith($"{png.Width}x{png.Height}.png", StringComparison.Ordinal)));
            Assert.True(png.Colours > 20);
        }
        Assert.Equal("%PDF-"u8.ToArray(), Read(zip, "my-bracelet-sheet.pdf")[..5]);
        Assert.Null(manifest["made"]);
    }

    [Fact]
    public void Another_program_tests_and_opens_it()
    {
        using var place = new Workplace();
        var file = place.File("pack.zip", Made.Value.Zip);
        var listed = Programs.Output("python3", "-c", "import zipfile, sys\nz = zipfile.ZipFile(sys.argv[1])\nassert z.testzip() is None\nfor i in z.infolist(): print(i.filename, i.file_size, i.date_time[0], oct(i.external_attr >> 16))", file);
        Assert.Equal(Made.Value.Files.Select(f => $"{f.Name} {f.Bytes.Length} 1980 0o100644"), listed.Split('\n', StringSplitOptions.RemoveEmptyEntries).SkipLast(1));
    }

    [Fact]
    public void The_same_request_gives_the_same_bytes_in_any_locale()
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = new CultureInfo("de-DE");
        try
        {
            Assert.True(Made.Value.Zip.Span.SequenceEqual(PublishPack.Of(Request(DrawnPieces.Reckoned("tidewrack"))).Zip.Span));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void A_time_that_is_given_stands_in_the_manifest_and_nowhere_else()
    {
        var made = PublishPack.Of(Request(DrawnPieces.Reckoned("tidewrack")) with { Made = new DateTimeOffset(2031, 5, 6, 1, 2, 3, TimeSpan.FromHours(2)) });
        using var zip = new ZipArchive(new MemoryStream(made.Zip.ToArray()));
        Assert.Equal("2031-05-05T23:02:03Z", (string)JsonNode.Parse(Read(zip, "manifest.json"))!["made"]!);
        Assert.Equal(Made.Value.Files.Select(f => f.Sha256), made.Files.Select(f => f.Sha256));
    }

    [Fact]
    public void The_table_of_materials_has_every_bead_its_count_and_the_wire()
    {
        var reckoned = DrawnPieces.Reckoned("tidewrack");
        var file = Made.Value.Files.Single(f => f.Kind == PackedKind.Materials);
        using var csv = new CsvReader(new StringReader(Encoding.UTF8.GetString(file.Bytes.Span)), CultureInfo.InvariantCulture);
        var rows = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        Assert.Equal(reckoned.Counts.Select(k => (k.Letter, k.Bead.Id, k.Bead.Name, k.Count.ToString(CultureInfo.InvariantCulture))),
            rows.SkipLast(1).Select(r => ((string)r["letter"], (string)r["item"], (string)r["name"], (string)r["use"])));
        Assert.Equal("wire", rows[^1]["item"]);
        Assert.Equal(reckoned.Wire.CutMm, double.Parse((string)rows[^1]["lengthMm"], CultureInfo.InvariantCulture), 0.00005);
        Assert.Equal(reckoned.Wire.LoopsToCut, double.Parse((string)rows[^1]["use"], CultureInfo.InvariantCulture), 0.00005);
    }

    [Fact]
    public void A_name_that_a_program_would_reckon_stays_a_name()
    {
        var piece = DrawnPieces.Single();
        var reckoned = DrawnPieces.Reckon(piece with { Beads = [DrawnPieces.Named("=1+2, \"odd\"", piece.Beads[0])] });
        using var csv = new CsvReader(new StringReader(Encoding.UTF8.GetString(MaterialsTable.Csv(reckoned, Languages.English))), CultureInfo.InvariantCulture);
        var rows = csv.GetRecords<dynamic>().Cast<IDictionary<string, object>>().ToList();
        Assert.Equal("'=1+2, \"odd\"", rows[0]["name"]);
    }

    [Fact]
    public void Pictures_say_what_they_show_in_the_language_asked_for()
    {
        var made = PublishPack.Of(Request(DrawnPieces.Reckoned("tidewrack"), Languages.Find("de")));
        Assert.Contains(made.Files, f => f.About.Contains("Windungen", StringComparison.Ordinal));
        Assert.DoesNotContain(made.Files, f => f.About.Contains('{') || f.About.Length == 0);
        Assert.Contains("Memory-Draht", Encoding.UTF8.GetString(made.Files.Single(f => f.Kind == PackedKind.Listing).Bytes.Span), StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_whose_letters_cannot_be_printed_is_no_pack_and_is_told_once()
    {
        var made = PublishPack.Of(Request(DrawnPieces.Reckon(DrawnPieces.Single() with { Title = "珠" })));
        Assert.True(made.Zip.IsEmpty);
        Assert.Empty(made.Files);
        Assert.NotEmpty(made.Faults);
        Assert.All(made.Faults, f => Assert.Equal(FaultCodes.DocumentGlyphsMissing, f.Code));
        Assert.Equal(made.Faults.Distinct(), made.Faults);
    }

    [Fact]
    public void The_paper_is_heeded()
    {
        var made = PublishPack.Of(Request(DrawnPieces.Reckoned("tidewrack")) with { Setup = new PageSetup { Paper = Paper.Letter } });
        using var place = new Workplace();
        Assert.Contains("612 x 792", Programs.Output("pdfinfo", place.File("a.pdf", made.Files[0].Bytes)), StringComparison.Ordinal);
    }
}
