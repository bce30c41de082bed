using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coilwright.Core.Beads;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Tests;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.StepFigures;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Patterns;

/// <summary>The finished pattern, in every language, on both papers and in every print, read back by programs that share no code with it.</summary>
public sealed partial class PatternDocumentTests : IDisposable
{
    private static readonly Dictionary<string, PageSetup> Setups = new()
    {
        ["a4"] = new(),
        ["letter"] = new() { Paper = Paper.Letter },
        ["large print"] = new() { LargePrint = true },
        ["ink saving"] = new() { InkSaving = true, Greyscale = true },
    };

    private readonly Workplace _place = new();

    public void Dispose() => _place.Dispose();

    // A piece with everything written that can be.
    private static readonly Core.Readings.Reckoned Full = DrawnPieces.Reckon(DrawnPieces.Examples().Single(e => e.Name == "tidewrack").Piece with
    {
        Pattern = new PatternNotes
        {
            Introduction = "The tide line after a storm.\nNo half is mirrored.",
            Level = PatternLevel.Intermediate,
            Minutes = 150,
            Techniques = ["turning a loop"],
            Care = "Wipe it dry.",
            Usage = "For yourself.",
            By = "A maker",
            Words = [new StepText(new StepAnchor("tuft.1", "5 shard", "", "tube"), "Now the tuft: 5 B.\nPush them close.")],
        },
    });

    public static TheoryData<string, string> All()
    {
        var all = new TheoryData<string, string>();
        foreach (var language in Languages.All)
            foreach (var setup in Setups.Keys) all.Add(language.Code, setup);
        return all;
    }

    private static DocumentFile[] Files(Core.Readings.Reckoned reckoned, PageSetup? setup = null, Language? language = null, params ImmutableArray<Piece> colourways) =>
        [.. DocumentFiles.Of(DocumentKinds.Pattern(colourways), reckoned, setup ?? new PageSetup(), language ?? Languages.English)];

    private string Pdf(DocumentFile[] files) => _place.File("pattern.pdf", files.Single(f => f.Name == "pattern.pdf").Bytes);

