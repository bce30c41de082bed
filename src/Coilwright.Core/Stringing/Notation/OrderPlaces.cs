namespace Coilwright.Core.Stringing.Notation;

/// <summary>Lines and columns of a text, both from 1. A column counts characters: a pair of surrogates is one, a tab is one.</summary>
internal sealed class OrderPlaces
{
    private readonly string _text;
    private readonly List<int> _lineStarts = [0];

    public OrderPlaces(string text, IEnumerable<OrderToken> tokens)
    {
        _text = text;
        foreach (var token in tokens)
            if (token.Kind == OrderTokenKind.LineEnd)
                _lineStarts.Add(token.Span.End);
    }

    /// <summary>The place of an index; the index after the last character is allowed.</summary>
    public (int Line, int Column) Of(int index)
    {
        var found = _lineStarts.BinarySearch(index);
        var line = found >= 0 ? found : ~found - 1;
        var column = 1;
        for (var i = _lineStarts[line]; i < index; i++)
            if (!char.IsLowSurrogate(_text[i]) || i == 0 || !char.IsHighSurrogate(_text[i - 1]))
                column++;
        return (line + 1, column);
    }
}
