using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Tests.Stringing;

public class StretchesTests
{
    private static readonly string[] Beads = ["a", "b"];

    private static StringingOrder Order(string text) => OrderNotation.Read(text, Beads).Order!;

    [Theory]
    [InlineData("a, g (2 a, b), b, 2 g", "-: 1; g: 3; -: 1; g: 3; g: 3")]
    [InlineData("3 a", "-: 3")]
    [InlineData("g (a)", "g: 1")]
    [InlineData("a, outer (b, inner (2 a), b), a", "-: 2; inner: 2; -: 2")]
    public void The_order_falls_into_its_reading_groups_and_what_is_between(string text, string expected) =>
        Assert.Equal(expected,
            string.Join("; ", Order(text).Stretches.Select(s => $"{s.Group ?? "-"}: {s.Count}")));

    [Fact]
    public void Stretches_tile_the_order()
    {
        var order = Order("a, g (2 a, b), 4 b, mirror (g, a) around b");
        var next = 0;
        foreach (var stretch in order.Stretches)
        {
            Assert.Equal(next, stretch.First);
            Assert.InRange(stretch.Count, 1, order.Count);
            next += stretch.Count;
        }
        Assert.Equal(order.Count, next);
    }
}
