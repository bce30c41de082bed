using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>What a part of a page is, for someone who hears it.</summary>
internal enum Tag
{
    H1, H2, H3, P, L, LI, Lbl, LBody, Table, THead, TBody, TR, TH, TD, Figure, Caption, Note,
}

/// <summary>One thing on a page, in reading order: ink at a place, or where a part begins or ends. Points from the top left corner, y down.</summary>
/// <remarks>Parts begin and end like brackets and may reach over pages. Lines, areas and rings are decoration and belong to no part.</remarks>
internal abstract record PageMark
{
    private PageMark() { }

    public abstract PageMark Moved(double right, double down);

    /// <summary>A part begins.</summary>
    public sealed record Open(Tag Tag) : PageMark
    {
        /// <summary>What a figure shows.</summary>
        public string? Alt { get; init; }

        /// <summary>Where a figure lies.</summary>
        public Area Area { get; init; }

        /// <summary>Whether a heading cell heads its row rather than its column.</summary>
        public bool HeadsRow { get; init; }

        public override PageMark Moved(double right, double down) => this with { Area = Area.Moved(right, down) };
    }

    /// <summary>The part opened last ends.</summary>
    public sealed record Close : PageMark
    {
        public static Close It { get; } = new();

        public override PageMark Moved(double right, double down) => this;
    }

    /// <summary>Text of one face on one base line.</summary>
    public sealed record Letters(string Text, double X, double Baseline, FaceStyle Face, double Size, Srgb Ink) : PageMark
    {
        /// <summary>Repeated or numbering text that is not read out: a foot, a heading row once more.</summary>
        public bool Decoration { get; init; }

        public override PageMark Moved(double right, double down) => this with { X = X + right, Baseline = Baseline + down };
    }

    /// <summary>An area of one ink.</summary>
    public sealed record Fill(Area Area, double Corner, Srgb Ink) : PageMark
    {
        public override PageMark Moved(double right, double down) => this with { Area = Area.Moved(right, down) };
    }

    /// <summary>The outline of a box with rounded corners.</summary>
    public sealed record Ring(Area Area, double Corner, double Width, Srgb Ink) : PageMark
    {
        public override PageMark Moved(double right, double down) => this with { Area = Area.Moved(right, down) };
    }

    /// <summary>A straight line.</summary>
    public sealed record Stroke(double X1, double Y1, double X2, double Y2, double Width, Srgb Ink) : PageMark
    {
        /// <summary>Whether it is broken into dashes.</summary>
        public bool Dashed { get; init; }

        public override PageMark Moved(double right, double down) =>
            this with { X1 = X1 + right, X2 = X2 + right, Y1 = Y1 + down, Y2 = Y2 + down };
    }

    /// <summary>A picture with its left top corner at a place, so many points to its millimetre.</summary>
    /// <param name="Picture">The picture.</param>
    /// <param name="X">Left edge of what is shown of it.</param>
    /// <param name="Y">Top edge.</param>
    /// <param name="PointsPerMm">Scale.</param>
    /// <param name="FromMm">Where what is shown begins, mm from the picture's left edge.</param>
    /// <param name="ToMm">Where what is shown ends, mm from the picture's left edge.</param>
    public sealed record Drawing(Picture Picture, double X, double Y, double PointsPerMm, double FromMm, double ToMm) : PageMark
    {
        /// <summary>Whether the words say all that it shows.</summary>
        public bool Decoration { get; init; }

        public override PageMark Moved(double right, double down) => this with { X = X + right, Y = Y + down };
    }
}

/// <summary>An upright rectangle on a page, points.</summary>
internal readonly record struct Area(double X, double Y, double Width, double Height)
{
    public double Right => X + Width;

    public double Bottom => Y + Height;

    public Area Moved(double right, double down) => this with { X = X + right, Y = Y + down };
}
