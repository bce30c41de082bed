using Coilwright.Core.Beads;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>One thing on a level of an order: a bead, or a stringing of a group, the way it was first strung or from its other end.</summary>
/// <param name="Code">A bead's kind from 0; or below 0 for groups, two codes for each.</param>
internal readonly record struct Strung(int Code)
{
    public bool IsGroup => Code < 0;

    /// <summary>The group, by the order in which groups are first strung to their end.</summary>
    public int Group => (-Code - 1) / 2;

    public bool IsBackwards => IsGroup && Code % 2 == 0;

    public static Strung OfGroup(int group, bool backwards) => new(-1 - (2 * group) - (backwards ? 1 : 0));
}

/// <summary>An order as levels: what stands outside all groups, and what each group strings.</summary>
internal sealed class StrungGroups
{
    private readonly List<string> _names = [];
    private readonly List<Strung[]> _contents = [];
    private readonly List<bool> _same = [];

    private StrungGroups() { }

    public Strung[] Outside { get; private set; } = [];

    /// <summary>How deep groups stand inside one another; 0 when there are none.</summary>
    public int Depth { get; private set; }

    public string Name(int group) => _names[group];

    public Strung[] Content(int group) => _contents[group];

    /// <summary>The levels of an order; null when notation cannot say it.</summary>
    public static StrungGroups? Of(StringingOrder order, IReadOnlyList<string> beadIds)
    {
        if (order.Count > OrderLimits.Beads || order.Groups.Length > OrderLimits.GroupStringings) return null;
        if (beadIds.Any(id => !OrderLexer.IsName(id) || OrderWords.Reserved.Contains(id))) return null;
        if (beadIds.Distinct(StringComparer.Ordinal).Count() != beadIds.Count) return null;
        var groups = new StrungGroups();
        return groups.Fill(order, beadIds.ToHashSet(StringComparer.Ordinal)) ? groups : null;
    }

    private bool Fill(StringingOrder order, HashSet<string> beadIds)
    {
        var byName = new Dictionary<string, int>(StringComparer.Ordinal);
        var open = new Stack<(GroupRun Run, List<Strung> Level)>();
        var level = new List<Strung>();
        var next = 0;
        for (var i = 0; i < order.Count; i++)
        {
            for (; next < order.Groups.Length && order.Groups[next].First == i; next++)
            {
                var run = order.Groups[next];
                if (open.Count == OrderLimits.Depth || run.Count < 1 || !OrderLexer.IsName(run.Name) || OrderWords.Reserved.Contains(run.Name)
                    || beadIds.Contains(run.Name) || (open.Count > 0 && run.End > open.Peek().Run.End)
                    || open.Any(around => around.Run.Name == run.Name)) return false;
                open.Push((run, level));
                Depth = Math.Max(Depth, open.Count);
                level = [];
            }
            level.Add(new Strung(order.Kinds[i]));
            while (open.Count > 0 && open.Peek().Run.End == i + 1)
            {
                var (run, outer) = open.Pop();
                if (Close(byName, run.Name, level) is not { } strung) return false;
                level = outer;
                level.Add(strung);
            }
        }
        Outside = [.. level];
        return open.Count == 0 && next == order.Groups.Length;
    }

    /// <summary>Notes a stringing of a group; null when the group was something else before.</summary>
    private Strung? Close(Dictionary<string, int> byName, string name, List<Strung> level)
    {
        if (!byName.TryGetValue(name, out var group))
        {
            group = _names.Count;
            byName.Add(name, group);
            _names.Add(name);
            _contents.Add([.. level]);
            _same.Add(level.SequenceEqual(FromOtherEnd(level)));
            return Strung.OfGroup(group, backwards: false);
        }
        if (level.SequenceEqual(_contents[group])) return Strung.OfGroup(group, backwards: false);
        if (level.SequenceEqual(FromOtherEnd(_contents[group]))) return Strung.OfGroup(group, backwards: true);
        return null;
    }

    private IEnumerable<Strung> FromOtherEnd(IEnumerable<Strung> level) =>
        level.Reverse().Select(s => s.IsGroup && !_same[s.Group] ? Strung.OfGroup(s.Group, !s.IsBackwards) : s);
}
