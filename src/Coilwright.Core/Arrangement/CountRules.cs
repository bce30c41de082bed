using System.Collections.Immutable;

namespace Coilwright.Core.Arrangement;

/// <summary>Finds rules that cannot all be kept.</summary>
internal static class CountRules
{
    /// <summary>As few rules as cannot be kept together; empty when all can.</summary>
    /// <remarks>Length and stock hang on how many beads of each kind are strung in all, so only those sums are gone through; ties are left aside.</remarks>
    public static ImmutableArray<CountRule> Conflict(GapProblem problem, ImmutableArray<string> kindIds)
    {
        var rules = Enumerable.Range(0, kindIds.Length).Where(k => problem.MostMoreOfKind[k] != int.MaxValue).Select(k => (int?)k).Append(null).ToArray();
        if (CanKeep(problem, rules)) return [];
        // The fewest first: there are at most a handful of kinds.
        foreach (var some in Enumerable.Range(1, (1 << rules.Length) - 1).OrderBy(bits => int.PopCount(bits)))
        {
            var chosen = rules.Where((_, i) => (some >> i & 1) == 1).ToArray();
            if (!CanKeep(problem, chosen))
                return [.. chosen.Select(k => k is { } kind ? new CountRule("on-hand", kindIds[kind]) : new CountRule("length", null))];
        }
        return [];
    }

    private static bool CanKeep(GapProblem problem, int?[] rules)
    {
        var (fewest, most) = (new int[problem.StepMm.Length], new int[problem.StepMm.Length]);
        for (var g = 0; g < problem.Count; g++)
        {
            fewest[problem.Kinds[g]] += problem.Gaps[g].Least - problem.Start[g];
            most[problem.Kinds[g]] += problem.Gaps[g].Most - problem.Start[g];
        }
        foreach (var rule in rules)
            if (rule is { } k) most[k] = Math.Min(most[k], problem.MostMoreOfKind[k]);
        return Go(0, 0);

        bool Go(int kind, double lengthMm)
        {
            if (kind == fewest.Length) return !rules.Contains(null) || problem.FitsLength(lengthMm);
            for (var more = fewest[kind]; more <= most[kind]; more++)
                if (Go(kind + 1, lengthMm + more * problem.StepMm[kind])) return true;
            return false;
        }
    }
}
