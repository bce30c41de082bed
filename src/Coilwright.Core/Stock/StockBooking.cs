using System.Collections.Immutable;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stock;

/// <summary>What comes of asking for a movement.</summary>
public abstract record Booking
{
    private Booking() { }

    /// <summary>It can be done.</summary>
    /// <param name="Changes">What it changes on hand.</param>
    public sealed record Accepted(ImmutableArray<LotChange> Changes) : Booking;

    /// <summary>It cannot.</summary>
    /// <param name="Why">Why, with what is there.</param>
    public sealed record Refused(Fault Why) : Booking;
}

/// <summary>Decides whether a movement can be done, and from which lots. The one place where nothing is kept from going below nought.</summary>
public static class StockBooking
{
    /// <summary>Decides.</summary>
    /// <param name="item">The item.</param>
    /// <param name="now">What is there of it.</param>
    /// <param name="movement">What is asked for.</param>
    public static Booking Of(StockItem item, StockBalance now, Movement movement)
    {
        if (StockRules.Of(movement, item) is [var fault, ..]) return new Booking.Refused(fault);
        return movement switch
        {
            Movement.Receive receive => Receive(item, now, receive),
            Movement.Use use => Use(item, now, use),
            Movement.Reserve reserve when reserve.Quantity > now.Free => NotEnough(item, now, reserve.Quantity),
            Movement.Reserve => new Booking.Accepted([]),
            Movement.Release release => Find(now, release.Reservation) is null ? NoReservation(item) : new Booking.Accepted([]),
            Movement.Recount recount => Recount(item, now, recount),
            Movement.Return back => Return(item, now, back),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    private static Booking Receive(StockItem item, StockBalance now, Movement.Receive receive)
    {
        // An average over two currencies is none.
        if (receive.Lot.Currency is { } currency && now.Lots.Select(l => l.What.Currency).FirstOrDefault(c => c is not null) is { } other && other != currency)
            return Refused(FaultCodes.StockCurrencyDiffers, "currency", currency, item, ("other", other));
        if (now.OnHand + receive.Lot.Quantity > Quantity.Of(Quantity.Most))
            return new Booking.Refused(Fault.Of(FaultCodes.ValueAtMost, "quantity", receive.Lot.Quantity.ToString(), ("max", (Quantity.Of(Quantity.Most) - now.OnHand).ToString()), ("unit", StockRules.Sign(item.Unit))));
        return new Booking.Accepted([new LotChange(receive.Id, receive.Lot.Quantity)]);
    }

    private static Booking Use(StockItem item, StockBalance now, Movement.Use use)
    {
        if (use.Reservation is { } id)
        {
            if (Find(now, id) is not { } kept) return NoReservation(item);
            if (use.Quantity > kept.Left) return Refused(FaultCodes.StockReservationLess, "quantity", use.Quantity.ToString(), item, ("left", kept.Left.ToString()));
        }
        else if (use.Quantity > now.Free) return NotEnough(item, now, use.Quantity);
        if (use.Lot is not { } lot) return new Booking.Accepted(Taken(now.Lots, use.Quantity));
        if (now.Lots.FirstOrDefault(l => l.Id == lot) is not { } of) return NoLot(item);
        return use.Quantity > of.OnHand ? LotNotEnough(item, of, use.Quantity) : new Booking.Accepted([new LotChange(lot, -use.Quantity)]);
    }

    private static Booking Recount(StockItem item, StockBalance now, Movement.Recount recount)
    {
        var counted = recount.Lot is { } lot ? now.Lots.FirstOrDefault(l => l.Id == lot) : now.Lots.LastOrDefault();
        if (counted is null) return NoLot(item);
        var by = recount.Counted - (recount.Lot is null ? now.OnHand : counted.OnHand);
        if (now.OnHand + by < now.Reserved)
            return Refused(FaultCodes.StockReserved, "counted", recount.Counted.ToString(), item, ("reserved", now.Reserved.ToString()), ("left", (now.OnHand + by).ToString()));
        if (by.Thousandths == 0) return new Booking.Accepted([]);
        return new Booking.Accepted(by.Thousandths < 0 && recount.Lot is null ? Taken(now.Lots, -by) : [new LotChange(counted.Id, by)]);
    }

    private static Booking Return(StockItem item, StockBalance now, Movement.Return back)
    {
        if (back.Lot is { } lot && now.Lots.All(l => l.Id != lot)) return NoLot(item);
        ImmutableArray<LotBalance> into = back.Lot is { } one ? [.. now.Lots.Where(l => l.Id == one)] : [.. now.Lots.Reverse()];
        var wentOut = new Quantity(into.Sum(l => l.Out.Thousandths));
        if (back.Quantity > wentOut) return Refused(FaultCodes.StockMoreThanOut, "quantity", back.Quantity.ToString(), item, ("out", wentOut.ToString()));
        return new Booking.Accepted([.. Spread(into.Select(l => (l.Id, l.Out)), back.Quantity)]);
    }

    private static ImmutableArray<LotChange> Taken(ImmutableArray<LotBalance> lots, Quantity quantity) =>
        [.. Spread(lots.Select(l => (l.Id, l.OnHand)), quantity).Select(c => c with { By = -c.By })];

    /// <summary>A quantity over lots in turn, no more on each than it can bear; together they can.</summary>
    private static IEnumerable<LotChange> Spread(IEnumerable<(Guid Lot, Quantity Most)> lots, Quantity quantity)
    {
        foreach (var (lot, most) in lots)
        {
            var part = Quantity.Min(most, quantity);
            if (part.Thousandths <= 0) continue;
            yield return new LotChange(lot, part);
            quantity -= part;
            if (quantity.Thousandths == 0) yield break;
        }
    }

    private static Reservation? Find(StockBalance now, Guid reservation) => now.Reservations.FirstOrDefault(r => r.Id == reservation);

    private static Booking.Refused NotEnough(StockItem item, StockBalance now, Quantity asked) =>
        Refused(FaultCodes.StockNotEnough, "quantity", asked.ToString(), item, ("free", now.Free.ToString()), ("onHand", now.OnHand.ToString()), ("reserved", now.Reserved.ToString()));

    private static Booking.Refused LotNotEnough(StockItem item, LotBalance lot, Quantity asked) =>
        Refused(FaultCodes.StockLotNotEnough, "quantity", asked.ToString(), item, ("there", lot.OnHand.ToString()));

    private static Booking.Refused NoLot(StockItem item) => Refused(FaultCodes.StockNoLot, "lot", "", item);

    private static Booking.Refused NoReservation(StockItem item) => Refused(FaultCodes.StockNoReservation, "reservation", "", item);

    private static Booking.Refused Refused(string code, string field, string value, StockItem item, params ReadOnlySpan<(string Name, string Value)> values) =>
        new(Fault.Of(code, field, value, [.. values, ("item", item.Name), ("unit", StockRules.Sign(item.Unit))]));
}
