using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Cures;

/// <summary>Proposals at the ends: what holds there, and where they meet.</summary>
internal static class EndProposals
{
    // More than a handful from the end it is no longer the end that is changed.
    private const int NearTheEnd = 6;

    // As many beads as she would still call an end; what is longer is a part of the pattern.
    private const int MostAtOnce = 8;

    private const double LoopStepMm = 0.1;

    public static IEnumerable<Cure> Holding(Notice notice, Piece piece, double toleranceMm)
    {
        var (atStart, which) = (notice.Words["end"] == "start", notice.Words["end"]);
        var end = atStart ? piece.Ends.Start : piece.Ends.Finish;
        var inside = Math.Round(Math.Ceiling(notice.Numbers["neededInsideMm"] / LoopStepMm - 1e-6) * LoopStepMm, 2);
        // A practice bend was of the smaller loop and says nothing of this one.
        var larger = end with { InsideMm = inside, MeasuredMm = null };
        yield return Cure.Of(CureCodes.LargerEndLoop, new SetEnds(atStart ? piece.Ends with { Start = larger } : piece.Ends with { Finish = larger }),
            notice.BeadId, [("insideMm", inside)], [("end", which)]);
        var order = piece.Order;
        for (var off = 1; off <= Math.Min(NearTheEnd, order.Count - 1); off++)
        {
            var at = atStart ? off : order.Count - 1 - off;
            var bead = piece.Beads[order.Kinds[at]];
            if (bead.BoreMm is { } bore && bore + toleranceMm > notice.Numbers["loopMm"]) continue;
            yield return Cure.Of(CureCodes.MoveToEnd, new MoveBeads(BeadPlaces.One(at), atStart ? 0 : order.Count), bead.Id, [("number", at + 1)], [("end", which)]);
        }
    }

    /// <summary>Beads more at the finish, so many that they take a length of wire as nearly as can be.</summary>
    public static IEnumerable<Cure> Longer(Piece piece, Reckoned reckoned, double byMm)
    {
        var count = piece.Order.Count;
        var kinds = reckoned.Counts.Where(k => k.Bead.Role != Role.Focal)
            .Select(k => (k.Bead, Beads: (int)Math.Max(1, Math.Round(byMm / k.Bead.LengthOnWireMm)))).Where(k => k.Beads <= MostAtOnce)
            .OrderBy(k => Modesty(k.Bead.Role)).ThenBy(k => Math.Abs(byMm - k.Beads * k.Bead.LengthOnWireMm)).ToArray();
        foreach (var (bead, beads) in kinds)
            yield return More(bead, beads, count);
        // Before the last bead, where that one is meant to be last.
        foreach (var (bead, beads) in kinds)
            yield return More(bead, beads, count - 1);
        foreach (var again in TurnProposals.Again(piece, reckoned, byMm)) yield return again;
    }

    /// <summary>Beads less at the finish, or else at the start.</summary>
    public static IEnumerable<Cure> Shorter(Piece piece, Reckoned reckoned, double byMm)
    {
        var count = piece.Order.Count;
        foreach (var fromStart in (bool[])[false, true])
        {
            var rows = new List<(int Beads, double Off)>();
            double length = 0;
            for (var n = 1; n < Math.Min(count, MostAtOnce); n++)
            {
                var at = fromStart ? n - 1 : count - n;
                if (piece.Beads[piece.Order.Kinds[at]].Role == Role.Focal) break;
                length += reckoned.Lie.SharesMm[at];
                rows.Add((n, Math.Abs(length - byMm)));
            }
            foreach (var (n, _) in rows.OrderBy(r => r.Off).Take(3))
                yield return Less(piece, fromStart ? 0 : count - n, n);
        }
    }

    internal static Cure More(Bead bead, int beads, int at) => Cure.Of(CureCodes.StringMore,
        new InsertBeads(at, [.. Enumerable.Repeat(bead.Id, beads)]), bead.Id, [("count", beads), ("after", at)]);

    internal static Cure Less(Piece piece, int first, int count) => count == 1
        ? Cure.Of(CureCodes.TakeOff, new RemoveBeads(BeadPlaces.One(first)), piece.Beads[piece.Order.Kinds[first]].Id, [("number", first + 1)])
        : Cure.Of(CureCodes.TakeOffRow, new RemoveBeads(new BeadPlaces.Row(first, count)), numbers: [("first", first + 1), ("last", first + count)]);

    /// <summary>How little a role is looked at: what is added or left out shows least among spacers.</summary>
    internal static int Modesty(Role role) => role switch { Role.Spacer => 0, Role.Connector => 1, Role.Accent => 2, _ => 3 };
}
