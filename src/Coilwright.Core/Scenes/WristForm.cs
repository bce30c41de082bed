using Coilwright.Core.Geometry;

namespace Coilwright.Core.Scenes;

/// <summary>A form to show a bracelet on: as far round as the wrist, and round where a wrist is oval, since the coil is reckoned as round.</summary>
internal static class WristForm
{
    // What is to be seen of it over and under the coil, mm; how its edges are rounded, mm. Our choice.
    private const double BeyondMm = 16, EdgeMm = 7;

    internal static SolidMesh Of(double wristMm, double coilMm)
    {
        double radius = wristMm / (2 * Math.PI), half = coilMm / 2 + BeyondMm;
        const int spokes = 72, bends = 8;
        // From the lower middle outwards, up, and in again.
        var outline = new List<(double Reach, double Up, double Out, double Rise)> { (0, -half, 0, -1) };
        for (var i = 0; i <= 2 * bends + 1; i++)
        {
            var isUpper = i > bends;
            var (sin, cos) = Math.SinCos(-Math.PI / 2 + Math.PI / 2 * (isUpper ? i - 1 : i) / bends);
            outline.Add((radius - EdgeMm + EdgeMm * cos, (isUpper ? half - EdgeMm : EdgeMm - half) + EdgeMm * sin, cos, sin));
        }
        outline.Add((0, half, 0, 1));
        var skin = new Skin();
        skin.Span([.. outline.Select(o => BeadMesher.Ring(spokes, turn =>
        {
            var (sin, cos) = Math.SinCos(turn);
            return new Corner(new Point3(o.Reach * sin, o.Up, o.Reach * cos), new Point3(o.Out * sin, o.Rise, o.Out * cos));
        }))]);
        return skin.Make();
    }
}
