using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;

namespace Coilwright.Wording.Tests;

/// <summary>A piece's history in words.</summary>
public class StepSentencesTests
{
    private static readonly Dictionary<string, string> Names = new(StringComparer.Ordinal) { ["dot"] = "Jet dot", ["tube"] = "Curved tube" };

    private static StepSentences English => new(Names, Languages.English.In(LengthUnits.Mm));

    public static TheoryData<string> Languages_ => [.. Languages.All.Select(l => l.Code)];

    // What is done on the shelf beside edits; Coilwright.Storage has the same codes.
    private static readonly string[] OnTheShelf = ["added", "undone", "redone", "went-back"];

    [Theory, MemberData(nameof(Languages_))]
    public void Every_edit_and_every_step_on_the_shelf_is_told_and_nothing_else(string code)
    {
        var words = Languages.Find(code)!.Bench.History;
        Assert.Equal(PieceEdits.All.Concat(OnTheShelf).Order(StringComparer.Ordinal), words.Done.Keys.Order(StringComparer.Ordinal));
        Assert.Subset(PieceEdits.All, words.DoneTo.Keys.ToHashSet(StringComparer.Ordinal));
    }

    public static TheoryData<PieceEdit, string> Told => new()
    {
        { new InsertBeads(3, ["dot", "dot", "tube"]), "Strung 2 Jet dot, Curved tube, from bead 4 on" },
        { new RemoveBeads(BeadPlaces.One(4)), "Took off bead 5" },
        { new MoveBeads(new BeadPlaces.Row(4, 3), 12), "Moved beads 5 to 7" },
        { new ReplaceBeads(new BeadPlaces.Each([0, 3, 8]), "tube"), "Strung Curved tube in place of beads 1, 4, 9" },
        { new ReplaceEverywhere("gone", "dot"), "Strung Jet dot wherever gone was" },
        { new DuplicateBeads(new BeadPlaces.Each([2])), "Strung bead 3 twice" },
        { new RepeatBeads(new BeadPlaces.Row(0, 2), 4), "Strung beads 1 to 2, 4 times in all" },
        { new MirrorBeads(new BeadPlaces.Row(0, 9), 1), "Mirrored beads 1 to 9" },
        { new PutBetween(new BeadPlaces.Each([.. Enumerable.Range(0, 9)]), ["dot"]), "Strung Jet dot between beads 1, 2, 3, 4, 5, 6 and 3 more" },
        { new NameGroup(new BeadPlaces.Row(0, 2), "pair"), "Made beads 1 to 2 the group pair" },
        { new Ungroup(new BeadPlaces.Row(0, 2)), "Let the group of beads 1 to 2 be no group" },
        { new SetOrderText("2 dot"), "Wrote the order as text" },
        { new AddBead(new BeadDescription { Id = "dot", Name = "Jet dot", Shape = "round", Length = new BeadLength.Nominal(4) }), "Added Jet dot to the beads of the piece" },
        { new RemoveBead("gone"), "Took gone out of the beads of the piece" },
        { new SetTitle("{bead} <b>"), "Gave it the title {bead} <b>" },
        { new SetWearer(new Wearer(168, 0)), "Changed who wears it, or how: wrist 168 mm" },
        { new AddMeasuredRow(new MeasuredRow(2, 9, 41.5)), "Measured beads 2 to 9 on the wire: 41.5 mm" },
        { new RemoveMeasuredRow(0), "Took a measured row out" },
    };

    [Theory, MemberData(nameof(Told))]
    public void An_edit_is_told_with_its_particulars(PieceEdit edit, string words) => Assert.Equal(words, English.Of(edit.Code, edit, 7));

    [Theory, MemberData(nameof(Languages_))]
    public void In_every_language_no_particular_is_missing(string code)
    {
        var steps = new StepSentences(Names, Languages.Find(code)!);
        foreach (var edit in Told.Select(row => row.Data.Item1)) Assert.DoesNotContain(Template.Missing, steps.Of(edit.Code, edit, 7), StringComparison.Ordinal);
    }

    [Fact]
    public void A_step_without_its_edit_and_one_of_a_newer_program_are_told_as_far_as_they_are_known()
    {
        Assert.Equal("Took beads off", English.Of("remove-beads", null, 7));
        Assert.Equal("Went back to state 3", English.Of("went-back", null, 3));
        Assert.Equal("Changed the piece", English.Of("from-tomorrow", null, 7));
    }
}
