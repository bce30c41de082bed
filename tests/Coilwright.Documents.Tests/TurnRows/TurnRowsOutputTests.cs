using System.Globalization;
using System.Xml.Linq;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.TurnRows;

namespace Coilwright.Documents.Tests.TurnRows;

public class TurnRowsOutputTests
{
    private static string Drawn(string name, TurnRowsOptions? options = null) =>
        SvgCanvas.Write(TurnRowsDrawing.Of(DrawnPieces.Reckoned(name), options));

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void An_independent_renderer_draws_it_with_ink_on_paper(string name)
    {
        var png = Rsvg.Draw(Drawn(name), 900);
        Assert.Equal(900, png.Width);
        var paper = Palette.Colour.Paper;
        Assert.Equal((paper.Red, paper.Green, paper.Blue, (byte)255), png[2, 2]);
        // Ink, quiet, accent and beads, each with its edges smoothed: far more than a few colours.
        Assert.True(png.Colours > 100, $"{png.Colours} colours");
    }

    [Fact]
    public void Without_paper_the_sheet_is_see_through() =>
        Assert.Equal((byte)0, Rsvg.Draw(Drawn("child", new TurnRowsOptions { Paper = false }), 400)[2, 2].Opacity);

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void The_same_piece_is_written_in_the_same_bytes_in_any_locale(string name)
    {
        var first = Drawn(name);
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("fr-FR");
            Assert.Equal(first, Drawn(name));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void It_is_well_formed_and_no_id_stands_twice(string name)
    {
        var ids = XDocument.Parse(Drawn(name)).Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>().ToArray();
        Assert.NotEmpty(ids);
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
    }

    [Fact]
    public void It_says_in_words_what_it_shows()
    {
        var desc = XDocument.Parse(Drawn("focal")).Root!.Elements().Single(e => e.Name.LocalName == "desc").Value;
        Assert.Contains("133 beads", desc, StringComparison.Ordinal);
        Assert.Contains("off square", desc, StringComparison.Ordinal);
    }

    // Approved by eye. When it changes on purpose: look at the received file, then copy it over the approved one.
    [Fact]
    public void A_focal_piece_of_four_turns_is_drawn_as_approved() => Approved.Same(SvgCanvas.Write(TurnRowsDrawing.Of(DrawnPieces.FocalAsGiven())), "TurnRows/RiverBend.approved.svg");
}
