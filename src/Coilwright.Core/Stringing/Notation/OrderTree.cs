using System.Collections.Immutable;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>An order's text as a tree that keeps every blank, comment and line end. Immutable.</summary>
/// <remarks>Says how the order is written, not what it strings: names are not looked up here (<see cref="OrderNotation.Read(OrderTree,
/// IReadOnlyList{string})"/> does). A text with faults has a tree too, with gaps where the faults are, so that it can be shown and mended.</remarks>
public sealed class OrderTree
{
    private OrderTree(string text, ImmutableArray<OrderToken> tokens, OrderPlaces places, OrderParser parser)
    {
        Text = text;
        Tokens = tokens;
        Places = places;
        Entries = parser.Entries;
        Faults = parser.Faults;
        Hidden = parser.Hidden;
        NextId = parser.NextId;
    }

    /// <summary>The text as written.</summary>
    public string Text { get; }

    /// <summary>The tokens, end to end; they cover the whole text.</summary>
    public ImmutableArray<OrderToken> Tokens { get; }

    /// <summary>Items and written-down groups, in the order of the text.</summary>
    public ImmutableArray<OrderEntry> Entries { get; }

    /// <summary>Whether the text is well formed. Names may still be unknown.</summary>
    public bool IsWhole => Faults.IsEmpty;

    internal OrderPlaces Places { get; }

    internal ImmutableArray<OrderFault> Faults { get; }

    /// <summary>Names that may be groups named in text that was passed over after a fault; nobody should call them unknown.</summary>
    internal ImmutableHashSet<string> Hidden { get; }

    internal int NextId { get; }

    /// <summary>Reads the form of an order's text.</summary>
    /// <exception cref="ArgumentException">The text is longer than <see cref="OrderLimits.TextLength"/>.</exception>
    public static OrderTree Of(string text) => Of(text, new OrderIds(1));

    /// <summary>The exact text again, put together from the tokens.</summary>
    public string ToText() => string.Concat(Tokens.Select(token => TextOf(token.Span)));

    /// <summary>The text of a span.</summary>
    public string TextOf(TextSpan span) => Text.Substring(span.Start, span.Length);

    /// <summary>The tree with one stretch of its text replaced; everything else stays as written.</summary>
    /// <remarks>Parts outside the stretch keep their ids, and so do parts that stand round it; what is written anew gets new ids.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The span does not lie in the text.</exception>
    /// <exception cref="ArgumentException">The new text is longer than <see cref="OrderLimits.TextLength"/>.</exception>
    public OrderTree Replace(TextSpan span, string with)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(span.Start, nameof(span));
        ArgumentOutOfRangeException.ThrowIfNegative(span.Length, nameof(span));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(span.Start, Text.Length, nameof(span));
        ArgumentOutOfRangeException.ThrowIfGreaterThan(span.Length, Text.Length - span.Start, nameof(span));
        return Replace([new TextChange(span, with)]);
    }

    /// <summary>The tree with several stretches of its text replaced at once. Ids are kept as by one such change after another.</summary>
    /// <param name="changes">The changes by place, none over another; of two at one place the insertion comes first.</param>
    /// <exception cref="ArgumentException">The changes do not lie in the text one after another, or the new text is too long.</exception>
    public OrderTree Replace(IReadOnlyList<TextChange> changes)
    {
        var text = new System.Text.StringBuilder();
        var done = 0;
        foreach (var (span, with) in changes)
        {
            if (span.Start < done || span.Length < 0 || span.End > Text.Length) throw new ArgumentException("A change lies over another or outside.", nameof(changes));
            text.Append(Text, done, span.Start - done).Append(with);
            done = span.End;
        }
        return Of(text.Append(Text, done, Text.Length - done).ToString(), OrderIds.After(this, changes));
    }

    /// <summary>All parts of the tree, each before the parts inside it.</summary>
    public IEnumerable<OrderNode> Nodes()
    {
        var open = new Stack<OrderNode>(Entries.Reverse());
        while (open.TryPop(out var node))
        {
            yield return node;
            foreach (var child in node.Children.Reverse()) open.Push(child);
        }
    }

    private static OrderTree Of(string text, OrderIds ids)
    {
        if (text.Length > OrderLimits.TextLength) throw new ArgumentException("The order's text is too long.", nameof(text));
        var tokens = OrderLexer.Cut(text);
        var places = new OrderPlaces(text, tokens);
        return new OrderTree(text, tokens, places, OrderParser.Parse(text, tokens, places, ids));
    }
}
