using System.Text;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Pieces;
using Coilwright.Storage.Binding;
using CsCheck;

namespace Coilwright.Storage.Tests;

/// <summary>The stored form of edits.</summary>
public class EditJsonTests
{
    private static readonly Piece Tidewrack = PieceFile.ReadFrom(Path.Combine(TestData.Examples, "tidewrack.piece.json"), TestData.Data).Piece!;

    private static readonly Piece EveryField = TestData.Read(FilesWithEveryField.All[0]).Piece!;

    private static string Written(PieceEdit edit) => Encoding.UTF8.GetString(EditJson.Write(edit));

    private static PieceEdit Read(string json)
    {
        var read = EditJson.Read(Encoding.UTF8.GetBytes(json), TestData.Data);
        Assert.Empty(read.Faults);
        return read.Edit!;
    }

    /// <summary>One of every kind, and the form that is promised for it: what lies on a shelf is in this form.</summary>
    private static readonly (PieceEdit Edit, string Form)[] Forms =
    [
        (new InsertBeads(3, ["dot", "wrack"]), """ "edit":"insert-beads","at":3,"what":["dot","wrack"] """),
        (new InsertBeads(3, ["dot"], Beside.WithNext) { EveryPass = true }, """ "edit":"insert-beads","at":3,"what":["dot"],"beside":"withNext","everyPass":true """),
        (new RemoveBeads(new BeadPlaces.Row(0, 5)), """ "edit":"remove-beads","row":{"first":0,"count":5} """),
        (new RemoveBeads(new BeadPlaces.Each([9, 2, 4])), """ "edit":"remove-beads","each":[2,4,9] """),
        (new MoveBeads(new BeadPlaces.Row(1, 2), 7, Beside.WithPrevious), """ "edit":"move-beads","row":{"first":1,"count":2},"to":7,"beside":"withPrevious" """),
        (new ReplaceBeads(BeadPlaces.One(4), "disc") { EveryPass = true }, """ "edit":"replace-beads","row":{"first":4,"count":1},"with":"disc","everyPass":true """),
        (new ReplaceEverywhere("dot", "disc"), """ "edit":"replace-everywhere","bead":"dot","with":"disc" """),
        (new DuplicateBeads(BeadPlaces.One(0)), """ "edit":"duplicate-beads","row":{"first":0,"count":1} """),
        (new RepeatBeads(BeadPlaces.One(0), 3), """ "edit":"repeat-beads","row":{"first":0,"count":1},"times":3 """),
        (new MirrorBeads(new BeadPlaces.Row(0, 4), 1), """ "edit":"mirror-beads","row":{"first":0,"count":4},"centre":1 """),
        (new SetRuns([new RunCount(3, 2, 4), new RunCount(9, 1, 2)]), """ "edit":"set-runs","runs":[{"first":3,"count":2,"to":4},{"first":9,"count":1,"to":2}] """),
        (new Restring([new RowSwap(0, 5, 8, 4)], [new RowStandIn(0, 4, "dot", "disc")], [new RunCount(5, 1, 2)]), """ "edit":"restring","swaps":[{"first":0,"count":5,"otherFirst":8,"otherCount":4}],"standIns":[{"first":0,"count":4,"bead":"dot","with":"disc"}],"runs":[{"first":5,"count":1,"to":2}] """),
        (new PutBetween(new BeadPlaces.Row(0, 4), ["dot"]), """ "edit":"put-between","row":{"first":0,"count":4},"what":["dot"] """),
        (new NameGroup(new BeadPlaces.Row(0, 4), "crest"), """ "edit":"name-group","row":{"first":0,"count":4},"name":"crest" """),
        (new Ungroup(BeadPlaces.One(2)), """ "edit":"ungroup","row":{"first":2,"count":1} """),
        (new SetOrderText("# mine\n3 dot"), """ "edit":"set-order-text","text":["# mine","3 dot"] """),
        (new AddBead(Tidewrack.Beads[4].Description), """ "edit":"add-bead","bead":{"id":"dot","name":"Silver round 3 mm","shape":"round","lengthMm":3,"boreMm":1,"colours":["#c0c4c8"],"material":"sterling-silver","role":"spacer","pack":{"unit":"bag","beads":25},"price":6.00} """),
        (new ChangeBead("dot", Tidewrack.Beads[3].Description with { Name = "<b>Ébène</b> \"8\"" }), """ "edit":"change-bead","id":"dot","bead":{"id":"disc","name":"<b>Ébène</b> \"8\"","shape":"heishi","lengthMm":2.5,"widthMm":8,"boreMm":1.5,"colours":["#2c2622"],"material":"ebony","role":"spacer","pack":{"unit":"strand","beads":150},"price":3.90} """),
        (new RemoveBead("dot"), """ "edit":"remove-bead","id":"dot" """),
        (new SetTitle("Tidewrack II"), """ "edit":"set-title","title":"Tidewrack II" """),
        (new SetWire(Tidewrack.Wire), """ "edit":"set-wire","stringingMaterial":{"kind":"memoryWire","wireMm":0.62,"steel":"stainless-302","loopMm":191} """),
        (new SetEnds(new WireEnds(new WireEnd(EndFinish.TurnedLoop, 3), new WireEnd(EndFinish.GluedCap, 4) { MeasuredMm = 5 }, 15, 25) { OverlapMm = 10 }), """ "edit":"set-ends","ends":{"start":{"finish":"turnedLoop","insideMm":3},"finish":{"finish":"gluedCap","depthMm":4,"measuredMm":5},"gripMm":15,"spareMm":25,"overlapMm":10} """),
        (new SetEnds(new WireEnds(new WireEnd(EndFinish.Dangle, 3) { Dangle = "leaf", DangleMm = 15 }, new WireEnd(EndFinish.Dangle, 2.5), 15, 25)), """ "edit":"set-ends","ends":{"start":{"finish":"dangle","insideMm":3,"dangle":"leaf","dangleMm":15},"finish":{"finish":"dangle","insideMm":2.5},"gripMm":15,"spareMm":25} """),
        (new SetWearer(new Wearer(165, 2) { FocalOnTop = true, IsChild = true }), """ "edit":"set-wearer","wearer":{"wristMm":165,"easeMm":2,"startAngleDeg":"focalOnTop","child":true} """),
        (new SetWishes(EveryField.Wishes), """ "edit":"set-wishes","wishes":{"liningUp":"mix","places":[{"fromDeg":-30,"toDeg":30,"liningUp":"any"}],"groups":{"cluster":"columns"},"longestRun":[{"name":"disc","most":3}],"inAnyRow":[{"names":["round","chip"],"upTo":2,"ofAny":4}],"apart":[{"name":"star","beside":"tube"}],"together":[{"name":"star","beside":"disc"}],"startsWith":"cluster","endsWith":"chip","turns":1.5,"focalWithinDeg":10,"free":{"runs":[{"bead":"disc","least":1,"most":3}],"lengthWithinMm":8,"onHand":[{"bead":"disc","beads":12}],"mirroredHalves":true,"groupOrder":true,"standIns":[{"bead":"chip","with":"nugget","everywhere":true}],"coils":[{"insideMm":55},{"loopMm":200},{"centreMm":58.5}],"startAngle":{"fromDeg":150,"toDeg":-150,"stepDeg":10},"turns":{"least":1.5,"most":2.5}},"judgedBy":"nineteenInTwenty","wrists":[{"wristMm":150,"weight":2},{"wristMm":165.5,"weight":1}]} """),
        (new SetWishes(Wishes.None), """ "edit":"set-wishes" """),
        (new SetPattern(PatternNotes.None), """ "edit":"set-pattern" """),
        (new SetPattern(PatternNotes.None with { Care = "Dry.", Level = PatternLevel.Beginner, Words = [new(new("cut", "", "", ""), "Snip.")], Testers = [new(null, "Fine.", "", "2", false)] }),
            """ "edit":"set-pattern","pattern":{"level":"beginner","care":"Dry.","words":[{"step":"cut","text":"Snip."}],"testers":[{"note":"Fine.","version":"2"}]} """),
        (new AddMeasuredRow(new MeasuredRow(1, 6, 31.5)), """ "edit":"add-measured-row","measured":[{"what":"row","firstBead":1,"lastBead":6,"totalMm":31.5}] """),
        (new RemoveMeasuredRow(0), """ "edit":"remove-measured-row","index":0 """),
    ];

