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

    /// <summary>Holds a term's slopes and second slopes against central differences of its energy and of its slopes.</summary>
    /// <remarks>Sixth order: the difference's own error is about (h / edge)^6, 1e-12 at h = 0.01 on edges near 1, and rounding is 1e-16 / h. Slopes after a
    /// step are told in directions carried there; what that turns is antisymmetric, so the mean of the matrix and its mirror image is compared.</remarks>
    public static void AgreesWithDifferences(IEnergyTerm term, RodState state, double h, double tolerance)
    {
        var n = state.Unknowns;
        var gradient = new double[n];
        var sink = new Dense(term.Elements, n);
        term.AddSlopes(state, gradient, sink, false);
        var scale = 1e-12 + Enumerable.Range(0, n).Max(u => Math.Abs(gradient[u]));
        var differences = new double[n, n];
        double stiff = 1e-12;
        for (var u = 0; u < n; u++)
        {
            var step = new double[n];
            step[u] = 1;
            Near.Equal(Sixth(k => term.Value(state.Moved(step, k * h))) / h, gradient[u], tolerance * scale, $"slope of unknown {u}");
            double[] Slopes(int k)
            {
                var g = new double[n];
                term.AddSlopes(state.Moved(step, k * h), g, null, false);
                return g;
            }
            double[][] at = [Slopes(-3), Slopes(-2), Slopes(-1), Slopes(1), Slopes(2), Slopes(3)];
            for (var v = 0; v < n; v++)
            {
                differences[v, u] = Sixth(k => at[k < 0 ? k + 3 : k + 2][v]) / h;
                stiff = Math.Max(stiff, Math.Abs(differences[v, u]));
            }
        }
        for (var u = 0; u < n; u++)
            for (var v = 0; v < n; v++)
                Near.Equal((differences[u, v] + differences[v, u]) / 2, sink.Matrix[u, v], tolerance * stiff, $"second slope of unknowns {u}, {v}");
    }

    private static double Sixth(Func<int, double> f) => (45 * (f(1) - f(-1)) - 9 * (f(2) - f(-2)) + f(3) - f(-3)) / 60;
}
