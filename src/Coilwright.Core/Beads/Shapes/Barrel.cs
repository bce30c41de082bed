using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A barrel: bulging between two flat ends. Without a known flat at its ends it is taken as a tube.</summary>
public sealed class Barrel : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "barrel";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["drum"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm", "wallMm", "endFaceMm"];

    /// <inheritdoc/>
    public override bool EndFaceMatters => true;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead)
    {
        var face = FaceShare(bead, 1);
        double Share(double u) => 1 - (1 - face) * u * u;
        return new BeadProfile(Share, Share, Math.PI / 4, EndForm.Flat, SurfaceLook.Smooth);
    }

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new BarrelSection(bead.LengthMm / 2, bead.ThicknessMm / 2, FaceShare(bead, 1) * bead.ThicknessMm / 2, bead.HoleOffsetMm)];
}
