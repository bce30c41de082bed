using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A smooth rondelle: a wheel with rounded edges. Without a known flat at its ends it is taken as flat right across.</summary>
public sealed class Rondelle : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "rondelle";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["roundelle", "wheel"];

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
        double Share(double u) => face + (1 - face) * Round.Circle(u);
        return new BeadProfile(Share, Share, Math.PI / 4, EndForm.Flat, SurfaceLook.Smooth);
    }

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => FaceShare(bead, 1) >= 1
        ? [Box(bead.LengthMm / 2, bead)]
        : [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, FaceShare(bead, 1) * bead.ThicknessMm / 2, bead.HoleOffsetMm)];
}
