using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using Coilwright.Core.Beads;
using Coilwright.Core.Numerics;
using MathNet.Numerics.Distributions;

namespace Coilwright.Core.Spread;

/// <summary>Draws of a piece as it may come out: each bead of its own length, each lot off by its own mean.</summary>
/// <remarks>
/// <para>A bead of a range or with a tolerance is uniform about its lot's mean; a lot's mean is normal, cut at three standard deviations and above
/// nought; no bead is shorter than nothing. A kind is one lot. A bead's share of the wire grows in proportion to its length.</para>
/// <para>Draw k is the same on any number of threads and in any order: nothing is kept between draws, and nothing is allocated by one.
/// Model: docs/theory/spread.md.</para>
/// </remarks>
public sealed class LengthDraws
{
    // The sd of a uniform distribution is its half width over the square root of 3.
    private static readonly double UniformHalfWidth = Math.Sqrt(3);

    private const double CutAt = 3;

    private static Vector256<long> LastOfAll => Vector256.Create(3L, 3, 3, 3);

    // A lot's mean stays above nought.
    private const double MostBelowMean = 0.999;

    private static readonly double Highest = Normal.CDF(0, 1, CutAt);

    private readonly double[] _lotLowest;
    private readonly double[] _shares;
    private readonly int[] _kinds;
    private readonly double[] _lotRelativeSd;
    private readonly int[] _lots;
    private readonly double[] _halves;
    private readonly ulong _seed;

    /// <summary>Prepares a piece.</summary>
    /// <param name="kinds">Its kinds of bead.</param>
    /// <param name="order">For each bead, the index of its kind.</param>
    /// <param name="sharesMm">For each bead, its mean share of the wire, mm.</param>
    /// <param name="seed">Seed of the draws.</param>
    public LengthDraws(ImmutableArray<Bead> kinds, ImmutableArray<int> order, ImmutableArray<double> sharesMm, ulong seed)
    {
        _shares = [.. sharesMm];
        _kinds = [.. order];
        _seed = seed;
        _halves = new double[_shares.Length];
        _lotRelativeSd = [.. kinds.Select(k => k.LotMeanSdMm / k.LengthMm)];
        _lotLowest = [.. _lotRelativeSd.Select(sd => Normal.CDF(0, 1, Math.Max(-CutAt, -MostBelowMean / sd)))];
        var lotShare = new double[kinds.Length];
        double variance = 0;
        for (var i = 0; i < _shares.Length; i++)
        {
            var kind = kinds[_kinds[i]];
            var perMm = _shares[i] / kind.LengthMm;
            _halves[i] = UniformHalfWidth * kind.BeadSdMm * perMm;
            variance += Math.Pow(kind.BeadSdMm * perMm, 2);
            lotShare[_kinds[i]] += _shares[i];
        }
        for (var k = 0; k < kinds.Length; k++) variance += Math.Pow(lotShare[k] * _lotRelativeSd[k], 2);
        LengthSdMm = Math.Sqrt(variance);
        _lots = [.. Enumerable.Range(0, kinds.Length).Where(k => lotShare[k] > 0 && _lotRelativeSd[k] > 0)];
    }

    /// <summary>Standard deviation of the length, in closed form: beads' variances add, a lot's counts for all its beads at once; mm.</summary>
    public double LengthSdMm { get; }

    /// <summary>How many beads: the room that a draw takes.</summary>
    public int Beads => _shares.Length;

    /// <summary>Draw k of the piece: each bead's share of the wire, and where it ends.</summary>
    /// <param name="k">The draw's number.</param>
    /// <param name="shares">Takes each bead's share, mm, 0 or more; room for <see cref="Beads"/>.</param>
    /// <param name="ends">Takes where each share ends, mm from the starting end; room likewise.</param>
    /// <returns>Length of the beaded wire, mm: where the last share ends.</returns>
    public double Draw(ulong k, Span<double> shares, Span<double> ends)
    {
        var draws = new SeededDraws(_seed, k);
        const int mostKindsOnStack = 256;
        var kinds = _lotRelativeSd.Length;
        var larger = kinds <= mostKindsOnStack ? stackalloc double[kinds] : new double[kinds];
        larger.Fill(1);
        foreach (var kind in _lots) larger[kind] += LotShift(draws, kind);

        return Lay(draws, larger, shares[..Beads], ends[..Beads]);
    }

