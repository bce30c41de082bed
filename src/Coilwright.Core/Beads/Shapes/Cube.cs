using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A cube, or a cuboid where its measures differ.</summary>
public sealed class Cube : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "cube";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["square", "cuboid"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.AsLong;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(_ => 1, _ => 1, 1, EndForm.Flat, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) => [Box(bead.LengthMm / 2, bead)];
}
