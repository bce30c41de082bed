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
    public override BeadProfile Profile(Bead bead) => new(Round.Circle, Round.Circle, AreaFactor(bead), EndForm.Curved, SurfaceLook.Smooth);

    private static double AreaFactor(Bead bead)
    {
        // A dome over a flat back holds what an ellipsoid of its three measures does.
        if (bead.Description.Seat is not { } seat) return Math.PI / 4;
        // With a seat the dome is only what stands over it; the seat is taken as wide as it is high, for want of a measure, but no wider than the bead.
        var high = bead.BearingReachMm + seat.ClearMm;
        return Math.PI / 4 * (bead.OuterReachMm - seat.ClearMm) / bead.ThicknessMm
            + seat.LengthMm * high * Math.Min(high, bead.WidthMm) / (2.0 / 3 * bead.LengthMm * bead.WidthMm * bead.ThicknessMm);
    }

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
    public override double? FlatBackMm(Bead bead) => bead.Description.Seat?.ClearMm ?? -bead.BearingReachMm;

    /// <inheritdoc/>
    public override double? HidesHalfMm(Bead bead, double radiusMm) =>
        radiusMm * Math.Atan2(bead.LengthMm / 2, radiusMm + (bead.Description.Seat?.ClearMm ?? -bead.BearingReachMm));
}
