using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A straight tube.</summary>
public sealed class Tube : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "tube";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["bugle", "cylinder"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override bool HollowRunsThrough => true;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(_ => 1, _ => 1, Math.PI / 4, EndForm.Flat, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Box(bead.LengthMm / 2, bead)];
}
