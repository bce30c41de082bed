using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A nugget: a larger uneven stone, taken as an ellipsoid of its three measures. What counts is its length along the hole.</summary>
public sealed class Nugget : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "nugget";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["chunk"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.Both;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle, Math.PI / 4, EndForm.Curved, SurfaceLook.Uneven);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, 0, bead.HoleOffsetMm)];
}
