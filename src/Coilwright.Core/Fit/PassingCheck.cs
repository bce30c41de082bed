using Coilwright.Core.Beads;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Fit;

/// <summary>Whether a bead goes over the coil's wire, at rest as it is strung.</summary>
/// <remarks>Judged by the longest bead of a lot that has a spread. Model: docs/theory/passing.md.</remarks>
public static class PassingCheck
{
    /// <summary>Judges one kind.</summary>
    /// <param name="bead">The kind.</param>
    /// <param name="wire">The wire.</param>
    /// <param name="boreToleranceMm">How much the hole may be smaller than stated, mm.</param>
    public static PassingReport Of(Bead bead, CoilWire wire, double boreToleranceMm)
    {
        // A uniform spread ends sqrt(3) standard deviations from its middle.
        var longest = bead.LengthOnWireMm + Math.Sqrt(3) * bead.BeadSdMm;
        bool PassesWith(double boreMm) =>
            boreMm > wire.WireMm && !(bead.Shape.LongestPassingMm(bead, boreMm, wire.WireMm, wire.RelaxedRadiusMm) < longest);

        var needed = NeededBoreMm(PassesWith, wire.WireMm, WidestBoreMm(bead));
        if (bead.BoreMm is not { } bore)
            return new PassingReport(bead.Id, needed is null ? Passes.No : Passes.Unknown, null, null, needed);
        var passes = !PassesWith(bore) ? Passes.No : PassesWith(bore - boreToleranceMm) ? Passes.Yes : Passes.Tight;
        return new PassingReport(bead.Id, passes, bore - wire.WireMm,
            bead.Shape.LongestPassingMm(bead, bore, wire.WireMm, wire.RelaxedRadiusMm), needed);
    }

    /// <summary>The widest hole that a bead has room for, mm: as wide as it is across, or as its offset leaves.</summary>
    private static double WidestBoreMm(Bead bead) => Math.Min(bead.WidthMm, bead.ThicknessMm - 2 * Math.Abs(bead.HoleOffsetMm));

    private static double? NeededBoreMm(Func<double, bool> passesWith, double wireMm, double widestMm)
    {
        // A wider hole never passes less.
        if (!passesWith(widestMm)) return null;
        double low = wireMm, high = widestMm;
        for (var i = 0; i < 50; i++)
        {
            var bore = 0.5 * (low + high);
            if (passesWith(bore)) high = bore; else low = bore;
        }
        return high;
    }
}
