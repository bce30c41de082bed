using System.Collections;
using System.Reflection;
using System.Runtime.CompilerServices;

namespace Coilwright.Wording.Tests;

/// <summary>Every text of a language by its place in the tables, found by walking them, so that no table can be forgotten.</summary>
internal static class LanguageTexts
{
    /// <summary>Places read like paths: <c>Notices[heavy-for-its-turns].Message</c>.</summary>
    public static IReadOnlyDictionary<string, string> Of(Language language) =>
        Walk(language, "").Where(t => t.Place is not ("Code" or "Name")).ToDictionary(t => t.Place, t => t.Text, StringComparer.Ordinal);

    private static IEnumerable<(string Place, string Text)> Walk(object? value, string place) => value switch
    {
        string text => [(place, text)],
        IDictionary table => table.Keys.Cast<object>().SelectMany(key => Walk(table[key], $"{place}[{key}]")),
        ITuple tuple => Enumerable.Range(0, tuple.Length).SelectMany(i => Walk(tuple[i], $"{place}[{i}]")),
        IEnumerable list => list.Cast<object>().SelectMany((item, i) => Walk(item, $"{place}[{i}]")),
        not null when value.GetType() is { IsClass: true } type && type.Assembly == typeof(Language).Assembly =>
            type.GetProperties(BindingFlags.Public | BindingFlags.Instance).SelectMany(p => Walk(p.GetValue(value), place.Length == 0 ? p.Name : $"{place}.{p.Name}")),
        _ => [],
    };
}
