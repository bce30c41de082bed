using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadCards;
using Coilwright.Documents.Canvases;
using Coilwright.Documents.CoilView;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Patterns;
using Coilwright.Documents.TurnRows;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Packs;

/// <summary>A picture to sell a piece with.</summary>
/// <param name="Name">What its file is called, as <c>coil</c>.</param>
/// <param name="Fit">How it is put into its frame.</param>
/// <param name="For">Draws it for a frame: what can be laid out otherwise is laid out for the frame's shape.</param>
internal sealed record PackPicture(string Name, PixelFit Fit, Func<PixelFrame, Picture> For)
{
    // Turns laid straight this wide have letters that are read on a phone. Our choice.
    private const double RowsMm = 130;

    // One card to a row, up to six.
    private static readonly double[] CardWidthsMm = [68, 128, 188, 248, 308, 368];

    /// <summary>Every picture of a piece: that of the cover where there is one, the coil, the coil near by, the turns laid straight, and the key card with letters and beads.</summary>
    public static ImmutableArray<PackPicture> Of(Reckoned reckoned, Language language, CoverPicture? cover)
    {
        var plain = new PictureOptions { Paper = false, MarginMm = 0.5, Language = language, Typeface = HouseSans.Instance };
        var coil = Wordless(CoilViewDrawing.Of(reckoned, plain));
        var turns = TurnRowsDrawing.Of(reckoned, new TurnRowsOptions { Paper = false, RowsAlone = true, Close = true, WidthMm = RowsMm, MarginMm = 0.5, Language = language, Typeface = HouseSans.Instance });
        ImmutableArray<Picture> cards = [.. CardWidthsMm.Select(mm => BeadCardsDrawing.Of(reckoned, plain with { WidthMm = mm }))];
        return
        [
            .. Cover(reckoned, language, cover),
            new("coil", PixelFit.Whole, _ => coil),
            new("near", PixelFit.Filled, _ => coil),
            new("turns", PixelFit.Whole, _ => turns),
            new("key", PixelFit.Whole, frame => cards.MaxBy(c => frame.PixelsPerMm(PngCanvas.Drawn(c)))!),
        ];
    }

    private static IEnumerable<PackPicture> Cover(Reckoned reckoned, Language language, CoverPicture? cover)
    {
        if (cover is null) yield break;
        var picture = cover.Within(RowsMm, RowsMm, 1, reckoned.Piece.Title, language.Fill(cover.IsStill ? language.Pattern.CoverStill : language.Pattern.CoverPhoto, ("title", reckoned.Piece.Title)), language.Code);
        yield return new("cover", PixelFit.Filled, _ => picture);
    }

    // A photograph has no caption in it.
    private static Picture Wordless(Picture picture)
    {
        return picture with { Marks = Without(picture.Marks) };

        static ImmutableArray<Mark> Without(ImmutableArray<Mark> marks) => [.. marks.Where(m => m is not Text).Select(m => m is Group group ? group with { Marks = Without(group.Marks) } : m)];
    }
}
