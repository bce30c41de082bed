using System.Collections.Immutable;
using Coilwright.Core.Beads;

namespace Coilwright.Core.Alignment;

/// <summary>Which stretches of the wire a focal hides beneath it: what nobody sees lines up with nothing.</summary>
/// <remarks>A focal hides its neighbours under its overhang, and as much of the turns beside it as its outline stands over more than half of:
/// turn k beside is hidden where half its width exceeds k times the pitch. The focal itself is seen. Model: docs/theory/lining-up.md.</remarks>
internal sealed class FocalHiding
{
    private readonly double?[] _halfMm;
    private readonly double[] _halfWidthMm;
    private readonly bool _any;

    public FocalHiding(ImmutableArray<Bead> kinds, double radiusMm)
    {
        _halfMm = [.. kinds.Select(k => k.Shape.HidesHalfMm(k, radiusMm))];
        _halfWidthMm = [.. kinds.Select(k => k.WidthMm / 2)];
        _any = _halfMm.Any(h => h is not null);
    }

    /// <summary>Whether any kind hides anything.</summary>
    public bool Hides => _any;

    /// <summary>Hidden stretches, mm from the starting end, in order and not overlapping; into <paramref name="hidden"/>.</summary>
    public void Find(ReadOnlySpan<int> order, ReadOnlySpan<double> shares, double wirePerTurnMm, double pitchMm, List<(double From, double To)> hidden)
    {
        hidden.Clear();
        if (!_any) return;
        double along = 0;
        for (var i = 0; i < order.Length; i++)
        {
            if (_halfMm[order[i]] is { } half)
            {
                var middle = along + shares[i] / 2;
                if (half > shares[i] / 2)
                {
                    hidden.Add((middle - half, along));
                    hidden.Add((along + shares[i], middle + half));
                }
                for (var turn = 1; _halfWidthMm[order[i]] > turn * pitchMm; turn++)
                {
                    hidden.Add((middle - turn * wirePerTurnMm - half, middle - turn * wirePerTurnMm + half));
                    hidden.Add((middle + turn * wirePerTurnMm - half, middle + turn * wirePerTurnMm + half));
                }
            }
            along += shares[i];
        }
        hidden.Sort();
        var kept = 0;
        for (var next = 0; next < hidden.Count; next++)
        {
            var (from, to) = hidden[next];
            if (kept > 0 && from <= hidden[kept - 1].To)
                hidden[kept - 1] = (hidden[kept - 1].From, Math.Max(to, hidden[kept - 1].To));
            else
                hidden[kept++] = (from, to);
        }
        hidden.RemoveRange(kept, hidden.Count - kept);
    }
}
