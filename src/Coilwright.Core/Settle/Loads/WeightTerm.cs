using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Loads;

/// <summary>Weights that pull one way: beads, each at its own middle, and the wire at its nodes.</summary>
public sealed class WeightTerm : IEnergyTerm
{
    private readonly (Ball At, double MassG)[] _beads;
    private readonly double[] _nodesG;
    private readonly Point3 _pull;

    /// <summary>What 1 g weighs, N: standard gravity.</summary>
    public const double NPerG = 9.80665e-3;

    /// <summary>Makes it.</summary>
    /// <param name="beads">Middles of mass, as balls of no size, and masses, g.</param>
    /// <param name="nodesG">The wire's mass at each node, g.</param>
    /// <param name="down">Where it pulls, one long; nought for no weight.</param>
    public WeightTerm(IEnumerable<(Ball At, double MassG)> beads, double[] nodesG, Point3 down)
    {
        (_beads, _nodesG, _pull) = ([.. beads], nodesG, NPerG * down);
        Elements = Array.ConvertAll(_beads, b => b.At.Unknowns());
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        foreach (var (at, mass) in _beads) energy -= mass * _pull.Dot(new BallPlace(state, at).Centre);
        for (var i = 0; i < _nodesG.Length; i++) energy -= _nodesG[i] * _pull.Dot(state.Positions[i]);
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<Point3> moves = stackalloc Point3[7];
        Span<double> second = stackalloc double[49];
        for (var i = 0; i < _beads.Length; i++)
        {
            var (at, mass) = _beads[i];
            var place = new BallPlace(state, at);
            place.Moves(moves);
            for (var k = 0; k < place.Size; k++) gradient[Elements[i][k]] -= mass * _pull.Dot(moves[k]);
            // A middle on the wire goes straight with it.
            if (hessian is null || place.Size == 6) continue;
            second.Clear();
            place.AddSecond(second, 0, 7, _pull, -mass);
            if (convex) SmallMatrix.MakeConvex(second, 7);
            hessian.Add(i, second);
        }
        for (var i = 0; i < _nodesG.Length; i++)
            for (var k = 0; k < 3; k++) gradient[4 * i + k] -= _nodesG[i] * _pull[k];
    }
}
