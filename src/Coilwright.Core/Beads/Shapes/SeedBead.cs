using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A seed bead: a ring with a half-round edge, shorter along the hole than across.</summary>
public sealed class SeedBead : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "seed-bead";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["seed", "rocaille"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override bool LabelRunsAlongLarger => false;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm"];

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead)
    {
        var flat = FlatShare(bead);
        double Share(double u) => flat + (1 - flat) * Round.Circle(u);
        return new BeadProfile(Share, Share, Math.PI / 4, EndForm.Curved, SurfaceLook.Smooth);
    }

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, FlatShare(bead) * bead.ThicknessMm / 2, bead.HoleOffsetMm)];

    // The edge is a half circle of the bead's own length, so what is flat is the thickness less that; a bead longer than thick is an oval.
    private static double FlatShare(Bead bead) => Math.Max(0, 1 - bead.LengthMm / bead.ThicknessMm);
}
