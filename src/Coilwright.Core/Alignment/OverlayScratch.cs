using Coilwright.Core.Numerics;

namespace Coilwright.Core.Alignment;

/// <summary>Room to lay one order after another and hold each against itself one turn on, without allocating: for shuffles and draws.</summary>
/// <remarks>The same sums as <see cref="VisibleRow"/>, taken in one walk along both turns at once; a test holds the two together. Where a focal hides
/// something the walk goes over the row of what is seen instead.</remarks>
internal sealed class OverlayScratch(int beads, double[] weights, int tags, FocalHiding hiding, double pitchMm)
{
    private readonly int[] _kinds = new int[beads];
    private readonly double[] _shares = new double[beads];
    private readonly VisibleRow _row = new(0);
    private readonly List<(double From, double To)> _hidden = [];

    public Span<int> Kinds => _kinds;

    public Span<double> Shares => _shares;

    /// <summary>What is hidden of the row that was last weighed.</summary>
    public List<(double From, double To)> Hidden => _hidden;

    /// <summary>Lays the beads in the order of a shuffle.</summary>
    public void Shuffle(ReadOnlySpan<int> kinds, ReadOnlySpan<double> shares, SeededDraws draws)
    {
        kinds.CopyTo(_kinds);
        shares.CopyTo(_shares);
        for (var i = _kinds.Length - 1; i > 0; i--)
        {
            var j = draws.Below((ulong)i, i + 1);
            (_kinds[i], _kinds[j]) = (_kinds[j], _kinds[i]);
            (_shares[i], _shares[j]) = (_shares[j], _shares[i]);
        }
    }

    /// <summary>Weighted and plain length of what lies over anything one turn on.</summary>
    public (double Weighted, double Over) Weigh(double wirePerTurnMm)
    {
        if (!hiding.Hides) return Walk(wirePerTurnMm);
        hiding.Find(_kinds, _shares, wirePerTurnMm, pitchMm, _hidden);
        _row.Lay(_shares, _kinds, _hidden);
        return _row.OverAt(wirePerTurnMm, weights, tags);
    }

    // Both turns are full from end to end, so what lies over what changes only where a bead ends on the one or on the other: one step for each.
    private (double Weighted, double Over) Walk(double shift)
    {
        var kinds = _kinds;
        var shares = _shares;
        var j = 0;
        double endJ = shares[0];
        while (endJ <= shift)
        {
            if (++j == shares.Length) return (0, 0);
            endJ += shares[j];
        }
        var i = 0;
        double at = shift, endI = shift + shares[0], weighted = 0;
        var row = kinds[0] * tags;
        while (true)
        {
            if (endI < endJ)
            {
                weighted += (endI - at) * weights[row + kinds[j]];
                at = endI;
                i++;
                endI += shares[i];
                row = kinds[i] * tags;
            }
            else
            {
                weighted += (endJ - at) * weights[row + kinds[j]];
                at = endJ;
                if (++j == shares.Length) return (weighted, at - shift);
                endJ += shares[j];
            }
        }
    }
}
