using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;

namespace Coilwright.Core.Scenes;

/// <summary>The skin of a bead whose profile is swept along its hole: outside, end faces, hole.</summary>
internal sealed class Turned(Bead bead, Fineness fineness, Skin skin)
{
    private readonly BeadProfile _profile = bead.Shape.Profile(bead);
    private readonly bool _isBox = bead.Shape.Profile(bead).AreaFactor >= 1;
    private readonly bool _isCut = bead.Shape.Profile(bead).Look == SurfaceLook.Faceted;
    private readonly Func<Point3, Srgb>? _colour = BeadMesher.Bands(bead);

    private int Spokes => _isCut ? BeadMesher.Facets : fineness.Spokes;

    internal void Make()
    {
        var hole = HoleMm();
        var end = hole is { } h ? EndAt(h.Across, h.Up) : 1;
        var stations = Stations(end);
        Outside(stations);
        var (across, up) = (HalfWidthMm(end), HalfThickMm(end));
        var x = end * bead.LengthMm / 2;
        // Where the end comes to the hole's own rim there is no face, and a hole in a flattened end is flattened as that is.
        var isRim = hole is { } rim && Math.PI * across * up * (_isBox ? 4 / Math.PI : 1) <= Math.PI * rim.Across * rim.Up * (1 + 1e-6);
        var (holeAcross, holeUp) = isRim ? (across, up) : hole is { } r ? (r.Across, r.Up) : (0, 0);
        if (across > 0 && !isRim)
        {
            Face(x, (across, up), (holeAcross, holeUp), 1);
            Face(-x, (across, up), (holeAcross, holeUp), -1);
        }
        if (holeAcross == 0) return;
        Corner[] Inside(double at) => BeadMesher.Ring(Spokes, turn =>
        {
            var (sin, cos) = Math.SinCos(turn);
            return new Corner(new Point3(at, holeUp * cos, holeAcross * sin), new Point3(0, -cos / holeUp, -sin / holeAcross));
        });
        // A tube that is bent has as many bands inside as outside.
        skin.Span([.. stations.Reverse().Select(u => Inside(u / end * x))], _colour);
    }

    // Half measures of the hole: what lies inside the wall of a tube that is open from end to end, where that is more.
    private (double Across, double Up)? HoleMm()
    {
        if (!BeadMesher.HasHole(bead)) return null;
        var bore = bead.BoreMm!.Value / 2;
        return bead.Description.WallMm is { } wall && bead.Shape.HollowRunsThrough
            ? (Math.Max(bore, bead.WidthMm / 2 - wall), Math.Max(bore, bead.ThicknessMm / 2 - wall))
            : (bore, bore);
    }

    // Where the bead has become no larger than its hole, as its volume counts it.
    private double EndAt(double across, double up)
    {
        double Left(double u) => _profile.AreaFactor * 4 * HalfWidthMm(u) * HalfThickMm(u) - Math.PI * across * up;
        if (Left(1) >= 0) return 1;
        double from = 0, to = 1;
        for (var i = 0; i < 60; i++)
        {
            var u = 0.5 * (from + to);
            if (Left(u) > 0) from = u; else to = u;
        }
        return from;
    }

    private double HalfWidthMm(double u) => bead.WidthMm / 2 * Math.Max(0, _profile.Width(u));

    private double HalfThickMm(double u) => bead.ThicknessMm / 2 * Math.Max(0, _profile.Thickness(u));

    private double[] Stations(double end)
    {
        var isStraight = HalfWidthMm(0.5) == HalfWidthMm(0) && HalfThickMm(0.5) == HalfThickMm(0) && HalfWidthMm(1) == HalfWidthMm(0);
        if (_isCut) return [-end, 0, end];
        var bands = isStraight ? bead.Shape is CurvedTube ? Math.Max(2, (int)Math.Ceiling(bead.LengthMm / 1.5 * fineness.Rings / 16)) : 1 : fineness.Rings;
        // Bands of colour begin where they begin.
        if (_colour is not null && isStraight) bands = bead.Colours.Length * Math.Max(1, bands / bead.Colours.Length);
        return [.. Enumerable.Range(0, bands + 1).Select(i => isStraight ? end * (2.0 * i / bands - 1) : end * Math.Sin(Math.PI * ((double)i / bands - 0.5)))];
    }

