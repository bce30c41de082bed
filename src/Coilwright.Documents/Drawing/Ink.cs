using System.Collections.Immutable;
using Coilwright.Core.Colour;

namespace Coilwright.Documents.Drawing;

/// <summary>How a line ends.</summary>
public enum LineEnds
{
    /// <summary>Square off at its last point.</summary>
    Flat,

    /// <summary>Half round beyond its last point.</summary>
    Round,
}

/// <summary>The pen that a line is drawn with. Corners are always rounded.</summary>
/// <param name="Ink">Its colour.</param>
/// <param name="WidthMm">Thickness of the line, mm, above 0.</param>
public sealed record Pen(Srgb Ink, double WidthMm)
{
    /// <summary>Lengths of ink and gap by turns, mm; empty: a whole line.</summary>
    public ImmutableArray<double> DashesMm { get; init; } = [];

    /// <summary>How it ends; dashes end alike.</summary>
    public LineEnds Ends { get; init; } = LineEnds.Flat;
}

/// <summary>How a shape is inked: its area, its line, or both.</summary>
/// <param name="Fill">Colour of the area; null leaves it open.</param>
/// <param name="Pen">Pen of the line; null draws none.</param>
public sealed record Paint(Srgb? Fill, Pen? Pen)
{
    /// <summary>An area without a line.</summary>
    public static Paint Filled(Srgb ink) => new(ink, null);

    /// <summary>A line without an area.</summary>
    public static Paint Lined(Pen pen) => new(null, pen);

    /// <summary>A line without an area.</summary>
    public static Paint Lined(Srgb ink, double widthMm) => new(null, new Pen(ink, widthMm));
}
