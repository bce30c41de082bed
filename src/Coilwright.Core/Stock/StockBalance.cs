using System.Collections.Immutable;

namespace Coilwright.Core.Stock;

/// <summary>By how much a movement changed what is on hand of a lot.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="By">Above nought when something came to it.</param>
public sealed record LotChange(Guid Lot, Quantity By);

/// <summary>A movement that was accepted, as it stands in the ledger.</summary>
/// <param name="Number">Its place: a later one has a greater.</param>
/// <param name="At">When it was accepted, UTC.</param>
/// <param name="Movement">The movement.</param>
/// <param name="Changes">What it changed on hand; empty where nothing moved, as with a reservation.</param>
public sealed record StockEntry(long Number, DateTimeOffset At, Movement Movement, ImmutableArray<LotChange> Changes);

/// <summary>A lot and what is left of it.</summary>
/// <param name="Id">The lot.</param>
/// <param name="What">What came.</param>
/// <param name="OnHand">What is there, 0 or more.</param>
/// <param name="Out">What was taken and did not come back.</param>
public sealed record LotBalance(Guid Id, StockLot What, Quantity OnHand, Quantity Out);

/// <summary>Something kept back.</summary>
/// <param name="Id">The reservation.</param>
/// <param name="Left">What is left of it, above nought.</param>
/// <param name="At">Since when.</param>
/// <param name="For">What for.</param>
public sealed record Reservation(Guid Id, Quantity Left, DateTimeOffset At, string? For);

/// <summary>What is there of one item, reckoned from its movements alone.</summary>
/// <remarks>In every balance that a ledger gives no lot is below nought, and no more is reserved than is on hand.</remarks>
/// <param name="Lots">Every lot that ever came, the earliest first; those that are used up too.</param>
/// <param name="Reservations">What is kept back, the earliest first.</param>
public sealed record StockBalance(ImmutableArray<LotBalance> Lots, ImmutableArray<Reservation> Reservations)
{
    /// <summary>Nothing, and never anything.</summary>
    public static StockBalance Nothing { get; } = new([], []);

    /// <summary>What lies in the drawers.</summary>
    public Quantity OnHand { get; } = new(Lots.Sum(l => l.OnHand.Thousandths));

    /// <summary>What of it is kept back.</summary>
    public Quantity Reserved { get; } = new(Reservations.Sum(r => r.Left.Thousandths));

    /// <summary>What can be taken: on hand less reserved.</summary>
    public Quantity Free => OnHand - Reserved;

    /// <summary>The balance of an item from its entries, the earliest first.</summary>
    public static StockBalance Of(IEnumerable<StockEntry> entries)
    {
        // Lots and reservations as they stand, changed in place: a ledger may be long.
        var lots = new Dictionary<Guid, LotBalance>();
        var kept = new Dictionary<Guid, Reservation>();
        List<Guid> came = [], reserved = [];
        foreach (var entry in entries)
        {
            switch (entry.Movement)
            {
                case Movement.Receive receive:
                    lots.Add(receive.Id, new LotBalance(receive.Id, receive.Lot, default, default));
                    came.Add(receive.Id);
                    break;
                case Movement.Reserve reserve:
                    kept.Add(reserve.Id, new Reservation(reserve.Id, reserve.Quantity, entry.At, reserve.For));
                    reserved.Add(reserve.Id);
                    break;
                case Movement.Release release:
                    kept.Remove(release.Reservation);
                    break;
                case Movement.Use { Reservation: { } of } use:
                    if (kept[of].Left == use.Quantity) kept.Remove(of);
                    else kept[of] = kept[of] with { Left = kept[of].Left - use.Quantity };
                    break;
            }
            var goes = entry.Movement is Movement.Use or Movement.Return;
            foreach (var (lot, by) in entry.Changes)
                lots[lot] = lots[lot] with { OnHand = lots[lot].OnHand + by, Out = goes ? lots[lot].Out - by : lots[lot].Out };
        }
        return new StockBalance([.. came.Select(id => lots[id])], [.. reserved.Where(kept.ContainsKey).Select(id => kept[id])]);
    }
}
