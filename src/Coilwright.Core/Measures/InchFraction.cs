using System.Globalization;
using System.Numerics;

namespace Coilwright.Core.Measures;

/// <summary>A length in inches to the nearest sixteenth, as it is read off a ruler: 7 1/2.</summary>
/// <remarks>
/// <para>For showing only. A millimetre figure turned into sixteenths has lost up to half a sixteenth (0.79 mm); never turn it back to reckon
/// with. It is not the trade's name of a bead size either: a "1/4 inch" bead is a 6 mm one as often as not.</para>
/// <para>1 in is 25.4 mm by definition (1959). <c>default</c> is 0. Negative lengths keep their sign in front of the whole.</para>
/// </remarks>
/// <param name="Sixteenths">The length in sixteenths of an inch.</param>
public readonly record struct InchFraction(long Sixteenths)
{
    /// <summary>Millimetres in an inch, exact by definition.</summary>
    public const double MmPerInch = 25.4;

    /// <summary>The nearest sixteenth; halfway goes to the longer.</summary>
    /// <param name="mm">Length, mm, finite and below 10^12 mm in size.</param>
    /// <exception cref="ArgumentOutOfRangeException">The length is not finite, or absurd.</exception>
    public static InchFraction FromMm(double mm)
    {
        if (!(Math.Abs(mm) < 1e12)) throw new ArgumentOutOfRangeException(nameof(mm), mm, "A length to show must be finite and below 10^12 mm.");
        return new InchFraction((long)Math.Round(mm / MmPerInch * 16, MidpointRounding.AwayFromZero));
    }

    /// <summary>The length that the fraction itself stands for, mm.</summary>
    public double Mm => Sixteenths * MmPerInch / 16;

    /// <summary>Whole inches, without sign.</summary>
    public long Whole => Math.Abs(Sixteenths) / 16;

    /// <summary>Top of the reduced fraction beside <see cref="Whole"/>; 0 when there is none.</summary>
    public int Numerator => Remainder / Step;

    /// <summary>Bottom of the reduced fraction: 2, 4, 8 or 16; 1 when there is none.</summary>
    public int Denominator => 16 / Step;

    private int Remainder => (int)(Math.Abs(Sixteenths) % 16);

    private int Step => Remainder == 0 ? 16 : 1 << BitOperations.TrailingZeroCount(Remainder);

    /// <summary>The length without unit, as <c>7 1/2</c>, <c>7</c>, <c>1/2</c>, <c>-1 1/16</c>; the same in every language.</summary>
    public override string ToString()
    {
        var sign = Sixteenths < 0 ? "-" : "";
        if (Remainder == 0) return string.Create(CultureInfo.InvariantCulture, $"{sign}{Whole}");
        return Whole == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{Numerator}/{Denominator}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{Whole} {Numerator}/{Denominator}");
    }
}
