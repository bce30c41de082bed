using System.Collections.Immutable;

namespace Coilwright.Core.Tray;

/// <summary>What the kinds of a tray can be told apart by, each with how many there are of it; in the order in which they are shown.</summary>
/// <param name="Shapes">Shapes, by their own names.</param>
/// <param name="Families">Colour families, by key.</param>
/// <param name="Materials">Materials, as in a piece file.</param>
/// <param name="Coatings">Finishes, as they are written.</param>
/// <param name="Drawers">Drawers, as they are written.</param>
public sealed record TrayFacets(ImmutableArray<(string Key, int Kinds)> Shapes, ImmutableArray<(string Key, int Kinds)> Families, ImmutableArray<(string Key, int Kinds)> Materials,
    ImmutableArray<(string Key, int Kinds)> Coatings, ImmutableArray<(string Key, int Kinds)> Drawers)
{
    /// <summary>What a kind is made of, as in a piece file; null when nobody said.</summary>
    public static string? MaterialOf(TrayKind kind) => kind.Bead.Description.Material?.Key ?? kind.Bead.Description.OtherMaterial;
}
