using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Patterns;
using Coilwright.Documents.Tests.Rasters;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Wording;
using UglyToad.PdfPig;

namespace Coilwright.Documents.Tests.Patterns;

/// <summary>A pattern with a picture on its cover, read back by programs that share no code with it.</summary>
public sealed partial class CoverTests : IDisposable
{
    private static readonly Dictionary<string, PageSetup> Setups = new()
    {
        ["a4"] = new(),
        ["letter"] = new() { Paper = Paper.Letter },
        ["large print"] = new() { LargePrint = true },
        ["grey"] = new() { Greyscale = true },
        ["ink saving"] = new() { InkSaving = true },
    };

    private static readonly Core.Readings.Reckoned Piece = DrawnPieces.Reckoned("tidewrack");

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    private static DocumentFile File(string name, byte[]? picture, PageSetup? setup = null, Language? language = null, bool isStill = false)
    {
        var cover = picture is null ? null : new CoverPicture(SampleRasters.Read(picture), isStill);
        return DocumentFiles.Pages(DocumentKinds.Pattern([], cover), Piece, setup ?? new PageSetup(), language ?? Languages.English).Single(f => f.Name == name);
    }

    private (string Path, byte[] Bytes) Pdf(byte[]? picture, PageSetup? setup = null, Language? language = null, bool isStill = false)
    {
        var file = File("pattern.pdf", picture, setup, language, isStill);
        Assert.Empty(file.Faults);
        return (_place.File("pattern.pdf", file.Bytes), file.Bytes.ToArray());
    }

    // What poppler lists of the pictures in a file, without its page and place.
    private static (string Type, string Size, string Colour, string Coded, string AcrossDpi, string DownDpi)[] Listed(string pdf) =>
        [.. Programs.Output("pdfimages", "-list", pdf).Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(2).Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .Select(row => (row[2], row[3] + "x" + row[4], row[5] + " " + row[6] + "x" + row[7], row[8], row[12], row[13]))];

    // The colour of the page in the middle of each quarter of its one picture.
    private static (byte Red, byte Green, byte Blue)[] Quarters(string path, byte[] bytes)
    {
        const int dpi = 100;
        using var pdf = PdfDocument.Open(bytes);
        var page = pdf.GetPage(1);
        var box = Assert.Single(page.GetImages()).BoundingBox;
        var drawn = Poppler.Draw(path, 1, dpi);
        return [.. new[] { (1, 3), (3, 3), (1, 1), (3, 1) }.Select(at => drawn[(int)((box.Left + box.Width * at.Item1 / 4) * dpi / 72), (int)((page.Height - box.Bottom - box.Height * at.Item2 / 4) * dpi / 72)])];
    }

    private static void Near((int R, int G, int B) expected, (byte R, byte G, byte B) actual, int off) =>
        Assert.True(Math.Max(Math.Abs(expected.R - actual.R), Math.Max(Math.Abs(expected.G - actual.G), Math.Abs(expected.B - actual.B))) <= off, $"{actual} for {expected}");

    [Theory]
    [InlineData("a4", true), InlineData("letter", true), InlineData("large print", true), InlineData("a4", false)]
    public void A_reader_finds_the_picture_whole_with_its_colours_at_150_dots_to_the_inch_and_more(string setup, bool isJpeg)
    {
        var (path, bytes) = Pdf(isJpeg ? SampleRasters.Jpeg(1600, 1200) : SampleRasters.Png(1600, 1200), Setups[setup]);
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", path), StringComparison.Ordinal);
        var listed = Assert.Single(Listed(path));
        Assert.Equal(("image", "1600x1200", "rgb 3x8", isJpeg ? "jpeg" : "image"), (listed.Type, listed.Size, listed.Colour, listed.Coded));
        Assert.InRange(int.Parse(listed.AcrossDpi, CultureInfo.InvariantCulture), 150, 600);
        Assert.Equal(listed.AcrossDpi, listed.DownDpi);
        var seen = Quarters(path, bytes);
        // JPEG gives an even area back to within three steps; PNG to the step.
        for (var quarter = 0; quarter < 4; quarter++) Near((SampleRasters.Quarters[quarter].Red, SampleRasters.Quarters[quarter].Green, SampleRasters.Quarters[quarter].Blue), seen[quarter], isJpeg ? 3 : 1);
    }

    [Fact]
    public void A_picture_of_few_pixels_is_small_on_paper_rather_than_coarse()
    {
        Assert.Equal("150", Assert.Single(Listed(Pdf(SampleRasters.Png(300, 200)).Path)).AcrossDpi);
        Assert.Equal("150", Assert.Single(Listed(Pdf(SampleRasters.Png(300, 200), Setups["large print"]).Path)).AcrossDpi);
    }

    [Theory]
    [InlineData("en", false), InlineData("de", false), InlineData("en", true), InlineData("de", true)]
    public void It_is_a_figure_that_says_what_it_shows_and_beneath_it_stands_whether_it_was_drawn(string code, bool isStill)
    {
        var language = Languages.Find(code)!;
        var (path, bytes) = Pdf(SampleRasters.Jpeg(1600, 1200), null, language, isStill);
        var told = Spaces().Replace(Programs.Output("pdfinfo", "-struct-text", path), " ");
        var caption = language.Fill(isStill ? language.Pattern.CoverStill : language.Pattern.CoverPhoto, ("title", Piece.Piece.Title));
        var figure = told.IndexOf(" Figure: ", StringComparison.Ordinal);
        Assert.True(figure > told.IndexOf("H1 (block)", StringComparison.Ordinal));
        Assert.InRange(told.IndexOf(caption, StringComparison.Ordinal), figure, told.IndexOf("H2 (block)", StringComparison.Ordinal));
        var alt = language.Fill(language.Pattern.CoverAlt, ("title", Piece.Piece.Title), ("beads", Piece.Lie.Count), ("turns", language.Number(Piece.Fit.TurnsWorn, 1)));
        Assert.Contains("/Alt(" + alt + ")", Encoding.Latin1.GetString(bytes), StringComparison.Ordinal);
    }

