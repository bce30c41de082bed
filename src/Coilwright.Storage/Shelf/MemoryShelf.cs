using System.Collections.Immutable;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;

namespace Coilwright.Storage.Shelf;

/// <summary>A shelf that lasts as long as the program runs.</summary>
public sealed partial class MemoryShelf(TimeProvider clock) : IPieceShelf
{
    private readonly Lock _gate = new();
    private readonly Dictionary<Guid, Life> _lives = [];

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfLine>> ListAsync(CancellationToken cancel = default)
    {
        lock (_gate)
            return Task.FromResult(_lives.Values.OrderByDescending(l => l.Steps[^1].At).ThenByDescending(l => l.Id)
                .Select(l => new ShelfLine(l.Id, l.Now.Piece.Title, l.Steps.Count, l.Steps[^1].At, l.IsArchived)).ToImmutableArray());
    }

    /// <inheritdoc/>
    public Task<ShelvedPiece?> OpenAsync(Guid id, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_lives.GetValueOrDefault(id)?.Shelved);
    }

    /// <inheritdoc/>
    public Task<Piece?> OpenAsync(Guid id, long revision, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult(_lives.GetValueOrDefault(id)?.StateOf(revision)?.Piece);
    }

    /// <inheritdoc/>
    public Task<ImmutableArray<ShelfStep>> HistoryAsync(Guid id, CancellationToken cancel = default)
    {
        lock (_gate) return Task.FromResult<ImmutableArray<ShelfStep>>(_lives.TryGetValue(id, out var life) ? [.. life.Steps] : []);
    }

    /// <inheritdoc/>
    public Task<ShelfAnswer> AddAsync(Piece piece, CancellationToken cancel = default)
    {
        if (PieceRules.OfTitle(piece.Title) is [var fault, ..]) return Task.FromResult<ShelfAnswer>(new ShelfAnswer.NotKept(fault));
        lock (_gate) return Task.FromResult<ShelfAnswer>(Put(piece));
    }

    /// <inheritdoc/>
    public Task<FirstAnswer> AddFirstAsync(ImmutableArray<Piece> pieces, CancellationToken cancel = default)
    {
        if (ShelfNames.OfTitles(pieces) is { } fault) return Task.FromResult(new FirstAnswer(false, fault));
        lock (_gate)
        {
            if (_lives.Count > 0) return Task.FromResult(new FirstAnswer(false, null));
            foreach (var piece in pieces) Put(piece);
            return Task.FromResult(new FirstAnswer(true, null));
        }
    }

    private ShelfAnswer.Kept Put(Piece piece)
    {
        var life = new Life(Guid.CreateVersion7(clock.GetUtcNow()));
        _lives.Add(life.Id, life);
        return life.Step(0, ShelfSteps.Added, clock.GetUtcNow(), new State(piece, null));
    }

    /// <inheritdoc/>
    public Task<ShelfAnswer> ChangeAsync(Guid id, long seen, ShelfChange change, CancellationToken cancel = default) =>
        OnAsync(id, seen, life =>
        {
            life.Now.Again = null;
            return life.Step(seen, change.What, clock.GetUtcNow(), new State(change.After, life.Now), change.Edit);
        });

    /// <inheritdoc/>
    public Task<ShelfAnswer> UndoAsync(Guid id, long seen, CancellationToken cancel = default) => OnAsync(id, seen, life =>
    {
        if (life.Now.Before is not { } before) return new ShelfAnswer.Nothing(life.Shelved);
        before.Again = life.Now;
        return life.Step(seen, ShelfSteps.Undone, clock.GetUtcNow(), before);
    });

    /// <inheritdoc/>
    public Task<ShelfAnswer> RedoAsync(Guid id, long seen, CancellationToken cancel = default) => OnAsync(id, seen, life =>
        life.Now.Again is { } again
            ? life.Step(seen, ShelfSteps.Redone, clock.GetUtcNow(), again)
            : new ShelfAnswer.Nothing(life.Shelved));

    /// <inheritdoc/>
    public Task<ShelfAnswer> GoBackAsync(Guid id, long seen, long revision, CancellationToken cancel = default) => OnAsync(id, seen, life =>
    {
        if (life.StateOf(revision) is not { } state) return new ShelfAnswer.Missing();
        life.Now.Again = null;
        return life.Step(seen, ShelfSteps.WentBack, clock.GetUtcNow(), new State(state.Piece, life.Now) { Same = state.Same });
    });

    /// <inheritdoc/>
    public Task<ShelfAnswer> NameAsync(Guid id, long revision, string? name, CancellationToken cancel = default) => OnAsync(id, null, life =>
    {
        if (ShelfNames.Of(name) is { } fault) return new ShelfAnswer.NotKept(fault);
        if (life.StateOf(revision) is null) return new ShelfAnswer.Missing();
        life.Steps[(int)revision - 1] = life.Steps[(int)revision - 1] with { Name = name };
        return new ShelfAnswer.Kept(life.Shelved);
    });

    /// <inheritdoc/>
    public Task<ShelfAnswer> ArchiveAsync(Guid id, bool archived, CancellationToken cancel = default) => OnAsync(id, null, life =>
    {
        life.IsArchived = archived;
        return new ShelfAnswer.Kept(life.Shelved);
    });

    private Task<ShelfAnswer> OnAsync(Guid id, long? seen, Func<Life, ShelfAnswer> step)
    {
        lock (_gate)
        {
            if (!_lives.TryGetValue(id, out var life)) return Task.FromResult<ShelfAnswer>(new ShelfAnswer.Missing());
            return Task.FromResult(seen is { } s && s != life.Steps.Count
                ? new ShelfAnswer.Behind(life.Shelved, [.. life.Steps.Where(t => t.Revision > s)])
                : step(life));
        }
    }

    /// <summary>What a piece was at some time, what it was made from, and what undo last came from.</summary>
    private sealed class State(Piece piece, State? before)
    {
        public Piece Piece { get; } = piece;

        public State? Before { get; } = before;

        public State? Again { get; set; }

        /// <summary>The earliest revision of these contents; 0 before it is known.</summary>
        public long Same { get; set; }
    }

    private sealed class Life(Guid id)
    {
        private readonly List<State> _states = [];

        public Guid Id { get; } = id;

        public bool IsArchived { get; set; }

        public List<ShelfStep> Steps { get; } = [];

        public State Now => _states[^1];

        public ShelvedPiece Shelved => new(Id, Steps.Count, Now.Piece)
        {
            CanUndo = Now.Before is not null,
            CanRedo = Now.Again is not null,
            IsArchived = IsArchived,
        };

        public State? StateOf(long revision) => revision >= 1 && revision <= _states.Count ? _states[(int)revision - 1] : null;

        public ShelfAnswer.Kept Step(long seen, string what, DateTimeOffset at, State state, PieceEdit? edit = null)
        {
            _states.Add(state);
            if (state.Same == 0) state.Same = _states.Count;
            Steps.Add(new ShelfStep(_states.Count, seen, what, at, null) { Edit = edit, Same = state.Same });
            return new ShelfAnswer.Kept(Shelved);
        }
    }
}
