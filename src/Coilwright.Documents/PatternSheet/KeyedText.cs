using Coilwright.Documents.Pages;

namespace Coilwright.Documents.PatternSheet;

/// <summary>Key letters inside sentences: marked before a sentence is filled, found again after.</summary>
/// <remarks>Sentences come from Coilwright.Wording as plain text, in whatever word order a language has. The marks are two characters of Unicode's
/// private use area, which no maker's text keeps: they are taken out of it.</remarks>
internal static class KeyedText
{
    private const char Begin = '\ue000';
    private const char End = '\ue001';

    /// <summary>A key letter, marked.</summary>
    public static string Mark(string letter) => Begin + letter + End;

    /// <summary>A maker's own words without marks of ours.</summary>
    public static string Own(string words) => words.Replace(Begin.ToString(), "", StringComparison.Ordinal).Replace(End.ToString(), "", StringComparison.Ordinal);

    /// <summary>The sentence with its key letters in rings.</summary>
    public static RichText Rich(string sentence)
    {
        var text = RichText.Empty;
        var at = 0;
        while (sentence.IndexOf(Begin, at) is var begin and >= 0 && sentence.IndexOf(End, begin) is var end and >= 0)
        {
            text += sentence[at..begin];
            text += RichText.Key(sentence[(begin + 1)..end]);
            at = end + 1;
        }
        return text + sentence[at..];
    }
}