    [Fact]
    public void Every_kind_of_edit_is_written_in_the_form_that_is_promised_and_comes_back()
    {
        Assert.Equal(PieceEdits.All.AsEnumerable().Order(StringComparer.Ordinal), Forms.Select(form => form.Edit.Code).Distinct().Order(StringComparer.Ordinal));
        Assert.Equal(PieceEdits.All.AsEnumerable().Order(StringComparer.Ordinal), EditFields.ByCode.Keys);
        foreach (var (edit, form) in Forms)
        {
            Assert.Equal("{\"format\":\"coilwright.edit/1\"," + form.Trim() + "}", Written(edit));
            var back = Read(Written(edit));
            Assert.Equal(edit.GetType(), back.GetType());
            Assert.Equal(Written(edit), Written(back));
        }
    }

    [Fact]
    public void A_random_edit_that_was_stored_does_the_same_to_the_piece()
    {
        var gen = Gen.Select(Gen.Int[0, Tidewrack.Order.Count - 6], Gen.Int[1, 5], Gen.Int[0, 8], Gen.Bool, Gen.Int[0, 40].Array[1, 6]);
        gen.Sample((first, count, kind, everyPass, places) =>
        {
            BeadPlaces where = kind % 2 == 0 ? new BeadPlaces.Row(first, count) : new BeadPlaces.Each([.. places]);
            OrderEdit edit = kind switch
            {
                0 => new InsertBeads(first, ["dot", "tuft"], (Beside)(count % 3)),
                1 or 2 => new RemoveBeads(where),
                3 => new ReplaceBeads(where, "dot"),
                4 => new DuplicateBeads(where),
                5 => new MoveBeads(where, first),
                6 => new MirrorBeads(where, count / 2),
                7 => new RepeatBeads(where, 1 + count),
                _ => new PutBetween(where, ["disc"]),
            };
            if (edit is not MoveBeads) edit = edit with { EveryPass = everyPass };
            var (one, other) = (PieceEditing.Apply(Tidewrack, edit, TestData.Data), PieceEditing.Apply(Tidewrack, Read(Written(edit)), TestData.Data));
            Assert.Equal(one.GetType(), other.GetType());
            if (one is EditOutcome.Done done) Assert.Equal(done.Piece.OrderText, ((EditOutcome.Done)other).Piece.OrderText);
        }, iter: 2000);
    }

