using System.Globalization;

namespace Coilwright.Core.Editing.Rewriting;

/// <summary>What a piece of notation is, which says what may stand before and after it.</summary>
internal enum PhraseForm
{
    /// <summary>A name or a bracket: may be counted, and strung backwards.</summary>
    NameOrBracket,

    /// <summary>Something else that may be counted.</summary>
    Part,

    /// <summary>Something counted: may stand between others or in the middle of a mirror.</summary>
    Counted,

    /// <summary>A whole item, with something between.</summary>
    Item,
}

/// <summary>A piece of notation that is written anew.</summary>
internal readonly record struct Phrase(string Text, PhraseForm Form)
{
    /// <summary>Several as the items of a run.</summary>
    public static string Join(IEnumerable<Phrase> phrases) => string.Join(", ", phrases.Select(phrase => phrase.Text));

    /// <summary>Several as one that may stand where this form is asked for; in brackets where it must.</summary>
    public static Phrase As(IReadOnlyList<Phrase> phrases, PhraseForm most) =>
        phrases is [var only] && only.Form <= most ? only : new Phrase(InBrackets(phrases), PhraseForm.NameOrBracket);

    /// <summary>Several in brackets; one that is a bracket already as it is.</summary>
    public static string InBrackets(IReadOnlyList<Phrase> phrases) =>
        phrases is [{ Form: PhraseForm.NameOrBracket, Text: ['(', ..] } only] ? only.Text : $"({Join(phrases)})";

    /// <summary>Several, so many times.</summary>
    public static Phrase Times(int count, IReadOnlyList<Phrase> phrases) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{count} {As(phrases, PhraseForm.Part).Text}"), PhraseForm.Counted);
}
