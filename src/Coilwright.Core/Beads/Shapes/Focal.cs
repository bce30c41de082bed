using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A focal whose hole runs under its back: an oval outline, a flat back and a dome over it.</summary>
/// <remarks>Its length, width and thickness are its outline's. With a seat, only the seat meets the wire and neighbours tuck under the overhang as
/// far as they fit; what lies hidden there is not counted in lining up.</remarks>
public sealed class Focal : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "focal";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["cabochon"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.Both;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["holeOffsetMm", "seat"];

    /// <inheritdoc/>
    public override ImmutableArray<string> Needs(BeadDescription description) => ["holeOffsetMm"];

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle, Math.PI / 4, EndForm.Curved, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm)
    {
        if (bead.Description.Seat is not { } seat)
            return [new DomeSection(bead.LengthMm / 2, bead.ThicknessMm, -bead.BearingReachMm)];
        return
        [
            new PolygonSection((seat.LengthMm / 2, -bead.BearingReachMm), (seat.LengthMm / 2, seat.ClearMm)),
            new DomeSection(bead.LengthMm / 2, bead.OuterReachMm - seat.ClearMm, seat.ClearMm),
        ];
    }

    /// <inheritdoc/>
    public override double? HidesHalfMm(Bead bead, double radiusMm) =>
        radiusMm * Math.Atan2(bead.LengthMm / 2, radiusMm + (bead.Description.Seat?.ClearMm ?? -bead.BearingReachMm));
}
