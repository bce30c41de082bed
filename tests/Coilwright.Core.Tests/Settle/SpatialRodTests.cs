using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Wires that leave their plane: a curved cantilever, a twisted ring, coil springs.</summary>
public class SpatialRodTests
{
    // Reference: an arc of 45 degrees of radius 100 in, section 1 in x 1 in, E = 1e7 psi, no lateral contraction, 600 lbf at its tip out of its plane.
    // K. J. Bathe, S. Bolourchi, Large displacement analysis of three-dimensional beam structures, 1979: (-13.4, -23.5, 53.4) in; Q. Wang and others, BeamDyn, 2015:
    // (-13.5, -23.7, 53.4); a spectral beam of 9 nodes: (-13.721, -23.646, 53.578). Ordered across, along, out. Their G J is 8.333e5,
    // the polar moment of the square, not its torsion constant.
    // Tolerance: what the three differ by among themselves, and half of the last digit printed.
    [Fact]
    public void Curved_cantilever_bends_out_of_its_plane_as_published()
    {
        Point3 Tip(int edges)
        {
            Point3 Arc(double s) => new(100 * Math.Sin(s * Math.PI / 4), 100 * (1 - Math.Cos(s * Math.PI / 4)), 0);
            var state = TestRods.Clamped(Arc, edges, new Point3(1, 0, 0), new Point3(0, 0, 1));
            var model = new RodModel(state, (1e7 / 12, 1e7 / 12), 1e7 / 12, 1e7);
            var rest = TestRods.Rest(model, state, TestRods.Held(state, [0, 1], [0]), new RestOptions { ResidualN = 1e-5, ReachMm = 100 },
                new DeadForces((state.Positions.Length - 1, new Point3(0, 0, 600))));
            Assert.Equal(RestExit.AtRest, rest.Exit);
            return rest.State.Positions[^1] - Arc(1);
        }
        var (coarse, fine) = (Tip(32), Tip(64));
        var (across, along, out_) = (TestRods.Extrapolated(coarse.Y, fine.Y), TestRods.Extrapolated(coarse.X, fine.X), TestRods.Extrapolated(coarse.Z, fine.Z));
        Assert.InRange(across, -13.721 - 0.05, -13.4 + 0.05);
        Assert.InRange(along, -23.7 - 0.05, -23.5 + 0.05);
        Assert.InRange(out_, 53.4 - 0.05, 53.578 + 0.05);
    }

    // Reference: a ring bent from straight wire and joined after one end was turned by an angle buckles out of its plane at 2 pi sqrt(3) B / C (J. H. Michell 1889;
    // E. E. Zajac 1962). A round wire of lateral contraction 0.3 has B / C = 1.3: 14.148 rad.
    // Tolerance: a ring of n nodes is off by about (2 pi / n)^2, and by the share that twist takes of bending at a node, both 0.1 % at 240.
    [Theory]
    [InlineData(1.0)]
    [InlineData(1.3)]
    public void Twisted_ring_buckles_at_the_published_twist(double bendingOverTwist)
    {
        const int Edges = 240;
        // Joined, and with one of its edges held from moving and turning, which no ring minds: an open wire whose last edge lies where its first does.
        var ring = RodState.Lay([.. Enumerable.Range(0, Edges + 2).Select(i => new Point3(Math.Cos(2 * Math.PI * i / Edges), 0, Math.Sin(2 * Math.PI * i / Edges)))], middle => middle);
        var critical = 2 * Math.PI * Math.Sqrt(3) * bendingOverTwist;

        int Falling(double twist)
        {
            var model = new RodModel(ring, (bendingOverTwist, bendingOverTwist), 1, 1e6);
            Array.Clear(model.RestBend1);
            Array.Clear(model.RestBend2);
            var even = new double[ring.Unknowns];
            for (var e = 0; e <= Edges; e++) even[4 * e + 3] = twist * e / Edges;
            var held = TestRods.Held(ring, [0, 1, Edges, Edges + 1], [0, Edges]);
            // Round wire may still swing about the held edge while it spins in itself, at no cost.
            held[4 * (Edges / 2) + 1] = true;
            var flat = TestRods.Rest(model, ring.Moved(even, 1), held, new RestOptions { ReachMm = 1, ResidualN = 1e-7 });
            Assert.All(flat.State.Positions, p => Near.Equal(0, p.Y, 1e-6));
            return flat.Falling;
        }

        Assert.Equal(0, Falling(0.99 * critical));
        Assert.NotEqual(0, Falling(1.01 * critical));
    }

