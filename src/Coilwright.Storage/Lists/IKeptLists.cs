using Coilwright.Core.Faults;
using Coilwright.Storage.Shelf;

namespace Coilwright.Storage.Lists;

/// <summary>Which list is kept.</summary>
public enum ListKind
{
    /// <summary>Who sells what at what price: a file as <see cref="PricesFile"/> reads it.</summary>
    Prices,

    /// <summary>The wire at hand: a file as <see cref="WireFile"/> reads it.</summary>
    Wire,

    /// <summary>What the studio's work costs and how it is priced: a file as <see cref="CostsFile"/> reads it.</summary>
    Costs,

    /// <summary>The sheet of labels in use, and which version of which piece labels were made of last: lines of text, the bench's own.</summary>
    Labels,

    /// <summary>How far the stringing of each piece has come: lines of text, the bench's own. The one that is put in the place of the one before it.</summary>
    Places,
}

/// <summary>A list as it was kept.</summary>
/// <param name="Kind">Which.</param>
/// <param name="Revision">The how manieth it is, from 1.</param>
/// <param name="Content">The file, as text. Whoever kept it had read it first.</param>
/// <param name="At">When it was kept, UTC.</param>
public sealed record KeptList(ListKind Kind, long Revision, string Content, DateTimeOffset At);

/// <summary>What is said to a list that is to be kept.</summary>
public abstract record ListAnswer
{
    private ListAnswer() { }

    /// <summary>It is kept, and there after a crash.</summary>
    public sealed record Kept(KeptList Now) : ListAnswer;

    /// <summary>Another was kept since the one that was seen. Nothing was done.</summary>
    public sealed record Behind(KeptList Now) : ListAnswer;

    /// <summary>It could not be written down and is not kept.</summary>
    public sealed record NotKept(Fault Why) : ListAnswer;
}

/// <summary>Lists that belong to no piece and to all of them, kept beside the pieces. Every one that ever was stays, but of places the last alone; the last counts.</summary>
/// <remarks>What cannot be read is told by a <see cref="ShelfUnreadableException"/>. Many may ask at once.</remarks>
public interface IKeptLists
{
    /// <summary>The list as it is; null when there never was one.</summary>
    Task<KeptList?> ListAsync(ListKind kind, CancellationToken cancel = default);

    /// <summary>Keeps a list.</summary>
    /// <param name="kind">Which.</param>
    /// <param name="seen">The revision that was seen before; 0 when there was none.</param>
    /// <param name="content">The file, as text.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<ListAnswer> KeepListAsync(ListKind kind, long seen, string content, CancellationToken cancel = default);
}

/// <summary>The names that lists have in a store.</summary>
internal static class ListNames
{
    /// <summary>Whether a list takes the place of the one before it: it moves with every step of a stringing, and nobody asks where it was.</summary>
    public static bool IsReplaced(ListKind kind) => kind == ListKind.Places;

    public static string Of(ListKind kind) => kind switch
    {
        ListKind.Prices => "prices",
        ListKind.Wire => "wire",
        ListKind.Costs => "costs",
        ListKind.Labels => "labels",
        ListKind.Places => "places",
        _ => throw new ArgumentOutOfRangeException(nameof(kind)),
    };
}
