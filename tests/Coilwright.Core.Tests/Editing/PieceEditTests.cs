using Coilwright.Core.Editing;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Core.Tests.Stringing;
using static Coilwright.Core.Tests.Editing.EditedOrders;

namespace Coilwright.Core.Tests.Editing;

/// <summary>Edits of everything but the order, and what an edit of the order takes along.</summary>
public class PieceEditTests
{
    private static Piece Sample(string text = "# mine\n2 round, disc, 3 chip") => Written(text);

    [Fact]
    public void Every_edit_has_a_code_of_its_own_and_is_in_the_list()
    {
        var kinds = typeof(PieceEdit).Assembly.GetTypes().Where(type => type.IsSubclassOf(typeof(PieceEdit)) && !type.IsAbstract).ToList();
        Assert.Equal(kinds.Count, PieceEdits.All.Count);
        Assert.Equal("insert-beads", new InsertBeads(0, ["round"]).Code);
        Assert.Equal("set-order-text", new SetOrderText("round").Code);
    }

    // Title, wire, ends, wearer, wishes ----------------------------------------------------------------------------------------------------

    [Fact]
    public void A_title_is_set_and_a_blank_or_endless_one_refused()
    {
        Assert.Equal("Tidewrack II", Done(Sample(), new SetTitle("Tidewrack II")).Piece.Title);
        Assert.Equal(["title text.empty '  '"], Refused(Sample(), new SetTitle("  ")));
        Assert.Equal(["text.too-long"], Refused(Sample(), new SetTitle(new string('x', 201))).Select(fault => fault.Split(' ')[1]));
        Assert.Equal(["edit.changes-nothing ''"], Refused(Sample(), new SetTitle("Sample")));
    }

    [Fact]
    public void Wire_ends_and_wearer_must_be_within_what_can_be_written_down()
    {
        var piece = Sample();
        var wire = piece.Wire with { Steel = null };
        Assert.Equal(wire, Done(piece, new SetWire(wire)).Piece.Wire);
        Assert.Equal(["wireMm value.at-most '25.4' max=3 unit=mm"], Refused(piece, new SetWire(wire with { WireMm = 25.4 })));
        Assert.Equal(["loopMm value.not-finite 'NaN'"], Refused(piece, new SetWire(wire with { SizeMm = double.NaN })));
        Assert.Equal(["insideMm value.at-least '2.5' min=10 unit=mm"], Refused(piece, new SetWire(wire with { Datum = CoilDatum.Inside, SizeMm = 2.5 })));
        Assert.Equal(["wire.steel-unknown"], Refused(piece, new SetWire(wire with { Steel = SamplePieces.Stainless })).Select(fault => fault.Split(' ')[1]));
        Assert.Equal(["wire.gauge-form"], Refused(piece, new SetWire(wire with { GaugeName = "20 AWG" })).Select(fault => fault.Split(' ')[1])); // 0.62 mm is 22 AWG or so
        Assert.Equal(["start.insideMm value.above '0' min=0 unit=mm"],
            Refused(piece, new SetEnds(piece.Ends with { Start = new WireEnd(EndFinish.TurnedLoop, 0) })));
        Assert.Equal(["finish.depthMm value.at-most '51' max=50 unit=mm", "gripMm value.at-least '-1' min=0 unit=mm"],
            Refused(piece, new SetEnds(new WireEnds(piece.Ends.Start, new WireEnd(EndFinish.GluedCap, 51), -1, 0))));
        Assert.Equal(["start.dangle text.empty ' '", "start.dangleMm value.at-most '400' max=300 unit=mm"],
            Refused(piece, new SetEnds(piece.Ends with { Start = new WireEnd(EndFinish.Dangle, 3) { Dangle = " ", DangleMm = 400 } })));
        Assert.Equal(["start.dangle field.not-with 'leaf' other=turnedLoop otherField=start.finish"],
            Refused(piece, new SetEnds(piece.Ends with { Start = new WireEnd(EndFinish.TurnedLoop, 3) { Dangle = "leaf" } })));
        Assert.Equal(170, Done(piece, new SetWearer(new Wearer(170, 0))).Piece.Wearer.WristMm);
        Assert.Equal(["wristMm value.at-least '6.5' min=50 unit=mm"], Refused(piece, new SetWearer(new Wearer(6.5, 0))));
    }

    [Fact]
    public void Wishes_are_for_groups_and_beads_that_are_there()
    {
        var piece = Sample("g = chip, disc\ng, round");
        var wishes = Wishes.None with { LiningUp = LiningUpWish.Mix, Groups = Wishes.None.Groups.Add("g", LiningUpWish.Columns).Add("disc", LiningUpWish.Any) };
        Assert.Equal(wishes, Done(piece, new SetWishes(wishes)).Piece.Wishes);
        var pattern = PatternNotes.None with { Care = "Keep it dry." };
        Assert.Equal(pattern, Done(piece, new SetPattern(pattern)).Piece.Pattern);
        Assert.Equal(["by text.too-long '" + new string('x', 60) + "...' max=200"], Refused(piece, new SetPattern(pattern with { By = new string('x', 201) })));
        Assert.Equal(["groups.gg order.unknown-name 'gg' nearest=g"], Refused(piece, new SetWishes(Wishes.None with { Groups = Wishes.None.Groups.Add("gg", LiningUpWish.Mix) })));
        Assert.Equal(["places[0].toDeg value.at-most '200' max=180 unit=°"],
            Refused(piece, new SetWishes(Wishes.None with { Places = [new PlaceWish(0, 200, LiningUpWish.Mix)] })));
    }

