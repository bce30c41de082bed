using System.Globalization;
using System.Text;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Canvases;

/// <summary>How an SVG is written.</summary>
public sealed record SvgOptions
{
    /// <summary>Put before every id and symbol name, so that several pictures can stand in one page.</summary>
    public string IdPrefix { get; init; } = "";

    /// <summary>Whether the picture takes whatever width its page gives it, instead of its own millimetres.</summary>
    public bool Fluid { get; init; }

    /// <summary>Whether the words beside the picture say all there is to say: it then has no title and is passed over when read aloud.</summary>
    public bool Decorative { get; init; }

    /// <summary>Whether the names, sorts, values and titles of single marks are left out: for a page that asks for none of them.</summary>
    public bool Bare { get; init; }

    /// <summary>Put between the prefix and the names of clips, so that parts of one picture can be written one by one.</summary>
    public string ClipInfix { get; init; } = "";

    /// <summary>Whether hundredths of a millimetre will do, a twentieth of a screen's pixel: what moves by less does not change what is written.</summary>
    public bool ForScreen { get; init; }

    /// <summary>Whether the drawings of its symbols are left out: the page has them already, from <see cref="SvgCanvas.WriteSymbols"/> under the same
    /// prefix.</summary>
    public bool SymbolsElsewhere { get; init; }
}

/// <summary>Writes a picture as SVG that stands alone: one text, no outside parts, the same bytes every time.</summary>
/// <remarks>
/// <para>The view box is in millimetres and so is the size, so that it prints at true scale. Numbers have a decimal point and at most three decimals
/// (a thousandth of a millimetre; <see cref="SvgOptions.ForScreen"/> two) in every locale. Characters that XML cannot hold are left out.</para>
/// <para>SVG 1.1 with <c>data-</c> attributes; symbols are used through <c>xlink:href</c>, which older readers know too.</para>
/// </remarks>
public sealed class SvgCanvas
{
    /// <summary>The faces asked for, the best first. <see cref="CautiousSans"/> measures for any of them.</summary>
    public const string FontFamily = "'Atkinson Hyperlegible Next', 'Atkinson Hyperlegible', 'DejaVu Sans', sans-serif";

    /// <summary>Name, after the prefix, of the element with a picture's title.</summary>
    public const string TitleId = "title";

    /// <summary>Name, after the prefix, of the element with a picture's description.</summary>
    public const string DescId = "desc";

    private const string Root = "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\"";

    private readonly StringBuilder _out = new();
    private readonly List<Symbol> _symbols = [];
    private readonly HashSet<string> _known = new(StringComparer.Ordinal);
    private readonly SvgOptions _options;
    private int _clips;

    private SvgCanvas(SvgOptions options) => _options = options;

    /// <summary>Writes a picture. Lines end in a line feed.</summary>
    public static string Write(Picture picture, SvgOptions? options = null)
    {
        var canvas = new SvgCanvas(options ?? new SvgOptions());
        canvas.Whole(picture);
        return canvas._out.ToString();
    }

    /// <summary>Writes symbols alone, unseen, for pictures on the same page that use them.</summary>
    public static string WriteSymbols(IEnumerable<Symbol> symbols, SvgOptions? options = null)
    {
        var canvas = new SvgCanvas(options ?? new SvgOptions());
        canvas._out.Append(Root).Append(" width=\"0\" height=\"0\" aria-hidden=\"true\" fill=\"none\" fill-rule=\"evenodd\" stroke-linejoin=\"round\">\n");
        canvas.Collect(symbols.Select(s => new Stamp(s, default)));
        canvas.Definitions();
        canvas._out.Append("</svg>\n");
        return canvas._out.ToString();
    }

