using System.Collections.Immutable;
using System.Text.RegularExpressions;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.Tests.Stringing;
using CsCheck;
using static Coilwright.Core.Tests.Editing.EditedOrders;
using static Coilwright.Core.Tests.Stringing.OrderTexts;

namespace Coilwright.Core.Tests.Editing;

/// <summary>What holds for every edit of every order, tried on random ones.</summary>
public partial class OrderEditProperties
{
    // Short enough that a random place is often inside a repeat, a mirror or a group.
    private static readonly Gen<string> AnyTexts =
        Gen.Select(NoteGen.Order.Where(order => NaiveStringing.Of(order, BeadIds).Count <= 120), NoteGen.Style, NoteWriter.Write);

    // "1 round with g between" strings no g. Such an order may be refused, which a test of its own looks at.
    private static readonly Gen<string> Texts = AnyTexts.Where(text => !NamesGroupsNeverStrung(text));

    private static readonly Gen<int[]> Dice = Gen.Int[0, 100_000].Array[9];

    private static readonly Gen<(string Text, int[] Dice)> Edited = Gen.Select(Texts, Dice);

    private static bool NamesGroupsNeverStrung(string text) =>
        OrderTree.Of(text).Nodes().OfType<OrderItem>().Any(item => item is { Times: 1, Separator: not null } && NamesGroups(item.Separator));

    [GeneratedRegex(@"(-\d+)+$")]
    private static partial Regex Number();

    private static string Stem(string name) => Number().Replace(name, "");

    /// <summary>An edit from some random numbers.</summary>
    private static OrderEdit Edit(int[] dice, StringingOrder order)
    {
        var n = order.Count;
        var first = dice[1] % n;
        var row = Row(first, Math.Min(1 + dice[2] % 5, n - first));
        // A whole group rather often: that is what makers choose.
        if (dice[2] % 3 == 0 && order.Groups.Length > 0)
        {
            var group = order.Groups[dice[1] % order.Groups.Length];
            row = Row(group.First, group.Count);
        }
        var some = dice[3] % 3 == 0 ? Each([.. Enumerable.Range(0, 4).Select(i => dice[i + 1] % n)]) : row;
        var names = BeadIds.Concat(order.Groups.Select(g => g.Name)).Distinct().ToArray();
        ImmutableArray<string> what = [.. Enumerable.Range(0, 1 + dice[4] % 3).Select(i => names[dice[4 + i] % names.Length])];
        var beside = (Beside)(dice[5] % 3);
        var count = ((BeadPlaces.Row)row).Count;
        return (dice[0] % 11) switch
        {
            0 or 1 => new InsertBeads(dice[1] % (n + 1), what, beside),
            2 or 3 => new RemoveBeads(some),
            4 => new MoveBeads(some, dice[6] % (n + 1), beside),
            5 => new ReplaceBeads(some, what[0]),
            6 => new DuplicateBeads(some),
            7 => new RepeatBeads(some, 2 + dice[6] % 3),
            8 => new MirrorBeads(row, dice[6] % Math.Max(1, count)),
            9 => new PutBetween(count > 1 ? row : Row(0, Math.Min(n, 3)), what),
            _ => dice[6] % 4 == 0 ? new Ungroup(row) : new NameGroup(row, dice[6] % 5 == 1 ? "petal" : "pair"),
        };
    }

    private static bool MayRefuse(string code) => code is FaultCodes.EditChangesNothing or FaultCodes.EditNothingLeft or FaultCodes.EditCutsGroup
        or FaultCodes.EditNoGroup or FaultCodes.EditTooFew or FaultCodes.EditGroupDiffers or FaultCodes.OrderGroupInItself;

    private static EditOutcome.Done? Outcome(Piece piece, OrderEdit edit)
    {
        EditOutcome outcome;
        try
        {
            outcome = PieceEditing.Apply(piece, edit, SamplePieces.Data);
        }
        catch (Exception e)
        {
            throw new InvalidOperationException($"{edit} {Places(edit)} threw", e);
        }
        if (outcome is EditOutcome.Done done) return done;
        Assert.All(((EditOutcome.Refused)outcome).Why, fault => Assert.True(MayRefuse(fault.Code), $"{Shown(fault)} {edit} {Places(edit)}"));
        return null;
    }

