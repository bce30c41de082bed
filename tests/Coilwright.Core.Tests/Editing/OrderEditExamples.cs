using Coilwright.Core.Editing;
using static Coilwright.Core.Tests.Editing.EditedOrders;

namespace Coilwright.Core.Tests.Editing;

/// <summary>Edits on orders as makers write them: the text before, the edit, the text after.</summary>
public class OrderEditExamples
{
    // One place of a repeat -----------------------------------------------------------------------------------------------------------------

    [Theory]
    // Beads 0 to 5 are the passes in turn; the one that is changed is written out, those alike stay counted together.
    [InlineData("3 x (round, disc)", 3, "(round, disc), (round, chip), (round, disc)")]
    [InlineData("3 x (round, disc)", 1, "(round, chip), 2 x (round, disc)")]
    [InlineData("3 (round, disc)", 5, "2 (round, disc), (round, chip)")]
    [InlineData("5 round", 2, "2 round, chip, 2 round")]
    [InlineData("2x round", 0, "chip, round")]
    [InlineData("5 round with disc between", 4, "2 round with disc between, disc, chip, disc, 2 round with disc between")]
    [InlineData("3 round with 2 disc between", 1, "round, chip, disc, 2 round with 2 disc between")]
    [InlineData("2 (3 round, disc), tube", 1, "(round, chip, round, disc), (3 round, disc), tube")]
    [InlineData("mirror (round, disc) around stone", 2, "mirror (round, disc) around chip")]
    [InlineData("mirror (round, disc) around stone", 4, "(round, disc), stone, backwards (chip, disc)")]
    [InlineData("mirror (round, disc) around stone", 0, "(chip, disc), stone, backwards (round, disc)")]
    [InlineData("backwards (round, disc, tube)", 0, "backwards (round, disc, chip)")]
    public void Changing_one_bead_writes_out_as_little_as_it_can(string before, int bead, string after) =>
        Assert.Equal(after, Text(before, new ReplaceBeads(One(bead), "chip")));

    [Theory]
    [InlineData("3 x (round, disc)", 3, "3 x (round, chip)")]
    [InlineData("5 round", 2, "5 chip")]
    [InlineData("5 round with disc between", 3, "5 round with chip between")]
    [InlineData("mirror (round, disc) around stone", 4, "mirror (chip, disc) around stone")]
    [InlineData("g = round, disc\ng, tube, backwards g", 4, "g = chip, disc\ng, tube, backwards g")]
    public void Changing_every_pass_changes_what_is_written(string before, int bead, string after) =>
        Assert.Equal(after, Text(before, new ReplaceBeads(One(bead), "chip") { EveryPass = true }));

    [Fact]
    public void Beads_chosen_in_every_pass_are_changed_where_they_are_written()
    {
        Assert.Equal("3 x (round, chip)", Text("3 x (round, disc)", new ReplaceBeads(Each(1, 3, 5), "chip")));
        Assert.Equal("mirror (round, chip) around stone", Text("mirror (round, disc) around stone", new ReplaceBeads(Each(1, 3), "chip")));
        Assert.Equal("round, 2 chip, 2 round", Text("5 round", new ReplaceBeads(Each(1, 2), "chip")));
        Assert.Equal("g = round\ng, tube, g", Text("g = round, disc\ng, tube, g", new RemoveBeads(Each(1, 4))));
    }

    // Groups ---------------------------------------------------------------------------------------------------------------------------------

    [Theory]
    // A group that differs in one place gets a name of its own there; the others keep theirs.
    [InlineData("g = 2 chip, disc\ng, tube, g", 6, "g = 2 chip, disc\ng, tube, g-2 (2 chip, bar)")]
    [InlineData("g = 2 chip, disc\ng, tube, g", 2, "g = 2 chip, disc\ng-2 (2 chip, bar), tube, g")]
    [InlineData("g = 2 chip, disc # note\n3 g", 5, "g = 2 chip, disc # note\ng, g-2 (2 chip, bar), g")]
    // Used once, it is simply changed.
    [InlineData("g = 2 chip, disc\ng, tube", 2, "g = 2 chip, bar\ng, tube")]
    [InlineData("g (2 chip, disc), tube", 2, "g (2 chip, bar), tube")]
    // The place that named it changes: the next place that uses it says what it is.
    [InlineData("g (2 chip, disc), tube, g", 2, "g-2 (2 chip, bar), tube, g (2 chip, disc)")]
    [InlineData("g (2 chip, disc), tube, g", 6, "g (2 chip, disc), tube, g-2 (2 chip, bar)")]
    [InlineData("2 g (chip, disc), tube", 1, "g-2 (chip, bar), g (chip, disc), tube")]
    // A group in a group.
    [InlineData("f = 2 chip\ng = f, disc\ng, tube, g", 4, "f = 2 chip\ng = f, disc\ng, tube, g-2 (f-2 (bar, chip), disc)")]
    // One that has a number counts on.
    [InlineData("g-2 (chip, disc), 2 g-2", 3, "g-2 (chip, disc), g-3 (chip, bar), g-2")]
    public void A_group_that_differs_in_one_place_gets_a_name_of_its_own_there(string before, int bead, string after) =>
        Assert.Equal(after, Text(before, new ReplaceBeads(One(bead), "bar")));

