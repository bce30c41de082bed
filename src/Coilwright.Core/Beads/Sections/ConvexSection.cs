namespace Coilwright.Core.Beads.Sections;

/// <summary>A bead cut through in the plane of the coil: a convex figure that is its own mirror image left and right.</summary>
/// <remarks>
/// <para>x runs along the hole from the bead's middle, y away from the wrist from the hole's centre; millimetres. Told by its support: the
/// furthest point in the direction psi, an angle from +x towards +y, radians, in (-pi/2, pi/2).</para>
/// <para>Two neighbours are kept apart by a line. A line that touches this figure on its right with normal psi runs at the signed distance
/// <c>q = h(psi) + R sin(psi)</c> from the coil's centre, which lies at (0, -R). <see cref="LeanRad"/> turns that round: it is how far the
/// normal leans inwards, <c>-psi</c>, for a given q. Neighbours stand at the least sum of their leans over all lines
/// (docs/theory/curve-true-length.md).</para>
/// </remarks>
public abstract class ConvexSection
{
    /// <summary>The furthest point in direction psi, mm.</summary>
    public abstract (double X, double Y) SupportPoint(double psi);

    /// <summary>Lean of the touching line that passes the coil's centre at the signed distance q, radians.</summary>
    /// <param name="qMm">Distance of the line from the coil's centre along its normal, mm. Below <c>-(R + LowestMm)</c> no line touches; the answer
    /// is then that of the line along the figure's underside, a quarter turn.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm; more than the figure's reach towards the coil's centre.</param>
    public virtual double LeanRad(double qMm, double radiusMm)
    {
        // F(psi) = h(psi) + R sin(psi) - q rises from psi = -pi/2 until the touching point is the one furthest from the coil's centre. Newton, which
        // is near exact because F' is near R; kept between an end known to be too low and one known to be too high, because at a corner of
        // the figure F' jumps, and beyond the furthest point it is negative.
        double low = -Math.PI / 2, high = Math.PI / 2;
        var psi = Math.Asin(Math.Clamp((qMm - HalfLengthMm) / radiusMm, -0.99, 0.99));
        for (var i = 0; i < 100; i++)
        {
            var (f, slope) = Touching(psi, radiusMm);
            f -= qMm;
            var step = f / slope;
            if (slope > 0 && Math.Abs(step) < 1e-14) break;
            if (f > 0 || slope <= 0) high = psi; else low = psi;
            var next = psi - step;
            if (!(slope > 0 && next > low && next < high))
            {
                next = 0.5 * (low + high);
                if (high - low < 1e-14) break;
            }
            psi = next;
        }
        return -psi;
    }

    /// <summary>How far along the line of <see cref="LeanRad"/> the touching point lies, mm from the foot of the coil's centre.</summary>
    /// <remarks>The lean falls by 1 / that distance per millimetre of q, which tells which way to move the line between two neighbours.</remarks>
    internal virtual double AlongMm(double qMm, double radiusMm) => Touching(-LeanRad(qMm, radiusMm), radiusMm).Slope;

    /// <summary>Half length along the hole, mm.</summary>
    public double HalfLengthMm => SupportPoint(0).X;

    /// <summary>Distances from the coil's centre of the lines along the figure's flat sides on the right, mm: most neighbours touch it there.</summary>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    /// <param name="flats">Takes them; as many as fit.</param>
    /// <returns>How many there are.</returns>
    internal virtual int Flats(double radiusMm, Span<double> flats)
    {
        flats[0] = HalfLengthMm;
        return 1;
    }

    /// <summary>Height of the lowest point over the hole's centre, mm; below the hole it is negative.</summary>
    public double LowestMm => SupportPoint(-Math.PI / 2).Y;

    /// <summary>Height of the highest point over the hole's centre, mm.</summary>
    public double HighestMm => SupportPoint(Math.PI / 2).Y;

    /// <summary>Distance of the furthest point from the coil's centre, mm.</summary>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    public double FurthestMm(double radiusMm)
    {
        // Where the touching line stands square on the ray from the coil's centre, F' passes through nought.
        double low = 0, high = Math.PI / 2;
        for (var i = 0; i < 60; i++)
        {
            var psi = 0.5 * (low + high);
            if (Touching(psi, radiusMm).Slope > 0) low = psi; else high = psi;
        }
        var (x, y) = SupportPoint(low);
        return Math.Sqrt(x * x + (y + radiusMm) * (y + radiusMm));
    }

