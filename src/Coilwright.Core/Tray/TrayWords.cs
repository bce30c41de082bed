using System.Collections.Frozen;

namespace Coilwright.Core.Tray;

/// <summary>Words that lists and makers use for what the tray knows by one name; in every language that there is, so that a list in one is read at a bench in another. Upper and lower case
/// and accents are the same.</summary>
public sealed class TrayWords
{
    private readonly FrozenDictionary<string, string> _columns, _shapes, _roles;
    private readonly FrozenDictionary<string, string[]> _shapeSaid, _familySaid;

    /// <summary>Puts the words in order; of two meanings of a word the first counts.</summary>
    /// <param name="columns">Heads by the column's own name.</param>
    /// <param name="shapes">Words by the shape's own name.</param>
    /// <param name="roles">Words by the role's own name.</param>
    /// <param name="families">Words by the colour family's key.</param>
    public TrayWords(IEnumerable<(string Name, string Word)> columns, IEnumerable<(string Name, string Word)> shapes, IEnumerable<(string Name, string Word)> roles,
        IEnumerable<(string Name, string Word)> families)
    {
        (string Name, string Word)[] shapeWords = [.. shapes];
        (_columns, _shapes, _roles) = (Names(columns), Names(shapeWords), Names(roles));
        (_shapeSaid, _familySaid) = (Said(shapeWords), Said(families));
    }

    /// <summary>The column that a head means, its unit beside it or not; null when it is none of the known.</summary>
    public string? Column(string head)
    {
        var key = TrayKey.Of(head);
        return _columns.GetValueOrDefault(key) ?? (key.EndsWith("-mm", StringComparison.Ordinal) ? _columns.GetValueOrDefault(key[..^3].EndsWith("-in", StringComparison.Ordinal) ? key[..^6] : key[..^3]) : null);
    }

    /// <summary>The shape that a word means, by its own name; null when none.</summary>
    public string? Shape(string word) => _shapes.GetValueOrDefault(TrayKey.Of(word));

    /// <summary>The role that a word means, by its own name; null when none.</summary>
    public string? Role(string word) => _roles.GetValueOrDefault(TrayKey.Of(word));

    /// <summary>What a shape is called.</summary>
    public IReadOnlyList<string> OfShape(string name) => _shapeSaid.GetValueOrDefault(name, []);

    /// <summary>What a colour family is called.</summary>
    public IReadOnlyList<string> OfFamily(string key) => _familySaid.GetValueOrDefault(key, []);

    private static FrozenDictionary<string, string> Names(IEnumerable<(string Name, string Word)> words) =>
        words.Select(w => (Key: TrayKey.Of(w.Word), w.Name)).Where(w => w.Key.Length > 0).DistinctBy(w => w.Key).ToFrozenDictionary(w => w.Key, w => w.Name, StringComparer.Ordinal);

    private static FrozenDictionary<string, string[]> Said(IEnumerable<(string Name, string Word)> words) =>
        words.GroupBy(w => w.Name, w => w.Word, StringComparer.Ordinal).ToFrozenDictionary(g => g.Key, g => g.Distinct(StringComparer.Ordinal).ToArray(), StringComparer.Ordinal);
}
