using System.Globalization;
using System.Text;

namespace Coilwright.Wording;

/// <summary>A sentence with places to fill.</summary>
/// <remarks>
/// <para><c>{name}</c> is a value as it stands, a number with up to two decimals. <c>{name:format}</c> writes a number by one of
/// <see cref="Formats"/>. <c>{name:bead|beads}</c> chooses the form that goes with the number, one form for each that the language has.
/// <c>{?name: text}</c> is left out when there is no such value or it is empty; it may hold other places.</para>
/// <para>A value that is not there is written as a question mark in brackets: a sentence is shown to a person who has trouble enough already, and a test
/// finds the gap.</para>
/// </remarks>
public static class Template
{
    /// <summary>Stands where a value is missing.</summary>
    public const string Missing = "(?)";

    /// <summary>The formats: a length in mm and inches, the same as exactly as it was given, the same without sign, mm alone, mm for holes and wire, rounded up for
    /// cutting; degrees and a percentage without sign; a place round the wrist.</summary>
    public static IReadOnlyList<string> Formats { get; } = ["length", "exact", "size", "mm", "fine", "cut", "deg", "percent", "place"];

    internal static string Fill(string template, IValues values, Language language)
    {
        var text = new StringBuilder();
        Fill(template, values, language, text);
        return text.ToString();
    }

    /// <summary>The names of the values that a template asks for, optional ones included.</summary>
    public static IReadOnlyCollection<string> NamesIn(string template)
    {
        var names = new SortedSet<string>(StringComparer.Ordinal);
        Collect(template, names);
        return names;
    }

    private static void Fill(ReadOnlySpan<char> template, IValues values, Language language, StringBuilder text)
    {
        while (NextPlace(template, out var before, out var place, out var after))
        {
            text.Append(before);
            if (place[0] == '?')
            {
                var colon = place.IndexOf(':');
                if (values.Find(place[1..colon].ToString()) is { } known && known is not "")
                    Fill(place[(colon + 1)..], values, language, text);
            }
            else
            {
                text.Append(Write(place, values, language));
            }
            template = after;
        }
        text.Append(template);
    }

    private static string Write(ReadOnlySpan<char> place, IValues values, Language language)
    {
        var colon = place.IndexOf(':');
        var name = (colon < 0 ? place : place[..colon]).ToString();
        if (values.Find(name) is not { } value) return Missing;
        if (colon < 0) return Plain(value, language);
        var format = place[(colon + 1)..].ToString();
        if (format.Contains('|', StringComparison.Ordinal)) return language.Plural(Plain(value, language), format.Split('|'));
        if (!TryNumber(value, out var number)) return Plain(value, language);
        return format switch
        {
            "length" => language.Length(number),
            "exact" => LengthWriter.Exact(number, language),
            "size" => language.Length(Math.Abs(number)),
            "mm" => language.ShortLength(number),
            "fine" => LengthWriter.Fine(number, language),
            "cut" => language.LengthUp(number),
            "deg" => language.Number(Math.Abs(number), 0) + "°",
            "percent" => language.Number(Math.Abs(number) * 100, 0) + " %",
            "place" => language.Place(number),
            _ => throw new FormatException($"No format is called '{format}'."),
        };
    }

    private static string Plain(object value, Language language) => value switch
    {
        double number => language.Number(number, 2),
        IFormattable number => number.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    private static bool TryNumber(object value, out double number)
    {
        if (value is string text) return double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out number);
        number = Convert.ToDouble(value, CultureInfo.InvariantCulture);
        return true;
    }

    private static void Collect(ReadOnlySpan<char> template, SortedSet<string> names)
    {
        while (NextPlace(template, out _, out var place, out var after))
        {
            var colon = place.IndexOf(':');
            if (place[0] == '?')
            {
                names.Add(place[1..colon].ToString());
                Collect(place[(colon + 1)..], names);
            }
            else names.Add((colon < 0 ? place : place[..colon]).ToString());
            template = after;
        }
    }

    private static bool NextPlace(ReadOnlySpan<char> template, out ReadOnlySpan<char> before, out ReadOnlySpan<char> place, out ReadOnlySpan<char> after)
    {
        var open = template.IndexOf('{');
        before = place = after = default;
        if (open < 0)
            return template.IndexOf('}') < 0 ? false : throw new FormatException($"A brace closes that was not opened: {template}");
        var depth = 0;
        for (var i = open; i < template.Length; i++)
        {
            if (template[i] == '{') depth++;
            if (template[i] == '}' && --depth == 0)
            {
                before = template[..open];
                place = template[(open + 1)..i];
                after = template[(i + 1)..];
                return true;
            }
        }
        throw new FormatException($"A brace is not closed: {template}");
    }

    /// <summary>The same text with a capital at its beginning, where it begins with a letter.</summary>
    internal static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
