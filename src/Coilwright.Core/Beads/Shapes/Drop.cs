using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A top-drilled drop or briolette, taken as a cone on a half ball: the hole runs across its top, its long measure lies across the wire.</summary>
/// <remarks>Width is the drop's long measure. It may flip about the wire; that is the settled piece's business, not the quick one's.</remarks>
public sealed class Drop : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "drop";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["teardrop", "briolette", "dagger"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.Both;

    /// <inheritdoc/>
    public override bool LabelRunsAlongLarger => false;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm"];

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle,
        // Half ball (pi/12) a t 2e and cone (pi/12) a t (w - e), set against the ellipsoid's (2/3) factor a w t; the half ball is as deep as it is
        // round, e = t/2, but at most half the drop.
        Math.PI / 8 * (1 + Math.Min(bead.ThicknessMm, bead.WidthMm) / (2 * bead.WidthMm)), EndForm.Curved, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, 0, bead.HoleOffsetMm)];
}
