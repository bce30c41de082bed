using Coilwright.Core.Buying;
using Coilwright.Core.Stock;

namespace Coilwright.Storage.Stock;

/// <summary>A movement as the columns of a table hold it: the same for every kind, null where a kind has no use for one.</summary>
/// <param name="Id">Its own name.</param>
/// <param name="Item">The item, by key.</param>
/// <param name="Kind">The word for its kind.</param>
/// <param name="Quantity">Thousandths of what the item is counted in; null for a release.</param>
/// <param name="Lot">The lot that was named.</param>
/// <param name="Reservation">The reservation that was named.</param>
/// <param name="For">What for.</param>
/// <param name="Came">What is known of a lot that came; null for all that is no delivery.</param>
internal sealed record MovementParts(Guid Id, string Item, string Kind, long? Quantity, Guid? Lot, Guid? Reservation, string? For, LotParts? Came)
{
    /// <summary>The parts of a movement.</summary>
    public static MovementParts Of(Movement movement)
    {
        var parts = new MovementParts(movement.Id, movement.Item, StockWords.Kind(movement), null, null, null, movement.For, null);
        return movement switch
        {
            Movement.Receive receive => parts with { Quantity = receive.Lot.Quantity.Thousandths, Came = LotParts.Of(receive.Lot) },
            Movement.Use use => parts with { Quantity = use.Quantity.Thousandths, Lot = use.Lot, Reservation = use.Reservation },
            Movement.Reserve reserve => parts with { Quantity = reserve.Quantity.Thousandths },
            Movement.Release release => parts with { Reservation = release.Reservation },
            Movement.Recount recount => parts with { Quantity = recount.Counted.Thousandths, Lot = recount.Lot },
            Movement.Return back => parts with { Quantity = back.Quantity.Thousandths, Lot = back.Lot },
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>The movement.</summary>
    public Movement Whole()
    {
        var quantity = new Quantity(Quantity ?? 0);
        Movement movement = Kind switch
        {
            "receive" => new Movement.Receive(Id, Item, Came!.Whole(quantity)),
            "use" => new Movement.Use(Id, Item, quantity) { Lot = Lot, Reservation = Reservation },
            "reserve" => new Movement.Reserve(Id, Item, quantity),
            "release" => new Movement.Release(Id, Item, Reservation!.Value),
            "recount" => new Movement.Recount(Id, Item, quantity) { Lot = Lot },
            _ => new Movement.Return(Id, Item, quantity) { Lot = Lot },
        };
        return movement with { For = For };
    }
}

/// <summary>What is known of a lot beside its quantity, as the columns of a table hold it.</summary>
/// <param name="Supplier">Who sold it.</param>
/// <param name="Number">The supplier's own number.</param>
/// <param name="Drawer">Where it lies.</param>
/// <param name="Received">The day it came.</param>
/// <param name="Cost">Ten-thousandths of the currency.</param>
/// <param name="Currency">The currency.</param>
internal sealed record LotParts(string? Supplier, string? Number, string? Drawer, DateOnly? Received, long? Cost, string? Currency)
{
    /// <summary>The parts of a lot.</summary>
    public static LotParts Of(StockLot lot) => new(lot.Supplier, lot.Number, lot.Drawer, lot.Received, lot.Cost is { } cost ? BuyingList.Grains(cost) : null, lot.Currency);

    /// <summary>The lot.</summary>
    public StockLot Whole(Quantity quantity) =>
        new(quantity) { Supplier = Supplier, Number = Number, Drawer = Drawer, Received = Received, Cost = Cost * BuyingList.Grain, Currency = Currency };
}
