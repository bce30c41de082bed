using Coilwright.Core.Kits;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Kits;
using Coilwright.Documents.Prices;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Prices;

/// <summary>Pictures of prices and kits, measured.</summary>
public class PricePicturesTests
{
    // Coordinates are doubles of decimals: what is measured is right to a thousandth of a millimetre and far finer.
    private const double HairMm = 1e-6;

    private static PricePlan Plan(params (string Name, decimal Asks)[] rules)
    {
        var sheet = new CostSheet
        {
            Currency = "EUR",
            WagePerHour = 12,
            Steps = [new TimedStep("string", 30, false, [Sold.Piece])],
            Items = [new CostItem("pin", false, 1, 4, 1, [Sold.Piece])],
            Overheads = [new Overhead("room", 10, null, null, null, [Sold.Piece])],
            Fees = [new Fee("card", 20, 1)],
            Rules = [.. rules.Select(r => new PriceRule(r.Name, r.Asks.ToString(System.Globalization.CultureInfo.InvariantCulture), Sold.Piece, ["card"], null, null))],
        };
        Assert.True(Costs.TryMake(sheet, out var costs, out _));
        var piece = DrawnPieces.Reckoned("boardwalk").Piece;
        Assert.True(ShoppingList.TryMake([new ShoppingPiece("one", piece, 1)], Spares.None, new Dictionary<string, int>(), PriceList.Empty, out var list, out _));
        Assert.True(PricePlan.TryMake(costs!, list!, new WireUse(600, 170), null, out var plan, out _));
        return plan!;
    }

    private static IEnumerable<Box> Boxes(Picture picture, string sort) => picture.Inked().Where(m => m.Class.Split(' ').Contains(sort)).Select(m => m.Mark).OfType<Rectangle>().Select(r => r.Box);

    private static IEnumerable<Line> Lines(Picture picture, string sort) => picture.Inked().Where(m => m.Class == sort).Select(m => m.Mark).OfType<Line>();

    [Fact]
    public void A_bar_is_as_long_as_its_price_and_its_parts_tile_it_in_proportion()
    {
        var plan = Plan(("low", 40), ("high", 80));
        var picture = PriceBars.Of(plan, new PricePictureOptions { WidthMm = 100 });
        var parts = Boxes(picture, "part").GroupBy(b => b.TopMm).Take(2).Select(g => g.OrderBy(b => b.LeftMm).ToArray()).ToArray();
        // Half a millimetre at both sides is for the lines.
        Assert.Equal([0.5 + 49.5, 99.5], parts.Select(p => Math.Round(p[^1].RightMm, 6)));
        foreach (var (bar, price) in parts.Zip(plan.Prices))
        {
            var amounts = PriceMake.Of(plan, price).Parts.Where(p => p.Amount > 0).ToArray();
            Assert.Equal(amounts.Length, bar.Length);
            Assert.Equal(0.5, bar[0].LeftMm, HairMm);
            for (var i = 0; i < bar.Length; i++)
            {
                Assert.Equal((double)amounts[i].Amount / 80 * 99, bar[i].WidthMm, HairMm);
                if (i > 0) Assert.Equal(bar[i - 1].RightMm, bar[i].LeftMm, HairMm);
            }
        }
        Assert.Empty(Boxes(picture, "loss"));
    }

