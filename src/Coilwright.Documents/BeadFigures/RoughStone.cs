using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.BeadFigures;

/// <summary>One uneven stone out of many that have the same measures: chips and nuggets, no two alike.</summary>
/// <remarks>A picture of unevenness, not of a certain stone: its corners are drawn from a fixed sequence, so the same stone comes out every time. It touches
/// all four sides of the kind's own box.</remarks>
internal sealed class RoughStone
{
    private const int Corners = 9;

    internal RoughStone(Silhouette silhouette, int variant)
    {
        // A multiplicative sequence (Park and Miller's): enough for looks, and the same on every machine.
        var state = 20_011L + 7_919L * variant;
        double Next()
        {
            state = state * 48_271 % 2_147_483_647;
            return (double)state / 2_147_483_647;
        }
        for (var i = 0; i < 4; i++) Next();

        var points = new Point[Corners];
        for (var i = 0; i < Corners; i++)
        {
            var angle = 2 * Math.PI * (i + 0.55 * (Next() - 0.5)) / Corners;
            var reach = 0.84 + 0.16 * Next();
            var along = silhouette.HalfLengthMm * Math.Cos(angle);
            points[i] = new Point(along * reach, Math.Sign(Math.Sin(angle)) * silhouette.HalfWidthAtMm(along) * reach);
        }
        var box = Box.Round(points)!.Value;
        double stretchX = 2 * silhouette.HalfLengthMm / box.WidthMm, stretchY = 2 * silhouette.HalfWidthMm / box.HeightMm;
        ImmutableArray<Point> corners =
            [.. points.Select(p => new Point((p.XMm - box.Middle.XMm) * stretchX, (p.YMm - box.Middle.YMm) * stretchY))];
        // Rounding draws corners in, so the rounded stone is stretched back to its box.
        var soft = Silhouette.Softened(corners, 0.16 * Math.Min(silhouette.HalfLengthMm, silhouette.HalfWidthMm));
        var drawn = soft.Bounds!.Value;
        Outline = soft.Mapped(p => new Point((p.XMm - drawn.Middle.XMm) * 2 * silhouette.HalfLengthMm / drawn.WidthMm,
            (p.YMm - drawn.Middle.YMm) * 2 * silhouette.HalfWidthMm / drawn.HeightMm));

        // A flat table, off the middle towards the light, and faces falling away from it.
        var table = corners.Select(p => new Point(p.XMm * 0.52 - 0.08 * silhouette.HalfLengthMm, p.YMm * 0.52 - 0.1 * silhouette.HalfWidthMm)).ToArray();
        var facets = ImmutableArray.CreateBuilder<(Outline, double)>();
        facets.Add((Outline, 0));
        for (var i = 0; i < Corners; i++)
        {
            Point a = corners[i], b = corners[(i + 1) % Corners];
            // Light from the upper left: a face that looks that way is bright.
            var middle = a.Towards(b, 0.5);
            var away = Math.Atan2(middle.YMm / silhouette.HalfWidthMm, middle.XMm / silhouette.HalfLengthMm);
            var light = Math.Cos(away + 0.68 * Math.PI);
            var inner = Outline.Through([a.Towards(table[i], 0.1), b.Towards(table[(i + 1) % Corners], 0.1), table[(i + 1) % Corners], table[i]]);
            facets.Add((inner, 0.55 * light));
        }
        Facets = facets.ToImmutable();
    }

    /// <summary>Its outline.</summary>
    internal Outline Outline { get; }

    /// <summary>The whole stone with its flat table, then the faces round it: where, and how light (-1 to 1).</summary>
    internal ImmutableArray<(Outline Face, double Light)> Facets { get; }
}
