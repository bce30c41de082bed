namespace Coilwright.Core.Stringing.Notation;

/// <summary>Gives ids to the parts of a tree as they are read, and gives parts that outlive a change of the text their old ids again.</summary>
internal sealed class OrderIds(int next)
{
    private readonly Dictionary<(Type Kind, TextSpan Span), int> _kept = [];

    // Parts that something was written into. Where it was inserted just at their start or end, it may have become a part of them or stand beside
    // them: the text read anew tells which, so each of these is looked for.
    private readonly Dictionary<(Type Kind, TextSpan Span), int> _around = [];
    private readonly Dictionary<(Type Kind, TextSpan Span), int> _grown = [];
    private readonly HashSet<int> _given = [];

    public int Next { get; private set; } = next;

    /// <summary>Ids for the text after some changes.</summary>
    /// <param name="old">The tree before.</param>
    /// <param name="changes">The changes by place in the old text, none over another.</param>
    public static OrderIds After(OrderTree old, IReadOnlyList<TextChange> changes)
    {
        var ids = new OrderIds(old.NextId);
        var shifts = new int[changes.Count + 1];
        for (var i = 0; i < changes.Count; i++) shifts[i + 1] = shifts[i] + changes[i].With.Length - changes[i].Span.Length;
        foreach (var node in old.Nodes()) ids.Keep(node, changes, shifts);
        return ids;
    }

    /// <summary>The id for a part.</summary>
    public int For<TNode>(TextSpan span)
        where TNode : OrderNode
    {
        var key = (typeof(TNode), span);
        foreach (var ids in (ReadOnlySpan<Dictionary<(Type, TextSpan), int>>)[_kept, _around, _grown])
            if (ids.TryGetValue(key, out var id) && _given.Add(id))
                return id;
        return Next++;
    }

    private void Keep(OrderNode node, IReadOnlyList<TextChange> changes, int[] shifts)
    {
        var (start, end, kind) = (node.Span.Start, node.Span.End, node.GetType());
        // The changes from one index to another lie in the part; those before end where it starts at the latest, those after start where it ends.
        var from = First(changes, change => change.Span.End > start);
        var to = Math.Max(from, First(changes, change => change.Span.Start >= end));
        if (to > from && (changes[from].Span.Start < start || changes[to - 1].Span.End > end)) return;
        Add(to == from ? _kept : _around, from, to);
        var (least, most) = (from, to);
        while (least > 0 && changes[least - 1].Span == new TextSpan(start, 0)) least--;
        while (most < changes.Count && changes[most].Span == new TextSpan(end, 0)) most++;
        if (least == from && most == to) return;
        Add(_grown, least, most);
        Add(_grown, from, most);
        Add(_grown, least, to);

        void Add(Dictionary<(Type, TextSpan), int> ids, int inside, int after) =>
            ids.TryAdd((kind, TextSpan.Between(start + shifts[inside], end + shifts[after])), node.Id);
    }

    private static int First(IReadOnlyList<TextChange> changes, Func<TextChange, bool> holds)
    {
        var (low, high) = (0, changes.Count);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (holds(changes[middle])) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
