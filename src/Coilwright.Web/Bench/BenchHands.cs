using System.Collections.Immutable;
using Coilwright.Core.Editing;

namespace Coilwright.Web.Bench;

/// <summary>Where a bead goes that she picks from the tray.</summary>
public enum Placing
{
    /// <summary>After what is selected, or at the end.</summary>
    After,

    /// <summary>Before what is selected, or at the start.</summary>
    Before,

    /// <summary>In place of each selected bead.</summary>
    Instead,

    /// <summary>Between each two neighbours of what is selected.</summary>
    Between,
}

/// <summary>What her hands do on the bench, by tap and by key alike: turns what is selected into edits.</summary>
/// <remarks>Belongs to one circuit, like the session that it works on.</remarks>
public sealed class BenchHands(BenchSession session)
{
    /// <summary>Where a bead from the tray goes.</summary>
    public Placing Placing { get; set; }

    /// <summary>Whether every place is changed that the same words string.</summary>
    public bool EveryPass { get; set; }

    private ImmutableSortedSet<int> Selected => session.Selection.Beads;

    private int Strung => session.Piece?.Order.Count ?? 0;

    /// <summary>Whether what is selected can be moved one bead toward the start.</summary>
    public bool CanMoveBack => !Selected.IsEmpty && Selected[0] > 0;

    /// <summary>Whether what is selected can be moved one bead toward the finish.</summary>
    public bool CanMoveOn => !Selected.IsEmpty && Selected[^1] < Strung - 1;

    /// <summary>Whether the selected beads are neighbours.</summary>
    public bool IsRow => Selected.Count > 0 && Selected[^1] - Selected[0] == Selected.Count - 1;

    /// <summary>Whether a selected bead is in a group.</summary>
    public bool IsInGroup => session.Piece is { } piece && piece.Order.Groups.Any(g => Selected.Any(b => b >= g.First && b < g.First + g.Count));

    /// <summary>Strings a bead or a group of the order where <see cref="Placing"/> says.</summary>
    public Task PutAsync(string name) => Selected.IsEmpty
        ? session.EditAsync(new InsertBeads(Placing == Placing.Before ? 0 : Strung, [name]))
        : session.EditAsync(Placing switch
        {
            Placing.Before => new InsertBeads(Selected[0], [name], Ends(Selected[0]) ? Beside.Apart : Beside.WithNext) { EveryPass = EveryPass },
            Placing.Instead => new ReplaceBeads(Places, name) { EveryPass = EveryPass },
            Placing.Between => new PutBetween(Places, [name]) { EveryPass = EveryPass },
            _ => new InsertBeads(Selected[^1] + 1, [name], Ends(Selected[^1]) ? Beside.Apart : Beside.WithPrevious) { EveryPass = EveryPass },
        });

    /// <summary>Takes what is selected off the wire.</summary>
    public Task RemoveAsync() => OnSelected(p => new RemoveBeads(p) { EveryPass = EveryPass });

    /// <summary>Strings what is selected so many times in all.</summary>
    public Task RepeatAsync(int times) => OnSelected(p => times == 2 ? new DuplicateBeads(p) { EveryPass = EveryPass } : new RepeatBeads(p, times) { EveryPass = EveryPass });

    /// <summary>Strings what is selected once more from its other end.</summary>
    /// <param name="centre">How many of its last beads stand once in the middle.</param>
    public Task MirrorAsync(int centre) => OnSelected(p => new MirrorBeads(p, centre) { EveryPass = EveryPass });

    /// <summary>Moves what is selected by one bead.</summary>
    /// <param name="on">Toward the finish; else toward the start.</param>
    public Task MoveAsync(bool on) => (on ? CanMoveOn : CanMoveBack)
        ? session.EditAsync(new MoveBeads(Places, on ? Selected[^1] + 2 : Selected[0] - 1))
        : Task.CompletedTask;

    /// <summary>Gives what is selected a name.</summary>
    public Task GroupAsync(string name) => OnSelected(p => new NameGroup(p, name.Trim()) { EveryPass = EveryPass });

    /// <summary>Lets the group be a group no more; its beads stay.</summary>
    public Task UngroupAsync() => OnSelected(p => new Ungroup(p) { EveryPass = EveryPass });

    /// <summary>Does what a key on the rows asks for. False when the key asks for no edit.</summary>
    /// <param name="key">The key by its name in the browser.</param>
    /// <param name="moves">Whether Alt is held.</param>
    /// <param name="doing">The edit on its way.</param>
    public bool TryKey(string key, bool moves, out Task doing)
    {
        doing = (key, moves) switch
        {
            ("ArrowLeft", true) => MoveAsync(false),
            ("ArrowRight", true) => MoveAsync(true),
            ("Delete" or "Backspace", false) => RemoveAsync(),
            ([>= '2' and <= '9' and var digit], false) => RepeatAsync(digit - '0'),
            ([(>= 'a' and <= 'z') or (>= 'A' and <= 'Z')], false) when BeadOf(key) is { } id => PutAsync(id),
            _ => null!,
        };
        return doing is not null;
    }

    private Task OnSelected(Func<BeadPlaces, PieceEdit> edit) => Selected.IsEmpty ? Task.CompletedTask : session.EditAsync(edit(Places));

    private BeadPlaces Places => IsRow ? new BeadPlaces.Row(Selected[0], Selected.Count) : new BeadPlaces.Each(Selected);

    // A whole selected group has its neighbours beside it; a bead of a group has them in the group.
    private bool Ends(int bead) => session.Piece!.Order.Groups.Any(g =>
        bead >= g.First && bead < g.First + g.Count && Enumerable.Range(g.First, g.Count).All(Selected.Contains));

    private string? BeadOf(string letter) =>
        session.Reckoned?.Counts.FirstOrDefault(c => string.Equals(c.Letter, letter, StringComparison.OrdinalIgnoreCase))?.Bead.Id;
}
