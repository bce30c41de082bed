using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Settle;

/// <summary>Whether two pieces sit alike: whether all that settling looks at is the same in both.</summary>
/// <remarks>Then <see cref="Settling.Of"/> gives the same bits for both, and an answer found for one need not be looked for again. Titles, notes, groups, wishes, ends and a bead's name, colours, coating, material,
/// price, pack, lot and aliases are not looked at; its mass is. What is not known here to be idle counts, so that pieces may be told apart that sit alike, never the other way round.</remarks>
public static class SitAlike
{
    /// <summary>Compares two pieces.</summary>
    public static bool Are(Piece one, Piece other)
    {
        if (one.Wire != other.Wire || one.Wearer != other.Wearer || !one.MeasuredRows.SequenceEqual(other.MeasuredRows)) return false;
        // By kinds, not bead by bead: what a measured row tells of a kind counts for all of its kind.
        return one.Order.Kinds.SequenceEqual(other.Order.Kinds) && one.Order.Kinds.Distinct().All(k => Are(one.Beads[k], other.Beads[k]));
    }

    private static bool Are(Bead one, Bead other) => one.MassG == other.MassG && Bare(one) == Bare(other);

    private static BeadDescription Bare(Bead bead) => bead.Description with
    {
        Name = null,
        Colours = [],
        Coating = null,
        Material = null,
        OtherMaterial = null,
        DensityGPerCm3 = null,
        MassG = null,
        Shows = null,
        Pack = null,
        Price = null,
        Lot = null,
        Aliases = [],
    };
}
