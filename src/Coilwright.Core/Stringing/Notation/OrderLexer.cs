using System.Collections.Immutable;
using System.Globalization;
using System.Text;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>Cuts an order's text into tokens that cover all of it.</summary>
internal static class OrderLexer
{
    /// <summary>The tokens of a text, end to end.</summary>
    public static ImmutableArray<OrderToken> Cut(string text)
    {
        var tokens = ImmutableArray.CreateBuilder<OrderToken>();
        var at = 0;
        while (at < text.Length)
        {
            var (kind, end) = Next(text, at);
            tokens.Add(new OrderToken(kind, TextSpan.Between(at, end)));
            at = end;
        }
        return tokens.ToImmutable();
    }

    /// <summary>Whether a word is a well-formed name, <c>[a-z][a-z0-9-]*</c>; reserved words are not told apart.</summary>
    public static bool IsName(ReadOnlySpan<char> word)
    {
        if (word.IsEmpty || !char.IsAsciiLetterLower(word[0])) return false;
        foreach (var c in word)
            if (!char.IsAsciiLetterLower(c) && !char.IsAsciiDigit(c) && c != '-')
                return false;
        return true;
    }

    private static (OrderTokenKind Kind, int End) Next(string text, int start)
    {
        switch (text[start])
        {
            case '(': return (OrderTokenKind.Open, start + 1);
            case ')': return (OrderTokenKind.Close, start + 1);
            case ',': return (OrderTokenKind.Comma, start + 1);
            case '=': return (OrderTokenKind.Equals, start + 1);
            case '×': return (OrderTokenKind.Times, start + 1);
            case '\n': return (OrderTokenKind.LineEnd, start + 1);
            case '\r': return (OrderTokenKind.LineEnd, start + 1 < text.Length && text[start + 1] == '\n' ? start + 2 : start + 1);
            case '#': return (OrderTokenKind.Comment, EndOfLine(text, start));
        }
        var end = start;
        if (char.IsAsciiDigit(text[start]))
        {
            while (end < text.Length && char.IsAsciiDigit(text[end])) end++;
            return (OrderTokenKind.Count, end);
        }
        if (IsBlank(text[start]))
        {
            while (end < text.Length && IsBlank(text[end])) end++;
            return (OrderTokenKind.Space, end);
        }
        var letters = WordLettersAt(text, start);
        if (letters > 0)
        {
            while (letters > 0)
            {
                end += letters;
                letters = WordLettersAt(text, end);
            }
            return (KindOfWord(text.AsSpan(start, end - start)), end);
        }
        while (end < text.Length && IsStray(text, end)) end++;
        return (OrderTokenKind.Stray, end);
    }

    private static int EndOfLine(string text, int start)
    {
        var length = text.AsSpan(start).IndexOfAny('\n', '\r');
        return length < 0 ? text.Length : start + length;
    }

    private static bool IsBlank(char c) => c is not ('\n' or '\r') && char.IsWhiteSpace(c);

    private static bool IsStray(string text, int at) =>
        !IsBlank(text[at]) && text[at] is not ('(' or ')' or ',' or '=' or '×' or '\n' or '\r' or '#')
        && !char.IsAsciiDigit(text[at]) && WordLettersAt(text, at) == 0;

    /// <summary>How many UTF-16 units the word letter at a place takes; 0 when there is none. A word takes in letters of every script, so
    /// that a name with an accent is told as one mistyped name and not as three pieces.</summary>
    private static int WordLettersAt(string text, int at)
    {
        if (at >= text.Length) return 0;
        var c = text[at];
        if (c < 128) return char.IsAsciiLetterOrDigit(c) || c is '-' or '_' ? 1 : 0;
        if (Rune.DecodeFromUtf16(text.AsSpan(at), out var rune, out var taken) != System.Buffers.OperationStatus.Done) return 0;
        return Rune.IsLetterOrDigit(rune) || Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.SpacingCombiningMark
            ? taken
            : 0;
    }

    private static OrderTokenKind KindOfWord(ReadOnlySpan<char> word)
    {
        // Reserved words are known in capitals too: the fault is then one capital, not a cascade of missing words.
        if (word.Equals("x", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.Times;
        if (word.Equals("with", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.With;
        if (word.Equals("between", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.Between;
        if (word.Equals("mirror", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.Mirror;
        if (word.Equals("around", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.Around;
        if (word.Equals("backwards", StringComparison.OrdinalIgnoreCase)) return OrderTokenKind.Backwards;
        return IsName(word) ? OrderTokenKind.Name : OrderTokenKind.MalformedName;
    }
}