    private static string Places(OrderEdit edit) => edit switch
    {
        RemoveBeads { Where: BeadPlaces.Each each } => string.Join(' ', each.Beads),
        MoveBeads { Where: BeadPlaces.Each each } => string.Join(' ', each.Beads),
        ReplaceBeads { Where: BeadPlaces.Each each } => string.Join(' ', each.Beads),
        DuplicateBeads { Where: BeadPlaces.Each each } => string.Join(' ', each.Beads),
        RepeatBeads { Where: BeadPlaces.Each each } => string.Join(' ', each.Beads),
        InsertBeads insert => string.Join(' ', insert.What),
        PutBetween between => string.Join(' ', between.What),
        _ => "",
    };

    private static List<string> BeadsNamed(Piece piece, string name) => [.. NaiveStringing.Flat([Named(piece, name)], BeadIds).Kinds.Select(kind => BeadIds[kind])];

    private static Thing Named(Piece piece, string name)
    {
        if (BeadIds.Contains(name)) return new Thing.Bead(name);
        Assert.True(OrderMap.TryMake(piece.Written!, BeadIds, out var map, out _));
        var index = piece.Order.Groups.IndexOf(piece.Order.Groups.First(g => g.Name == name));
        var things = Find(NaiveStringing.Things(piece.Order, BeadIds));
        return new Thing.Group(name, map.IsGroupBackwards(index) ? NaiveStringing.Reversed(things!) : things!);

        List<Thing>? Find(List<Thing> level) => level.OfType<Thing.Group>().Select(g => g.Name == name ? g.Things : Find(g.Things)).FirstOrDefault(found => found is not null);
    }

