using System.Collections.Immutable;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;

namespace Coilwright.Benchmarks.Ideas;

/// <summary>Pieces of named clusters with a run of spacers after each: what ideas are looked for in.</summary>
public static class ClusterPieces
{
    /// <summary>Twelve wrists, each counted alike.</summary>
    public static ImmutableArray<WeighedWrist> Wrists { get; } = [.. Enumerable.Range(0, 12).Select(i => new WeighedWrist(142 + 4 * i, 1))];

    /// <summary>A piece with so many gaps and about so many beads; the same seed gives the same.</summary>
    public static Piece Of(int gaps, int beads, ulong seed)
    {
        var draws = new SeededDraws(seed, 0);
        ulong drawn = 0;
        var basis = GeneratedPieces.OfFiveTurns(20);
        // The first two kinds of the sample piece make two sorts of cluster, its spacer stands between.
        var spacer = basis.Beads.IndexOf(basis.Beads.First(b => b.Role == Core.Beads.Role.Spacer));
        int[] main = [.. Enumerable.Range(0, basis.Beads.Length).Where(k => k != spacer).Take(2)];
        var perCluster = Math.Max(2, beads / gaps - 2);
        var kinds = new List<int>();
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        for (var g = 0; g <= gaps; g++)
        {
            var sort = draws.Below(drawn++, main.Length);
            var count = Math.Max(1, perCluster - 1 + draws.Below(drawn++, 3));
            groups.Add(new GroupRun(sort == 0 ? "a" : "b", kinds.Count, count));
            kinds.AddRange(Enumerable.Repeat(main[sort], count));
            if (g < gaps) kinds.AddRange(Enumerable.Repeat(spacer, 1 + draws.Below(drawn++, 3)));
        }
        return basis with
        {
            Order = new StringingOrder([.. kinds], groups.ToImmutable()),
            Written = null,
            Wishes = new Wishes { LiningUp = LiningUpWish.Mix, Wrists = Wrists },
        };
    }
}
