using System.Runtime.Intrinsics;

namespace Coilwright.Core.Numerics;

/// <summary>Random draws by counter: draw k of stream s under a seed is the same whenever and on whatever thread it is asked.</summary>
/// <remarks>SplitMix64's finaliser over a Weyl sequence. Source: G. L. Steele, D. Lea, C. H. Flood, Fast Splittable Pseudorandom Number Generators,
/// OOPSLA 2014 (constants from memory; checked against the published outputs for seed 1234567 in the tests). Not for secrets.</remarks>
public readonly struct SeededDraws(ulong seed, ulong stream)
{
    private const ulong Weyl = 0x9E3779B97F4A7C15UL;
    private readonly ulong _base = Mix(unchecked(Mix(seed) + stream * Weyl + 1));

    /// <summary>Draw k as 64 bits.</summary>
    public ulong Bits(ulong k) => Mix(unchecked(_base + (k + 1) * Weyl));

    /// <summary>Draw k as a whole number in [0, below).</summary>
    public int Below(ulong k, int below) => (int)Math.BigMul(Bits(k), (ulong)below, out _);

    /// <summary>Draw k in (0, 1).</summary>
    public double Unit(ulong k) => ((Bits(k) >> 11) + 0.5) * (1.0 / (1UL << 53));

    /// <summary>Draw k in (-1, 1).</summary>
    public double Signed(ulong k) => (unchecked((long)Bits(k)) >> 10) * (1.0 / (1L << 53)) + 0.5 / (1L << 53);

    /// <summary>Four draws from the first on in (-1, 1), each the same as <see cref="Signed(ulong)"/> gives it alone.</summary>
    /// <param name="first">The first one's number.</param>
    public Vector256<double> SignedFrom(ulong first) =>
        Vector256.ConvertToDouble(Mix(Vector256.Create(unchecked(_base + (first + 1) * Weyl)) + Further).AsInt64() >> 10) * (1.0 / (1L << 53)) + Vector256.Create(0.5 / (1L << 53));

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

    private static Vector256<ulong> Mix(Vector256<ulong> z)
    {
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >>> 31);
    }
}
