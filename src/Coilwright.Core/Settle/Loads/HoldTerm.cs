using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Loads;

/// <summary>Holds one node from moving in one direction, as skin does by rubbing: a very stiff spring.</summary>
public sealed class HoldTerm : IEnergyTerm
{
    // Gives way by a thousandth of a millimetre under 1 N: less than anyone measures, soft enough to keep digits. Our choice.
    private const double StiffnessNPerMm = 1000;

    private readonly int _node;
    private readonly Point3 _place, _direction;

    /// <summary>Makes it.</summary>
    /// <param name="node">The node.</param>
    /// <param name="place">Where it is held.</param>
    /// <param name="direction">Against moving in which direction, one long.</param>
    public HoldTerm(int node, Point3 place, Point3 direction)
    {
        (_node, _place, _direction) = (node, place, direction);
        Elements = [[4 * node, 4 * node + 1, 4 * node + 2]];
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <summary>What it holds with, N: positive where the wire would move the direction's way.</summary>
    public double ForceN(RodState state) => StiffnessNPerMm * Off(state);

    /// <inheritdoc/>
    public double Value(RodState state) => 0.5 * StiffnessNPerMm * Off(state) * Off(state);

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        for (var k = 0; k < 3; k++) gradient[4 * _node + k] += ForceN(state) * _direction[k];
        if (hessian is null) return;
        Span<double> second = stackalloc double[9];
        for (var r = 0; r < 3; r++)
            for (var c = 0; c < 3; c++) second[3 * r + c] = StiffnessNPerMm * _direction[r] * _direction[c];
        hessian.Add(0, second);
    }

    private double Off(RodState state) => (state.Positions[_node] - _place).Dot(_direction);
}
