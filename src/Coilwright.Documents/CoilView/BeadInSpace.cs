using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.CoilView;

/// <summary>A bead standing on the coil: what is seen of its body from a slant.</summary>
/// <remarks>Its body is what its profile sweeps: across the hole an ellipse, or a rectangle where the shape fills one, as wide and thick as the profile
/// says. All shapes bulge, so its outline is the smallest bulging figure round the seen points of its cross-sections.</remarks>
internal sealed class BeadInSpace
{
    private readonly int _rings;
    private readonly int _spokes;
    private readonly Bead _bead;
    private readonly BeadProfile _profile;
    private readonly Slant _slant;
    private readonly int _index;
    private readonly (double Sin, double Cos)[] _directions;
    private readonly (double Sin, double Cos)[] _between;
    private ImmutableArray<Point> _whole;

    /// <summary>Stands a bead on the coil.</summary>
    /// <param name="bead">Its kind.</param>
    /// <param name="index">Its place in the order: uneven stones differ by it.</param>
    /// <param name="angleRad">Where its middle stands round the wrist, radians, 0 the top, which faces whoever looks.</param>
    /// <param name="radiusMm">Radius of the wire's centre line.</param>
    /// <param name="heightMm">Height of its middle along the arm.</param>
    /// <param name="slant">From where it is seen.</param>
    internal BeadInSpace(Bead bead, int index, double angleRad, double radiusMm, double heightMm, Slant slant)
    {
        (_bead, _index, _slant) = (bead, index, slant);
        _profile = bead.Shape.Profile(bead);
        // Smooth beads get enough that straight pieces are about half a millimetre long; stones and cut beads as many as they have faces.
        var seenMm = Math.Max(bead.LengthMm, Math.Max(bead.WidthMm, bead.ThicknessMm)) * slant.Scale;
        (_rings, _spokes) = _profile.Look switch
        {
            SurfaceLook.Uneven => (5, 6),
            SurfaceLook.Faceted => (3, 8),
            _ => (Math.Clamp((int)(2 * seenMm), 13, 33), Math.Clamp((int)(5 * seenMm), 24, 72)),
        };
        _directions = Directions(0);
        _between = _profile.Look == SurfaceLook.Uneven ? Directions(0.5) : _directions;
        Out = new Space(Math.Sin(angleRad), Math.Cos(angleRad), 0);
        Along = new Space(Math.Cos(angleRad), -Math.Sin(angleRad), 0);
        // The hole lies nearer to the wrist than the body's middle by its offset.
        Middle = Out * (radiusMm + bead.HoleOffsetMm) + new Space(0, 0, heightMm);
    }

    /// <summary>Its whole seen outline.</summary>
    internal ImmutableArray<Point> Whole => _whole.IsDefault ? _whole = Outline() : _whole;

    internal Space Out { get; }

    internal Space Along { get; }

    internal Space Middle { get; }

    internal double Nearness => _slant.Nearness(Middle);

    /// <summary>The seen outline of the part between two places along the hole, -1 to 1.</summary>
    internal ImmutableArray<Point> Outline(double fromU = -1, double toU = 1)
    {
        var points = new Point[_rings * _spokes];
        var isUneven = _profile.Look == SurfaceLook.Uneven;
        // Without perspective the seen place of a sum is the sum of the seen places.
        Point middle = _slant.Seen(Middle), along = _slant.Seen(Along), up = _slant.Seen(new Space(0, 0, 1)), outwards = _slant.Seen(Out);
        for (var ring = 0; ring < _rings; ring++)
        {
            var u = fromU + (toU - fromU) * (0.5 - 0.5 * Math.Cos(Math.PI * ring / (_rings - 1)));
            double halfWidth = _bead.WidthMm / 2 * _profile.Width(u), halfThick = _bead.ThicknessMm / 2 * _profile.Thickness(u), at = u * _bead.LengthMm / 2;
            var directions = isUneven && ring % 2 == 1 ? _between : _directions;
            for (var spoke = 0; spoke < _spokes; spoke++)
            {
                var reach = isUneven ? 0.84 + 0.16 * Chance(ring, spoke) : 1;
                double high = halfWidth * directions[spoke].Sin * reach, far = halfThick * directions[spoke].Cos * reach;
                points[ring * _spokes + spoke] = new Point(middle.XMm + at * along.XMm + high * up.XMm + far * outwards.XMm, middle.YMm + at * along.YMm + high * up.YMm + far * outwards.YMm);
            }
        }
        return Bulging.Round(points);
    }

    /// <summary>The seen outline of the flat face at the end that is turned towards whoever looks; null when the bead has none, or it is seen edge on.</summary>
    internal ImmutableArray<Point>? NearFace()
    {
        var nearer = _slant.Nearness(Along);
        if (_profile.Ends != EndForm.Flat || Math.Abs(nearer) < 0.05) return null;
        var u = Math.Sign(nearer);
        return Outline(u, u);
    }

    /// <summary>A sickle of light along its outer side, broad in the middle and pointed at both ends.</summary>
    internal ImmutableArray<Point> Light()
    {
        const double fromU = -0.68, toU = 0.5;
        List<Point> upper = [], lower = [];
        for (var i = 0; i <= _rings; i++)
        {
            var v = 2.0 * i / _rings - 1;
            var u = (fromU + toU) / 2 + v * (toU - fromU) / 2;
            upper.Add(OnOuterSide(u, 0.78));
            lower.Add(OnOuterSide(u, 0.78 - 0.26 * (1 - v * v)));
        }
        lower.Reverse();
        return [.. upper, .. lower];
    }

    private Point OnOuterSide(double u, double share)
    {
        double width = _bead.WidthMm / 2 * _profile.Width(u), thick = _bead.ThicknessMm / 2 * _profile.Thickness(u);
        return _slant.Seen(Middle + Along * (u * _bead.LengthMm / 2) + new Space(0, 0, 1) * (share * width) + Out * (thick * Math.Sqrt(1 - share * share)));
    }

    // From the hole to the points of a cross-section, all rings alike.
    private (double Sin, double Cos)[] Directions(double turnedBy)
    {
        var isBox = _profile.AreaFactor >= 1;
        var directions = new (double Sin, double Cos)[_spokes];
        for (var spoke = 0; spoke < _spokes; spoke++)
        {
            var (sin, cos) = Math.SinCos(2 * Math.PI * (spoke + turnedBy) / _spokes);
            directions[spoke] = isBox ? (Math.Sign(sin + 1e-9), Math.Sign(cos + 1e-9)) : (sin, cos);
        }
        return directions;
    }

    // A fixed scatter (Knuth's multiplicative hash) in 0..1: the same stone every time.
    private double Chance(int ring, int spoke)
    {
        var hash = unchecked((uint)(_index * 7919 + ring * 131 + spoke * 17 + 1) * 2654435761u);
        return (hash >> 8) / (double)(1 << 24);
    }
}
