using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Findings;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.StepFigures;

/// <summary>What one step strings: its beads in full with their key letters, a stretch of what was strung just before them pale at their left, on the wire.</summary>
/// <remarks>
/// <para>Laid straight, from left to right as they are strung, by their own lengths along the hole; a step that is longer than the picture is wide goes on in a row below.
/// Where the first bead of all is shown, so is the end of the wire before it.</para>
/// <para>Beads of one kind side by side share a letter with their number, as "3 B". A letter without room beneath its bead steps down by a line or two; one that finds none is left out: the
/// step's sentence names it.</para>
/// </remarks>
public sealed class StepFigureDrawing
{
    private const double MarginMm = 1, RowsApartMm = 3, LetterMm = 4.6, AirMm = 0.6;

    // Of the picture's width at most, so that what is new fills most of it.
    private const double DoneShare = 0.3;

    // How far a letter may step down.
    private const int Lines = 3;

    // Wire beyond the last bead: where the next one goes on.
    private const double OpenMm = 5;

    private readonly Reckoned _reckoned;
    private readonly double _scale;
    private readonly ImmutableArray<int> _nth;
    private readonly Dictionary<int, (string Letter, BeadFigure New, BeadFigure Done)> _kinds;
    private readonly Lettering _letters = new(CautiousSans.Instance, LetterMm, Palette.Colour.Ink, TextWeight.Bold);

    /// <summary>Makes ready to draw the steps of a piece.</summary>
    /// <param name="reckoned">The readings.</param>
    /// <param name="scale">Millimetres of the picture for one of a bead.</param>
    public StepFigureDrawing(Reckoned reckoned, double scale = 1)
    {
        (_reckoned, _scale) = (reckoned, scale);
        _nth = NthOfKind.Of(reckoned.Piece.Order.Kinds);
        var patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        _kinds = reckoned.Counts.Select((k, i) => (k.KindIndex, k.Letter, New: Figure(k, i, "new-", Palette.Colour), Done: Figure(k, i, "done-", Palette.Pale)))
            .ToDictionary(k => k.KindIndex, k => (k.Letter, k.New, k.Done));

        BeadFigure Figure(KindCount kind, int i, string name, Palette inks) => new(kind.Bead, name + kind.Letter.ToLowerInvariant(), scale, patterns[i], inks);
    }

    /// <summary>The beads of a step.</summary>
    /// <param name="step">A step that strings beads.</param>
    /// <param name="widthMm">Width of the picture, mm: less is used where less will do, and more where one bead alone is longer.</param>
    /// <param name="title">What it is, in words.</param>
    /// <param name="description">What it shows, for someone who cannot see it.</param>
    public Picture Of(StringingStep step, double widthMm, string title, string description)
    {
        var room = DoneShare * widthMm;
        // What is new stands on one row wherever it can: then only as much before it as there is room for.
        var left = widthMm - 2 * MarginMm - OpenMm - Enumerable.Range(step.First, step.Beads).Sum(LengthMm);
        var first = FirstShown(step.First, left >= 0 ? Math.Min(room, left) : room);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        double top = MarginMm, wide = 0;
        foreach (var row in Rows(first, step.End, widthMm))
        {
            var (drawn, height, right) = Row(row, step.First, isLast: row[^1].Index == step.End - 1);
            marks.Add(new Group(drawn) { MoveDownMm = top, Class = "row" });
            wide = Math.Max(wide, right);
            top += height + RowsApartMm;
        }
        return new Picture(wide + MarginMm, top - RowsApartMm + MarginMm, title, description, marks.ToImmutable());
    }

    private int FirstShown(int first, double roomMm)
    {
        while (first > 0 && (roomMm -= LengthMm(first - 1) + (first == 1 ? EndMm : 0)) >= 0) first--;
        return first;
    }

    private List<List<(int Index, double LeftMm)>> Rows(int first, int end, double widthMm)
    {
        var rows = new List<List<(int, double)>>();
        var x = 0.0;
        for (var i = first; i < end; i++)
        {
            if (i == first || (x + LengthMm(i) + OpenMm + MarginMm > widthMm && rows[^1].Count > 0))
            {
                rows.Add([]);
                x = MarginMm + (i == 0 ? EndMm : 0);
            }
            rows[^1].Add((i, x));
            x += LengthMm(i);
        }
        return rows;
    }

