using Coilwright.Core.Findings;
using Coilwright.Core.Geometry;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Scenes;

/// <summary>The wire as a round tube along its way, with turned end loops.</summary>
/// <remarks>A loop is turned outwards, away from the wrist, nearly closed, and runs a wire's thickness aside so that it does not run into itself. A glued end is the wire in its hole;
/// the cap itself, of unknown size, is not there.</remarks>
internal static class WireTube
{
    // Degrees round the wrist between two rings of the tube, and round an end loop. Our choice.
    private const double StepDeg = 3, LoopStepDeg = 15;

    // A loop that is turned closed comes round to the wire it began at, and stops short of it.
    private const double LoopTurn = 2 * Math.PI * 0.94;

    internal static SolidMesh Of(IWirePath path, Piece piece, Fineness fineness)
    {
        var wire = piece.Wire.WireMm;
        var way = new List<(Point3 Place, Point3 Side)>();
        way.AddRange(EndOf(path, piece.Ends.Start, wire, 0, -1).Reverse());
        var steps = Math.Max(1, (int)Math.Ceiling(path.LengthMm / (path.RadiusMm * StepDeg * Math.PI / 180)));
        for (var i = 0; i <= steps; i++)
        {
            var (place, _, outwards) = path.At(path.LengthMm * i / steps);
            way.Add((place, outwards));
        }
        way.AddRange(EndOf(path, piece.Ends.Finish, wire, path.LengthMm, 1));
        return Swept(way, wire / 2, Math.Max(6, fineness.Spokes / 3));
    }

    // From the last bead outwards.
    private static IEnumerable<(Point3 Place, Point3 Side)> EndOf(IWirePath path, WireEnd end, double wireMm, double atMm, int away)
    {
        var (place, along, outwards) = path.At(atMm);
        along *= away;
        if (end.Finish != EndFinish.TurnedLoop)
        {
            yield return (place + along * end.InsideMm, outwards);
            yield break;
        }
        var radius = (end.InsideMm + wireMm) / 2;
        var aside = along.Cross(outwards);
        var steps = (int)Math.Ceiling(LoopTurn / (LoopStepDeg * Math.PI / 180));
        for (var i = 1; i <= steps; i++)
        {
            var turn = LoopTurn * i / steps;
            var (sin, cos) = Math.SinCos(turn);
            yield return (place + along * (radius * sin) + outwards * (radius * (1 - cos)) + aside * (1.1 * wireMm * turn / (2 * Math.PI)), outwards * cos - along * sin);
        }
    }

    private static SolidMesh Swept(List<(Point3 Place, Point3 Side)> way, double radiusMm, int spokes)
    {
        var rings = new List<Corner[]>(way.Count);
        var ahead = new Point3(1, 0, 0);
        for (var i = 0; i < way.Count; i++)
        {
            ahead = (way[Math.Min(i + 1, way.Count - 1)].Place - way[Math.Max(i - 1, 0)].Place).Unit;
            // Square to the way: a side that is not quite so is put right.
            var side = (way[i].Side - ahead * way[i].Side.Dot(ahead)).Unit;
            var third = ahead.Cross(side);
            rings.Add(BeadMesher.Ring(spokes, turn =>
            {
                var (sin, cos) = Math.SinCos(turn);
                var normal = side * cos + third * sin;
                return new Corner(way[i].Place + normal * radiusMm, normal);
            }));
        }
        var skin = new Skin();
        skin.Span(rings);
        Cap(rings[0], way[0].Place, (way[0].Place - way[1].Place).Unit, isFirst: true);
        Cap(rings[^1], way[^1].Place, (way[^1].Place - way[^2].Place).Unit, isFirst: false);
        return skin.Make();

        void Cap(Corner[] ring, Point3 middle, Point3 normal, bool isFirst)
        {
            Corner[] rim = [.. ring.Select(c => c with { Normal = normal })], point = [.. ring.Select(_ => new Corner(middle, normal))];
            skin.Span(isFirst ? [point, rim] : [rim, point]);
        }
    }
}
