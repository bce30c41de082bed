using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>Reads tokens into a tree. By hand, one token ahead, and never deeper than <see cref="OrderLimits.Depth"/>.</summary>
/// <remarks>After a fault it passes over everything to the next comma, line end or closing bracket of the same bracket, so that one slip is told
/// once. The grammar is in docs/order-notation.md.</remarks>
internal sealed class OrderParser
{
    private readonly string _text;
    private readonly ImmutableArray<OrderToken> _tokens;
    private readonly OrderPlaces _places;
    private readonly OrderIds _ids;
    private readonly OrderFaultList _faults = new();
    private readonly OrderFaultList _capitals = new();
    private readonly ImmutableArray<OrderEntry>.Builder _entries = ImmutableArray.CreateBuilder<OrderEntry>();
    private readonly HashSet<string> _words = new(StringComparer.Ordinal);
    private readonly HashSet<string>.AlternateLookup<ReadOnlySpan<char>> _wordsBySpan;
    private readonly ImmutableHashSet<string>.Builder _hidden = ImmutableHashSet.CreateBuilder<string>(StringComparer.Ordinal);
    private int _at;
    private int _depth;
    private int _openBrackets;

    // Text was passed over to its end, or to a written-down group, with brackets open in it: which bracket lacks its end is not known then.
    private bool _lostTheEnd;

    private OrderParser(string text, ImmutableArray<OrderToken> tokens, OrderPlaces places, OrderIds ids)
    {
        _text = text;
        _tokens = tokens.RemoveAll(token => token.Kind is OrderTokenKind.Space or OrderTokenKind.Comment);
        _places = places;
        _ids = ids;
        _wordsBySpan = _words.GetAlternateLookup<ReadOnlySpan<char>>();
    }

    /// <summary>Where a run stands, which decides where it ends.</summary>
    private enum Place
    {
        /// <summary>In a bracket: to the closing bracket.</summary>
        Bracket,

        /// <summary>After <c>=</c>: to the end of the line.</summary>
        Line,
    }

    public ImmutableArray<OrderEntry> Entries => _entries.ToImmutable();

    public ImmutableArray<OrderFault> Faults => [.. _faults.Faults, .. _capitals.Faults];

    public ImmutableHashSet<string> Hidden => _hidden.ToImmutable();

    public int NextId => _ids.Next;

    private OrderTokenKind? Kind => KindAt(_at);

    /// <summary>Index in the text where the next token starts; the end of the text after the last.</summary>
    private int Here => _at < _tokens.Length ? _tokens[_at].Span.Start : _text.Length;

    /// <summary>Index in the text where the last token taken ends.</summary>
    private int Behind => _at == 0 ? 0 : _tokens[_at - 1].Span.End;

    /// <summary>What stands here; nothing at the end of a line.</summary>
    private string Found => Kind is null or OrderTokenKind.LineEnd ? "" : TextOf(_tokens[_at]);

    /// <summary>From a place to the end of the last token taken; nothing, there, when none was taken since.</summary>
    private TextSpan SpanFrom(int start) => Behind > start ? TextSpan.Between(start, Behind) : new TextSpan(Behind, 0);

    private bool IsAtLineStart => _at == 0 || _tokens[_at - 1].Kind == OrderTokenKind.LineEnd;

    /// <summary>Whether a group is written down here: a word and <c>=</c> at the start of a line. It ends every bracket still open.</summary>
    private bool IsAtDefinition => IsAtLineStart && IsWordAt(_at) && KindAt(_at + 1) == OrderTokenKind.Equals;

    /// <summary>Whether a group is being named by a reserved word, as in <c>between (a, b)</c> where an item starts.</summary>
    private bool IsAtReservedGroupName => IsWordAt(_at) && KindAt(_at + 1) == OrderTokenKind.Open
        && Kind is OrderTokenKind.Times or OrderTokenKind.With or OrderTokenKind.Between or OrderTokenKind.Around;

    public static OrderParser Parse(string text, ImmutableArray<OrderToken> tokens, OrderPlaces places, OrderIds ids)
    {
        var parser = new OrderParser(text, tokens, places, ids);
        parser.TellCapitalWords();
        parser.ParseEntries();
        return parser;
    }

