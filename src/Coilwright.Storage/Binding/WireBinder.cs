using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes wire at hand of a file's values, noting everything wrong with them.</summary>
internal sealed class WireBinder(ReckoningData data, FaultList faults)
{
    public static readonly FieldSet File = new("format", "lossMm", "keepFromMm", "wire");
    public static readonly FieldSet Lot = new("name", "wireMm", "gauge", "steel", "loopMm", "insideMm", "centreMm", "loops", "wireLengthMm", "massG", "massOz", "howMany", "price", "offcut");

    /// <summary>Lots in one file at most: more than any drawer holds.</summary>
    public const int MostLots = 500;

    internal static readonly Limits Loops = Limits.Above0To(5000, "");
    internal static readonly Limits LengthMm = Limits.Above0To(CuttingRules.LongestMm, "mm");
    internal static readonly Limits HowMany = Limits.Between(0, 100_000, "");
    internal static readonly Limits LossMm = Limits.Between(0, 20, "mm");
    internal static readonly Limits KeepMm = Limits.Between(0, 10_000, "mm");
    private static readonly Limits MassG = Limits.Above0To(10_000, "g");
    private static readonly Limits MassOz = Limits.Above0To(350, "oz");
    private static readonly Limits Price = Limits.Above0To(1_000_000, "");

    /// <summary>The wire; null, with faults noted, when it cannot be read.</summary>
    public WireAtHand? Bind(JsonValue root)
    {
        if (Fields.Of(root, File, faults) is not { } fields) return null;
        var loss = fields.Number("lossMm", LossMm);
        var keep = fields.Number("keepFromMm", KeepMm);
        var lots = ImmutableArray.CreateBuilder<WireLot>();
        if (!fields.Require("wire") || fields.List("wire") is not { } items) return null;
        var count = 0;
        foreach (var item in items)
        {
            if (faults.Full) return null;
            if (++count > MostLots)
            {
                fields.ItemFault("wire", item, FaultCodes.ValueAtMost, ("max", "500"), ("unit", ""));
                return null;
            }
            if (Bind(item, count) is { } lot) lots.Add(lot);
        }
        if (count == 0) fields.Fault("wire", FaultCodes.ValueAtLeast, ("min", "1"), ("unit", ""));
        return faults.Count > 0 ? null : new WireAtHand(lots.ToImmutable(), new CuttingRules(loss ?? 0, keep));
    }

    private WireLot? Bind(JsonValue item, int number)
    {
        if (Fields.Of(item, Lot, faults) is not { } fields) return null;
        var name = fields.Text("name", mayBeEmpty: false);
        var thickness = CoilBinder.Thickness(fields);
        var steel = CoilBinder.Steel(fields, data);
        (CoilDatum Datum, double? Mm)? size = fields.OneOf("loopMm", "insideMm", "centreMm") switch
        {
            "loopMm" => (CoilDatum.MeasuredLoop, fields.Number("loopMm", PieceRules.LoopMm)),
            "insideMm" => (CoilDatum.Inside, fields.Number("insideMm", PieceRules.CoilMm)),
            "centreMm" => (CoilDatum.CentreLine, fields.Number("centreMm", PieceRules.CoilMm)),
            _ => null,
        };
        var isOffcut = fields.YesOrNo("offcut") ?? false;
        // What is left out is one offcut, and of new wire as much as it takes.
        var howMany = fields.Has("howMany") ? fields.Whole("howMany", HowMany) : isOffcut ? 1 : null;
        if (isOffcut) fields.NotWith("price", item.Path + ".offcut", "offcut");
        decimal? price = fields.Number("price", Price) is null ? null : fields["price"]!.Value.Money;
        var how = fields.OneOf("loops", "wireLengthMm", "massG", "massOz");
        if (how is null) return null;
        var amount = fields.Number(how, how switch { "loops" => Loops, "wireLengthMm" => LengthMm, "massG" => MassG, _ => MassOz });
        if (how is "massG" or "massOz" && steel is null) fields.Missing("steel");
        if (amount is not { } much || thickness is not var (thick, gauge) || size is not { Mm: { } sizeMm } coil) return null;
        var wire = new CoilWire(thick, coil.Datum, sizeMm, steel) { GaugeName = gauge };
        var lengthMm = how switch
        {
            "loops" => WireLot.LengthOfLoopsMm(wire, much),
            "wireLengthMm" => much,
            "massG" => WireLot.LengthOfMassMm(wire, much),
            _ => WireLot.LengthOfMassMm(wire, much * Ounce.Grams),
        };
        if (lengthMm is not { } mm) return null;
        if (LengthMm.Check(mm) is { } tooLong)
        {
            fields.FaultOf(how, mm.ToString("0", System.Globalization.CultureInfo.InvariantCulture), tooLong);
            return null;
        }
        return new WireLot(name ?? $"{number}", wire, mm, howMany, price, isOffcut);
    }
}
