using System.Text.RegularExpressions;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Strips;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.Strips;

public partial class StripTests
{
    // Half the thickness of the line round a bead, on both sides of it, mm.
    private const double EdgeMm = 0.2;

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void A_strip_is_as_long_as_its_beads_laid_straight(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var strips = new StripDrawing(reckoned);
        foreach (var stretch in reckoned.Piece.Order.Stretches)
        {
            var picture = strips.OfStretch(stretch.First, stretch.Count, "x");
            var ink = picture.Inked().Select(m => m.Box(CautiousSans.Instance)).OfType<Box>().Aggregate((a, b) => a.With(b));
            var beads = Enumerable.Range(stretch.First, stretch.Count).Sum(i => reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[i]].LengthMm);
            Assert.Equal(beads, ink.WidthMm, EdgeMm);
            Assert.True(picture.Sheet.Contains(ink));
        }
    }

    [Fact]
    public void Pictures_whose_symbols_stand_elsewhere_draw_the_same_once_those_stand_before_them()
    {
        var reckoned = DrawnPieces.Reckoned("focal");
        var strips = new StripDrawing(reckoned);
        var picture = strips.OfStretch(0, 12, "x");
        var options = new SvgOptions { IdPrefix = "p-", Decorative = true, SymbolsElsewhere = true };
        var alone = SvgCanvas.Write(picture, options);
        Assert.DoesNotContain("<defs>", alone, StringComparison.Ordinal);
        Assert.DoesNotContain("<title", alone, StringComparison.Ordinal);
        var symbols = SvgCanvas.WriteSymbols(strips.Symbols, options);
        var named = Named().Matches(symbols).Select(m => m.Groups[1].Value).ToArray();
        Assert.Equal(named.Length, named.Distinct().Count());
        Assert.All(Used().Matches(alone).Select(m => m.Groups[1].Value), id => Assert.Contains(id, named));
        var together = alone.Insert(alone.IndexOf('>', StringComparison.Ordinal) + 1, symbols);
        var whole = SvgCanvas.Write(picture, new SvgOptions { IdPrefix = "p-", Decorative = true });
        Assert.Equal(Rsvg.Draw(whole, 500).Colours, Rsvg.Draw(together, 500).Colours);
    }

    [GeneratedRegex("""<g id="([^"]+)">""")]
    private static partial Regex Named();

    [GeneratedRegex("xlink:href=\"#([^\"]+)\"")]
    private static partial Regex Used();
}