    /// <summary>Distance of the touching line of normal psi from the coil's centre, and the touching point's place along it.</summary>
    private (double F, double Slope) Touching(double psi, double radiusMm)
    {
        var (sin, cos) = Math.SinCos(psi);
        var (x, y) = SupportPoint(psi);
        return (x * cos + (y + radiusMm) * sin, (y + radiusMm) * cos - x * sin);
    }
}

/// <summary>A figure with straight sides, told by the corners of its right half.</summary>
public sealed class PolygonSection : ConvexSection
{
    private readonly (double X, double Y)[] _corners;

    /// <summary>Makes it from the corners with x of 0 or more, mm; any order.</summary>
    public PolygonSection(params (double X, double Y)[] corners) => _corners = [.. corners.Distinct().OrderBy(c => c.Y)];

    internal override int Flats(double radiusMm, Span<double> flats)
    {
        // From the lowest corner to the highest the right side is one chain; a side's line leaves the coil's centre at the cross product.
        var count = Math.Min(_corners.Length - 1, flats.Length);
        for (var i = 0; i < count; i++) flats[i] = LineMm(_corners[i], _corners[i + 1], radiusMm);
        return count;
    }

    internal static double LineMm((double X, double Y) below, (double X, double Y) above, double radiusMm)
    {
        double dx = above.X - below.X, dy = above.Y - below.Y;
        return (below.X * dy - (below.Y + radiusMm) * dx) / Math.Sqrt(dx * dx + dy * dy);
    }

    /// <inheritdoc/>
    public override (double X, double Y) SupportPoint(double psi)
    {
        var (sin, cos) = Math.SinCos(psi);
        var best = _corners[0];
        var most = double.NegativeInfinity;
        foreach (var corner in _corners)
        {
            var reach = corner.X * cos + corner.Y * sin;
            if (reach > most) (most, best) = (reach, corner);
        }
        return best;
    }

    /// <inheritdoc/>
    public override double LeanRad(double qMm, double radiusMm) => CornerTouch.Of(_corners, qMm, radiusMm).LeanRad;

    internal override double AlongMm(double qMm, double radiusMm) => CornerTouch.Of(_corners, qMm, radiusMm).AlongMm;
}

/// <summary>The touching line of a figure that it can only touch at corners.</summary>
/// <param name="AlongMm">How far along the line the corner lies, mm from the foot of the coil's centre.</param>
/// <param name="Sin">Sine of the line's lean, times the square of the corner's distance from the coil's centre.</param>
/// <param name="Cos">Cosine of the line's lean, times the same.</param>
internal readonly record struct CornerTouch(double AlongMm, double Sin, double Cos)
{
    // A line further out than every corner clears them all however it leans.
    private static readonly CornerTouch None = new(0, double.NegativeInfinity, 0);

    /// <summary>The lean, radians; minus infinity where the line clears every corner.</summary>
    public double LeanRad => double.IsInfinity(Sin) ? Sin : Math.Atan2(Sin, Cos);

    /// <summary>Finds it.</summary>
    /// <param name="corners">The corners, mm.</param>
    /// <param name="qMm">The line's distance from the coil's centre, mm.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    public static CornerTouch Of(ReadOnlySpan<(double X, double Y)> corners, double qMm, double radiusMm)
    {
        // For one corner at polar radius rho and polar angle delta: rho sin(psi + delta) = q. The line must clear every corner, so the most leans.
        // The leans of two corners are less than half a turn apart: the sine of their difference tells which is more, without the angles.
        CornerTouch? most = null;
        foreach (var (x, y) in corners)
        {
            var up = y + radiusMm;
            var square = x * x + up * up;
            if (qMm > 0 && qMm * qMm > square) continue;
            var foot = Math.Sqrt(Math.Max(0, square - qMm * qMm));
            // delta - asin(q / rho), as sine and cosine of the difference of both angles, times rho squared.
            var touch = new CornerTouch(foot, x * foot - up * qMm, up * foot + x * qMm);
            if (most is not { } m || touch.Sin * m.Cos > touch.Cos * m.Sin) most = touch;
        }
        return most ?? None;
    }
}

/// <summary>An ellipse, stretched across the hole by a straight piece where it has flat ends: an oval, a round, a smooth rondelle, a seed bead.</summary>
public sealed class RoundedSection : ConvexSection
{
    private readonly double _halfLength, _halfHeight, _halfFlat, _centreY;

