using System.Collections.Immutable;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>Takes items out of an order's text so that what is left reads well and still parses: with one comma, with the line when nothing else is
/// on it, and never with a comment.</summary>
internal sealed class TextRemover(OrderTree tree)
{
    private readonly ImmutableArray<OrderToken> _tokens = tree.Tokens;

    /// <summary>Whether nothing but blanks and a comma stands between two places: what is there goes with what is on both sides of it.</summary>
    public bool IsPlain(int from, int to)
    {
        for (var i = TokenFrom(from); i < _tokens.Length && _tokens[i].Span.Start < to; i++)
            if (_tokens[i].Kind is not (OrderTokenKind.Space or OrderTokenKind.Comma))
                return false;
        return true;
    }

    /// <summary>Whether a stretch holds a comment or runs over several lines.</summary>
    public bool IsLoose(TextSpan span)
    {
        for (var i = TokenFrom(span.Start); i < _tokens.Length && _tokens[i].Span.Start < span.End; i++)
            if (_tokens[i].Kind is OrderTokenKind.Comment or OrderTokenKind.LineEnd)
                return true;
        return false;
    }

    /// <summary>The comments in a stretch.</summary>
    public IEnumerable<TextSpan> Comments(TextSpan span)
    {
        for (var i = TokenFrom(span.Start); i < _tokens.Length && _tokens[i].Span.Start < span.End; i++)
            if (_tokens[i].Kind == OrderTokenKind.Comment)
                yield return _tokens[i].Span;
    }

    /// <summary>The first token of a kind from a place on.</summary>
    public OrderToken First(OrderTokenKind kind, int from)
    {
        var i = TokenFrom(from);
        while (_tokens[i].Kind != kind) i++;
        return _tokens[i];
    }

    /// <summary>The last token of a kind that ends at a place or before it.</summary>
    public OrderToken Last(OrderTokenKind kind, int before)
    {
        var i = TokenFrom(before) - 1;
        while (_tokens[i].Kind != kind) i--;
        return _tokens[i];
    }

    /// <summary>What to cut out so that one item, or several with nothing but commas and blanks between them, are gone.</summary>
    public TextSpan Cut(TextSpan items)
    {
        var next = AfterSpace(TokenFrom(items.End));
        var comma = KindAt(next) == OrderTokenKind.Comma;
        var end = comma ? _tokens[next].Span.End : items.End;
        if (comma) next = AfterSpace(next + 1);
        var before = TokenFrom(items.Start) - 1;
        if (before >= 0 && _tokens[before].Kind == OrderTokenKind.Space) before--;
        var isFirstOfLine = before < 0 || _tokens[before].Kind == OrderTokenKind.LineEnd;
        var isAfterComma = before >= 0 && _tokens[before].Kind == OrderTokenKind.Comma;
        switch (KindAt(next))
        {
            case null or OrderTokenKind.LineEnd when isFirstOfLine:
                // Alone on its line: the line goes.
                return TextSpan.Between(before < 0 ? 0 : _tokens[before].Span.End, next < _tokens.Length ? _tokens[next].Span.End : tree.Text.Length);
            case OrderTokenKind.Comment when isFirstOfLine:
                return TextSpan.Between(items.Start, _tokens[next].Span.Start);
            case null or OrderTokenKind.LineEnd or OrderTokenKind.Comment when comma:
                return TextSpan.Between(before < 0 ? 0 : _tokens[before].Span.End, end);
            case null or OrderTokenKind.LineEnd or OrderTokenKind.Comment or OrderTokenKind.Close when isAfterComma:
                return TextSpan.Between(_tokens[before].Span.Start, items.End);
            default:
                return comma ? TextSpan.Between(items.Start, _tokens[next].Span.Start) : items;
        }
    }

    private OrderTokenKind? KindAt(int token) => token < _tokens.Length ? _tokens[token].Kind : null;

    private int AfterSpace(int token) => KindAt(token) == OrderTokenKind.Space ? token + 1 : token;

    /// <summary>The first token that starts at a place or after it.</summary>
    private int TokenFrom(int place)
    {
        var (low, high) = (0, _tokens.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (_tokens[middle].Span.Start >= place) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
