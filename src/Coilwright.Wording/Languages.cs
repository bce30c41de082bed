using System.Collections.Immutable;

namespace Coilwright.Wording;

/// <summary>Every language there is. A new one is a folder with its tables and a line here.</summary>
public static class Languages
{
    /// <summary>English: the one that is used where nobody asks for another.</summary>
    public static Language English { get; } = EnglishWords.EnglishLanguage.Make();

    /// <summary>German.</summary>
    public static Language German { get; } = GermanWords.GermanLanguage.Make();

    /// <summary>The languages, as shown to a maker who chooses one.</summary>
    public static ImmutableArray<Language> All { get; } = [English, German];

    /// <summary>The language of a code; null when there is none.</summary>
    public static Language? Find(string code) => All.FirstOrDefault(l => l.Code == code);
}
