using System.Globalization;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>Beads in key letters, as a maker calls them out: <c>3A, B, 3A</c>.</summary>
public static class LetterRuns
{
    /// <summary>A stretch of the order.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="first">Its first bead, from 0.</param>
    /// <param name="count">How many beads.</param>
    public static string Of(Reckoned reckoned, int first, int count)
    {
        var letters = reckoned.Counts.ToDictionary(k => k.KindIndex, k => k.Letter);
        var kinds = reckoned.Piece.Order.Kinds;
        var parts = new List<string>();
        for (var i = first; i < first + count;)
        {
            var next = i;
            while (next < first + count && kinds[next] == kinds[i]) next++;
            parts.Add(next - i == 1 ? letters[kinds[i]] : string.Create(CultureInfo.InvariantCulture, $"{next - i}{letters[kinds[i]]}"));
            i = next;
        }
        return string.Join(", ", parts);
    }
}
