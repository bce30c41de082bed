using Coilwright.Core.Beads;
using Coilwright.Storage;
using Coilwright.Web.Tests.Components;
using Coilwright.Wording;

namespace Coilwright.Web.Tests;

/// <summary>Beads of the catalogue have a name in every language and are found by a maker's words.</summary>
public class CatalogueNamesTests
{
    private static readonly IReadOnlyList<CatalogueBead> Beads = DataFiles.LoadCatalogue(DataFiles.DefaultFolder, Examples.Data).Beads;

    private static string[] Found(string text, Language? language = null) =>
        [.. Beads.Where(b => new CatalogueNames(language ?? Languages.English).Matches(b, text)).Select(b => b.Key)];

    [Fact]
    public void Every_kind_has_a_name_and_no_name_is_without_a_kind()
    {
        var kinds = Beads.Select(b => b.Kind).Distinct().Order(StringComparer.Ordinal).ToArray();
        foreach (var language in Languages.All)
        {
            Assert.Equal(kinds, language.Bench.Catalogue.Kinds.Keys.Order(StringComparer.Ordinal));
            Assert.Equal(kinds, language.Bench.Catalogue.OtherWords.Keys.Order(StringComparer.Ordinal));
            // Else two of them could not be told apart.
            Assert.Equal(Beads.Count, Beads.Select(new CatalogueNames(language).Of).Distinct().Count());
        }
    }

    [Theory]
    [InlineData("4x6", "faceted-rondelle-4x6,rondelle-4x6")]
    [InlineData("4 x 6 rond", "faceted-rondelle-4x6,rondelle-4x6")]
    [InlineData("BALL 6", "round-6")]
    [InlineData("11/0", "cylinder-11-0,seed-11-0")]
    [InlineData("rocaille 8", "seed-8-0")]
    [InlineData("crystal", "bicone-4,bicone-6,faceted-rondelle-3x4,faceted-rondelle-4x6,faceted-rondelle-6x8")]
    [InlineData("zebra", "")]
    [InlineData("<script>", "")]
    public void A_word_finds_what_goes_by_it(string text, string keys) => Assert.Equal(keys, string.Join(',', Found(text).Order(StringComparer.Ordinal)));

    [Fact]
    public void No_word_finds_all_and_other_languages_have_words_of_their_own()
    {
        Assert.Equal(Beads.Count, Found("  ").Length);
        Assert.Equal(["bugle-6", "bugle-9"], Found("stift", Languages.Find("de")));
        Assert.Empty(Found("stift"));
    }
}