    // Entries and runs ---------------------------------------------------------------------------------------------------------------------

    private void ParseEntries()
    {
        while (Kind is not null)
        {
            if (Kind == OrderTokenKind.LineEnd)
            {
                _at++;
                continue;
            }
            _lostTheEnd = false;
            if (Kind == OrderTokenKind.Comma) Expected(OrderExpectations.Item);
            else if (IsAtDefinition) _entries.Add(ParseDefinition());
            else _entries.Add(ParseItem());
            EndOfItem(OrderExpectations.CommaOrLineEnd, closes: false);
        }
    }

    private OrderDefinition ParseDefinition()
    {
        var name = ParseGroupName();
        _at++; // the sign =
        var run = ParseRun(Place.Line);
        var span = TextSpan.Between(name.Span.Start, Math.Max(Behind, run.Span.End));
        return new OrderDefinition(_ids.For<OrderDefinition>(span), span, name, run);
    }

    private OrderRun ParseRun(Place place)
    {
        var items = ImmutableArray.CreateBuilder<OrderItem>();
        var told = false;
        while (!RunEnds(place))
        {
            if (Kind == OrderTokenKind.LineEnd)
            {
                _at++;
            }
            else if (Kind == OrderTokenKind.Comma)
            {
                Expected(OrderExpectations.Item);
                told = true;
                _at++;
            }
            else
            {
                items.Add(ParseItem());
                if (place == Place.Line && IsAtLineStart) break; // an unclosed bracket has taken the line end
                EndOfItem(place == Place.Bracket ? OrderExpectations.CommaOrClosingBracket : OrderExpectations.CommaOrLineEnd,
                    closes: place == Place.Bracket);
            }
        }
        if (items.Count == 0 && !told) Expected(OrderExpectations.Item);
        var span = items.Count == 0 ? new TextSpan(Behind, 0) : TextSpan.Between(items[0].Span.Start, items[^1].Span.End);
        return new OrderRun(_ids.For<OrderRun>(span), span, items.ToImmutable());
    }

    private bool RunEnds(Place place) => place switch
    {
        Place.Bracket => Kind is null or OrderTokenKind.Close || IsAtDefinition,
        _ => Kind is null or OrderTokenKind.LineEnd,
    };

    /// <summary>Takes the comma after an item, or tells what stands there instead and passes over it.</summary>
    private void EndOfItem(string expected, bool closes)
    {
        if (Kind is not (null or OrderTokenKind.Comma or OrderTokenKind.LineEnd) && !(closes && Kind == OrderTokenKind.Close)
            && !IsAtDefinition)
        {
            if (Kind == OrderTokenKind.Equals && IsWordAt(_at - 1))
            {
                Expected(OrderExpectations.LineOfItsOwn);
                _hidden.Add(OrderFaultList.Lowered(TextOf(_tokens[_at - 1])));
            }
            else
            {
                Expected(expected);
            }
            PassOver(closes);
        }
        if (Kind == OrderTokenKind.Comma) _at++;
    }

    // Items --------------------------------------------------------------------------------------------------------------------------------

    private OrderItem ParseItem()
    {
        var start = Here;
        var (count, part) = IsAtReservedGroupName ? (null, ParseBracket(start, ParseGroupName())) : ParseCounted();
        OrderItem? separator = null;
        if (part is not null && Kind == OrderTokenKind.With)
        {
            _at++;
            separator = ParseItemWithoutWith();
            if (separator.Part is not null)
            {
                if (Kind == OrderTokenKind.Between) _at++;
                else Failed(OrderExpectations.Between);
            }
        }
        var span = SpanFrom(start);
        return new OrderItem(_ids.For<OrderItem>(span), span, count, part, separator);
    }

    private OrderItem ParseItemWithoutWith()
    {
        var start = Here;
        var (count, part) = ParseCounted();
        var span = SpanFrom(start);
        return new OrderItem(_ids.For<OrderItem>(span), span, count, part, null);
    }

    private (OrderCount? Count, OrderPart? Part) ParseCounted()
    {
        if (Kind != OrderTokenKind.Count) return (null, ParsePart(OrderExpectations.Item));
        var start = Here;
        var value = CountOf(_tokens[_at++]);
        if (Kind == OrderTokenKind.Times) _at++;
        var span = TextSpan.Between(start, Behind);
        return (new OrderCount(_ids.For<OrderCount>(span), span, value), ParsePart(OrderExpectations.Part));
    }

