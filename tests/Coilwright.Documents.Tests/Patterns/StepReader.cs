using System.Globalization;
using System.Text.RegularExpressions;

namespace Coilwright.Documents.Tests.Patterns;

/// <summary>Someone who strings a piece from the written steps alone: knows how counts, key letters, repeats and "between" are written, and nothing of the program.</summary>
/// <remarks>Reads what the step says after its last colon, or after the word "String"; a group's own name stands before the colon.</remarks>
internal sealed partial class StepReader
{
    private readonly string _text;
    private int _at;

    private StepReader(string text) => _text = text;

    /// <summary>The key letters that a step strings, one by one.</summary>
    public static List<string> Strung(string sentence)
    {
        // A count keeps to its letter by a space that no line ends at; to her it is a space.
        var text = Gaps().Replace(sentence.Replace('\u00a0', ' '), "$1").TrimEnd('.');
        var colon = text.LastIndexOf(':');
        var head = colon < 0 ? "" : text[..colon];
        var times = OnEnd().Match(head) is { Success: true } match ? int.Parse(match.Groups["n"].Value, CultureInfo.InvariantCulture) : 1;
        text = colon < 0 ? text : text[(colon + 1)..];
        text = Framing().Replace(text, "").Trim();
        var reader = new StepReader(text);
        var once = reader.Row();
        if (reader._at != text.Length) throw new FormatException($"Cannot string from here on: {text[reader._at..]}");
        return [.. Enumerable.Repeat(once, times).SelectMany(o => o)];
    }

    private List<string> Row()
    {
        var row = Item();
        while (Takes(", ")) row.AddRange(Item());
        return row;
    }

    private List<string> Item()
    {
        var count = Number();
        if (Takes(" times (") || Takes("-mal ("))
        {
            var inner = Row();
            Must(")");
            return [.. Enumerable.Repeat(inner, count).SelectMany(i => i)];
        }
        Must(" ");
        var letter = Letter();
        var german = Takes(" (dazwischen je ");
        if (!german && !Takes(" with ")) return [.. Enumerable.Repeat(letter, count)];
        var between = Run();
        while (Takes(" and ") || Takes(" und ")) between.AddRange(Run());
        Must(german ? ")" : " between each two");
        return [.. Enumerable.Range(0, count).SelectMany(i => i == 0 ? [letter] : between.Append(letter))];
    }

    private List<string> Run()
    {
        var count = Number();
        Must(" ");
        return [.. Enumerable.Repeat(Letter(), count)];
    }

    private int Number() => int.Parse(Read(Digits()), CultureInfo.InvariantCulture);

    private string Letter() => Read(Letters());

    private string Read(Regex what)
    {
        var match = what.Match(_text, _at);
        if (!match.Success) throw new FormatException($"Neither count nor letter: {_text[_at..]}");
        _at += match.Length;
        return match.Value;
    }

    private bool Takes(string words)
    {
        if (string.CompareOrdinal(_text, _at, words, 0, words.Length) != 0) return false;
        _at += words.Length;
        return true;
    }

    private void Must(string words)
    {
        if (!Takes(words)) throw new FormatException($"Expected '{words}': {_text[_at..]}");
    }

    [GeneratedRegex(@", (?<n>\d+)(?: times on end|-mal nacheinander)$", RegexOptions.RightToLeft)]
    private static partial Regex OnEnd();

    [GeneratedRegex(@"^\s*(?:String |each time |jedes Mal )|\s*auffädeln$")]
    private static partial Regex Framing();

    // A page sets a key letter apart from the sign after it.
    [GeneratedRegex(@"\s+([,.)])")]
    private static partial Regex Gaps();

    [GeneratedRegex(@"\G\d+")]
    private static partial Regex Digits();

    [GeneratedRegex(@"\G[A-Z]+")]
    private static partial Regex Letters();
}
