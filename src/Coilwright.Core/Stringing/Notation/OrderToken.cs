namespace Coilwright.Core.Stringing.Notation;

/// <summary>A stretch of an order's text.</summary>
/// <param name="Start">Index of its first character, from 0.</param>
/// <param name="Length">How many characters (UTF-16 units) it has; 0 for a place between two characters.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>Index after its last character.</summary>
    public int End => Start + Length;

    /// <summary>The span from one index to another.</summary>
    public static TextSpan Between(int start, int end) => new(start, end - start);
}

/// <summary>A stretch of an order's text and what is to stand there instead.</summary>
/// <param name="Span">The stretch; of length 0 where something is put in.</param>
/// <param name="With">What is to stand there; empty where something is taken out.</param>
public readonly record struct TextChange(TextSpan Span, string With);

/// <summary>What a token of the order notation is.</summary>
public enum OrderTokenKind
{
    /// <summary>Blanks within a line.</summary>
    Space,

    /// <summary>From <c>#</c> to the end of the line, without the line end.</summary>
    Comment,

    /// <summary>A line end: line feed, carriage return, or both as one.</summary>
    LineEnd,

    /// <summary>A well-formed name, <c>[a-z][a-z0-9-]*</c>, that is not a reserved word.</summary>
    Name,

    /// <summary>A word that would be a name but for its letters: capitals, accents, underscores.</summary>
    MalformedName,

    /// <summary>Digits 0 to 9.</summary>
    Count,

    /// <summary>The word <c>x</c> or the sign × after a count.</summary>
    Times,

    /// <summary>The word <c>mirror</c>.</summary>
    Mirror,

    /// <summary>The word <c>around</c>.</summary>
    Around,

    /// <summary>The word <c>backwards</c>.</summary>
    Backwards,

    /// <summary>The word <c>with</c>.</summary>
    With,

    /// <summary>The word <c>between</c>.</summary>
    Between,

    /// <summary>An opening bracket.</summary>
    Open,

    /// <summary>A closing bracket.</summary>
    Close,

    /// <summary>A comma.</summary>
    Comma,

    /// <summary>The sign =.</summary>
    Equals,

    /// <summary>Characters that have no meaning in the notation.</summary>
    Stray,
}

/// <summary>One token of an order's text. Tokens lie end to end and cover the whole text, blanks and comments too.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Span">Where it stands.</param>
public readonly record struct OrderToken(OrderTokenKind Kind, TextSpan Span);
