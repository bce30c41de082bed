using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.Rasters;
using Coilwright.Documents.Typefaces;
using PdfSharp.Drawing;
using PdfSharp.Pdf;

namespace Coilwright.Documents.Canvases;

/// <summary>The hand that draws in a PDF: inks, faces, pens, and pictures with their symbols.</summary>
/// <remarks>A symbol is drawn once into a form of its own and set down wherever it is stamped, so that a row of two hundred beads is not two hundred
/// drawings. Forms must be made before the document is tagged: PDFsharp takes whatever is drawn after that for a page's content.</remarks>
internal sealed class PdfHand(PdfDocument pdf, bool greyscale)
{
    private static readonly XPdfFontOptions Embedded = new(PdfFontEncoding.Unicode);

    // Points to a millimetre inside a form. Any would do; numbers are written with four decimals, and this one wastes none.
    private const double FormScale = 10;

    private readonly Dictionary<(FaceStyle, double), XFont> _fonts = [];
    private readonly Dictionary<Srgb, XSolidBrush> _brushes = [];
    private readonly Dictionary<Raster, XImage> _images = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<Symbol, (XForm Form, Box Box)> _forms = new(ReferenceEqualityComparer.Instance);

    /// <summary>Makes the forms of all symbols in some pages.</summary>
    public void MakeForms(ImmutableArray<ComposedPage> pages)
    {
        foreach (var drawing in pages.SelectMany(p => p.Marks).OfType<PageMark.Drawing>()) MakeForms(drawing.Picture.Marks);
    }

    /// <summary>Draws a picture, or the length of it that is asked for.</summary>
    public void Draw(XGraphics graphics, PageMark.Drawing drawing)
    {
        var picture = drawing.Picture;
        var scale = drawing.PointsPerMm;
        var view = new View(drawing.X - drawing.FromMm * scale, drawing.Y, scale);
        var whole = drawing.FromMm <= 0 && drawing.ToMm >= picture.WidthMm;
        var window = new Box(drawing.FromMm, 0, drawing.ToMm, picture.HeightMm);
        if (whole)
        {
            Draw(graphics, picture.Marks, view, null);
            return;
        }
        var state = graphics.Save();
        graphics.IntersectClip(Path(Outline.Rectangle(window), view));
        Draw(graphics, picture.Marks, view, window);
        graphics.Restore(state);
    }

    public XFont Font(FaceStyle face, double size)
    {
        if (_fonts.TryGetValue((face, size), out var font)) return font;
        var style = face switch { FaceStyle.Bold => XFontStyleEx.Bold, FaceStyle.Italic => XFontStyleEx.Italic, _ => XFontStyleEx.Regular };
        return _fonts[(face, size)] = new XFont(HouseFaces.Family, size, style, Embedded);
    }

    public XSolidBrush Brush(Srgb ink) => _brushes.TryGetValue(ink, out var brush) ? brush : _brushes[ink] = new XSolidBrush(Colour(ink));

    public XColor Colour(Srgb ink)
    {
        if (greyscale) ink = ink.Grey();
        return XColor.FromArgb(ink.Red, ink.Green, ink.Blue);
    }

    // JPEG goes in as it is (DCTDecode), PNG as its pixels (FlateDecode), what is see-through as a mask.
    private XImage Image(Raster raster)
    {
        if (_images.TryGetValue(raster, out var image)) return image;
        var bytes = (greyscale ? raster.Greyed() : raster).Bytes.ToArray();
        return _images[raster] = XImage.FromStream(new MemoryStream(bytes, 0, bytes.Length, writable: false, publiclyVisible: true));
    }

    /// <summary>From a picture's millimetres to points: where its origin lies, and the scale.</summary>
    private readonly record struct View(double X, double Y, double Scale)
    {
        public XPoint At(Point p) => new(X + p.XMm * Scale, Y + p.YMm * Scale);

        public View Moved(double rightMm, double downMm) => this with { X = X + rightMm * Scale, Y = Y + downMm * Scale };
    }

    // The window is what is left of the picture, in the millimetres of these marks; null when all of it is.
    private void Draw(XGraphics graphics, ImmutableArray<Mark> marks, View view, Box? window)
    {
        foreach (var mark in marks)
        {
            // What the window cuts off whole is left out, or it would be read aloud unseen.
            if (window is { } seen && mark is not Group && BoxOf(mark) is { } box && !box.Overlaps(seen)) continue;
            switch (mark)
            {
                case Group group:
                    var inside = view.Moved(group.MoveRightMm, group.MoveDownMm);
                    var left = window?.Moved(-group.MoveRightMm, -group.MoveDownMm);
                    if (group.Clip is not { } clip)
                    {
                        Draw(graphics, group.Marks, inside, left);
                        break;
                    }
                    var state = graphics.Save();
                    graphics.IntersectClip(Path(clip, inside));
                    Draw(graphics, group.Marks, inside, left);
                    graphics.Restore(state);
                    break;
                case Stamp stamp:
                    var (form, bounds) = _forms[stamp.Symbol];
                    var at = view.At(new Point(stamp.At.XMm + bounds.LeftMm, stamp.At.YMm + bounds.TopMm));
                    graphics.DrawImage(form, at.X, at.Y, bounds.WidthMm * view.Scale, bounds.HeightMm * view.Scale);
                    break;
                case Shape shape when shape.Paint.Fill is not null || shape.Paint.Pen is not null:
                    Ink(graphics, shape, view);
                    break;
                case Text { Content.Length: > 0 } text:
                    Write(graphics, text, view);
                    break;
                case LaidRaster laid:
                    var corner = view.At(new Point(laid.Box.LeftMm, laid.Box.TopMm));
                    graphics.DrawImage(Image(laid.Raster), corner.X, corner.Y, laid.Box.WidthMm * view.Scale, laid.Box.HeightMm * view.Scale);
                    break;
            }
        }
    }

