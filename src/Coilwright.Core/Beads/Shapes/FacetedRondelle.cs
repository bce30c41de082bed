using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A faceted rondelle: two cut cones on a girdle. Its flat is small and decides where it hinges.</summary>
public sealed class FacetedRondelle : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "faceted-rondelle";

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override bool LabelRunsAlongLarger => false;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm", "wallMm", "endFaceMm"];

    /// <inheritdoc/>
    public override bool EndFaceMatters => true;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead)
    {
        var face = FaceShare(bead, 1);
        double Share(double u) => 1 - (1 - face) * Math.Abs(u);
        return new BeadProfile(Share, Share, Math.PI / 4, EndForm.Flat, SurfaceLook.Faceted);
    }

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Bicone.Cones(bead, FaceShare(bead, 1))];
}
