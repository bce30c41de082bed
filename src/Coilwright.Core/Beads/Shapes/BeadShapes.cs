using System.Collections.Immutable;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>Every bead shape there is. A new one is a file in this folder and a line here.</summary>
public static class BeadShapes
{
    /// <summary>The shapes, as shown to a maker who chooses one.</summary>
    public static ImmutableArray<BeadShape> All { get; } =
    [
        new Round(),
        new Rondelle(),
        new FacetedRondelle(),
        new Bicone(),
        new Cube(),
        new Coin(),
        new Oval(),
        new Barrel(),
        new Tube(),
        new CurvedTube(),
        new Chip(),
        new Nugget(),
        new Drop(),
        new Heishi(),
        new SeedBead(),
        new Focal(),
    ];

    private static readonly ImmutableDictionary<string, BeadShape> ByName = All
        .SelectMany(s => s.Aliases.Prepend(s.Name).Select(n => (Name: n, Shape: s)))
        .ToImmutableDictionary(p => p.Name, p => p.Shape, StringComparer.Ordinal);

    /// <summary>The shape of a name or of another name of the trade; null when there is none.</summary>
    public static BeadShape? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>Every name that <see cref="Find"/> knows, in alphabetical order.</summary>
    public static ImmutableArray<string> Names { get; } = [.. ByName.Keys.Order(StringComparer.Ordinal)];
}
