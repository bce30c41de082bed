using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>An oval or rice bead: longer than it is wide, an ellipsoid.</summary>
public sealed class Oval : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "oval";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["rice", "olive"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle, Math.PI / 4, EndForm.Curved, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, 0, bead.HoleOffsetMm)];
}
