using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>Proposals that shift what follows by a small bead more or less, so that other beads come to lie over each other.</summary>
/// <remarks>Groups stay whole: a bead is only put or taken where no group is cut.</remarks>
internal static class ShiftProposals
{
    /// <summary>How many of a small bead are put in at once at most.</summary>
    private const int MostMore = 4;

    /// <summary>Between the two stretches that lie over each other; or, as a plain repeat comes to lie over itself all round, in every repeat.</summary>
    public static IEnumerable<Cure> Apart(Notice notice, Piece piece, Reckoned reckoned) =>
        Between(notice, piece, reckoned).Take(CureFinder.MostTried / 2).Concat(Everywhere(piece, reckoned));

    // From the middle outwards.
    private static IEnumerable<Cure> Between(Notice notice, Piece piece, Reckoned reckoned)
    {
        // The beads meant are two rows of neighbours; between them lies the largest step.
        var meant = notice.Positions;
        var (firstEnd, secondStart) = (0, 0);
        for (var i = 1; i < meant.Length; i++)
            if (meant[i] - meant[i - 1] > secondStart - firstEnd) (firstEnd, secondStart) = (meant[i - 1], meant[i]);
        if (secondStart - firstEnd < 1) (firstEnd, secondStart) = (0, piece.Order.Count - 1);
        var (from, middle) = (firstEnd + 1, (firstEnd + 1 + secondStart) / 2.0);
        var gaps = Gaps(piece).Where(g => g >= from && g <= secondStart).OrderBy(g => Math.Abs(g - middle)).ToArray();
        var off = Loose(piece).Where(b => b >= from && b < secondStart).OrderBy(b => Math.Abs(b - middle)).Take(CureFinder.MostTried / 6)
            .Select(b => EndProposals.Less(piece, b, 1));
        var small = SmallBeads(piece, reckoned);
        var more = gaps.SelectMany(g => small.SelectMany(bead => Enumerable.Range(1, MostMore).Select(n => EndProposals.More(bead, n, g))));
        return off.Concat(more);
    }

    /// <summary>In every repeat alike: a place of the first turn, and wherever the same words of the order string it.</summary>
    public static IEnumerable<Cure> Everywhere(Piece piece, Reckoned reckoned)
    {
        var off = Loose(piece).Where(FirstTurn).Take(CureFinder.MostTried / 6).Select(b =>
            Cure.Of(CureCodes.TakeOffEverywhere, new RemoveBeads(BeadPlaces.One(b)) { EveryPass = true }, piece.Beads[piece.Order.Kinds[b]].Id, [("number", b + 1)]));
        var small = SmallBeads(piece, reckoned);
        var more = Gaps(piece).Where(g => g > 0 && FirstTurn(g)).SelectMany(g => small.SelectMany(bead => Enumerable.Range(1, MostMore).Select(n =>
            Cure.Of(CureCodes.StringMoreEverywhere, new InsertBeads(g, [.. Enumerable.Repeat(bead.Id, n)]) { EveryPass = true }, bead.Id, [("count", n), ("after", g)]))));
        return off.Concat(more);

        bool FirstTurn(int bead) => bead < reckoned.Lie.Count && reckoned.Lie.Turn(bead) == 1;
    }

    // Beads that fill gaps: spacers and connectors; where a piece has none, its shortest bead.
    private static Bead[] SmallBeads(Piece piece, Reckoned reckoned)
    {
        var small = piece.Beads.Where(b => b.Role is Role.Spacer or Role.Connector).OrderBy(b => b.LengthOnWireMm).ToArray();
        return small.Length > 0 ? small : [.. reckoned.Counts.Select(k => k.Bead).Where(b => b.Role != Role.Focal).OrderBy(b => b.LengthOnWireMm).Take(1)];
    }

    // Places where a bead more cuts no group.
    private static IEnumerable<int> Gaps(Piece piece) =>
        Enumerable.Range(0, piece.Order.Count + 1).Where(g => !piece.Order.Groups.Any(group => g > group.First && g < group.End));

    // Spacers and connectors outside every group: a bead less of them is missed by nobody.
    private static IEnumerable<int> Loose(Piece piece) => Enumerable.Range(0, piece.Order.Count).Where(b =>
        piece.Beads[piece.Order.Kinds[b]].Role is Role.Spacer or Role.Connector && !piece.Order.Groups.Any(group => b >= group.First && b < group.End));
}
