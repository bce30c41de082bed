using System.Collections.Immutable;
using Coilwright.Web.Components.Bench;
using CsCheck;

namespace Coilwright.Web.Tests.Components;

public sealed class LastingBeadsTests
{
    [Fact]
    public void Beads_before_and_behind_an_edit_keep_their_names_and_looks()
    {
        var beads = new LastingBeads();
        beads.GoOn([0, 1, 0, 2, 1]);
        Assert.Equal([0, 1, 2, 3, 4], beads.Names);
        // As they are drawn on paper: the second of its kind has the second look.
        Assert.Equal([0, 0, 1, 0, 1], beads.Looks);

        beads.GoOn([0, 1, 2, 0, 2, 1]);
        Assert.Equal([0, 1, 5, 2, 3, 4], beads.Names);
        Assert.Equal([0, 0, 0, 1, 0, 1], beads.Looks);

        beads.GoOn([0, 1, 0, 2, 1]);
        Assert.Equal([0, 1, 2, 3, 4], beads.Names);

        beads.GoOn([]);
        Assert.Empty(beads.Names);
    }

    [Fact]
    public void A_chip_strung_before_a_chip_is_no_twin_of_it()
    {
        var beads = new LastingBeads();
        beads.GoOn([1, 0, 0, 0]);
        beads.GoOn([1, 0, 0, 2, 0]);
        beads.GoOn([0, 1, 0, 0, 2, 0]);
        beads.GoOn([0, 1, 0, 0, 0, 2, 0]);
        for (var i = 2; i < 4; i++) Assert.NotEqual(beads.Looks[i], beads.Looks[i + 1]);
    }

    [Fact]
    public void No_two_beads_ever_have_one_name() =>
        Gen.Int[0, 2].Array[0, 12].Array[1, 8].Sample(orders =>
        {
            var beads = new LastingBeads();
            foreach (var order in orders)
            {
                var before = beads.Names;
                beads.GoOn([.. order]);
                if (beads.Names.Length != order.Length || beads.Looks.Length != order.Length || beads.Names.Distinct().Count() != order.Length) return false;
                // What is kept is kept in its order.
                var kept = beads.Names.Where(before.Contains).ToImmutableArray();
                if (!kept.SequenceEqual(before.Where(kept.Contains))) return false;
            }
            return true;
        });
}
