using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;
using CsCheck;

namespace Coilwright.Core.Tests.Fit;

public class FitAndFocalTests
{
    private static readonly Bead Round8 = SamplePieces.Bead("round", "round", 8);
    private static readonly Bead Star = SamplePieces.Bead("star", "focal", 24, 16, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2 });

    private static readonly ReckoningData Quick = SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 1, SpreadDraws = 1 } };

    [Fact]
    public void Turns_are_wire_over_wire_per_turn_and_fewer_where_the_turn_is_wider() =>
        Gen.Select(Gen.Int[5, 120], Gen.Double[120, 230]).Sample((beads, wrist) =>
        {
            var r = Reckoning.Of(SamplePieces.Piece([Round8], Enumerable.Repeat(0, beads), wrist), Quick);
            Near.Equal(r.Lie.BeadedMm / r.Worn.WirePerTurnMm, r.Fit.TurnsWorn, 1e-12);
            Assert.True(r.Fit.TurnsWornFrom < r.Fit.TurnsWorn && r.Fit.TurnsWorn < r.Fit.TurnsWornTo);
            // Within the band the wire under rounds changes by less than a part in a thousand.
            Near.Equal(r.Fit.TurnsWorn * r.Worn.WirePerTurnMm / (r.Worn.WirePerTurnMm + r.Worn.BandMm), r.Fit.TurnsWornFrom, 0.002 * r.Fit.TurnsWorn);
            if (r.Worn.By == WornBy.Coil) Near.Equal(r.Fit.TurnsWorn, r.Fit.TurnsRelaxed, 1e-9);
        }, iter: 60);

    [Theory]
    [InlineData(94, null, 4)]
    [InlineData(100, null, 4)]
    [InlineData(94, 4.0, 4)]
    [InlineData(94, 5.0, 5)]
    [InlineData(5, null, 1)]
    public void Ends_are_held_against_the_designed_turns_or_the_nearest_whole_number(int beads, double? designed, int turns)
    {
        var piece = SamplePieces.Piece([Round8], Enumerable.Repeat(0, beads), wristMm: 140) with { Wishes = new Wishes { Turns = designed } };
        var r = Reckoning.Of(piece, Quick);
        Assert.Equal(turns, r.Fit.OverlapTurns);
        Near.Equal(r.Lie.BeadedMm - turns * r.Worn.WirePerTurnMm, r.Fit.EndsOverlapMm, 1e-9);
    }

    [Fact]
    public void Ends_meet_when_nobody_sees_a_gap_or_an_overlap()
    {
        var fit = Reckoning.Of(SamplePieces.Piece([Round8], Enumerable.Repeat(0, 20)), Quick).Fit;
        Assert.All([-0.49, 0, 0.49], mm => Assert.True((fit with { EndsOverlapMm = mm }).EndsMeet));
        Assert.All([-0.5, 0.5, 30], mm => Assert.False((fit with { EndsOverlapMm = mm }).EndsMeet));
    }

    [Fact]
    public void An_end_bead_hides_its_loop_when_it_is_as_large_both_ways()
    {
        var thin = SamplePieces.Bead("thin", "coin", 10, thickness: 4);
        var piece = SamplePieces.Piece([Round8, thin], [0, 0, 1]);
        // A loop of 3 mm inside is 4.24 mm across: the round of 8 hides it, the coin of 10 by 4 does not.
        Assert.Equal([true, false], Reckoning.Of(piece, Quick).Fit.EndLoopHidden);
        var capped = piece with { Ends = piece.Ends with { Finish = new WireEnd(EndFinish.GluedCap, 5) } };
        Assert.Equal([true, null], Reckoning.Of(capped, Quick).Fit.EndLoopHidden);
    }

    [Fact]
    public void The_focal_is_the_focal_bead_nearest_the_middle_of_the_order()
    {
        int? At(params int[] order) => FocalModel.IndexOf(SamplePieces.Piece([Round8, Star], order));
        Assert.Null(At(0, 0, 0));
        Assert.Equal(4, At(1, 0, 0, 0, 1, 0, 0, 0));
        Assert.Equal(0, At(1, 0, 0));
        // Two as near: the first.
        Assert.Equal(1, At(0, 1, 0, 1, 0));
    }

    [Fact]
    public void Focal_on_top_puts_the_focal_on_the_top() =>
        Gen.Select(Gen.Int[2, 200], Gen.Int[0, 1000], Gen.Double[120, 230]).Sample((beads, at, wrist) =>
        {
            var order = Enumerable.Repeat(0, beads).ToArray();
            order[at % beads] = 1;
            var piece = SamplePieces.Piece([Round8, Star], order, wrist) with { Wearer = new Wearer(wrist, 0) { FocalOnTop = true } };
            var r = Reckoning.Of(piece, Quick);
            // Rounding of an angle of up to nine turns.
            Near.Equal(0, r.Focal!.AngleDeg, 1e-9);
            Near.Equal(0, r.Focal.AngleFromDeg, 1e-9);
            Near.Equal(0, r.Focal.AngleToDeg, 1e-9);
            Assert.DoesNotContain(r.Notices, n => n.Code == NoticeCodes.FocalOffTop);
        }, iter: 60);

    [Fact]
    public void The_focals_angle_is_told_as_one_band_over_the_band_of_the_circumference() =>
        Gen.Select(Gen.Int[20, 120], Gen.Int[0, 1000], Gen.Double[120, 230], Gen.Double[-180, 180]).Sample((beads, at, wrist, start) =>
        {
            var order = Enumerable.Repeat(0, beads).ToArray();
            order[at % beads] = 1;
            var piece = SamplePieces.Piece([Round8, Star], order, wrist) with { Wearer = new Wearer(wrist, 0) { StartAngleDeg = start } };
            var r = Reckoning.Of(piece, Quick);
            var shares = new CurveShares(piece.Beads, piece.Order);
            double Turned(double c)
            {
                var s = shares.AtRadius(c / (2 * Math.PI));
                return 360 * (s.Take(at % beads).Sum() + s[at % beads] / 2) / Math.Sqrt(c * c + r.Worn.PitchMm * r.Worn.PitchMm);
            }
            var (middle, narrow, wide) = (Turned(r.Worn.CircumferenceMm), Turned(r.Worn.CircumferenceMm - r.Worn.BandMm), Turned(r.Worn.CircumferenceMm + r.Worn.BandMm));
            Near.Equal(0, Math.IEEERemainder(start + middle - r.Focal!.AngleDeg, 360), 1e-8);
            // On a wider turn the same wire goes less far round.
            if (Math.Abs(narrow - middle) < 179) Near.Equal(narrow - middle, r.Focal.AngleFromDeg - r.Focal.AngleDeg, 1e-6);
            if (Math.Abs(wide - middle) < 179) Near.Equal(wide - middle, r.Focal.AngleToDeg - r.Focal.AngleDeg, 1e-6);
            Near.Equal(r.Focal.AngleDeg / 360 * r.Worn.WirePerTurnMm, r.Focal.OffMm, 1e-9);
        }, iter: 60);

    [Fact]
    public void Counts_letters_and_lengths_add_up() => Gen.Int[0, 2].Array[1, 60].Sample(order =>
    {
        var piece = SamplePieces.Piece([Round8, Star, SamplePieces.Bead("tube", "tube", 12, 4)], order);
        var r = Reckoning.Of(piece, Quick);
        Assert.Equal(order.Length, r.Counts.Sum(c => c.Count));
        foreach (var c in r.Counts) Assert.Equal((order.Count(k => k == c.KindIndex), piece.Beads[c.KindIndex]), (c.Count, c.Bead));
        Assert.Equal(r.Counts.Length, r.Counts.Select(c => c.Letter).Distinct().Count());
        Near.Equal(order.Sum(k => piece.Beads[k].LengthMm), r.RuledMm, 1e-9);
        Near.Equal(r.Lie.SharesMm.Sum(), r.Lie.BeadedMm, 1e-9);
        if (r.Mass.BeadsG is { } beads) Near.Equal(order.Sum(k => piece.Beads[k].MassG!.Value), beads, 1e-9);
        // Wire left in the piece: what the beads and both finishes take.
        Near.Equal((r.Wire.BeadedMm + r.Wire.EndsMm) * Math.PI / 4 * 0.62 * 0.62 * 7.916 / 1000, r.Mass.WireG!.Value, 1e-9);
    }, iter: 60);

    // The cure that a bead is told must cure it: with the needed hole it just passes, with a hair less it does not.
    [Fact]
    public void The_needed_hole_just_passes() =>
        Gen.Select(Gen.Int[0, 5], Gen.Double[1, 25], Gen.Double[2.5, 12], Gen.Double[40, 75], Gen.Double[0.5, 1.2]).Sample((shape, length, across, coil, wire) =>
        {
            Bead Make(double? bore) => shape switch
            {
                0 => SamplePieces.Bead("b", "round", Math.Max(length, 3), bore: bore),
                1 => SamplePieces.Bead("b", "tube", length, across, bore: bore),
                2 => SamplePieces.Bead("b", "curved-tube", length, across, bore: bore, with: d => d with { CurveRadiusMm = 45 }),
                3 => SamplePieces.Bead("b", "cube", Math.Max(length, 3), bore: bore),
                4 => SamplePieces.Bead("b", "curved-tube", length, across, bore: bore, with: d => d with { Matched = true }),
                _ => SamplePieces.Bead("b", "rondelle", length, across, bore: bore),
            };
            var coilWire = new CoilWire(wire, CoilDatum.CentreLine, coil, null);
            var unknown = PassingCheck.Of(Make(null), coilWire, 0.1);
            var bead = Make(null);
            var widest = Math.Min(bead.WidthMm, bead.ThicknessMm);
            if (unknown.NeededBoreMm is not { } needed)
            {
                // Not even with a hole as wide as the bead itself.
                Assert.Equal(Passes.No, unknown.Passes);
                Assert.Equal(Passes.No, PassingCheck.Of(Make(widest - 1e-9), coilWire, 0.1).Passes);
                return;
            }
            Assert.Equal(Passes.Unknown, unknown.Passes);
            Assert.InRange(needed, wire, widest);
            if (needed + 1e-9 < widest) Assert.NotEqual(Passes.No, PassingCheck.Of(Make(needed + 1e-9), coilWire, 0.1).Passes);
            Assert.Equal(Passes.No, PassingCheck.Of(Make(needed - 1e-6), coilWire, 0.1).Passes);
        }, iter: 500);
}
