using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Pieces;

/// <summary>Where an order breaks a rule.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Places">Each place where it does, as beads from the first to the last, from 0. At least one; no two the same.</param>
/// <param name="Found">How many were found at the first of them where the rule says how many there may be; else 0.</param>
public sealed record RuleBreak(OrderRule Rule, ImmutableArray<Stretch> Places, int Found);

/// <summary>Holds an order against the rules that it is to keep.</summary>
public static class RuleBreaks
{
    /// <summary>The rules that an order breaks, in the rules' order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="beads">The piece's beads.</param>
    /// <param name="rules">The rules. One whose names are neither all beads nor all strung groups judges nothing.</param>
    public static ImmutableArray<RuleBreak> Of(StringingOrder order, ImmutableArray<Bead> beads, ImmutableArray<OrderRule> rules)
    {
        if (rules.IsDefaultOrEmpty) return [];
        var breaks = ImmutableArray.CreateBuilder<RuleBreak>();
        foreach (var rule in rules)
        {
            if (Sequence(order, beads, rule) is not { Length: > 0 } row) continue;
            var (found, places) = In(row, rule);
            if (places.Count > 0)
                breaks.Add(new RuleBreak(rule, [.. places.Select(p => new Stretch(null, row[p.First].First, row[p.Last].End - row[p.First].First))], found));
        }
        return breaks.ToImmutable();
    }

    /// <summary>Whether an order keeps all rules.</summary>
    public static bool Keeps(StringingOrder order, ImmutableArray<Bead> beads, ImmutableArray<OrderRule> rules) => Of(order, beads, rules).IsEmpty;

    // What a rule counts, one by one: beads, or groups.
    private static GroupRun[]? Sequence(StringingOrder order, ImmutableArray<Bead> beads, OrderRule rule)
    {
        if (rule.Named.All(name => beads.Any(bead => bead.Id == name)))
            return [.. order.Kinds.Select((kind, at) => new GroupRun(beads[kind].Id, at, 1))];
        var groups = order.ReadingGroups;
        return rule.Named.All(name => groups.Any(group => group.Name == name)) ? [.. groups] : null;
    }

    private static (int Found, List<(int First, int Last)> Places) In(GroupRun[] row, OrderRule rule)
    {
        var places = new List<(int, int)>();
        var found = 0;
        switch (rule)
        {
            case OrderRule.LongestRun run:
                for (var first = 0; first < row.Length;)
                {
                    var end = first + 1;
                    while (end < row.Length && row[end].Name == row[first].Name) end++;
                    if (row[first].Name == run.Name && end - first > run.Most)
                    {
                        if (places.Count == 0) found = end - first;
                        places.Add((first, end - 1));
                    }
                    first = end;
                }
                break;
            case OrderRule.InAnyRow window:
                // Windows that overlap tell of the same place: after one that breaks the rule, the next to be told begins after it.
                var of = window.Names.ToHashSet(StringComparer.Ordinal);
                for (var first = 0; first <= Math.Max(0, row.Length - window.OfAny); first++)
                {
                    var last = Math.Min(row.Length, first + window.OfAny) - 1;
                    var many = 0;
                    for (var at = first; at <= last; at++)
                        if (of.Contains(row[at].Name)) many++;
                    if (many <= window.UpTo) continue;
                    if (places.Count == 0) found = many;
                    places.Add((first, last));
                    first = last;
                }
                break;
            case OrderRule.Apart apart:
                for (var at = 1; at < row.Length; at++)
                    if (row[at - 1].Name == apart.Name && row[at].Name == apart.Beside || row[at - 1].Name == apart.Beside && row[at].Name == apart.Name)
                        places.Add((at - 1, at));
                break;
            case OrderRule.Together together:
                for (var at = 0; at < row.Length; at++)
                    if (row[at].Name == together.Name && !(at > 0 && row[at - 1].Name == together.Beside) && !(at + 1 < row.Length && row[at + 1].Name == together.Beside))
                        places.Add((at, at));
                break;
            case OrderRule.StartsWith starts when row[0].Name != starts.Name:
                places.Add((0, 0));
                break;
            case OrderRule.EndsWith ends when row[^1].Name != ends.Name:
                places.Add((row.Length - 1, row.Length - 1));
                break;
        }
        return (found, places);
    }
}
