namespace Coilwright.Core.Fit;

/// <summary>Where the focal lands.</summary>
/// <param name="Index">Its index in the order: of several, the one nearest the middle of the piece.</param>
/// <param name="BeadId">Its kind.</param>
/// <param name="Turn">Its turn.</param>
/// <param name="AngleDeg">Its angle, degrees, 0 the top.</param>
/// <param name="OffMm">How far off the top, mm of wire; positive the way the beads run.</param>
/// <param name="MoveStartDeg">How far to turn the starting end so that it lies on the top, degrees.</param>
/// <param name="AngleFromDeg">Its angle at the narrow end of the band of C, degrees.</param>
/// <param name="AngleToDeg">Its angle at the wide end, degrees.</param>
public sealed record FocalPlace(int Index, string BeadId, int Turn, double AngleDeg, double OffMm, double MoveStartDeg, double AngleFromDeg,
    double AngleToDeg);
