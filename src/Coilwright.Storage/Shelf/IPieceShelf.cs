using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A piece as it lies on the shelf: its newest state, and which one that is.</summary>
/// <param name="Id">The shelf's own name for it; never shown.</param>
/// <param name="Revision">Which state this is: 1 when it was put there, one more with every accepted step.</param>
/// <param name="Piece">The piece.</param>
public sealed record ShelvedPiece(Guid Id, long Revision, Piece Piece)
{
    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo { get; init; }

    /// <summary>Whether there is a step, once taken back, to take again.</summary>
    public bool CanRedo { get; init; }

    /// <summary>Whether it was put away.</summary>
    public bool IsArchived { get; init; }
}

/// <summary>A line in the list of pieces.</summary>
/// <param name="Id">The shelf's own name for it.</param>
/// <param name="Title">Its title.</param>
/// <param name="Revision">Its newest state.</param>
/// <param name="ChangedAt">When that was made.</param>
/// <param name="IsArchived">Whether it was put away.</param>
public sealed record ShelfLine(Guid Id, string Title, long Revision, DateTimeOffset ChangedAt, bool IsArchived);

/// <summary>What is being done to a piece.</summary>
/// <param name="What">A code of what is done, for the history: the edit's own, as <c>insert-beads</c>.</param>
/// <param name="After">The piece as it is afterwards.</param>
public sealed record ShelfChange(string What, Piece After)
{
    /// <summary>The edit itself, for the history; null where what was done is none.</summary>
    public PieceEdit? Edit { get; init; }

    /// <summary>What an edit that was done comes to on the shelf.</summary>
    public static ShelfChange Of(EditOutcome.Done done) => new(done.Edit.Code, done.Piece) { Edit = done.Edit };
}

/// <summary>One accepted step in a piece's life.</summary>
/// <param name="Revision">The state that it led to.</param>
/// <param name="Seen">The state that whoever asked for it had before her.</param>
/// <param name="What">What was done: a change's code, or one of <see cref="ShelfSteps"/>.</param>
/// <param name="At">When.</param>
/// <param name="Name">The name she gave to the state; null when she gave none.</param>
public sealed record ShelfStep(long Revision, long Seen, string What, DateTimeOffset At, string? Name)
{
    /// <summary>The edit that was done; null where the step was none.</summary>
    public PieceEdit? Edit { get; init; }

    /// <summary>The earliest state with the same contents: an earlier one where the step led back to it, by undo, redo or going back; else its own.</summary>
    public long Same { get; init; } = Revision;
}

/// <summary>The rule that a state's name must meet, on every shelf.</summary>
public static class ShelfNames
{
    /// <summary>What is wrong with a name; null when nothing is.</summary>
    public static Fault? Of(string? name) => name is null ? null : PieceRules.OfText("name", name, mayBeEmpty: false) is [var fault, ..] ? fault : null;

    /// <summary>What is wrong with a title of several pieces, the first thing; null when nothing is.</summary>
    public static Fault? OfTitles(ImmutableArray<Piece> pieces) => pieces.SelectMany(piece => PieceRules.OfTitle(piece.Title)).FirstOrDefault();
}

/// <summary>The steps that are no change of the piece's own.</summary>
public static class ShelfSteps
{
    /// <summary>It was put on the shelf.</summary>
    public const string Added = "added";

    /// <summary>The last step was taken back.</summary>
    public const string Undone = "undone";

    /// <summary>A step that was taken back was taken again.</summary>
    public const string Redone = "redone";

    /// <summary>An earlier state was made the newest again.</summary>
    public const string WentBack = "went-back";
}

/// <summary>What the shelf says to a step.</summary>
public abstract record ShelfAnswer
{
    private ShelfAnswer() { }

    /// <summary>It is kept: whatever happens now, it is there.</summary>
    /// <param name="Now">The piece after it.</param>
    public sealed record Kept(ShelvedPiece Now) : ShelfAnswer;

    /// <summary>The piece went on since the state that was seen. The step was not taken; what was offered is still with whoever asked.</summary>
    /// <param name="Now">The piece as it is.</param>
    /// <param name="Since">The steps that were not seen, the earliest first.</param>
    public sealed record Behind(ShelvedPiece Now, ImmutableArray<ShelfStep> Since) : ShelfAnswer;

    /// <summary>There is nothing to take back, or to take again.</summary>
    /// <param name="Now">The piece as it is.</param>
    public sealed record Nothing(ShelvedPiece Now) : ShelfAnswer;

