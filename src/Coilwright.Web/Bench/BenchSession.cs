using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>One visitor's bench: the piece that lies on it, the wrist it is looked at on, its readings, what is selected, and what she does to it.</summary>
/// <remarks>Belongs to one circuit and is used on its dispatcher only. Holds state and asks the core; works out nothing. Every step is written down
/// before the next is taken; what could not be written waits here and is shown all the same.</remarks>
public sealed class BenchSession(IPieceShelf shelf, Reckoner reckoner, PieceNews news) : IDisposable
{
    private readonly LatestOnly _reckoning = new();
    private readonly SemaphoreSlim _step = new(1, 1);
    private ImmutableArray<ShelfChange> _waiting = [];

    // What could not be written yet of pieces that she looked away from.
    private readonly Dictionary<Guid, (ShelvedPiece Shelved, ImmutableArray<ShelfChange> Waiting)> _aside = [];
    private long _asked;
    private long _shown;

    /// <summary>Something on the bench changed.</summary>
    public event Action? Changed;

    /// <summary>The piece as it lies on the shelf; null before one is opened.</summary>
    public ShelvedPiece? Shelved { get; private set; }

    /// <summary>The piece as it lies on the bench: with the steps that wait to be written down.</summary>
    public Piece? Piece => _waiting.IsEmpty ? Shelved?.Piece : _waiting[^1].After;

    /// <summary>The readings last come by; null before a piece is opened.</summary>
    public Reckoned? Reckoned { get; private set; }

    /// <summary>The piece that <see cref="Reckoned"/> is of, as she has it; behind <see cref="Piece"/> while an edit is being reckoned.</summary>
    public Piece? ReckonedFor { get; private set; }

    /// <summary>The wrist it is looked at on, mm: the wearer's until she moves the slider. Changes nothing in the piece.</summary>
    public double WristMm { get; private set; }

    /// <summary>What is selected.</summary>
    public Selection Selection { get; private set; } = Selection.None;

    /// <summary>What the bench has to say to her; null when nothing.</summary>
    public BenchNote? Note { get; private set; }

    /// <summary>Whether there is a step to take back.</summary>
    public bool CanUndo => !_waiting.IsEmpty || Shelved?.CanUndo == true;

    /// <summary>Whether there is a step, once taken back, to take again.</summary>
    public bool CanRedo => _waiting.IsEmpty && Shelved?.CanRedo == true;

    /// <summary>Whether steps of hers wait to be written down.</summary>
    public bool Waits => !_waiting.IsEmpty || _aside.Count > 0;

    /// <summary>Puts a piece on the bench, with the steps of hers that wait to be written down. False when the shelf has none of this name.</summary>
    public async Task<bool> OpenAsync(Guid id, CancellationToken cancel = default)
    {
        if (!_waiting.IsEmpty) _aside[Shelved!.Id] = (Shelved, _waiting);
        if (_aside.Remove(id, out var aside))
        {
            (Shelved, _waiting) = aside;
            WristMm = Piece!.Wearer.WristMm;
            Selection = Selection.None;
            await WriteAgainAsync();
            return true;
        }
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return false;
        Shelved = shelved;
        _waiting = [];
        Note = null;
        WristMm = shelved.Piece.Wearer.WristMm;
        Selection = Selection.None;
        await ReckonAsync();
        return true;
    }

    /// <summary>Looks at the piece on another wrist.</summary>
    /// <param name="wristMm">Round the wrist, mm; kept within what the core's curve can be asked for.</param>
    public Task LookOnWristAsync(double wristMm)
    {
        WristMm = wristMm;
        Changed?.Invoke();
        return ReckonAsync();
    }

    /// <summary>Selects beads.</summary>
    public void Select(Selection selection)
    {
        Selection = selection;
        Changed?.Invoke();
    }