    /// <summary>Writes marks alone, for a page that has the picture's own element and keeps what does not change.</summary>
    /// <remarks>Clips are numbered within each text: <see cref="SvgOptions.ClipInfix"/> tells those of one page apart.</remarks>
    public static string WriteMarks(IEnumerable<Mark> marks, SvgOptions? options = null)
    {
        var canvas = new SvgCanvas(options ?? new SvgOptions());
        foreach (var mark in marks) canvas.Write(mark);
        return canvas._out.ToString();
    }

    /// <summary>The attributes of a picture's own element, in order.</summary>
    public static IEnumerable<(string Name, string Value)> ElementOf(Picture picture, SvgOptions options) => new SvgCanvas(options).ElementOf(picture);

    /// <summary>The transform that moves what is drawn round its own origin to its place.</summary>
    public static string TransformTo(Point at, SvgOptions options) => new SvgCanvas(options).MoveTo(at.XMm, at.YMm);

    private IEnumerable<(string Name, string Value)> ElementOf(Picture picture)
    {
        if (!_options.Fluid)
        {
            yield return ("width", Number(picture.WidthMm) + "mm");
            yield return ("height", Number(picture.HeightMm) + "mm");
        }
        yield return ("viewBox", "0 0 " + Number(picture.WidthMm) + " " + Number(picture.HeightMm));
        if (_options.Decorative)
        {
            yield return ("aria-hidden", "true");
        }
        else
        {
            yield return ("role", "img");
            yield return ("aria-labelledby", Name(TitleId) + " " + Name(DescId));
            yield return ("xml:lang", picture.Language);
        }
        yield return ("font-family", FontFamily);
        yield return ("fill", "none");
        yield return ("fill-rule", "evenodd");
        yield return ("stroke-linejoin", "round");
    }

    private void Whole(Picture picture)
    {
        _out.Append(Root);
        foreach (var (name, value) in ElementOf(picture)) Attribute(name, value);
        _out.Append(">\n");
        if (!_options.Decorative)
        {
            _out.Append("<title");
            Attribute("id", Name(TitleId));
            _out.Append('>').Append(Escaped(picture.Title)).Append("</title>\n<desc");
            Attribute("id", Name(DescId));
            _out.Append('>').Append(Escaped(picture.Description)).Append("</desc>\n");
        }
        if (!_options.SymbolsElsewhere)
        {
            Collect(picture.Marks);
            Definitions();
        }
        foreach (var mark in picture.Marks) Write(mark);
        _out.Append("</svg>\n");
    }

    private void Definitions()
    {
        if (_symbols.Count == 0) return;
        _out.Append("<defs>\n");
        foreach (var symbol in _symbols)
        {
            _out.Append("<g");
            Attribute("id", Name(symbol.Name));
            _out.Append(">\n");
            foreach (var mark in symbol.Marks) Write(mark);
            _out.Append("</g>\n");
        }
        _out.Append("</defs>\n");
    }

    // A symbol's own symbols come before it.
    private void Collect(IEnumerable<Mark> marks)
    {
        foreach (var mark in marks)
            if (mark is Group group) Collect(group.Marks);
            else if (mark is Stamp stamp && _known.Add(stamp.Symbol.Name))
            {
                Collect(stamp.Symbol.Marks);
                _symbols.Add(stamp.Symbol);
            }
    }

    private void Write(Mark mark)
    {
        switch (mark)
        {
            case Group group:
                WriteGroup(group);
                break;
            case Stamp stamp:
                Open("use", mark);
                Attribute("xlink:href", "#" + Name(stamp.Symbol.Name));
                Attribute("x", stamp.At.XMm);
                Attribute("y", stamp.At.YMm);
                Shut("use", mark);
                break;
            case Text text:
                WriteText(text);
                break;
            case Shape shape:
                WriteShape(shape);
                break;
            case LaidRaster laid:
                Open("image", laid);
                Attributes(("x", laid.Box.LeftMm), ("y", laid.Box.TopMm), ("width", laid.Box.WidthMm), ("height", laid.Box.HeightMm));
                Attribute("preserveAspectRatio", "none");
                Attribute("xlink:href", "data:" + laid.Raster.MediaType + ";base64," + Convert.ToBase64String(laid.Raster.Bytes.Span));
                Shut("image", laid);
                break;
            default:
                throw new NotSupportedException($"SvgCanvas draws no {mark.GetType().Name}.");
        }
    }

