using System.Collections.Immutable;
using Coilwright.Core.Beads;

namespace Coilwright.Core.Listings;

/// <summary>The cylinder that toy rules test small parts with: what goes into it without being pressed is a small part. A caution, never a test passed.</summary>
/// <remarks>Its bottom is slanted, so it is deeper on one side than on the other. Millimetres.</remarks>
/// <param name="InsideMm">Inside diameter, mm.</param>
/// <param name="ShallowMm">Depth on its shallow side, mm.</param>
/// <param name="DeepMm">Depth on its deep side, mm.</param>
/// <param name="Source">Where they were read.</param>
public sealed record SmallPartsCylinder(double InsideMm, double ShallowMm, double DeepMm, string Source)
{
    /// <summary>Whether a bead may go in: never "no" of one that does. By its outline it is taken for as slim as it can lie, and for as long as the
    /// longest line in the cylinder allows, so a few that just do not go in are told as well.</summary>
    public bool MayHold(Bead bead)
    {
        double[] by = [bead.LengthMm, bead.WidthMm, bead.ThicknessMm];
        Array.Sort(by);
        return by[1] <= InsideMm && by[2] <= LongestMm;
    }

    /// <summary>How deep the lowest point of a ball that just fits the opening lies when it rests on the slanted bottom's deep side, mm, plus its height: its top.
    /// A ball is a small part exactly when it passes the opening and this is within the deep side.</summary>
    /// <remarks>The bottom falls from the shallow to the deep side over the diameter. A ball that touches the deep wall and the bottom stands with its middle
    /// r from the wall; the bottom's plane lies under it at the depth of the deep side less the slope times r, and touches r off it along the plane's normal.</remarks>
    /// <param name="diameterMm">The ball's diameter, mm.</param>
    public bool HoldsBall(double diameterMm)
    {
        if (diameterMm > InsideMm) return false;
        var (r, slope) = (diameterMm / 2, (DeepMm - ShallowMm) / InsideMm);
        var middleDepthMm = DeepMm - slope * r - r * Math.Sqrt(1 + slope * slope);
        return middleDepthMm - r >= 0;
    }

    // From the lowest point of the bottom to the rim over its shallow side.
    private double LongestMm => Math.Sqrt(InsideMm * InsideMm + DeepMm * DeepMm);
}

/// <summary>A limit on a metal that some rule sets: told so that a maker knows to ask, never compared with anything.</summary>
/// <param name="Key">Its name in the data, as <c>eu-nickel-skin</c>.</param>
/// <param name="Metal">The metal, as <c>nickel</c>.</param>
/// <param name="Value">The figure.</param>
/// <param name="Unit">Its unit, as the rule has it.</param>
/// <param name="Source">The rule.</param>
public sealed record MetalLimit(string Key, string Metal, double Value, string Unit, string Source);

/// <summary>Figures behind the cautions, from <c>data/cautions/</c>.</summary>
/// <param name="SmallParts">The small-parts cylinder.</param>
/// <param name="Metals">Limits on metals, in the order of the file.</param>
public sealed record CautionData(SmallPartsCylinder SmallParts, ImmutableArray<MetalLimit> Metals);
