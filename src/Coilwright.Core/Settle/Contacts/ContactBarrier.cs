namespace Coilwright.Core.Settle.Contacts;

/// <summary>What keeps two bodies apart: an energy that rises without end as the gap between them closes, and is nought from some width on.</summary>
/// <remarks><c>-m (1 - g/w)^2 ln(g/w)</c> for a gap g below the width w, twice smooth where it begins. At a force F bodies stand about m/F apart, so that a
/// smaller m brings them together: found first with a large one, then with it shrunk. Derived in docs/theory/settle.md.</remarks>
/// <param name="HeightNmm">m, N mm, above 0.</param>
/// <param name="WidthMm">w, mm, above 0.</param>
public readonly record struct ContactBarrier(double HeightNmm, double WidthMm)
{
    /// <summary>The energy at a gap, N mm; infinite where bodies touch or overlap.</summary>
    public double Value(double gapMm)
    {
        if (!(gapMm > 0)) return double.PositiveInfinity;
        if (gapMm >= WidthMm) return 0;
        var z = gapMm / WidthMm;
        return -HeightNmm * (1 - z) * (1 - z) * Math.Log(z);
    }

    /// <summary>The force with which it pushes at a gap, N.</summary>
    public double ForceN(double gapMm)
    {
        if (gapMm >= WidthMm) return 0;
        var z = gapMm / WidthMm;
        return HeightNmm / WidthMm * (1 - z) * ((1 - z) / z - 2 * Math.Log(z));
    }

    /// <summary>How much the push grows for each millimetre that the gap closes, N/mm; never negative.</summary>
    public double StiffnessNPerMm(double gapMm)
    {
        if (gapMm >= WidthMm) return 0;
        var z = gapMm / WidthMm;
        return HeightNmm / (WidthMm * WidthMm) * (-2 * Math.Log(z) + 4 * (1 - z) / z + (1 - z) * (1 - z) / (z * z));
    }
}