    /// <summary>There is no such piece or state.</summary>
    public sealed record Missing : ShelfAnswer;

    /// <summary>It could not be written down and is not kept; the reason may pass (a full disk, a locked file).</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotKept(Fault Why) : ShelfAnswer;
}

/// <summary>What the shelf says to pieces that are to be the first on it.</summary>
/// <param name="ArePut">Whether they were put there, all of them; otherwise none of them.</param>
/// <param name="Why">Why they could not be; null when they were, or something is there already.</param>
public sealed record FirstAnswer(bool ArePut, Fault? Why);

/// <summary>The shelf, or a piece on it, cannot be read just now or at all.</summary>
/// <param name="why">Why, as a sentence can be made of it.</param>
public sealed class ShelfUnreadableException(Fault why) : IOException(why.Code)
{
    /// <summary>Why.</summary>
    public Fault Why => why;
}

/// <summary>Where a maker's pieces are kept, with every step of theirs.</summary>
/// <remarks>
/// <para>Every step says which state it saw. Where the piece has gone on since, the step is refused with what was missed; nothing is overwritten
/// unseen. Nothing is ever taken out: undo and redo append a state with the old contents. After undo, a new change forgets what could be redone, as
/// every editor does; the states themselves stay and can be gone back to.</para>
/// <para>What cannot be read is told by a <see cref="ShelfUnreadableException"/>; what cannot be written by <see cref="ShelfAnswer.NotKept"/>.</para>
/// <para>Many may ask at once. What is answered with <see cref="ShelfAnswer.Kept"/> is there after a crash, on a shelf that outlives the program.</para>
/// </remarks>
public interface IPieceShelf
{
    /// <summary>All pieces, the last changed first.</summary>
    Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default);

    /// <summary>A piece in its newest state; null when there is none of this name.</summary>
    Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default);

    /// <summary>A piece as it was in one of its states; null when there is none.</summary>
    Task<Piece?> OpenAsync(Guid id, long revision, CancellationToken cancel = default);

    /// <summary>The steps of a piece, the earliest first; empty when there is no such piece.</summary>
    Task<ImmutableArray<ShelfStep>> HistoryAsync(Guid id, CancellationToken cancel = default);

    /// <summary>Puts a new piece on the shelf. <see cref="ShelfAnswer.Kept"/> or <see cref="ShelfAnswer.NotKept"/>, that also for a title that is none
    /// (<see cref="PieceRules.OfTitle"/>): it could not be read again.</summary>
    Task<ShelfAnswer> AddAsync(Piece piece, CancellationToken cancel = default);

    /// <summary>Puts pieces on an empty shelf, in their order, all of them or none; where anything is there already, nothing is done. Of many that ask at once, also from several programs, one is heard.</summary>
    Task<FirstAnswer> AddFirstAsync(ImmutableArray<Piece> pieces, CancellationToken cancel = default);

    /// <summary>Keeps a change.</summary>
    /// <param name="id">The piece.</param>
    /// <param name="seen">The state that was changed.</param>
    /// <param name="change">The change.</param>
    /// <param name="cancel">Gives up before it is kept.</param>
    Task<ShelfAnswer> ChangeAsync(Guid id, long seen, ShelfChange change, CancellationToken cancel = default);

    /// <summary>Takes the last step back.</summary>
    Task<ShelfAnswer> UndoAsync(Guid id, long seen, CancellationToken cancel = default);

    /// <summary>Takes a step again that was taken back.</summary>
    Task<ShelfAnswer> RedoAsync(Guid id, long seen, CancellationToken cancel = default);

    /// <summary>Makes an earlier state the newest, as a step that can itself be taken back.</summary>
    Task<ShelfAnswer> GoBackAsync(Guid id, long seen, long revision, CancellationToken cancel = default);

    /// <summary>Gives a state a name, or takes it away with null. No step: the state stays the same. What is no name (<see cref="ShelfNames.Of"/>) is
    /// <see cref="ShelfAnswer.NotKept"/>.</summary>
    Task<ShelfAnswer> NameAsync(Guid id, long revision, string? name, CancellationToken cancel = default);

    /// <summary>Puts a piece away, or takes it out again. No step.</summary>
    Task<ShelfAnswer> ArchiveAsync(Guid id, bool archived, CancellationToken cancel = default);
}
