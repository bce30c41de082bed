using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Layout;

/// <summary>A size of type, with what layout asks of it.</summary>
/// <param name="Face">The typeface.</param>
/// <param name="SizeMm">Type size (em), mm.</param>
/// <param name="Ink">Its colour.</param>
/// <param name="Weight">How heavy it is.</param>
internal sealed record Lettering(ITypeface Face, double SizeMm, Srgb Ink, TextWeight Weight = TextWeight.Regular)
{
    /// <summary>From one base line to the next, mm.</summary>
    internal double LineMm => SizeMm * 1.34;

    /// <summary>Height of a line's box, mm.</summary>
    internal double BoxMm => (Face.AscentEm + Face.DescentEm) * SizeMm;

    /// <summary>Width of a text, mm.</summary>
    internal double WidthMm(string text) => Face.WidthEm(text, Weight) * SizeMm;

    /// <summary>A text on its base line.</summary>
    internal Text On(string text, double xMm, double baseMm, TextAnchor anchor = TextAnchor.Start) =>
        new(text, new Point(xMm, baseMm), SizeMm, Ink) { Anchor = anchor, Weight = Weight };

    /// <summary>A text whose box begins at a height.</summary>
    internal Text Under(string text, double xMm, double topMm, TextAnchor anchor = TextAnchor.Start) =>
        On(text, xMm, topMm + Face.AscentEm * SizeMm, anchor);

    /// <summary>A text in the middle of a box that was measured for it.</summary>
    internal Text In(string text, Box box) => Under(text, box.Middle.XMm, box.TopMm, TextAnchor.Middle);

    /// <summary>A text with its capitals' middle at a height.</summary>
    internal Text Centred(string text, Point middle, TextAnchor anchor = TextAnchor.Middle) =>
        On(text, middle.XMm, middle.YMm + Face.CapitalEm * SizeMm / 2, anchor);
}
