namespace Coilwright.Core.Measures;

/// <summary>Angles round the wrist: degrees, 0 the top, positive the way the beads run.</summary>
public static class Angles
{
    /// <summary>The same direction in (-180, 180].</summary>
    public static double NormalizedDeg(double deg)
    {
        var turned = Math.IEEERemainder(deg, 360);
        return turned <= -180 ? turned + 360 : turned;
    }
}
