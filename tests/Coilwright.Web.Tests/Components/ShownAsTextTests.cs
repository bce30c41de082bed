using Bunit;
using Coilwright.Core.Readings;
using Coilwright.Web.Components.Bench;

namespace Coilwright.Web.Tests.Components;

/// <summary>Names are hers and may be anything; none of them may become part of the page.</summary>
public sealed class ShownAsTextTests : BunitContext
{
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
        var shown = Render<BeadsOfThePiece>(p => p.Add(c => c.Reckoned, reckoned));
        Assert.Equal(name, shown.Find(".kind-name").TextContent);
        Assert.Empty(shown.FindAll("script, img, style"));
    }
}
