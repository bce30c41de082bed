using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;

namespace Coilwright.Web.Bench;

/// <summary>Beads and groups of a piece as she knows them, to choose from. Two beads of one name are told apart by their ids.</summary>
public sealed class PieceNames(Piece piece)
{
    /// <summary>All beads.</summary>
    public ImmutableArray<(string Id, string Name)> Beads => BeadsOf(_ => true);

    /// <summary>Groups that read as one thing, which rules can count.</summary>
    public ImmutableArray<(string Id, string Name)> Groups =>
        [.. PieceRules.NamesForRules(piece.Order, []).Where(name => piece.Beads.All(bead => bead.Id != name)).Select(name => (name, name))];

    /// <summary>What a wish for lining up can be for: the groups that are strung, or the beads where the order has none.</summary>
    public ImmutableArray<(string Id, string Name)> Wishable =>
        [.. piece.Order.Groups.Select(group => group.Name).Distinct().Order(StringComparer.Ordinal).Select(name => (name, name)), .. piece.Order.Groups.IsEmpty ? Beads : []];

    /// <summary>Some beads.</summary>
    public ImmutableArray<(string Id, string Name)> BeadsOf(Func<Bead, bool> which) => [.. piece.Beads.Where(which).Select(bead => (bead.Id, Of(bead.Id)))];

    /// <summary>The name of a bead by its id; a group's own name stays as it is.</summary>
    public string Of(string id)
    {
        if (piece.Beads.FirstOrDefault(bead => bead.Id == id) is not { } found) return id;
        return piece.Beads.Count(bead => bead.Name == found.Name) == 1 ? found.Name : $"{found.Name} ({id})";
    }
}
