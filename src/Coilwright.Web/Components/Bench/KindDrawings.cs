using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Readings;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Strips;

namespace Coilwright.Web.Components.Bench;

/// <summary>The kinds of a piece as small drawings that stand all over its page: each is written into the page once and used by its name.</summary>
/// <param name="Strips">Draws strips of them.</param>
/// <param name="Symbols">The drawings themselves, unseen.</param>
public sealed record KindDrawings(StripDrawing Strips, string Symbols)
{
    /// <summary>How the strips are written.</summary>
    public static SvgOptions Options { get; } = new() { IdPrefix = "kinds-", Decorative = true, SymbolsElsewhere = true };

    private ImmutableArray<(Bead, string)> Kinds { get; init; } = [];

    /// <summary>The drawings for a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="before">The drawings that there are: taken over where the kinds are the same. Null: none.</param>
    public static KindDrawings Of(Reckoned reckoned, KindDrawings? before = null)
    {
        var strips = new StripDrawing(reckoned);
        ImmutableArray<(Bead, string)> kinds = [.. reckoned.Counts.Select(c => (c.Bead, c.Letter))];
        return new KindDrawings(strips, before is not null && before.Kinds.SequenceEqual(kinds) ? before.Symbols : SvgCanvas.WriteSymbols(strips.Symbols, Options)) { Kinds = kinds };
    }

    /// <summary>One bead of a kind.</summary>
    public Picture OfKind(KindCount kind) => Strips.OfKind(kind);

    /// <summary>A stretch of the order.</summary>
    public Picture OfStretch(int first, int count) => Strips.OfStretch(first, count, "");
}