    /// <summary>Makes it.</summary>
    /// <param name="halfLengthMm">Half length along the hole, mm.</param>
    /// <param name="halfThicknessMm">Half thickness, flat piece included, mm.</param>
    /// <param name="halfFlatMm">Half of the flat face at each end, mm; 0 for none.</param>
    /// <param name="centreYMm">Height of the bead's middle over the hole's centre, mm.</param>
    public RoundedSection(double halfLengthMm, double halfThicknessMm, double halfFlatMm, double centreYMm)
    {
        _halfLength = halfLengthMm;
        _halfHeight = halfThicknessMm - halfFlatMm;
        _halfFlat = halfFlatMm;
        _centreY = centreYMm;
    }

    /// <inheritdoc/>
    public override (double X, double Y) SupportPoint(double psi)
    {
        var (sin, cos) = Math.SinCos(psi);
        var along = _halfLength * cos;
        var up = _halfHeight * sin;
        var norm = Math.Sqrt(along * along + up * up);
        var flat = Math.Sign(sin) * _halfFlat;
        return norm == 0 ? (_halfLength, _centreY + flat) : (_halfLength * along / norm, _centreY + flat + _halfHeight * up / norm);
    }

    /// <inheritdoc/>
    public override double LeanRad(double qMm, double radiusMm) => Touch(qMm, radiusMm).LeanRad;

    internal override double AlongMm(double qMm, double radiusMm) => Touch(qMm, radiusMm).AlongMm;

    // A line nearer than the flat end touches below it.
    private EllipseTouch Touch(double qMm, double radiusMm) =>
        EllipseTouch.Of(_halfLength, _halfHeight, radiusMm + _centreY + (qMm < _halfLength ? -_halfFlat : _halfFlat), qMm);
}

/// <summary>The touching line of an ellipse that lies along the wire.</summary>
/// <param name="AlongMm">How far along the line the touching point lies, mm from the foot of the coil's centre.</param>
/// <param name="Sin">Sine of the line's normal psi.</param>
internal readonly record struct EllipseTouch(double AlongMm, double Sin)
{
    /// <summary>The lean, radians.</summary>
    public double LeanRad => -Math.Asin(Sin);

    /// <summary>Finds it.</summary>
    /// <param name="halfLengthMm">Half length of the ellipse along the wire, mm.</param>
    /// <param name="halfHeightMm">Half its height, mm.</param>
    /// <param name="upMm">Height of its middle over the coil's centre, mm; more than <paramref name="halfHeightMm"/>.</param>
    /// <param name="qMm">The line's distance from the coil's centre, mm.</param>
    public static EllipseTouch Of(double halfLengthMm, double halfHeightMm, double upMm, double qMm)
    {
        // With p and r the halves and d the height, sqrt(p^2 cos^2 + r^2 sin^2) + d sin = q: squared it is a quadratic in the sine. A line as far out as
        // the ellipse is long stands upright; one that is nearer leans inwards.
        double p = halfLengthMm * halfLengthMm, r = halfHeightMm * halfHeightMm;
        var k = upMm * upMm + p - r;
        var sin = (qMm * upMm - Math.Sqrt(Math.Max(0, k * p + qMm * qMm * (r - p)))) / k;
        sin = qMm < halfLengthMm ? Math.Clamp(sin, -1, 0) : Math.Clamp(sin, 0, 1);
        var cos = Math.Sqrt(1 - sin * sin);
        var norm = Math.Sqrt(p * cos * cos + r * sin * sin);
        return new EllipseTouch(norm == 0 ? upMm * cos - halfLengthMm * sin : upMm * cos + (r - p) * sin * cos / norm, sin);
    }
}

/// <summary>A barrel: its side bulges as a parabola between two flat ends.</summary>
/// <param name="halfLengthMm">Half length along the hole, mm.</param>
/// <param name="halfThicknessMm">Half thickness at the middle, mm.</param>
/// <param name="halfFlatMm">Half of the flat face at each end, mm.</param>
/// <param name="centreYMm">Height of the bead's middle over the hole's centre, mm.</param>
public sealed class BarrelSection(double halfLengthMm, double halfThicknessMm, double halfFlatMm, double centreYMm) : ConvexSection
{
    /// <inheritdoc/>
    public override (double X, double Y) SupportPoint(double psi)
    {
        var (sin, cos) = Math.SinCos(psi);
        var bulge = (halfThicknessMm - halfFlatMm) / (halfLengthMm * halfLengthMm);
        var steep = 2 * bulge * Math.Abs(sin);
        var x = steep * halfLengthMm <= cos ? halfLengthMm : cos / steep;
        return (x, centreYMm + Math.Sign(sin) * (halfThicknessMm - bulge * x * x));
    }
}

