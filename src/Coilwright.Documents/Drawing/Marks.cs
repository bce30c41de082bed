using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Documents.Rasters;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Drawing;

/// <summary>One thing drawn in a picture. Later marks lie over earlier ones.</summary>
/// <remarks>Says what is drawn, not how it is stored: canvases turn it into SVG or PDF. Plain records, compared by value where their parts are.</remarks>
public abstract record Mark
{
    private protected Mark() { }

    /// <summary>Name of this one mark, unique in its picture, for a page that wants to find it; null for most.</summary>
    public string? Id { get; init; }

    /// <summary>Names of its sorts, apart by spaces, for a page that wants to find all of a sort; null for most.</summary>
    public string? Class { get; init; }

    /// <summary>What it is, in words: shown when pointed at and read aloud; null for most.</summary>
    public string? Title { get; init; }

    /// <summary>The bead that it shows or names, or the first of the group that it names, by its place in the order from 0, for a page that draws anew only what changed; null for what belongs
    /// to no bead. Not written into a file.</summary>
    public int? OfBead { get; init; }

    /// <summary>Values a page may want of it, by name (<c>[a-z][a-z0-9-]*</c>): the bead's place in the order, its turn.</summary>
    public ImmutableSortedDictionary<string, string> Data { get; init; } = ImmutableSortedDictionary<string, string>.Empty;

    /// <summary>Where it stands, and what it is when it stands at the picture's corner: of two that differ only in their place, the second is the same.</summary>
    public (Point At, Mark Mark) Apart() => this switch
    {
        Stamp stamp => (stamp.At, stamp with { At = default }),
        Text text => (text.At, text with { At = default }),
        Ellipse ellipse => (ellipse.Middle, ellipse with { Middle = default }),
        Circle circle => (circle.Middle, circle with { Middle = default }),
        Line line => (line.From, line with { From = default, To = line.To.Moved(-line.From.XMm, -line.From.YMm) }),
        Drawn { Path.Steps: [{ To: var at }, ..] } drawn => (at, drawn with { Path = drawn.Path.Moved(-at.XMm, -at.YMm) }),
        _ => (default, this),
    };
}

/// <summary>Marks that belong together, moved and clipped as one.</summary>
/// <param name="Marks">The marks, the lowest first.</param>
public sealed record Group(ImmutableArray<Mark> Marks) : Mark
{
    /// <summary>How far the marks are moved to the right, mm.</summary>
    public double MoveRightMm { get; init; }

    /// <summary>How far the marks are moved down, mm.</summary>
    public double MoveDownMm { get; init; }

    /// <summary>Only what lies inside this outline is drawn; moved with the marks. Null draws all.</summary>
    public Outline? Clip { get; init; }
}

/// <summary>A drawing that is used many times in a picture: drawn once round its own origin.</summary>
/// <param name="Name">Name, unique in its picture, <c>[a-z][a-z0-9-]*</c>.</param>
/// <param name="Marks">Its marks; none of them has an id.</param>
public sealed record Symbol(string Name, ImmutableArray<Mark> Marks)
{
    /// <summary>Symbols are told apart by name: two of one name in one picture must be the same one.</summary>
    public bool Equals(Symbol? other) => other is not null && Name == other.Name;

    /// <inheritdoc/>
    public override int GetHashCode() => Name.GetHashCode(StringComparison.Ordinal);
}

/// <summary>A symbol set down once.</summary>
/// <param name="Symbol">The symbol.</param>
/// <param name="At">Where its origin comes to lie.</param>
public sealed record Stamp(Symbol Symbol, Point At) : Mark;

/// <summary>A shape with area and line. Every one of them knows its <see cref="Outline"/>, so a canvas need not know them apart.</summary>
/// <param name="Paint">How it is inked.</param>
public abstract record Shape(Paint Paint) : Mark
{
    /// <summary>Its outline.</summary>
    public abstract Outline Outline { get; }
}

/// <summary>Any outline.</summary>
public sealed record Drawn(Outline Path, Paint Paint) : Shape(Paint)
{
    /// <inheritdoc/>
    public override Outline Outline => Path;
}

/// <summary>A straight line.</summary>
public sealed record Line(Point From, Point To, Pen Pen) : Shape(Paint.Lined(Pen))
{
    /// <inheritdoc/>
    public override Outline Outline => Outline.Line(From, To);
}

/// <summary>An upright rectangle, with rounded corners where a radius is given.</summary>
public sealed record Rectangle(Box Box, Paint Paint) : Shape(Paint)
{
    /// <summary>Radius of its corners, mm; at most half the shorter side is used.</summary>
    public double CornerMm { get; init; }

    /// <inheritdoc/>
    public override Outline Outline => Outline.Rectangle(Box, CornerMm);
}

/// <summary>A circle.</summary>
public sealed record Circle(Point Middle, double RadiusMm, Paint Paint) : Shape(Paint)
{
    /// <inheritdoc/>
    public override Outline Outline => Outline.Ellipse(Middle, RadiusMm, RadiusMm);
}

/// <summary>An upright ellipse by its half measures.</summary>
public sealed record Ellipse(Point Middle, double HalfWidthMm, double HalfHeightMm, Paint Paint) : Shape(Paint)
{
    /// <inheritdoc/>
    public override Outline Outline => Outline.Ellipse(Middle, HalfWidthMm, HalfHeightMm);
}

/// <summary>Straight lines through points, closed.</summary>
public sealed record Polygon(ImmutableArray<Point> Points, Paint Paint) : Shape(Paint)
{
    /// <inheritdoc/>
    public override Outline Outline => Outline.Through(Points);
}

/// <summary>A picture made of pixels, drawn into a box that has its shape.</summary>
/// <param name="Raster">The picture.</param>
/// <param name="Box">Where it lies.</param>
public sealed record LaidRaster(Raster Raster, Box Box) : Mark;

/// <summary>Which part of a line of text stands at its point.</summary>
public enum TextAnchor
{
    /// <summary>Its start; left, since text runs from left to right.</summary>
    Start,

    /// <summary>Its middle.</summary>
    Middle,

    /// <summary>Its end.</summary>
    End,
}

/// <summary>One line of text, from left to right.</summary>
/// <param name="Content">The words.</param>
/// <param name="At">The anchor on the base line, which letters stand on.</param>
/// <param name="SizeMm">Type size (em), mm: 1 mm is 2.83 points.</param>
/// <param name="Ink">Its colour.</param>
public sealed record Text(string Content, Point At, double SizeMm, Srgb Ink) : Mark
{
    /// <summary>Which part of it stands at <see cref="At"/>.</summary>
    public TextAnchor Anchor { get; init; }

    /// <summary>How heavy it is.</summary>
    public TextWeight Weight { get; init; }

    /// <summary>The box that it needs in a typeface: never smaller than what is inked, save for stacked accents.</summary>
    public Box Box(ITypeface typeface)
    {
        var width = typeface.WidthEm(Content, Weight) * SizeMm;
        var left = Anchor switch
        {
            TextAnchor.Start => At.XMm,
            TextAnchor.Middle => At.XMm - width / 2,
            _ => At.XMm - width,
        };
        return new Box(left, At.YMm - typeface.AscentEm * SizeMm, left + width, At.YMm + typeface.DescentEm * SizeMm);
    }
}
