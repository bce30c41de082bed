using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;

namespace Coilwright.Core.Scenes;

/// <summary>The skin of a bead at true size, from the same profile that its volume and drawings come from.</summary>
/// <remarks>
/// <para>In the bead's own frame, mm: x along the hole the way the beads run, y away from the wrist, z along the arm. Its origin is the wire's centre under the bead's middle.</para>
/// <para>A hole is cut where it runs through the middle of an even bead; a focal, a drop, a coin, a rough stone and a bead with its hole off the middle are solid, and so is a bead of
/// unknown hole. Of a hollow bead only what is seen is there: the cavity between closed walls is not. Faceted beads are cut with <see cref="Facets"/> sides, inside their measures.
/// A rough stone is cut by planes that differ from one to the next, and is as large as the bead without its hole. Limits and errors: docs/theory/coil-in-space.md.</para>
/// </remarks>
public static class BeadMesher
{
    /// <summary>Sides of a faceted bead. Our choice.</summary>
    public const int Facets = 12;

    /// <summary>How many different stones a rough kind has. Our choice: as many as no eye counts.</summary>
    public const int Stones = 7;

    /// <summary>Makes the skin.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm: a matched curved tube is bent to it.</param>
    /// <param name="fineness">How fine.</param>
    /// <param name="stone">Which of the <see cref="Stones"/> of a rough kind; other kinds are all alike.</param>
    public static SolidMesh Of(Bead bead, double radiusMm, Fineness fineness, int stone = 0)
    {
        var skin = new Skin();
        if (bead.Shape.Profile(bead).Look == SurfaceLook.Uneven) return RoughStone.Of(bead, fineness, stone);
        switch (bead.Shape)
        {
            case Focal:
                FocalBody(bead, fineness, skin);
                break;
            case Drop:
                DropBody(bead, fineness, skin);
                break;
            default:
                new Turned(bead, fineness, skin).Make();
                break;
        }
        return skin.Make(bead.Shape is CurvedTube ? Bent(bead.Description.Matched ? radiusMm : bead.Description.CurveRadiusMm!.Value)
            : bead.HoleOffsetMm == 0 || bead.Shape is Focal ? null : c => c with { Place = c.Place + new Point3(0, bead.HoleOffsetMm, 0) });
    }

    /// <summary>Whether the hole is cut.</summary>
    public static bool HasHole(Bead bead) => bead.BoreMm is > 0 && bead.HoleOffsetMm == 0 && bead.Description.Seat is null
        && bead.Shape is not (Focal or Drop or Coin) && bead.Shape.Profile(bead).Look != SurfaceLook.Uneven;

    private static Func<Corner, Corner> Bent(double radiusMm) => corner =>
    {
        var (sin, cos) = Math.SinCos(corner.Place.X / radiusMm);
        var up = radiusMm + corner.Place.Y;
        return new Corner(new Point3(up * sin, up * cos - radiusMm, corner.Place.Z),
            new Point3(corner.Normal.X * cos + corner.Normal.Y * sin, corner.Normal.Y * cos - corner.Normal.X * sin, corner.Normal.Z));
    };

