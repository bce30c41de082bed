using System.Buffers;
using System.Collections.Immutable;
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

    // A lot's mean stays above nought.
    private const double MostBelowMean = 0.999;

    private static readonly double Highest = Normal.CDF(0, 1, CutAt);

    private readonly double[] _lotLowest;
    private readonly double[] _shares;
    private readonly int[] _kinds;
    private readonly double[] _lotRelativeSd;
    private readonly double _certainMm;
    private readonly int[] _lots;
    private readonly double[] _lotShareMm;
    private readonly int[] _drawnBeads;
    private readonly double[] _drawnHalf;
    private readonly ulong _seed;
    private readonly bool _mayVanish;

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
        var halves = new double[_shares.Length];
        _lotRelativeSd = [.. kinds.Select(k => k.LotMeanSdMm / k.LengthMm)];
        _lotLowest = [.. _lotRelativeSd.Select(sd => Normal.CDF(0, 1, Math.Max(-CutAt, -MostBelowMean / sd)))];
        var lotShare = new double[kinds.Length];
        double variance = 0;
        for (var i = 0; i < _shares.Length; i++)
        {
            var kind = kinds[_kinds[i]];
            var perMm = _shares[i] / kind.LengthMm;
            halves[i] = UniformHalfWidth * kind.BeadSdMm * perMm;
            variance += Math.Pow(kind.BeadSdMm * perMm, 2);
            lotShare[_kinds[i]] += _shares[i];
            _certainMm += _shares[i];
        }
        for (var k = 0; k < kinds.Length; k++) variance += Math.Pow(lotShare[k] * _lotRelativeSd[k], 2);
        LengthSdMm = Math.Sqrt(variance);
        _lots = [.. Enumerable.Range(0, kinds.Length).Where(k => lotShare[k] > 0 && _lotRelativeSd[k] > 0)];
        _lotShareMm = lotShare;
        _drawnBeads = [.. Enumerable.Range(0, _shares.Length).Where(i => halves[i] > 0)];
        _drawnHalf = [.. _drawnBeads.Select(i => halves[i])];
        _mayVanish = _drawnBeads.Any(i => halves[i] > _shares[i] * (1 - Math.Min(CutAt * _lotRelativeSd[_kinds[i]], MostBelowMean)));
    }

    /// <summary>Standard deviation of the length, in closed form: beads' variances add, a lot's counts for all its beads at once; mm.</summary>
    public double LengthSdMm { get; }

    /// <summary>Length of the beaded wire in draw k, mm.</summary>
    public double LengthMm(ulong k)
    {
        if (_mayVanish) return SumOfShares(k);
        var draws = new SeededDraws(_seed, k);
        var length = _certainMm;
        foreach (var kind in _lots) length += _lotShareMm[kind] * LotShift(draws, kind);
        return length + draws.SumOfSigned(FirstBead, _drawnHalf);
    }

    /// <summary>Each bead's share of the wire in draw k, mm, into <paramref name="shares"/>; their sum is <see cref="LengthMm"/> of k.</summary>
    public void Shares(ulong k, Span<double> shares)
    {
        var draws = new SeededDraws(_seed, k);
        const int atOnce = 256;
        Span<double> room = stackalloc double[atOnce];
        var larger = _lotRelativeSd.Length <= atOnce ? room[.._lotRelativeSd.Length] : new double[_lotRelativeSd.Length];
        larger.Fill(1);
        foreach (var kind in _lots) larger[kind] += LotShift(draws, kind);
        ReadOnlySpan<int> kinds = _kinds.AsSpan(0, shares.Length);
        ReadOnlySpan<double> means = _shares.AsSpan(0, shares.Length);
        for (var i = 0; i < shares.Length; i++) shares[i] = means[i] * larger[kinds[i]];
        for (var first = 0; first < _drawnBeads.Length; first += atOnce)
        {
            var signed = room[..Math.Min(atOnce, _drawnBeads.Length - first)];
            draws.Signed(FirstBead + (ulong)first, signed);
            var beads = _drawnBeads.AsSpan(first, signed.Length);
            var half = _drawnHalf.AsSpan(first, signed.Length);
            for (var i = 0; i < signed.Length; i++) shares[beads[i]] = Math.Max(0, shares[beads[i]] + half[i] * signed[i]);
        }
    }

    // Where a bead of a short lot may come out shorter than nothing, the sum of all beads is not the length.
    private double SumOfShares(ulong k)
    {
        var room = ArrayPool<double>.Shared.Rent(_shares.Length);
        var shares = room.AsSpan(0, _shares.Length);
        Shares(k, shares);
        double sum = 0;
        foreach (var share in shares) sum += share;
        ArrayPool<double>.Shared.Return(room);
        return sum;
    }

    // Lots take the first numbers of a draw, one for each kind; beads whose length is in doubt take the next ones.
    private ulong FirstBead => (ulong)_lotRelativeSd.Length;

    // The inverse of the cut normal: one draw, no rejection, so that draws keep their numbers.
    private double LotShift(SeededDraws draws, int kind) =>
        _lotRelativeSd[kind] * NormalQuantile.Of(_lotLowest[kind] + draws.Unit((ulong)kind) * (Highest - _lotLowest[kind]));
}
