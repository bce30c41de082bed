using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>A curved tube. Matched to the coil it takes its arc; otherwise its ends lean by its own curve.</summary>
public sealed class CurvedTube : BeadShape
{
    /// <inheritdoc/>
    public override string Name => "curved-tube";

    /// <inheritdoc/>
    public override ImmutableArray<string> Aliases => ["noodle"];

    /// <inheritdoc/>
    public override AcrossRule Across => AcrossRule.RoundAcross;

    /// <inheritdoc/>
    public override ImmutableArray<string> Takes => ["wallMm", "curveRadiusMm", "matched", "lengthIs"];

    /// <inheritdoc/>
    public override ImmutableArray<string> Needs(BeadDescription description) =>
        // A tube not made for this coil leans by its own curve, and a chord becomes an arc only on a known curve.
        !description.Matched || description.CurvedLength == CurvedLength.Chord ? ["curveRadiusMm"] : [];

    /// <inheritdoc/>
    public override bool HollowRunsThrough => true;

    /// <inheritdoc/>
    public override bool SectionsDependOnRadius => true;

    /// <inheritdoc/>
    public override BeadProfile Profile(Bead bead) => new(_ => 1, _ => 1, Math.PI / 4, EndForm.Flat, SurfaceLook.Smooth);

    /// <inheritdoc/>
    public override ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm)
    {
        if (!bead.Description.Matched)
            return [new CurvedTubeSection(bead.LengthMm, bead.Description.CurveRadiusMm!.Value, bead.BearingReachMm, bead.OuterReachMm)];
        // On its own circle all of the outside is equally far from the coil's centre, so its end faces alone meet the neighbours.
        var (sin, cos) = Math.SinCos(bead.LengthMm / (2 * radiusMm));
        (double, double) Corner(double y) => ((radiusMm + y) * sin, (radiusMm + y) * cos - radiusMm);
        return [new PolygonSection(Corner(-bead.BearingReachMm), Corner(bead.OuterReachMm), (0, bead.OuterReachMm))];
    }

    /// <inheritdoc/>
    public override double? BowRadiusMm(Bead bead, double radiusMm) => bead.Description.Matched ? radiusMm : bead.Description.CurveRadiusMm;

    /// <inheritdoc/>
    public override double? LongestPassingMm(Bead bead, double boreMm, double wireMm, double radiusMm) =>
        bead.Description.CurveRadiusMm is { } curve ? Boring.LongestCurvedMm(boreMm, wireMm, radiusMm, curve)
            : boreMm <= wireMm ? 0 : null;
}
