namespace Coilwright.Core.Fit;

/// <summary>What decides the worn circumference.</summary>
public enum WornBy
{
    /// <summary>The coil is larger than the wrist asks: it stays at its own size.</summary>
    Coil,

    /// <summary>The wrist opens the coil.</summary>
    Wrist,

    /// <summary>The maker gave it.</summary>
    Given,
}

/// <summary>One turn as worn. Model: docs/theory/worn-turn.md.</summary>
/// <param name="CircumferenceMm">Centre line of the wire round the wrist, mm (C).</param>
/// <param name="BandMm">Half width of the band that C is known in, mm.</param>
/// <param name="By">What decides it.</param>
/// <param name="BearingReachMm">Distance from the wire's centre to the surface that bears on the wrist, mm (e).</param>
/// <param name="RadiusMm">C / 2 pi, mm (R).</param>
/// <param name="PitchMm">Distance from turn to turn along the arm, mm (p).</param>
/// <param name="WirePerTurnMm">Wire in one turn, mm (T).</param>
/// <param name="RoomMm">What the coil leaves beyond the wrist at rest, mm of circumference; negative when the wrist opens it.</param>
public sealed record WornTurn(double CircumferenceMm, double BandMm, WornBy By, double BearingReachMm, double RadiusMm, double PitchMm,
    double WirePerTurnMm, double RoomMm)
{
    /// <summary>Half width over which lining up is averaged, mm of wire per turn.</summary>
    public required double AveragingMm { get; init; }
}
