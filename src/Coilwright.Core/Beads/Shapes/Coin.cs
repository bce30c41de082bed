using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A coin: a flat disc lying on the arm, drilled through its edge; seen from outside it is a circle.</summary>
public sealed class Coin : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "coin";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["disc", "lentil"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.WideAsLong;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(_ => 1, Round.Circle, 1, EndForm.Flat, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Box(bead.LengthMm / 2, bead)];
}
