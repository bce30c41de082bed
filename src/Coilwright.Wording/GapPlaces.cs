using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;

namespace Coilwright.Wording;

/// <summary>Where a run of beads stands: between which groups, and which beads it is.</summary>
internal sealed class GapPlaces(Reckoned reckoned, Language language, Func<string, string>? beadName = null)
{
    private readonly Func<string, string> _name = beadName ?? new BeadNames(reckoned).Of;

    /// <summary>The place of a run: a part of a sentence.</summary>
    /// <param name="first">Its first bead, from 0.</param>
    /// <param name="count">How many beads it has.</param>
    /// <param name="order">The order that it stands in; the piece's own when null.</param>
    public string Of(int first, int count, StringingOrder? order = null) => language.Fill(language.Ideas.Where,
        ("before", GroupAt(order ?? reckoned.Piece.Order, first - 1)), ("after", GroupAt(order ?? reckoned.Piece.Order, first + count)), ("first", first + 1), ("last", count > 1 ? first + count : null), ("one", count > 1 ? null : first + 1));

    // The group that a bead stands in, or the bead itself where it stands in none.
    private string? GroupAt(StringingOrder order, int bead)
    {
        if (bead < 0 || bead >= order.Count) return null;
        return order.ReadingGroups.FirstOrDefault(g => bead >= g.First && bead < g.End) is { } group ? group.Name : _name(reckoned.Piece.Beads[order.Kinds[bead]].Id);
    }
}
