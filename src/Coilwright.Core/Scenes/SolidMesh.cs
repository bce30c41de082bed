using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Core.Geometry;

namespace Coilwright.Core.Scenes;

/// <summary>The skin of a solid as triangles.</summary>
/// <remarks>Millimetres, in a right-handed frame of its own. Triangles run anticlockwise seen from outside. A corner that two faces share stands once for each where the
/// light breaks there, so the skin is closed in space, not in its numbers.</remarks>
/// <param name="Places">Corners.</param>
/// <param name="Normals">Outward directions there, one long, as many as corners.</param>
/// <param name="Colours">Colours there, as many as corners; empty where the whole solid has one.</param>
/// <param name="Triangles">Three corners each.</param>
public sealed record SolidMesh(ImmutableArray<Point3> Places, ImmutableArray<Point3> Normals, ImmutableArray<Srgb> Colours, ImmutableArray<int> Triangles)
{
    /// <summary>What the skin holds, mm3: the divergence theorem over its triangles.</summary>
    public double VolumeMm3
    {
        get
        {
            var six = 0.0;
            for (var t = 0; t < Triangles.Length; t += 3)
                six += Places[Triangles[t]].Dot(Places[Triangles[t + 1]].Cross(Places[Triangles[t + 2]]));
            return six / 6;
        }
    }
}
