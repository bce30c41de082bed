using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Coilwright.Core.Colour;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rendering;

namespace Coilwright.Documents.Tests.Pages;

public sealed partial class HtmlTests
{
    public static TheoryData<string> Setups => [.. All.Keys];

    private static readonly Dictionary<string, PageSetup> All = new()
    {
        ["A4"] = new(),
        ["Letter, large print"] = new() { Paper = Paper.Letter, LargePrint = true },
        ["greyscale"] = new() { Greyscale = true },
    };

    private static string Html(PageDocument document, PageSetup? setup = null)
    {
        var drawn = new HtmlCanvas().Draw(document, setup ?? new());
        Assert.Empty(drawn.Faults);
        return Encoding.UTF8.GetString(drawn.Bytes.Span);
    }

    private static string Html(params ReadOnlySpan<Block> blocks) => Html(SampleDocument.Of(blocks));

    // The validator of the HTML standard's community (npm vnu-jar); it checks the style sheet too.
    private static string Complaints(params ReadOnlySpan<string> pages)
    {
        using var place = new Workplace();
        var files = new List<string>();
        foreach (var page in pages) files.Add(place.File("page" + files.Count.ToString(CultureInfo.InvariantCulture) + ".html", Encoding.UTF8.GetBytes(page)));
        var (_, output, complaint) = Programs.Run("java", ["-jar", Path.Combine(Programs.NodeModules, "vnu-jar/build/dist/vnu.jar"), "--format", "json", "--stdout", .. files]);
        var told = JsonDocument.Parse(output.Length > 0 ? output : complaint).RootElement.GetProperty("messages");
        return string.Join("\n", told.EnumerateArray().Select(m => m.GetProperty("message").GetString()));
    }

    [Fact]
    public void Every_page_is_valid_html() => Assert.Equal("", Complaints(
        Html(SampleDocument.Everything), Html(SampleDocument.Everything, All["Letter, large print"]), Html(SampleDocument.Everything, All["greyscale"]), Html(),
        Html(SampleDocument.Everything with { Created = DateTimeOffset.UnixEpoch, Author = "A & B", Title = "</style><script>&\"'\\ שלום\u0001\ufffe\u0085", Foot = null }),
        Html(new Block.Table([], []) { Name = "T" }, new Block.Table([new(""), new("B")], [["", ""]]) { Name = "T", RowsHaveHeads = true }, new Block.List(ListKind.Ticked, [])),
        Html(new Block.Table([new("A")], [[new TableCell("x") { Picture = SampleDocument.Beads(16), PictureAlt = "Two beads" }], [new TableCell("y") { Picture = SampleDocument.Beads(16) }]]) { Name = "T" })));

    [Fact]
    public void The_validator_does_complain_about_a_page_that_is_wrong() =>
        Assert.NotEqual("", Complaints(Html().Replace("</title>", "</title><title>", StringComparison.Ordinal)));

    // axe-core's rules (WCAG 2.2 A and AA and its good practices), run in a browser.
    [Theory, MemberData(nameof(Setups))]
    public void A_page_breaks_no_rule_of_accessibility(string setup)
    {
        var axe = File.ReadAllText(Path.Combine(Programs.NodeModules, "axe-core/axe.min.js"));
        var page = Html(SampleDocument.Everything, All[setup]).Replace("</main>", "</main><script>" + axe + "</script>", StringComparison.Ordinal);
        var told = Chromium.Ask(page, 1280, """
            {
              const r = await axe.run();
              return { passes: r.passes.map(p => p.id), wrong: r.violations.map(v => v.id + ": " + v.nodes.map(n => n.html.slice(0, 120)).join(" | ")) };
            }
            """);
        Assert.Equal([], told.GetProperty("wrong").EnumerateArray().Select(w => w.GetString()));
        Assert.Contains("color-contrast", told.GetProperty("passes").EnumerateArray().Select(p => p.GetString()));
    }

    [Theory]
    [InlineData(360, "A4")]
    [InlineData(360, "Letter, large print")]
    [InlineData(1280, "A4")]
    public void Nothing_but_a_wide_picture_in_its_own_box_is_scrolled_sideways(int width, string setup)
    {
        // In a frame of this width, since a browser's window has a least width of its own.
        var told = Chromium.Ask("<!DOCTYPE html><html><body></body></html>", 1400, $$"""
            {
              const frame = document.createElement("iframe");
              frame.width = {{width.ToString(CultureInfo.InvariantCulture)}}; frame.height = 800; frame.style.border = 0;
              const loaded = new Promise(done => frame.onload = done);
              frame.srcdoc = decodeURIComponent(escape(atob("{{Convert.ToBase64String(Encoding.UTF8.GetBytes(Html(SampleDocument.Everything, All[setup])))}}")));
              document.body.appendChild(frame);
              await loaded;
              const d = frame.contentDocument;
              await d.fonts.ready;
              return { scroll: d.documentElement.scrollWidth, client: d.documentElement.clientWidth,
                face: d.fonts.check("16px 'Atkinson Hyperlegible Next'"), bar: d.querySelector(".strip svg").getBoundingClientRect().width };
            }
            """);
        Assert.True(told.GetProperty("scroll").GetInt32() <= told.GetProperty("client").GetInt32(), told.ToString());
        Assert.True(told.GetProperty("face").GetBoolean());
        // A style sheet's millimetre is 96 / 25.4 pixels: the strip of 100 mm keeps its size on a narrow screen. Tolerance: a browser's 1/64 pixel.
        Assert.Equal(100 * 96 / 25.4, told.GetProperty("bar").GetDouble(), 0.02);
    }

