using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Wires of published checks, laid and held.</summary>
public static class TestRods
{
    /// <summary>A wire along a curve from 0 to 1, clamped where it starts.</summary>
    /// <remarks>A clamp holds the wire's direction at a point, not over half an edge: a very short edge before the start has that direction and is held, and
    /// so the start bends as half a stretch of wire does.</remarks>
    public static RodState Clamped(Func<double, Point3> curve, int edges, Point3 direction, Point3 outward, bool bothEnds = false, Point3 endDirection = default)
    {
        var sliver = 1e-4 / edges * (curve(1.0 / edges) - curve(0)).Length;
        var nodes = new List<Point3> { curve(0) - sliver * direction };
        for (var i = 0; i <= edges; i++) nodes.Add(curve((double)i / edges));
        if (bothEnds) nodes.Add(curve(1) + sliver * endDirection);
        return RodState.Lay(nodes, _ => outward);
    }

    /// <summary>Holds nodes wholly and edges against turning about themselves.</summary>
    public static bool[] Held(RodState state, IEnumerable<int> nodes, IEnumerable<int> edges, bool flat = false)
    {
        var held = new bool[state.Unknowns];
        foreach (var i in nodes) held[4 * i] = held[4 * i + 1] = held[4 * i + 2] = true;
        foreach (var e in edges) held[4 * e + 3] = true;
        // A wire that stays in the xz-plane does not twist either.
        if (flat)
            for (var i = 0; i < state.Positions.Length; i++)
            {
                held[4 * i + 1] = true;
                if (i < state.Edges) held[4 * i + 3] = true;
            }
        return held;
    }

    public static RestResult Rest(RodModel model, RodState state, bool[] held, RestOptions options, params IEnergyTerm[] loads) =>
        new Newton([new BendTerm(model), new StretchTerm(model), .. loads], held, Newton.GroupsOf(state), null, options).Run(state, TestContext.Current.CancellationToken);

    public static IEnergyTerm[] Terms(RodModel model, params IEnergyTerm[] loads) => [new BendTerm(model), new StretchTerm(model), .. loads];

    /// <summary>The value as steps go to nought, from one step and half of it, where the error goes with the square of the step.</summary>
    public static double Extrapolated(double coarse, double fine) => fine + (fine - coarse) / 3;
}
