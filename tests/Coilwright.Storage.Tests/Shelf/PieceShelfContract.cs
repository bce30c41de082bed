using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Shelf;
using CsCheck;

namespace Coilwright.Storage.Tests.Shelf;

/// <summary>What every shelf must do. A new one is held to it by a class of three lines, as at the foot of this file.</summary>
public abstract class PieceShelfContract
{
    private static readonly Piece Boardwalk = PieceFile.ReadFrom(TestData.ExampleFiles.First(), TestData.Data).Piece!;

    /// <summary>An empty shelf.</summary>
    protected abstract IPieceShelf Empty();

    /// <summary>How many random histories are tried.</summary>
    protected virtual int RandomRuns => 60;

    private static Piece Titled(string title) => Boardwalk with { Title = title };

    private static ShelfChange To(string title) => new("set-title", Titled(title));

    private static ShelvedPiece Kept(ShelfAnswer answer) => Assert.IsType<ShelfAnswer.Kept>(answer).Now;

    [Fact]
    public async Task A_new_piece_is_there_in_its_first_state_with_nothing_to_undo()
    {
        var shelf = Empty();
        var added = Kept(await shelf.AddAsync(Boardwalk));
        Assert.Equal(1, added.Revision);
        Assert.False(added.CanUndo || added.CanRedo || added.IsArchived);
        var opened = (await shelf.OpenAsync(added.Id))!;
        Assert.Equal(PieceFile.Write(Boardwalk), PieceFile.Write(opened.Piece));
        Assert.Equal(ShelfSteps.Added, Assert.Single(await shelf.HistoryAsync(added.Id)).What);
    }

    [Fact]
    public async Task A_piece_that_could_not_be_read_again_is_not_put_there()
    {
        var shelf = Empty();
        Assert.Equal(FaultCodes.TextTooLong, Assert.IsType<ShelfAnswer.NotKept>(await shelf.AddAsync(Titled(new string('t', PieceRules.MostText + 1)))).Why.Code);
        Assert.Empty(await shelf.ListAsync());
    }

    [Fact]
    public async Task First_pieces_are_put_on_an_empty_shelf_once_and_all_of_them_however_many_ask()
    {
        var shelf = Empty();
        var slip = await shelf.AddFirstAsync([Boardwalk, Titled(new string('t', PieceRules.MostText + 1))]);
        Assert.Equal((false, FaultCodes.TextTooLong), (slip.ArePut, slip.Why?.Code));
        Assert.Empty(await shelf.ListAsync());
        var answers = await Task.WhenAll(Enumerable.Range(0, 8).Select(i => Task.Run(() => shelf.AddFirstAsync([Titled($"{i} one"), Titled($"{i} two")]))));
        Assert.All(answers, a => Assert.Null(a.Why));
        var heard = Assert.Single(Enumerable.Range(0, 8), i => answers[i].ArePut);
        Assert.Equal([$"{heard} one", $"{heard} two"], (await shelf.ListAsync()).Select(l => l.Title).Order(StringComparer.Ordinal));
        var one = (await shelf.ListAsync())[0];
        Assert.Equal((1L, false), ((await shelf.OpenAsync(one.Id))!.Revision, (await shelf.OpenAsync(one.Id))!.CanUndo));
        Assert.Equal(ShelfSteps.Added, Assert.Single(await shelf.HistoryAsync(one.Id)).What);
    }

    [Fact]
    public async Task First_pieces_are_not_put_beside_one_that_is_there()
    {
        var shelf = Empty();
        var there = Kept(await shelf.AddAsync(Titled("mine")));
        await shelf.ArchiveAsync(there.Id, true);
        Assert.Equal(new FirstAnswer(false, null), await shelf.AddFirstAsync([Boardwalk]));
        Assert.Equal("mine", Assert.Single(await shelf.ListAsync()).Title);
    }

    [Fact]
    public async Task What_is_not_there_is_missing()
    {
        var shelf = Empty();
        var id = Guid.NewGuid();
        Assert.Null(await shelf.OpenAsync(id));
        Assert.Empty(await shelf.HistoryAsync(id));
        Assert.IsType<ShelfAnswer.Missing>(await shelf.ChangeAsync(id, 1, To("x")));
        Assert.IsType<ShelfAnswer.Missing>(await shelf.UndoAsync(id, 1));
        var there = Kept(await shelf.AddAsync(Boardwalk));
        Assert.Null(await shelf.OpenAsync(there.Id, 2));
        Assert.Null(await shelf.OpenAsync(there.Id, 0));
        Assert.IsType<ShelfAnswer.Missing>(await shelf.GoBackAsync(there.Id, 1, 9));
        Assert.IsType<ShelfAnswer.Missing>(await shelf.NameAsync(there.Id, 9, "x"));
    }