    private void WriteGroup(Group group)
    {
        if (group.Clip is { } clip)
        {
            // Written in the coordinates outside the group, where its own element stands.
            var name = Name("clip-" + _options.ClipInfix + (++_clips).ToString(CultureInfo.InvariantCulture));
            _out.Append("<clipPath");
            Attribute("id", name);
            _out.Append("><path clip-rule=\"evenodd\"");
            Attribute("d", Path(clip.Moved(group.MoveRightMm, group.MoveDownMm)));
            _out.Append("/></clipPath>\n<g");
            Attribute("clip-path", "url(#" + name + ")");
            _out.Append(">\n");
        }
        Open("g", group);
        if (group.MoveRightMm != 0 || group.MoveDownMm != 0)
            Attribute("transform", MoveTo(group.MoveRightMm, group.MoveDownMm));
        _out.Append(">\n");
        if (TitleOf(group) is { } title) _out.Append("<title>").Append(Escaped(title)).Append("</title>\n");
        foreach (var inner in group.Marks) Write(inner);
        _out.Append("</g>\n");
        if (group.Clip is not null) _out.Append("</g>\n");
    }

    private void WriteText(Text text)
    {
        Open("text", text);
        Attribute("x", text.At.XMm);
        Attribute("y", text.At.YMm);
        Attribute("font-size", text.SizeMm);
        Attribute("fill", text.Ink.ToString());
        if (text.Anchor != TextAnchor.Start) Attribute("text-anchor", text.Anchor == TextAnchor.Middle ? "middle" : "end");
        if (text.Weight == TextWeight.Bold) Attribute("font-weight", "bold");
        _out.Append('>');
        if (TitleOf(text) is { } title) _out.Append("<title>").Append(Escaped(title)).Append("</title>");
        _out.Append(Escaped(text.Content)).Append("</text>\n");
    }

    private void WriteShape(Shape shape)
    {
        var element = shape switch
        {
            Circle => "circle",
            Ellipse => "ellipse",
            Line => "line",
            Rectangle => "rect",
            Polygon => "polygon",
            _ => "path",
        };
        Open(element, shape);
        switch (shape)
        {
            case Circle c:
                Attributes(("cx", c.Middle.XMm), ("cy", c.Middle.YMm), ("r", c.RadiusMm));
                break;
            case Ellipse e:
                Attributes(("cx", e.Middle.XMm), ("cy", e.Middle.YMm), ("rx", e.HalfWidthMm), ("ry", e.HalfHeightMm));
                break;
            case Line l:
                Attributes(("x1", l.From.XMm), ("y1", l.From.YMm), ("x2", l.To.XMm), ("y2", l.To.YMm));
                break;
            case Rectangle r:
                Attributes(("x", r.Box.LeftMm), ("y", r.Box.TopMm), ("width", r.Box.WidthMm), ("height", r.Box.HeightMm));
                if (r.CornerMm > 0) Attribute("rx", Math.Min(r.CornerMm, Math.Min(r.Box.WidthMm, r.Box.HeightMm) / 2));
                break;
            case Polygon p:
                Attribute("points", string.Join(' ', p.Points.Select(Pair)));
                break;
            default:
                Attribute("d", Path(shape.Outline));
                break;
        }
        Inked(shape.Paint);
        Shut(element, shape);
    }

    private void Inked(Paint paint)
    {
        if (paint.Fill is { } fill) Attribute("fill", fill.ToString());
        if (paint.Pen is not { } pen) return;
        Attribute("stroke", pen.Ink.ToString());
        Attribute("stroke-width", pen.WidthMm);
        if (!pen.DashesMm.IsEmpty) Attribute("stroke-dasharray", string.Join(' ', pen.DashesMm.Select(Number)));
        if (pen.Ends == LineEnds.Round) Attribute("stroke-linecap", "round");
    }

