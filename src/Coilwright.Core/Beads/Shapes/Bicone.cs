using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A bicone: two cones base to base. Its points are blunted where an end face is given.</summary>
public sealed class Bicone : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "bicone";

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.AsLong;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm", "wallMm", "endFaceMm"];

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead)
    {
        var face = FaceShare(bead, 0);
        double Share(double u) => 1 - (1 - face) * Math.Abs(u);
        return new BeadProfile(Share, Share, Math.PI / 4, EndForm.Pointed, SurfaceLook.Faceted);
    }

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Cones(bead, FaceShare(bead, 0))];

    internal static PolygonSection Cones(Bead bead, double faceShare)
    {
        var face = faceShare * bead.ThicknessMm / 2;
        return new PolygonSection((0, -bead.BearingReachMm), (bead.LengthMm / 2, bead.HoleOffsetMm - face),
            (bead.LengthMm / 2, bead.HoleOffsetMm + face), (0, bead.OuterReachMm));
    }
}
