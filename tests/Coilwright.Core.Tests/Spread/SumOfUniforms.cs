using System.Numerics;

namespace Coilwright.Core.Tests.Spread;

/// <summary>The distribution of a sum of n numbers that are uniform in (0, 1): the Irwin-Hall distribution, in closed form.</summary>
/// <remarks>F(x) = 1/n! sum over k up to x of (-1)^k C(n, k) (x - k)^n. Source: J. O. Irwin and P. Hall, Biometrika 19 (1927). In whole numbers of any size, because
/// the terms of a long sum are far larger than the sum.</remarks>
internal static class SumOfUniforms
{
    /// <summary>The probability that the sum is at most x.</summary>
    /// <param name="n">How many, 1 or more.</param>
    /// <param name="x">Taken to a millionth.</param>
    public static double Cdf(int n, double x)
    {
        const int parts = 1_000_000;
        var at = (BigInteger)Math.Round(Math.Clamp(x, 0, n) * parts);
        BigInteger sum = 0, choose = 1, factorial = 1;
        for (var k = 0; k <= n && k * (BigInteger)parts <= at; k++)
        {
            var term = choose * BigInteger.Pow(at - k * (BigInteger)parts, n);
            sum += k % 2 == 0 ? term : -term;
            choose = choose * (n - k) / (k + 1);
        }
        for (var k = 2; k <= n; k++) factorial *= k;
        var whole = factorial * BigInteger.Pow(parts, n);
        // A double holds what is left of the ratio after it has been taken to 18 digits.
        var digits = BigInteger.Pow(10, 18);
        return (double)(sum * digits / whole) / 1e18;
    }
}
