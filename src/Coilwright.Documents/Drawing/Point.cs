namespace Coilwright.Documents.Drawing;

/// <summary>A place in a picture: millimetres right and down from its top left corner.</summary>
/// <param name="XMm">To the right, mm.</param>
/// <param name="YMm">Downwards, mm.</param>
public readonly record struct Point(double XMm, double YMm)
{
    /// <summary>The place so far to the right and down from this one.</summary>
    public Point Moved(double rightMm, double downMm) => new(XMm + rightMm, YMm + downMm);

    /// <summary>The place a share of the way to another: 0 is here, 1 is there.</summary>
    public Point Towards(Point other, double share) => new(XMm + (other.XMm - XMm) * share, YMm + (other.YMm - YMm) * share);

    /// <summary>Straight distance, mm.</summary>
    public double DistanceMm(Point other) => Math.Sqrt((XMm - other.XMm) * (XMm - other.XMm) + (YMm - other.YMm) * (YMm - other.YMm));
}
