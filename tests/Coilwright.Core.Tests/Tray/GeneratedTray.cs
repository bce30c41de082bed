using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Tray;

namespace Coilwright.Core.Tests.Tray;

/// <summary>Trays of any size, of nobody's beads: the same for the same seed.</summary>
public static class GeneratedTray
{
    private static readonly string[] Finishes = ["matt", "glossy", "frosted", "silver-lined", "rainbow", "Über-glanz", "=SUM(A1)", "-dull"];
    private static readonly string[] Stones = ["Glass", "Slate", "River stone", "Muschel", "Ahorn", "Zinn"];
    private static readonly (string Shape, bool Across, bool Thick)[] Shapes =
        [("round", false, false), ("rondelle", true, false), ("cube", false, false), ("oval", true, false), ("tube", true, false), ("bicone", false, false), ("drop", true, true), ("nugget", true, true), ("coin", false, true)];

    /// <summary>A tray.</summary>
    /// <param name="kinds">How many kinds.</param>
    /// <param name="seed">Which of them.</param>
    public static ImmutableArray<TrayKind> Of(int kinds, int seed = 1)
    {
        var chance = new Random(seed);
        return [.. Enumerable.Range(0, kinds).Select(i => Kind(i, kinds, chance))];
    }

    private static TrayKind Kind(int number, int of, Random chance)
    {
        var (shape, across, thick) = Shapes[chance.Next(Shapes.Length)];
        var (finish, stone) = (Finishes[chance.Next(Finishes.Length)], Stones[chance.Next(Stones.Length)]);
        var length = 2 + 0.5 * chance.Next(24);
        var width = across || thick ? 2 + 0.5 * chance.Next(24) : length;
        var description = new BeadDescription
        {
            Id = string.Create(CultureInfo.InvariantCulture, $"k{number:00000}"),
            Name = string.Create(CultureInfo.InvariantCulture, $"{finish} {stone} {BeadShapes.Find(shape)!.Name} {length:0.#}{(number % 7 == 0 ? ", \"best\"\nof all" : "")}"),
            Shape = shape,
            Length = (number % 5) switch { 0 => new BeadLength.Range(length, length + 1.25), 1 => new BeadLength.Row(20, length * 20 + 1.0 / 3, 0.5), 2 => new BeadLength.Nominal(length, 0.1), _ => new BeadLength.Nominal(length) },
            WidthMm = across || thick ? width : null,
            ThicknessMm = thick ? width / 2 : null,
            BoreMm = chance.Next(3) == 0 ? null : 0.8,
            HoleOffsetMm = chance.Next(6) == 0 ? -0.05 : null,
            Colours = [.. Enumerable.Range(0, chance.Next(3)).Select(_ => new Srgb((byte)chance.Next(256), (byte)chance.Next(256), (byte)chance.Next(256)))],
            Coating = chance.Next(4) == 0 ? null : finish,
            OtherMaterial = stone,
            DensityGPerCm3 = 2.5 + chance.NextDouble(),
            Pack = chance.Next(2) == 0 ? null : new Pack("strand", 1 + chance.Next(90)),
            Price = chance.Next(2) == 0 ? null : chance.Next(2000) / 100m,
            Role = (Role)chance.Next(5),
            Aliases = chance.Next(3) == 0 ? [$"no. {chance.Next(of)}", "@home"] : [],
        };
        if (!Bead.TryMake(description, out var bead, out var faults)) throw new InvalidOperationException(string.Join('\n', faults));
        return new TrayKind(bead!, chance.Next(5) == 0 ? null : string.Create(CultureInfo.InvariantCulture, $"Cabinet {(char)('A' + chance.Next(6))} {1 + chance.Next(40)}"));
    }
}