    [Theory, MemberData(nameof(All))]
    public void The_file_is_sound_its_faces_are_in_it_its_parts_are_tagged_and_its_steps_string_the_piece(string code, string setup)
    {
        var language = Languages.Find(code)!;
        var pdf = Pdf(Files(Full, Setups[setup], language, Full.Piece));
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
        Assert.All(Programs.Output("pdffonts", pdf).Split('\n', StringSplitOptions.RemoveEmptyEntries)[2..], f => Assert.Matches(@"\byes +yes +yes +\d+ +\d+\s*$", f));
        var info = Programs.Output("pdfinfo", pdf);
        Assert.Matches(@"Title:\s+Tidewrack", info);
        Assert.Matches(@"Author:\s+A maker", info);
        Assert.Matches(@"Tagged:\s+yes", info);
        var told = Spaces().Replace(Programs.Output("pdfinfo", "-struct-text", pdf).Replace("\"", "", StringComparison.Ordinal), " ");
        var at = -1;
        foreach (var part in new[] { "H1 (block) Tidewrack", $"H2 (block) {language.Pattern.AtAGlance}", $"H2 (block) {language.Sheet.Tools}", $"H2 (block) {language.Sheet.Materials}", $"H2 (block) {language.Sheet.Steps}",
            $"H2 (block) {language.Sheet.OtherSizes}", $"H2 (block) {language.Pattern.Colourways}", $"H2 (block) {language.Pattern.Care}", $"H2 (block) {language.Pattern.Usage}", $"H2 (block) {language.Sheet.Strips}" })
        {
            var found = told.IndexOf(part, at + 1, StringComparison.Ordinal);
            Assert.True(found > at, $"{part} is not where it should be");
            at = found;
        }
        // The numbered sentences as a reader's program hears them; hers for the first tuft among them.
        var steps = Sentences().Matches(told).ToDictionary(m => int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture), m => m.Groups["said"].Value.Trim());
        var known = PatternSteps.Of(Full);
        Assert.Equal(Enumerable.Range(1, known.Length), steps.Keys.Order());
        var strung = known.Where(s => s.Strung is not null).SelectMany(s => s.Id == "tuft.1" ? Enumerable.Repeat("B", 5) : StepReader.Strung(steps[s.Number]));
        Assert.Equal(Full.Piece.Order.Kinds.Select(kind => Full.Counts.Single(k => k.KindIndex == kind).Letter), strung);
        Assert.StartsWith("Now the tuft: 5 B", steps[known.Single(s => s.Id == "tuft.1").Number], StringComparison.Ordinal);
        // A figure for each stringing step and one for the ends, numbered through.
        var figures = Regex.Matches(told, Regex.Escape(language.Pattern.Figure).Replace(@"\{number}", @"(\d+)", StringComparison.Ordinal) + @"(?!\))").Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).Distinct().Order();
        Assert.Equal(Enumerable.Range(1, known.Count(s => s.Strung is not null) + 1), figures);
        // Every figure says what it shows.
        var source = File.ReadAllText(pdf, Encoding.Latin1);
        Assert.InRange(Regex.Count(source, @"/Alt\s*[(<]"), Regex.Count(source, @"/S\s*/Figure\b"), int.MaxValue);
        Assert.InRange(Regex.Count(source, @"/S\s*/Figure\b"), known.Length - 3, int.MaxValue);
    }

    [Fact]
    public void Its_parts_can_be_turned_to_from_the_readers_list_of_them()
    {
        var outlines = Programs.Output("qpdf", "--json", "--json-key=outlines", Pdf(Files(Full)));
        using var json = JsonDocument.Parse(outlines);
        var titles = json.RootElement.GetProperty("outlines").EnumerateArray().SelectMany(Titles).ToArray();
        Assert.Contains("Materials", titles);
        Assert.Contains("Steps", titles);

        static IEnumerable<string> Titles(JsonElement at) => at.GetProperty("kids").EnumerateArray().SelectMany(Titles).Prepend(at.GetProperty("title").GetString()!);
    }

    [Fact]
    public void Every_page_is_valid_html_and_breaks_no_rule_of_accessibility()
    {
        var pages = Languages.All.Select(l => Encoding.UTF8.GetString(Files(Full, language: l).Single(f => f.Name == "pattern.html").Bytes.Span)).ToArray();
        var files = pages.Select((p, i) => _place.File($"{i}.html", Encoding.UTF8.GetBytes(p))).ToArray();
        var (_, output, complaint) = Programs.Run("java", ["-jar", Path.Combine(Programs.NodeModules, "vnu-jar/build/dist/vnu.jar"), "--format", "json", "--stdout", .. files]);
        using var told = JsonDocument.Parse(output.Length > 0 ? output : complaint);
        Assert.Equal("", string.Join("\n", told.RootElement.GetProperty("messages").EnumerateArray().Select(m => m.GetProperty("message").GetString())));
        var axe = File.ReadAllText(Path.Combine(Programs.NodeModules, "axe-core/axe.min.js"));
        foreach (var page in pages)
        {
            var found = Chromium.Ask(page.Replace("</main>", "</main><script>" + axe + "</script>", StringComparison.Ordinal), 1280, """
                {
                  const r = await axe.run();
                  return { passes: r.passes.length, wrong: r.violations.map(v => v.id + ": " + v.nodes.map(n => n.html.slice(0, 120)).join(" | ")) };
                }
                """);
            Assert.True(found.GetProperty("passes").GetInt32() > 10);
            Assert.Equal("", string.Join("\n", found.GetProperty("wrong").EnumerateArray().Select(w => w.GetString())));
        }
    }

    [Theory]
    [InlineData("a4"), InlineData("large print")]
    public void On_a_phone_the_cover_shows_the_whole_coil(string setup)
    {
        var page = Encoding.UTF8.GetString(Files(Full, Setups[setup]).Single(f => f.Name == "pattern.html").Bytes.Span);
        var told = Chromium.Ask("<!DOCTYPE html><html><body></body></html>", 1400, $$"""
            {
              const frame = document.createElement("iframe");
              frame.width = 360; frame.height = 800; frame.style.border = 0;
              const loaded = new Promise(done => frame.onload = done);
              frame.srcdoc = decodeURIComponent(escape(atob("{{Convert.ToBase64String(Encoding.UTF8.GetBytes(page))}}")));
              document.body.appendChild(frame);
              await loaded;
              const coil = frame.contentDocument.querySelector(".picture.centred svg").getBoundingClientRect();
              return { left: coil.left, right: coil.right, beads: frame.contentDocument.querySelectorAll(".picture.centred .bead").length };
            }
            """);
        Assert.InRange(told.GetProperty("left").GetDouble(), 0, 30);
        Assert.InRange(told.GetProperty("right").GetDouble(), 300, 360);
        Assert.Equal(Full.Piece.Order.Count, told.GetProperty("beads").GetInt32());
    }

    [Fact]
    public void Spared_ink_leaves_less_on_the_paper_and_says_the_same()
    {
        string full = _place.File("full.pdf", Files(Full).Single(f => f.Name == "pattern.pdf").Bytes), spared = _place.File("spared.pdf", Files(Full, Setups["ink saving"]).Single(f => f.Name == "pattern.pdf").Bytes);
        Assert.Equal(Programs.Output("pdftotext", "-raw", full, "-"), Programs.Output("pdftotext", "-raw", spared, "-"));
        // The cover is mostly coil: of its darkness well under two thirds is left.
        Assert.True(Darkness(spared) < 0.65 * Darkness(full), $"{Darkness(spared)} of {Darkness(full)}");

        static double Darkness(string pdf)
        {
            var page = Poppler.Draw(pdf, 1, 50);
            var sum = 0.0;
            for (var y = 0; y < page.Height; y++)
                for (var x = 0; x < page.Width; x++) sum += 3 * 255 - page[x, y].Red - page[x, y].Green - page[x, y].Blue;
            return sum;
        }
    }

    private static Core.Readings.Reckoned Plain(int beads) =>
        DrawnPieces.Reckon(SamplePieces.Piece([.. "abcdefgh".Select(c => SamplePieces.Bead(c.ToString(), "round", 4, role: Role.Main))], Enumerable.Range(0, beads).Select(i => i * i % 7)) with { Title = "Plain" });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(2000)]
    public void One_bead_and_two_thousand_without_groups_are_patterns_too(int beads)
    {
        var reckoned = Plain(beads);
        var pdf = Pdf(Files(reckoned));
        Assert.Contains("No syntax", Programs.Output("qpdf", "--check", pdf), StringComparison.Ordinal);
        var told = Spaces().Replace(Programs.Output("pdfinfo", "-struct-text", pdf).Replace("\"", "", StringComparison.Ordinal), " ");
        var steps = PatternSteps.Of(reckoned);
        var said = Sentences().Matches(told).ToDictionary(m => int.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture), m => m.Groups["said"].Value.Trim());
        Assert.Equal(beads, steps.Where(s => s.Strung is not null).Sum(s => StepReader.Strung(said[s.Number]).Count));
    }

    [Fact]
    public void Ten_thousand_letters_for_one_step_run_over_pages_and_letters_that_no_face_has_are_told()
    {
        var piece = Full.Piece;
        var anchor = piece.Pattern.Words[0].At;
        var longText = string.Join(' ', Enumerable.Repeat("five beads of B, close", PatternNotes.MostText / 23));
        var pdf = Pdf(Files(DrawnPieces.Reckon(piece with { Pattern = piece.Pattern with { Words = [new StepText(anchor, longText)] } })));
        Assert.Equal(PatternNotes.MostText / 23, Regex.Count(Programs.Output("pdftotext", "-raw", pdf, "-"), @"\bclose\b"));
        var strange = Files(DrawnPieces.Reckon(piece with { Pattern = piece.Pattern with { Words = [new StepText(anchor, "Now 五 B.")] } }));
        Assert.Equal("document.glyphs-missing", Assert.Single(strange.Single(f => f.Name == "pattern.pdf").Faults).Code);
        Assert.Empty(strange.Single(f => f.Name == "pattern.html").Faults);
    }

    [Theory]
    [InlineData("a4"), InlineData("letter"), InlineData("large print")]
    public void Each_step_stands_on_one_page_with_its_figure_and_pages_of_steps_are_well_filled(string setup)
    {
        var pdf = Pdf(Files(Full, Setups[setup]));
        var steps = PatternSteps.Of(Full);
        // The first figure is that of the ends; each step that strings has the next.
        var figureOf = steps.Where(s => s.Strung is not null).Select((s, i) => (s.Number, Figure: i + 2)).ToDictionary(s => s.Number, s => s.Figure);
        var pages = int.Parse(PageCount().Match(Programs.Output("pdfinfo", pdf)).Groups[1].Value, CultureInfo.InvariantCulture);
        var seen = 0;
        for (var page = 1; page <= pages; page++)
        {
            var at = page.ToString(CultureInfo.InvariantCulture);
            var text = Programs.Output("pdftotext", "-f", at, "-l", at, "-raw", pdf, "-");
            int[] numbers = [.. StepNumbers().Matches(text).Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).Where(figureOf.ContainsKey)];
            Assert.Equal(numbers.Select(n => figureOf[n]), FigureNumbers().Matches(text).Select(m => int.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture)).Where(f => f > 1));
            seen += numbers.Length;
            // Eight steps and a heading fill a page of either paper; where fewer stand, others follow or precede them.
            if (setup != "large print" && numbers.Length > 0 && numbers[0] > figureOf.Keys.Min() && numbers[^1] < figureOf.Keys.Max()) Assert.InRange(numbers.Length, 8, 12);
        }
        Assert.Equal(figureOf.Count, seen);
    }

    // Where each figure's marks lie: new beads in full, those before pale to their left, the arrow after the last, all within the figure.
    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Figures_show_what_is_new_after_what_is_done_and_nothing_beyond_their_edge(string name)
    {
        const double FootMm = 6;
        var reckoned = DrawnPieces.Reckoned(name);
        var drawing = new StepFigureDrawing(reckoned, new StepFigureOptions { WidthMm = 84, FootMm = FootMm, Typeface = HouseSans.Instance });
        foreach (var step in PatternSteps.Of(reckoned).Where(s => s.Strung is not null))
        {
            var picture = drawing.Of(step.Strung!);
            Assert.Equal(84, picture.WidthMm);
            Assert.Equal(step.Strung!.Beads, Stamps(picture.Marks));
            foreach (var mark in picture.Inked())
                if (mark.Box(HouseSans.Instance) is { } box)
                {
                    // Half a pen's width and a letter's side bearing may stand over.
                    Assert.True(box.LeftMm > -0.6 && box.RightMm < 84.6 && box.TopMm > -0.6 && box.BottomMm < picture.HeightMm + 0.6, $"{name} {step.Id} {mark.Class} {box}");
                    // Its number stands on its foot, left of the little coil.
                    Assert.True(box.BottomMm < picture.HeightMm - FootMm + 0.6 || box.LeftMm > 60, $"{name} {step.Id} {mark.Class} {box}");
                }
            Assert.Single(picture.Inked(), m => m.Class.Split(' ').Contains("arrow"));
            Assert.True(step.Strung.First > 0 || picture.Inked().Any(m => m.Class.Split(' ').Contains("start")));
        }

        static int Stamps(IEnumerable<Mark> marks) => marks.Sum(m => m is Documents.Drawing.Group group ? Stamps(group.Marks) : m is Stamp { Class: "new" } ? 1 : 0);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    [GeneratedRegex(@"Pages:\s+(\d+)")]
    private static partial Regex PageCount();

    [GeneratedRegex(@"(?m)^(\d+)\.[\s\u00a0]")]
    private static partial Regex StepNumbers();

    [GeneratedRegex(@"(?m)^Figure (\d+)\s*$")]
    private static partial Regex FigureNumbers();

    [GeneratedRegex(@"P \(block\) (?<n>\d+)\.[\s\u00a0]+(?<said>.*?)(?= [A-Z][A-Za-z0-9]* \((?:block|inline)\)| Div | Sect | Figure|$)")]
    private static partial Regex Sentences();
}
