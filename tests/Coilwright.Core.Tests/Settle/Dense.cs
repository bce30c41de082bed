using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Gathers a term's second slopes as one full matrix.</summary>
public sealed class Dense(IReadOnlyList<int[]> elements, int unknowns) : IHessianSink
{
    public double[,] Matrix { get; } = new double[unknowns, unknowns];

    public void Add(int element, ReadOnlySpan<double> matrix)
    {
        var dofs = elements[element];
        for (var r = 0; r < dofs.Length; r++)
            for (var c = 0; c < dofs.Length; c++) Matrix[dofs[r], dofs[c]] += matrix[r * dofs.Length + c];
    }

    // How often a step is halved at most. Two differences that agree are told from two that do not by a tenth of what is allowed.
    private const int MostHalvings = 8;

    /// <summary>Holds a term's slopes and second slopes against central differences of its energy and of its slopes.</summary>
    /// <remarks>Sixth order: the difference's own error is about (h / edge)^6, 1e-12 at h = 0.01 on edges near 1, and rounding is 1e-16 / h. Where a second slope jumps between the outermost points (a hinge that goes over
    /// from its inner to its outer side) no order helps, but a shorter step that does not reach that far: it is halved until two differences in a row agree. Slopes after a
    /// step are told in directions carried there; what that turns is antisymmetric, so the mean of the matrix and its mirror image is compared.</remarks>
    public static void AgreesWithDifferences(IEnergyTerm term, RodState state, double h, double tolerance)
    {
        var n = state.Unknowns;
        var gradient = new double[n];
        var sink = new Dense(term.Elements, n);
        term.AddSlopes(state, gradient, sink, false);
        var scale = 1e-12 + Enumerable.Range(0, n).Max(u => Math.Abs(gradient[u]));
        var differences = new double[n, n];
        var stiff = Enumerable.Range(0, n).Max(u => Enumerable.Range(0, n).Max(v => Math.Abs(sink.Matrix[u, v]))) + 1e-12;
        for (var u = 0; u < n; u++)
        {
            var step = new double[n];
            step[u] = 1;
            Near.Equal(Difference(by => [term.Value(state.Moved(step, by))], h, tolerance * scale)[0], gradient[u], tolerance * scale, $"slope of unknown {u}");
            var column = Difference(by =>
            {
                var g = new double[n];
                term.AddSlopes(state.Moved(step, by), g, null, false);
                return g;
            }, h, tolerance * stiff);
            for (var v = 0; v < n; v++) differences[v, u] = column[v];
        }
        for (var u = 0; u < n; u++)
            for (var v = 0; v < n; v++)
                Near.Equal((differences[u, v] + differences[v, u]) / 2, sink.Matrix[u, v], tolerance * stiff, $"second slope of unknowns {u}, {v}");
    }

    private static double[] Difference(Func<double, double[]> f, double h, double allowed)
    {
        var before = Sixth(f, h);
        for (var halvings = 0; ; halvings++)
        {
            h /= 2;
            var now = Sixth(f, h);
            if (halvings == MostHalvings || now.Zip(before, (a, b) => Math.Abs(a - b)).Max() <= 0.1 * allowed) return now;
            before = now;
        }
    }

    private static double[] Sixth(Func<double, double[]> f, double h)
    {
        double[][] at = [f(-3 * h), f(-2 * h), f(-h), f(h), f(2 * h), f(3 * h)];
        return [.. Enumerable.Range(0, at[0].Length).Select(v => (45 * (at[3][v] - at[2][v]) - 9 * (at[4][v] - at[1][v]) + at[5][v] - at[0][v]) / (60 * h))];
    }
}
