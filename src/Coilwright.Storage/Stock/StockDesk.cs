using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stock;

namespace Coilwright.Storage.Stock;

/// <summary>The rows of a ledger as one transaction sees them, alone with them from its first look to its end.</summary>
internal interface IStockRows
{
    /// <summary>An item as it was last described, and which description that is; null when there is none.</summary>
    (StockItem Item, long Revision)? Item(string key);

    /// <summary>Every key.</summary>
    IEnumerable<string> Keys();

    /// <summary>What happened to an item, the earliest first.</summary>
    ImmutableArray<StockEntry> Entries(string key);

    /// <summary>A movement that was done; null when there is none of this id.</summary>
    Movement? Done(Guid movement);

    /// <summary>Writes a description down.</summary>
    void Put(StockItem item, long revision);

    /// <summary>Writes a movement down.</summary>
    void Add(Movement movement, ImmutableArray<LotChange> changes);
}

/// <summary>How every ledger does a change on its rows. Whoever calls it throws away what was written where the answer is not <see cref="StockAnswer.Kept"/>.</summary>
internal static class StockDesk
{
    public static StockAnswer Book(IStockRows rows, StockChange change, ReckoningData data)
    {
        // Before anything is written, so that a refusal tells what is there without this change.
        var before = new Dictionary<string, StockLine?>(StringComparer.Ordinal);
        foreach (var key in change.Items.Select(i => i.Item.Key).Concat(change.Movements.Select(m => m.Item)).Distinct(StringComparer.Ordinal)) before[key] = LineOf(rows, key);
        if (change.Movements.Length > 0 && change.Movements.All(m => rows.Done(m.Id) == m)) return Kept();

        for (var i = 0; i < change.Items.Length; i++)
        {
            var (item, seen) = change.Items[i];
            if (StockRules.Of(item, data) is [var fault, ..]) return new StockAnswer.Refused(i, fault, before[item.Key]);
            var there = rows.Item(item.Key);
            if (seen == 0 && there is { } already) return new StockAnswer.Refused(i, Fault.Of(FaultCodes.StockThere, "key", item.Key, ("item", already.Item.Name)), before[item.Key]);
            if ((there?.Revision ?? 0) != seen)
                return before[item.Key] is { } now ? new StockAnswer.Behind(now) : new StockAnswer.Refused(i, NoItem(item.Key), null);
            if (there is { } known && known.Item.Unit != item.Unit)
                return new StockAnswer.Refused(i, Fault.Of(FaultCodes.StockUnitDiffers, "countedIn", StockRules.Word(item.Unit)), before[item.Key]);
            rows.Put(item, seen + 1);
        }
        for (var i = 0; i < change.Movements.Length; i++)
        {
            var movement = change.Movements[i];
            if (rows.Done(movement.Id) is { } done)
            {
                if (done == movement) continue;
                return new StockAnswer.Refused(i, Fault.Of(FaultCodes.StockIdTaken, "", "", ("item", rows.Item(done.Item)!.Value.Item.Name)), before[movement.Item]);
            }
            if (rows.Item(movement.Item) is not { } of) return new StockAnswer.Refused(i, NoItem(movement.Item), null);
            switch (StockBooking.Of(of.Item, StockBalance.Of(rows.Entries(movement.Item)), movement))
            {
                case Booking.Refused refused:
                    return new StockAnswer.Refused(i, refused.Why, before[movement.Item]);
                case Booking.Accepted accepted:
                    rows.Add(movement, accepted.Changes);
                    break;
            }
        }
        return Kept();

        StockAnswer.Kept Kept() => new([.. before.Keys.Select(key => LineOf(rows, key)).OfType<StockLine>()]);

        Fault NoItem(string key) => Fault.Of(FaultCodes.StockNoItem, "item", key.Length <= 60 ? key : key[..60] + "...", ("nearest", NearestName.Of(key, rows.Keys()) ?? ""));
    }

    public static StockLine? LineOf(IStockRows rows, string key) => rows.Item(key) is var (item, revision) ? LineOf(item, revision, rows.Entries(key)) : null;

    public static StockLine LineOf(StockItem item, long revision, ImmutableArray<StockEntry> entries) => new(item, revision, StockBalance.Of(entries), StockValue.Of(entries));
}
