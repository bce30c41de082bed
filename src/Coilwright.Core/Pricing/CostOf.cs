using System.Collections.Immutable;
using Coilwright.Core.Buying;
using Coilwright.Core.Cutting;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Pricing;

/// <summary>The wire of one, as the piece was reckoned.</summary>
/// <param name="CutMm">Wire to cut, whole mm.</param>
/// <param name="LoopMm">One loop of the coil at rest, mm.</param>
public sealed record WireUse(int CutMm, decimal LoopMm)
{
    /// <summary>The wire of one of those that are cut alike.</summary>
    public static WireUse Of(WireDemand demand) => new(demand.WholeMm, Math.Round((decimal)demand.Wire.LoopMm, 4));
}

/// <summary>What one piece, kit or pattern costs, line by line.</summary>
/// <remarks>A bead costs a part of its pack, never a whole one; freight and what is left over are not in it. What was not told is not counted, see <see cref="Gaps"/>.</remarks>
public sealed class CostOf
{
    private CostOf(Sold sold, CostLine cost, decimal minutes, ImmutableArray<CostGap> gaps) => (Sold, Cost, Minutes, Gaps) = (sold, cost, minutes, gaps);

    /// <summary>What it is.</summary>
    public Sold Sold { get; }

    /// <summary>What it costs: materials, labour, overhead, each with its own lines.</summary>
    public CostLine Cost { get; }

    /// <summary>Work in it, minutes.</summary>
    public decimal Minutes { get; }

    /// <summary>What is not counted because nobody told it.</summary>
    public ImmutableArray<CostGap> Gaps { get; }

    /// <summary>Beads and caps without a price.</summary>
    public IEnumerable<CostLine> Unpriced => Lines(Cost).Where(l => l.Amount is null && l.How is WithoutPrice);

    /// <summary>The value of one of <see cref="CostFigures"/>, those of a rule's fees excepted.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="wage">What an hour is paid; null for nothing.</param>
    public decimal Figure(string name, decimal? wage) => name switch
    {
        CostFigures.Hours => Minutes / 60,
        CostFigures.Wage => wage ?? 0,
        _ => Lines(Cost).FirstOrDefault(l => l.Figure == name)?.Amount ?? 0,
    };

    /// <summary>Works out what one costs.</summary>
    /// <param name="sold">What it is.</param>
    /// <param name="sheet">The costs.</param>
    /// <param name="list">The beads of so many pieces of one design, with their prices.</param>
    /// <param name="wire">The wire of one.</param>
    /// <param name="lots">What beads in stock cost; null where that is not asked for.</param>
    public static CostOf Of(Sold sold, CostSheet sheet, ShoppingList list, WireUse wire, LotCosts? lots)
    {
        var count = list.Pieces[0].Count;
        var has = sold != Sold.Pattern;
        var beads = CostLine.Sum(CostFigures.Beads, has ? [.. list.Items.Where(i => i.Bead is not null).Select(i => BeadLine(i, list, lots))] : []);
        var caps = has ? list.Items.Where(i => i.Bead is null).Select(i => BeadLine(i, list, lots)) : [];
        var findings = CostLine.Sum(CostFigures.Findings, [.. caps, .. Items(false)]);
        CostLine[] parts = [beads, Waste(sheet, beads), findings, Wire(has ? sheet.Wire : null, wire), CostLine.Sum(CostFigures.Packaging, [.. Items(true)])];
        var materials = CostLine.Sum(CostFigures.Materials, [.. parts.Where(p => !p.Parts.IsEmpty || p.How is not SumOfParts)]);
        var steps = sheet.Steps.Where(s => s.For.Contains(sold)).ToList();
        var minutes = steps.Sum(s => MinutesOf(s, count));
        var labour = CostLine.Sum(CostFigures.Labour, [.. steps.Select(s => Work(s, count, sheet.WagePerHour))]);
        var own = materials.Amount!.Value + labour.Amount!.Value;
        var overhead = CostLine.Sum(CostFigures.Overhead, [.. sheet.Overheads.Where(o => o.For.Contains(sold)).Select(o => Share(o, own, minutes))]);
        return new CostOf(sold, CostLine.Sum(CostFigures.Cost, [materials, labour, overhead]), minutes, [.. GapsOf(sheet, steps.Count, has && !beads.Parts.IsEmpty)]);

        IEnumerable<CostLine> Items(bool packaging) => sheet.Items.Where(i => i.IsPackaging == packaging && i.For.Contains(sold))
            .Select(i => CostLine.Of(i.Name, i.Count * i.Price / i.Holds, new PartOfPacks(i.Count, i.Price, i.Holds, "", "")));
    }

    /// <summary>What one place in a class costs: a share of so many kits, of the teaching and of the room, by the same figures as a kit, so that a rule can price it.</summary>
    /// <param name="kit">What one kit costs.</param>
    /// <param name="kits">How many are packed.</param>
    /// <param name="places">By how many they are shared, 1 or more.</param>
    /// <param name="minutes">The maker's time for all of them beside packing: labour at her wage.</param>
    /// <param name="wage">What an hour is paid; null for nothing.</param>
    /// <param name="room">What is paid once for all: an overhead.</param>
    public static CostOf PlaceInClass(CostOf kit, int kits, int places, decimal minutes, decimal? wage, decimal room)
    {
        string[] materials = [CostFigures.Beads, CostFigures.Waste, CostFigures.Findings, CostFigures.Wire, CostFigures.Packaging];
        CostLine[] lines =
        [
            CostLine.Sum(CostFigures.Materials, [.. materials.Select(f => CostLine.Sum(f, [Shared(kit.Figure(f, null) * kits)]))]),
            CostLine.Sum(CostFigures.Labour, [Shared(kit.Figure(CostFigures.Labour, null) * kits), Shared(minutes * (wage ?? 0) / 60)]),
            CostLine.Sum(CostFigures.Overhead, [Shared(kit.Figure(CostFigures.Overhead, null) * kits), Shared(room)]),
        ];
        return new CostOf(Sold.Kit, CostLine.Sum(CostFigures.Cost, [.. lines]), (kit.Minutes * kits + minutes) / places, kit.Gaps);

        CostLine Shared(decimal amount) => CostLine.Of("", amount / places, new SharedBy(amount, places));
    }

