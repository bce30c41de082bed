using System.Collections.Immutable;
using Coilwright.Core.Lies;

namespace Coilwright.Core.Alignment;

/// <summary>How a plain repeat drifts from turn to turn, in closed form.</summary>
/// <remarks>An order is a plain repeat when it is one run of beads twice or more, the last time cut short or not. For a repeat of length P the drift
/// is T/P less the nearest whole number. Model: docs/theory/lining-up.md.</remarks>
public static class RepeatDriftModel
{
    /// <summary>Beads in the shortest repeat of an order; null when it is none.</summary>
    public static int? RepeatOf(ImmutableArray<int> kinds)
    {
        // The longest proper prefix that is also a suffix leaves the shortest period (Knuth, Morris, Pratt 1977).
        var prefix = new int[kinds.Length];
        for (int i = 1, k = 0; i < kinds.Length; i++)
        {
            while (k > 0 && kinds[i] != kinds[k]) k = prefix[k - 1];
            if (kinds[i] == kinds[k]) k++;
            prefix[i] = k;
        }
        var period = kinds.Length - prefix[^1];
        return 2 * period <= kinds.Length ? period : null;
    }

    /// <summary>The drift; null when the order is no plain repeat.</summary>
    public static RepeatDrift? Of(ImmutableArray<int> kinds, Lie lie)
    {
        if (RepeatOf(kinds) is not { } beads) return null;
        // The first bead's share has a bare end, so a repeat is measured one bead on where the row is long enough.
        var first = beads + 1 < lie.Count ? 1 : 0;
        double length = 0;
        for (var i = first; i < first + beads; i++) length += lie.SharesMm[i];
        var turns = lie.WirePerTurnMm / length;
        var drift = turns - Math.Round(turns, MidpointRounding.AwayFromZero);
        return new RepeatDrift(beads, length, drift, drift * length);
    }
}
