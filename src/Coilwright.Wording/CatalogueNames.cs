using Coilwright.Core.Beads;

namespace Coilwright.Wording;

/// <summary>Beads of the catalogue by name, and found by the words that a maker would use.</summary>
public sealed class CatalogueNames(Language language)
{
    private readonly CatalogueWords _words = language.Bench.Catalogue;

    /// <summary>What it is called, with its size.</summary>
    public string Of(CatalogueBead bead) => language.Fill(_words.Name, ("kind", _words.Kinds.GetValueOrDefault(bead.Kind, bead.Kind)), ("label", bead.Label));

    /// <summary>Whether it goes by all the words of a text: each begins a word of its name, its size or what else it is called. An empty text finds all.</summary>
    public bool Matches(CatalogueBead bead, string text) =>
        Matches(text, Of(bead), _words.OtherWords.GetValueOrDefault(bead.Kind, ""), language.Terms.Shapes.GetValueOrDefault(bead.Bead.Shape.Name, ""));

    /// <summary>Whether all words of a text begin words of some names.</summary>
    public static bool Matches(string text, params ReadOnlySpan<string> names)
    {
        // A size is written with and without spaces: "4x6" is "4 x 6".
        var sought = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        foreach (var word in sought)
        {
            var found = false;
            foreach (var name in names)
                found |= name.Split([' ', ',', '-', '(', ')'], StringSplitOptions.RemoveEmptyEntries).Any(w => w.StartsWith(word, StringComparison.CurrentCultureIgnoreCase))
                    || name.Replace(" ", "", StringComparison.Ordinal).Contains(word, StringComparison.CurrentCultureIgnoreCase);
            if (!found) return false;
        }
        return true;
    }
}