    // Eight beads at once: a share and its doubt, and nothing where that would be less than nothing. Then their ends, one after the other.
    // Not within Draw, as the compiler does not make the best of a loop beside room taken on the stack.
    private double Lay(SeededDraws draws, ReadOnlySpan<double> larger, Span<double> shares, Span<double> ends)
    {
        var fours = Beads / 8 * 2;
        var means = InFours(_shares, fours);
        var halves = InFours(_halves, fours);
        var kinds = MemoryMarshal.Cast<int, FourKinds>(_kinds)[..fours];
        Span<Vector256<double>> toShares = InFours(shares, fours), toEnds = InFours(ends, fours);
        var along = Vector256<double>.Zero;
        for (var i = 1; i < fours; i += 2)
        {
            var doubt = (halves[i - 1] | halves[i]) == Vector256<double>.Zero ? default : draws.SignedHalvesFrom(NumberOf(4 * (i - 1)));
            var near = Share(means[i - 1], larger, kinds[i - 1], halves[i - 1] * doubt.Lower);
            var far = Share(means[i], larger, kinds[i], halves[i] * doubt.Upper);
            var nearEnds = Ends(near);
            var farEnds = Ends(far) + Vector256.Shuffle(nearEnds, LastOfAll);
            nearEnds += along;
            farEnds += along;
            along = Vector256.Shuffle(farEnds, LastOfAll);
            (toShares[i - 1], toShares[i], toEnds[i - 1], toEnds[i]) = (near, far, nearEnds, farEnds);
        }
        var (end, rest) = (along[0], 4 * fours);
        for (var i = rest; i < Beads; i++)
        {
            var doubt = draws.SignedHalf(NumberOf(rest) + (ulong)((i - rest) % 4), upper: i - rest >= 4);
            shares[i] = Math.Max(0, _shares[i] * larger[_kinds[i]] + _halves[i] * doubt);
            ends[i] = end += shares[i];
        }
        return end;
    }

    private static Span<Vector256<double>> InFours(Span<double> numbers, int fours) => MemoryMarshal.Cast<double, Vector256<double>>(numbers)[..fours];

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Share(Vector256<double> mean, ReadOnlySpan<double> larger, FourKinds kinds, Vector256<double> doubt)
    {
        var share = mean * Vector256.Create(larger[kinds.A], larger[kinds.B], larger[kinds.C], larger[kinds.D]) + doubt;
        return share & Vector256.GreaterThan(share, Vector256<double>.Zero);
    }

    // Each moved on by one place and added, then by two: 0 1 2 3 becomes 0 01 012 0123. A place beyond the last is nought.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector256<double> Ends(Vector256<double> shares)
    {
        shares += Vector256.Shuffle(shares, Vector256.Create(4, 0L, 1, 2));
        return shares + Vector256.Shuffle(shares, Vector256.Create(4, 4, 0L, 1));
    }

    // Lots take the first numbers of a draw, one for each kind; beads take the next ones, two beads each: of eight beads the first four take the lower halves of four
    // numbers, the others their upper halves.
    private ulong NumberOf(int firstOfEight) => (ulong)(_lotRelativeSd.Length + firstOfEight / 2);

    // The inverse of the cut normal: one draw, no rejection, so that draws keep their numbers.
    private double LotShift(SeededDraws draws, int kind) =>
        _lotRelativeSd[kind] * NormalQuantile.Of(_lotLowest[kind] + draws.Unit((ulong)kind) * (Highest - _lotLowest[kind]));

    private readonly record struct FourKinds(int A, int B, int C, int D);
}
