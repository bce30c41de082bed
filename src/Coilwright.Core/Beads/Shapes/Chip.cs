using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A chip: a small uneven stone drilled at random. Its length is what a row of them measures, strung; the label's range is only its outline.</summary>
public sealed class Chip : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "chip";

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.Both;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle, Math.PI / 4, EndForm.Curved, SurfaceLook.Uneven);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, 0, bead.HoleOffsetMm)];
}
