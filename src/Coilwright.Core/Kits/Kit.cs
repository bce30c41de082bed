using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Kits;

/// <summary>A piece to be packed as kits: as it is written, and as it was reckoned.</summary>
/// <param name="Of">The piece and how many kits of it.</param>
/// <param name="Reckoned">Its readings.</param>
public sealed record KitPiece(ShoppingPiece Of, Reckoned Reckoned)
{
    /// <summary>Which version of the piece it is, where versions are kept; null where they are not.</summary>
    public long? Version { get; init; }
}

/// <summary>What lies in one bag of a kit: one kind of bead, or the caps or dangles of its ends.</summary>
/// <param name="Item">The bead's name in the order; <see cref="ShoppingItem.GluedCap"/> for caps, <see cref="ShoppingItem.Dangle"/> for dangles.</param>
/// <param name="Kind">The kind in its piece; null for caps and dangles.</param>
/// <param name="Use">How many are strung, or glued on.</param>
/// <param name="Spare">How many lie beside them: those asked for with each piece.</param>
public sealed record KitBag(string Item, KindCount? Kind, int Use, int Spare)
{
    /// <summary>The piece's own key letter; empty for caps and dangles, which have none.</summary>
    public string Letter => Kind?.Letter ?? "";

    /// <summary>How many are counted into the bag.</summary>
    public int Count => Use + Spare;
}

/// <summary>The kits of one piece: all alike.</summary>
/// <param name="Name">What the piece is called in lists.</param>
/// <param name="Reckoned">Its readings.</param>
/// <param name="Count">How many kits.</param>
/// <param name="Bags">What lies in each, by key letter, caps and dangles last.</param>
public sealed record Kit(string Name, Reckoned Reckoned, int Count, ImmutableArray<KitBag> Bags)
{
    /// <summary>Which version of the piece lies in it; null where versions are not kept.</summary>
    public long? Version { get; init; }

    /// <summary>Whether its report says stop: it cannot be made or worn like this.</summary>
    public bool SaysStop => Reckoned.Notices.Any(n => n.Severity == Severity.Stop);

    /// <summary>Whether a bead in it is of metal.</summary>
    public bool HasMetal => Bags.Any(b => b.Kind?.Bead.Description.Material is { IsMetal: true });

    /// <summary>Beads strung in each.</summary>
    public int Beads => Reckoned.Counts.Sum(k => k.Count);
}
