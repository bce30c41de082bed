using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>Proposals that make turns more, or turn the whole piece.</summary>
internal static class TurnProposals
{
    // A bracelet goes round a dozen times at most; more is no longer the same piece.
    private const int MostTimes = 12;

    public static Cure FocalOnTop(Notice notice, Piece piece) =>
        Cure.Of(CureCodes.FocalOnTop, new SetWearer(piece.Wearer with { FocalOnTop = true }), notice.BeadId);

    /// <summary>Beads strung again until there are so many turns.</summary>
    public static IEnumerable<Cure> MoreTurns(Piece piece, Reckoned reckoned, double turns) =>
        Again(piece, reckoned, turns * reckoned.Worn.WirePerTurnMm - reckoned.Lie.BeadedMm);

    /// <summary>Neighbouring beads without the focal strung again, so many as a missing length of wire takes.</summary>
    public static IEnumerable<Cure> Again(Piece piece, Reckoned reckoned, double missing)
    {
        foreach (var (first, end) in Plain(piece))
        {
            var shares = reckoned.Lie.SharesMm.AsSpan(first, end - first);
            double length = 0;
            foreach (var share in shares) length += share;
            if (length > missing)
            {
                // The last of the stretch: a row of them as long as what is missing, or a bead longer or shorter.
                var (row, from) = (0.0, end);
                while (row < missing) row += reckoned.Lie.SharesMm[--from];
                yield return Again(from, end - from, 2);
                if (end - from > 1) yield return Again(from + 1, end - from - 1, 2);
            }
            else
            {
                var times = 1 + (int)Math.Ceiling(missing / length);
                if (times <= MostTimes) yield return Again(first, end - first, times);
            }
        }
    }

    private static Cure Again(int first, int count, int times) => Cure.Of(CureCodes.StringAgain,
        times == 2 ? new DuplicateBeads(new BeadPlaces.Row(first, count)) : new RepeatBeads(new BeadPlaces.Row(first, count), times),
        numbers: [("first", first + 1), ("last", first + count), ("times", times)]);

    // Stretches without a focal, the last first: there she strings on.
    private static IEnumerable<(int First, int End)> Plain(Piece piece)
    {
        var end = piece.Order.Count;
        for (var i = piece.Order.Count - 1; i >= -1; i--)
        {
            if (i >= 0 && piece.Beads[piece.Order.Kinds[i]].Role != Role.Focal) continue;
            if (i + 1 < end) yield return (i + 1, end);
            end = i;
        }
    }
}
