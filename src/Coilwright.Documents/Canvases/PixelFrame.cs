using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Canvases;

/// <summary>How a picture is put into a frame of another shape.</summary>
public enum PixelFit
{
    /// <summary>All of what is drawn is in the frame, with ground round it.</summary>
    Whole,

    /// <summary>The frame is full: what is longer than it is cut off on both sides alike.</summary>
    Filled,
}

/// <summary>A frame of pixels for a picture.</summary>
/// <param name="WidthPx">Width, pixels.</param>
/// <param name="HeightPx">Height, pixels.</param>
public sealed record PixelFrame(int WidthPx, int HeightPx)
{
    /// <summary>Shortest side: below it nothing is to be seen. Our choice.</summary>
    public const int LeastPx = 16;

    /// <summary>Longest side: three printed pages at 300 to the inch. Our choice.</summary>
    public const int MostPx = 10_000;

    /// <summary>Most pixels in all: some 200 MB while one is drawn. Our choice.</summary>
    public const int MostPixels = 40_000_000;

    /// <summary>Whether a picture of that size is drawn at all.</summary>
    public bool IsAllowed => WidthPx is >= LeastPx and <= MostPx && HeightPx is >= LeastPx and <= MostPx && (long)WidthPx * HeightPx <= MostPixels;

    /// <summary>How the picture is put into it.</summary>
    public PixelFit Fit { get; init; } = PixelFit.Whole;

    /// <summary>Share of the frame's width or height, whichever is met first, that a whole picture takes, above 0 up to 1. A filled frame has no room left over.</summary>
    public double Share { get; init; } = 0.9;

    /// <summary>What is seen where nothing is drawn.</summary>
    public Srgb Ground { get; init; } = Palette.Colour.Paper;

    /// <summary>Pixels to a millimetre of what is drawn.</summary>
    /// <param name="drawn">The box of what is drawn, mm.</param>
    public double PixelsPerMm(Box drawn)
    {
        double across = WidthPx / drawn.WidthMm, down = HeightPx / drawn.HeightMm;
        return Fit == PixelFit.Whole ? Share * Math.Min(across, down) : Math.Max(across, down);
    }
}
