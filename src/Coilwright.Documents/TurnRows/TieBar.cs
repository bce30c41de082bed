using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.TurnRows;

/// <summary>The bar that marks where like lies over like: hatched where nobody wished for it, open and rounded where columns are wanted.</summary>
internal static class TieBar
{
    internal const double HeightMm = 2.2;

    internal static Group Draw(Style style, Box box, bool isWished)
    {
        var ink = isWished ? style.Inks.Quiet : style.Inks.Accent;
        var frame = new Rectangle(box, Paint.Lined(ink, 0.2)) { CornerMm = isWished ? HeightMm / 2 : 0 };
        ImmutableArray<Mark> marks = isWished ? [frame] : [new Drawn(Hatching.Lines(Outline.Rectangle(box), 45, 0.75), Paint.Lined(ink, 0.22)), frame];
        return new Group(marks) { Class = isWished ? "tie wished" : "tie" };
    }
}
