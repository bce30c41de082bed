using Coilwright.Core.Cutting;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Tests.Cutting;

public class WireCuttingTests
{
    private static readonly WireSteel MusicWire = new("music-wire", 7.861, 206_843, 79_290, "0.284 lb/in3");
    private static readonly WireSteel Stainless = new("stainless-302", 7.916, 193_053, 68_948, "0.286 lb/in3");

    // A loop of 180 mm.
    private static readonly CoilWire Wire = new(0.64, CoilDatum.MeasuredLoop, 180, null);

    private static WireDemand Piece(string name, double mm, int count = 1, CoilWire? wire = null) => new(name, wire ?? Wire, mm, count);

    private static WireLot Packs(double loops, int? count, decimal? price = null, CoilWire? wire = null) => new("packs", wire ?? Wire, WireLot.LengthOfLoopsMm(wire ?? Wire, loops), count, price, false);

    private static WireLot Offcut(double mm, int count = 1, CoilWire? wire = null) => new("offcut", wire ?? Wire, mm, count, null, true);

    private static CuttingPlan Plan(WireDemand[] pieces, params WireLot[] lots) => Plan(pieces, new CuttingRules(), lots);

    private static CuttingPlan Plan(WireDemand[] pieces, CuttingRules rules, params WireLot[] lots)
    {
        var plan = WireCutting.Of(pieces, lots, rules, SamplePieces.Choices);
        AssertCut(plan);
        return plan;
    }

    // Every length is cut once or told as not cut, no coil gives more than it has, and everything it has is somewhere.
    private static void AssertCut(CuttingPlan plan)
    {
        for (var p = 0; p < plan.Pieces.Length; p++)
            Assert.Equal(plan.Pieces[p].Count, plan.Coils.Sum(c => c.Times * c.Cuts.Count(m => m.Piece == p)) + plan.NotCut.Where(n => n.Piece == p).Sum(n => n.Count));
        for (var l = 0; l < plan.Lots.Length; l++)
            Assert.True(plan.Lots[l].Count is not { } there || plan.Coils.Where(c => c.Lot == l).Sum(c => c.Times) <= there);
        foreach (var coil in plan.Coils)
        {
            var lot = plan.Lots[coil.Lot];
            var from = 0;
            foreach (var cut in coil.Cuts)
            {
                Assert.Equal(from, cut.FromMm);
                Assert.True(cut.LengthMm >= plan.Pieces[cut.Piece].CutMm - 1e-6);
                // What is counted at the bench is the length, to the millimetre that it is rounded up by.
                Assert.InRange(cut.Mark.Loops * lot.Wire.LoopMm + cut.Mark.RestMm, cut.LengthMm - 1e-6, cut.LengthMm + 1);
                from += cut.LengthMm + plan.LossMm;
            }
            Assert.True(from - plan.LossMm <= lot.LengthMm + 1e-6);
            Assert.Equal(Math.Max(0, lot.WholeMm - from), coil.LeftMm);
        }
        Assert.Equal(plan.Coils.Sum(c => (long)c.Times * plan.Lots[c.Lot].WholeMm), plan.Coils.Sum(c => (long)c.Times * c.Cuts.Sum(m => m.LengthMm)) + plan.KeptMm + plan.WasteMm);
    }

    [Fact]
    public void Marks_are_whole_loops_and_what_follows_them()
    {
        Assert.Equal(new LoopMark(4, 112), LoopMark.Of(832, 180));
        Assert.Equal(new LoopMark(4, 0), LoopMark.Of(720, 180));
        Assert.Equal(new LoopMark(0, 95), LoopMark.Of(94.2, 180));
        // Three loops of pi times 60.64 mm are three loops, whatever the last bit.
        Assert.Equal(new LoopMark(3, 0), LoopMark.Of(3 * (Math.PI * 60.64), Math.PI * 60.64));
    }

    [Fact]
    public void A_length_is_rounded_up_and_a_coil_down()
    {
        var exact = Plan([Piece("a", 900, 2)], Packs(10, 1));
        Assert.True(exact.ComesOut);
        Assert.Equal((0, 0), (exact.KeptMm, exact.WasteMm));
        // A tenth of a millimetre too long, twice, no longer fits.
        Assert.False(Plan([Piece("a", 900.1, 2)], Packs(10, 1)).ComesOut);
    }

