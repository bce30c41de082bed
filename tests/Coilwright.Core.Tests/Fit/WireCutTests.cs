using Coilwright.Core.Findings;
using Coilwright.Core.Fit;
using Coilwright.Core.StringingMaterials.MemoryWire;
using CsCheck;

namespace Coilwright.Core.Tests.Fit;

public class WireCutTests
{
    private static readonly Core.Pieces.Piece Sample = SamplePieces.Piece([SamplePieces.Bead("round", "round", 8)], Enumerable.Repeat(0, 90));

    [Fact]
    public void The_cut_is_the_beads_at_their_longest_and_both_ends_and_grip_and_spare() =>
        Gen.Select(Gen.Double[10, 1500], Gen.Double[10, 1500], Gen.Double[1, 6], Gen.Double[1, 6], Gen.Double[0, 30], Gen.Double[0, 50])
            .Sample((worn, relaxed, start, finish, grip, spare) =>
            {
                var piece = Sample with { Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, start), new WireEnd(EndFinish.GluedCap, finish), grip, spare) };
                var wire = WireCut.Of(piece, worn, relaxed);
                var loop = Math.PI * (start + 0.62);
                Near.Equal(Math.Max(worn, relaxed) + loop + finish + 2 * grip + spare, wire.CutMm, 1e-9); // rounding
                Near.Equal(wire.BeadedMm + wire.EndsMm + wire.GripMm + wire.SpareMm, wire.CutMm, 1e-9);
                Near.Equal(loop, wire.TrimStartMm, 1e-12);
                Assert.Equal(finish, wire.TrimFinishMm);
                Near.Equal(wire.CutMm / 188.5, wire.Loops, 1e-12);
                Assert.Null(wire.SlackMm);
            });

    [Theory]
    [InlineData(4.5, 4.5)]
    [InlineData(4.51, 4.6)]
    [InlineData(0.3, 0.3)] // three tenths are no binary number
    [InlineData(5.39, 5.4)]
    public void Loops_to_cut_are_tenths_and_never_too_little(double loops, double toCut)
    {
        var wire = WireCut.Of(Sample, 700, 700) with { Loops = loops };
        Near.Equal(toCut, wire.LoopsToCut, 1e-12); // rounding
    }

    [Fact]
    public void Slack_is_what_she_cut_less_beads_and_finishes()
    {
        var piece = Sample with { Wire = Sample.Wire with { CutMm = 800 } };
        Near.Equal(800 - 720 - 2 * Math.PI * 3.62, WireCut.Of(piece, 715, 720).SlackMm!.Value, 1e-9);
    }

    [Fact]
    public void A_practice_bend_overrules_the_formula_at_its_end_alone()
    {
        var bent = Sample with { Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3) { MeasuredMm = 13 }, new WireEnd(EndFinish.TurnedLoop, 3), 20, 0) };
        var wire = WireCut.Of(bent, 700, 700);
        Assert.Equal(13, wire.TrimStartMm);
        Near.Equal(Math.PI * 3.62, wire.TrimFinishMm, 1e-12);
    }

    // Common practice, no source: a turned end loop in memory wire takes about half an inch (12.7 mm) or a little more. Round-nose pliers turn loops of
    // 3 to 4 mm inside; "about" is taken as a tenth of an inch either way.
    [Theory]
    [InlineData(3.0)]
    [InlineData(3.5)]
    [InlineData(4.0)]
    public void A_turned_loop_takes_about_half_an_inch_of_wire(double insideMm) =>
        Near.Equal(12.7, new WireEnd(EndFinish.TurnedLoop, insideMm).WireUsedMm(0.62), 2.54);

    // Computed for the trade, common practice, no source: 2 mm takes 8.2, 2.5 takes 9.8, 3 takes 11.4, 4 takes 14.5 mm of wire.
    [Theory]
    [InlineData(2.0, 8.2)]
    [InlineData(2.5, 9.8)]
    [InlineData(3.0, 11.4)]
    [InlineData(4.0, 14.5)]
    public void An_end_loop_takes_what_makers_reckon(double insideMm, double wireMm) =>
        Near.Equal(wireMm, new WireEnd(EndFinish.TurnedLoop, insideMm).WireUsedMm(0.62), 0.06); // half of the last printed digit, and 0.02 mm of wire taken otherwise

    // Common practice, no source: makers cut about two inches beyond the turns to have something to work with.
    [Fact]
    public void Ends_and_grip_come_to_about_two_inches_or_a_little_more()
    {
        var wire = WireCut.Of(Sample, 700, 700);
        Assert.InRange(wire.CutMm - wire.BeadedMm, 2 * 25.4, 2.5 * 25.4);
    }

    // Common practice, no source: an ounce of two-inch bracelet coil is 68 to 70 loops. Two inches inside, 22 gauge (0.644 mm), steel of 7.86 g/cm3.
    [Fact]
    public void An_ounce_of_two_inch_coil_is_68_to_70_loops()
    {
        var coil = new CoilWire(0.644, CoilDatum.Inside, 50.8, new WireSteel("any", 7.86, 193_000, 69_000, "spring steel, 0.284 lb/in3"));
        Assert.InRange(28.3495 / coil.LoopMassG!.Value, 68, 70);
    }

    [Fact]
    public void A_glued_cap_has_no_loop_to_hold_or_hide()
    {
        Assert.Null(new WireEnd(EndFinish.GluedCap, 5).OutsideMm(0.62));
        Near.Equal(3 + 2 * 0.62, new WireEnd(EndFinish.TurnedLoop, 3).OutsideMm(0.62)!.Value, 1e-12);
    }
}
