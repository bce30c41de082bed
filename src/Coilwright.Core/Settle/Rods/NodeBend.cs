using Coilwright.Core.Geometry;

namespace Coilwright.Core.Settle.Rods;

/// <summary>How a wire bends and twists at one node.</summary>
/// <remarks>The bend is <c>2 te x tf / (1 + te.tf)</c>, of length 2 tan(angle / 2), taken about the mean of the material's axes of both edges (M. Bergou and
/// others, Discrete Elastic Rods, 2008). All are over the node's whole stretch: divide by its length at rest for a curvature.</remarks>
internal readonly struct NodeBend
{
    public NodeBend(RodState state, int node)
    {
        var e = state.EdgeBefore(node);
        (Te, Tf, Le, Lf) = (state.Tangents[e], state.Tangents[node], state.Lengths[e], state.Lengths[node]);
        (M1e, M2e) = state.Axes(e);
        (M1f, M2f) = state.Axes(node);
        Chi = 1 + Te.Dot(Tf);
        Binormal = 2 / Chi * Te.Cross(Tf);
        Bend1 = 0.5 * Binormal.Dot(M2e + M2f);
        Bend2 = -0.5 * Binormal.Dot(M1e + M1f);
        Twist = state.Angles[node] - state.Angles[e] + state.ReferenceTwists[node];
    }

    public Point3 Te { get; }
    public Point3 Tf { get; }
    public double Le { get; }
    public double Lf { get; }
    public Point3 M1e { get; }
    public Point3 M2e { get; }
    public Point3 M1f { get; }
    public Point3 M2f { get; }

    /// <summary>1 + te.tf: 2 for a straight wire, 0 for one folded back on itself.</summary>
    public double Chi { get; }

    public Point3 Binormal { get; }
    public double Bend1 { get; }
    public double Bend2 { get; }
    public double Twist { get; }
}
