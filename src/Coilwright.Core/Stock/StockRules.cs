using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Stock;

/// <summary>The rules that items and movements must meet by themselves, whatever is in the drawers.</summary>
public static class StockRules
{
    /// <summary>Most other names of one item.</summary>
    public const int MostAliases = 50;

    /// <summary>What is wrong with an item; empty when nothing is.</summary>
    /// <param name="item">The item.</param>
    /// <param name="data">What beads are read with.</param>
    public static ImmutableArray<Fault> Of(StockItem item, ReckoningData data)
    {
        var faults = new List<Fault>();
        BeadCheck.CheckId("key", item.Key, faults);
        faults.AddRange(PieceRules.OfText("name", item.Name, mayBeEmpty: false));
        if (item.Aliases.Length > MostAliases) faults.Add(AtMost("aliases", item.Aliases.Length, MostAliases));
        foreach (var alias in item.Aliases) faults.AddRange(PieceRules.OfText("aliases", alias, mayBeEmpty: false));
        if (item.Par is { } par) Check("par", par, item.Unit, mayBeNothing: true, faults);
        if (item.Bead is { } bead)
        {
            if (bead.Id != item.Key) faults.Add(Fault.Of(FaultCodes.StockBeadId, "bead.id", bead.Id, ("key", item.Key)));
            faults.AddRange(PieceRules.OfBead(bead, data, out _).Select(f => f.Under("bead")));
        }
        return [.. faults];
    }

    /// <summary>What is wrong with a movement of an item; empty when nothing is.</summary>
    public static ImmutableArray<Fault> Of(Movement movement, StockItem item)
    {
        var faults = new List<Fault>();
        if (movement.For is { } what) faults.AddRange(PieceRules.OfText("for", what, mayBeEmpty: true));
        switch (movement)
        {
            case Movement.Receive { Lot: var lot }:
                Check("quantity", lot.Quantity, item.Unit, mayBeNothing: false, faults);
                foreach (var (field, text) in (ReadOnlySpan<(string, string?)>)[("supplier", lot.Supplier), ("number", lot.Number), ("drawer", lot.Drawer)])
                    if (text is not null) faults.AddRange(PieceRules.OfText(field, text, mayBeEmpty: true));
                CheckCost(lot, faults);
                break;
            case Movement.Use use:
                Check("quantity", use.Quantity, item.Unit, mayBeNothing: false, faults);
                break;
            case Movement.Reserve reserve:
                Check("quantity", reserve.Quantity, item.Unit, mayBeNothing: false, faults);
                break;
            case Movement.Recount recount:
                Check("counted", recount.Counted, item.Unit, mayBeNothing: true, faults);
                break;
            case Movement.Return back:
                Check("quantity", back.Quantity, item.Unit, mayBeNothing: false, faults);
                break;
        }
        return [.. faults];
    }

    /// <summary>A unit as faults and tables write it: nothing for what is counted one by one.</summary>
    public static string Sign(StockUnit unit) => unit switch { StockUnit.Millimetre => "mm", StockUnit.Gram => "g", _ => "" };

    /// <summary>A unit as files write it.</summary>
    public static string Word(StockUnit unit) => unit switch { StockUnit.Millimetre => "mm", StockUnit.Gram => "g", _ => "each" };

    private static void Check(string field, Quantity quantity, StockUnit unit, bool mayBeNothing, List<Fault> faults)
    {
        if (quantity.Thousandths < 0) faults.Add(Fault.Of(FaultCodes.ValueAtLeast, field, quantity.ToString(), ("min", "0"), ("unit", Sign(unit))));
        else if (quantity.Thousandths == 0 && !mayBeNothing) faults.Add(Fault.Of(FaultCodes.ValueAbove, field, "0", ("min", "0"), ("unit", Sign(unit))));
        else if (quantity > Quantity.Of(Quantity.Most)) faults.Add(AtMost(field, quantity.Units, Quantity.Most) with { Value = quantity.ToString() });
        else if (unit == StockUnit.Each && !quantity.IsWhole) faults.Add(Fault.Of(FaultCodes.StockWhole, field, quantity.ToString()));
    }

    private static void CheckCost(StockLot lot, List<Fault> faults)
    {
        if (lot.Cost is { } cost)
        {
            var text = cost.ToString(CultureInfo.InvariantCulture);
            if (cost < 0) faults.Add(Fault.Of(FaultCodes.ValueAtLeast, "cost", text, ("min", "0"), ("unit", "")));
            else if (cost > BuyingList.MostMoney) faults.Add(AtMost("cost", cost, BuyingList.MostMoney));
            else if (cost % BuyingList.Grain != 0) faults.Add(Fault.Of(FaultCodes.BuyingTooFine, "cost", text));
        }
        // Money without a currency is a number, and a currency without money says nothing.
        if (lot.Cost is not null ? lot.Currency is null || !CurrencyCode.Is(lot.Currency) : lot.Currency is not null)
            faults.Add(Fault.Of(FaultCodes.StockCurrencyForm, "currency", lot.Currency is { Length: > 10 } ? "" : lot.Currency ?? ""));
    }

    private static Fault AtMost(string field, decimal value, decimal most) =>
        Fault.Of(FaultCodes.ValueAtMost, field, value.ToString(CultureInfo.InvariantCulture), ("max", most.ToString(CultureInfo.InvariantCulture)), ("unit", ""));
}
