using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Forces on nodes that stay as they are, whatever the wire does.</summary>
public sealed class DeadForces(params (int Node, Point3 Force)[] forces) : IEnergyTerm
{
    public IReadOnlyList<int[]> Elements => [];

    public double Value(RodState state) => -forces.Sum(f => f.Force.Dot(state.Positions[f.Node]));

    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        foreach (var (node, force) in forces)
            for (var k = 0; k < 3; k++) gradient[4 * node + k] -= force[k];
    }
}

/// <summary>A moment about y on the last edge of a wire that lies in the xz-plane: its work is the moment times the angle, whole turns counted.</summary>
public sealed class EndMoment(double moment, int edges) : IEnergyTerm
{
    private readonly int _from = 4 * (edges - 1), _to = 4 * edges;

    public IReadOnlyList<int[]> Elements { get; } = [[4 * (edges - 1), 4 * (edges - 1) + 2, 4 * edges, 4 * edges + 2]];

    /// <summary>The last edge's angle from x towards z, followed along the wire.</summary>
    public static double Angle(RodState state)
    {
        var angle = Math.Atan2(state.Tangents[0].Z, state.Tangents[0].X);
        for (var e = 1; e < state.Edges; e++) angle += Turning.SignedAngle(state.Tangents[e - 1], state.Tangents[e], new Point3(0, -1, 0));
        return angle;
    }

    public double Value(RodState state) => -moment * Angle(state);

    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        var e = state.Lengths[^1] * state.Tangents[^1];
        var square = e.X * e.X + e.Z * e.Z;
        var (gx, gz) = (moment * e.Z / square, -moment * e.X / square);
        (gradient[_from], gradient[_from + 2]) = (gradient[_from] - gx, gradient[_from + 2] - gz);
        (gradient[_to], gradient[_to + 2]) = (gradient[_to] + gx, gradient[_to + 2] + gz);
        if (hessian is null || convex) return;
        var xx = -moment * 2 * e.X * e.Z / (square * square);
        var xz = -moment * (e.Z * e.Z - e.X * e.X) / (square * square);
        hessian.Add(0, [xx, xz, -xx, -xz, xz, -xx, -xz, xx, -xx, -xz, xx, xz, -xz, xx, xz, -xx]);
    }
}
