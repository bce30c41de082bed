using Coilwright.Core.Readings;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Typefaces;
using Coilwright.Documents.WristCurve;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.WristCurve;

public class WristCurveTests
{
    // Places are worked out in double from a few numbers below 1000.
    private const double RoundingMm = 1e-9;

    private static readonly WristCurveOptions Options = new() { WidthMm = 112, GutterMm = 12 };

    // Eleven wrists from 150 to 160, cover rising by a tenth from 0, 154 without a reading, failing from 157 on.
    private static Reckoned Reckoned(double wristMm = 152)
    {
        var reckoned = DrawnPieces.Reckoned("repeat");
        return reckoned with
        {
            WristMm = wristMm,
            Curve = [.. Enumerable.Range(0, 11).Select(i => new WristPoint(150 + i, 200, 200, 3, i == 4 ? null : i / 10.0, i / 10.0, 1, i >= 7, false))],
            Wrists = reckoned.Wrists with { WishFails = [new(157, 160, true, false)] },
        };
    }

    private static Picture Drawn(double wristMm = 152) => WristCurveDrawing.Of(Reckoned(wristMm), Options);

    private static IEnumerable<Box> Boxes(Picture picture, string sort) =>
        picture.Inked().Where(m => m.Class.Split(' ').Contains(sort)).Select(m => m.Box(CautiousSans.Instance)!.Value);

    [Fact]
    public void The_first_wrist_stands_at_the_gutters_end_and_the_last_at_the_right_edge()
    {
        var curves = Boxes(Drawn(), "curve").ToArray();
        Assert.Equal(2, curves.Length);
        var half = 0.25; // half the line's thickness
        Assert.Equal(12 - half, curves[0].LeftMm, RoundingMm);
        Assert.Equal(112 + half, curves[1].RightMm, RoundingMm);
    }

    [Fact]
    public void A_wrist_without_a_reading_leaves_a_gap()
    {
        var curves = Boxes(Drawn(), "curve").ToArray();
        // 153 stands at 12 + 3 * 10 mm, 155 at 12 + 5 * 10 mm.
        Assert.Equal(42 + 0.25, curves[0].RightMm, RoundingMm);
        Assert.Equal(62 - 0.25, curves[1].LeftMm, RoundingMm);
    }

    [Fact]
    public void The_mark_of_the_wrist_stands_on_the_curve()
    {
        var dot = Assert.Single(Drawn().Inked(), m => m.Mark is Circle);
        var middle = ((Circle)dot.Mark).Middle;
        Assert.Equal(12 + 2 * 10, middle.XMm, RoundingMm);
        var (top, bottom) = (Boxes(Drawn(), "curve").Min(b => b.TopMm), Boxes(Drawn(), "curve").Max(b => b.BottomMm));
        // Cover 0.2 of the way from nothing (the curve's foot) to everything (its head).
        Assert.Equal(bottom - 0.25 - 0.2 * (bottom - top - 0.5), middle.YMm, RoundingMm);
    }

    [Fact]
    public void Wrists_that_fail_the_wish_carry_a_hatched_bar_from_border_to_border()
    {
        var bar = Boxes(Drawn(), "fails").Aggregate((a, b) => a.With(b));
        var half = 0.125; // half the bar's line
        Assert.Equal(12 + 7 * 10 - half, bar.LeftMm, RoundingMm);
        Assert.Equal(112 + half, bar.RightMm, RoundingMm);
        Assert.Contains(Drawn().Description.Split('.'), s => s.Contains("Not as wished from 157 mm", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(LengthUnits.Mm, "150")] // 160 would stick out of the picture
    [InlineData(LengthUnits.Inches, "6 6 1/4")]
    public void Wrists_are_written_under_it_in_her_units(LengthUnits units, string expected)
    {
        var picture = WristCurveDrawing.Of(Reckoned(), Options with { Language = Languages.English.In(units) });
        var labels = picture.Inked().Where(m => m.Class == "scale").Select(m => ((Text)m.Mark).Content);
        Assert.Equal(expected, string.Join(' ', labels));
    }

    [Theory]
    [InlineData(40)]
    [InlineData(300)]
    public void No_two_words_cover_each_other_and_none_leaves_the_sheet(double widthMm)
    {
        foreach (var name in DrawnPieces.Names.Select(n => n.Data))
        {
            var picture = WristCurveDrawing.Of(DrawnPieces.Reckoned(name), Options with { WidthMm = widthMm });
            var words = picture.Inked().Where(m => m.Mark is Text).Select(m => m.Box(CautiousSans.Instance)!.Value).ToArray();
            Assert.True(words.Length > 2);
            for (var i = 0; i < words.Length; i++)
            {
                Assert.True(picture.Sheet.Grown(1e-6).Contains(words[i]), $"{name}: {words[i]} leaves {picture.Sheet}");
                for (var j = 0; j < i; j++) Assert.False(words[i].Overlaps(words[j]), $"{name}: {words[i]} covers {words[j]}");
            }
        }
    }

    [Fact]
    public void An_independent_renderer_draws_it() => Assert.True(Rsvg.Draw(SvgCanvas.Write(Drawn()), 600).Colours > 10);
}