    private void Ink(XGraphics graphics, Shape shape, View view)
    {
        var pen = shape.Paint.Pen is { } line ? Pen(line, view.Scale) : null;
        var brush = shape.Paint.Fill is { } fill ? Brush(fill) : null;
        var figures = shape.Outline.Figures();
        // PDFsharp joins a figure that was left open to the next one of its path, so such figures are drawn one by one.
        if (pen is null || figures.All(f => f.IsClosed) || figures.Length == 1)
        {
            graphics.DrawPath(pen, brush, Path(shape.Outline, view));
            return;
        }
        if (brush is not null) graphics.DrawPath(null, brush, Path(shape.Outline, view));
        foreach (var figure in figures) graphics.DrawPath(pen, null, Path(figure, view));
    }

    private void Write(XGraphics graphics, Text text, View view)
    {
        var face = text.Weight == TextWeight.Bold ? FaceStyle.Bold : FaceStyle.Regular;
        var size = text.SizeMm * view.Scale;
        var words = PrintableText.Prepared(text.Content);
        var back = text.Anchor switch { TextAnchor.Start => 0, TextAnchor.Middle => 0.5, _ => 1 } * HouseFaces.Of(face).WidthEm(words) * size;
        var at = view.At(text.At);
        graphics.DrawString(words, Font(face, size), Brush(text.Ink), at.X - back, at.Y, XStringFormats.BaseLineLeft);
    }

    private Box? BoxOf(Mark mark) => mark is Stamp stamp
        ? _forms[stamp.Symbol].Box.Moved(stamp.At.XMm, stamp.At.YMm)
        : new PlacedMark(mark, 0, 0, null, "").Box(CautiousSans.Instance);

    private void MakeForms(ImmutableArray<Mark> marks)
    {
        foreach (var mark in marks)
            if (mark is Group group) MakeForms(group.Marks);
            else if (mark is Stamp { Symbol: var symbol } && !_forms.ContainsKey(symbol))
            {
                MakeForms(symbol.Marks);
                _forms[symbol] = Form(symbol);
            }
    }

    private (XForm, Box) Form(Symbol symbol)
    {
        var parts = new Picture(0, 0, "", "", symbol.Marks).Inked().Select(p => p.Box(CautiousSans.Instance)).OfType<Box>().ToArray();
        var box = parts.Length == 0 ? new Box(0, 0, 1, 1) : parts.Aggregate((a, b) => a.With(b));
        // Room for nothing is no room for a form.
        box = new Box(box.LeftMm, box.TopMm, Math.Max(box.RightMm, box.LeftMm + 0.01), Math.Max(box.BottomMm, box.TopMm + 0.01));
        var form = new XForm(pdf, new XSize(box.WidthMm * FormScale, box.HeightMm * FormScale));
        using (var graphics = XGraphics.FromForm(form))
            Draw(graphics, symbol.Marks, new View(-box.LeftMm * FormScale, -box.TopMm * FormScale, FormScale), null);
        return (form, box);
    }

    private static XGraphicsPath Path(Outline outline, View view)
    {
        var path = new XGraphicsPath { FillMode = XFillMode.Alternate };
        XPoint here = default;
        foreach (var step in outline.Steps)
        {
            var to = view.At(step.To);
            switch (step.Kind)
            {
                case StepKind.Move:
                    path.StartFigure();
                    break;
                case StepKind.Line:
                    path.AddLine(here, to);
                    break;
                case StepKind.Curve:
                    path.AddBezier(here, view.At(step.First), view.At(step.Second), to);
                    break;
                default:
                    path.CloseFigure();
                    break;
            }
            here = to;
        }
        return path;
    }

    private XPen Pen(Pen pen, double scale)
    {
        var drawn = new XPen(Colour(pen.Ink), pen.WidthMm * scale)
        {
            LineJoin = XLineJoin.Round,
            LineCap = pen.Ends == LineEnds.Round ? XLineCap.Round : XLineCap.Flat,
        };
        if (!pen.DashesMm.IsEmpty)
        {
            // Dashes are told in line widths; an odd list is one that runs twice (as in SVG).
            var dashes = pen.DashesMm.Select(d => d / pen.WidthMm).ToArray();
            drawn.DashPattern = dashes.Length % 2 == 0 ? dashes : [.. dashes, .. dashes];
        }
        return drawn;
    }
}