    [Fact]
    public void Grey_paper_has_a_grey_picture()
    {
        foreach (var picture in new[] { SampleRasters.Jpeg(1600, 1200), SampleRasters.Png(1600, 1200) })
        {
            var (path, bytes) = Pdf(picture, Setups["grey"]);
            Assert.Equal("gray 1x8", Assert.Single(Listed(path)).Colour);
            var seen = Quarters(path, bytes);
            for (var quarter = 0; quarter < 4; quarter++)
            {
                var colour = SampleRasters.Quarters[quarter];
                var level = new Srgb(colour.Red, colour.Green, colour.Blue).Grey().Red;
                Near((level, level, level), seen[quarter], 3);
            }
            Assert.DoesNotContain(Convert.ToBase64String(picture), Encoding.UTF8.GetString(File("pattern.html", picture, Setups["grey"]).Bytes.Span), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Where_ink_is_spared_the_coil_is_drawn_as_without_a_picture() =>
        Assert.Equal(Pdf(null, Setups["ink saving"]).Bytes, Pdf(SampleRasters.Jpeg(1600, 1200), Setups["ink saving"]).Bytes);

    [Fact]
    public void What_is_see_through_shows_the_paper()
    {
        var (path, bytes) = Pdf(SampleRasters.Png(900, 900, opacity: 0x80));
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", path), StringComparison.Ordinal);
        Assert.Equal(["image", "smask"], Listed(path).Select(l => l.Type));
        var seen = Quarters(path, bytes);
        // Half of the colour and half of white, each rounded once: two steps.
        for (var quarter = 0; quarter < 4; quarter++)
        {
            int Half(byte channel) => (int)Math.Round(channel * 128 / 255.0 + 127);
            Near((Half(SampleRasters.Quarters[quarter].Red), Half(SampleRasters.Quarters[quarter].Green), Half(SampleRasters.Quarters[quarter].Blue)), seen[quarter], 2);
        }
    }

    [Fact]
    public void The_same_picture_gives_the_same_file() => Assert.Equal(Pdf(SampleRasters.Png(1600, 1200)).Bytes, Pdf(SampleRasters.Png(1600, 1200)).Bytes);

    [Fact]
    public void The_cover_keeps_to_one_page_as_it_does_with_the_coil()
    {
        foreach (var (name, setup) in Setups)
            Assert.True(FirstOf(Pdf(SampleRasters.Jpeg(1600, 1200), setup).Path) == FirstOf(Pdf(null, setup).Path), name);

        // On which page the materials begin.
        int FirstOf(string pdf) => Enumerable.Range(1, 9).First(page => Programs.Output("pdftotext", "-f", page.ToString(CultureInfo.InvariantCulture), "-l", page.ToString(CultureInfo.InvariantCulture), pdf, "-").Contains(Languages.English.Sheet.Materials + "\n", StringComparison.Ordinal));
    }

    [Fact]
    public void A_browser_shows_it_and_the_page_is_valid()
    {
        var jpeg = SampleRasters.Jpeg(1600, 1200);
        var page = Encoding.UTF8.GetString(File("pattern.html", jpeg).Bytes.Span);
        Assert.Contains("data:image/jpeg;base64," + Convert.ToBase64String(jpeg), page, StringComparison.Ordinal);
        var (_, output, complaint) = Programs.Run("java", ["-jar", Path.Combine(Programs.NodeModules, "vnu-jar/build/dist/vnu.jar"), "--format", "json", "--stdout", _place.File("cover.html", Encoding.UTF8.GetBytes(page))]);
        using var told = JsonDocument.Parse(output.Length > 0 ? output : complaint);
        Assert.Equal("", string.Join("\n", told.RootElement.GetProperty("messages").EnumerateArray().Select(m => m.GetProperty("message").GetString())));
        var axe = System.IO.File.ReadAllText(Path.Combine(Programs.NodeModules, "axe-core/axe.min.js"));
        var found = Chromium.Ask(page.Replace("</main>", "</main><script>" + axe + "</script>", StringComparison.Ordinal), 360, """
            {
              const r = await axe.run();
              const box = document.querySelector(".picture.centred image").getBoundingClientRect();
              return { wrong: r.violations.map(v => v.id), left: box.left, right: document.documentElement.clientWidth - box.right, shape: box.width / box.height };
            }
            """);
        Assert.Equal(0, found.GetProperty("wrong").GetArrayLength());
        Assert.InRange(found.GetProperty("left").GetDouble(), 0, 40);
        Assert.True(found.GetProperty("right").GetDouble() >= 0);
        // Sides are told to a thousandth of a millimetre of some 100.
        Assert.Equal(4 / 3.0, found.GetProperty("shape").GetDouble(), 0.001);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();
}
