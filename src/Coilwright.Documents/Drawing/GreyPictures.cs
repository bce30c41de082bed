using Coilwright.Documents.Rasters;

namespace Coilwright.Documents.Drawing;

/// <summary>Pictures without colour.</summary>
public static class GreyPictures
{
    /// <summary>The picture with every ink as the grey of its luminance.</summary>
    public static Picture Greyed(this Picture picture) => picture with { Marks = [.. picture.Marks.Select(Greyed)] };

    private static Mark Greyed(Mark mark) => mark switch
    {
        Group group => group with { Marks = [.. group.Marks.Select(Greyed)] },
        Stamp stamp => stamp with { Symbol = stamp.Symbol with { Marks = [.. stamp.Symbol.Marks.Select(Greyed)] } },
        Text text => text with { Ink = text.Ink.Grey() },
        LaidRaster laid => laid with { Raster = laid.Raster.Greyed() },
        Shape shape => shape with { Paint = Greyed(shape.Paint) },
        _ => mark,
    };

    private static Paint Greyed(Paint paint) =>
        new(paint.Fill?.Grey(), paint.Pen is { } pen ? pen with { Ink = pen.Ink.Grey() } : null);
}