    [Fact]
    public void A_wish_goes_with_the_last_stringing_of_its_group()
    {
        var piece = Sample("g = chip, disc\ng, round, g");
        piece = Done(piece, new SetWishes(Wishes.None with { Groups = Wishes.None.Groups.Add("g", LiningUpWish.Mix) })).Piece;
        piece = Done(piece, new RemoveBeads(Row(0, 2))).Piece;
        Assert.Single(piece.Wishes.Groups);
        piece = Done(piece, new RemoveBeads(Row(1, 2))).Piece;
        Assert.Empty(piece.Wishes.Groups);
    }

    // Measured rows ------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void A_measured_row_is_added_and_removed()
    {
        var piece = Done(Sample(), new AddMeasuredRow(new MeasuredRow(1, 3, 17.5))).Piece;
        Assert.Equal([new MeasuredRow(1, 3, 17.5)], piece.MeasuredRows);
        Assert.Empty(Done(piece, new RemoveMeasuredRow(0)).Piece.MeasuredRows);
        Assert.Equal(["edit.no-such-row '2'"], Refused(piece, new RemoveMeasuredRow(1)));
        Assert.Equal(["edit.no-such-row '0'"], Refused(piece, new RemoveMeasuredRow(-1)));
        Assert.Equal(["totalMm measured.absurd '1.75' expected=18"], Refused(piece, new AddMeasuredRow(new MeasuredRow(1, 3, 1.75))));
        Assert.Equal(["lastBead measured.beyond '7' beads=6"], Refused(piece, new AddMeasuredRow(new MeasuredRow(1, 7, 40))));
    }

    [Theory]
    // The row is of beads 3 to 5 of six: disc, chip, chip.
    [InlineData("insert before", 4, 6)]
    [InlineData("insert after", 3, 5)]
    [InlineData("remove before", 2, 4)]
    [InlineData("move away", 1, 3)]
    public void A_measured_row_keeps_to_its_beads(string what, int first, int last)
    {
        var piece = Done(Sample(), new AddMeasuredRow(new MeasuredRow(3, 5, 17.5))).Piece;
        var done = Done(piece, what switch
        {
            "insert before" => new InsertBeads(1, ["tube"]),
            "insert after" => new InsertBeads(5, ["tube"]),
            "remove before" => new RemoveBeads(One(0)),
            _ => new MoveBeads(Row(0, 2), 6),
        });
        Assert.Equal([new MeasuredRow(first, last, 17.5)], done.Piece.MeasuredRows);
        Assert.Empty(done.Told);
    }

    [Fact]
    public void A_measured_row_whose_beads_are_others_now_is_given_up_and_told()
    {
        var piece = Done(Sample(), new AddMeasuredRow(new MeasuredRow(3, 5, 17.5))).Piece;
        foreach (var edit in (PieceEdit[])[new InsertBeads(3, ["tube"]), new RemoveBeads(One(3)), new ReplaceBeads(One(2), "bar"), new MoveBeads(One(2), 6),
            new SetOrderText("2 round, disc, tube, 3 chip"), new ReplaceEverywhere("chip", "bar")])
        {
            var done = Done(piece, edit);
            Assert.Empty(done.Piece.MeasuredRows);
            Assert.Equal(["edit.row-lost '' first=3 last=5 total=17.5"], done.Told.Select(told => OrderTexts.Shown(told).Replace("0:0 ", "", StringComparison.Ordinal)));
        }
        // A text that strings the same in other words keeps it.
        Assert.Single(Done(piece, new SetOrderText("round, round, disc, chip, chip, chip")).Piece.MeasuredRows);
    }

    // Kinds of bead ------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void A_bead_is_added_last_so_that_key_letters_stay()
    {
        var bead = SamplePieces.Bead("pearl", "round", 8);
        var piece = Done(Sample(), new AddBead(bead.Description)).Piece;
        Assert.Equal("pearl", piece.Beads[^1].Id);
        Assert.Equal("# mine\n2 round, disc, 3 chip", piece.OrderText);
        Assert.Equal(["id id.twice 'round' first=beads[0].id"], Refused(Sample(), new AddBead(SamplePieces.Bead("round", "round", 8).Description)));
        Assert.Equal(["id order.group-is-bead 'g'"], Refused(Sample("g = chip\ng, round"), new AddBead(SamplePieces.Bead("g", "round", 8).Description)));
        Assert.Equal(["boreMm bead.bore-too-wide '9' limit=8"], Refused(Sample(), new AddBead(bead.Description with { BoreMm = 9 })));
        Assert.Equal(["text.too-long"], Refused(Sample(), new AddBead(bead.Description with { Name = new string('x', 10_000) })).Select(fault => fault.Split(' ')[1]));
        Assert.Equal(["bead.material-unknown"], Refused(Sample(), new AddBead(bead.Description with { OtherMaterial = "moon rock", DensityGPerCm3 = null })).Select(fault => fault.Split(' ')[1]));
    }

