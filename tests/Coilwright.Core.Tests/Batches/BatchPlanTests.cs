using Coilwright.Core.Batches;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Tests.Batches;

/// <summary>Several alike: what is counted out is what is strung, and time is the maker's own.</summary>
public class BatchPlanTests
{
    private static readonly Piece Mixed = SamplePieces.Piece(
        [SamplePieces.Bead("round", "round", 6), SamplePieces.Bead("disc", "heishi", 2, 8, 8), SamplePieces.Bead("big", "round", 30)], [.. Enumerable.Range(0, 120).Select(i => i % 5 == 4 ? 1 : 0), 2]);

    private static BatchPlan Plan(CountingTray tray, int count = 10, CostSheet? costs = null) => BatchPlan.Of(Reckoning.Of(Mixed, SamplePieces.Data), count, tray, costs ?? CostSheet.Empty);

    [Theory, InlineData(12, 40), InlineData(3, 40), InlineData(1, 1), InlineData(24, 7), InlineData(12, 1000)]
    public void Wells_and_what_lies_beside_hold_every_bead_once_and_no_well_more_than_it_can(int wells, int rounds)
    {
        var tray = new CountingTray(wells, rounds);
        var plan = Plan(tray);
        foreach (var kind in plan.Reckoned.Counts)
            Assert.Equal(plan.Beside.Contains(kind) ? 0 : kind.Count, plan.Wells.Where(w => w.Kind == kind).Sum(w => w.Count));
        Assert.All(plan.Wells, w => Assert.InRange(w.Count, 1, tray.Holds(w.Kind.Bead)));
        Assert.All(plan.Wells.Index(), w => Assert.Equal((w.Index / wells + 1, w.Index % wells + 1), (w.Item.Tray, w.Item.Well)));
        if (plan.IsByTurn) Assert.All(plan.Wells.Zip(plan.Wells.Skip(1)), pair => Assert.True(pair.First.Turn <= pair.Second.Turn));
    }

    [Fact]
    public void A_well_by_turns_holds_what_the_turn_strings()
    {
        var plan = Plan(new CountingTray(24, 60));
        Assert.True(plan.IsByTurn);
        foreach (var group in plan.Wells.GroupBy(w => (w.Turn, w.Kind.KindIndex)))
            Assert.Equal(Enumerable.Range(0, Mixed.Order.Count).Count(i => Mixed.Order.Kinds[i] == group.Key.KindIndex && plan.Reckoned.Lie.TurnWithOverlap(i) == group.Key.Turn), group.Sum(w => w.Count));
    }

    // A ball of 6 mm is what a well is measured with; twice as wide takes eight times the room.
    [Fact]
    public void A_well_holds_as_many_as_take_the_same_room()
    {
        var tray = new CountingTray(12, 40);
        Assert.Equal(40, tray.Holds(SamplePieces.Bead("b", "round", 6)));
        Assert.Equal(5, tray.Holds(SamplePieces.Bead("b", "round", 12)));
        Assert.Equal(0, tray.Holds(SamplePieces.Bead("b", "round", 21)));
    }

    [Fact]
    public void What_is_done_once_is_shared_and_what_is_done_for_each_is_counted_for_each()
    {
        var costs = new CostSheet
        {
            Steps = [new TimedStep("lay out", 12, true, [Sold.Piece]), new TimedStep("string", 25.5m, false, [Sold.Piece, Sold.Kit]), new TimedStep("bag", 6, false, [Sold.Kit])],
        };
        var plan = Plan(CountingTray.Usual, 10, costs);
        Assert.Equal(["lay out", "string"], plan.Steps.Select(s => s.Step.Name));
        Assert.Equal((267m, 26.7m), (plan.Minutes, plan.MinutesEach));
        Assert.Equal(37.5m, Plan(CountingTray.Usual, 1, costs).Minutes);
        Assert.Equal(10 * plan.Reckoned.Wire.CutMm, plan.CutMm, 9);
    }

    [Theory, InlineData(0, 12, 40), InlineData(1, 0, 40), InlineData(1, 12, 0)]
    public void Nothing_to_make_and_nothing_to_count_into_is_refused(int count, int wells, int rounds) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan(new CountingTray(wells, rounds), count));
}
