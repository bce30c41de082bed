namespace Coilwright.Core.StringingMaterials.MemoryWire;

/// <summary>Tensile strength of spring wire for a band of thickness, as its standard gives it.</summary>
/// <param name="OverMm">Thickness over this, mm.</param>
/// <param name="ToMm">Up to and with this, mm.</param>
/// <param name="LeastMPa">Least tensile strength, MPa.</param>
/// <param name="MostMPa">Most, MPa; null where none is given.</param>
public sealed record StrengthBand(double OverMm, double ToMm, double LeastMPa, double? MostMPa);

/// <summary>The coil's wire as a spring that the wrist opens: moment and stress.</summary>
/// <remarks>Linear elastic, a round wire, small pitch, opened evenly all round: M = E I (1/R0 - 1/R), surface stress E d/2 (1/R0 - 1/R). The wire's own
/// stress from being coiled is not known and not counted. Not valid past yield. Derived in docs/theory/strength.md; checked against worked values.</remarks>
public static class WireStrength
{
    /// <summary>Bending stiffness E I of round wire, N mm2.</summary>
    public static double BendingStiffnessNmm2(double wireMm, double youngsModulusMPa) => youngsModulusMPa * Math.PI / 64 * Math.Pow(wireMm, 4);

    /// <summary>Moment that opens the coil from R0 to R, N mm; negative when it is closed.</summary>
    public static double OpeningMomentNmm(double wireMm, double youngsModulusMPa, double relaxedRadiusMm, double radiusMm) =>
        BendingStiffnessNmm2(wireMm, youngsModulusMPa) * (1 / relaxedRadiusMm - 1 / radiusMm);

    /// <summary>Stress at the wire's surface when the coil is opened from R0 to R, MPa.</summary>
    public static double SurfaceStressMPa(double wireMm, double youngsModulusMPa, double relaxedRadiusMm, double radiusMm) =>
        youngsModulusMPa * wireMm / 2 * (1 / relaxedRadiusMm - 1 / radiusMm);
}
