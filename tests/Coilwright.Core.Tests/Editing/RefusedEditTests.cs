using Coilwright.Core.Editing;
using static Coilwright.Core.Tests.Editing.EditedOrders;

namespace Coilwright.Core.Tests.Editing;

/// <summary>Edits of the order that cannot be done say why, with the values for a sentence, and change nothing.</summary>
public class RefusedEditTests
{
    private const string Text = "g = chip, disc\nround, g, tube";

    [Fact]
    public void A_place_that_the_order_does_not_reach_is_told_as_she_counts()
    {
        Assert.Equal(["edit.no-such-bead '5' beads=4"], Refused(Text, new RemoveBeads(One(4))));
        Assert.Equal(["edit.no-such-bead '0' beads=4"], Refused(Text, new RemoveBeads(One(-1))));
        Assert.Equal(["edit.no-such-bead '5' beads=4"], Refused(Text, new RemoveBeads(Row(2, int.MaxValue))));
        Assert.Equal(["edit.no-such-bead '10' beads=4"], Refused(Text, new RemoveBeads(Each(1, 9))));
        Assert.Equal(["edit.no-such-bead '6' beads=4"], Refused(Text, new InsertBeads(5, ["chip"])));
        Assert.Equal(["edit.no-such-bead '-1' beads=4"], Refused(Text, new MoveBeads(One(0), -2)));
    }

    [Fact]
    public void Nothing_chosen_and_nothing_named_are_told()
    {
        Assert.Equal(["edit.nothing-chosen ''"], Refused(Text, new RemoveBeads(Each())));
        Assert.Equal(["edit.nothing-chosen ''"], Refused(Text, new RemoveBeads(Row(0, 0))));
        Assert.Equal(["edit.nothing-chosen ''"], Refused(Text, new InsertBeads(0, [])));
        Assert.Equal(["edit.nothing-chosen ''"], Refused(Text, new PutBetween(Row(0, 2), default)));
    }

    [Fact]
    public void A_name_that_is_neither_bead_nor_group_is_told_with_the_nearest()
    {
        Assert.Equal(["order.unknown-name 'rond' nearest=round"], Refused(Text, new InsertBeads(0, ["rond"])));
        Assert.Equal(["order.unknown-name 'discs' nearest=disc"], Refused(Text, new ReplaceBeads(One(0), "discs")));
        Assert.Equal(["edit.bead-unknown 'rond' nearest=round"], Refused(Text, new ReplaceEverywhere("rond", "disc")));
        Assert.Equal(["edit.bead-unknown 'g'"], Refused(Text, new ReplaceEverywhere("disc", "g")));
    }

    [Fact]
    public void What_would_change_nothing_is_told()
    {
        Assert.Equal(["edit.changes-nothing 'round'"], Refused(Text, new ReplaceBeads(One(0), "round")));
        Assert.Equal(["edit.changes-nothing ''"], Refused(Text, new MoveBeads(Row(1, 2), 3)));
        Assert.Equal(["edit.changes-nothing ''"], Refused(Text, new MoveBeads(Row(1, 2), 2)));
        Assert.Equal(["edit.changes-nothing 'g'"], Refused(Text, new NameGroup(Row(1, 2), "g")));
        Assert.Equal(["edit.changes-nothing 'stone'"], Refused(Text, new ReplaceEverywhere("stone", "disc")));
        Assert.Equal(["edit.changes-nothing ''"], Refused(Text, new SetOrderText(Text)));
    }

    [Fact]
    public void The_last_bead_stays() => Assert.Equal(["edit.nothing-left ''"], Refused(Text, new RemoveBeads(Row(0, 4))));

    [Fact]
    public void Too_few_beads_and_beads_apart_are_told()
    {
        Assert.Equal(["edit.too-few '1' least=2"], Refused(Text, new PutBetween(One(1), ["disc"])));
        Assert.Equal(["edit.too-few '2' least=3"], Refused(Text, new MirrorBeads(Row(0, 2), 2)));
        Assert.Equal(["edit.not-together ''"], Refused(Text, new NameGroup(Each(0, 2), "pair")));
        Assert.Equal(["edit.not-together ''"], Refused(Text, new MirrorBeads(Each(0, 2))));
        Assert.Equal(["times value.at-least '1' min=2 unit="], Refused(Text, new RepeatBeads(One(0), 1)));
        Assert.Equal(["centre value.at-least '-1' min=0 unit="], Refused(Text, new MirrorBeads(Row(0, 2), -1)));
    }