    [Fact]
    public async Task A_step_that_saw_an_older_state_is_told_what_it_missed_and_overwrites_nothing()
    {
        var shelf = Empty();
        var first = Kept(await shelf.AddAsync(Boardwalk));
        await shelf.ChangeAsync(first.Id, 1, To("one"));
        await shelf.ChangeAsync(first.Id, 2, To("two"));
        foreach (var stale in (Func<Task<ShelfAnswer>>[])[() => shelf.ChangeAsync(first.Id, 1, To("stale")), () => shelf.UndoAsync(first.Id, 1),
            () => shelf.RedoAsync(first.Id, 1), () => shelf.GoBackAsync(first.Id, 1, 1), () => shelf.ChangeAsync(first.Id, 7, To("ahead"))])
        {
            var behind = Assert.IsType<ShelfAnswer.Behind>(await stale());
            Assert.Equal("two", behind.Now.Piece.Title);
            if (behind.Since.Length > 0) Assert.Equal([2L, 3], behind.Since.Select(s => s.Revision));
        }
        Assert.Equal("two", (await shelf.OpenAsync(first.Id))!.Piece.Title);
        Assert.Equal(3, (await shelf.HistoryAsync(first.Id)).Length);
    }

    // Model: the two stacks that every editor has.
    [Fact]
    public async Task Undo_and_redo_do_what_two_stacks_would_and_only_ever_append() =>
        await Gen.Int[0, 3].List[0, 40].SampleAsync(async steps =>
        {
            var shelf = Empty();
            var now = Kept(await shelf.AddAsync(Titled("0")));
            Stack<string> back = new(), on = new();
            var seen = new List<string> { "0" };
            for (var i = 1; i <= steps.Count; i++)
            {
                var title = now.Piece.Title;
                var answer = steps[i - 1] switch
                {
                    0 or 1 => await shelf.ChangeAsync(now.Id, now.Revision, To($"{i}")),
                    2 => await shelf.UndoAsync(now.Id, now.Revision),
                    _ => await shelf.RedoAsync(now.Id, now.Revision),
                };
                var (expected, from, to) = steps[i - 1] switch
                {
                    0 or 1 => ($"{i}", null, back),
                    2 => (back.Count > 0 ? back.Peek() : null, back, on),
                    _ => (on.Count > 0 ? on.Peek() : null, on, back),
                };
                if (expected is null)
                {
                    var nothing = Assert.IsType<ShelfAnswer.Nothing>(answer).Now;
                    Assert.Equal((now.Revision, title, now.CanUndo, now.CanRedo), (nothing.Revision, nothing.Piece.Title, nothing.CanUndo, nothing.CanRedo));
                    continue;
                }
                if (from is null) on.Clear(); else from.Pop();
                to.Push(title);
                now = Kept(answer);
                seen.Add(expected);
                Assert.Equal(expected, now.Piece.Title);
                Assert.Equal((seen.Count, back.Count > 0, on.Count > 0), (now.Revision, now.CanUndo, now.CanRedo));
            }
            // Every state that ever was is still there.
            for (var r = 1; r <= seen.Count; r++) Assert.Equal(seen[r - 1], (await shelf.OpenAsync(now.Id, r))!.Title);
        }, iter: RandomRuns);

    [Fact]
    public async Task Going_back_is_a_step_that_can_itself_be_undone()
    {
        var shelf = Empty();
        var now = Kept(await shelf.AddAsync(Titled("first")));
        now = Kept(await shelf.ChangeAsync(now.Id, 1, To("second")));
        now = Kept(await shelf.GoBackAsync(now.Id, 2, 1));
        Assert.Equal(("first", 3L), (now.Piece.Title, now.Revision));
        now = Kept(await shelf.UndoAsync(now.Id, 3));
        Assert.Equal("second", now.Piece.Title);
        Assert.Equal([ShelfSteps.Added, "set-title", ShelfSteps.WentBack, ShelfSteps.Undone], (await shelf.HistoryAsync(now.Id)).Select(s => s.What));
        // Each is told by the earliest state of these contents.
        Kept(await shelf.GoBackAsync(now.Id, 4, 3));
        Assert.Equal([1L, 2, 1, 2, 1], (await shelf.HistoryAsync(now.Id)).Select(s => s.Same));
    }

