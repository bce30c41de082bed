using System.Globalization;
using System.Numerics;

namespace Coilwright.Core.Tests.Pricing;

/// <summary>A fraction of whole numbers of any length: the second way to reckon what the program reckons in decimals.</summary>
internal readonly record struct Fraction(BigInteger Over, BigInteger Under)
{
    public static Fraction Of(decimal value)
    {
        var bits = decimal.GetBits(value);
        var digits = new BigInteger((uint)bits[2]) << 64 | new BigInteger((uint)bits[1]) << 32 | new BigInteger((uint)bits[0]);
        return new Fraction(value < 0 ? -digits : digits, BigInteger.Pow(10, bits[3] >> 16 & 0xFF));
    }

    public static implicit operator Fraction(decimal value) => Of(value);

    public static Fraction operator +(Fraction a, Fraction b) => new(a.Over * b.Under + b.Over * a.Under, a.Under * b.Under);

    public static Fraction operator -(Fraction a, Fraction b) => new(a.Over * b.Under - b.Over * a.Under, a.Under * b.Under);

    public static Fraction operator *(Fraction a, Fraction b) => new(a.Over * b.Over, a.Under * b.Under);

    public static Fraction operator /(Fraction a, Fraction b) => b.Over.Sign < 0 ? new(-a.Over * b.Under, a.Under * -b.Over) : new(a.Over * b.Under, a.Under * b.Over);

    public static bool operator <(Fraction a, Fraction b) => a.Over * b.Under < b.Over * a.Under;

    public static bool operator >(Fraction a, Fraction b) => b < a;

    public bool IsZero => Over.IsZero;

    public Fraction Abs => new(BigInteger.Abs(Over), Under);

    public double Double => Math.Exp(BigInteger.Log(BigInteger.Abs(Over)) - BigInteger.Log(Under)) * Over.Sign;

    /// <summary>The least multiple of a step that is not less than this, a hair of 10^-10 left aside: worked on whole numbers.</summary>
    public Fraction Up(Fraction step)
    {
        var units = (this - new Fraction(1, 20_000_000_000)) / step;
        var floor = BigInteger.DivRem(units.Over, units.Under, out var rest);
        var ceiling = rest.Sign > 0 ? floor + 1 : floor;
        return new Fraction(ceiling * step.Over, step.Under);
    }

    public override string ToString() => Double.ToString("R", CultureInfo.InvariantCulture);
}
