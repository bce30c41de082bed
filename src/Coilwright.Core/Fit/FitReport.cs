using System.Collections.Immutable;

namespace Coilwright.Core.Fit;

/// <summary>How the piece sits. "Does not fit" is an answer, with its reasons.</summary>
/// <param name="TurnsWorn">Turns that the beads cover when worn (L / T).</param>
/// <param name="TurnsWornFrom">The same at the wide end of the band of C.</param>
/// <param name="TurnsWornTo">The same at the narrow end.</param>
/// <param name="TurnsRelaxed">Turns at rest.</param>
/// <param name="TurnsDesigned">Turns she designed it for, or null.</param>
/// <param name="Fits">Whether nothing stops it from being strung and worn.</param>
/// <param name="Reasons">Codes of the notices that stop it; empty when it fits.</param>
/// <param name="EndsOverlapMm">How far the ends lie over each other, mm; negative is a gap. Against the whole number of turns designed, or the
/// nearest one.</param>
/// <param name="OverlapTurns">The whole number of turns that the overlap is measured against.</param>
/// <param name="InsideRelaxedMm">Circumference that the beaded coil leaves free at rest, mm.</param>
/// <param name="EndLoopHidden">Whether each end bead is large enough to hide the end loop, start then finish; null where there is no loop.</param>
public sealed record FitReport(double TurnsWorn, double TurnsWornFrom, double TurnsWornTo, double TurnsRelaxed, double? TurnsDesigned, bool Fits,
    ImmutableArray<string> Reasons, double EndsOverlapMm, int OverlapTurns, double InsideRelaxedMm, ImmutableArray<bool?> EndLoopHidden)
{
    // What a maker does not see between two ends: our choice.
    private const double MeetWithinMm = 0.5;

    /// <summary>Whether the ends meet as far as anyone can see: within half a millimetre.</summary>
    public bool EndsMeet => Math.Abs(EndsOverlapMm) < MeetWithinMm;
}
