using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Rods;

/// <summary>What bending and twisting the wire costs.</summary>
/// <remarks>At each node <c>(B1 (k1 - k1')^2 + B2 (k2 - k2')^2 + C (t - t')^2) / 2l</c>, primes at rest. Slopes and second slopes are written out by hand
/// (docs/theory/settle.md) and are those of the step from the state as it is: each evaluation starts from directions carried there.</remarks>
public sealed class BendTerm : IEnergyTerm
{
    private const int E = BendSlopes.E, ThetaE = BendSlopes.ThetaE, F = BendSlopes.F, ThetaF = BendSlopes.ThetaF, Local = BendSlopes.Local;
    private readonly RodModel _model;
    private readonly int[] _nodes;

    /// <summary>Makes it.</summary>
    public BendTerm(RodModel model)
    {
        _model = model;
        _nodes = [.. Enumerable.Range(0, model.Nodes).Where(i => model.RestLengthAt[i] > 0)];
        Elements = Array.ConvertAll(_nodes, i =>
        {
            int before = i == 0 ? model.Nodes - 1 : i - 1, after = i + 1 == model.Nodes ? 0 : i + 1;
            return new[] { 4 * before, 4 * before + 1, 4 * before + 2, 4 * before + 3, 4 * i, 4 * i + 1, 4 * i + 2, 4 * i + 3, 4 * after, 4 * after + 1, 4 * after + 2 };
        });
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        foreach (var i in _nodes)
        {
            var bend = new NodeBend(state, i);
            // Folded back on itself: no wire does, and a step that does is too long.
            if (!(bend.Chi > 1e-6)) return double.PositiveInfinity;
            double k1 = bend.Bend1 - _model.RestBend1[i], k2 = bend.Bend2 - _model.RestBend2[i], t = bend.Twist - _model.RestTwist[i];
            energy += (_model.BendingStiffness.First * k1 * k1 + _model.BendingStiffness.Second * k2 * k2 + _model.TwistStiffness * t * t) / (2 * _model.RestLengthAt[i]);
        }
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<double> slope = stackalloc double[Local], g1 = stackalloc double[Local], g2 = stackalloc double[Local], gt = stackalloc double[Local];
        Span<double> second = stackalloc double[Local * Local], spread = stackalloc double[121];
        for (var n = 0; n < _nodes.Length; n++)
        {
            var i = _nodes[n];
            var bend = new NodeBend(state, i);
            var stretch = _model.RestLengthAt[i];
            var a1 = _model.BendingStiffness.First * (bend.Bend1 - _model.RestBend1[i]) / stretch;
            var a2 = _model.BendingStiffness.Second * (bend.Bend2 - _model.RestBend2[i]) / stretch;
            var at = _model.TwistStiffness * (bend.Twist - _model.RestTwist[i]) / stretch;
            var tt = 1 / bend.Chi * (bend.Te + bend.Tf);
            BendSlopes.First(bend, tt, g1, g2, gt);
            for (var k = 0; k < Local; k++) slope[k] = a1 * g1[k] + a2 * g2[k] + at * gt[k];
            var dofs = Elements[n];
            for (var k = 0; k < 3; k++)
            {
                gradient[dofs[k]] -= slope[E + k];
                gradient[dofs[4 + k]] += slope[E + k] - slope[F + k];
                gradient[dofs[8 + k]] += slope[F + k];
            }
            gradient[dofs[3]] += slope[ThetaE];
            gradient[dofs[7]] += slope[ThetaF];
            if (hessian is null) continue;

            second.Clear();
            var b1 = _model.BendingStiffness.First / stretch;
            var b2 = _model.BendingStiffness.Second / stretch;
            var c = _model.TwistStiffness / stretch;
            for (var r = 0; r < Local; r++)
                for (var k = 0; k < Local; k++) second[r * Local + k] = b1 * g1[r] * g1[k] + b2 * g2[r] * g2[k] + c * gt[r] * gt[k];
            BendSlopes.AddSecondOfBend(second, a1, bend, bend.Bend1, tt, bend.M2e, bend.M2f, bend.M1e, bend.M1f, 1);
            BendSlopes.AddSecondOfBend(second, a2, bend, bend.Bend2, tt, bend.M1e, bend.M1f, bend.M2e, bend.M2f, -1);
            BendSlopes.AddSecondOfTwist(second, at, bend, tt);
            SmallMatrix.Mirror(second, Local);
            if (convex) SmallMatrix.MakeConvex(second, Local);
            BendSlopes.Spread(second, spread);
            hessian.Add(n, spread);
        }
    }
}
