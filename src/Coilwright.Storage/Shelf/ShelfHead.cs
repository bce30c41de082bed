namespace Coilwright.Storage.Shelf;

/// <summary>A step as it decides what comes after it: which state it is, which step holds its contents, and where undo and redo lead from it.</summary>
/// <param name="Id">The piece.</param>
/// <param name="Revision">The state that the step led to.</param>
/// <param name="ContentOf">The step that holds its contents.</param>
/// <param name="UndoTo">Where undo leads; null when there is nothing to take back.</param>
/// <param name="RedoTo">Where redo leads; null when there is nothing to take again.</param>
/// <param name="IsArchived">Whether the piece was put away.</param>
internal sealed record ShelfHead(Guid Id, long Revision, long ContentOf, long? UndoTo, long? RedoTo, bool IsArchived)
{
    /// <summary>The first step of a piece.</summary>
    public static ShelfHead First(Guid id) => new(id, 1, 1, null, null, false);

    /// <summary>The step after this one that brings new contents.</summary>
    public ShelfHead Changed => this with { Revision = Revision + 1, ContentOf = Revision + 1, UndoTo = Revision, RedoTo = null };

    /// <summary>The step after this one that undo takes.</summary>
    /// <param name="before">The step that <see cref="UndoTo"/> leads to.</param>
    public ShelfHead Undone(ShelfHead before) => before with { Revision = Revision + 1, RedoTo = Revision };

    /// <summary>The step after this one that redo takes.</summary>
    /// <param name="again">The step that <see cref="RedoTo"/> leads to.</param>
    public ShelfHead Redone(ShelfHead again) => again with { Revision = Revision + 1 };

    /// <summary>The step after this one that goes back.</summary>
    /// <param name="there">The step that is gone back to.</param>
    public ShelfHead WentBack(ShelfHead there) => there with { Revision = Revision + 1, UndoTo = Revision, RedoTo = null };
}