    [Theory]
    [InlineData(360, "KeyBeadUse", "Sea glass round, 8 mm; 1 strand of 50")]
    [InlineData(1280, "KeyBeadUseBuy", "Sea glass round, 8 mm")]
    public void A_column_that_may_gives_way_on_a_narrow_screen_and_its_words_stand_behind_another_s(int width, string heads, string cell)
    {
        var told = Chromium.Ask("<!DOCTYPE html><html><body></body></html>", 1400, $$"""
            {
              const frame = document.createElement("iframe");
              frame.width = {{width.ToString(CultureInfo.InvariantCulture)}}; frame.height = 800;
              const loaded = new Promise(done => frame.onload = done);
              frame.srcdoc = decodeURIComponent(escape(atob("{{Convert.ToBase64String(Encoding.UTF8.GetBytes(Html(SampleDocument.Everything)))}}")));
              document.body.appendChild(frame);
              await loaded;
              const table = [...frame.contentDocument.querySelectorAll("table")].find(t => t.caption.textContent == "Materials");
              const seen = e => e.innerText.replaceAll("\u00a0", " ").trim();
              return { heads: [...table.querySelectorAll("thead th")].filter(h => h.getClientRects().length > 0).map(seen).join(""), cell: seen(table.tBodies[0].rows[0].cells[1]),
                scroll: table.scrollWidth <= table.parentElement.clientWidth };
            }
            """);
        Assert.Equal(heads, told.GetProperty("heads").GetString());
        Assert.Equal(cell, told.GetProperty("cell").GetString());
        Assert.True(told.GetProperty("scroll").GetBoolean());
    }

    [Fact]
    public void A_page_needs_nothing_beside_it_and_runs_nothing()
    {
        var page = Html(SampleDocument.Everything);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
        Assert.DoesNotContain("<link", page, StringComparison.Ordinal);
        Assert.DoesNotMatch(@"(?:src|href)\s*=\s*""(?!#)", page);
        Assert.All(Urls().Matches(page), u => Assert.Matches(@"^url\((data:|#)", u.Value));
    }

    [Fact]
    public void The_same_document_is_the_same_page_in_any_locale()
    {
        var first = Html(SampleDocument.Everything);
        var culture = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, Html(SampleDocument.Everything));
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    [Fact]
    public void Words_stand_as_they_were_written_in_any_script()
    {
        var page = Html(new Block.Paragraph("a < b & \"c\" " + RichText.Key("A") + " שלום 珠 🧿"));
        Assert.Contains("<p>a &lt; b &amp; &quot;c&quot; <b class=\"key\">A</b> שלום 珠 🧿</p>", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Printed_from_a_browser_the_strip_is_at_true_size_on_the_chosen_paper()
    {
        using var place = new Workplace();
        foreach (var (setup, width, height) in new[] { (new PageSetup(), 297.0, 210.0), (new PageSetup { Paper = Paper.Letter }, 279.4, 215.9) })
        {
            var html = place.File("page.html", Encoding.UTF8.GetBytes(Html(SampleDocument.Of(new Block.NewPage(true), new Block.Strip(SampleDocument.CheckBar(150), "Bar")), setup)));
            var pdf = place.File("page.pdf");
            Programs.Output(Chromium.Program, "--no-sandbox", "--headless", "--disable-gpu", "--disable-background-networking", "--user-data-dir=" + place.File("profile"),
                "--no-pdf-header-footer", "--print-to-pdf=" + pdf, "file://" + html);
            var page = Poppler.Draw(pdf, 1, 300);
            // Whole pixels of 1/300 in, and Chromium rounds its paper to a third of a millimetre.
            Assert.Equal(width, page.Width / 300.0 * 25.4, 0.5);
            Assert.Equal(height, page.Height / 300.0 * 25.4, 0.5);
            var longest = 0;
            for (var y = 0; y < page.Height; y++)
                for (int x = 0, run = 0; x < page.Width; x++) longest = Math.Max(longest, run = page.Dark(x, y) ? run + 1 : 0);
            // Tolerance: a pixel at either end.
            Assert.InRange(longest / 300.0 * 25.4, 150 - 0.17, 150 + 0.17);
        }
    }

    [Fact]
    public void Greyscale_pages_have_grey_inks_only()
    {
        var inks = Inks().Matches(Html(SampleDocument.Everything, All["greyscale"])).Select(m => m.Value).Distinct();
        Assert.All(inks, i => Assert.True(Srgb.TryParse(i, out var ink) && ink.Red == ink.Green && ink.Green == ink.Blue, i));
    }

    public static TheoryData<string> TextInks => ["Ink", "Quiet", "Accent"];

    // WCAG 2.2, success criterion 1.4.3: 4.5 to 1 for text of any size.
    [Theory, MemberData(nameof(TextInks))]
    public void Every_text_ink_reads_on_every_ground_in_colour_and_in_grey(string name)
    {
        var ink = (Srgb)typeof(PageInks).GetProperty(name)!.GetValue(null)!;
        foreach (var ground in new[] { PageInks.White, PageInks.Wash })
        {
            Assert.InRange(ink.Contrast(ground), 4.5, 21);
            Assert.InRange(ink.Grey().Contrast(ground.Grey()), 4.5, 21);
        }
    }

    [GeneratedRegex(@"url\([^)]{0,20}")]
    private static partial Regex Urls();

    [GeneratedRegex(@"#[0-9a-f]{6}\b")]
    private static partial Regex Inks();
}
