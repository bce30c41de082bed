using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Loads;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>What keeps a focal straight that is set straight.</summary>
public class FocalHoldTests
{
    private const double MassG = 20;

    private static Piece WithFocal(double offsetMm) => SamplePieces.Piece(
        [SamplePieces.Bead("rondelle", "rondelle", 5, 8), SamplePieces.Bead("stone", "focal", 20, 25, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = offsetMm, MassG = MassG })],
        Enumerable.Range(0, 41).Select(i => i == 20 ? 1 : 0));

    private static (StrungRod Strung, RowTerm Row, TurnsTerm Turns, WristTerm Wrist, WeightTerm Weight) Of(double wristMm, ArmPose pose, double widthMm)
    {
        var strung = new StrungRod(WithFocal(2.5), null, SamplePieces.Stainless);
        var barrier = new ContactBarrier(1e-2, widthMm);
        return (strung, new RowTerm(strung.Hinges, strung.Nodes, barrier), new TurnsTerm(strung.Balls, strung.MiddlesMm, Math.PI * strung.StrungRadiusMm, barrier),
            new WristTerm(strung.Balls, new WristSection(wristMm, 1, 0), barrier), new WeightTerm(strung.Weights, strung.NodesG, SettleRequest.Down(pose)));
    }

    // A weight on a lever (Archimedes): held out square to the pull it turns by m g d, held out along it not at all. The lever is the dome's centre of mass, three eighths of its height over its back
    // (handbooks of solid geometry, from memory), here 1.5 mm over the hole. Nothing touches. Tolerance: the helix rises by 1 mm in a turn, so that the lever is square but for a hundred-thousandth.
    [Theory]
    [InlineData(ArmPose.Hanging, -1)]
    [InlineData(ArmPose.HeldUp, 1)]
    [InlineData(ArmPose.TopUp, 0)]
    public void With_nothing_to_touch_it_is_a_weight_on_a_lever(ArmPose pose, int turns)
    {
        var (strung, row, between, wrist, weight) = Of(60, pose, 0.01);
        var state = strung.Helix(1.5 * strung.StrungRadiusMm, 1, 20, 0);
        var (hold, presses) = FocalHold.Of(strung, state, 20, row, between, wrist, weight);
        Assert.Equal(0, presses);
        Near.Equal(turns * MassG * WeightTerm.NPerG * 1.5, hold, 1e-4);
    }

    // Pressed on all sides: how the energy of all that touches it and of its weight changes as it alone is rolled, by differences. Tolerance: the square of the step against the barrier's width.
    [Fact]
    public void What_holds_it_is_how_its_energy_changes_with_its_roll()
    {
        var (strung, row, between, wrist, weight) = Of(165, ArmPose.OnItsSide, 3);
        var upright = strung.Helix(1.02 * Math.Max(strung.StrungRadiusMm, 165 / (2 * Math.PI) + 5.5), 16, 20, 0.4);
        var roll = strung.Angles[20];
        RodState Rolled(double by)
        {
            var step = new double[upright.Unknowns];
            step[roll] = by;
            return upright.Moved(step, 1);
        }
        var state = Rolled(0.05);
        between.Renew(state);
        IEnergyTerm[] terms = [row, between, wrist, weight];
        const double Small = 1e-5;
        var differences = (terms.Sum(t => t.Value(Rolled(0.05 + Small))) - terms.Sum(t => t.Value(Rolled(0.05 - Small)))) / (2 * Small);
        var (hold, presses) = FocalHold.Of(strung, state, 20, row, between, wrist, weight);
        Assert.True(presses > 0);
        Near.Equal(differences, hold, 1e-6 * Math.Max(1, Math.Abs(hold)));
    }

    // The nearer its hole is to its middle the less it takes to keep it straight: by three eighths of the dome its weight is 2 mm over a hole that is 3 mm off, and right on one that is 1 mm off. What is
    // then left to hold are the pushes of its neighbours and of the wrist, which nothing tells beforehand: four fifths leave room for them.
    [Fact]
    public void A_hole_nearer_the_middle_takes_less_to_keep_it_straight()
    {
        FocalKept Kept(double offset) => Settling.Of(WithFocal(offset), SamplePieces.Choices, new SettleRequest(165), TestContext.Current.CancellationToken).FocalKept!.Value;
        var (high, low) = (Kept(3), Kept(1));
        Assert.InRange(low.HoldNmm, 0, 0.8 * high.HoldNmm);
        Assert.True(high.LeastFriction > 0);
        Assert.Null((high with { PressesNmm = 0 }).LeastFriction);
    }
}
