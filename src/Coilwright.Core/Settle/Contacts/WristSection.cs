using Coilwright.Core.Geometry;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>The wrist as a smooth hard form: an ellipse across the arm that widens evenly along it.</summary>
/// <remarks>
/// <para>The arm runs along y, the top of the wrist faces z. Skin that gives way, bone and tendons are not in it.</para>
/// <para>How far a place is from it is told in its own cross-section; on a form that widens by a tenth the true distance is half a thousandth less.</para>
/// </remarks>
public sealed class WristSection
{
    private readonly double _x, _z, _growth;

    /// <summary>Makes it.</summary>
    /// <param name="girthMm">Round the wrist where y is 0, mm, above 0.</param>
    /// <param name="aspect">Its thickness over its width, above 0, up to 1.</param>
    /// <param name="taper">How much the girth grows over each millimetre of the way up y.</param>
    public WristSection(double girthMm, double aspect, double taper)
    {
        // Round an ellipse, by S. Ramanujan 1914: within 1e-6 of it down to a third as thick as wide.
        var h = Math.Pow((1 - aspect) / (1 + aspect), 2);
        var round = Math.PI * (1 + aspect) * (1 + 3 * h / (10 + Math.Sqrt(4 - 3 * h)));
        (_x, _growth) = (girthMm / round, taper / girthMm);
        _z = aspect * _x;
    }

    /// <summary>Half of its width where y is 0, mm.</summary>
    public double HalfWidthMm => _x;

    /// <summary>Half of its thickness where y is 0, mm.</summary>
    public double HalfThicknessMm => _z;

    /// <summary>How large it is at a place along the arm, as a share of what it is where y is 0.</summary>
    public double ScaleAt(double y) => 1 + _growth * y;

    /// <summary>How far outside of it a place is, mm; negative infinity inside.</summary>
    public double DistanceMm(Point3 place)
    {
        var scale = ScaleAt(place.Y);
        if (!(scale > 0)) return double.NegativeInfinity;
        return Nearest(place.X / scale, place.Z / scale) is { } n ? scale * n.Distance : double.NegativeInfinity;
    }

    /// <summary>No more than how far outside of it a place is, mm, for a fraction of the work.</summary>
    public double AtLeastMm(Point3 place)
    {
        var scale = ScaleAt(place.Y);
        if (!(scale > 0)) return double.NegativeInfinity;
        // How many times as large the ellipse through the place is grows for each millimetre by no more than one over the lesser half axis.
        double x = place.X / (scale * _x), z = place.Z / (scale * _z);
        return scale * Math.Min(_x, _z) * (Math.Sqrt(x * x + z * z) - 1);
    }

    /// <summary>The distance with its slope and its second slopes (xx, yy, zz, xy, yz, xz).</summary>
    /// <param name="place">A place outside.</param>
    /// <param name="slope">Away from the wrist.</param>
    /// <param name="second">How the slope changes: never falling, since the form is convex.</param>
    public double Distance(Point3 place, out Point3 slope, Span<double> second)
    {
        var scale = ScaleAt(place.Y);
        var (x, z) = (place.X / scale, place.Z / scale);
        var n = Nearest(x, z) ?? throw new ArgumentException("The place is inside.", nameof(place));
        // k D(x/k, z/k) with k growing along y.
        var bend = n.Curvature / (1 + n.Curvature * n.Distance);
        var (tx, tz) = (-n.Z, n.X);
        double xx = bend * tx * tx, xz = bend * tx * tz, zz = bend * tz * tz;
        slope = new Point3(n.X, _growth * (n.Distance - n.X * x - n.Z * z), n.Z);
        second[0] = xx / scale;
        second[2] = zz / scale;
        second[5] = xz / scale;
        second[3] = -_growth / scale * (xx * x + xz * z);
        second[4] = -_growth / scale * (xz * x + zz * z);
        second[1] = _growth * _growth / scale * (xx * x * x + 2 * xz * x * z + zz * z * z);
        return scale * n.Distance;
    }

    // The nearest point (x^2 X/(t + x^2), z^2 Z/(t + z^2)) lies on the ellipse; the equation for t falls and is convex, so Newton's steps from 0 never overshoot.
    private (double Distance, double X, double Z, double Curvature)? Nearest(double x, double z)
    {
        double a = _x * _x, b = _z * _z;
        double t = 0;
        for (var i = 0; i < 100; i++)
        {
            double u = _x * x / (t + a), v = _z * z / (t + b);
            var over = u * u + v * v - 1;
            if (i == 0 && !(over > 0)) return null;
            var by = over / (2 * (u * u / (t + a) + v * v / (t + b)));
            if (!(by > 1e-16 * (t + b))) break;
            t += by;
        }
        double px = a * x / (t + a), pz = b * z / (t + b);
        // The way out is along the ellipse's own normal, which keeps its digits where the place is nearly on it.
        var normal = Math.Sqrt(px * px / (a * a) + pz * pz / (b * b));
        return (t * normal, px / a / normal, pz / b / normal, 1 / (a * b * normal * normal * normal));
    }
}
