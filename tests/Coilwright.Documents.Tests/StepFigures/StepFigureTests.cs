using Coilwright.Core.Findings;
using Coilwright.Core.Making;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.StepFigures;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Tests.StepFigures;

public class StepFigureTests
{
    private const double Scale = 2, WidthMm = 90;

    // As the stringing guide draws them.
    private static readonly StepFigureOptions Bare = new() { WidthMm = WidthMm, FillsWidth = false, Scales = [Scale], Letters = 1.8, Bar = false, EndOn = false, Arrow = false };

    private static IEnumerable<PlacedMark> Of(Picture picture, string sort) => picture.Inked().Where(m => m.Class.Split(' ').Contains(sort));

    // Beads where they stand in the picture, in their order.
    private static IEnumerable<(int Bead, string Sort, Point At)> Beads(Picture picture) => picture.Marks.OfType<Group>().SelectMany(row => row.Marks.Where(m => m.Class is "new" or "done").Select(m => (m.OfBead!.Value, m.Class!,
        (m is Stamp stamp ? stamp.At : new Point(((Group)m).MoveRightMm, 0)).Moved(row.MoveRightMm, row.MoveDownMm)))).OrderBy(b => b.Item1);

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Every_bead_of_a_step_stands_in_it_once_in_order_and_those_before_it_stand_pale_at_its_left(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var drawing = new StepFigureDrawing(reckoned, Bare);
        foreach (var step in PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>())
        {
            var picture = drawing.Of(step);
            var beads = Beads(picture).ToArray();
            Assert.Equal(Enumerable.Range(step.First, step.Beads), beads.Where(b => b.Sort == "new").Select(b => b.Bead));
            Assert.Equal(Enumerable.Range(beads[0].Bead, beads.Length), beads.Select(b => b.Bead));
            Assert.All(beads.Where(b => b.Bead < step.First), b => Assert.Equal("done", b.Sort));
            // From left to right as far apart as on the worn wire, and each line below the one before it.
            foreach (var (before, after) in beads.Zip(beads.Skip(1)))
                if (after.At.YMm == before.At.YMm) Assert.Equal(Scale * (reckoned.Lie.BeadMiddleMm(after.Bead) - reckoned.Lie.BeadMiddleMm(before.Bead)), after.At.XMm - before.At.XMm, 1e-9);
                else Assert.True(after.At.YMm > before.At.YMm);
        }
    }

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Letters_cover_no_other_letter_and_no_bead_but_their_own_and_all_ink_is_inside(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var drawing = new StepFigureDrawing(reckoned, Bare);
        foreach (var step in PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>())
        {
            var picture = drawing.Of(step);
            var named = Of(picture, "letter").Select(m => (Box: m.Box(CautiousSans.Instance)!.Value, Bead: m.Mark.OfBead!.Value)).ToArray();
            var letters = named.Select(n => n.Box).ToArray();
            Assert.NotEmpty(letters);
            for (var i = 0; i < letters.Length; i++)
                for (var j = 0; j < i; j++)
                    Assert.False(letters[i].Overlaps(letters[j]), $"Letters {j} and {i} of {step.Id} cover one another.");
            foreach (var ink in picture.Inked())
            {
                if (ink.Box(CautiousSans.Instance) is not { } box) continue;
                Assert.True(picture.Sheet.Grown(0.2).Contains(box), $"Ink of {step.Id} sticks out.");
            }
            // A letter stands on its own bead, or clear below all: the corner of a bead's box is no bead, so its middle is what is asked for.
            foreach (var (bead, _, at) in Beads(picture))
                Assert.All(named.Where(n => n.Bead != bead), n => Assert.False(n.Box.LeftMm < at.XMm && at.XMm < n.Box.RightMm && n.Box.TopMm < at.YMm && at.YMm < n.Box.BottomMm));
        }
    }

    [Fact]
    public void The_wires_end_stands_before_the_first_bead_only_and_a_dangle_hangs_in_its_loop()
    {
        var piece = DrawnPieces.Reckoned("focal").Piece;
        foreach (var (end, dangles) in new[] { (new WireEnd(EndFinish.TurnedLoop, 3), 0), (new WireEnd(EndFinish.GluedCap, 4), 0), (new WireEnd(EndFinish.Dangle, 3) { DangleMm = 14 }, 1) })
        {
            var reckoned = DrawnPieces.Reckon(piece with { Ends = piece.Ends with { Start = end } });
            var steps = PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>().ToArray();
            var drawing = new StepFigureDrawing(reckoned, Bare);
            Assert.NotEmpty(Of(drawing.Of(steps[0]), "start"));
            Assert.Equal(dangles, Of(drawing.Of(steps[0]), "dangle").Count());
            Assert.Empty(Of(drawing.Of(steps[^1]), "start"));
        }
    }

    [Fact]
    public void A_run_of_small_beads_shares_a_letter_with_its_number()
    {
        var reckoned = DrawnPieces.Reckon(DrawnPieces.Seeds(2));
        var step = PatternSteps.Of(reckoned).Select(s => s.Strung).OfType<StringingStep>().First(s => s.Parts.Any(p => p is RunPart { Count: > 3 }));
        var said = Of(new StepFigureDrawing(reckoned, Bare with { Scales = [0.6], Letters = 1 }).Of(step), "letter").Select(m => ((Text)m.Mark).Content).ToArray();
        foreach (var run in step.Parts.OfType<RunPart>().Where(r => r.Count > 3)) Assert.Contains($"{run.Count} {reckoned.Counts.First(c => c.KindIndex == run.Kind).Letter}", said);
    }
}