    private void Open(string element, Mark mark)
    {
        _out.Append('<').Append(element);
        if (_options.Bare) return;
        if (mark.Id is { } id) Attribute("id", Name(id));
        if (mark.Class is { } sorts) Attribute("class", sorts);
        foreach (var (name, value) in mark.Data) Attribute("data-" + name, value);
    }

    private void Shut(string element, Mark mark)
    {
        if (TitleOf(mark) is { } title) _out.Append("><title>").Append(Escaped(title)).Append("</title></").Append(element).Append(">\n");
        else _out.Append("/>\n");
    }

    private void Attribute(string name, string value) => _out.Append(' ').Append(name).Append("=\"").Append(Escaped(value)).Append('"');

    private void Attribute(string name, double value) => Number(_out.Append(' ').Append(name).Append("=\""), value).Append('"');

    private void Attributes(params ReadOnlySpan<(string Name, double Value)> all)
    {
        foreach (var (name, value) in all) Attribute(name, value);
    }

    private string? TitleOf(Mark mark) => _options.Bare ? null : mark.Title;

    private string MoveTo(double rightMm, double downMm) => "translate(" + Number(rightMm) + " " + Number(downMm) + ")";

    private string Name(string id) => _options.IdPrefix + id;

    private string Path(Outline outline)
    {
        var d = new StringBuilder();
        foreach (var step in outline.Steps)
            switch (step.Kind)
            {
                case StepKind.Move:
                    Pair(d.Append('M'), step.To);
                    break;
                case StepKind.Line:
                    Pair(d.Append('L'), step.To);
                    break;
                case StepKind.Curve:
                    Pair(Pair(Pair(d.Append('C'), step.First).Append(' '), step.Second).Append(' '), step.To);
                    break;
                default:
                    d.Append('Z');
                    break;
            }
        return d.ToString();
    }

    private string Pair(Point p) => Pair(new StringBuilder(), p).ToString();

    private StringBuilder Pair(StringBuilder text, Point p) => Number(Number(text, p.XMm).Append(' '), p.YMm);

    private string Number(double value) => Number(new StringBuilder(), value).ToString();

    // Most of what is written is numbers: thousandths as whole numbers are several times faster than a format that has to be read each time.
    private StringBuilder Number(StringBuilder text, double value)
    {
        var thousandths = _options.ForScreen
            ? checked(10 * (long)Math.Round(value * 100, MidpointRounding.AwayFromZero))
            : checked((long)Math.Round(value * 1000, MidpointRounding.AwayFromZero));
        if (thousandths < 0) text.Append('-');
        thousandths = Math.Abs(thousandths);
        text.Append(CultureInfo.InvariantCulture, $"{thousandths / 1000}");
        var rest = (int)(thousandths % 1000);
        if (rest == 0) return text;
        text.Append('.').Append((char)('0' + rest / 100));
        if (rest % 100 == 0) return text;
        text.Append((char)('0' + rest / 10 % 10));
        return rest % 10 == 0 ? text : text.Append((char)('0' + rest % 10));
    }

    private static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (var rune in text.EnumerateRunes())
            switch (rune.Value)
            {
                case '&':
                    safe.Append("&amp;");
                    break;
                case '<':
                    safe.Append("&lt;");
                    break;
                case '>':
                    safe.Append("&gt;");
                    break;
                case '"':
                    safe.Append("&quot;");
                    break;
                case '\t' or '\n' or '\r':
                    safe.Append(' ');
                    break;
                case < 0x20 or 0xFFFE or 0xFFFF:
                    break;
                default:
                    safe.Append(rune);
                    break;
            }
        return safe.ToString();
    }
}