    private void Outside(double[] stations)
    {
        if (_isCut)
        {
            skin.Facets([.. stations.Select(u => Loop(u, turn => default))], _colour is null ? null : Mottled);
            return;
        }
        if (!_isBox)
        {
            var rings = stations.Select(Round).ToArray();
            if (_colour is null) skin.Span(rings);
            else
                // Each band by itself, so that its colour ends sharply.
                for (var i = 0; i + 1 < rings.Length; i++)
                {
                    var shade = _colour(new Point3((stations[i] + stations[i + 1]) / 4 * bead.LengthMm, 0, 0));
                    skin.Span([rings[i], rings[i + 1]], _ => shade);
                }
            return;
        }
        // Four sides, each smooth along the hole.
        var quarter = Spokes / 4;
        for (var side = 0; side < 4; side++)
        {
            var from = quarter / 2 + side * quarter;
            var (lean, isTop) = (side % 2 == 1 ? Math.Sign(Math.Cos((side + 1) * Math.PI / 2)) : Math.Sign(Math.Sin((side + 1) * Math.PI / 2)), side % 2 == 1);
            skin.Span([.. stations.Select(u =>
            {
                var (dx, dAcross, dUp) = Slope(u);
                var normal = isTop ? new Point3(-dUp, dx * lean, 0) : new Point3(-dAcross, 0, dx * lean);
                var loop = Loop(u, _ => normal);
                return Enumerable.Range(from, quarter + 1).Select(i => loop[i % Spokes]).ToArray();
            })], _colour);
        }
    }

    private Srgb Mottled(Point3 at)
    {
        var turn = (int)Math.Floor((Math.Atan2(at.Z, at.Y) / (2 * Math.PI) + 1) * BeadMesher.Facets) + (at.X > 0 ? 1 : 0);
        return bead.Colours[turn % bead.Colours.Length];
    }

    private Corner[] Round(double u)
    {
        double across = HalfWidthMm(u), up = HalfThickMm(u);
        if (across <= 0 || up <= 0) return BeadMesher.Ring(Spokes, _ => new Corner(new Point3(u * bead.LengthMm / 2, 0, 0), new Point3(Math.Sign(u), 0, 0)));
        var (dx, dAcross, dUp) = Slope(u);
        // The way round crossed with the way along.
        return Loop(u, turn =>
        {
            var (sin, cos) = Math.SinCos(turn);
            return new Point3(-(up * dAcross * sin * sin + across * dUp * cos * cos), across * cos * dx, up * sin * dx);
        });
    }

    // By what the profile changes over a hair along the hole.
    private (double Dx, double DAcross, double DUp) Slope(double u)
    {
        double a = Math.Max(-1, u - 1e-5), b = Math.Min(1, u + 1e-5);
        return ((b - a) * bead.LengthMm / 2, HalfWidthMm(b) - HalfWidthMm(a), HalfThickMm(b) - HalfThickMm(a));
    }

    private Corner[] Loop(double u, Func<double, Point3> normal) =>
        BeadMesher.Ring(Spokes, turn => new Corner(OnRim(turn, u * bead.LengthMm / 2, HalfWidthMm(u), HalfThickMm(u)), normal(turn)));

    // A place on the edge of a cross-section: an ellipse, or where a ray meets a rectangle.
    private Point3 OnRim(double turn, double x, double across, double up)
    {
        var (sin, cos) = Math.SinCos(turn);
        var reach = _isBox ? 1 / Math.Max(Math.Abs(sin), Math.Abs(cos)) : 1;
        return new Point3(x, up * cos * reach, across * sin * reach);
    }

    private void Face(double x, (double Across, double Up) outer, (double Across, double Up) inner, int way)
    {
        var normal = new Point3(way, 0, 0);
        var rim = BeadMesher.Ring(Spokes, turn => new Corner(OnRim(turn, x, outer.Across, outer.Up), normal));
        var hole = BeadMesher.Ring(Spokes, turn =>
        {
            var (sin, cos) = Math.SinCos(turn);
            return new Corner(new Point3(x, inner.Up * cos, inner.Across * sin), normal);
        });
        skin.Span(way > 0 ? [rim, hole] : [hole, rim], _colour);
    }
}