    private int CountOf(OrderToken token)
    {
        var digits = _text.AsSpan(token.Span.Start, token.Span.Length).TrimStart('0');
        if (digits.Length is > 0 and <= 6 && int.Parse(digits, NumberStyles.None, CultureInfo.InvariantCulture) is var count and <= OrderLimits.Count)
            return count;
        _faults.Add(token.Span.Start, FaultCodes.OrderCount, TextOf(token), ("max", OrderFaultList.Number(OrderLimits.Count)));
        return 1;
    }

    private OrderPart? ParsePart(string expected)
    {
        switch (Kind)
        {
            case OrderTokenKind.Name or OrderTokenKind.MalformedName when KindAt(_at + 1) == OrderTokenKind.Open:
                return ParseBracket(Here, ParseGroupName());
            case OrderTokenKind.Name or OrderTokenKind.MalformedName:
                var name = ParseUsedName();
                return new OrderNameUse(_ids.For<OrderNameUse>(name.Span), name.Span, name);
            case OrderTokenKind.Open:
                return ParseBracket(Here, null);
            case OrderTokenKind.Mirror:
                return ParseMirror();
            case OrderTokenKind.Backwards:
                return ParseBackwards();
            default:
                return Failed(expected);
        }
    }

    private OrderBracket? ParseBracket(int start, OrderName? name)
    {
        var run = ParseBracketedRun();
        if (run is null) return null;
        var span = TextSpan.Between(start, Behind);
        return new OrderBracket(_ids.For<OrderBracket>(span), span, name, run);
    }

    private OrderMirror? ParseMirror()
    {
        var start = Here;
        _at++;
        if (Kind != OrderTokenKind.Open)
        {
            Failed(OrderExpectations.OpeningBracket);
            return null;
        }
        var half = ParseBracketedRun();
        if (half is null) return null;
        OrderItem? centre = null;
        if (Kind == OrderTokenKind.Around)
        {
            _at++;
            _depth++; // there is room for it: the mirror's bracket, as deep as this, has just had it
            centre = ParseItemWithoutWith();
            _depth--;
        }
        var span = TextSpan.Between(start, Behind);
        return new OrderMirror(_ids.For<OrderMirror>(span), span, half, centre);
    }

    private OrderBackwards? ParseBackwards()
    {
        var start = Here;
        _at++;
        // Neither a mirror (write its half the other way) nor backwards again: so this cannot go deep.
        var part = Kind is OrderTokenKind.Mirror or OrderTokenKind.Backwards
            ? Failed(OrderExpectations.NameOrBracket)
            : ParsePart(OrderExpectations.NameOrBracket);
        if (part is null) return null;
        var span = TextSpan.Between(start, Behind);
        return new OrderBackwards(_ids.For<OrderBackwards>(span), span, part);
    }

    /// <summary>A run from its opening to its closing bracket; null when it stands too deep and was passed over.</summary>
    private OrderRun? ParseBracketedRun()
    {
        var open = Here;
        if (!Enter()) return null;
        _at++;
        _openBrackets++;
        var run = ParseRun(Place.Bracket);
        _openBrackets--;
        _depth--;
        if (Kind == OrderTokenKind.Close) _at++;
        else if (!_lostTheEnd && !_faults.IsFull)
        {
            var (line, column) = _places.Of(open);
            _faults.Add(Here, FaultCodes.OrderUnclosed, Found,
                ("openLine", OrderFaultList.Number(line)), ("openColumn", OrderFaultList.Number(column)));
        }
        return run;
    }

    // Names --------------------------------------------------------------------------------------------------------------------------------

    private OrderName ParseUsedName()
    {
        var token = _tokens[_at++];
        var text = TextOf(token);
        if (token.Kind == OrderTokenKind.Name) return NameNode(token, text, isWellFormed: true);
        TellMalformed(token, text);
        return NameNode(token, text, isWellFormed: false);
    }