    [Fact]
    public void An_offcut_is_used_before_a_new_pack_is_begun()
    {
        var plan = Plan([Piece("a", 700, 3)], Packs(12, 5), Offcut(800));
        Assert.Equal((1, 1, 1), (plan.NewCoils, plan.OffcutsUsed, plan.LeastNewCoils));
        Assert.True(plan.IsProven);
        Assert.Equal(2, plan.Coils.Length);
        Assert.True(plan.Lots[plan.Coils[0].Lot].IsOffcut);
    }

    [Fact]
    public void What_offcuts_hold_begins_as_few_of_them_as_can_be_and_the_shorter_one()
    {
        var plan = Plan([Piece("a", 300, 2)], Packs(12, null), Offcut(310), Offcut(900), Offcut(650), Offcut(305));
        Assert.Equal((0, 1), (plan.NewCoils, plan.OffcutsUsed));
        Assert.Equal(650, plan.Lots[Assert.Single(plan.Coils).Lot].LengthMm);
        Assert.True(plan.IsProven);
    }

    [Fact]
    public void With_prices_the_cheapest_coils_are_begun()
    {
        // Two of 6 loops hold two lengths each and cost less than one of 12 that holds four.
        var plan = Plan([Piece("a", 500, 4)], Packs(6, null, 1.10m), Packs(12, null, 2.30m));
        Assert.Equal((CuttingAim.Cost, 2.20m, 2.20m, 2), (plan.Aim, plan.Cost, plan.LeastCost, plan.NewCoils));
        Assert.Equal(2.20m, Plan([Piece("a", 500, 4)], Packs(6, null, 1.10m), Packs(12, null, 2.21m)).Cost);
        Assert.Equal(2.19m, Plan([Piece("a", 500, 4)], Packs(6, null, 1.10m), Packs(12, null, 2.19m)).Cost);
    }

    [Fact]
    public void While_one_new_coil_has_no_price_the_fewest_are_begun()
    {
        var plan = Plan([Piece("a", 500, 4)], Packs(6, null, 1.10m), Packs(12, null));
        Assert.Equal((CuttingAim.NewCoils, (decimal?)null, 1, 1), (plan.Aim, plan.Cost, plan.LeastNewCoils, plan.NewCoils));
    }

    [Fact]
    public void What_does_not_come_out_is_told_with_how_much_is_missing_and_what_would_do()
    {
        var plan = Plan([Piece("a", 1000, 5)], Packs(12, 2));
        var missing = Assert.Single(plan.NotCut);
        Assert.Equal(new NotCut(0, 1, 1000, WhyNotCut.TooLittle), missing);
        Assert.Equal(1000, plan.LeastMissingMm);
        Assert.True(plan.IsProven);
        Assert.Equal(new MoreWouldDo(0, 1, true), Assert.Single(plan.More));
        Assert.Null(plan.LeastNewCoils);
    }

    [Fact]
    public void A_length_that_no_coil_has_is_told_as_that_and_the_others_are_cut()
    {
        var plan = Plan([Piece("long", 2500), Piece("short", 500)], Packs(12, 1));
        Assert.Equal(new NotCut(0, 1, 2500, WhyNotCut.LongerThanAny), Assert.Single(plan.NotCut));
        Assert.Equal(1, plan.PiecesCut);
        Assert.Empty(plan.More);
    }

    [Theory]
    [InlineData(0.66, 180, false, true)] // caliper and label
    [InlineData(0.67, 180, false, false)]
    [InlineData(0.64, 185, false, true)] // ruler and label
    [InlineData(0.64, 186, false, false)]
    [InlineData(0.64, 180, true, false)]
    public void Only_wire_of_the_same_thickness_coil_and_steel_is_cut(double wireMm, double loopMm, bool otherSteel, bool comesOut)
    {
        var wire = Wire with { Steel = MusicWire };
        var lot = Packs(12, 1, wire: new CoilWire(wireMm, CoilDatum.MeasuredLoop, loopMm, otherSteel ? Stainless : MusicWire));
        var plan = Plan([Piece("a", 500, wire: wire)], lot);
        Assert.Equal(comesOut, plan.ComesOut);
        if (!comesOut) Assert.Equal(WhyNotCut.NoSuchWire, Assert.Single(plan.NotCut).Why);
        // A steel that is not told is no difference.
        Assert.True(Plan([Piece("a", 500)], Packs(12, 1, wire: Wire with { Steel = MusicWire })).ComesOut);
    }

