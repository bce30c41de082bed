using System.Collections.Immutable;
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
        using var surface = SKSurface.Create(new SKImageInfo(frame.WidthPx, frame.HeightPx, SKColorType.Rgba8888, SKAlphaType.Opaque, SKColorSpace.CreateSrgb()))
            ?? throw new InsufficientMemoryException($"There is no room for {frame.WidthPx} x {frame.HeightPx} pixels.");
        var canvas = surface.Canvas;
        canvas.Clear(Colour(frame.Ground));
        canvas.Translate((float)(frame.WidthPx / 2.0 - drawn.Middle.XMm * scale), (float)(frame.HeightPx / 2.0 - drawn.Middle.YMm * scale));
        canvas.Scale((float)scale);
        using (var hand = new PngHand(canvas)) hand.Draw(picture.Marks);
        canvas.Flush();
        using var image = surface.Snapshot();
        using var pixels = image.PeekPixels()!;
        using var file = pixels.Encode(new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 6))!;
        return new DrawnDocument(file.ToArray(), []);
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

    private static SKTypeface Load(FaceStyle style)
    {
        using var file = SKData.CreateCopy(HouseFaces.Of(style).File.Span);
        return SKTypeface.FromData(file) ?? throw new InvalidDataException($"The typeface '{style}' cannot be read.");
    }
}
