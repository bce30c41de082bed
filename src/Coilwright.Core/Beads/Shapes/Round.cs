using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A round bead: a ball.</summary>
public sealed class Round : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "round";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["druk", "ball"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.AsLong;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Circle, Circle, Math.PI / 4, EndForm.Curved, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm) =>
        [new RoundedSection(bead.LengthMm / 2, bead.ThicknessMm / 2, 0, bead.HoleOffsetMm)];

    internal static double Circle(double u) => Math.Sqrt(Math.Max(0, 1 - u * u));
}