    private OrderName ParseGroupName()
    {
        var token = _tokens[_at++];
        var text = TextOf(token);
        if (token.Kind == OrderTokenKind.Name) return NameNode(token, text, isWellFormed: true);
        if (token.Kind == OrderTokenKind.MalformedName)
        {
            TellMalformed(token, text);
            _hidden.Add(OrderFaultList.Lowered(text));
        }
        else
        {
            _faults.Add(token.Span.Start, FaultCodes.OrderNameReserved, text, ("known", string.Join(", ", OrderWords.Reserved)));
        }
        return NameNode(token, text, isWellFormed: false);
    }

    private OrderName NameNode(OrderToken token, string text, bool isWellFormed) =>
        new(_ids.For<OrderName>(token.Span), token.Span, text, isWellFormed);

    private void TellMalformed(OrderToken token, string text)
    {
        var (fault, near) = OrderFaultList.NameForm("", text);
        _faults.Add(token.Span.Start, fault, near);
    }

    /// <summary>Tells of reserved words written with capitals; they are read as the words all the same.</summary>
    private void TellCapitalWords()
    {
        for (var i = 0; i < _tokens.Length; i++)
        {
            if (!IsWordAt(i) || KindAt(i) is OrderTokenKind.Name or OrderTokenKind.MalformedName) continue;
            var text = TextOf(_tokens[i]);
            if (OrderFaultList.Lowered(text) is var lowered && lowered != text)
                _capitals.Add(_tokens[i].Span.Start, FaultCodes.OrderNameForm, text, ("lower", lowered), ("nearest", lowered));
        }
    }

    // Faults -------------------------------------------------------------------------------------------------------------------------------

    private void Expected(string expected) => _faults.Add(Here, FaultCodes.OrderExpected, Found, ("expected", expected));

    private OrderPart? Failed(string expected)
    {
        Expected(expected);
        PassOver(closes: _openBrackets > 0);
        return null;
    }

    /// <summary>Goes one deeper, or tells that this is too deep and passes over it.</summary>
    private bool Enter()
    {
        if (_depth < OrderLimits.Depth)
        {
            _depth++;
            return true;
        }
        _faults.Add(Here, FaultCodes.OrderTooDeep, Found, ("max", OrderFaultList.Number(OrderLimits.Depth)));
        PassOver(closes: _openBrackets > 0);
        return false;
    }

    /// <summary>Passes over everything to the next comma, line end or (where a bracket is open) closing bracket, whole brackets at once.</summary>
    private void PassOver(bool closes)
    {
        var open = 0;
        for (; Kind is not null; _at++)
        {
            if (IsWordAt(_at) && KindAt(_at + 1) is OrderTokenKind.Open or OrderTokenKind.Equals) _hidden.Add(OrderFaultList.Lowered(Found));
            if (open == 0 && (Kind is OrderTokenKind.Comma or OrderTokenKind.LineEnd || (closes && Kind == OrderTokenKind.Close))) return;
            if (IsAtDefinition) break;
            if (Kind == OrderTokenKind.Open) open++;
            else if (Kind == OrderTokenKind.Close && open > 0) open--;
        }
        if (open > 0) _lostTheEnd = true;
    }

    // Tokens -------------------------------------------------------------------------------------------------------------------------------

    private OrderTokenKind? KindAt(int index) => index < _tokens.Length ? _tokens[index].Kind : null;

    /// <summary>Whether a token is a word: a name, well formed or not, or a reserved word. The sign × is none.</summary>
    private bool IsWordAt(int index) => KindAt(index) switch
    {
        OrderTokenKind.Name or OrderTokenKind.MalformedName or OrderTokenKind.Mirror or OrderTokenKind.Around or OrderTokenKind.Backwards
            or OrderTokenKind.With or OrderTokenKind.Between => true,
        OrderTokenKind.Times => _text[_tokens[index].Span.Start] != '×',
        _ => false,
    };

    /// <summary>The text of a token; one string for all tokens alike, since an order names the same few beads again and again.</summary>
    private string TextOf(OrderToken token)
    {
        var span = _text.AsSpan(token.Span.Start, token.Span.Length);
        if (_wordsBySpan.TryGetValue(span, out var word)) return word;
        word = span.ToString();
        _words.Add(word);
        return word;
    }
}