    [Fact]
    public void A_group_stays_written_down_at_its_bracket_when_the_group_round_it_gets_another_name_there()
    {
        // The comment stays with it, although a copy of the group round it stands before it now.
        Assert.Equal("g-2 (round, g (round, p), p (disc # note\n))", Text("g (round, p (disc # note\n))", new InsertBeads(1, ["g"])));
        // Named before it is written down, it is still written down where it was.
        Assert.Equal("g-2, tube, g-2 (chip, disc # note\n), tube, g (bar, disc)",
            Text("g, tube, g (bar, disc # note\n), tube, g", new ReplaceBeads(Each(0, 3), "chip")));
    }

    [Fact]
    public void The_comment_after_the_last_bead_of_a_bracket_comes_along_with_it()
    {
        Assert.Equal("(disc # note\n), tube\n", Text("g, tube\ng = (disc # note\n)", new Ungroup(Row(0, 1))));
        Assert.Equal("tube, g (disc # note\n)", Text("g (disc # note\n), tube, g", new RemoveBeads(One(0))));
    }

    [Fact]
    public void The_wish_for_a_group_goes_with_it_when_it_gets_another_name()
    {
        var piece = Written("g = 2 chip, disc\ng, tube, g");
        piece = piece with { Wishes = piece.Wishes with { Groups = piece.Wishes.Groups.Add("g", Pieces.LiningUpWish.Mix) } };
        var after = Done(piece, new ReplaceBeads(One(2), "bar")).Piece;
        Assert.Equal(["g", "g-2"], after.Wishes.Groups.Keys);
        Assert.All(after.Wishes.Groups.Values, wish => Assert.Equal(Pieces.LiningUpWish.Mix, wish));
    }

    // Insert -------------------------------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("round, disc", 1, "chip, chip", "round, 2 chip, disc")]
    [InlineData("round, disc", 0, "chip", "chip, round, disc")]
    [InlineData("round, disc  # last\n", 2, "chip", "round, disc, chip  # last\n")]
    [InlineData("round # one\ndisc # two", 1, "chip", "round, chip # one\ndisc # two")]
    [InlineData("3 round, disc", 2, "round", "4 round, disc")]
    [InlineData("disc, 3x round", 1, "round", "disc, 4x round")]
    [InlineData("round, disc", 1, "round", "2 round, disc")]
    [InlineData("4 round", 1, "chip", "round, chip, 3 round")]
    [InlineData("2 round", 1, "chip", "round, chip, round")]
    [InlineData("g = chip, disc\ng, tube", 2, "bar", "g = chip, disc\ng, bar, tube")]
    [InlineData("g = chip, disc\ng, tube, g", 1, "bar", "g = chip, disc\ng-2 (chip, bar, disc), tube, g")]
    [InlineData("round, tube\ng = chip, disc", 1, "g, bar, g, bar, g", "round, 3 g with bar between, tube\ng = chip, disc")]
    public void New_beads_are_written_beside_the_bead_before_them(string before, int at, string what, string after) =>
        Assert.Equal(after, Text(before, new InsertBeads(at, [.. what.Split(", ")])));

    [Theory]
    [InlineData(Beside.Apart, "g = chip, disc\ng, bar, h (chip)")]
    [InlineData(Beside.WithPrevious, "g = chip, disc, bar\ng, h (chip)")]
    [InlineData(Beside.WithNext, "g = chip, disc\ng, h (bar, chip)")]
    public void At_the_edge_of_a_group_she_says_where_new_beads_belong(Beside beside, string after) =>
        Assert.Equal(after, Text("g = chip, disc\ng, h (chip)", new InsertBeads(2, ["bar"], beside)));

    [Fact]
    public void In_every_pass_new_beads_go_with_the_bead_they_were_put_beside()
    {
        Assert.Equal("3 (round, disc, chip)", Text("3 (round, disc)", new InsertBeads(2, ["chip"]) { EveryPass = true }));
        Assert.Equal("3 (round, chip, disc)", Text("3 (round, disc)", new InsertBeads(3, ["chip"]) { EveryPass = true }));
        Assert.Equal("3 (chip, round, disc)", Text("3 (round, disc)", new InsertBeads(2, ["chip"], Beside.WithNext) { EveryPass = true }));
        // In the second half of a mirror "after" is before, as it is written.
        Assert.Equal("mirror (round, chip, disc)", Text("mirror (round, disc)", new InsertBeads(3, ["chip"]) { EveryPass = true }));
    }