    [Fact]
    public void Groups_stand_inside_one_another_or_apart()
    {
        Assert.Equal(["edit.cuts-group 'pair' group=g"], Refused(Text, new NameGroup(Row(0, 2), "pair")));
        Assert.Equal(["edit.cuts-group 'pair' group=g"], Refused(Text, new NameGroup(Row(2, 2), "pair")));
        Assert.Equal(["edit.no-group ''"], Refused(Text, new Ungroup(One(0))));
        Assert.Equal(["edit.no-group ''"], Refused(Text, new Ungroup(Row(0, 2))));
        Assert.Equal(["name edit.group-differs 'g'"], Refused(Text, new NameGroup(One(3), "g")));
        Assert.Equal(["name order.group-in-itself 'g' path=g > g"], Refused(Text, new NameGroup(One(1), "g")));
        Assert.Equal(["name order.group-in-itself 'g' path=g > g"], Refused(Text, new NameGroup(Row(0, 3), "g")));
        Assert.Equal(["name order.group-is-bead 'tube'"], Refused(Text, new NameGroup(Row(1, 2), "tube")));
        Assert.Equal(["name id.form 'My pair'"], Refused(Text, new NameGroup(Row(1, 2), "My pair")));
        Assert.Equal(["name text.empty ''"], Refused(Text, new NameGroup(Row(1, 2), "")));
    }

    [Fact]
    public void In_a_list_a_group_may_hold_other_beads_under_one_name_but_not_itself()
    {
        var listed = Listed(Written(Text).Order);
        Assert.Equal("round g[chip disc] g[tube]", Strung(Done(listed, new NameGroup(One(3), "g")).Piece));
        Assert.Equal("round g[chip bar] tube", Strung(Done(listed, new ReplaceBeads(One(2), "bar")).Piece));
        Assert.Equal(["name order.group-in-itself 'g' path=g > g"], Refused(listed, new NameGroup(One(1), "g")));
        Assert.Equal(["[1] order.group-in-itself 'g' path=g > g"], Refused(listed, new InsertBeads(2, ["g"])).Select(fault => fault.Replace(".of[1]", "", StringComparison.Ordinal)));
        Assert.Equal(["edit.not-strung ''"], Refused(listed, new RemoveBeads(new BeadPlaces.Part(1))));
    }

    [Fact]
    public void A_part_of_the_text_that_is_not_there_or_strings_nothing_is_told()
    {
        var piece = Written("spare = chip, disc\nround, tube");
        Assert.Equal(["edit.not-strung ''"], Refused(piece, new RemoveBeads(new BeadPlaces.Part(piece.Written!.Entries[0].Id))));
        Assert.Equal(["edit.not-strung ''"], Refused(piece, new NameGroup(new BeadPlaces.Part(999), "pair")));
    }

    [Fact]
    public void An_order_does_not_grow_beyond_its_limits()
    {
        Assert.Equal(["order.too-many '' max=200000"], Refused("100001 round", new DuplicateBeads(Row(0, 100_001))));
        Assert.Equal(["order.too-many '' max=200000"], Refused("round, 2 disc", new RepeatBeads(Row(0, 3), 200_000)));
        Assert.Equal(["times order.count '200001' max=200000"], Refused("round", new RepeatBeads(One(0), 200_001)));
        var deep = string.Concat(Enumerable.Repeat("(", 50)) + "round, disc" + new string(')', 50);
        Assert.Equal(["1:1 order.too-deep"], Refused(deep, new NameGroup(Row(0, 1), "pair")).Select(fault => "1:1 " + fault.Split(' ')[1]));
    }

    [Fact]
    public void A_text_that_cannot_be_read_is_refused_with_its_faults() =>
        Assert.Equal(["1:8 order.unknown-name 'dics' nearest=disc", "2:4 order.unclosed '' openColumn=3 openLine=2"], Refused(Text, new SetOrderText("round, dics\n2 (")).Where(f => !f.Contains("expected=", StringComparison.Ordinal)));
}