    private static CostLine BeadLine(ShoppingItem item, ShoppingList list, LotCosts? lots)
    {
        var name = item.Bead?.Name ?? item.Id;
        var count = item.Each[0];
        if (LotOf(item, list, lots) is { } lot) return CostLine.Of(name, count * lot.Value / lot.There, new PartOfStock(count, lot.Value, lot.There, lots!.Way));
        if (Cheapest(item, list) is not var (offer, price)) return CostLine.Of(name, null, new WithoutPrice(count));
        return CostLine.Of(name, count * price / offer.Holds, new PartOfPacks(count, price, offer.Holds, offer.Unit, offer.Supplier));
    }

    /// <summary>The beads in stock that a bead is taken from; null when it is bought.</summary>
    /// <remarks>Where enough is there for all that are made, they cost what those cost; where too little is, they are bought at today's price. Without such a price, what is there tells what one costs.</remarks>
    internal static LotCost? LotOf(ShoppingItem item, ShoppingList list, LotCosts? lots) =>
        item.Bead is not null && lots?.ByBead.GetValueOrDefault(item.Id) is { } lot && (lot.There >= item.Use || Cheapest(item, list) is null) ? lot : null;

    // By the price of one bead at as many units as all pieces together take; units that a supplier has not got are not waited for.
    private static (Offer Offer, decimal Price)? Cheapest(ShoppingItem item, ShoppingList list)
    {
        (Offer Offer, decimal Price)? best = null;
        foreach (var offer in list.Buying.Offers.Where(o => o.Item == item.Id && o.Most != 0))
        {
            var units = Math.Min((item.Use - 1) / offer.Holds + 1, offer.Most ?? int.MaxValue);
            var price = offer.Cost(units) / units;
            if (best is not var (other, least) || price / offer.Holds < least / other.Holds) best = (offer, price);
        }
        return best;
    }

    private static CostLine Waste(CostSheet sheet, CostLine beads) => sheet.WastePercent is { } percent && !beads.Parts.IsEmpty
        ? new CostLine(CostFigures.Waste, "", beads.Amount * percent / 100, new InHundred(percent, beads.Amount!.Value), []) : CostLine.Sum(CostFigures.Waste, []);

    private static CostLine Wire(WirePack? pack, WireUse wire) => pack switch
    {
        { Loops: { } loops } => new CostLine(CostFigures.Wire, "", pack.Price * wire.CutMm / (loops * wire.LoopMm), new LengthOfPack(pack.Price, wire.CutMm, loops * wire.LoopMm), []),
        { Pieces: { } pieces } => new CostLine(CostFigures.Wire, "", pack.Price / pieces, new SharedBy(pack.Price, pieces), []),
        _ => CostLine.Sum(CostFigures.Wire, []),
    };

    private static decimal MinutesOf(TimedStep step, int count) => step.PerBatch ? step.Minutes / count : step.Minutes;

    private static CostLine Work(TimedStep step, int count, decimal? wage)
    {
        var minutes = MinutesOf(step, count);
        return CostLine.Of(step.Name, minutes * wage / 60, new ByTheHour(minutes, wage, step.PerBatch && count > 1 ? count : null));
    }

    private static CostLine Share(Overhead overhead, decimal own, decimal minutes) => overhead switch
    {
        { Percent: { } percent } => CostLine.Of(overhead.Name, own * percent / 100, new InHundred(percent, own)),
        { PerHour: { } perHour } => CostLine.Of(overhead.Name, perHour * minutes / 60, new ByTheHour(minutes, perHour, null)),
        _ => CostLine.Of(overhead.Name, overhead.PerMonth!.Value / overhead.Pieces!.Value, new SharedBy(overhead.PerMonth.Value, overhead.Pieces.Value)),
    };

    private static IEnumerable<CostGap> GapsOf(CostSheet sheet, int steps, bool hasBeads)
    {
        if (sheet.WagePerHour is null) yield return CostGap.Wage;
        if (steps == 0) yield return CostGap.Steps;
        if (hasBeads && sheet.WastePercent is null) yield return CostGap.Waste;
        if (hasBeads && sheet.Wire is null) yield return CostGap.Wire;
        if (sheet.Overheads.IsEmpty) yield return CostGap.Overhead;
    }

    private static IEnumerable<CostLine> Lines(CostLine line) => line.Parts.SelectMany(Lines).Prepend(line);
}

/// <summary>What a cost leaves out because nobody told it.</summary>
public enum CostGap
{
    /// <summary>No wage: work is counted as nothing.</summary>
    Wage,

    /// <summary>No step of work was timed.</summary>
    Steps,

    /// <summary>No waste of beads.</summary>
    Waste,

    /// <summary>No price of wire.</summary>
    Wire,

    /// <summary>No overhead.</summary>
    Overhead,
}