    // Remove -------------------------------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("round, disc, chip", 1, 1, "round, chip")]
    [InlineData("round, disc, chip", 2, 1, "round, disc")]
    [InlineData("round, disc, chip", 0, 2, "chip")]
    [InlineData("round,disc  ,  chip", 1, 1, "round,chip")]
    [InlineData("round\ndisc\nchip\n", 1, 1, "round\nchip\n")]
    [InlineData("round\n  disc # keep me\nchip", 1, 1, "round\n  # keep me\nchip")]
    [InlineData("round, disc, # keep me\nchip", 1, 1, "round, # keep me\nchip")]
    [InlineData("5 round", 1, 2, "3 round")]
    [InlineData("2 round", 1, 1, "round")]
    [InlineData("3 round with disc between", 1, 2, "2 round with disc between")]
    [InlineData("3 round with disc between", 1, 1, "round, 2 round with disc between")]
    [InlineData("mirror (round, disc) around stone", 2, 1, "mirror (round, disc)")]
    [InlineData("mirror (round, disc) around stone, bar", 3, 2, "(round, disc), stone, bar")]
    [InlineData("2 (\n  round, disc   # the pair\n  chip\n)", 2, 1, "(\n  round, disc   # the pair\n), (round, disc, chip)")]
    [InlineData("g = chip, disc\ng, tube", 0, 2, "g = chip, disc\ntube")]
    [InlineData("g (chip, disc), tube, g", 0, 2, "tube, g (chip, disc)")]
    public void Removed_beads_take_their_commas_and_lines_along_and_leave_every_comment(string before, int first, int count, string after) =>
        Assert.Equal(after, Text(before, new RemoveBeads(Row(first, count))));

    // Move ---------------------------------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("round, disc, chip", 0, 1, 3, "disc, chip, round")]
    [InlineData("round, disc, chip", 2, 1, 0, "chip, round, disc")]
    [InlineData("g (chip, disc), tube, bar", 0, 2, 4, "tube, bar, g (chip, disc)")]
    [InlineData("g = chip, disc # mine\ng, tube, g", 3, 2, 2, "g = chip, disc # mine\n2 g, tube")]
    [InlineData("tube, 3 round with disc between, bar", 1, 5, 0, "3 round with disc between, tube, bar")]
    public void Moved_beads_keep_their_groups(string before, int first, int count, int to, string after) =>
        Assert.Equal(after, Text(before, new MoveBeads(Row(first, count), to)));

    // Duplicate, repeat, mirror, put between ------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("round, disc", 0, 1, "2 round, disc")]
    [InlineData("3 round, disc", 1, 1, "4 round, disc")]
    [InlineData("round, disc, chip", 0, 2, "2 (round, disc), chip")]
    [InlineData("g = chip, disc\ng, tube", 0, 2, "g = chip, disc\n2 g, tube")]
    [InlineData("g (chip, disc), tube", 0, 2, "2 g (chip, disc), tube")]
    [InlineData("3 round with disc between", 0, 5, "2 (3 round with disc between)")]
    // Not whole items: what is added is written out.
    [InlineData("(round, disc), chip", 1, 2, "(round, disc), chip, disc, chip")]
    [InlineData("3 (round, disc)", 2, 2, "4 (round, disc)")]
    [InlineData("round # one\ndisc # two", 0, 2, "2 (round # one\ndisc) # two")]
    public void Duplicated_beads_are_counted(string before, int first, int count, string after) =>
        Assert.Equal(after, Text(before, new DuplicateBeads(Row(first, count))));

    [Theory]
    [InlineData("round, disc, chip", 0, 2, 0, "mirror (round, disc), chip")]
    [InlineData("round, disc, chip", 0, 3, 1, "mirror (round, disc) around chip")]
    [InlineData("round, disc, chip, bar", 0, 4, 2, "mirror (round, disc) around (chip, bar)")]
    [InlineData("g = chip, disc\nround, g, stone", 0, 4, 1, "g = chip, disc\nmirror (round, g) around stone")]
    [InlineData("backwards (round, disc, chip)", 0, 2, 1, "backwards (round, mirror (backwards chip) around disc)")]
    // The centre is a part of an item: the other half is written out.
    [InlineData("round, 2 disc", 0, 3, 1, "round, 2 disc, disc, round")]
    public void Mirrored_beads_become_a_mirror(string before, int first, int count, int centre, string after) =>
        Assert.Equal(after, Text(before, new MirrorBeads(Row(first, count), centre)));

