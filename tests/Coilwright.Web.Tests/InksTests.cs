using System.Text.RegularExpressions;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;

namespace Coilwright.Web.Tests;

/// <summary>The page and its drawings are printed with the same inks, and all of them can be read.</summary>
public sealed partial class InksTests
{
    private static readonly string Css = File.ReadAllText(Path.Combine(Repository(), "src/Coilwright.Web/wwwroot/css/ground.css"));

    private static string Repository()
    {
        var folder = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(folder, "Coilwright.slnx"))) folder = Path.GetDirectoryName(folder.TrimEnd(Path.DirectorySeparatorChar))!;
        return folder;
    }

    // The inks of one block of the style sheet, by name; a block that names fewer inherits the rest from the first.
    private static Dictionary<string, Srgb> InksIn(string selector)
    {
        var all = new Dictionary<string, Srgb>();
        foreach (var block in (string[])[":root {", selector])
            foreach (Match match in Blocks().Matches(Css))
                if (match.Groups[1].Value.Trim() + " {" == block)
                    foreach (Match ink in Inks().Matches(match.Groups[2].Value))
                        if (Srgb.TryParse(ink.Groups[2].Value, out var colour)) all[ink.Groups[1].Value] = colour;
        return all;
    }

    [Theory]
    [InlineData(":root {", false)]
    [InlineData(":root[data-light=\"evening\"] {", true)]
    [InlineData(":root[data-light=\"device\"] {", true)]
    public void The_page_has_the_inks_of_the_drawings(string selector, bool evening)
    {
        var (page, drawings) = (InksIn(selector), evening ? Palette.Evening : Palette.Colour);
        Assert.Equal((drawings.Paper, drawings.Ink, drawings.Quiet, drawings.Hairline, drawings.Accent), (page["paper"], page["ink"], page["quiet"], page["hair"], page["accent"]));
        Assert.Equal((Palette.Colour.Ink, Palette.Colour.Quiet, Palette.Colour.Accent), (page["mat-ink"], page["mat-quiet"], page["mat-accent"]));
    }

    // 4.5:1 for text, 3:1 for the edges of what can be pressed (WCAG 2.2, 1.4.3 and 1.4.11).
    [Theory]
    [InlineData(":root {")]
    [InlineData(":root[data-light=\"evening\"] {")]
    [InlineData(":root[data-light=\"device\"] {")]
    public void Every_ink_reads_on_every_ground_that_it_stands_on(string selector)
    {
        var inks = InksIn(selector);
        foreach (var ground in (string[])["paper", "sheet", "wash"])
        {
            foreach (var ink in (string[])["ink", "quiet", "accent"]) Reads(ink, ground, 4.5);
            Reads("edge", ground, 3);
        }
        foreach (var ground in (string[])["mat", "mat-wash"])
            foreach (var ink in (string[])["mat-ink", "mat-quiet"])
                Reads(ink, ground, 4.5);
        Reads("mat-accent", "mat", 4.5);
        Reads("on-accent", "accent", 4.5);

        void Reads(string ink, string ground, double least) =>
            Assert.True(inks[ink].Contrast(inks[ground]) >= least, $"{ink} on {ground}: {inks[ink].Contrast(inks[ground]):F2}");
    }

    [GeneratedRegex(@"([^{}]+)\{([^{}]*)\}")]
    private static partial Regex Blocks();

    [GeneratedRegex(@"--([a-z-]+):\s*(#[0-9a-f]{6});")]
    private static partial Regex Inks();
}
