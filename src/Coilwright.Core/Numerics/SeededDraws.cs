using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;

namespace Coilwright.Core.Numerics;

/// <summary>Random draws by counter: draw k of stream s under a seed is the same whenever and on whatever thread it is asked.</summary>
/// <remarks>SplitMix64's finaliser over a Weyl sequence. Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators,
/// OOPSLA 2014 (constants from memory; checked against the published outputs for seed 1234567 in the tests). Not for secrets.</remarks>
public readonly struct SeededDraws(ulong seed, ulong stream)
{
    private const ulong Weyl = 0x9E3779B97F4A7C15UL;
    private const double HalfStep = 1.0 / (1U << 31);
    private readonly ulong _base = Mix(unchecked(Mix(seed) + stream * Weyl + 1));

    /// <summary>Draw k as 64 bits.</summary>
    public ulong Bits(ulong k) => Mix(unchecked(_base + (k + 1) * Weyl));

    /// <summary>Draw k as a whole number in [0, below).</summary>
    public int Below(ulong k, int below) => (int)Math.BigMul(Bits(k), (ulong)below, out _);

    /// <summary>Draw k in (0, 1).</summary>
    public double Unit(ulong k) => ((Bits(k) >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Draw k in (-1, 1).</summary>
    public double Signed(ulong k) => (unchecked((long)Bits(k)) >> 10) * (1.0 / (1L << 53)) + 0.5 / (1L << 53);

    /// <summary>A draw in (-1, 1) from one half of draw k, to one part in 2^31: enough for what is measured with a ruler, and two for the price of one.</summary>
    /// <param name="k">The draw's number.</param>
    /// <param name="upper">From its upper 32 bits, else from its lower ones.</param>
    public double SignedHalf(ulong k, bool upper) => unchecked((int)(upper ? Bits(k) >> 32 : Bits(k))) * HalfStep + 0.5 * HalfStep;

    /// <summary>Eight draws in (-1, 1) from the halves of four, each the same as <see cref="SignedHalf"/> gives it alone.</summary>
    /// <param name="first">The first one's number.</param>
    /// <returns>Those from the lower halves, and those from the upper ones.</returns>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public (Vector256<double> Lower, Vector256<double> Upper) SignedHalvesFrom(ulong first)
    {
        var bits = Mix(Vector256.Create(unchecked(_base + (first + 1) * Weyl)) + Further);
        return (Fraction(bits << 32), Fraction(bits & Vector256.Create(0xFFFFFFFF00000000UL)));

        // A half in the upper 32 bits of a whole number, read with its sign; then the middle of its step.
        static Vector256<double> Fraction(Vector256<ulong> half)
        {
            var wholes = Vector256.ConvertToDouble(half.AsInt64());
            return wholes * (HalfStep / (1UL << 32)) + Vector256.Create(0.5 * HalfStep);
        }
    }

    /// <summary>The finaliser.</summary>
    public static ulong Mix(ulong z)
    {
        unchecked
        {
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return z ^ (z >> 31);
        }
    }

    // Several at once: the same steps as one by one, in whole numbers, so that the outcome is the same to the last bit.
    private static readonly Vector256<ulong> Further = Vector256.Create(0, Weyl, unchecked(2 * Weyl), unchecked(3 * Weyl));

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<ulong> Mix(Vector256<ulong> z)
    {
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >>> 31);
    }
}
