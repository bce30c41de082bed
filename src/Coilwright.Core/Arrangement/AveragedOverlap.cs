namespace Coilwright.Core.Arrangement;

/// <summary>How much of one stretch of wire lies over another, averaged over shifts spread evenly, in closed form.</summary>
internal static class AveragedOverlap
{
    /// <summary>Length shared, mm.</summary>
    /// <param name="apartMm">From the start of the earlier stretch to that of the later one, mm of wire.</param>
    /// <param name="earlierMm">Length of the earlier one, mm.</param>
    /// <param name="laterMm">Length of the later one, mm.</param>
    /// <param name="shiftMm">Middle of the shifts, mm: the wire of a turn.</param>
    /// <param name="halfMm">Half their width, mm, above 0.</param>
    public static double Mm(double apartMm, double earlierMm, double laterMm, double shiftMm, double halfMm)
    {
        // Moved on by u the earlier stretch starts u - apart beyond the later one's start; what they share there is a sum of four ramps.
        double from = shiftMm - halfMm - apartMm, to = shiftMm + halfMm - apartMm;
        if (to <= -earlierMm || from >= laterMm) return 0;
        return (Summed(to, earlierMm, laterMm) - Summed(from, earlierMm, laterMm)) / (2 * halfMm);
    }

    private static double Summed(double x, double earlier, double later) =>
        Ramp(x + earlier) - Ramp(x + earlier - later) - Ramp(x) + Ramp(x - later);

    private static double Ramp(double x) => x > 0 ? x * x / 2 : 0;
}
