using System.Collections.Immutable;
using Coilwright.Core.Stock;

namespace Coilwright.Core.Made;

/// <summary>An amount of money that was asked or paid.</summary>
/// <param name="Amount">How much, 0 or more; in ten-thousandths of the currency at the finest.</param>
/// <param name="Currency">Three capitals, as <c>EUR</c>.</param>
public sealed record Paid(decimal Amount, string Currency);

/// <summary>What of the stock went into a piece, or came back out of it.</summary>
/// <param name="Item">The item, by key.</param>
/// <param name="Quantity">How much, above nought.</param>
public sealed record UsedBeads(string Item, Quantity Quantity)
{
    /// <summary>The lot; null where it is not known, or while it is left to the stock, which takes from the earliest that has some.</summary>
    public Guid? Lot { get; init; }

    /// <summary>The movement of the stock by which it is booked, in the same transaction; null where it is only written down.</summary>
    public Guid? Movement { get; init; }
}

/// <summary>One thing that happened to a piece that was made, or to several that were made alike. A closed list: what is below and nothing else.</summary>
/// <remarks>Whoever asks for it makes the id, a UUIDv7, and keeps it while asking again: the same step given twice counts once.</remarks>
/// <param name="Id">Its own name.</param>
/// <param name="Made">The record that it belongs to: the id of its <see cref="Make"/>.</param>
/// <param name="On">The day it happened where she was, as she says.</param>
public abstract record MadeStep(Guid Id, Guid Made, DateOnly On)
{
    /// <summary>To whom, or for whom: a person. Kept apart, and erased by <see cref="Erase"/>; null when nobody was named.</summary>
    public string? Who { get; init; }

    /// <summary>What else she wants to remember. It may tell of a person, and is erased with the names.</summary>
    public string? Note { get; init; }

    /// <summary>The same without what is erased, and without what the stock filled in: by this a step that is given twice is known.</summary>
    internal virtual MadeStep Bare => this with { Who = null, Note = null };

    /// <summary>It was made. The record has the id of this step from then on.</summary>
    /// <param name="Id">Its own name, and the record's.</param>
    /// <param name="On">The day.</param>
    /// <param name="Title">What it is called. Its own, as the piece may be called otherwise later.</param>
    /// <param name="Count">How many were made alike.</param>
    public sealed record Make(Guid Id, DateOnly On, string Title, int Count) : MadeStep(Id, Id, On)
    {
        /// <summary>The piece on the shelf that it was strung from; null for what was never on it.</summary>
        public Guid? Piece { get; init; }

        /// <summary>The state of that piece. States are never changed, so the order as it was strung is there for good. Null exactly where the piece is.</summary>
        public long? Revision { get; init; }

        /// <summary>The wrist that it was made for, mm; null when nobody said.</summary>
        public double? WristMm { get; init; }

        /// <summary>What went into all of them.</summary>
        public ImmutableArray<UsedBeads> Used { get; init; } = [];

        internal override MadeStep Bare => this with { Who = null, Note = null, Used = [] };
    }

    /// <summary>A price is asked from now on, for one.</summary>
    public sealed record Ask(Guid Id, Guid Made, DateOnly On, Paid Price) : MadeStep(Id, Made, On);

    /// <summary>Sold.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Made">The record.</param>
    /// <param name="On">The day.</param>
    /// <param name="Count">How many.</param>
    /// <param name="Received">What was received for all of them, before fees.</param>
    public sealed record Sell(Guid Id, Guid Made, DateOnly On, int Count, Paid Received) : MadeStep(Id, Made, On)
    {
        /// <summary>What it cost to sell them, in the same currency; no more than was received.</summary>
        public decimal Fees { get; init; }

        /// <summary>Where, when at no show.</summary>
        public string? Where { get; init; }

        /// <summary>The show that they had been taken to; null when they were at home.</summary>
        public string? Show { get; init; }
    }

    /// <summary>Given away.</summary>
    public sealed record Give(Guid Id, Guid Made, DateOnly On, int Count) : MadeStep(Id, Made, On)
    {
        /// <summary>The show that they had been taken to; null when they were at home.</summary>
        public string? Show { get; init; }
    }

    /// <summary>What was sold or given away came back.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Made">The record.</param>
    /// <param name="On">The day.</param>
    /// <param name="Gone">The step by which they went.</param>
    /// <param name="Count">How many.</param>
    public sealed record ComeBack(Guid Id, Guid Made, DateOnly On, Guid Gone, int Count) : MadeStep(Id, Made, On)
    {
        /// <summary>What was paid back, in the currency of the sale; null for nothing.</summary>
        public Paid? Refund { get; init; }
    }

    /// <summary>Repaired, or re-sized for another wrist. It stays where it is.</summary>
    /// <param name="Id">Its own name.</param>
    /// <param name="Made">The record.</param>
    /// <param name="On">The day.</param>
    /// <param name="Done">What was done.</param>
    public sealed record Mend(Guid Id, Guid Made, DateOnly On, string Done) : MadeStep(Id, Made, On)
    {
        /// <summary>What was received for it; null for nothing.</summary>
        public Paid? Fee { get; init; }

        /// <summary>The wrist that it now suits, mm; null for a repair.</summary>
        public double? WristMm { get; init; }

        /// <summary>What went into it.</summary>
        public ImmutableArray<UsedBeads> Used { get; init; } = [];

        internal override MadeStep Bare => this with { Who = null, Note = null, Used = [] };
    }

    /// <summary>Lost, broken or stolen.</summary>
    public sealed record Lose(Guid Id, Guid Made, DateOnly On, int Count) : MadeStep(Id, Made, On)
    {
        /// <summary>The show that they had been taken to; null when they were at home.</summary>
        public string? Show { get; init; }
    }

    /// <summary>Taken apart at home.</summary>
    public sealed record TakeApart(Guid Id, Guid Made, DateOnly On, int Count) : MadeStep(Id, Made, On)
    {
        /// <summary>What came back into stock; each to the lot it is of, or to the last that something went out of.</summary>
        public ImmutableArray<UsedBeads> Back { get; init; } = [];

        internal override MadeStep Bare => this with { Who = null, Note = null, Back = [] };
    }

    /// <summary>Taken along to a show.</summary>
    public sealed record Pack(Guid Id, Guid Made, DateOnly On, int Count, string Show) : MadeStep(Id, Made, On);

    /// <summary>Brought home from a show.</summary>
    public sealed record Unpack(Guid Id, Guid Made, DateOnly On, int Count, string Show) : MadeStep(Id, Made, On);

    /// <summary>A mistaken step is taken back: it stays written down and counts no more. What it took out of stock goes back to the lots that it came from.</summary>
    public sealed record TakeBack(Guid Id, Guid Made, DateOnly On, Guid Step) : MadeStep(Id, Made, On);

    /// <summary>The names and notes of the whole record are erased. Amounts stay.</summary>
    public sealed record Erase(Guid Id, Guid Made, DateOnly On) : MadeStep(Id, Made, On);
}
