using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Stringing;

namespace Coilwright.Core.Arrangement;

/// <summary>How much wire two kinds of bead take where they meet, on one curve: a bead's share is half of each of its two joints.</summary>
internal sealed class Joints
{
    private readonly double[,] _halfMm;
    private readonly double[] _endMm;

    public Joints(ImmutableArray<Bead> beads, double radiusMm)
    {
        _halfMm = new double[beads.Length, beads.Length];
        _endMm = new double[beads.Length];
        ImmutableArray<double> Shares(params int[] kinds) => new CurveShares(beads, new StringingOrder([.. kinds], [])).AtRadius(radiusMm);
        for (var a = 0; a < beads.Length; a++)
        {
            _halfMm[a, a] = Shares(a, a, a)[1] / 2;
            _endMm[a] = Shares(a, a)[0] - _halfMm[a, a];
            // Of the middle one half is its joint with its like.
            for (var b = 0; b < beads.Length; b++)
                if (b != a) _halfMm[a, b] = Shares(a, a, b)[1] - _halfMm[a, a];
        }
        MostMm = Math.Max(_halfMm.Cast<double>().Max(), _endMm.Max());
    }

    /// <summary>The largest half of a joint, mm.</summary>
    public double MostMm { get; }

    /// <summary>The half of a bead's joint with the one before it, mm; -1 for none before it.</summary>
    public double BeforeMm(int before, int kind) => before < 0 ? _endMm[kind] : _halfMm[before, kind];

    /// <summary>The half of a bead's joint with the one after it, mm; -1 for none after it.</summary>
    public double AfterMm(int kind, int after) => after < 0 ? _endMm[kind] : _halfMm[kind, after];

    /// <summary>What a bead takes among its like, mm.</summary>
    public double SelfMm(int kind) => 2 * _halfMm[kind, kind];
}
