namespace Coilwright.Core.Stock;

/// <summary>What came in at one time and belongs together: one strand's dye, one bag's price.</summary>
/// <param name="Quantity">How much came, above nought.</param>
public sealed record StockLot(Quantity Quantity)
{
    /// <summary>Who sold it; null when nobody said.</summary>
    public string? Supplier { get; init; }

    /// <summary>The supplier's own number for it.</summary>
    public string? Number { get; init; }

    /// <summary>Where it lies.</summary>
    public string? Drawer { get; init; }

    /// <summary>The day it came, where she was.</summary>
    public DateOnly? Received { get; init; }

    /// <summary>What all of it cost, freight included as she likes; in ten-thousandths of the currency at the finest. Null when it is not known, which is not the same as nothing.</summary>
    public decimal? Cost { get; init; }

    /// <summary>The currency of the cost, three capitals as <c>EUR</c>; null exactly where the cost is.</summary>
    public string? Currency { get; init; }
}

/// <summary>One thing done with stock. A closed list: what is below and nothing else.</summary>
/// <remarks>Whoever asks for it makes the id, a UUIDv7, and keeps it while asking again: the same movement given twice counts once.</remarks>
/// <param name="Id">Its own name.</param>
/// <param name="Item">The item, by key.</param>
public abstract record Movement(Guid Id, string Item)
{
    /// <summary>What for, in her words; null when nothing was said.</summary>
    public string? For { get; init; }

    /// <summary>A delivery came in. It is a lot of its own from then on, under the movement's id.</summary>
    /// <param name="Id">Its own name, and the lot's.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Lot">What came.</param>
    public sealed record Receive(Guid Id, string Item, StockLot Lot) : Movement(Id, Item);

    /// <summary>Something was taken, strung or broken: from one lot, or from the earliest that has some.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Quantity">How much, above nought.</param>
    public sealed record Use(Guid Id, string Item, Quantity Quantity) : Movement(Id, Item)
    {
        /// <summary>The lot; null for the earliest that have some.</summary>
        public Guid? Lot { get; init; }

        /// <summary>The reservation that it was kept under, no more than what is left of it; null to take of what is free.</summary>
        public Guid? Reservation { get; init; }
    }

    /// <summary>Something is kept back for later. It stays where it is, and nobody else can take it.</summary>
    /// <param name="Id">Its own name, and the reservation's.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Quantity">How much, above nought.</param>
    public sealed record Reserve(Guid Id, string Item, Quantity Quantity) : Movement(Id, Item);

    /// <summary>What is left of a reservation is free again.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Reservation">The reservation.</param>
    public sealed record Release(Guid Id, string Item, Guid Reservation) : Movement(Id, Item);

    /// <summary>It was counted again, and so much is there: what is missing goes off the earliest lots, what is over is added to the last.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Counted">How much was found, 0 or more; no less than what is reserved.</param>
    public sealed record Recount(Guid Id, string Item, Quantity Counted) : Movement(Id, Item)
    {
        /// <summary>The lot that was counted; null when all of the item was.</summary>
        public Guid? Lot { get; init; }
    }

    /// <summary>Something that was taken came back: an offcut, beads left over. No more than went out.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Item">The item, by key.</param>
    /// <param name="Quantity">How much, above nought.</param>
    public sealed record Return(Guid Id, string Item, Quantity Quantity) : Movement(Id, Item)
    {
        /// <summary>The lot that it is of; null for the last that something went out of.</summary>
        public Guid? Lot { get; init; }
    }
}
