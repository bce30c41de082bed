using System.Collections.Immutable;
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

    private const int AtOnce = 4;

    // Moves four numbers on by one or two places; a place beyond the last is nought.
    private static readonly Vector256<long> OneOn = Vector256.Create(AtOnce, 0L, 1, 2), TwoOn = Vector256.Create(AtOnce, AtOnce, 0L, 1);

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

        // Several beads at once: a share and its doubt, and nothing where that would be less than nothing. Then their ends, one after the other.
        ReadOnlySpan<int> of = _kinds;
        ReadOnlySpan<double> means = _shares.AsSpan(0, of.Length), halves = _halves.AsSpan(0, of.Length);
        shares = shares[..of.Length];
        ends = ends[..of.Length];
        double along = 0;
        var i = 0;
        for (; i <= of.Length - AtOnce; i += AtOnce)
        {
            var share = Vector256.Create(means[i..]) * Vector256.Create(larger[of[i]], larger[of[i + 1]], larger[of[i + 2]], larger[of[i + 3]]);
            var half = Vector256.Create(halves[i..]);
            if (half != Vector256<double>.Zero)
            {
                share += half * draws.SignedFrom(FirstBead + (ulong)i);
                share &= Vector256.GreaterThan(share, Vector256<double>.Zero);
            }
            share.CopyTo(shares[i..]);
            share += Vector256.Shuffle(share, OneOn);
            share += Vector256.Shuffle(share, TwoOn) + Vector256.Create(along);
            share.CopyTo(ends[i..]);
            along = share[3];
        }
        for (; i < of.Length; i++)
        {
            shares[i] = Math.Max(0, means[i] * larger[of[i]] + halves[i] * draws.Signed(FirstBead + (ulong)i));
            ends[i] = along += shares[i];
        }
        return along;
    }

    // Lots take the first numbers of a draw, one for each kind; beads take the next ones, one each.
    private ulong FirstBead => (ulong)_lotRelativeSd.Length;

    // The inverse of the cut normal: one draw, no rejection, so that draws keep their numbers.
    private double LotShift(SeededDraws draws, int kind) =>
        _lotRelativeSd[kind] * NormalQuantile.Of(_lotLowest[kind] + draws.Unit((ulong)kind) * (Highest - _lotLowest[kind]));
}
