using System.Runtime.CompilerServices;
using System.Text.RegularExpressions;
using Coilwright.Web.Guides;
using Coilwright.Wording;

namespace Coilwright.Web.Tests.Guides;

/// <summary>The manual and the list of keys: whole in every language, and of what is there.</summary>
public partial class GuidesTests
{
    private static readonly string Source = Path.Combine(Folder(), "..", "..", "..", "src", "Coilwright.Web");

    [Fact]
    public void Every_language_has_the_same_chapters_with_parts_to_find()
    {
        var english = Manual.In(Languages.English);
        Assert.Equal(["first-piece", "order", "rows-and-fit", "looking", "beads-and-stock", "paper", "keeping"], english.Chapters.Select(c => c.Name));
        foreach (var language in Languages.All)
        {
            var manual = Manual.In(language);
            Assert.Equal(english.Chapters.Select(c => c.Name), manual.Chapters.Select(c => c.Name));
            Assert.Equal(english.Chapters.Select(c => c.Parts.Length), manual.Chapters.Select(c => c.Parts.Length));
            Assert.All(manual.Chapters, c => Assert.NotEmpty(c.Title));
            Assert.All(manual.Chapters.SelectMany(c => c.Parts), p => Assert.NotEmpty(p.Text));
            if (language != Languages.English) Assert.NotEqual(english.Chapters[0].Title, manual.Chapters[0].Title);
        }
    }

    [Fact]
    public void Links_lead_to_chapters_and_places_that_are_there()
    {
        foreach (var manual in Languages.All.Select(Manual.In))
            foreach (var chapter in manual.Chapters)
            {
                foreach (Match link in Link().Matches(chapter.Html)) Assert.NotNull(manual.Find(link.Groups[1].Value["/manual/".Length..]));
                foreach (var part in chapter.Parts.Where(p => p.Id.Length > 0)) Assert.Contains($"id=\"{part.Id}\"", chapter.Html, StringComparison.Ordinal);
            }
    }

    [Fact]
    public void A_search_finds_what_has_every_word_whatever_its_case_and_its_headings_first()
    {
        var manual = Manual.In(Languages.English);
        Assert.Contains(manual.Search("SHEARS wire"), p => p.Chapter.Name == "rows-and-fit");
        Assert.Empty(manual.Search("shears photograph"));
        Assert.Empty(manual.Search("  "));
        Assert.Equal("Stock", manual.Search("stock")[0].Part.Heading);
        Assert.All(manual.Search("bead"), p => Assert.InRange(p.Around.Length, 1, 260));
        Assert.NotEmpty(Manual.In(Languages.Find("de")!).Search("farbpalette"));
    }

    // The words of bold type name things of the bench; they are called so there.
    [Fact]
    public void What_the_manual_calls_by_name_is_called_so_on_the_bench()
    {
        foreach (var language in Languages.All)
        {
            var b = language.Bench;
            HashSet<string> names = [b.Pieces.Heading, b.History.Heading, b.Coil.Heading, language.Palette.Heading, language.Ideas.Heading, language.Sizes.Heading, b.Tray.Heading, b.Stock.Heading, b.Shop.Heading, b.Cut.Heading, b.Kit.Heading,
                b.Stringing.Heading, b.Price.Heading, b.Frame.Pieces, b.PatternPaper.Heading];
            foreach (var chapter in Manual.In(language).Chapters)
                foreach (Match bold in Bold().Matches(chapter.Html))
                    Assert.True(names.Contains(bold.Groups[1].Value), $"{language.Code}, {chapter.Name}: {bold.Groups[1].Value}");
        }
    }

    // A key that a script or a component takes by name stands in the list, and the list has none that nothing takes.
    [Fact]
    public void Every_key_that_is_taken_anywhere_is_in_the_list_and_no_other()
    {
        var code = string.Join('\n', Directory.EnumerateFiles(Source, "*.*", SearchOption.AllDirectories)
            .Where(f => f.EndsWith(".js", StringComparison.Ordinal) || f.EndsWith(".razor", StringComparison.Ordinal) || f.EndsWith("BenchHands.cs", StringComparison.Ordinal))
            .Where(f => !f.Contains("node_modules", StringComparison.Ordinal) && !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal) && !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
            .Select(File.ReadAllText));
        var taken = Named().Matches(code).Select(m => m.Value).ToHashSet(StringComparer.Ordinal);
        var listed = KeyList.All.SelectMany(p => p.Uses).SelectMany(u => u.Keys).SelectMany(k => k.Length == 1 ? [k] : k.Split('+')).ToHashSet(StringComparer.Ordinal);
        Assert.Equal(taken.Order(StringComparer.Ordinal), listed.Where(k => Named().IsMatch(k)).Order(StringComparer.Ordinal));
        foreach (var language in Languages.All)
        {
            var words = language.Bench.Guide;
            Assert.Equal(KeyList.All.Select(p => p.Name).Order(StringComparer.Ordinal), words.KeyPlaces.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(KeyList.All.SelectMany(p => p.Uses).Select(u => u.Use).Distinct().Order(StringComparer.Ordinal), words.KeyUses.Keys.Order(StringComparer.Ordinal));
            Assert.All(listed.Where(k => k.Length > 1 || k == " "), k => Assert.True(words.KeyNames.ContainsKey(k), k));
            Assert.Equal(6, words.Tour.Count);
        }
    }

    private static string Folder([CallerFilePath] string here = "") => Path.GetDirectoryName(here)!;

    [GeneratedRegex("href=\"([^\"]*)\"")]
    private static partial Regex Link();

    [GeneratedRegex("<strong>([^<]*)</strong>")]
    private static partial Regex Bold();

    [GeneratedRegex(@"\b(Arrow(Left|Right|Up|Down)|Page(Up|Down)|Home|End|Escape|Enter|Delete|Backspace)\b(?<!\.Home|\.End)")]
    private static partial Regex Named();
}
