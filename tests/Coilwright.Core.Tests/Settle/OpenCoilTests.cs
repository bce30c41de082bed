using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>An open coil of a turn and a half, clamped where it starts and pulled at its tip: values of another program and of an integral.</summary>
public class OpenCoilTests
{
    private const double R = 30, Pitch = 8, Turns = 1.5, Wire = 0.62, E = 193_000, Contraction = 0.3, Pull = 1e-4;

    private static Point3 Helix(double s)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * Turns * s);
        return new Point3(R * sin, -Pitch * Turns * s, R * cos);
    }

    private static Point3 Along(double s)
    {
        var (sin, cos) = Math.SinCos(2 * Math.PI * Turns * s);
        return new Point3(R * cos, -Pitch / (2 * Math.PI), -R * sin).Unit;
    }

    private static Point3 Moved(Point3 force, int edges)
    {
        var state = TestRods.Clamped(Helix, edges, Along(0), new Point3(0, 1, 0));
        var bending = E * Math.PI / 64 * Math.Pow(Wire, 4);
        var model = new RodModel(state, (bending, bending), bending / (1 + Contraction), E * Math.PI / 4 * Wire * Wire);
        var rest = TestRods.Rest(model, state, TestRods.Held(state, [0, 1], [0]), new RestOptions { ResidualN = 5e-10, ReachMm = R }, new DeadForces((state.Positions.Length - 1, force)));
        Assert.Equal(RestExit.AtRest, rest.Exit);
        return rest.State.Positions[^1] - Helix(1);
    }

    private static Point3 Extrapolated(Point3 force)
    {
        // Ten times as strong, so that what is left of force does not count, and both ways, so that the coil's own change of shape cancels but for its cube.
        Point3 Straight(int edges) => 0.05 * (Moved(10 * force, edges) - Moved(-10 * force, edges));
        var (coarse, fine) = (Straight(72), Straight(144));
        return new Point3(TestRods.Extrapolated(coarse.X, fine.X), TestRods.Extrapolated(coarse.Y, fine.Y), TestRods.Extrapolated(coarse.Z, fine.Z));
    }

    // Reference: CalculiX 2.20 (Debian's calculix-ccx), 384 quadratic beams (B32) of round section, the deck by Reference/open-coil-deck.py:
    //   python3 open-coil-deck.py 1e-4 0 0 > coil.inp; ccx coil; tail -1 coil.dat
    // Tolerance: it makes bricks of beams; a straight bar of these is 0.2 % too soft in bending and 2 % in twisting against E I and G J, which is its own approximation of a round section.
    // Pulled across the arm the coil mostly bends, along the arm it mostly twists: 0.5 % and 2 %.
    [Theory]
    [InlineData(1, 0, 0, 2.846892e-2, 0.005)]
    [InlineData(0, 1, 0, 4.537612e-2, 0.02)]
    [InlineData(0, 0, 1, 1.026416e-2, 0.005)]
    public void An_open_coil_gives_way_as_another_program_says(double x, double y, double z, double theirs, double within)
    {
        var force = new Point3(x, y, z);
        Near.Equal(theirs, Extrapolated(Pull * force).Dot(force), within * theirs);
    }

    // Reference: C. A. Castigliano 1879: the tip gives way by the integral of the moment of the pull times that of a pull of 1, bending over E I and twisting over G J, along the wire.
    // Tolerance: the coil gives way by 0.5 mm of 30 at most, the square of which is 3e-4; halved and extrapolated; 150 nodes with 5e-10 N left on each are 1e-4 of the pull.
    [Fact]
    public void An_open_coil_gives_way_as_the_integral_along_it_says()
    {
        const int Parts = 20_000;
        Point3[] axes = [new(1, 0, 0), new(0, 1, 0), new(0, 0, 1)];
        var (tip, part) = (Helix(1), Turns * Math.Sqrt(4 * Math.PI * Math.PI * R * R + Pitch * Pitch) / Parts);
        var bending = E * Math.PI / 64 * Math.Pow(Wire, 4);
        foreach (var pulled in axes)
        {
            var moved = Extrapolated(Pull * pulled);
            foreach (var seen in axes)
            {
                double sum = 0;
                for (var k = 0; k < Parts; k++)
                {
                    var s = (k + 0.5) / Parts;
                    var (arm, t) = (tip - Helix(s), Along(s));
                    var (m, n) = (arm.Cross(pulled), arm.Cross(seen));
                    sum += Pull * part * (m.Dot(n) - m.Dot(t) * n.Dot(t) + (1 + Contraction) * m.Dot(t) * n.Dot(t)) / bending;
                }
                Near.Equal(sum, moved.Dot(seen), 1e-3 * 0.05);
            }
        }
    }
}