    [Fact]
    public void The_beads_after_an_edit_are_those_of_the_same_edit_on_the_plain_list() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order);
        if (Outcome(before, edit) is not { } done) return;
        var expected = NaiveEdits.BeadsAfter(NaiveEdits.BeadsOf(before.Order), edit, name => BeadsNamed(before, name));
        if (!expected.SequenceEqual(NaiveEdits.BeadsOf(done.Piece.Order))) Assert.Fail($"{edit} {Places(edit)}\n{string.Join(' ', expected)}\n{Strung(done.Piece)}\n{done.Piece.OrderText}");
        AssertSame(done.Piece.Order, Order(done.Piece.OrderText!));
    }, iter: 6000);

    [Fact]
    public void The_groups_after_an_edit_are_those_of_the_same_edit_on_the_plain_list() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order);
        if (edit is InsertBeads { Beside: not Beside.Apart } or MoveBeads { Beside: not Beside.Apart } or Ungroup
            || edit is DuplicateBeads { Where: BeadPlaces.Each } or RepeatBeads { Where: BeadPlaces.Each } or MoveBeads { Where: BeadPlaces.Each }) return;
        // Beads that are two groups at once: either may be meant by another name.
        if (edit is NameGroup { Where: BeadPlaces.Row row } && before.Order.Groups.Count(g => g.First == row.First && g.Count == row.Count) > 1) return;
        if (Outcome(before, edit) is not { } done) return;
        if (NaiveEdits.After(NaiveStringing.Things(before.Order, BeadIds), edit, name => Named(before, name)) is not { } things) return;
        var expected = NaiveStringing.Flat(things, BeadIds);
        if (!expected.Groups.Select(g => (Stem(g.Name), g.First, g.Count)).SequenceEqual(done.Piece.Order.Groups.Select(g => (Stem(g.Name), g.First, g.Count))))
            Assert.Fail($"{edit} {Places(edit)}\n{Shown(expected, BeadIds)}\n{Strung(done.Piece)}\n{done.Piece.OrderText}");
    }, iter: 6000);

    [Fact]
    public void Edit_after_edit_the_text_strings_what_the_plain_list_does() => Gen.Select(Texts, Dice.Array[2, 6]).Sample(sample =>
    {
        var piece = Written(sample.Item1);
        foreach (var dice in sample.Item2)
        {
            var edit = Edit(dice, piece.Order);
            if (piece.Order.Count > 400 || Outcome(piece, edit) is not { } done) continue;
            Assert.Equal(NaiveEdits.BeadsAfter(NaiveEdits.BeadsOf(piece.Order), edit, name => BeadsNamed(piece, name)), NaiveEdits.BeadsOf(done.Piece.Order));
            AssertSame(done.Piece.Order, Order(OrderPrinter.Print(done.Piece.Written!)));
            piece = done.Piece;
        }
    }, iter: 500);

    [Fact]
    public void An_order_given_as_a_list_is_edited_as_its_text_would_be() => Edited.Sample(sample =>
    {
        var written = Written(sample.Text);
        var edit = Edit(sample.Dice, written.Order);
        // What a group's name strings is its text in the one and its first stringing in the other, and these may run opposite ways.
        if (edit is InsertBeads insert && insert.What.Any(IsGroup) || edit is PutBetween between && between.What.Any(IsGroup) || edit is ReplaceBeads replace && IsGroup(replace.With)) return;
        if (Outcome(written, edit) is not { } inText || Outcome(Listed(written.Order), edit) is not { } inList) return;
        Assert.Null(inList.Piece.OrderText);
        Assert.Equal(inText.Piece.Order.Kinds.AsEnumerable(), inList.Piece.Order.Kinds);
        Assert.Equal(inText.Piece.Order.Groups.Select(g => (Stem(g.Name), g.First, g.Count)), inList.Piece.Order.Groups.Select(g => (Stem(g.Name), g.First, g.Count)));
        Assert.Equal(inText.Beads, inList.Beads);

        static bool IsGroup(string name) => !BeadIds.Contains(name);
    }, iter: 2000);

    [Fact]
    public void Where_groups_are_named_that_a_count_of_one_never_strings_an_edit_is_right_or_refused() =>
        Gen.Select(AnyTexts.Where(NamesGroupsNeverStrung), Dice).Sample((text, dice) =>
        {
            var before = Written(text);
            var edit = Edit(dice, before.Order);
            var outcome = PieceEditing.Apply(before, edit, SamplePieces.Data);
            if (outcome is EditOutcome.Refused refused) Assert.All(refused.Why, fault => Assert.True(MayRefuse(fault.Code) || fault.Code == FaultCodes.EditNotWritten, Shown(fault)));
            else Assert.Equal(NaiveEdits.BeadsAfter(NaiveEdits.BeadsOf(before.Order), edit, name => BeadsNamed(before, name)), NaiveEdits.BeadsOf(((EditOutcome.Done)outcome).Piece.Order));
        }, iter: 1000);

    // Text ---------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void Text_that_an_edit_does_not_touch_stays_as_it_is_with_its_ids() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order);
        if (Outcome(before, edit) is not { } done) return;
        Assert.True(OrderMap.TryMake(before.Written!, BeadIds, out var map, out _));
        var (old, now) = (before.Written!, done.Piece.Written!);
        Assert.Equal(now.Nodes().Count(), now.Nodes().Select(n => n.Id).Distinct().Count());
        var ids = now.Nodes().ToDictionary(n => n.Id);
        // Every item of the order that the edit leaves alone and that names no group is there with its own text, parts and ids.
        OrderNode? last = null;
        foreach (var entry in old.Entries)
        {
            if (entry is not OrderItem item || IsTouched(edit, map.StringingsOf(item)[0]) || item.Part is null || NamesGroups(item))
            {
                last = null;
                continue;
            }
            foreach (var node in NodesOf(item))
            {
                Assert.True(ids.TryGetValue(node.Id, out var there), $"{edit} {Places(edit)}: {old.TextOf(node.Span)} lost its id in {now.Text}");
                Assert.Equal(old.TextOf(node.Span), now.TextOf(there.Span));
            }
            // And so is what stands between two such neighbours.
            if (last is not null)
                Assert.Equal(old.Text[last.Span.Start..item.Span.End], now.Text[ids[last.Id].Span.Start..ids[item.Id].Span.End]);
            last = item;
        }
    }, iter: 3000);

    private static IEnumerable<OrderNode> NodesOf(OrderNode node) => node.Children.SelectMany(NodesOf).Prepend(node);

    private static bool NamesGroups(OrderItem item) =>
        NodesOf(item).Any(node => node is OrderBracket { Name: not null } || (node is OrderNameUse use && !BeadIds.Contains(use.Name.Text)));

    private static bool IsTouched(OrderEdit edit, OrderStringing item)
    {
        return edit switch
        {
            InsertBeads insert => insert.At >= item.First && insert.At <= item.End,
            MoveBeads move => (move.To >= item.First && move.To <= item.End) || Reaches(move.Where),
            RemoveBeads remove => Reaches(remove.Where),
            ReplaceBeads replace => Reaches(replace.Where),
            DuplicateBeads duplicate => Reaches(duplicate.Where),
            RepeatBeads repeat => Reaches(repeat.Where),
            MirrorBeads mirror => Reaches(mirror.Where),
            PutBetween between => Reaches(between.Where),
            NameGroup name => Reaches(name.Where),
            Ungroup => true,
            _ => throw new ArgumentException("No edit of places.", nameof(edit)),
        };

        bool Reaches(BeadPlaces where) => where switch
        {
            // Just beside counts as touched: a comma may go, a copy may be put there.
            BeadPlaces.Row row => row.First <= item.End && row.First + row.Count >= item.First,
            BeadPlaces.Each each => each.Beads.Any(bead => bead <= item.End && bead + 1 >= item.First),
            _ => true,
        };
    }

    [Fact]
    public void An_edit_of_one_place_that_takes_no_bead_away_keeps_every_comment_once() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order);
        if (edit is RemoveBeads or MoveBeads or NameGroup or ReplaceBeads { Where: BeadPlaces.Each } or DuplicateBeads { Where: BeadPlaces.Each }
            or RepeatBeads { Where: BeadPlaces.Each } || Outcome(before, edit) is not { } done) return;
        var (comments, after) = (Comments(before.Written!), Comments(done.Piece.Written!));
        if (!comments.SequenceEqual(after)) Assert.Fail($"{edit} {Places(edit)}\n{done.Piece.OrderText}");
    }, iter: 6000);

    [Fact]
    public void No_comment_is_told_twice() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order);
        if (Outcome(before, edit) is not { } done) return;
        Assert.True(Comments(done.Piece.Written!).Count() <= Comments(before.Written!).Count());
    }, iter: 1500);

    private static IEnumerable<string> Comments(OrderTree tree) =>
        tree.Tokens.Where(token => token.Kind == OrderTokenKind.Comment).Select(token => tree.TextOf(token.Span)).Order(StringComparer.Ordinal);

    // Every pass ---------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void The_map_tells_which_name_strings_which_bead() => Texts.Sample(text =>
    {
        // The second way: give one name to a bead of its own and see where that comes to be strung.
        Assert.True(OrderMap.TryMake(OrderTree.Of(text), BeadIds, out var map, out _));
        string[] ids = [.. BeadIds, "zz"];
        foreach (var use in map.Tree.Nodes().OfType<OrderNameUse>().Where(use => BeadIds.Contains(use.Name.Text)))
        {
            var read = OrderNotation.Read(map.Tree.Replace(use.Span, "zz"), ids);
            Assert.Equal(Enumerable.Range(0, map.Order.Count).Where(bead => read.Order!.Kinds[bead] == BeadIds.Length), map.StringingsOf(use).Select(s => s.First).Order());
            Assert.All(map.StringingsOf(use), stringing => Assert.Same(use, map.NameOf(stringing.First)));
        }
    }, iter: 300);

    [Fact]
    public void A_change_of_every_pass_is_the_change_of_the_name_that_is_written() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        Assert.True(OrderMap.TryMake(before.Written!, BeadIds, out var map, out _));
        var bead = sample.Dice[0] % before.Order.Count;
        var with = BeadIds[sample.Dice[1] % BeadIds.Length];
        var name = map.NameOf(bead);
        // Replaced: another name stands there.
        if (name.Name.Text != with)
            AssertSame(Order(before.Written!.Replace(name.Span, " " + with + " ").Text), Done(before, new ReplaceBeads(One(bead), with) { EveryPass = true }).Piece.Order);
        // Put beside: a bracket of both stands there.
        var pair = map.IsBackwards(bead) ? $"({with}, {name.Name.Text})" : $"({name.Name.Text}, {with})";
        AssertSame(Order(before.Written!.Replace(name.Span, pair).Text), Done(before, new InsertBeads(bead + 1, [with]) { EveryPass = true }).Piece.Order);
        // Removed: it is gone from every place that it strung.
        var others = Enumerable.Range(0, before.Order.Count).Where(other => map.NameOf(other) != name).ToList();
        if (others.Count > 0)
            Assert.Equal(others.Select(other => before.Order.Kinds[other]), Done(before, new RemoveBeads(One(bead)) { EveryPass = true }).Piece.Order.Kinds.AsEnumerable());
    }, iter: 1000);

    [Fact]
    public void Every_edit_of_every_pass_can_be_written() => Edited.Sample(sample =>
    {
        var before = Written(sample.Text);
        var edit = Edit(sample.Dice, before.Order) with { EveryPass = true };
        if (Outcome(before, edit) is { } done) AssertSame(done.Piece.Order, Order(OrderPrinter.Print(done.Piece.Written!)));
        if (Outcome(Listed(before.Order), edit) is { } listed) Assert.NotEmpty(listed.Piece.Order.Kinds);
    }, iter: 3000);
}
