using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Storage.Shelf;

namespace Coilwright.Web.Bench;

/// <summary>One visitor's bench: the piece that lies on it, the wrist it is looked at on, its readings, and what is selected.</summary>
/// <remarks>Belongs to one circuit and is used on its dispatcher only. Holds state and asks the core; works out nothing.</remarks>
public sealed class BenchSession(IPieceShelf shelf, Reckoner reckoner)
{
    private readonly LatestOnly _reckoning = new();
    private long _asked;
    private long _shown;

    /// <summary>Something on the bench changed.</summary>
    public event Action? Changed;

    /// <summary>The piece as it lies on the shelf; null before one is opened.</summary>
    public ShelvedPiece? Shelved { get; private set; }

    /// <summary>The readings last come by; null before a piece is opened.</summary>
    public Reckoned? Reckoned { get; private set; }

    /// <summary>The wrist it is looked at on, mm: the wearer's until she moves the slider. Changes nothing in the piece.</summary>
    public double WristMm { get; private set; }

    /// <summary>What is selected.</summary>
    public Selection Selection { get; private set; } = Selection.None;

    /// <summary>Puts a piece on the bench. False when the shelf has none of this name.</summary>
    public async Task<bool> OpenAsync(Guid id, CancellationToken cancel = default)
    {
        if (await shelf.OpenAsync(id, cancel) is not { } shelved) return false;
        Shelved = shelved;
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

    private async Task ReckonAsync()
    {
        if (Shelved is not { } shelved) return;
        var (wrist, mine) = (WristMm, ++_asked);
        var reckoned = reckoner.Known(shelved, wrist) ?? await _reckoning.RunAsync(() => reckoner.Reckon(shelved, wrist));
        // What was asked for earlier may come later.
        if (reckoned is null || mine < _shown) return;
        (Reckoned, _shown) = (reckoned, mine);
        Changed?.Invoke();
    }
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
