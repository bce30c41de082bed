using Bunit;
using Coilwright.Core.Readings;
using Coilwright.Storage.Shelf;
using Coilwright.Web.Bench;
using Coilwright.Web.Components.Bench;
using Microsoft.Extensions.DependencyInjection;

namespace Coilwright.Web.Tests.Components;

/// <summary>Names are hers and may be anything; none of them may become part of the page.</summary>
public sealed class ShownAsTextTests : BunitContext
{
    // What the page asks of the browser is where to scroll to; here there is none.
    public ShownAsTextTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton(Examples.Data);
        Services.AddSingleton<IPieceShelf>(new MemoryShelf(TimeProvider.System));
        Services.AddSingleton<Reckoner>();
        Services.AddSingleton<PieceNews>();
        Services.AddSingleton<BenchSession>();
    }

    public static TheoryData<string> Names =>
    [
        "<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>", "</style><style>*{display:none}", "{{7*7}}", "\u202Egnitlom", "🪨🐚",
        new string('a', 200),
    ];

    [Theory, MemberData(nameof(Names))]
    public void A_hostile_name_is_shown_as_the_text_that_it_is(string name)
    {
        var piece = Examples.Boardwalk;
        var description = piece.Beads[0].Description with { Name = name };
        Assert.True(Core.Beads.Bead.TryMake(description, out var bead, out _));
        var reckoned = Reckoning.Of(piece with { Beads = piece.Beads.SetItem(0, bead!) }, Examples.Data);
        var drawings = KindDrawings.Of(reckoned);

        var kinds = Render<BeadsOfThePiece>(p => p.Add(c => c.Reckoned, reckoned).Add(c => c.Drawings, drawings));
        Assert.Equal(name, kinds.Find(".kind-name bdi").TextContent);
        AssertHarmless(kinds);

        var rows = Render<TurnRowsView>(p => p.Add(c => c.Reckoned, reckoned).Add(c => c.Selection, Selection.Of(0)));
        Assert.Contains(name, rows.Find(".rows-beads #bead-1").GetAttribute("aria-label"), StringComparison.Ordinal);
        AssertHarmless(rows);

        var bar = Render<SelectionBar>(p => p.Add(c => c.Reckoned, reckoned).Add(c => c.Selection, Selection.Of(0)));
        Assert.Contains(name, bar.Find("p").TextContent, StringComparison.Ordinal);
        AssertHarmless(bar);
    }

    private static void AssertHarmless(IRenderedComponent<Microsoft.AspNetCore.Components.IComponent> shown)
    {
        Assert.Empty(shown.FindAll("script, img, style"));
        Assert.DoesNotContain(shown.FindAll("*"), e => e.Attributes.Any(a => a.Name.StartsWith("onerror", StringComparison.Ordinal)));
    }
}