    // What the core promises of its edits, held to by the reader of piece files.
    [Fact]
    public void What_comes_of_an_edit_can_be_written_to_a_file_and_read_back() =>
        Gen.Select(Gen.Int[0, Forms.Length - 1].Array[1, 6], Gen.Int[0, 2]).Sample((which, start) =>
        {
            var piece = start switch
            {
                0 => Tidewrack,
                1 => EveryField,
                _ => TestData.Read(FilesWithEveryField.All[1]).Piece!,
            };
            foreach (var form in which)
            {
                if (PieceEditing.Apply(piece, Forms[form].Edit, TestData.Data) is not EditOutcome.Done done) continue;
                piece = done.Piece;
                var read = PieceFile.Read(PieceFile.Write(piece), null, TestData.Data);
                Assert.Empty(read.Faults);
                Assert.Equal(PieceFile.Write(piece), PieceFile.Write(read.Piece!));
            }
        }, iter: 500);

    [Fact]
    public void An_edit_that_names_a_part_of_the_text_is_not_stored_but_its_outcome_is()
    {
        var part = new RemoveBeads(new BeadPlaces.Part(Tidewrack.Written!.Entries.OfType<Core.Stringing.Notation.OrderItem>().First().Id));
        Assert.Throws<ArgumentException>(() => EditJson.Write(part));
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(Tidewrack, part, TestData.Data));
        Assert.Contains("\"row\":{\"first\":0,\"count\":5},\"everyPass\":true", Written(done.Edit), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", FaultCodes.FileNotJson)]
    [InlineData("[]", FaultCodes.FieldType)]
    [InlineData("""{"edit":"set-title","title":"x"}""", FaultCodes.FieldMissing)]
    [InlineData("""{"format":"coilwright.piece/1","edit":"set-title","title":"x"}""", FaultCodes.FormatOther)]
    [InlineData("""{"format":"coilwright.edit/2","edit":"set-title","title":"x"}""", FaultCodes.FormatUnknown)]
    [InlineData("""{"format":"coilwright.edit/1"}""", FaultCodes.FieldMissing)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"set-titel","title":"x"}""", FaultCodes.WordUnknown)]
    [InlineData("""{"format":"coilwright.edit/1","edit":7}""", FaultCodes.WordUnknown)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"set-title"}""", FaultCodes.FieldMissing)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"set-title","title":"x","at":1}""", FaultCodes.FieldUnknown)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"remove-beads"}""", FaultCodes.FieldOneOf)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"remove-beads","row":{"first":0}}""", FaultCodes.FieldMissing)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"remove-beads","row":{"first":0,"count":0}}""", FaultCodes.ValueAtLeast)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"remove-beads","each":[1,2.5]}""", FaultCodes.FieldType)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"remove-beads","each":[1],"everyPass":"yes"}""", FaultCodes.FieldType)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"insert-beads","at":-1,"what":["dot"]}""", FaultCodes.ValueAtLeast)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"insert-beads","at":1,"what":["dot"],"beside":"left"}""", FaultCodes.WordUnknown)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"add-bead","bead":{"id":"dot","shape":"round"}}""", FaultCodes.LengthMissing)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"set-wearer","wearer":{"wristMm":6.5}}""", FaultCodes.ValueAtLeast)]
    [InlineData("""{"format":"coilwright.edit/1","edit":"add-measured-row","measured":[]}""", FaultCodes.ValueAtLeast)]
    public void What_is_wrong_with_a_stored_edit_is_told(string json, string code)
    {
        var read = EditJson.Read(Encoding.UTF8.GetBytes(json), TestData.Data);
        Assert.Null(read.Edit);
        Assert.Contains(code, read.Faults.Select(fault => fault.Code));
    }
}