    [Fact]
    public void Two_kinds_of_wire_are_planned_apart_and_told_together()
    {
        var thin = Wire with { WireMm = 0.5 };
        var plan = Plan([Piece("a", 1000, 3), Piece("b", 1000, 3, thin)], Packs(12, null), Packs(12, null, wire: thin));
        Assert.Equal((4, 4, true), (plan.NewCoils, plan.LeastNewCoils, plan.IsProven));
    }

    [Fact]
    public void What_is_left_is_gathered_and_long_enough_to_keep_or_waste()
    {
        // 1620 mm left over three packs however it is cut; in one coil it is one end of nine loops and not three of three.
        var plan = Plan([Piece("a", 540, 9)], Packs(12, 3));
        Assert.Equal((3, 1620, 0), (plan.NewCoils, plan.KeptMm, plan.WasteMm));
        Assert.Equal(1620, plan.Coils.Max(c => c.LeftMm));
        var strict = Plan([Piece("a", 540, 9)], new CuttingRules(KeepFromMm: 1700), Packs(12, 3));
        Assert.Equal((0, 1620), (strict.KeptMm, strict.WasteMm));
    }

    [Fact]
    public void A_cut_that_takes_wire_is_counted()
    {
        Assert.Equal(1, Plan([Piece("a", 900, 2)], new CuttingRules(), Packs(10, null)).NewCoils);
        Assert.Equal(2, Plan([Piece("a", 900, 2)], new CuttingRules(LossMm: 0.4), Packs(10, null)).NewCoils);
        // The last cut of a coil that comes out exactly is none.
        Assert.Equal(1, Plan([Piece("a", 899.5, 2)], new CuttingRules(LossMm: 0.4), Packs(10.01, null)).NewCoils);
    }

    [Fact]
    public void What_is_there_afterwards_is_what_was_not_begun_and_the_offcuts()
    {
        var plan = Plan([Piece("a", 1000, 3)], Packs(12, 5), Packs(30, null));
        Assert.Equal(1, plan.NewCoils);
        var after = plan.WireAfterwards();
        Assert.Equal(plan.Lots.Where(l => !l.IsOffcut).Sum(l => l.Count ?? 0) - plan.Coils.Where(c => plan.Lots[c.Lot].Count is not null).Sum(c => c.Times), after.Where(l => !l.IsOffcut).Sum(l => l.Count ?? 0));
        Assert.Equal(plan.KeptMm, (long)after.Where(l => l.IsOffcut).Sum(l => l.LengthMm * l.Count!.Value));
    }

    // Worked out apart from this code: an ounce (28.35 g) of wire of 0.642 mm at 7.86 g/cm3 is 11.15 m, in 69 loops of 2 inches inside.
    // The trade says 68 to 70 loops of 2-inch bracelet wire an ounce (common practice, no source).
    [Fact]
    public void An_ounce_of_wire_is_the_length_that_the_trade_counts()
    {
        var wire = new CoilWire(0.642, CoilDatum.Inside, 50.8, MusicWire);
        var mm = WireLot.LengthOfMassMm(wire, 28.35)!.Value;
        // Half of the last printed digit, of the length and of the thickness, whose square it goes with: 11.15 x 2 x 0.0005 / 0.642.
        Near.Equal(11.15, mm / 1000, 0.005 + 0.0174);
        Assert.InRange(mm / wire.LoopMm, 68, 70);
        Assert.Null(WireLot.LengthOfMassMm(wire with { Steel = null }, 28.35));
    }

    [Theory]
    [InlineData(double.NaN)]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.PositiveInfinity)]
    public void A_length_that_is_none_is_refused(double mm) => Assert.Throws<ArgumentOutOfRangeException>(() => Plan([Piece("a", mm)], Packs(12, 1)));

    [Fact]
    public void More_lengths_than_are_planned_at_once_are_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Plan([Piece("a", 500, CuttingRules.MostPieces + 1)], Packs(12, null)));
}
