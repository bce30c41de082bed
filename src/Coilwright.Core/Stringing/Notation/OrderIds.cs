namespace Coilwright.Core.Stringing.Notation;

/// <summary>Gives ids to the parts of a tree as they are read, and gives parts that outlive a change of the text their old ids again.</summary>
internal sealed class OrderIds(int next)
{
    private readonly Dictionary<(Type Kind, TextSpan Span), int> _kept = [];

    // Parts that end, or start, just where something was inserted: they keep their id also when the new text became a part of them.
    private readonly Dictionary<(Type Kind, TextSpan Span), int> _grown = [];
    private readonly HashSet<int> _given = [];

    public int Next { get; private set; } = next;

    /// <summary>Ids for the text after a change: <paramref name="span"/> of the old text replaced by so many characters.</summary>
    public static OrderIds After(OrderTree old, TextSpan span, int length)
    {
        var ids = new OrderIds(old.NextId);
        var shift = length - span.Length;
        foreach (var node in old.Nodes())
        {
            var (start, end, kind) = (node.Span.Start, node.Span.End, node.GetType());
            if (end <= span.Start) ids._kept.TryAdd((kind, node.Span), node.Id);
            else if (start >= span.End) ids._kept.TryAdd((kind, new TextSpan(start + shift, node.Span.Length)), node.Id);
            if (start <= span.Start && end >= span.End) ids._grown.TryAdd((kind, new TextSpan(start, node.Span.Length + shift)), node.Id);
        }
        return ids;
    }

    /// <summary>The id for a part.</summary>
    public int For<TNode>(TextSpan span)
        where TNode : OrderNode
    {
        var key = (typeof(TNode), span);
        if (_kept.TryGetValue(key, out var id) && _given.Add(id)) return id;
        if (_grown.TryGetValue(key, out id) && _given.Add(id)) return id;
        return Next++;
    }
}
