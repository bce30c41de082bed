using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A heishi: a thin disc drilled through its flat faces.</summary>
public sealed class Heishi : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "heishi";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["disc-spacer"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override bool LabelRunsAlongLarger => false;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(_ => 1, _ => 1, Math.PI / 4, EndForm.Flat, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Box(bead.LengthMm / 2, bead)];
}