    // Reference: k = G d^4 / (8 D^3 n), A. M. Wahl, Mechanical Springs; worked examples as printed by three makers of springs, in psi and inches.
    // The ends are held from turning, which over whole turns asks for no moment but the even twist. Tolerance: half of the last digit printed and 0.1 % for
    // a pitch that is small, not nought, and 48 edges a turn, halved and extrapolated.
    [Theory]
    [InlineData(0.035, 0.465, 8, 2.68, 0.005, 2.68183)]
    [InlineData(0.1, 1.0, 10, 14.375, 0.0005, 14.375)]
    [InlineData(0.072, 0.625, 8, 19.8, 0.05, 19.77899)]
    public void Coil_spring_has_the_rate_of_the_handbook(double wire, double diameter, int turns, double printed, double digit, double exact)
    {
        const double G = 11.5e6, E = 30e6;
        double Rate(int perTurn)
        {
            var radius = diameter / 2;
            var pitch = diameter / 200;
            Point3 Helix(double s, double stretch) => new(radius * Math.Cos(2 * Math.PI * turns * s), turns * pitch * stretch * s, radius * Math.Sin(2 * Math.PI * turns * s));
            RodState Lay(double stretch) => TestRods.Clamped(s => Helix(s, stretch), turns * perTurn, new Point3(0, 0, 1), new Point3(0, 1, 0), true, new Point3(0, 0, 1));
            var bend = Math.PI / 64 * Math.Pow(wire, 4);
            var model = new RodModel(Lay(1), (E * bend, E * bend), 2 * G * bend, E * Math.PI / 4 * wire * wire);
            // Drawn out by a hundredth of its radius over all turns: small against its pitch's own effect.
            var draw = 0.01 * radius;
            var start = Lay(1 + draw / (turns * pitch));
            var last = start.Positions.Length - 1;
            var held = TestRods.Held(start, [0, 1, last - 1, last], [0, start.Edges - 1]);
            var newton = new Newton(TestRods.Terms(model), held, Newton.GroupsOf(start), null, new RestOptions { ResidualN = 1e-9, ReachMm = radius });
            var rest = newton.Run(start, TestContext.Current.CancellationToken);
            Assert.Equal(RestExit.AtRest, rest.Exit);
            var slopes = new double[start.Unknowns];
            newton.Slopes(rest.State, slopes);
            return (slopes[4 * last + 1] + slopes[4 * (last - 1) + 1]) / draw;
        }
        var rate = TestRods.Extrapolated(Rate(24), Rate(48));
        Near.Equal(printed, rate, digit + 1e-3 * printed);
        Near.Equal(exact, rate, 1e-3 * exact);
    }

    // Reference: k = E d^4 / (64 n D) per radian, torsion spring; E = 207000 MPa, d = 2 mm, D = 20 mm, n = 5: 517.5 N mm per rad, 3251.55 per turn.
    // Tolerance: what is left after halving and extrapolating, (2 pi / 40)^4.
    [Fact]
    public void Torsion_spring_turns_as_the_handbook_says()
    {
        const double E = 207_000, Wire = 2, Radius = 10, Turned = 0.2;
        const int Turns = 5;
        double PerRadian(int perTurn)
        {
            var state = TestRods.Clamped(s => new Point3(Radius * Math.Cos(2 * Math.PI * Turns * s), 0, Radius * Math.Sin(2 * Math.PI * Turns * s)), Turns * perTurn,
                new Point3(0, 0, 1), new Point3(0, 1, 0));
            var bend = E * Math.PI / 64 * Math.Pow(Wire, 4);
            var model = new RodModel(state, (bend, bend), bend / 1.3, E * Math.PI / 4 * Wire * Wire);
            var moment = 517.5 * Turned;
            var rest = TestRods.Rest(model, state, TestRods.Held(state, [0, 1], [0], flat: true), new RestOptions { ResidualN = 1e-7, ReachMm = Radius }, new EndMoment(moment, state.Edges));
            Assert.Equal(RestExit.AtRest, rest.Exit);
            // Beyond the middle of the last edge nothing bends.
            return moment / (EndMoment.Angle(rest.State) - EndMoment.Angle(state)) * (1 - 0.5 / (Turns * perTurn));
        }
        Near.Equal(517.5, TestRods.Extrapolated(PerRadian(20), PerRadian(40)), 517.5 * 1e-3);
    }

    // Reference: a ring cut through, its ends drawn apart along their own direction by W each: the gap opens by 3 pi W R^3 / (E I) (Castigliano; a chain of 400 beams gives 9.42490).
    // Tolerance: halved and extrapolated, (2 pi / 100)^4, and W R^2 / (E I) = 1e-5 of bending beyond the straight law.
    [Fact]
    public void Split_ring_opens_by_three_pi()
    {
        double Gap(int edges)
        {
            var state = RodState.Lay([.. Enumerable.Range(0, edges + 1).Select(i => new Point3(Math.Sin(2 * Math.PI * i / edges), 0, Math.Cos(2 * Math.PI * i / edges)))], m => m);
            var model = new RodModel(state, (1, 1), 1, 1e6);
            var held = TestRods.Held(state, [edges / 2], [], flat: true);
            held[2] = true;
            const double W = 1e-5;
            var rest = TestRods.Rest(model, state, held, new RestOptions { ResidualN = 1e-11, ReachMm = 1 }, new DeadForces((0, new Point3(W, 0, 0)), (edges, new Point3(-W, 0, 0))));
            Assert.Equal(0, rest.Falling);
            return (rest.State.Positions[0] - rest.State.Positions[^1]).X / W;
        }
        Near.Equal(3 * Math.PI, TestRods.Extrapolated(Gap(100), Gap(200)), 1e-3);
    }
}
