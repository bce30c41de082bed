using System.Runtime.InteropServices;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;

namespace Coilwright.Core.Scenes;

/// <summary>A corner of a skin.</summary>
/// <param name="Place">Where it is, mm.</param>
/// <param name="Normal">Outwards; any length.</param>
internal readonly record struct Corner(Point3 Place, Point3 Normal);

/// <summary>Puts a skin together from bands between rings of corners.</summary>
internal sealed class Skin
{
    private readonly List<Point3> _places = [], _normals = [];
    private readonly List<Srgb> _colours = [];
    private readonly List<int> _triangles = [];

    /// <summary>Spans rings from the first to the last. Outside is where the way along a ring, crossed with the way from ring to ring, points.</summary>
    /// <param name="rings">Rings of equally many corners; a closed one ends where it began.</param>
    /// <param name="colour">The colour at a corner of a ring; null: the solid has one.</param>
    public void Span(IReadOnlyList<Corner[]> rings, Func<Point3, Srgb>? colour = null)
    {
        var (from, across) = (_places.Count, rings[0].Length);
        foreach (var ring in rings)
            foreach (var corner in ring) Put(corner.Place, corner.Normal.Unit, colour);
        for (var r = 0; r + 1 < rings.Count; r++)
            for (var c = 0; c + 1 < across; c++)
            {
                int here = from + r * across + c, beyond = here + across;
                Triangle(here, here + 1, beyond);
                Triangle(here + 1, beyond + 1, beyond);
            }
    }

    /// <summary>Spans rings with flat faces, each lit by itself.</summary>
    /// <param name="rings">As for <see cref="Span"/>; their normals do not count.</param>
    /// <param name="colour">The colour of a face, by its middle; null: the solid has one.</param>
    public void Facets(IReadOnlyList<Corner[]> rings, Func<Point3, Srgb>? colour = null)
    {
        for (var r = 0; r + 1 < rings.Count; r++)
            for (var c = 0; c + 1 < rings[r].Length; c++)
            {
                Point3 a = rings[r][c].Place, b = rings[r][c + 1].Place, d = rings[r + 1][c].Place, e = rings[r + 1][c + 1].Place;
                // Across both diagonals, so that a face that comes to a point has a direction too.
                var normal = (e - a).Cross(d - b).Unit;
                var shade = colour?.Invoke((a + b + d + e) * 0.25);
                var from = _places.Count;
                foreach (var at in new[] { a, b, d, e }) Put(at, normal, shade is { } s ? _ => s : null);
                Triangle(from, from + 1, from + 2);
                Triangle(from + 1, from + 3, from + 2);
            }
    }

    /// <summary>The skin.</summary>
    /// <param name="move">Takes each corner to where it is wanted; null leaves it.</param>
    public SolidMesh Make(Func<Corner, Corner>? move = null)
    {
        if (move is not null)
            for (var i = 0; i < _places.Count; i++) (_places[i], _normals[i]) = move(new Corner(_places[i], _normals[i]));
        return new SolidMesh([.. _places], [.. _normals], [.. _colours], ImmutableCollectionsMarshal.AsImmutableArray(_triangles.ToArray()));
    }

    private void Put(Point3 place, Point3 normal, Func<Point3, Srgb>? colour)
    {
        _places.Add(place);
        _normals.Add(normal);
        if (colour is not null) _colours.Add(colour(place));
    }

    // A side that has come to a point makes no triangle.
    private void Triangle(int a, int b, int c)
    {
        if (_places[a] == _places[b] || _places[b] == _places[c] || _places[a] == _places[c]) return;
        _triangles.AddRange([a, b, c]);
    }
}
