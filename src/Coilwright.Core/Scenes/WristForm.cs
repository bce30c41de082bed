using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Contacts;

namespace Coilwright.Core.Scenes;

/// <summary>A form to show a bracelet on: as far round as the wrist, in its own section. The reckoning takes a wrist as round, settling as an oval that may taper.</summary>
internal static class WristForm
{
    // What is to be seen of it over and under the coil, mm; how its edges are rounded, mm. Our choice.
    private const double BeyondMm = 16, EdgeMm = 7;

    // However it tapers there is some of it everywhere.
    private const double LeastScale = 0.05;

    /// <summary>Makes it.</summary>
    /// <param name="wrist">The wrist.</param>
    /// <param name="lowMm">Where the coil ends down the arm, mm.</param>
    /// <param name="highMm">Where it ends up the arm, mm.</param>
    internal static SolidMesh Of(WristSection wrist, double lowMm, double highMm)
    {
        const int spokes = 72, bends = 8;
        var (low, high) = (lowMm - BeyondMm, highMm + BeyondMm);
        // No rounder than the section itself is at its sharpest.
        var edge = Math.Min(EdgeMm, 0.9 * Math.Min(Scale(low), Scale(high)) * wrist.HalfThicknessMm * wrist.HalfThicknessMm / wrist.HalfWidthMm);
        var growth = wrist.ScaleAt(1) - wrist.ScaleAt(0);
        // From the lower middle outwards, up, and in again: how far within the section, where along the arm, which way it faces.
        var outline = new List<(double Within, double Up, double Out, double Rise)>();
        for (var i = 0; i <= 2 * bends + 1; i++)
        {
            var isUpper = i > bends;
            var (sin, cos) = Math.SinCos(-Math.PI / 2 + Math.PI / 2 * (isUpper ? i - 1 : i) / bends);
            outline.Add((edge * (1 - cos), (isUpper ? high - edge : low + edge) + edge * sin, cos, sin));
        }
        var skin = new Skin();
        skin.Span([Middle(low, -1), .. outline.Select(o => BeadMesher.Ring(spokes, turn =>
        {
            var (sin, cos) = Math.SinCos(turn);
            var square = new Point3(sin / wrist.HalfWidthMm, 0, cos / wrist.HalfThicknessMm).Unit;
            var rim = new Point3(wrist.HalfWidthMm * sin, 0, wrist.HalfThicknessMm * cos);
            var normal = square * o.Out + new Point3(0, o.Rise - o.Out * growth * rim.Dot(square), 0);
            return new Corner(rim * Scale(o.Up) - square * o.Within + new Point3(0, o.Up, 0), normal.Unit);
        })), Middle(high, 1)]);
        return skin.Make();

        double Scale(double up) => Math.Max(LeastScale, wrist.ScaleAt(up));

        Corner[] Middle(double up, int rise) => BeadMesher.Ring(spokes, _ => new Corner(new Point3(0, up, 0), new Point3(0, rise, 0)));
    }
}
