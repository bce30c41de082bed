using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;
using Coilwright.Core.Numerics;

namespace Coilwright.Core.Scenes;

/// <summary>A rough stone: an ellipsoid of the bead's three measures with places worn flat, each where no other stone has them.</summary>
/// <remarks>Exactly as long along the hole as the bead, and across it as large as gives it the bead's volume without its hole. Which stone it is decides the places by a fixed scatter.
/// Our own figure, for looks; nothing is measured on it.</remarks>
internal static class RoughStone
{
    // Any would do; these stones were looked at.
    private const ulong Seed = 11;

    internal static SolidMesh Of(Bead bead, Fineness fineness, int stone)
    {
        // A chip broke, a nugget was tumbled: more and flatter places with sharper edges, or fewer and softer ones.
        var isChip = bead.Shape is Chip;
        var (count, sharp, from, to) = isChip ? (11, 22.0, 0.58, 0.95) : (8, 12.0, 0.66, 1.0);
        var scatter = new Scatter(stone);
        var cuts = Enumerable.Range(0, count).Select(_ => (Way: scatter.Way(), Far: from + (to - from) * scatter.Next())).ToArray();
        var grain = (Way: scatter.Way(), Turns: 2 + 2 * scatter.Next(), From: scatter.Next());

        Point3 At(Point3 way)
        {
            var worn = 1.0;
            foreach (var cut in cuts)
                if (way.Dot(cut.Way) / cut.Far is > 0 and var out_) worn += Math.Pow(out_, sharp);
            return way * Math.Pow(worn, -1 / sharp);
        }

        int rings = Math.Max(6, fineness.Rings), spokes = Math.Max(8, fineness.Spokes * 3 / 4);
        // A chip's hole is drilled anywhere: its poles lie across the wire, so that no fan of triangles shows at the hole.
        Corner[] Ring(int r) => BeadMesher.Ring(spokes, turn =>
        {
            Point3 Way(double rise, double round)
            {
                var (sin, cos) = Math.SinCos(rise);
                var (side, ahead) = Math.SinCos(round);
                return new Point3(-cos, sin * ahead, sin * side);
            }
            var rise = Math.PI * r / rings;
            if (r == 0) return new Corner(At(new Point3(-1, 0, 0)), new Point3(-1, 0, 0));
            if (r == rings) return new Corner(At(new Point3(1, 0, 0)), new Point3(1, 0, 0));
            const double hair = 1e-4;
            var normal = (At(Way(rise, turn + hair)) - At(Way(rise, turn - hair))).Cross(At(Way(rise + hair, turn)) - At(Way(rise - hair, turn)));
            return new Corner(At(Way(rise, turn)), normal);
        });

        Srgb Grain(Point3 at)
        {
            var wave = 0.5 + 0.5 * Math.Sin(2 * Math.PI * (grain.Turns * at.Dot(grain.Way) / 2 + grain.From) + 2 * at.Y - at.Z);
            return Mixed(bead.Colours, wave * (bead.Colours.Length - 1));
        }

        var skin = new Skin();
        skin.Span([.. Enumerable.Range(0, rings + 1).Select(Ring)], bead.Colours.Length > 1 ? Grain : null);
        var raw = skin.Make();
        double low = raw.Places.Min(p => p.X), high = raw.Places.Max(p => p.X);
        var along = bead.LengthMm / (high - low);
        var across = Math.Sqrt(BeadVolume.OutlineMm3(bead) / (raw.VolumeMm3 * along * bead.WidthMm * bead.ThicknessMm));
        double wide = across * bead.WidthMm, thick = across * bead.ThicknessMm;
        return skin.Make(c => new Corner(
            new Point3((c.Place.X - (low + high) / 2) * along, c.Place.Y * thick + bead.HoleOffsetMm, c.Place.Z * wide),
            new Point3(c.Normal.X / along, c.Normal.Y / thick, c.Normal.Z / wide).Unit));
    }

    private static Srgb Mixed(ImmutableArray<Srgb> colours, double at)
    {
        var i = Math.Min((int)at, colours.Length - 2);
        var share = at - i;
        byte Mix(byte a, byte b) => (byte)Math.Round(a + (b - a) * share);
        return new Srgb(Mix(colours[i].Red, colours[i + 1].Red), Mix(colours[i].Green, colours[i + 1].Green), Mix(colours[i].Blue, colours[i + 1].Blue));
    }

    private struct Scatter(int stone)
    {
        private readonly SeededDraws _draws = new(Seed, (ulong)stone);
        private ulong _next;

        public double Next() => _draws.Unit(_next++);

        public Point3 Way()
        {
            var up = 2 * Next() - 1;
            var (sin, cos) = Math.SinCos(2 * Math.PI * Next());
            var level = Math.Sqrt(1 - up * up);
            return new Point3(level * cos, level * sin, up);
        }
    }
}
