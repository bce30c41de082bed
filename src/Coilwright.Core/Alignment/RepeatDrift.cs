namespace Coilwright.Core.Alignment;

/// <summary>How a plain repeat drifts from turn to turn.</summary>
/// <param name="Beads">Beads in one repeat.</param>
/// <param name="LengthMm">Wire in one repeat, mm (P).</param>
/// <param name="Drift">Signed distance of T / P to the nearest whole number: 0 lines up, 0.5 is brick, small is a spiral.</param>
/// <param name="DriftMm">The same in mm of wire per turn.</param>
public sealed record RepeatDrift(int Beads, double LengthMm, double Drift, double DriftMm);
