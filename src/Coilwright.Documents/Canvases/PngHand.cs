using System.Collections.Immutable;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Rasters;
using Coilwright.Documents.Typefaces;
using SkiaSharp;

namespace Coilwright.Documents.Canvases;

/// <summary>The hand that draws marks in pixels, in the picture's millimetres.</summary>
internal sealed class PngHand(SKCanvas canvas) : IDisposable
{
    private readonly SKPaint _fill = new() { IsAntialias = true, Style = SKPaintStyle.Fill };
    private readonly SKPaint _line = new() { IsAntialias = true, Style = SKPaintStyle.Stroke, StrokeJoin = SKStrokeJoin.Round };

    // A shape of a symbol is set down many times; its path is made once.
    private readonly Dictionary<Shape, SKPath> _paths = new(ReferenceEqualityComparer.Instance);

    // A picture is drawn band by band; it is opened once.
    private readonly Dictionary<Raster, SKImage> _rasters = new(ReferenceEqualityComparer.Instance);

    public void Draw(ImmutableArray<Mark> marks)
    {
        foreach (var mark in marks)
            switch (mark)
            {
                case Group group:
                    canvas.Save();
                    canvas.Translate((float)group.MoveRightMm, (float)group.MoveDownMm);
                    if (group.Clip is { } clip)
                    {
                        using var path = Path(clip);
                        canvas.ClipPath(path, SKClipOperation.Intersect, antialias: true);
                    }
                    Draw(group.Marks);
                    canvas.Restore();
                    break;
                case Stamp stamp:
                    canvas.Save();
                    canvas.Translate((float)stamp.At.XMm, (float)stamp.At.YMm);
                    Draw(stamp.Symbol.Marks);
                    canvas.Restore();
                    break;
                case Shape shape:
                    Ink(shape);
                    break;
                case Text { Content.Length: > 0 } text:
                    Write(text);
                    break;
                case LaidRaster laid:
                    Lay(laid);
                    break;
            }
    }

    public void Dispose()
    {
        foreach (var path in _paths.Values) path.Dispose();
        foreach (var image in _rasters.Values) image.Dispose();
        _fill.Dispose();
        _line.Dispose();
    }

    private void Ink(Shape shape)
    {
        if (!_paths.TryGetValue(shape, out var path)) _paths[shape] = path = Path(shape.Outline);
        if (shape.Paint.Fill is { } fill)
        {
            _fill.Color = PngCanvas.Colour(fill);
            canvas.DrawPath(path, _fill);
        }
        if (shape.Paint.Pen is not { } pen) return;
        _line.Color = PngCanvas.Colour(pen.Ink);
        _line.StrokeWidth = (float)pen.WidthMm;
        _line.StrokeCap = pen.Ends == LineEnds.Round ? SKStrokeCap.Round : SKStrokeCap.Butt;
        // An odd list of dashes is one that runs twice, as in SVG.
        float[] dashes = [.. pen.DashesMm.Select(d => (float)d)];
        if (dashes.Length % 2 == 1) dashes = [.. dashes, .. dashes];
        using var dashed = dashes.Length == 0 ? null : SKPathEffect.CreateDash(dashes, 0);
        _line.PathEffect = dashed;
        canvas.DrawPath(path, _line);
        _line.PathEffect = null;
    }

    private void Lay(LaidRaster laid)
    {
        if (!_rasters.TryGetValue(laid.Raster, out var image))
        {
            using var opened = RasterReading.Open(laid.Raster);
            _rasters[laid.Raster] = image = SKImage.FromBitmap(opened);
        }
        var (left, top, right, bottom) = laid.Box;
        canvas.DrawImage(image, new SKRect((float)left, (float)top, (float)right, (float)bottom), new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear), null);
    }

    private void Write(Text text)
    {
        using var font = new SKFont(PngCanvas.Typeface(text.Weight), (float)text.SizeMm) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None, Edging = SKFontEdging.Antialias };
        _fill.Color = PngCanvas.Colour(text.Ink);
        var align = text.Anchor switch { TextAnchor.Start => SKTextAlign.Left, TextAnchor.Middle => SKTextAlign.Center, _ => SKTextAlign.Right };
        canvas.DrawText(PrintableText.Prepared(text.Content), (float)text.At.XMm, (float)text.At.YMm, align, font, _fill);
    }

    private static SKPath Path(Outline outline)
    {
        using var path = new SKPathBuilder { FillType = SKPathFillType.EvenOdd };
        foreach (var step in outline.Steps)
            switch (step.Kind)
            {
                case StepKind.Move:
                    path.MoveTo(At(step.To));
                    break;
                case StepKind.Line:
                    path.LineTo(At(step.To));
                    break;
                case StepKind.Curve:
                    path.CubicTo(At(step.First), At(step.Second), At(step.To));
                    break;
                default:
                    path.Close();
                    break;
            }
        return path.Detach();
    }

    private static SKPoint At(Point point) => new((float)point.XMm, (float)point.YMm);
}
