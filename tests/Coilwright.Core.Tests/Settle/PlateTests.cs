using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;
using CsCheck;

namespace Coilwright.Core.Tests.Settle;

public class PlateTests
{
    private static RodState Ring(int nodes) =>
        RodState.Lay([.. Enumerable.Range(0, nodes).Select(i => new Point3(Math.Sin(2 * Math.PI * i / nodes), 0, Math.Cos(2 * Math.PI * i / nodes)))], m => m, closed: true);

    [Fact]
    public void Slopes_of_a_plate_are_those_of_its_energy() => Gen.Double[0.05, 0.4].Sample(gap =>
        Dense.AgreesWithDifferences(new PlateTerm(6, new Point3(0, 0, -1 - gap), new Point3(0, 0, 1), new ContactBarrier(0.7, 0.5)), Ring(6), gap * 0.01, 1e-7), iter: 50);

    [Fact]
    public void A_node_in_the_plate_costs_without_end() =>
        Assert.True(double.IsPositiveInfinity(new PlateTerm(6, new Point3(0, 0, -0.9), new Point3(0, 0, 1), new ContactBarrier(0.7, 0.5)).Value(Ring(6))));

    // Reference: a closed ring between two loads W is shortened along them by (pi/4 - 2/pi) W R^3 / (E I) = 0.1487784 (Castigliano 1879; Timoshenko and Young, section 79).
    // Tolerance: it is shortened by a thousandth of R, beyond the straight law by about as much; a ring of 200 nodes is off by (2 pi / 200)^2 = 0.1 %; the place where each
    // node touches is known to the barrier's 1e-7.
    [Fact]
    public void Ring_squeezed_by_two_plates_pushes_back_as_published()
    {
        const int Nodes = 200;
        const double Shorter = 1e-3;
        var state = Ring(Nodes);
        var model = new RodModel(state, (1, 1), 1, 1e5);
        var held = TestRods.Held(state, [], [], flat: true);
        // Its top and its bottom may not slide along the plates.
        held[0] = held[4 * (Nodes / 2)] = true;
        PlateTerm top = null!, bottom = null!;
        // A plate is brought on in steps, then the barrier is shrunk.
        void Pressed(double at, double height)
        {
            var barrier = new ContactBarrier(height, 1e-3);
            // The ring is made flatter as a whole where the plate would otherwise start inside it.
            var z = state.Positions[0].Z;
            var flatter = new double[state.Unknowns];
            for (var i = 0; i < Nodes; i++) flatter[4 * i + 2] = state.Positions[i].Z * (Math.Min(z, at - 1e-4) / z - 1);
            (top, bottom) = (new PlateTerm(Nodes, new Point3(0, 0, at), new Point3(0, 0, -1), barrier), new PlateTerm(Nodes, new Point3(0, 0, -at), new Point3(0, 0, 1), barrier));
            var rest = TestRods.Rest(model, state.Moved(flatter, 1), held, new RestOptions { ReachMm = 1, ResidualN = 1e-9 }, top, bottom);
            Assert.Equal(RestExit.AtRest, rest.Exit);
            state = rest.State;
        }
        Pressed(1 - Shorter / 4, 1e-5);
        Pressed(1 - Shorter / 2, 1e-6);
        Pressed(1 - Shorter / 2, 1e-7);
        Pressed(1 - Shorter / 2, 1e-9);
        var shortened = 2 - (state.Positions[0] - state.Positions[Nodes / 2]).Z;
        var force = top.ForceN(state);
        Near.Equal(force, bottom.ForceN(state), 1e-7);
        Assert.All(Enumerable.Range(0, Nodes), i => Assert.True(top.GapMm(state, i) > 0 && bottom.GapMm(state, i) > 0));
        Near.Equal(0.1487784, shortened / force, 0.1487784 * 3e-3);
    }
}
