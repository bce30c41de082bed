using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>A flat plate that no node passes.</summary>
public sealed class PlateTerm : IEnergyTerm
{
    private readonly Point3 _point, _away;
    private readonly ContactBarrier _barrier;

    /// <summary>Makes it.</summary>
    /// <param name="nodes">Nodes of the wire.</param>
    /// <param name="point">A point of the plate's face.</param>
    /// <param name="away">Direction from the face to where the wire is, of length 1.</param>
    /// <param name="barrier">What keeps the wire off.</param>
    public PlateTerm(int nodes, Point3 point, Point3 away, ContactBarrier barrier)
    {
        (_point, _away, _barrier) = (point, away, barrier);
        Elements = [.. Enumerable.Range(0, nodes).Select(i => new[] { 4 * i, 4 * i + 1, 4 * i + 2 })];
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <summary>How far a node is off the plate, mm.</summary>
    public double GapMm(RodState state, int node) => (state.Positions[node] - _point).Dot(_away);

    /// <summary>What the plate pushes the whole wire with, N.</summary>
    public double ForceN(RodState state)
    {
        double sum = 0;
        for (var i = 0; i < Elements.Count; i++) sum += _barrier.ForceN(GapMm(state, i));
        return sum;
    }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        for (var i = 0; i < Elements.Count; i++) energy += _barrier.Value(GapMm(state, i));
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<double> second = stackalloc double[9];
        for (var i = 0; i < Elements.Count; i++)
        {
            var gap = GapMm(state, i);
            var (force, stiffness) = (_barrier.ForceN(gap), _barrier.StiffnessNPerMm(gap));
            for (var r = 0; r < 3; r++)
            {
                gradient[4 * i + r] -= force * _away[r];
                for (var c = 0; c < 3; c++) second[3 * r + c] = stiffness * _away[r] * _away[c];
            }
            hessian?.Add(i, second);
        }
    }
}
