using System.Collections.Immutable;
using System.Text;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Findings;
using Coilwright.Core.Numerics;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage;

namespace Coilwright.Benchmarks;

/// <summary>Pieces drawn from a seed: eight kinds of different shapes, four clusters as named groups, tubes and spacers between.</summary>
/// <remarks>As full as the examples: names, materials, packs, prices, lots, and lengths as one figure, as a range or as a row. Their order is written in the notation as a maker would, groups first and then so many lines of their names, and read from it.</remarks>
public static class GeneratedPieces
{
    private static readonly string[] Clusters =
    [
        "wrack = pebble, disc, pebble, disc",
        "tuft = round, heishi, round, heishi, round",
        "star = wheel, bicone, wheel",
        "moon = disc, seed, round, seed, disc",
    ];

    private static readonly string[] Names = ["wrack", "tuft", "star", "moon"];
    private static readonly int[] Sizes = [4, 5, 3, 5];

    /// <summary>The program's own data.</summary>
    public static ReckoningData Data { get; } = DataFiles.LoadDefault().Data ?? throw new InvalidOperationException("The program's data does not read.");

    public static ImmutableArray<Bead> Kinds { get; } =
    [
        Make("pebble", "Jasper pebble", "nugget", new BeadLength.Range(6, 8), 8, 8, "jasper", Role.Main, "#6fa3a8"),
        Make("disc", "Pearl disc", "coin", new BeadLength.Nominal(4, 0.2), null, 3, "pearl", Role.Accent, "#f0dcc6"),
        Make("round", "Agate round", "round", new BeadLength.Nominal(6, 0.1), null, null, "agate", Role.Main, "#d9785a"),
        Make("tube", "Curved brass tube", "curved-tube", new BeadLength.Nominal(9, 0.3), 3, 3, "brass", Role.Connector, "#b08d62", matched: true),
        Make("wheel", "Cut glass wheel", "faceted-rondelle", new BeadLength.Nominal(4, 0.1), 6, 6, "crystal-glass", Role.Accent, "#8fae7e", endFace: 3),
        Make("heishi", "Hematite heishi", "heishi", new BeadLength.Row(40, 48, 0.5), 4, 4, "hematite", Role.Spacer, "#a9adb0"),
        Make("bicone", "Amethyst bicone", "bicone", new BeadLength.Nominal(4), null, null, "amethyst", Role.Accent, "#7c6a9c"),
        Make("seed", "Glass seed bead", "seed-bead", new BeadLength.Row(20, 28, 0.5), 2.2, 2.2, "soda-lime-glass", Role.Spacer, "#c9b458"),
    ];

    private static ImmutableArray<string> Ids { get; } = [.. Kinds.Select(k => k.Id)];

    /// <summary>A piece of so many beads on a coil that makes five turns of them.</summary>
    public static Piece OfFiveTurns(int beads)
    {
        var order = OrderOf(beads);
        return Strung(order, order.Kinds.Sum(k => Kinds[k].LengthMm) / 5.1);
    }

    /// <summary>A piece of so many beads on a bracelet coil of 190 mm a loop, as many turns as that takes.</summary>
    public static Piece OnABraceletCoil(int beads) => Strung(OrderOf(beads), 190);

    private static StringingOrder OrderOf(int beads) => Read(OrderText(beads)).Order ?? throw new InvalidOperationException("The order does not read.");

    private static Piece Strung(StringingOrder order, double loopMm) => new()
    {
        Title = "A piece of many beads",
        Beads = Kinds,
        Wire = new CoilWire(0.62, CoilDatum.MeasuredLoop, loopMm, Data.Steels["stainless-302"]),
        Ends = new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3), new WireEnd(EndFinish.TurnedLoop, 3), 20, 0),
        Wearer = new Wearer(160, 0),
        Order = order,
        Written = OrderTree.Of(OrderText(order.Count)),
        Wishes = new Wishes { LiningUp = LiningUpWish.Mix, Turns = Math.Floor(order.Kinds.Sum(k => Kinds[k].LengthMm) / loopMm) },
    };

    /// <summary>Reads an order that strings these kinds.</summary>
    public static ReadOrder Read(string text) => OrderNotation.Read(text, Ids);

    /// <summary>The order of so many beads, as a note.</summary>
    public static string OrderText(int beads)
    {
        var draws = new SeededDraws(7, 0);
        ulong k = 0;
        var text = new StringBuilder().AppendJoin('\n', Clusters).Append('\n');
        for (int strung = 0, onLine = 0; strung < beads;)
        {
            var cluster = draws.Below(k++, Names.Length);
            if (strung + Sizes[cluster] <= beads) Add(Names[cluster], Sizes[cluster]);
            var between = 1 + draws.Below(k++, 3);
            for (var s = 0; s < between && strung < beads; s++) Add(s % 2 == 0 ? "tube" : "heishi", 1);

            void Add(string name, int count)
            {
                text.Append(onLine == 0 ? "\n" : ", ").Append(name);
                strung += count;
                onLine = (onLine + 1) % 8;
            }
        }
        return text.ToString();
    }

    private static Bead Make(string id, string name, string shape, BeadLength length, double? width, double? thickness, string material, Role role,
        string colour, double? endFace = null, bool matched = false) =>
        Bead.TryMake(new BeadDescription
        {
            Id = id,
            Name = name,
            Shape = shape,
            Length = length,
            WidthMm = width,
            ThicknessMm = thickness,
            BoreMm = 1,
            EndFaceMm = endFace,
            Matched = matched,
            Role = role,
            Material = Data.Materials[material],
            Pack = new Pack("strand", 40),
            Price = 6.5m,
            Lot = "market, box 3",
            Colours = [Srgb.TryParse(colour, out var c) ? c : default],
        }, out var bead, out var faults) ? bead! : throw new InvalidOperationException(string.Join("; ", faults));
}
