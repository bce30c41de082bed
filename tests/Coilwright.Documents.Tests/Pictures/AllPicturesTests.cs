using System.Globalization;
using System.Xml.Linq;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadCards;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.EndStages;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Tests.TurnRows;
using Coilwright.Documents.WristCurve;
using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Documents.Tests.Pictures;

/// <summary>What holds for every picture. A new one is a line in <see cref="Drawings"/>.</summary>
public class AllPicturesTests
{
    private static readonly Dictionary<string, Func<Reckoned, PictureOptions, Picture>> Drawings = new(StringComparer.Ordinal)
    {
        ["coil"] = CoilViewDrawing.Of,
        ["cards"] = BeadCardsDrawing.Of,
        ["ends"] = EndStagesDrawing.Of,
        ["curve"] = WristCurveSheet.Of,
    };

    public static TheoryData<string, string> All =>
        [.. Drawings.Keys.SelectMany(d => DrawnPieces.All().Select(p => (d, p.Name)))];

    public static TheoryData<string> Kinds => [.. Drawings.Keys];

    private static void AssertSound(Picture picture, string what)
    {
        Assert.True(picture.Collision() is null, $"{what}: {picture.Collision()}");
        Assert.True(picture.OffSheet() is null, $"{what}: {picture.OffSheet()}");
        Assert.False(string.IsNullOrWhiteSpace(picture.Description));
    }

    [Theory]
    [MemberData(nameof(All))]
    public void No_label_covers_another_and_nothing_leaves_the_sheet_at_any_width(string drawing, string piece)
    {
        foreach (var width in new double?[] { null, 60, 90, 130, 277 })
            foreach (var units in Enum.GetValues<LengthUnits>())
                AssertSound(Drawings[drawing](DrawnPieces.Reckoned(piece), new PictureOptions { WidthMm = width, Language = Languages.English.In(units) }), $"{drawing} {piece} {width} {units}");
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void The_same_holds_for_any_piece(string drawing) =>
        Gen.Select(RandomPieces.Pieces, Gen.Double[50, 300], Gen.Bool).Sample((piece, width, grey) =>
            AssertSound(Drawings[drawing](DrawnPieces.Reckon(piece), new PictureOptions { WidthMm = width, Greyscale = grey }), drawing), iter: 15);

    [Theory]
    [MemberData(nameof(All))]
    public void It_is_written_as_sound_SVG_that_an_independent_renderer_draws(string drawing, string piece)
    {
        var svg = SvgCanvas.Write(Drawings[drawing](DrawnPieces.Reckoned(piece), new PictureOptions()));
        var ids = XDocument.Parse(svg).Descendants().Select(e => (string?)e.Attribute("id")).OfType<string>().ToArray();
        Assert.Equal(ids.Length, ids.Distinct(StringComparer.Ordinal).Count());
        Assert.True(Rsvg.Draw(svg, 500).Colours > 20);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void The_same_piece_is_drawn_in_the_same_bytes_in_any_locale(string drawing, string piece)
    {
        string Svg() => SvgCanvas.Write(Drawings[drawing](DrawnPieces.Reckoned(piece), new PictureOptions()));
        var first = Svg();
        var before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo("de-DE");
            Assert.Equal(first, Svg());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [MemberData(nameof(All))]
    public void In_greyscale_every_ink_is_grey(string drawing, string piece)
    {
        foreach (var mark in Drawings[drawing](DrawnPieces.Reckoned(piece), new PictureOptions { Greyscale = true }).Inked())
            foreach (var ink in new[] { (mark.Mark as Text)?.Ink, (mark.Mark as Shape)?.Paint.Fill, (mark.Mark as Shape)?.Paint.Pen?.Ink })
                Assert.True(ink is null || ink.Value.Red == ink.Value.Green && ink.Value.Green == ink.Value.Blue, $"{mark.Class}: {ink}");
    }
}