    private (ImmutableArray<Mark> Marks, double HeightMm, double RightMm) Row(List<(int Index, double LeftMm)> row, int firstNew, bool isLast)
    {
        var kinds = _reckoned.Piece.Order.Kinds;
        var half = row.Max(b => HalfWidthMm(b.Index));
        var right = row[^1].LeftMm + LengthMm(row[^1].Index) + (isLast ? OpenMm : 0);
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var wire = new Pen(Palette.Colour.Steel, Math.Max(0.3, _reckoned.Piece.Wire.WireMm * _scale));
        if (row[0].Index == 0)
        {
            half = Math.Max(half, EndMm / 2);
            marks.Add(_reckoned.Piece.Ends.Start.Finish == EndFinish.TurnedLoop
                ? new Circle(new Point(MarginMm + EndMm / 2, half), (EndMm - wire.WidthMm) / 2, Paint.Lined(wire)) { Class = "end" }
                : new Circle(new Point(MarginMm + EndMm / 2, half), EndMm / 2, Paint.Filled(Palette.Colour.Steel)) { Class = "end" });
        }
        marks.Add(new Line(new Point(row[0].LeftMm, half), new Point(right, half), wire) { Class = "wire" });
        foreach (var (index, left) in row)
        {
            var (_, fresh, done) = _kinds[kinds[index]];
            marks.Add(new Stamp((index < firstNew ? done : fresh).Of(_nth[index]), new Point(left + LengthMm(index) / 2, half)) { Class = index < firstNew ? "done" : "new", OfBead = index });
        }
        var (letters, bottom, reach) = Letters([.. row.Where(b => b.Index >= firstNew)], half);
        marks.AddRange(letters);
        return (marks.ToImmutable(), Math.Max(2 * half, bottom), Math.Max(right, reach));
    }

    private (ImmutableArray<Mark> Marks, double BottomMm, double RightMm) Letters(ImmutableArray<(int Index, double LeftMm)> row, double wireMm)
    {
        if (row.IsEmpty) return ([], 0, 0);
        // Words broader than the first bead reach under the one before it.
        var before = Math.Max(0, row[0].Index - 1);
        var topMm = wireMm + AirMm + Enumerable.Range(before, row[^1].Index + 1 - before).Max(i => i == before && i < row[0].Index && LengthMm(row[0].Index) > 2 * LetterMm ? 0 : HalfWidthMm(i));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var taken = new double[Lines];
        int lines = 0, at = 0;
        var kinds = _reckoned.Piece.Order.Kinds;
        while (at < row.Length)
        {
            var end = at + 1;
            while (end < row.Length && kinds[row[end].Index] == kinds[row[at].Index]) end++;
            double from = row[at].LeftMm, to = row[end - 1].LeftMm + LengthMm(row[end - 1].Index), middle = (from + to) / 2;
            var letter = _kinds[kinds[row[at].Index]].Letter;
            var words = end - at == 1 ? letter : (end - at).ToString(CultureInfo.InvariantCulture) + "\u00a0" + letter;
            var width = _letters.WidthMm(words);
            // At the left edge words stand inside the picture, not under the middle of their beads.
            var left = Math.Max(MarginMm, middle - width / 2);
            var line = Enumerable.Range(0, Lines).FirstOrDefault(l => left >= taken[l] && taken.Take(l).All(t => middle >= t), -1);
            if (end - at > 1)
                marks.Add(new Line(new Point(from + 0.4, topMm + 0.3), new Point(to - 0.4, topMm + 0.3), new Pen(Palette.Colour.Quiet, 0.25)) { Class = "run" });
            if (line >= 0)
            {
                var y = topMm + AirMm + line * _letters.LineMm;
                if (line > 0) marks.Add(new Line(new Point(middle, topMm + AirMm), new Point(middle, y), new Pen(Palette.Colour.Quiet, 0.2)) { Class = "leader" });
                marks.Add(_letters.Under(words, left, y) with { Class = "letter", OfBead = row[at].Index });
                taken[line] = left + width + AirMm;
                for (var l = 0; l < line; l++) taken[l] = Math.Max(taken[l], middle + AirMm);
                lines = Math.Max(lines, line + 1);
            }
            at = end;
        }
        return (marks.ToImmutable(), topMm + AirMm + lines * _letters.LineMm, taken.Max());
    }

    private double HalfWidthMm(int index) => _kinds[_reckoned.Piece.Order.Kinds[index]].New.Silhouette.HalfWidthMm;

    private double LengthMm(int index) => 2 * _kinds[_reckoned.Piece.Order.Kinds[index]].New.Silhouette.HalfLengthMm;

    // A loop or a cap before the first bead, as large as it is bent: outside.
    private double EndMm => _scale * (_reckoned.Piece.Ends.Start.InsideMm + 2 * _reckoned.Piece.Wire.WireMm);
}
