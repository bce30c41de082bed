using System.Numerics;

namespace Coilwright.Core.Settle.Solving;

/// <summary>Which of the orders of elimination is taken.</summary>
public enum EliminationOrder
{
    /// <summary>Along the wire.</summary>
    Natural,

    /// <summary>Round the arm, both ways from the underside at once, all turns together.</summary>
    Folded,

    /// <summary>Always the one with the fewest neighbours left.</summary>
    LeastNeighbours,
}

/// <summary>What an order of elimination costs.</summary>
/// <param name="Order">The order.</param>
/// <param name="Sequence">The groups in the order in which they are eliminated.</param>
/// <param name="Entries">Entries of the factor, diagonal included.</param>
public sealed record Elimination(EliminationOrder Order, int[] Sequence, long Entries);

/// <summary>Finds in which order groups of unknowns are best eliminated.</summary>
/// <remarks>Eliminating a group ties all its neighbours together. Along the wire, a coil whose turns touch ties a whole turn together at each step; round
/// the arm it ties a handful. Nothing here depends on chance: of equals the first is taken.</remarks>
internal static class Eliminations
{
    /// <summary>The one with the smallest factor of those that can be had.</summary>
    /// <param name="neighbours">For each group those that it is tied to, itself not among them, ascending.</param>
    /// <param name="sizes">Unknowns in each group.</param>
    /// <param name="angles">Where each group stands round the arm, radians from its top, in (-pi, pi]; null when there is no arm.</param>
    public static Elimination Best(int[][] neighbours, int[] sizes, double[]? angles)
    {
        var best = Of(EliminationOrder.LeastNeighbours, neighbours, sizes, angles);
        if (angles is null)
        {
            var natural = Of(EliminationOrder.Natural, neighbours, sizes, angles);
            return natural.Entries <= best.Entries ? natural : best;
        }
        var folded = Of(EliminationOrder.Folded, neighbours, sizes, angles);
        return folded.Entries <= best.Entries ? folded : best;
    }

    public static Elimination Of(EliminationOrder order, int[][] neighbours, int[] sizes, double[]? angles)
    {
        int[] sequence = order switch
        {
            EliminationOrder.Natural => [.. Enumerable.Range(0, sizes.Length)],
            EliminationOrder.Folded => [.. Enumerable.Range(0, sizes.Length).OrderByDescending(g => Math.Abs((angles ?? throw new ArgumentNullException(nameof(angles)))[g])).ThenBy(g => g)],
            _ => FewestFirst(neighbours, sizes),
        };
        return new Elimination(order, sequence, Entries(neighbours, sizes, sequence));
    }

    /// <summary>A sequence that was chosen before, with what it costs for other ties.</summary>
    public static Elimination Again(Elimination before, int[][] neighbours, int[] sizes) => before with { Entries = Entries(neighbours, sizes, before.Sequence) };

    // Entries of the factor without making it: which rows each row reaches through the tree of elimination.
    private static long Entries(int[][] neighbours, int[] sizes, int[] sequence)
    {
        var n = sizes.Length;
        var place = new int[n];
        for (var k = 0; k < n; k++) place[sequence[k]] = k;
        var (parent, seen) = (new int[n], new int[n]);
        long entries = 0;
        for (var k = 0; k < n; k++)
        {
            (parent[k], seen[k]) = (-1, k);
            var size = sizes[sequence[k]];
            entries += size * (size + 1L) / 2;
            foreach (var other in neighbours[sequence[k]])
                for (var i = place[other]; i < k && seen[i] != k; i = parent[i])
                {
                    if (parent[i] == -1) parent[i] = k;
                    seen[i] = k;
                    entries += (long)size * sizes[sequence[i]];
                }
        }
        return entries;
    }

    private static int[] FewestFirst(int[][] neighbours, int[] sizes)
    {
        var n = sizes.Length;
        // One bit for each other group: tying neighbours together is then an or of words.
        const int Bits = 64;
        var words = (n + Bits - 1) / Bits;
        var (ties, degree) = (new ulong[n][], new int[n]);
        for (var g = 0; g < n; g++)
        {
            ties[g] = new ulong[words];
            foreach (var other in neighbours[g])
            {
                ties[g][other / Bits] |= 1UL << other;
                degree[g] += sizes[other];
            }
        }
        var sequence = new int[n];
        for (var k = 0; k < n; k++)
        {
            var g = 0;
            for (var other = 1; other < n; other++)
                if (degree[other] < degree[g]) g = other;
            sequence[k] = g;
            degree[g] = int.MaxValue;
            var of = ties[g];
            for (var w = 0; w < words; w++)
                for (var rest = of[w]; rest != 0; rest &= rest - 1)
                {
                    var a = w * Bits + BitOperations.TrailingZeroCount(rest);
                    var on = ties[a];
                    on[g / Bits] &= ~(1UL << g);
                    degree[a] -= sizes[g];
                    for (var v = 0; v < words; v++)
                    {
                        var fresh = of[v] & ~on[v];
                        if (v == w) fresh &= ~(1UL << a);
                        on[v] |= fresh;
                        for (; fresh != 0; fresh &= fresh - 1) degree[a] += sizes[v * Bits + BitOperations.TrailingZeroCount(fresh)];
                    }
                }
        }
        return sequence;
    }
}