    [Fact]
    public void A_renamed_bead_is_renamed_wherever_it_is_named()
    {
        var piece = Sample("g = chip # chip\nspare = 2 chip\ng, round, 3 chip with disc between");
        piece = Done(piece, new SetWishes(Wishes.None with { Groups = Wishes.None.Groups.Add("chip", LiningUpWish.Mix) })).Piece;
        var pattern = PatternNotes.None with { Words = [new StepText(new StepAnchor("g.1", "2(chip, chip-2), microchip", "", "chip"), "A chip.")] };
        piece = Done(piece, new SetPattern(pattern)).Piece;
        var after = Done(piece, new ChangeBead("chip", SamplePieces.Bead("shard", "round", 6).Description)).Piece;
        Assert.Equal([new StepText(new StepAnchor("g.1", "2(shard, chip-2), microchip", "", "shard"), "A chip.")], after.Pattern.Words);
        Assert.Equal("g = shard # chip\nspare = 2 shard\ng, round, 3 shard with disc between", after.OrderText);
        Assert.Equal(piece.Order.Kinds.AsEnumerable(), after.Order.Kinds);
        Assert.Equal(["shard"], after.Wishes.Groups.Keys);
        Assert.Equal(["edit.bead-unknown 'chp' nearest=chip"], Refused(piece, new ChangeBead("chp", piece.Beads[0].Description)));
        Assert.Equal(["id id.twice 'disc' first=beads[1].id"], Refused(piece, new ChangeBead("chip", piece.Beads[1].Description)));
    }

    [Fact]
    public void A_bead_that_grows_gives_up_the_rows_that_were_measured_of_it()
    {
        var piece = Done(Sample(), new AddMeasuredRow(new MeasuredRow(4, 6, 17.5))).Piece;
        // 18 mm of chips become 36: twice what was measured is no measuring error.
        var done = Done(piece, new ChangeBead("chip", SamplePieces.Bead("chip", "round", 12).Description));
        Assert.Empty(done.Piece.MeasuredRows);
        Assert.Single(done.Told);
        Assert.Single(Done(piece, new ChangeBead("chip", SamplePieces.Bead("chip", "round", 6.5).Description)).Piece.MeasuredRows);
    }

    [Fact]
    public void A_bead_that_the_order_names_stays()
    {
        var piece = Sample("spare = bar\n2 round, stone");
        Assert.Equal(["edit.bead-in-use 'round' times=2"], Refused(piece, new RemoveBead("round")));
        Assert.Equal(["edit.bead-in-group 'bar' group=spare"], Refused(piece, new RemoveBead("bar")));
        var after = Done(piece, new RemoveBead("disc")).Piece;
        Assert.Equal(["round", "chip", "tube", "bar", "stone"], after.Beads.Select(bead => bead.Id));
        // The order strings what it strung, by the new places of the kinds.
        Assert.Equal(["round", "round", "stone"], after.Order.Kinds.Select(kind => after.Beads[kind].Id));
    }

    // The tree ------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void What_to_look_at_after_an_edit_is_told()
    {
        Assert.Equal([1, 2], Done(Sample("round, disc"), new InsertBeads(1, ["chip", "chip"])).Beads);
        Assert.Equal([1], Done(Sample("round, disc, chip"), new RemoveBeads(One(1))).Beads);
        Assert.Equal([1], Done(Sample("round, disc, chip"), new RemoveBeads(One(2))).Beads);
        Assert.Equal([2, 3], Done(Sample("round, disc, 2 chip"), new MoveBeads(Row(0, 2), 4)).Beads);
        Assert.Equal([0, 1, 2, 3], Done(Sample("round, disc, chip"), new DuplicateBeads(Row(0, 2))).Beads);
        Assert.Equal([1, 2], Done(Sample("round, disc, chip"), new NameGroup(Row(1, 2), "pair")).Beads);
        Assert.Empty(Done(Sample(), new SetTitle("Other")).Beads);
    }

    [Fact]
    public void Typing_in_the_text_keeps_the_ids_of_what_was_not_typed_over()
    {
        var piece = Sample("round, disc # note\nchip");
        var after = Done(piece, new SetOrderText("round, 3 disc # note\nchip")).Piece;
        Assert.Equal(piece.Written!.Entries.Select(entry => entry.Id), after.Written!.Entries.Select(entry => entry.Id));
        Assert.Equal([2, 3, 4], Done(piece, new SetOrderText("round, 4 disc # note\r\nchip")).Beads);
        Assert.DoesNotContain('\r', Done(piece, new SetOrderText("round, 4 disc # note\r\nchip")).Piece.OrderText!);
    }
}
