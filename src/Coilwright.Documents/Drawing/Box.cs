namespace Coilwright.Documents.Drawing;

/// <summary>An upright rectangle in a picture, mm. Its edges belong to it. <c>default</c> is the point at the origin.</summary>
/// <param name="LeftMm">Left edge.</param>
/// <param name="TopMm">Top edge: the smaller y, since y runs down.</param>
/// <param name="RightMm">Right edge, not left of <paramref name="LeftMm"/>.</param>
/// <param name="BottomMm">Bottom edge, not above <paramref name="TopMm"/>.</param>
public readonly record struct Box(double LeftMm, double TopMm, double RightMm, double BottomMm)
{
    /// <summary>Width, mm.</summary>
    public double WidthMm => RightMm - LeftMm;

    /// <summary>Height, mm.</summary>
    public double HeightMm => BottomMm - TopMm;

    /// <summary>Its middle.</summary>
    public Point Middle => new((LeftMm + RightMm) / 2, (TopMm + BottomMm) / 2);

    /// <summary>The rectangle from a corner and a size.</summary>
    public static Box At(double leftMm, double topMm, double widthMm, double heightMm) => new(leftMm, topMm, leftMm + widthMm, topMm + heightMm);

    /// <summary>The smallest box round some points; null when there are none.</summary>
    public static Box? Round(IEnumerable<Point> points)
    {
        Box? box = null;
        foreach (var p in points)
            box = box is { } b
                ? new Box(Math.Min(b.LeftMm, p.XMm), Math.Min(b.TopMm, p.YMm), Math.Max(b.RightMm, p.XMm), Math.Max(b.BottomMm, p.YMm))
                : new Box(p.XMm, p.YMm, p.XMm, p.YMm);
        return box;
    }

    /// <summary>The smallest box round both.</summary>
    public Box With(Box other) => new(Math.Min(LeftMm, other.LeftMm), Math.Min(TopMm, other.TopMm), Math.Max(RightMm, other.RightMm),
        Math.Max(BottomMm, other.BottomMm));

    /// <summary>The box grown on all four sides; shrunk when negative.</summary>
    public Box Grown(double mm) => new(LeftMm - mm, TopMm - mm, RightMm + mm, BottomMm + mm);

    /// <summary>The box so far to the right and down.</summary>
    public Box Moved(double rightMm, double downMm) => new(LeftMm + rightMm, TopMm + downMm, RightMm + rightMm, BottomMm + downMm);

    /// <summary>Whether the two share some area; boxes that only touch do not.</summary>
    public bool Overlaps(Box other) =>
        LeftMm < other.RightMm && other.LeftMm < RightMm && TopMm < other.BottomMm && other.TopMm < BottomMm;

    /// <summary>Whether the other lies wholly in this one.</summary>
    public bool Contains(Box other) =>
        LeftMm <= other.LeftMm && TopMm <= other.TopMm && RightMm >= other.RightMm && BottomMm >= other.BottomMm;
}
