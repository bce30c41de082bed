using System.Numerics;
using Coilwright.Core.Numerics;
using CsCheck;

namespace Coilwright.Core.Tests.Numerics;

public class SeededDrawsTests
{
    // Reference: first five outputs of SplitMix64 for seed 1234567, as printed in the task "Pseudo-random numbers/Splitmix64" of Rosetta Code
    // (read as quoted in several public test suites). SplitMix64 adds its constant before it mixes.
    private static readonly ulong[] Published =
        [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];

    private const ulong Weyl = 0x9E3779B97F4A7C15;

    [Fact]
    public void Mix_gives_the_published_outputs_of_SplitMix64()
    {
        for (var k = 0; k < Published.Length; k++)
            Assert.Equal(Published[k], SeededDraws.Mix(unchecked(1234567UL + (ulong)(k + 1) * Weyl)));
    }

    [Fact]
    public void The_published_outputs_come_out_of_whole_number_arithmetic_too()
    {
        // The same with unbounded whole numbers, so that no shift or overflow of the machine has a part in it.
        var mask = (BigInteger.One << 64) - 1;
        BigInteger state = 1234567;
        foreach (var published in Published)
        {
            state = (state + Weyl) & mask;
            var z = ((state ^ (state >> 30)) * 0xBF58476D1CE4E5B9UL) & mask;
            z = ((z ^ (z >> 27)) * 0x94D049BB133111EBUL) & mask;
            Assert.Equal(published, (ulong)(z ^ (z >> 31)));
        }
    }

    [Fact]
    public void A_draw_is_the_same_whenever_it_is_asked() => Gen.Select(Gen.ULong, Gen.ULong, Gen.ULong).Sample((seed, stream, k) =>
    {
        var once = new SeededDraws(seed, stream);
        var bits = once.Bits(k);
        _ = once.Bits(k ^ 1);
        Assert.Equal(bits, once.Bits(k));
        Assert.Equal(bits, new SeededDraws(seed, stream).Bits(k));
    });

    [Fact]
    public void Draws_in_a_row_are_the_draws_one_by_one_to_the_last_bit() => Gen.Select(Gen.ULong, Gen.ULong, Gen.ULong).Sample((seed, stream, first) =>
    {
        var draws = new SeededDraws(seed, stream);
        var (lower, upper) = draws.SignedHalvesFrom(first);
        for (var i = 0; i < 4; i++)
        {
            Assert.Equal(draws.SignedHalf(unchecked(first + (ulong)i), upper: false), lower[i]);
            Assert.Equal(draws.SignedHalf(unchecked(first + (ulong)i), upper: true), upper[i]);
        }
    });

    [Fact]
    public void The_two_halves_of_a_draw_are_its_bits_read_as_fractions_inside_one() => Gen.Select(Gen.ULong, Gen.ULong).Sample((seed, k) =>
    {
        var draws = new SeededDraws(seed, 0);
        double upper = draws.SignedHalf(k, upper: true), lower = draws.SignedHalf(k, upper: false);
        Assert.InRange(upper, -1 + 1e-10, 1 - 1e-10);
        Assert.InRange(lower, -1 + 1e-10, 1 - 1e-10);
        // A whole number of halves of a step of 2^-31 each: reading them back gives the bits.
        var back = ((ulong)(uint)(int)Math.Floor(upper * (1L << 31)) << 32) | (uint)(int)Math.Floor(lower * (1L << 31));
        Assert.Equal(draws.Bits(k), back);
    });

    [Fact]
    public void Whole_draws_keep_below_their_bound_and_draws_of_one_inside_it() => Gen.Select(Gen.ULong, Gen.ULong, Gen.Int[1, int.MaxValue]).Sample((seed, k, below) =>
    {
        var draws = new SeededDraws(seed, 0);
        Assert.InRange(draws.Below(k, below), 0, below - 1);
        Assert.InRange(draws.Unit(k), double.Epsilon, 1 - 1e-16);
    });

    [Fact]
    public void Small_whole_draws_come_equally_often_and_streams_differ()
    {
        const int faces = 6, throws = 60_000;
        var counts = new int[faces];
        var draws = new SeededDraws(42, 7);
        for (ulong k = 0; k < throws; k++) counts[draws.Below(k, faces)]++;
        // Six standard deviations of a binomial count: sqrt(60000 x 1/6 x 5/6) = 91. The draws are fixed, so this never fails by luck.
        Assert.All(counts, c => Assert.InRange(c, throws / faces - 548, throws / faces + 548));
        Assert.NotEqual(new SeededDraws(42, 7).Bits(0), new SeededDraws(42, 8).Bits(0));
        Assert.NotEqual(new SeededDraws(42, 7).Bits(0), new SeededDraws(43, 7).Bits(0));
    }
}
