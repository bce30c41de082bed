using Coilwright.Core.Making;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.StepFigures;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.StepFigures;

public class StepFigureTests
{
    private const double Scale = 2, WidthMm = 90;

    private static IEnumerable<PlacedMark> Of(Picture picture, string sort) => picture.Inked().Where(m => m.Class.Split(' ').Contains(sort));

    // Stamps where they stand in the picture, by their bead.
    private static IEnumerable<(int Bead, string Sort, Point At)> Beads(Picture picture) => picture.Marks.OfType<Group>()
        .SelectMany(row => row.Marks.OfType<Stamp>().Select(s => (s.OfBead!.Value, s.Class!, s.At.Moved(row.MoveRightMm, row.MoveDownMm))));

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Every_bead_of_a_step_stands_in_it_once_in_order_and_those_before_it_stand_pale_at_its_left(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var drawing = new StepFigureDrawing(reckoned, Scale);
        foreach (var step in PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>())
        {
            var picture = drawing.Of(step, WidthMm, "x", "y");
            var beads = Beads(picture).ToArray();
            Assert.Equal(Enumerable.Range(step.First, step.Beads), beads.Where(b => b.Sort == "new").Select(b => b.Bead));
            Assert.Equal(Enumerable.Range(beads[0].Bead, beads.Length), beads.Select(b => b.Bead));
            Assert.All(beads.Where(b => b.Bead < step.First), b => Assert.Equal("done", b.Sort));
            // From left to right, and each row below the one before it.
            foreach (var (before, after) in beads.Zip(beads.Skip(1)))
                if (after.At.YMm == before.At.YMm)
                    Assert.Equal(Scale * (Length(before.Bead) + Length(after.Bead)) / 2, after.At.XMm - before.At.XMm, 1e-9);
                else
                {
                    Assert.True(after.At.YMm > before.At.YMm);
                    Assert.Equal(1 + Scale * Length(after.Bead) / 2, after.At.XMm, 1e-9);
                }
        }

        double Length(int bead) => reckoned.Piece.Beads[reckoned.Piece.Order.Kinds[bead]].LengthMm;
    }

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Letters_cover_no_bead_and_no_other_letter_and_all_ink_is_inside(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var drawing = new StepFigureDrawing(reckoned, Scale);
        foreach (var step in PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>())
        {
            var picture = drawing.Of(step, WidthMm, "x", "y");
            var letters = Of(picture, "letter").Select(m => m.Box(CautiousSans.Instance)!.Value).ToArray();
            Assert.NotEmpty(letters);
            for (var i = 0; i < letters.Length; i++)
                for (var j = 0; j < i; j++)
                    Assert.False(letters[i].Overlaps(letters[j]), $"Letters {j} and {i} of {step.Id} cover one another.");
            foreach (var ink in picture.Inked())
            {
                if (ink.Box(CautiousSans.Instance) is not { } box) continue;
                Assert.True(picture.Sheet.Grown(0.2).Contains(box), $"Ink of {step.Id} sticks out.");
                if (ink.Class.Contains("new", StringComparison.Ordinal) || ink.Class.Contains("done", StringComparison.Ordinal)) Assert.DoesNotContain(letters, box.Overlaps);
            }
        }
    }

    [Fact]
    public void A_run_shares_a_letter_with_its_number_and_the_wire_s_end_stands_before_the_first_bead_only()
    {
        var reckoned = DrawnPieces.Reckoned("focal");
        var steps = PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>().ToArray();
        var drawing = new StepFigureDrawing(reckoned, Scale);
        Assert.Single(Of(drawing.Of(steps[0], WidthMm, "x", "y"), "end"));
        Assert.Empty(Of(drawing.Of(steps[^1], WidthMm, "x", "y"), "end"));
        var discs = steps.First(s => s.Group == "discs");
        var kinds = discs.Kinds.ToArray();
        string Letter(int kind) => reckoned.Counts.First(c => c.KindIndex == kind).Letter;
        Assert.Equal([$"2\u00a0{Letter(kinds[0])}", Letter(kinds[2]), $"2\u00a0{Letter(kinds[0])}"], Of(drawing.Of(discs with { Times = 1 }, 400, "x", "y"), "letter").Select(m => ((Text)m.Mark).Content));
    }
}
