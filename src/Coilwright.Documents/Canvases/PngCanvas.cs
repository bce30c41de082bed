using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;
using SkiaSharp;

namespace Coilwright.Documents.Canvases;

/// <summary>Draws a picture as pixels (PNG, eight bits, sRGB, no see-through parts).</summary>
/// <remarks>
/// <para>What is drawn stands in the middle of its frame, whatever white its picture has round it. Words are set in the house typeface, whatever the machine has.</para>
/// <para>The same picture and frame give the same bytes on one machine, in every locale. Another processor may round an edge's pixel the other way.</para>
/// </remarks>
public static class PngCanvas
{
    private static readonly Lazy<SKTypeface> Regular = new(() => Load(FaceStyle.Regular)), Bold = new(() => Load(FaceStyle.Bold));

    private const int Channels = 4;

    // Skia parts a pixel into four each way and no finer: a near-level edge would show steps. It draws twice as fine, and what is kept is the mean. Band by band, so that the
    // finer pixels take no more room for a large picture than for a small one.
    private const int Finer = 2, BandPx = 256;

    // Of the picture's own millimetres: nothing that is drawn is smaller, and no frame is divided by nothing.
    private const double LeastMm = 0.01;

    /// <summary>Draws a picture into a frame. Words that the typeface lacks letters for are a fault each.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The frame is not allowed, or its share is none.</exception>
    public static DrawnDocument Draw(Picture picture, PixelFrame frame)
    {
        if (!frame.IsAllowed || frame.Share is not (> 0 and <= 1)) throw new ArgumentOutOfRangeException(nameof(frame), frame, "Such a frame is not drawn.");
        ImmutableArray<Fault> faults = [.. picture.Inked().Select(p => p.Mark).OfType<Text>().Select(t => PrintableText.Check(t.Content, "picture")).OfType<Fault>().Distinct()];
        if (!faults.IsEmpty) return new DrawnDocument(default, faults);

        var drawn = Drawn(picture);
        var scale = frame.PixelsPerMm(drawn);
        var pixels = new byte[frame.WidthPx * frame.HeightPx * Channels];
        var fine = Sheet(frame.WidthPx * Finer, Math.Min(frame.HeightPx, BandPx) * Finer);
        using var surface = SKSurface.Create(fine) ?? throw new InsufficientMemoryException($"There is no room for {fine.Width} x {fine.Height} pixels.");
        using (var hand = new PngHand(surface.Canvas))
            for (var top = 0; top < frame.HeightPx; top += BandPx)
            {
                surface.Canvas.ResetMatrix();
                surface.Canvas.Clear(Colour(frame.Ground));
                surface.Canvas.Scale(Finer);
                surface.Canvas.Translate((float)(frame.WidthPx / 2.0 - drawn.Middle.XMm * scale), (float)(frame.HeightPx / 2.0 - top - drawn.Middle.YMm * scale));
                surface.Canvas.Scale((float)scale);
                hand.Draw(picture.Marks);
                using var band = surface.PeekPixels();
                Mean(band, pixels.AsSpan(top * frame.WidthPx * Channels), frame.WidthPx, Math.Min(BandPx, frame.HeightPx - top));
            }
        return new DrawnDocument(Encoded(pixels, Sheet(frame.WidthPx, frame.HeightPx)), []);
    }

    /// <summary>The box of what is drawn in a picture, mm, inside what clips leave of it; the whole sheet where nothing is.</summary>
    public static Box Drawn(Picture picture)
    {
        Box? all = null;
        foreach (var mark in picture.Inked())
        {
            if (mark.Box(HouseSans.Instance) is not { } box) continue;
            if (mark.Clip?.Bounds is { } clip)
            {
                if (!box.Overlaps(clip)) continue;
                box = new Box(Math.Max(box.LeftMm, clip.LeftMm), Math.Max(box.TopMm, clip.TopMm), Math.Min(box.RightMm, clip.RightMm), Math.Min(box.BottomMm, clip.BottomMm));
            }
            all = all?.With(box) ?? box;
        }
        var (left, top, right, bottom) = all ?? picture.Sheet;
        return new Box(left, top, Math.Max(right, left + LeastMm), Math.Max(bottom, top + LeastMm));
    }

    internal static SKTypeface Typeface(TextWeight weight) => (weight == TextWeight.Bold ? Bold : Regular).Value;

    internal static SKColor Colour(Srgb ink) => new(ink.Red, ink.Green, ink.Blue);

    private static SKImageInfo Sheet(int widthPx, int heightPx) => new(widthPx, heightPx, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb());

    private static void Mean(SKPixmap fine, Span<byte> to, int widthPx, int heightPx)
    {
        var from = fine.GetPixelSpan<byte>();
        for (var y = 0; y < heightPx; y++)
        {
            ReadOnlySpan<byte> upper = from.Slice(y * Finer * fine.RowBytes, fine.RowBytes), lower = from.Slice((y * Finer + 1) * fine.RowBytes, fine.RowBytes);
            var row = to.Slice(y * widthPx * Channels, widthPx * Channels);
            for (var x = 0; x < widthPx; x++)
                for (var c = 0; c < Channels; c++)
                {
                    var at = x * Finer * Channels + c;
                    row[x * Channels + c] = (byte)((upper[at] + upper[at + Channels] + lower[at] + lower[at + Channels] + 2) / 4);
                }
        }
    }

    private static byte[] Encoded(byte[] pixels, SKImageInfo sheet)
    {
        var pinned = GCHandle.Alloc(pixels, GCHandleType.Pinned);
        try
        {
            using var map = new SKPixmap(sheet, pinned.AddrOfPinnedObject());
            using var file = map.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 6)) ?? throw new InvalidDataException("The pixels could not be written as PNG.");
            return file.ToArray();
        }
        finally
        {
            pinned.Free();
        }
    }

    private static SKTypeface Load(FaceStyle style)
    {
        using var file = SKData.CreateCopy(HouseFaces.Of(style).File.Span);
        return SKTypeface.FromData(file) ?? throw new InvalidDataException($"The typeface '{style}' cannot be read.");
    }
}
