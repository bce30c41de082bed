using Coilwright.Core.Beads;
using Coilwright.Core.Costing;

namespace Coilwright.Core.Tests.Costing;

public class MaterialsListTests
{
    private static Bead Bead(string id, int? pack = null, decimal? price = null) => SamplePieces.Bead(id, "round", 6,
        with: d => d with { Pack = pack is { } beads ? new Pack("strand", beads) : null, Price = price });

    private static MaterialsList List(Bead[] beads, params IEnumerable<int> kinds) => MaterialsList.Of(SamplePieces.Piece([.. beads], kinds));

    [Theory]
    [InlineData(1, 1, 49)]
    [InlineData(50, 1, 0)] // Exactly a pack.
    [InlineData(51, 2, 49)]
    [InlineData(100, 2, 0)]
    public void Whole_packs_are_bought(int use, int packs, int left)
    {
        var line = Assert.Single(List([Bead("a", 50, 3.40m)], Enumerable.Repeat(0, use)).Lines);
        Assert.Equal((use, packs, packs * 50, left, packs * 3.40m), (line.Use, line.Packs, line.Bought, line.Left, line.Cost));
    }

    [Fact]
    public void A_kind_that_is_not_used_is_not_bought()
    {
        var list = List([Bead("a"), Bead("b", 10), Bead("c", 10)], 2, 0, 2);
        Assert.Equal([(0, 1), (2, 2)], list.Lines.Select(l => (l.KindIndex, l.Use)));
        Assert.Equal(3, list.Beads);
    }

    [Fact]
    public void A_cost_is_known_only_with_pack_and_price_and_the_rest_is_counted()
    {
        var list = List([Bead("a", 10, 2.50m), Bead("b", 10), Bead("c", null, 1m), Bead("d", 4, 1.20m)], 0, 1, 2, 3, 3, 3, 3, 3);
        Assert.Equal([2.50m, null, null, 2.40m], list.Lines.Select(l => l.Cost));
        Assert.Equal(4.90m, list.KnownCost);
        Assert.Equal(2, list.Unpriced);
    }

    [Fact]
    public void With_no_price_at_all_there_is_no_cost() => Assert.Null(List([Bead("a")], 0).KnownCost);

    [Fact]
    public void A_pack_of_absurd_size_is_one_pack()
    {
        var line = Assert.Single(List([Bead("a", int.MaxValue)], 0, 0).Lines);
        Assert.Equal((1, int.MaxValue), (line.Packs, line.Bought));
    }
}
