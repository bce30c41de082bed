using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.Drawing;

public class PictureTests
{
    private static readonly Paint Black = Paint.Filled(new Srgb(0, 0, 0));

    [Fact]
    public void A_named_mark_is_found_where_its_groups_move_it_with_all_its_ink()
    {
        var inner = new Group([new Rectangle(new Box(0, 0, 2, 1), Black), new Circle(new(5, 0), 1, Black)]) { Id = "pair", MoveRightMm = 10 };
        var picture = new Picture(50, 50, "x", "", [new Group([inner, new Rectangle(new Box(0, 0, 1, 1), Black)]) { MoveDownMm = 20, Id = "all" }]);
        var named = picture.Named(CautiousSans.Instance).ToDictionary(n => n.Mark.Id!, n => n.Box);
        // A circle is four curves; its box is that of their control points at worst a rounding away.
        Same(new Box(10, 19, 16, 21), named["pair"]);
        Same(new Box(0, 19, 16, 21), named["all"]);
        Assert.Equal(2, named.Count);

        static void Same(Box expected, Box actual)
        {
            Assert.Equal(expected.LeftMm, actual.LeftMm, 1e-9);
            Assert.Equal(expected.TopMm, actual.TopMm, 1e-9);
            Assert.Equal(expected.RightMm, actual.RightMm, 1e-9);
            Assert.Equal(expected.BottomMm, actual.BottomMm, 1e-9);
        }
    }
}
