using Coilwright.Core.Settle.Solving;
using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;

namespace Coilwright.Core.Tests.Settle;

public class SparseFactorTests
{
    // Groups of one to three unknowns in a chain with some far ties, as turns that touch make them; some unknowns held.
    private sealed record Tied(int[][] Elements, double[][] Matrices, int[] GroupOf, bool[] IsFixed, double[] Angles);

    private static Gen<Tied> Systems(bool rising) => Gen.Select(Gen.Int[2, 14], Gen.ULong).Select((groups, seed) =>
    {
        var random = new Random((int)(seed & 0x7fffffff));
        var groupOf = new List<int>();
        var of = new List<int>[groups];
        for (var g = 0; g < groups; g++)
        {
            of[g] = [];
            for (var k = random.Next(1, 4); k > 0; k--)
            {
                of[g].Add(groupOf.Count);
                groupOf.Add(g);
            }
        }
        var elements = new List<int[]>();
        for (var g = 0; g + 1 < groups; g++) elements.Add([.. of[g], .. of[g + 1]]);
        for (var k = 0; k < groups / 3; k++)
        {
            int a = random.Next(groups), b = random.Next(groups);
            if (a != b) elements.Add([.. of[a], .. of[b]]);
        }
        var matrices = elements.Select(e =>
        {
            var m = new double[e.Length * e.Length];
            for (var r = 0; r < e.Length; r++)
                for (var c = r; c < e.Length; c++)
                    m[r * e.Length + c] = m[c * e.Length + r] = 2 * random.NextDouble() - 1 + (r != c ? 0 : rising ? e.Length : random.Next(2) == 0 ? 12 : -12);
            return m;
        });
        return new Tied([.. elements], [.. matrices], [.. groupOf], [.. groupOf.Select(_ => random.Next(8) == 0)],
            [.. Enumerable.Range(0, groups).Select(_ => Math.PI * (2 * random.NextDouble() - 1))]);
    }).Where(t => t.IsFixed.Count(f => !f) > 1);

    private static StiffnessMatrix Filled(Tied tied, EliminationOrder? order)
    {
        var matrix = new StiffnessMatrix([tied.Elements], tied.IsFixed, tied.GroupOf, tied.Angles, order);
        matrix.Clear();
        var sink = matrix.SinkOf(0, tied.Elements);
        for (var e = 0; e < tied.Elements.Length; e++) sink.Add(e, tied.Matrices[e]);
        matrix.Fill(0);
        return matrix;
    }

    private static (Matrix<double> Matrix, int[] Free) Full(Tied tied)
    {
        int[] free = [.. Enumerable.Range(0, tied.GroupOf.Length).Where(u => !tied.IsFixed[u])];
        var all = new DenseMatrix(tied.GroupOf.Length, tied.GroupOf.Length);
        for (var e = 0; e < tied.Elements.Length; e++)
            for (var r = 0; r < tied.Elements[e].Length; r++)
                for (var c = 0; c < tied.Elements[e].Length; c++) all[tied.Elements[e][r], tied.Elements[e][c]] += tied.Matrices[e][r * tied.Elements[e].Length + c];
        return (DenseMatrix.Create(free.Length, free.Length, (r, c) => all[free[r], free[c]]), free);
    }

    [Theory]
    [InlineData(EliminationOrder.Natural)]
    [InlineData(EliminationOrder.Folded)]
    [InlineData(EliminationOrder.LeastNeighbours)]
    [InlineData(null)]
    public void Solutions_are_those_of_a_full_matrix(EliminationOrder? order) => Systems(true).Sample(tied =>
    {
        var matrix = Filled(tied, order);
        var (full, free) = Full(tied);
        var right = tied.GroupOf.Select((_, u) => Math.Sin(u + 1.0)).ToArray();
        var expected = full.Solve(Vector.Build.Dense(free.Length, i => right[free[i]]));
        var found = new double[right.Length];
        matrix.Solve(right, found);
        // Diagonals weigh more than what stands beside them, so hardly a digit is lost: 1e-11 is generous to both.
        for (var i = 0; i < free.Length; i++) Near.Equal(expected[i], found[free[i]], 1e-11, order);
        for (var u = 0; u < right.Length; u++)
            if (tied.IsFixed[u]) Assert.Equal(0, found[u]);
        Assert.Equal(0, matrix.Factor.Negative);
        Assert.Equal(0, matrix.Factor.Replaced);
    });

    [Fact]
    public void Negative_pivots_are_as_many_as_negative_eigenvalues() => Systems(false).Sample(tied =>
    {
        var (full, _) = Full(tied);
        var values = full.Evd(Symmetricity.Symmetric).EigenValues;
        // Where a value is all but nought its sign is rounding's.
        if (values.Any(v => Math.Abs(v.Real) < 1e-3)) return;
        foreach (var order in new EliminationOrder?[] { EliminationOrder.Natural, EliminationOrder.Folded, EliminationOrder.LeastNeighbours })
            Assert.Equal(values.Count(v => v.Real < 0), Filled(tied, order).Factor.Negative);
    });

    [Fact]
    public void The_factor_has_as_many_entries_as_the_order_of_elimination_was_chosen_by() => Systems(true).Sample(tied =>
    {
        foreach (var order in Enum.GetValues<EliminationOrder>())
        {
            var matrix = Filled(tied, order);
            // Groups are counted as if all their unknowns were tied to each other, as they are here.
            Assert.Equal(matrix.Elimination.Entries, matrix.Factor.Entries);
        }
        var best = Filled(tied, null).Elimination.Entries;
        Assert.True(best <= Filled(tied, EliminationOrder.Folded).Elimination.Entries);
        Assert.True(best <= Filled(tied, EliminationOrder.LeastNeighbours).Elimination.Entries);
    });

    [Fact]
    public void The_same_matrix_gives_the_same_bits() => Systems(true).Sample(tied =>
    {
        double[] Solved()
        {
            var x = new double[tied.GroupOf.Length];
            Filled(tied, null).Solve([.. tied.GroupOf.Select((_, u) => 1.0 / (u + 1))], x);
            return x;
        }
        Assert.Equal(Solved(), Solved());
    });

    [Fact]
    public void Times_is_the_matrix_that_was_filled() => Systems(true).Sample(tied =>
    {
        var matrix = Filled(tied, null);
        var (full, free) = Full(tied);
        var x = tied.GroupOf.Select((_, u) => Math.Cos(u)).ToArray();
        var product = new double[x.Length];
        matrix.Times(x, product);
        var expected = full * Vector.Build.Dense(free.Length, i => x[free[i]]);
        for (var i = 0; i < free.Length; i++) Near.Equal(expected[i], product[free[i]], 1e-12);
    });

    [Fact]
    public void A_pivot_of_nought_is_replaced_and_counted()
    {
        var factor = new SparseFactor([0, 1, 3], [0, 0, 1]);
        factor.Fill([1, 1, 1], 1e-9);
        Assert.Equal(1, factor.Replaced);
        double[] x = [1, 1];
        factor.Solve(x);
        Assert.All(x, v => Assert.True(double.IsFinite(v)));
    }
}