    // A dome over a flat back, and under it the seat, a block as wide as it is high.
    private static void FocalBody(Bead bead, Fineness fineness, Skin skin)
    {
        var seat = bead.Description.Seat;
        var back = seat?.ClearMm ?? -bead.BearingReachMm;
        double along = bead.LengthMm / 2, high = bead.OuterReachMm - back, wide = bead.WidthMm / 2;
        var colour = Bands(bead);
        var rings = Enumerable.Range(0, fineness.Rings + 1).Select(i => Math.PI / 2 * i / fineness.Rings).Select(rise => Ring(2 * fineness.Spokes, turn =>
        {
            var (sin, cos) = Math.SinCos(rise);
            var (across, ahead) = Math.SinCos(turn);
            if (rise > Math.PI / 2 - 1e-9) (sin, cos) = (1, 0);
            return new Corner(new Point3(along * cos * ahead, back + high * sin, wide * cos * across), new Point3(cos * ahead / along, sin / high, cos * across / wide));
        })).ToArray();
        // Going round from ahead to across turns the other way than round the hole.
        skin.Span([.. rings.Reverse()], colour);
        var rim = rings[0].Select(c => new Corner(c.Place, new Point3(0, -1, 0))).ToArray();
        skin.Span([rim, Ring(2 * fineness.Spokes, _ => new Corner(new Point3(0, back, 0), new Point3(0, -1, 0)))], colour);
        if (seat is null) return;
        double tall = bead.BearingReachMm + seat.ClearMm, half = Math.Min(tall, bead.WidthMm) / 2;
        Block(skin, new Point3(-seat.LengthMm / 2, -bead.BearingReachMm, -half), new Point3(seat.LengthMm / 2, seat.ClearMm, half), colour);
    }

    private static void Block(Skin skin, Point3 low, Point3 high, Func<Point3, Srgb>? colour)
    {
        Corner[] Square(double x, double share)
        {
            var middle = (low + high) * 0.5;
            double y = (high.Y - low.Y) / 2 * share, z = (high.Z - low.Z) / 2 * share;
            Corner At(int up, int across) => new(new Point3(x, middle.Y + y * up, middle.Z + z * across), default);
            return [At(1, -1), At(1, 1), At(-1, 1), At(-1, -1), At(1, -1)];
        }
        skin.Facets([Square(low.X, 0), Square(low.X, 1), Square(high.X, 1), Square(high.X, 0)], colour);
    }

    // Half a ball and a cone on it. Its point lies up the arm, and the hole runs through the cone where that is twice as thick as the hole or, where the hole is not known, at a sixth.
    private static void DropBody(Bead bead, Fineness fineness, Skin skin)
    {
        double deep = Math.Min(bead.ThicknessMm, bead.WidthMm) / 2, cone = bead.WidthMm - deep;
        double half = bead.LengthMm / 2, thick = bead.ThicknessMm / 2;
        var hole = Math.Clamp(bead.BoreMm is { } bore ? 2 * bore / Math.Min(bead.LengthMm, bead.ThicknessMm) : 1.0 / 6, 1.0 / 6, 0.6) * cone;
        var stations = new List<(double Z, double Share)> { (0, 0) };
        for (var i = 1; i <= 4; i++) stations.Add((cone * i / 4, i / 4.0));
        for (var i = 1; i <= fineness.Rings; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI / 2 * i / fineness.Rings);
            stations.Add((cone + deep * sin, i == fineness.Rings ? 0 : cos));
        }
        var rings = stations.Select(s => Ring(2 * fineness.Spokes, turn =>
        {
            var (up, ahead) = Math.SinCos(turn);
            var past = s.Z - cone;
            var normal = past < -1e-9 ? new Point3(ahead / half, up / thick, -1 / cone) : new Point3(s.Share * ahead / half, s.Share * up / thick, past / (deep * deep));
            return new Corner(new Point3(half * s.Share * ahead, thick * s.Share * up, s.Z - hole), normal);
        })).ToArray();
        skin.Span(rings, Bands(bead));
    }

    internal static Corner[] Ring(int spokes, Func<double, Corner> at)
    {
        var ring = new Corner[spokes + 1];
        for (var i = 0; i < spokes; i++) ring[i] = at(2 * Math.PI * i / spokes);
        ring[spokes] = ring[0];
        return ring;
    }

    // Several colours lie as bands along the hole, as in the drawings.
    internal static Func<Point3, Srgb>? Bands(Bead bead)
    {
        if (bead.Colours.Length < 2) return null;
        var (colours, length) = (bead.Colours, bead.LengthMm);
        return at => colours[Math.Clamp((int)Math.Floor((at.X / length + 0.5) * colours.Length), 0, colours.Length - 1)];
    }
}