    /// <summary>Does an edit: shows it, and writes it down. True when it was done, written or not; a refusal is in <see cref="Note"/>.</summary>
    public Task<bool> EditAsync(PieceEdit edit) => StepAsync(async () =>
    {
        switch (PieceEditing.Apply(Piece!, edit, reckoner.Data))
        {
            case EditOutcome.Refused refused:
                Note = new BenchNote.Refused(refused.Why);
                return false;
            case EditOutcome.Done done:
                var wornAsMeant = WristMm == Piece!.Wearer.WristMm;
                _waiting = _waiting.Add(ShelfChange.Of(done));
                if (wornAsMeant) WristMm = done.Piece.Wearer.WristMm;
                Note = done.Told.IsEmpty ? null : new BenchNote.Told(done.Told);
                if (!done.Beads.IsEmpty) Selection = Selection.Of(done.Beads);
                await WriteAsync();
                return true;
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    });

    /// <summary>Takes the last step back.</summary>
    public Task UndoAsync() => StepAsync(async () =>
    {
        if (!_waiting.IsEmpty)
        {
            // Not written down yet: nothing on the shelf knows of it.
            _waiting = _waiting.RemoveAt(_waiting.Length - 1);
            Note = null;
            if (!_waiting.IsEmpty) await WriteAsync();
        }
        else
        {
            await TakeAsync(await shelf.UndoAsync(Shelved!.Id, Shelved.Revision));
        }
        return true;
    });

    /// <summary>Takes a step again that was taken back.</summary>
    public Task RedoAsync() => StepAsync(async () =>
    {
        if (CanRedo) await TakeAsync(await shelf.RedoAsync(Shelved!.Id, Shelved.Revision));
        return true;
    });

    /// <summary>Makes an earlier state the newest. False when it could not be done, or while steps of hers wait; why is in <see cref="Note"/>.</summary>
    public Task<bool> GoBackAsync(long revision) => StepAsync(async () =>
    {
        await WriteAsync();
        if (!_waiting.IsEmpty || !await TakeAsync(await shelf.GoBackAsync(Shelved!.Id, Shelved.Revision, revision))) return false;
        Note = null;
        return true;
    });

    /// <summary>Tries to write down what waits.</summary>
    public Task WriteAgainAsync() => StepAsync(async () =>
    {
        Note = null;
        await WriteAsync();
        return true;
    });

    /// <summary>Leaves her own waiting steps and takes the piece as the other window left it.</summary>
    public Task TakeTheirsAsync() => StepAsync(async () =>
    {
        (_waiting, Note) = ([], null);
        if (await shelf.OpenAsync(Shelved!.Id) is { } now) Shelved = now;
        else Note = new BenchNote.Gone();
        return true;
    });

    /// <summary>Puts her own waiting steps after those of the other window. Theirs stay in the history and can be gone back to.</summary>
    public Task KeepMineAsync() => StepAsync(async () =>
    {
        Note = null;
        if (await shelf.OpenAsync(Shelved!.Id) is { } now) Shelved = now;
        await WriteAsync();
        return true;
    });

    /// <summary>Another window kept a state of this piece: it is shown here too, unless steps of her own wait; those meet it when they are written.</summary>
    public Task CatchUpAsync(long revision) => StepAsync(async () =>
    {
        if (revision <= Shelved!.Revision || !_waiting.IsEmpty || await shelf.OpenAsync(Shelved.Id) is not { } now || now.Revision <= Shelved.Revision) return false;
        (Shelved, Note) = (now, new BenchNote.ChangedElsewhere());
        return true;
    });

    /// <summary>Everything on the shelf was replaced: the piece is shown as it is there now. Steps of her own that wait are kept and meet it when they are
    /// written.</summary>
    public Task LookAgainAsync() => StepAsync(async () =>
    {
        if (!_waiting.IsEmpty) return false;
        if (await shelf.OpenAsync(Shelved!.Id) is not { } now)
        {
            Note = new BenchNote.Gone();
            return false;
        }
        (Shelved, Note) = (now, new BenchNote.ChangedElsewhere());
        return true;
    });

    /// <summary>She has read what the bench had to say.</summary>
    public void PutNoteAway()
    {
        if (_waiting.IsEmpty) Note = null;
        Changed?.Invoke();
    }

    // One step at a time: the next sees what the last one left.
    private async Task<bool> StepAsync(Func<Task<bool>> step)
    {
        if (Shelved is null) return false;
        await _step.WaitAsync();
        bool done;
        try
        {
            done = await step();
            KeepSelectionInside();
        }
        finally
        {
            _step.Release();
        }
        if (done) await ReckonAsync();
        else Changed?.Invoke();
        return done;
    }

    private async Task WriteAsync()
    {
        while (!_waiting.IsEmpty && await TakeAsync(await shelf.ChangeAsync(Shelved!.Id, Shelved.Revision, _waiting[0]))) _waiting = _waiting.RemoveAt(0);
    }

    private async Task<bool> TakeAsync(ShelfAnswer answer)
    {
        switch (answer)
        {
            case ShelfAnswer.Kept kept:
                Shelved = kept.Now;
                news.Say(kept.Now.Id, kept.Now.Revision);
                return true;
            case ShelfAnswer.Nothing nothing:
                Shelved = nothing.Now;
                return true;
            case ShelfAnswer.Behind behind when _waiting.IsEmpty:
                // An undo of what another window has gone on from: nothing of hers is lost by showing the piece as it is.
                (Shelved, Note) = (behind.Now, new BenchNote.ChangedElsewhere());
                return false;
            case ShelfAnswer.Behind behind:
                Note = new BenchNote.Behind(behind.Now, _waiting.Length);
                return false;
            case ShelfAnswer.NotKept notKept when _waiting.IsEmpty:
                // Nothing of hers waits: it is as if she had not asked.
                Note = new BenchNote.Refused([notKept.Why]);
                return false;
            case ShelfAnswer.NotKept notKept:
                Note = new BenchNote.NotWritten(notKept.Why, _waiting.Length);
                return false;
            default:
                Note = new BenchNote.Gone();
                return false;
        }
    }

    private void KeepSelectionInside()
    {
        if (Piece is not { } piece || (Selection.Beads.IsEmpty && Selection.At is null)) return;
        var count = piece.Order.Count;
        if (Selection.Beads.IsEmpty || Selection.Beads[^1] < count) return;
        Selection = Selection.Of(Selection.Beads.Where(b => b < count));
    }

    private async Task ReckonAsync()
    {
        if (Shelved is not { } shelved || Piece is not { } piece) return;
        var (wrist, mine, written) = (WristMm, ++_asked, _waiting.IsEmpty);
        var reckoned = (written ? reckoner.Known(shelved, wrist) : null)
            ?? await _reckoning.RunAsync(() => written ? reckoner.Reckon(shelved, wrist) : reckoner.Reckon(piece, wrist));
        // What was asked for earlier may come later.
        if (reckoned is null || mine < _shown) return;
        (Reckoned, ReckonedFor, _shown) = (reckoned, piece, mine);
        Changed?.Invoke();
    }

    /// <inheritdoc/>
    public void Dispose() => _step.Dispose();
}

/// <summary>The selected beads.</summary>
/// <param name="Beads">Their places in the order, from 0, ascending.</param>
/// <param name="At">The bead that the keys move from; null when none is.</param>
/// <param name="Anchor">Where a stretch that is being extended began.</param>
public sealed record Selection(ImmutableSortedSet<int> Beads, int? At, int? Anchor)
{
    /// <summary>Nothing selected.</summary>
    public static Selection None { get; } = new(ImmutableSortedSet<int>.Empty, null, null);

    /// <summary>One bead.</summary>
    public static Selection Of(int bead) => new([bead], bead, bead);

    /// <summary>Certain beads, as a notice means them.</summary>
    public static Selection Of(IEnumerable<int> beads)
    {
        var all = beads.ToImmutableSortedSet();
        return all.IsEmpty ? None : new Selection(all, all[0], all[0]);
    }

    /// <summary>Everything from the anchor to a bead.</summary>
    public Selection To(int bead)
    {
        var from = Anchor ?? bead;
        return new Selection([.. Enumerable.Range(Math.Min(from, bead), Math.Abs(from - bead) + 1)], bead, from);
    }

    /// <summary>The same with a bead added, or taken out when it was in.</summary>
    public Selection With(int bead)
    {
        var without = Beads.Remove(bead);
        return new Selection(without.Count < Beads.Count ? without : Beads.Add(bead), bead, bead);
    }
}
