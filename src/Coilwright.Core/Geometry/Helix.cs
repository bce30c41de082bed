namespace Coilwright.Core.Geometry;

/// <summary>A round helix: a circle that rises evenly.</summary>
/// <remarks>Told by its centre line; millimetres and radians. A pitch of 0 is a circle. Formulas of any book on curves; worked in
/// docs/theory/worn-turn.md.</remarks>
/// <param name="RadiusMm">Radius of the cylinder it lies on, mm, above 0.</param>
/// <param name="PitchMm">Rise over one turn, mm, 0 or more.</param>
public readonly record struct Helix(double RadiusMm, double PitchMm)
{
    private double RisePerRadianMm => PitchMm / (2 * Math.PI);

    /// <summary>Length along the curve of one turn, mm.</summary>
    public double TurnLengthMm
    {
        get
        {
            var round = 2 * Math.PI * RadiusMm;
            return Math.Sqrt(round * round + PitchMm * PitchMm);
        }
    }

    /// <summary>A place on it, mm: x and y across its axis, z along it.</summary>
    /// <param name="angleRad">How far round from the x axis towards y, radians; whole turns do not matter.</param>
    /// <param name="turns">Turns from where it starts to rise.</param>
    public (double XMm, double YMm, double ZMm) At(double angleRad, double turns)
    {
        var (sin, cos) = Math.SinCos(angleRad);
        return (RadiusMm * cos, RadiusMm * sin, PitchMm * turns);
    }

    /// <summary>How sharply it bends, 1/mm: r/(r^2 + c^2) with c = pitch/2 pi.</summary>
    public double CurvaturePerMm => RadiusMm / (RadiusMm * RadiusMm + RisePerRadianMm * RisePerRadianMm);

    /// <summary>How sharply it leaves its own plane, 1/mm: c/(r^2 + c^2); 0 for a circle.</summary>
    public double TorsionPerMm => RisePerRadianMm / (RadiusMm * RadiusMm + RisePerRadianMm * RisePerRadianMm);
}
