using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Tray;

namespace Coilwright.Core.Tests.Tray;

/// <summary>What is found in a tray, against a look at every kind one by one.</summary>
public class TrayIndexTests
{
    private static readonly ColourFamilies Families = new([
        new ColourFamily("red", [new Srgb(200, 30, 30)]), new ColourFamily("green", [new Srgb(40, 140, 40)]), new ColourFamily("blue", [new Srgb(40, 60, 190)]), new ColourFamily("white", [new Srgb(255, 255, 255)])]);

    private static readonly TrayWords Words = new([], [("round", "Kugel"), ("nugget", "Brocken")], [], [("red", "rot"), ("red", "red"), ("green", "grün"), ("blue", "blau"), ("white", "weiß")]);

    private static bool HasWord(TrayKind kind, string word)
    {
        var d = kind.Bead.Description;
        string?[] said = [kind.Key, d.Name, d.Shape, d.OtherMaterial, d.Coating, kind.Drawer, .. d.Aliases, .. Words.OfShape(kind.Bead.Shape.Name), .. kind.Bead.Colours.SelectMany(c => Words.OfFamily(Families.Of(c)))];
        return said.OfType<string>().SelectMany(s => s.Split([' ', ',', '"', '\n', '-', '=', '(', ')', '@'])).Select(Plain).Any(w => w.StartsWith(Plain(word), StringComparison.Ordinal));
    }

    private static string Plain(string text) => text.ToLowerInvariant().Replace("ü", "u", StringComparison.Ordinal).Replace("ß", "ss", StringComparison.Ordinal);

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(63)]
    [InlineData(64)]
    [InlineData(65)]
    [InlineData(1000)]
    [InlineData(5000)]
    public void What_is_found_is_what_looking_at_every_kind_finds(int kinds)
    {
        var all = GeneratedTray.Of(kinds, seed: kinds);
        var index = new TrayIndex(all, Words, Families);
        Assert.Equal(all.Length, index.Kinds.Length);
        var chance = new Random(7);
        string[] texts = ["", "glass", "GLA", "muschel ro", "kugel", "grün", "GRUN", "weis", "uber", "k0001", "k00", "no", "cabinet b", "best", "zzz", "sum", "dull rot"];
        for (var i = 0; i < 300; i++)
        {
            var question = new TrayQuestion
            {
                Text = texts[i % texts.Length],
                Shape = chance.Next(3) == 0 ? "nugget" : null,
                Family = chance.Next(3) == 0 ? "green" : null,
                Material = chance.Next(4) == 0 ? "Zinn" : null,
                Coating = chance.Next(4) == 0 ? "matt" : null,
                Drawer = chance.Next(5) == 0 ? "Cabinet C 7" : null,
                LeastMm = chance.Next(3) == 0 ? 2 + 0.5 * chance.Next(20) : null,
                MostMm = chance.Next(3) == 0 ? 2 + 0.5 * chance.Next(26) : null,
            };
            var expected = index.Kinds.Where(k => question.Text.Split(' ', StringSplitOptions.RemoveEmptyEntries).All(w => HasWord(k, w))
                && (question.Shape is null || k.Bead.Shape.Name == question.Shape) && (question.Family is null || k.Bead.Colours.Any(c => Families.Of(c) == question.Family))
                && (question.Material is null || k.Bead.Description.OtherMaterial == question.Material) && (question.Coating is null || k.Bead.Description.Coating == question.Coating)
                && (question.Drawer is null || k.Drawer == question.Drawer)
                && (question.LeastMm is not { } least || k.Bead.LengthMm >= least - 1e-9) && (question.MostMm is not { } most || k.Bead.LengthMm <= most + 1e-9)).ToArray();
            var from = chance.Next(3) * 40;
            var found = index.Find(question, 40, from);
            Assert.Equal(expected.Length, found.Count);
            Assert.Equal(expected.Skip(from).Take(40), found.Shown);
        }
    }

    [Theory]
    [InlineData("4,5", true)]
    [InlineData("4.5", true)]
    [InlineData("4.5x8", true)]
    [InlineData("8 x 4,5", true)]
    [InlineData("8×4.5 mm", false)] // nobody wrote mm of it
    [InlineData("4.5 x 9", false)]
    public void A_size_is_found_however_it_is_written(string text, bool isFound)
    {
        Assert.True(Bead.TryMake(new BeadDescription { Id = "tube-a", Name = "Tube", Shape = "tube", Length = new BeadLength.Nominal(8), WidthMm = 4.5 }, out var bead, out _));
        var index = new TrayIndex([new TrayKind(bead!, null)], Words, Families);
        Assert.Equal(isFound ? 1 : 0, index.Find(new TrayQuestion { Text = text }, 10).Count);
    }

    [Fact]
    public void Names_stand_in_the_order_of_their_figures_and_choices_say_how_many_there_are()
    {
        TrayKind Kind(string id, string name, string? drawer)
        {
            Assert.True(Bead.TryMake(new BeadDescription { Id = id, Name = name, Shape = "round", Length = new BeadLength.Nominal(4), Colours = [new Srgb(210, 20, 20), new Srgb(190, 40, 40)] }, out var bead, out _));
            return new TrayKind(bead!, drawer);
        }
        var index = new TrayIndex([Kind("a", "Round 10", "2"), Kind("b", "round 4", "10"), Kind("c", "Round 4", "2")], Words, Families);
        Assert.Equal(["b", "c", "a"], index.Kinds.Select(k => k.Key));
        Assert.Equal([("2", 2), ("10", 1)], index.Facets.Drawers);
        Assert.Equal([("red", 3)], index.Facets.Families);
        Assert.Equal([("round", 3)], index.Facets.Shapes);
    }

    [Theory]
    [InlineData("PB 1234/Ü", "pb-1234-u")]
    [InlineData("8/0 Blau", "b-8-0-blau")]
    [InlineData("  Straße ", "strasse")]
    [InlineData("—", "")]
    [InlineData("round-6", "round-6")]
    public void A_key_is_made_of_what_a_list_calls_it(string text, string key) => Assert.Equal(key, TrayKey.Of(text));
}
