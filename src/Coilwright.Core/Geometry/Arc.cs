namespace Coilwright.Core.Geometry;

/// <summary>A piece of a circle and the straight line between its ends.</summary>
/// <remarks>Millimetres. For chords up to the diameter: an arc of at most half a turn.</remarks>
public static class Arc
{
    /// <summary>How far the arc bows away from its chord, mm: R - sqrt(R^2 - c^2/4).</summary>
    /// <param name="chordMm">Straight from end to end, mm, from 0 to 2 R.</param>
    /// <param name="radiusMm">Radius, mm, above 0.</param>
    public static double SagittaMm(double chordMm, double radiusMm)
    {
        var half = chordMm / 2;
        // R - sqrt(R^2 - h^2), written so that two near-equal numbers are not taken from each other.
        return half * half / (radiusMm + Math.Sqrt(radiusMm * radiusMm - half * half));
    }

    /// <summary>Length along the arc over a chord, mm: 2 R asin(c/2R).</summary>
    /// <param name="chordMm">Straight from end to end, mm, from 0 to 2 R.</param>
    /// <param name="radiusMm">Radius, mm, above 0.</param>
    public static double LengthMm(double chordMm, double radiusMm) => 2 * radiusMm * Math.Asin(chordMm / (2 * radiusMm));

    /// <summary>Chord under an arc, mm: 2 R sin(s/2R).</summary>
    /// <param name="lengthMm">Length along the arc, mm, from 0 to pi R.</param>
    /// <param name="radiusMm">Radius, mm, above 0.</param>
    public static double ChordMm(double lengthMm, double radiusMm) => 2 * radiusMm * Math.Sin(lengthMm / (2 * radiusMm));
}
