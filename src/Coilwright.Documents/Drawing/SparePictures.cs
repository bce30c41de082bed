using Coilwright.Core.Colour;

namespace Coilwright.Documents.Drawing;

/// <summary>Pictures that spare ink.</summary>
public static class SparePictures
{
    // Enough of a colour left to tell it from its neighbour on a good printer. Our choice.
    private const double Left = 0.18;

    // Finer areas than these are lines, as arrowheads are, and stay.
    private const double FineMm = 3;

    /// <summary>The picture with its areas hardly tinted; lines stay, and letters are dark, since the ground beneath them no longer is.</summary>
    /// <remarks>Pixels stay: hardly tinted, a photo shows nothing. A document that spares ink has a drawing in its place.</remarks>
    public static Picture Spared(this Picture picture) => picture with { Marks = [.. picture.Marks.Select(Spared)] };

    private static Mark Spared(Mark mark) => mark switch
    {
        Group group => group with { Marks = [.. group.Marks.Select(Spared)] },
        Stamp stamp => stamp with { Symbol = stamp.Symbol with { Marks = [.. stamp.Symbol.Marks.Select(Spared)] } },
        Text text => text with { Ink = text.Ink.Luminance() > 0.5 ? Palette.Colour.Dark : text.Ink },
        Shape shape when shape.Paint.Fill is { } fill && shape.Outline.Bounds is { } box && Math.Max(box.WidthMm, box.HeightMm) > FineMm =>
            shape with { Paint = shape.Paint with { Fill = White.Mixed(fill, Left) } },
        _ => mark,
    };

    private static Srgb White { get; } = new(255, 255, 255);
}