    [Theory]
    [InlineData("5 round", 0, 5, "5 round with disc between")]
    [InlineData("5 round", 1, 3, "round, 3 round with disc between, round")]
    [InlineData("round, chip, bar", 0, 3, "round, disc, chip, disc, bar")]
    [InlineData("mirror (round, chip) around stone", 0, 5, "mirror (round, disc, chip, disc) around stone")]
    [InlineData("g = 3 chip\ng, tube, g", 0, 3, "g = 3 chip\ng-2 (3 chip with disc between), tube, g")]
    public void One_is_put_between_each_two(string before, int first, int count, string after) =>
        Assert.Equal(after, Text(before, new PutBetween(Row(first, count), ["disc"])));

    [Fact]
    public void In_every_pass_one_is_put_between_each_two_of_what_is_written()
    {
        Assert.Equal("g = 3 chip with disc between\ng, tube, g", Text("g = 3 chip\ng, tube, g", new PutBetween(Row(0, 3), ["disc"]) { EveryPass = true }));
        Assert.Equal("2 (2 round, pair (disc, chip))", Text("2 (2 round, disc, chip)", new NameGroup(Row(6, 2), "pair") { EveryPass = true }));
    }

    // Name and ungroup -----------------------------------------------------------------------------------------------------------------------

    [Theory]
    [InlineData("round, disc, chip", 1, 2, "round, pair (disc, chip)")]
    [InlineData("round # one\ndisc # two\nchip", 0, 2, "pair (round # one\ndisc) # two\nchip")]
    [InlineData("3 (round, disc)", 2, 2, "(round, disc), pair (round, disc), (round, disc)")]
    [InlineData("round, (disc, chip)", 1, 2, "round, pair (disc, chip)")]
    [InlineData("mirror (round, disc) around stone", 2, 1, "mirror (round, disc) around pair (stone)")]
    // Across what is written: the beads are taken out of it.
    [InlineData("(round, disc), chip", 1, 2, "(round, pair (disc, chip))")]
    [InlineData("3 round with disc between, tube", 4, 2, "2 round with disc between, disc, pair (round, tube)")]
    // The name of a group that has these beads.
    [InlineData("pair = disc, chip\npair, round, disc, chip", 3, 2, "pair = disc, chip\npair, round, pair")]
    [InlineData("pair = disc, chip\npair, round, chip, disc", 3, 2, "pair = disc, chip\npair, round, backwards pair")]
    // A group already: it gets the name.
    [InlineData("g (disc, chip), round", 0, 2, "pair (disc, chip), round")]
    [InlineData("g = disc, chip\ng, round, g", 0, 2, "g = disc, chip\npair (disc, chip), round, g")]
    public void Named_beads_become_a_group(string before, int first, int count, string after) =>
        Assert.Equal(after, Text(before, new NameGroup(Row(first, count), "pair")));

    [Theory]
    [InlineData("g (disc, chip), round", 0, false, "(disc, chip), round")]
    [InlineData("g = disc, chip # two\ng, round", 1, false, "# two\n(disc, chip), round")]
    [InlineData("g = disc, chip\ng, round, g", 0, false, "g = disc, chip\n(disc, chip), round, g")]
    [InlineData("g (disc, chip), round, g", 0, false, "(disc, chip), round, g (disc, chip)")]
    [InlineData("g = disc, chip\ng, round, 2 g", 4, true, "(disc, chip), round, 2 (disc, chip)")]
    public void An_ungrouped_group_leaves_its_beads(string before, int bead, bool everyPass, string after) =>
        Assert.Equal(after, Text(before, new Ungroup(One(bead)) { EveryPass = everyPass }));

    // Everywhere, and anew -------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void A_kind_is_replaced_wherever_it_is_named() =>
        Assert.Equal("# chip\ng = 2 disc, bar\nspare = disc  # not strung\n3 (disc, round), g",
            Text("# chip\ng = 2 chip, bar\nspare = chip  # not strung\n3 (chip, round), g", new ReplaceEverywhere("chip", "disc")));

    [Fact]
    public void A_part_of_the_text_stands_for_all_that_it_strings()
    {
        var piece = Written("g = chip, disc\n3 g, tube");
        var group = piece.Written!.Entries[0];
        Assert.Equal("g = chip, disc\n6 g, tube", Done(piece, new DuplicateBeads(new BeadPlaces.Part(group.Id))).Piece.OrderText);
        var kept = Done(piece, new RemoveBeads(new BeadPlaces.Part(piece.Written.Entries[1].Id)));
        Assert.Equal("g = chip, disc\ntube", kept.Piece.OrderText);
        // What can be kept of the edit means the same without that tree.
        Assert.Equal("g = chip, disc\ntube", Done(piece, kept.Edit).Piece.OrderText);
    }
}
