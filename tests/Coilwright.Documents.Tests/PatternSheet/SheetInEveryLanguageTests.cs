using System.Collections.Concurrent;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coilwright.Documents.Pages;
using Coilwright.Documents.PatternSheet;
using Coilwright.Documents.Strips;
using Coilwright.Documents.Tests.Patterns;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.PatternSheet;

/// <summary>The finished sheet, in every language and on both papers, read back by programs that share no code with it.</summary>
public sealed partial class SheetInEveryLanguageTests : IDisposable
{
    private static readonly Dictionary<string, PageSetup> Setups = new()
    {
        ["a4"] = new(),
        ["letter"] = new() { Paper = Paper.Letter },
        ["large print"] = new() { LargePrint = true },
    };

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    // Of the pieces one with a focal and named groups, one plain repeat, one single turn.
    private static readonly string[] Pieces = ["tidewrack", "boardwalk", "puddle-hop"];

    public static TheoryData<string, string, string> All()
    {
        var all = new TheoryData<string, string, string>();
        foreach (var language in Languages.All)
            foreach (var piece in Pieces)
                foreach (var setup in Setups.Keys)
                    // Paper and print are told apart on the longest sheet alone.
                    if (setup == "a4" || piece == Pieces[0]) all.Add(language.Code, piece, setup);
        return all;
    }

    public static TheoryData<string, string> InLanguages()
    {
        var all = new TheoryData<string, string>();
        foreach (var language in Languages.All)
            foreach (var piece in Pieces) all.Add(language.Code, piece);
        return all;
    }

    private static Language Of(string code) => Languages.Find(code)!;

    private static readonly ConcurrentDictionary<(string, string, string), DocumentFile[]> Made = new();

    private static DocumentFile[] MakeFiles(string code, string piece, string setup) =>
        [.. DocumentFiles.Of(DocumentKinds.PatternSheet, DrawnPieces.Reckoned(piece), Setups[setup], Of(code))];

    // Made once for all tests: they only read.
    private static DocumentFile[] Files(string code, string piece, string setup = "a4") => Made.GetOrAdd((code, piece, setup), _ => MakeFiles(code, piece, setup));

    private string Pdf(string code, string piece, string setup = "a4") => _place.File("sheet.pdf", Files(code, piece, setup).Single(f => f.Name == "sheet.pdf").Bytes);

    private static string Html(string code, string piece, string setup = "a4") =>
        Encoding.UTF8.GetString(Files(code, piece, setup).Single(f => f.Name == "sheet.html").Bytes.Span);

    private static string Collapsed(string text) => Spaces().Replace(text, " ").Trim();

