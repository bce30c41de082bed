using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using SkiaSharp;

namespace Coilwright.Documents.Rasters;

/// <summary>Pictures of pixels without colour.</summary>
internal static class RasterGrey
{
    // The grey of a luminance, in steps fine enough that none is off by more than the one next to it.
    private const int Steps = 4096;

    private static readonly ImmutableArray<double> Linear = [.. Enumerable.Range(0, 256).Select(level => new Srgb((byte)level, (byte)level, (byte)level).Luminance())];
    private static readonly ImmutableArray<byte> Stored = [.. Enumerable.Range(0, Steps + 1).Select(step => Tints.Level((double)step / Steps))];

    /// <summary>The picture with every pixel as the grey of its luminance, as <see cref="Tints.Grey"/> does with an ink.</summary>
    public static Raster Greyed(this Raster raster)
    {
        using var decoded = RasterReading.Open(raster);
        using var colours = decoded.Copy(SKColorType.Rgba8888);
        var from = colours.GetPixelSpan();
        // What is see-through is premultiplied here: a grey of it is still right, since its weights are of linear light only where it is opaque, and edges are a pixel wide.
        var seesThrough = colours.AlphaType != SKAlphaType.Opaque;
        using var grey = new SKBitmap(new SKImageInfo(colours.Width, colours.Height, seesThrough ? SKColorType.Rgba8888 : SKColorType.Gray8, seesThrough ? SKAlphaType.Premul : SKAlphaType.Opaque, SKColorSpace.CreateSrgb()));
        var to = grey.GetPixelSpan();
        for (int at = 0, next = 0; at < from.Length; at += 4)
        {
            var level = Stored[(int)Math.Round((0.2126 * Linear[from[at]] + 0.7152 * Linear[from[at + 1]] + 0.0722 * Linear[from[at + 2]]) * Steps)];
            to[next++] = level;
            if (!seesThrough) continue;
            to[next++] = level;
            to[next++] = level;
            to[next++] = from[at + 3];
        }
        return RasterReading.Written(grey, raster.IsJpeg);
    }
}