    [Fact]
    public async Task A_state_can_be_named_and_its_name_taken_away_without_a_step()
    {
        var shelf = Empty();
        var now = Kept(await shelf.AddAsync(Boardwalk));
        Kept(await shelf.NameAsync(now.Id, 1, "as on the mat"));
        Assert.Equal("as on the mat", Assert.Single(await shelf.HistoryAsync(now.Id)).Name);
        // What is no name changes nothing.
        Assert.Equal(FaultCodes.TextTooLong, Assert.IsType<ShelfAnswer.NotKept>(await shelf.NameAsync(now.Id, 1, new string('n', PieceRules.MostText + 1))).Why.Code);
        Assert.Equal(FaultCodes.TextEmpty, Assert.IsType<ShelfAnswer.NotKept>(await shelf.NameAsync(now.Id, 1, " ")).Why.Code);
        Assert.Equal("as on the mat", Assert.Single(await shelf.HistoryAsync(now.Id)).Name);
        Kept(await shelf.NameAsync(now.Id, 1, null));
        Assert.Null(Assert.Single(await shelf.HistoryAsync(now.Id)).Name);
        Assert.Equal(1, (await shelf.OpenAsync(now.Id))!.Revision);
    }

    [Fact]
    public async Task The_list_has_the_last_changed_first_and_tells_what_was_put_away()
    {
        var shelf = Empty();
        var one = Kept(await shelf.AddAsync(Titled("one")));
        var two = Kept(await shelf.AddAsync(Titled("two")));
        await shelf.ArchiveAsync(two.Id, true);
        await shelf.ChangeAsync(one.Id, 1, To("one, changed"));
        var lines = await shelf.ListAsync();
        Assert.Equal([("one, changed", 2L, false), ("two", 1, true)], lines.Select(l => (l.Title, l.Revision, l.IsArchived)));
        Assert.True(lines[0].ChangedAt >= lines[1].ChangedAt);
        Assert.True((await shelf.OpenAsync(two.Id))!.IsArchived);
        await shelf.ArchiveAsync(two.Id, false);
        Assert.False((await shelf.OpenAsync(two.Id))!.IsArchived);
    }

    [Fact]
    public async Task The_history_tells_each_edit_and_what_it_saw()
    {
        var shelf = Empty();
        var now = Kept(await shelf.AddAsync(Boardwalk));
        var edit = new RemoveBeads(new BeadPlaces.Row(1, 2));
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(now.Piece, edit, TestData.Data));
        now = Kept(await shelf.ChangeAsync(now.Id, 1, ShelfChange.Of(done)));
        Assert.Equal(done.Piece.OrderText, now.Piece.OrderText);
        now = Kept(await shelf.UndoAsync(now.Id, 2));
        var history = await shelf.HistoryAsync(now.Id);
        Assert.Equal([(1L, 0L, "added"), (2, 1, "remove-beads"), (3, 2, "undone")], history.Select(s => (s.Revision, s.Seen, s.What)));
        Assert.Equal([null, edit, null], history.Select(s => s.Edit));
        Assert.Equal(PieceFile.Write(done.Piece), PieceFile.Write((await shelf.OpenAsync(now.Id, 2))!));
    }

    [Fact]
    public async Task An_order_that_is_handed_over_keeps_the_ids_of_its_parts()
    {
        var shelf = Empty();
        var first = Kept(await shelf.AddAsync(Boardwalk));
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(first.Piece, new InsertBeads(1, [Boardwalk.Beads[0].Id]), TestData.Data));
        Assert.Same(done.Piece, Kept(await shelf.ChangeAsync(first.Id, 1, ShelfChange.Of(done))).Piece);
    }

    [Fact]
    public async Task Of_many_who_saw_the_same_state_exactly_one_is_kept()
    {
        var shelf = Empty();
        var id = Kept(await shelf.AddAsync(Boardwalk)).Id;
        var answers = await Task.WhenAll(Enumerable.Range(0, 16).Select(i => Task.Run(() => shelf.ChangeAsync(id, 1, To($"{i}")))));
        Assert.Single(answers.OfType<ShelfAnswer.Kept>());
        Assert.Equal(15, answers.OfType<ShelfAnswer.Behind>().Count());
        Assert.Equal(2, (await shelf.OpenAsync(id))!.Revision);
    }
}

/// <summary>The shelf that lasts as long as the program runs.</summary>
public sealed class MemoryShelfTests : PieceShelfContract
{
    protected override IPieceShelf Empty() => new MemoryShelf(TimeProvider.System);
}