    [Theory, MemberData(nameof(All))]
    public void The_file_is_sound_its_faces_are_in_it_and_its_parts_are_tagged_in_order(string code, string piece, string setup)
    {
        var (words, pdf) = (Of(code).Sheet, Pdf(code, piece, setup));
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
        Assert.All(Programs.Output("pdffonts", pdf).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..], f => Assert.Matches(EmbeddedFace(), f));
        Assert.Matches($@"/Lang\s*\({code}\)", File.ReadAllText(pdf, Encoding.Latin1));
        var told = Collapsed(Programs.Output("pdfinfo", "-struct-text", pdf).Replace("\"", "", StringComparison.Ordinal));
        var at = -1;
        foreach (var part in new[] { $"H1 (block) {DrawnPieces.Reckoned(piece).Piece.Title}", $"H2 (block) {words.FinishedSize}", $"H2 (block) {words.Tools}",
            Of(code).Report.Cautions, $"H2 (block) {words.Materials}", "Table (block)", $"H2 (block) {words.Steps}", $"H3 (block) {words.ToBegin}", $"H3 (block) {words.ToFinish}", $"H2 (block) {words.OtherSizes}", $"H2 (block) {words.Strips}" })
        {
            var found = told.IndexOf(part, at + 1, StringComparison.Ordinal);
            Assert.True(found > at, $"{part} is not where it should be");
            at = found;
        }
        // Every figure says what it shows; pictures beside words that say it are no figures.
        Assert.All(Figures().Matches(File.ReadAllText(pdf, Encoding.Latin1)), f => Assert.Matches(@"/Alt\s*[(<]", f.Value));
        Assert.NotEmpty(Figures().Matches(File.ReadAllText(pdf, Encoding.Latin1)));
    }

    // Reference: ISO 216 A4 210 x 297 mm; ANSI/ASME Y14.1 size A (Letter) 8 1/2 x 11 in. In points, as printed by pdfinfo: two decimals at most.
    [Theory]
    [InlineData("a4", 210 / 25.4 * 72, 297 / 25.4 * 72)]
    [InlineData("letter", 612, 792)]
    public void Every_page_is_of_its_paper_upright_or_turned(string setup, double width, double height)
    {
        var boxes = PageSizes().Matches(Programs.Output("pdfinfo", "-f", "1", "-l", "99", Pdf("de", "tidewrack", setup)));
        var sizes = boxes.Select(m => (Width: double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture), Height: double.Parse(m.Groups[2].Value, CultureInfo.InvariantCulture))).ToArray();
        Assert.True(sizes.Length > 3);
        Assert.All(sizes[..^1], s => Assert.True(Math.Abs(s.Width - width) < 0.01 && Math.Abs(s.Height - height) < 0.01, $"{s}"));
        Assert.True(Math.Abs(sizes[^1].Width - height) < 0.01 && Math.Abs(sizes[^1].Height - width) < 0.01, $"{sizes[^1]}");
    }

    [Theory, MemberData(nameof(All))]
    public void Steps_read_off_the_page_string_the_piece_and_its_counts_are_those_of_the_materials(string code, string piece, string setup)
    {
        // As a reader's program hears it: without a word of the model.
        var told = Programs.Output("pdfinfo", "-struct-text", Pdf(code, piece, setup));
        var reckoned = DrawnPieces.Reckoned(piece);
        var strung = Items().Matches(told).Select(m => Collapsed(m.Groups[1].Value.Replace("\"", "", StringComparison.Ordinal))).Where(i => Stringing().IsMatch(i)).SelectMany(StepReader.Strung).ToList();
        Assert.Equal(reckoned.Piece.Order.Kinds.Select(kind => reckoned.Counts.Single(k => k.KindIndex == kind).Letter), strung);
        var page = Collapsed(Programs.Output("pdftotext", "-raw", Pdf(code, piece, setup), "-"));
        foreach (var kind in reckoned.Counts) Assert.Matches($@"{kind.Letter} (?:\S+ ){{1,24}}?{kind.Count}\b", page);
    }

    [Theory, MemberData(nameof(InLanguages))]
    public void Words_are_whole_and_whole_words_are_said(string code, string piece)
    {
        var page = Collapsed(Programs.Output("pdftotext", "-raw", Pdf(code, piece), "-"));
        var said = DocumentTexts.Of(PatternSheetDocument.Of(DrawnPieces.Reckoned(piece), null, new PageSetup(), Of(code))).Where(t => !t.Place.EndsWith(".picture", StringComparison.Ordinal) && t.Place != "words.pageOf");
        var words = page.Split(' ').ToHashSet(StringComparer.Ordinal);
        // Lines part words after a hyphen, which may leave a compound in two.
        Assert.All(said.SelectMany(t => t.Text.Split([' ', '\u00a0'])).Where(w => w.Length > 0 && w.All(char.IsLetter)), w => Assert.Contains(w, words));
    }

    // Pixels at 300 dots to the inch; a pixel at either end. A strip's ruler is as many whole centimetres as go on the turn's wire.
    [Theory, MemberData(nameof(InLanguages))]
    public void Rulers_of_the_strips_measure_what_they_say(string code, string piece)
    {
        var pdf = Pdf(code, piece);
        var pages = int.Parse(PageCount().Match(Programs.Output("pdfinfo", pdf)).Groups[1].Value, CultureInfo.InvariantCulture);
        var expected = TurnStrip.Of(DrawnPieces.Reckoned(piece), Of(code)).Select(s => Math.Max(10, 10 * (int)(s.WireMm / 10))).Append(StripsDrawing.RulerMm).ToList();
        foreach (var page in new[] { pages - 1, pages }.Where(n => n > 0).Select(n => Poppler.Draw(pdf, n, 300)))
        {
            var within = false;
            for (var y = 0; y < page.Height; y++)
            {
                int longest = 0, run = 0;
                for (var x = 0; x < page.Width; x++) longest = Math.Max(longest, run = page.Dark(x, y) ? run + 1 : 0);
                var mm = longest / 300.0 * 25.4;
                var isRuler = mm > 60;
                // The line ends at the outer edges of its last ticks.
                if (isRuler && !within && expected.FindIndex(e => mm >= e - 0.17 && mm <= e + 0.4) is >= 0 and var at) expected.RemoveAt(at);
                within = isRuler;
            }
        }
        Assert.Empty(expected);
    }

    [Theory, MemberData(nameof(InLanguages))]
    public void The_same_piece_is_the_same_files_every_time(string code, string piece)
    {
        var first = Files(code, piece);
        Assert.All(Enumerable.Range(0, 3).AsParallel().Select(_ => MakeFiles(code, piece, "a4")).ToArray(),
            again => Assert.All(first.Zip(again), p => Assert.Equal(p.First.Bytes.ToArray(), p.Second.Bytes.ToArray())));
    }

    [Theory, MemberData(nameof(InLanguages))]
    public void Its_drawings_are_drawn_by_an_independent_renderer(string code, string piece)
    {
        var drawings = Files(code, piece).Where(f => f.Name.EndsWith(".svg", StringComparison.Ordinal)).ToArray();
        // One turn has nothing to lie over.
        string[] names = ["turns.svg", "coil.svg", "cards.svg", "ends.svg", .. piece == "puddle-hop" ? Array.Empty<string>() : ["curve.svg"], "strips.svg"];
        Assert.Equal(names, drawings.Select(d => d.Name));
        foreach (var svg in drawings.Select(d => Encoding.UTF8.GetString(d.Bytes.Span)))
        {
            Assert.True(Rsvg.Draw(svg, 600).Colours > 20);
            Assert.Contains($"lang=\"{code}\"", svg, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_page_is_valid_html_in_every_language()
    {
        var files = Languages.All.SelectMany(l => Pieces.Select(p => _place.File($"{l.Code}-{p}.html", Encoding.UTF8.GetBytes(Html(l.Code, p))))).ToArray();
        var (_, output, complaint) = Programs.Run("java", ["-jar", Path.Combine(Programs.NodeModules, "vnu-jar/build/dist/vnu.jar"), "--format", "json", "--stdout", .. files]);
        using var told = JsonDocument.Parse(output.Length > 0 ? output : complaint);
        Assert.Equal("", string.Join("\n", told.RootElement.GetProperty("messages").EnumerateArray().Select(m => m.GetProperty("message").GetString())));
    }

    // axe-core's rules (WCAG 2.2 A and AA and its good practices), run in a browser.
    [Theory, MemberData(nameof(InLanguages))]
    public void Its_page_breaks_no_rule_of_accessibility(string code, string piece)
    {
        var axe = File.ReadAllText(Path.Combine(Programs.NodeModules, "axe-core/axe.min.js"));
        var told = Chromium.Ask(Html(code, piece).Replace("</main>", "</main><script>" + axe + "</script>", StringComparison.Ordinal), 1280, """
            {
              const r = await axe.run();
              return { passes: r.passes.length, wrong: r.violations.map(v => v.id + ": " + v.nodes.map(n => n.html.slice(0, 120)).join(" | ")) };
            }
            """);
        Assert.Equal([], told.GetProperty("wrong").EnumerateArray().Select(w => w.GetString()));
        Assert.True(told.GetProperty("passes").GetInt32() > 15, "axe looked at next to nothing.");
    }

    // In a frame of this width, since a browser's window has a least width of its own.
    [Theory]
    [InlineData("en", "boardwalk")]
    [InlineData("de", "tidewrack")]
    public void On_a_narrow_screen_no_word_is_cut_off(string code, string piece)
    {
        var told = Chromium.Ask("<!DOCTYPE html><html><body></body></html>", 1400, $$"""
            {
              const frame = document.createElement("iframe");
              frame.width = 360; frame.height = 800; frame.style.border = 0;
              const loaded = new Promise(done => frame.onload = done);
              frame.srcdoc = decodeURIComponent(escape(atob("{{Convert.ToBase64String(Encoding.UTF8.GetBytes(Html(code, piece)))}}")));
              document.body.appendChild(frame);
              await loaded;
              const d = frame.contentDocument;
              await d.fonts.ready;
              const out = [...d.querySelectorAll("h1, h2, h3, p, li, .beside td, .beside th")].filter(e => e.getBoundingClientRect().right > 361).map(e => e.textContent);
              return { scroll: d.documentElement.scrollWidth, out };
            }
            """);
        Assert.True(told.GetProperty("scroll").GetInt32() <= 360, told.ToString());
        Assert.Equal([], told.GetProperty("out").EnumerateArray().Select(w => w.GetString()));
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"\byes +yes +yes +\d+ +\d+\s*$")]
    private static partial Regex EmbeddedFace();

    [GeneratedRegex(@"<<[^<>]*(?:<<[^<>]*>>[^<>]*)*/S\s*/Figure\b.*?endobj", RegexOptions.Singleline)]
    private static partial Regex Figures();

    [GeneratedRegex(@"Page +\d+ size: +([\d.]+) x ([\d.]+) pts")]
    private static partial Regex PageSizes();

    [GeneratedRegex(@"Pages:\s+(\d+)")]
    private static partial Regex PageCount();

    [GeneratedRegex(@"LBody \(block\)(.*?)(?=LI \(block\)|L \(block\)|[HPT]\w* \(block\)|Figure|$)", RegexOptions.Singleline)]
    private static partial Regex Items();

    [GeneratedRegex(@"String \d| auffädeln\.|: (?:each time |jedes Mal )?\d+(?: [A-Z]+\b|(?: times|-mal) \()")]
    private static partial Regex Stringing();
}
