using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Rods;

/// <summary>What stretching the wire costs: <c>E A l (length/l - 1)^2 / 2</c> for each edge of length l at rest.</summary>
public sealed class StretchTerm : IEnergyTerm
{
    private readonly RodModel _model;

    /// <summary>Makes it.</summary>
    public StretchTerm(RodModel model)
    {
        _model = model;
        Elements = [.. Enumerable.Range(0, model.RestLengths.Length).Select(e =>
        {
            int a = 4 * e, b = e + 1 == model.Nodes ? 0 : 4 * (e + 1);
            return new[] { a, a + 1, a + 2, b, b + 1, b + 2 };
        })];
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        for (var e = 0; e < state.Edges; e++)
        {
            var strain = state.Lengths[e] / _model.RestLengths[e] - 1;
            energy += 0.5 * _model.AxialStiffness * _model.RestLengths[e] * strain * strain;
        }
        return energy;
    }

    /// <summary>Pull in an edge, N.</summary>
    public double PullN(RodState state, int edge) => _model.AxialStiffness * (state.Lengths[edge] / _model.RestLengths[edge] - 1);

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<double> second = stackalloc double[36];
        for (var e = 0; e < state.Edges; e++)
        {
            var dofs = Elements[e];
            var t = state.Tangents[e];
            var pull = PullN(state, e);
            for (var k = 0; k < 3; k++)
            {
                gradient[dofs[k]] -= pull * t[k];
                gradient[dofs[3 + k]] += pull * t[k];
            }
            if (hessian is null) continue;
            // Along the edge it is a spring; across it the pull straightens, and a push lets it give way.
            var along = _model.AxialStiffness / _model.RestLengths[e];
            var across = convex ? Math.Max(0, pull / state.Lengths[e]) : pull / state.Lengths[e];
            for (var r = 0; r < 3; r++)
                for (var c = 0; c < 3; c++)
                {
                    var value = (along - across) * t[r] * t[c] + (r == c ? across : 0);
                    second[r * 6 + c] = second[(r + 3) * 6 + c + 3] = value;
                    second[r * 6 + c + 3] = second[(r + 3) * 6 + c] = -value;
                }
            hessian.Add(e, second);
        }
    }
}