    [Fact]
    public void A_price_that_loses_has_its_cost_run_beyond_it_in_a_frame_of_its_own()
    {
        var plan = Plan(("low", 10));
        var picture = PriceBars.Of(plan, new PricePictureOptions { WidthMm = 100 });
        var cost = plan.Prices[0].Outcome.Price - plan.Prices[0].Outcome.Gain;
        var loss = Assert.Single(Boxes(picture, "loss"));
        Assert.Equal(0.5 + (double)(10 / cost) * 99, loss.LeftMm, HairMm);
        Assert.Equal(99.5, loss.RightMm, HairMm);
        Assert.Contains("loss", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Gains_are_lines_through_what_is_asked_and_cross_the_level_at_their_strokes()
    {
        var plan = Plan(("low", 40), ("high", 80));
        var picture = GainOverPrices.Of(plan, Sold.Piece, new PricePictureOptions { WidthMm = 100 })!;
        var level = Assert.Single(Lines(picture, "level"));
        // Both rules have the same fees: one line over the other, and one stroke over the other.
        var gains = Lines(picture, "gain").ToArray();
        Assert.Equal(2, gains.Length);
        foreach (var (line, stroke) in gains.Zip(Lines(picture, "even")))
        {
            Assert.Equal(level.From.YMm, Y(line, stroke.From.XMm), HairMm);
            Assert.Equal((stroke.From.YMm + stroke.To.YMm) / 2, level.From.YMm, HairMm);
        }
        var asked = picture.Inked().Where(m => m.Class == "asked").Select(m => ((Circle)m.Mark).Middle).ToArray();
        Assert.All(asked.Zip(gains), a => Assert.Equal(Y(a.Second, a.First.XMm), a.First.YMm, HairMm));
        // 40 and 80 stand at those parts of a span up to a hundred, between half a millimetre at both sides.
        Assert.Equal([0.5 + 0.40 * 99, 0.5 + 0.80 * 99], asked.Select(a => Math.Round(a.XMm, 6)));
        Assert.NotEqual(gains[0].Pen.DashesMm, gains[1].Pen.DashesMm);

        static double Y(Line line, double x) => line.From.YMm + (x - line.From.XMm) / (line.To.XMm - line.From.XMm) * (line.To.YMm - line.From.YMm);
    }

    [Fact]
    public void Rules_that_ask_and_leave_the_same_have_their_letters_side_by_side()
    {
        var picture = GainOverPrices.Of(Plan(("one", 40), ("two", 40), ("three", 40)), Sold.Piece)!;
        var circles = picture.Inked().Where(m => m.Class == "asked").Select(m => (Circle)m.Mark).ToArray();
        for (var a = 0; a < circles.Length; a++)
            for (var b = a + 1; b < circles.Length; b++)
                Assert.True(Math.Abs(circles[a].Middle.XMm - circles[b].Middle.XMm) >= 2 * circles[a].RadiusMm - HairMm);
    }

    [Fact]
    public void Bars_of_kits_are_in_proportion_the_shortest_first_and_the_stroke_is_at_the_fewest()
    {
        var (plan, now) = Kits(270, 450);
        var picture = KitsPerBead.Of(plan, now, new PricePictureOptions { WidthMm = 120 });
        var bars = Boxes(picture, "bar").ToArray();
        // 135 rounds and 45 spacers each: two kits and ten.
        Assert.Equal(10.0 / 2, bars[1].WidthMm / bars[0].WidthMm, HairMm);
        Assert.Equal(bars[0].RightMm, Assert.Single(Lines(picture, "fewest")).From.XMm, HairMm);
        Assert.Equal(bars[0], Assert.Single(Boxes(picture, "first")));
        Assert.Contains("2; ", picture.Description, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_sticks_out_and_no_word_lies_on_another_whatever_the_width_and_language()
    {
        foreach (var language in Languages.All)
            foreach (var width in (double[])[55, 80, 160])
            {
                var options = new PricePictureOptions { WidthMm = width, Language = language };
                var (kits, now) = Kits(135, 1_000_000);
                Picture[] pictures = [PriceBars.Of(Plan(("wholesale_to_a_shop_far_away", 40), ("b", 8)), options), GainOverPrices.Of(Plan(("low", 40), ("high", 80)), Sold.Piece, options)!, KitsPerBead.Of(kits, now, options)];
                foreach (var picture in pictures)
                {
                    Assert.Null(picture.OffSheet());
                    Assert.Null(picture.Collision());
                }
            }
    }

    private static (KitPlan Plan, KitsNow Now) Kits(int rounds, int spacers)
    {
        var reckoned = DrawnPieces.Reckoned("boardwalk");
        var home = new HomeStock(new Dictionary<string, int> { ["round"] = rounds, ["spacer"] = spacers }, new Dictionary<string, System.Collections.Immutable.ImmutableArray<string>>());
        Assert.True(KitPlan.TryMake([new KitPiece(new ShoppingPiece("one", reckoned.Piece, 1), reckoned)], Spares.None, home, out var plan, out _));
        return (plan!, plan!.Now[0]);
    }
}