/// <summary>A flat back with a dome over it: a focal seen from its side.</summary>
/// <param name="halfLengthMm">Half length of the back, mm.</param>
/// <param name="heightMm">Height of the dome, mm.</param>
/// <param name="backYMm">Height of the back over the hole's centre, mm; below the hole it is negative.</param>
public sealed class DomeSection(double halfLengthMm, double heightMm, double backYMm) : ConvexSection
{
    /// <inheritdoc/>
    public override (double X, double Y) SupportPoint(double psi)
    {
        if (psi <= 0) return (halfLengthMm, backYMm);
        var (sin, cos) = Math.SinCos(psi);
        var along = halfLengthMm * cos;
        var up = heightMm * sin;
        var norm = Math.Sqrt(along * along + up * up);
        return (halfLengthMm * along / norm, backYMm + heightMm * up / norm);
    }

    /// <inheritdoc/>
    public override double LeanRad(double qMm, double radiusMm) => qMm < halfLengthMm ? Back(qMm, radiusMm).LeanRad : Dome(qMm, radiusMm).LeanRad;

    internal override double AlongMm(double qMm, double radiusMm) => qMm < halfLengthMm ? Back(qMm, radiusMm).AlongMm : Dome(qMm, radiusMm).AlongMm;

    // A line that leans inwards touches the back's corner, one that leans outwards the dome.
    private CornerTouch Back(double qMm, double radiusMm) => CornerTouch.Of([(halfLengthMm, backYMm)], qMm, radiusMm);

    private EllipseTouch Dome(double qMm, double radiusMm) => EllipseTouch.Of(halfLengthMm, heightMm, radiusMm + backYMm, qMm);
}

/// <summary>A curved tube of its own curve, at most half a circle: two end faces and an outside of one arc. Its inside is taken as closed, since no
/// neighbour fits in there.</summary>
public sealed class CurvedTubeSection : ConvexSection
{
    private readonly double _turn, _curveRadius, _outside;
    private readonly (double X, double Y)[] _corners;

    /// <summary>Makes it.</summary>
    /// <param name="lengthMm">Length along the tube's middle, mm.</param>
    /// <param name="curveRadiusMm">Radius of that curve, mm.</param>
    /// <param name="bearingReachMm">From the hole's centre to the tube's inner side, mm.</param>
    /// <param name="outerReachMm">From the hole's centre to its outer side, mm.</param>
    public CurvedTubeSection(double lengthMm, double curveRadiusMm, double bearingReachMm, double outerReachMm)
    {
        _turn = lengthMm / (2 * curveRadiusMm);
        _curveRadius = curveRadiusMm;
        _outside = curveRadiusMm + outerReachMm;
        _corners = [EndAt(curveRadiusMm - bearingReachMm), EndAt(_outside)];

        (double, double) EndAt(double at) => (at * Math.Sin(_turn), at * Math.Cos(_turn) - curveRadiusMm);
    }

    /// <inheritdoc/>
    public override (double X, double Y) SupportPoint(double psi)
    {
        if (psi >= Math.PI / 2 - _turn)
        {
            var (sin, cos) = Math.SinCos(psi);
            return (_outside * cos, _outside * sin - _curveRadius);
        }
        // The end face is square to (cos turn, -sin turn): above that normal its outer corner is the furthest, below it the inner one.
        return psi >= -_turn ? _corners[1] : _corners[0];
    }

    internal override int Flats(double radiusMm, Span<double> flats)
    {
        flats[0] = PolygonSection.LineMm(_corners[0], _corners[1], radiusMm);
        return 1;
    }

    /// <inheritdoc/>
    public override double LeanRad(double qMm, double radiusMm)
    {
        var lean = CornerTouch.Of(_corners, qMm, radiusMm).LeanRad;
        return OnEndFace(lean) ? lean : base.LeanRad(qMm, radiusMm);
    }

    internal override double AlongMm(double qMm, double radiusMm)
    {
        var touch = CornerTouch.Of(_corners, qMm, radiusMm);
        return OnEndFace(touch.LeanRad) ? touch.AlongMm : base.AlongMm(qMm, radiusMm);
    }

    private bool OnEndFace(double leanRad) => -leanRad < Math.PI / 2 - _turn;
}
