using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Stock;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Stock;

/// <summary>An item as it is to be described from now on.</summary>
/// <param name="Item">The description.</param>
/// <param name="Seen">The description that was seen, by its revision; 0 for an item that is new.</param>
public sealed record ItemChange(StockItem Item, long Seen);

/// <summary>What is to be done with stock, all of it or nothing.</summary>
public sealed record StockChange
{
    /// <summary>Items to describe, before anything moves.</summary>
    public ImmutableArray<ItemChange> Items { get; init; } = [];

    /// <summary>Movements, in their order; each finds what those before it left.</summary>
    public ImmutableArray<Movement> Movements { get; init; } = [];

    /// <summary>Movements alone.</summary>
    public static StockChange Of(params ReadOnlySpan<Movement> movements) => new() { Movements = [.. movements] };
}

/// <summary>What the ledger says to a change.</summary>
public abstract record StockAnswer
{
    private StockAnswer() { }

    /// <summary>All of it is kept: whatever happens now, it is there. Said again of a change whose movements were all done before.</summary>
    /// <param name="Now">Every item that was named, as it is.</param>
    public sealed record Kept(ImmutableArray<StockLine> Now) : StockAnswer
    {
        /// <summary>An item of those that were named.</summary>
        public StockLine this[string key] => Now.First(l => l.Item.Key == key);
    }

    /// <summary>It cannot be done, and nothing of it was.</summary>
    /// <param name="At">Which movement; for an item that is none, or counted otherwise, which item.</param>
    /// <param name="Why">Why, with what is there.</param>
    /// <param name="Now">The item as it is, without anything of this change; null when there is none.</param>
    public sealed record Refused(int At, Fault Why, StockLine? Now) : StockAnswer;

    /// <summary>An item was described anew since it was seen. Nothing of the change was done.</summary>
    /// <param name="Now">The item as it is.</param>
    public sealed record Behind(StockLine Now) : StockAnswer;

    /// <summary>It could not be written down and is not kept; the reason may pass (a full disk, a locked file).</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotKept(Fault Why) : StockAnswer;
}

/// <summary>What is in the drawers, and everything that ever happened to it.</summary>
/// <remarks>
/// <para>Movements are only ever added. Whether one can be done is decided in the same transaction that writes it down: of two who want the last strand at once one has it, and the
/// other is told what is left. Nothing goes below nought, and no more is reserved than is there.</para>
/// <para>A movement that was given before (the same id) counts once: whoever did not hear the answer asks again.</para>
/// <para>What cannot be read is told by a <see cref="ShelfUnreadableException"/>; what cannot be written by <see cref="StockAnswer.NotKept"/>. Many may ask at once. What is answered
/// with <see cref="StockAnswer.Kept"/> is there after a crash, in a ledger that outlives the program.</para>
/// </remarks>
public interface IStockLedger
{
    /// <summary>Every item with what is there of it, by key.</summary>
    Task<ImmutableArray<StockLine>> ListAsync(CancellationToken cancel = default);

    /// <summary>One item; null when there is none of this key.</summary>
    Task<StockLine?> OpenAsync(string key, CancellationToken cancel = default);

    /// <summary>What happened to an item, the earliest first; empty when there is none of this key.</summary>
    Task<ImmutableArray<StockEntry>> HistoryAsync(string key, CancellationToken cancel = default);

    /// <summary>What can be taken of every item, by key: on hand less reserved.</summary>
    Task<ImmutableSortedDictionary<string, Quantity>> FreeAsync(CancellationToken cancel = default);

    /// <summary>Does a change, or nothing of it.</summary>
    /// <param name="change">The change.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<StockAnswer> BookAsync(StockChange change, CancellationToken cancel = default);
}
