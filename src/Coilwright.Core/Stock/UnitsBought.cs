using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stock;

/// <summary>So many units of sale, and what is known of one: as counted, or as its label has it.</summary>
/// <remarks>
/// <para>A strand of a length holds as many beads as fit: length over the bead's length, no part of one. What knots, bare thread and beads larger than their label take is not known, so a real
/// count, where there is one, overrules it.</para>
/// <para>By weight: what it weighs times the beads that weigh a gram, no part of one.</para>
/// </remarks>
/// <param name="Unit">The unit of sale.</param>
/// <param name="HowMany">How many of them, above 0; a half strand is 0.5.</param>
public sealed record UnitsBought(SaleUnit Unit, decimal HowMany)
{
    /// <summary>What one holds, in what the item is counted in: a real count, or the label's; null when not known.</summary>
    public Quantity? Holds { get; init; }

    /// <summary>How long one is, mm: of a hank, each of its strands. Null when not known.</summary>
    public double? LengthMm { get; init; }

    /// <summary>How many strands are tied together in a hank, 1 or more.</summary>
    public int Strands { get; init; } = 1;

    /// <summary>What one weighs without its bag, g; null when not known.</summary>
    public double? MassG { get; init; }

    /// <summary>Length of a bead along its hole, mm; null when not known.</summary>
    public double? BeadMm { get; init; }

    /// <summary>How many beads weigh a gram; null when not known.</summary>
    public double? BeadsPerG { get; init; }

    // A length in whole beads stays what it is: 15.5 in of 3.937 mm is 100.
    private const double Hair = 1e-9;

    /// <summary>Reckons how much it is in what an item is counted in.</summary>
    /// <param name="unit">What the item is counted in.</param>
    /// <param name="quantity">How much; nothing where it cannot be said.</param>
    /// <returns>Why it cannot be said; null when it can.</returns>
    public Fault? Reckon(StockUnit unit, out Quantity quantity)
    {
        quantity = default;
        if (HowMany <= 0 || HowMany > Quantity.Most) return Fault.Of(HowMany <= 0 ? FaultCodes.ValueAbove : FaultCodes.ValueAtMost, "howMany", HowMany.ToString(CultureInfo.InvariantCulture),
            ("min", "0"), ("max", Quantity.Most.ToString(CultureInfo.InvariantCulture)), ("unit", ""));
        var bad = Check("lengthMm", LengthMm) ?? Check("massG", MassG) ?? Check("beadMm", BeadMm) ?? Check("beadsPerG", BeadsPerG)
            ?? (Strands is < 1 or > MostStrands ? Fault.Of(Strands < 1 ? FaultCodes.ValueAtLeast : FaultCodes.ValueAtMost, "strands", Strands.ToString(CultureInfo.InvariantCulture),
                ("min", "1"), ("max", MostStrands.ToString(CultureInfo.InvariantCulture)), ("unit", "")) : null)
            ?? (Holds is { IsWhole: false } parts && unit == StockUnit.Each ? Fault.Of(FaultCodes.StockWhole, "holds", parts.ToString()) : null)
            ?? (Holds is { Thousandths: <= 0 } none ? Fault.Of(FaultCodes.ValueAbove, "holds", none.ToString(), ("min", "0"), ("unit", StockRules.Sign(unit))) : null);
        if (bad is not null) return bad;
        if (InOne(unit) is not { } one)
            return Needs(unit) is { } needs ? Fault.Of(FaultCodes.SaleUnitNeeds, "saleUnit", SaleUnits.Word(Unit), ("needs", needs)) : Fault.Of(FaultCodes.SaleUnitOther, "saleUnit", SaleUnits.Word(Unit), ("countedIn", StockRules.Word(unit)));
        var all = one * HowMany;
        // No part of a bead, and no more of a thousandth than is there.
        var counted = unit == StockUnit.Each ? decimal.Floor(all) : decimal.Floor(all * 1000) / 1000;
        if (counted > Quantity.Most) return Fault.Of(FaultCodes.ValueAtMost, "howMany", HowMany.ToString(CultureInfo.InvariantCulture), ("max", (Quantity.Most / one).ToString("0", CultureInfo.InvariantCulture)), ("unit", ""));
        if (counted == 0) return Fault.Of(FaultCodes.SaleUnitHoldsNone, "saleUnit", SaleUnits.Word(Unit));
        quantity = Quantity.Exactly(counted)!.Value;
        return null;
    }

    /// <summary>What one holds; null when it cannot be said. Of a strand whole beads, so that two strands hold twice as many as one.</summary>
    private decimal? InOne(StockUnit unit)
    {
        var isBundle = Unit is SaleUnit.Strand or SaleUnit.Hank or SaleUnit.Pack;
        if (isBundle && Holds is { } holds) return holds.Units;
        double? mass = SaleUnits.GramsIn(Unit) ?? (isBundle ? MassG : null), length = isBundle ? LengthMm * (Unit == SaleUnit.Hank ? Strands : 1) : null;
        return unit switch
        {
            StockUnit.Gram => (decimal?)mass,
            StockUnit.Millimetre => (decimal?)length,
            _ when SaleUnits.CountIn(Unit) is { } count => count,
            _ when Unit is SaleUnit.Strand or SaleUnit.Hank && LengthMm is { } strand && BeadMm is { } bead => (decimal)Math.Floor(strand / bead + Hair) * (Unit == SaleUnit.Hank ? Strands : 1),
            _ => (decimal?)(mass * BeadsPerG) is { } beads ? isBundle ? decimal.Floor(beads + (decimal)Hair) : beads : null,
        };
    }

    private string? Needs(StockUnit unit) => (Unit, unit) switch
    {
        (SaleUnit.Gram or SaleUnit.Ounce, StockUnit.Each) => "beadsPerG",
        (SaleUnit.Strand or SaleUnit.Hank, StockUnit.Each) when LengthMm is not null => "beadMm",
        (SaleUnit.Pack, StockUnit.Each) when MassG is not null => "beadsPerG",
        (SaleUnit.Strand or SaleUnit.Hank or SaleUnit.Pack, StockUnit.Millimetre) => "lengthMm",
        (SaleUnit.Strand or SaleUnit.Hank or SaleUnit.Pack, StockUnit.Gram) => "massG",
        (SaleUnit.Strand or SaleUnit.Hank or SaleUnit.Pack, _) => "holds",
        _ => null,
    };

    private static Fault? Check(string field, double? value)
    {
        if (value is not { } number) return null;
        // From a grain of dust to a lorry: only slips are kept out.
        var fault = Measures.Limits.Above0To(Quantity.Most, "").Check(number) ?? (number < Dust ? Fault.Of(FaultCodes.ValueAbove, "", "", ("min", "0"), ("unit", "")) : null);
        return fault is null ? null : fault with { Field = field, Value = double.IsFinite(number) ? number.ToString("0.####", CultureInfo.InvariantCulture) : "" };
    }

    private const double Dust = 1e-6;

    private const int MostStrands = 10_000;
}
