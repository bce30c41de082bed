using System.Collections.Immutable;
using System.Text;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Pages.Composition;
using Coilwright.Documents.Typefaces;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;

namespace Coilwright.Documents.Canvases;

/// <summary>Draws composed pages into a PDF document, part by part, so that the tags follow the reading order.</summary>
internal sealed class PdfPageWriter(PdfDocument pdf, UAManager tags, PdfHand hand)
{
    private readonly StringBuilder _heading = new();
    private readonly Stack<Tag> _open = new();
    private XGraphics _graphics = null!;
    private PdfPage _page = null!;
    private PdfOutline? _chapter;
    private bool _decorating;
    private bool _pageHasContent;
    private Marked _marked;
    private bool _outlined;

    // PDFsharp begins the first marked content of a page inside a text object and all others where the pen stands; it ends them before it goes back
    // there. So the pen is put back first: marked content must not begin inside a text object and end outside of it, or the other way round.
    private enum Marked { None, InsideText, OutsideText }

    public void Write(ImmutableArray<ComposedPage> pages)
    {
        _outlined = pages.Length > 1;
        foreach (var page in pages)
        {
            var before = _graphics;
            if (before is not null)
            {
                Undecorate();
                Unmark();
            }
            _page = pdf.AddPage();
            before?.Dispose();
            _page.Width = XUnit.FromPoint(page.Width);
            _page.Height = XUnit.FromPoint(page.Height);
            _graphics = XGraphics.FromPdfPage(_page);
            _pageHasContent = false;
            // PDFsharp sets up a page's coordinates at its first ink, and would do so inside the first part. A rectangle of no size comes first.
            Decorating(true);
            _graphics.DrawRectangle(hand.Brush(PageInks.White), 0, 0, 0, 0);
            foreach (var mark in page.Marks) Write(mark);
        }
        Undecorate();
        _graphics.Dispose();
    }

    private void Write(PageMark mark)
    {
        switch (mark)
        {
            case PageMark.Open open:
                Undecorate();
                Open(open);
                break;
            case PageMark.Close:
                Undecorate();
                Close();
                break;
            case PageMark.Letters letters:
                Decorating(letters.Decoration);
                _graphics.DrawString(letters.Text, hand.Font(letters.Face, letters.Size), hand.Brush(letters.Ink), letters.X, letters.Baseline,
                    XStringFormats.BaseLineLeft);
                if (letters.Decoration) break;
                Mark();
                if (_open.TryPeek(out var tag) && tag is Tag.H1 or Tag.H2) _heading.Append(letters.Text);
                break;
            case PageMark.Fill fill:
                Decorating(true);
                if (fill.Corner > 0)
                    _graphics.DrawRoundedRectangle(hand.Brush(fill.Ink), Rectangle(fill.Area), new XSize(2 * fill.Corner, 2 * fill.Corner));
                else _graphics.DrawRectangle(hand.Brush(fill.Ink), Rectangle(fill.Area));
                break;
            case PageMark.Ring ring:
                Decorating(true);
                _graphics.DrawRoundedRectangle(new XPen(hand.Colour(ring.Ink), ring.Width), Rectangle(ring.Area), new XSize(2 * ring.Corner, 2 * ring.Corner));
                break;
            case PageMark.Stroke stroke:
                Decorating(true);
                var pen = new XPen(hand.Colour(stroke.Ink), stroke.Width);
                if (stroke.Dashed) pen.DashPattern = [3, 2.5];
                _graphics.DrawLine(pen, stroke.X1, stroke.Y1, stroke.X2, stroke.Y2);
                break;
            case PageMark.Drawing drawing:
                Draw(drawing);
                break;
        }
    }

    private void Open(PageMark.Open open)
    {
        _open.Push(open.Tag);
        var builder = tags.StructureBuilder;
        Unmark();
        switch (open.Tag)
        {
            case Tag.Figure:
                // The structure's boxes count from the page's left bottom corner.
                builder.BeginElement(PdfIllustrationElementTag.Figure, open.Alt ?? "",
                    new XRect(open.Area.X, _page.Height.Point - open.Area.Bottom, open.Area.Width, open.Area.Height));
                break;
            case Tag.Caption:
                builder.BeginElement(PdfGroupingElementTag.Caption);
                break;
            case Tag.Note:
                builder.BeginElement(PdfGroupingElementTag.Division);
                break;
            default:
                builder.BeginElement(Enum.Parse<PdfBlockLevelElementTag>(open.Tag.ToString()));
                break;
        }
        if (open.Tag == Tag.TH)
            builder.CurrentStructureElement.TableAttributes.Elements.SetName("/Scope", open.HeadsRow ? "/Row" : "/Column");
    }

    private void Close()
    {
        var tag = _open.Pop();
        Unmark();
        tags.StructureBuilder.End();
        if (tag is not (Tag.H1 or Tag.H2)) return;
        var title = _heading.ToString().Trim();
        _heading.Clear();
        if (!_outlined || title.Length == 0) return;
        if (tag == Tag.H1) _chapter = pdf.Outlines.Add(title, _page, true);
        else (_chapter?.Outlines ?? pdf.Outlines).Add(title, _page, true);
    }

    private void Decorating(bool decoration)
    {
        if (decoration == _decorating) return;
        if (!decoration)
        {
            Undecorate();
            return;
        }
        Unmark();
        tags.StructureBuilder.BeginArtifact();
        _decorating = true;
    }

    private void Undecorate()
    {
        if (!_decorating) return;
        tags.BeginGraphicMode();
        tags.StructureBuilder.End();
        _decorating = false;
    }

    private void Draw(PageMark.Drawing drawing)
    {
        Decorating(drawing.Decoration);
        if (!drawing.Decoration && !_pageHasContent)
        {
            // PDFsharp begins a page's first marked content inside a text object, where no drawing may begin. A lone space takes that place.
            tags.StructureBuilder.BeginElement(PdfInlineLevelElementTag.Span);
            _graphics.DrawString(" ", hand.Font(FaceStyle.Regular, 1), hand.Brush(default), drawing.X, drawing.Y, XStringFormats.BaseLineLeft);
            Mark();
            Unmark();
            tags.StructureBuilder.End();
        }
        hand.Draw(_graphics, drawing);
        if (!drawing.Decoration) Mark();
    }

    // Ink of a part was put down.
    private void Mark()
    {
        if (_marked == Marked.None) _marked = _pageHasContent ? Marked.OutsideText : Marked.InsideText;
        _pageHasContent = true;
    }

    private void Unmark()
    {
        if (_marked == Marked.InsideText) tags.BeginTextMode();
        else tags.BeginGraphicMode();
        tags.StructureBuilder.EndMarkedContentsWithId();
        tags.BeginGraphicMode();
        _marked = Marked.None;
    }

    private static XRect Rectangle(Area area) => new(area.X, area.Y, area.Width, area.Height);
}
