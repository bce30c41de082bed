namespace Coilwright.Core.Settle;

/// <summary>The circle nearest to points in a plane.</summary>
internal static class CircleFit
{
    /// <summary>Its middle: least squares of x^2 + y^2 = 2 a x + 2 b y + c (I. Kasa 1976, from memory).</summary>
    /// <param name="points">Three or more, not on one line.</param>
    public static (double X, double Y) CentreOf(IReadOnlyList<(double X, double Y)> points)
    {
        double mx = 0, my = 0;
        foreach (var (x, y) in points) (mx, my) = (mx + x / points.Count, my + y / points.Count);
        double xx = 0, xy = 0, yy = 0, xr = 0, yr = 0;
        foreach (var p in points)
        {
            double x = p.X - mx, y = p.Y - my, r = x * x + y * y;
            (xx, xy, yy, xr, yr) = (xx + x * x, xy + x * y, yy + y * y, xr + x * r, yr + y * r);
        }
        var by = 2 * (xx * yy - xy * xy);
        return (mx + (xr * yy - yr * xy) / by, my + (yr * xx - xr * xy) / by);
    }
}
