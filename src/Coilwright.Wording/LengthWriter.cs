using System.Globalization;
using Coilwright.Core.Measures;

namespace Coilwright.Wording;

/// <summary>Lengths as they are shown: millimetres first, inches to the sixteenth beside them.</summary>
internal static class LengthWriter
{
    // From here on a tenth of a millimetre is finer than anyone bends, strings or measures.
    private const double WholeFromMm = 100;

    internal static string Number(double value, int decimals)
    {
        var rounded = Math.Round(value, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    internal static string NumberUp(double value, int decimals)
    {
        // A hair is taken off first, so that an exact number stays what it is.
        const double hair = 1e-6;
        var scale = Math.Pow(10, decimals);
        return Number(Math.Ceiling((value - hair) * scale) / scale, decimals);
    }

    internal static string Mm(double mm, Terms terms) => Number(mm, Math.Abs(mm) >= WholeFromMm ? 0 : 1) + " " + terms.Mm;

    private static string Inches(double mm, Terms terms) => InchFraction.FromMm(mm) + " " + terms.Inch;

    internal static string Fine(double mm, Terms terms) => Number(mm, 2) + " " + terms.Mm;

    private static string Both(double mm, Terms terms) => WithInches(Mm(mm, terms), InchFraction.FromMm(mm), terms);

    internal static string Exact(double mm, Terms terms, LengthUnits units) => units switch
    {
        LengthUnits.Mm => Fine(mm, terms),
        LengthUnits.Inches => Inches(mm, terms),
        _ => WithInches(Fine(mm, terms), InchFraction.FromMm(mm), terms),
    };

    internal static string In(double mm, Terms terms, LengthUnits units) => units switch
    {
        LengthUnits.Mm => Mm(mm, terms),
        LengthUnits.Inches => Inches(mm, terms),
        _ => Both(mm, terms),
    };

    internal static string UpIn(double mm, Terms terms, LengthUnits units)
    {
        // A hair is taken off first, so that an exact 25.4 mm stays one inch.
        const double hairMm = 1e-6;
        var inches = new InchFraction((long)Math.Ceiling((mm - hairMm) / InchFraction.MmPerInch * 16));
        var millimetres = Number(Math.Ceiling(mm - hairMm), 0) + " " + terms.Mm;
        return units switch
        {
            LengthUnits.Mm => millimetres,
            LengthUnits.Inches => inches + " " + terms.Inch,
            _ => WithInches(millimetres, inches, terms),
        };
    }

    private static string WithInches(string mm, InchFraction inches, Terms terms) =>
        inches.Sixteenths == 0 ? mm : $"{mm} ({inches} {terms.Inch})";
}
