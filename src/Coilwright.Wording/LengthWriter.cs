using Coilwright.Core.Measures;

namespace Coilwright.Wording;

/// <summary>Lengths as they are shown: millimetres first, inches to the sixteenth beside them.</summary>
internal static class LengthWriter
{
    // From here on a tenth of a millimetre is finer than anyone bends, strings or measures.
    private const double WholeFromMm = 100;

    internal static string Mm(double mm, Language language) => language.Number(mm, Math.Abs(mm) >= WholeFromMm ? 0 : 1) + " " + language.Terms.Mm;

    private static string Inches(double mm, Language language) => InchFraction.FromMm(mm) + " " + language.Terms.Inch;

    internal static string Fine(double mm, Language language) => language.Number(mm, 2) + " " + language.Terms.Mm;

    private static string Both(double mm, Language language) => WithInches(Mm(mm, language), InchFraction.FromMm(mm), language);

    internal static string Exact(double mm, Language language) => language.Units switch
    {
        LengthUnits.Mm => Fine(mm, language),
        LengthUnits.Inches => Inches(mm, language),
        _ => WithInches(Fine(mm, language), InchFraction.FromMm(mm), language),
    };

    internal static string In(double mm, Language language, LengthUnits units) => units switch
    {
        LengthUnits.Mm => Mm(mm, language),
        LengthUnits.Inches => Inches(mm, language),
        _ => Both(mm, language),
    };

    internal static string UpIn(double mm, Language language, LengthUnits units)
    {
        // A hair is taken off first, so that an exact 25.4 mm stays one inch.
        const double hairMm = 1e-6;
        var inches = new InchFraction((long)Math.Ceiling((mm - hairMm) / InchFraction.MmPerInch * 16));
        var millimetres = language.Number(Math.Ceiling(mm - hairMm), 0) + " " + language.Terms.Mm;
        return units switch
        {
            LengthUnits.Mm => millimetres,
            LengthUnits.Inches => inches + " " + language.Terms.Inch,
            _ => WithInches(millimetres, inches, language),
        };
    }

    private static string WithInches(string mm, InchFraction inches, Language language) =>
        inches.Sixteenths == 0 ? mm : $"{mm} ({inches} {language.Terms.Inch})";
}
