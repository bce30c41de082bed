using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.TurnRows;

/// <summary>The turn rows: each turn a straight row at true proportion, so placed that what lies over what on the wrist lies over what on the page.</summary>
/// <remarks>
/// <para>As makers string one straight trial wire for each turn. Across the page runs the way round the wrist, from underside to underside with the top
/// between them. A millimetre of wire is as long as a millimetre of a bead is wide.</para>
/// <para>Beads are drawn at their own length in the middle of their share of the wire, so the bare wire that a curve opens between flat faces shows. A bead
/// over the seam stands on both rows, each showing its own part and a hint of the rest.</para>
/// </remarks>
public static class TurnRowsDrawing
{
    private const double RowGapMm = 3.4;
    private const int RulerMm = 50;

    /// <summary>Draws the turn rows of a piece from its readings.</summary>
    public static Picture Of(Reckoned reckoned, TurnRowsOptions? options = null)
    {
        options ??= new TurnRowsOptions();
        var model = TurnRowsModel.Of(reckoned, options.Looks);
        var style = new Style(options);
        var frame = Frame(model, style, options);
        var patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        var figures = reckoned.Counts.Select((k, i) => (k.KindIndex, Figure: new BeadFigure(k.Bead, "bead-" + k.Letter.ToLowerInvariant() + "-drawn", frame.Scale, patterns[i], style.Inks)))
            .ToDictionary(f => f.KindIndex, f => f.Figure);

        var marks = ImmutableArray.CreateBuilder<Mark>();
        double left = frame.MarginMm, right = frame.PageMm - frame.MarginMm;
        var y = options.RowsAlone ? frame.MarginMm / 2 : HeaderComposition.Lay(style, model, !options.Close, left, right, frame.MarginMm, marks) + 5;
        y = options.Close ? CloseRows(style, model, frame, figures, y, marks) : Rows(style, model, frame, figures, options, y, marks);
        if (!options.RowsAlone)
        {
            marks.Add(new Line(new Point(left, y), new Point(right, y), new Pen(style.Inks.Hairline, 0.25)));
            y = KeyComposition.Lay(style, reckoned.Counts, figures, left, right, y + 4, marks) + 1.5;
            y = Foot(style, frame, left, right, y, marks) + frame.MarginMm - 2;
        }
        if (options.Paper) marks.Insert(0, new Rectangle(new Box(0, 0, frame.PageMm, y), Paint.Filled(style.Inks.Paper)) { Class = "paper" });
        return new Picture(frame.PageMm, y, reckoned.Piece.Title, Described(style, model), marks.ToImmutable()) { Language = style.Language.Code };
    }

    // The rows in the middle, with room at both sides for what stands over their edges, and for the turn numbers at the left.
    private static RowFrame Frame(TurnRowsModel model, Style style, TurnRowsOptions options)
    {
        // What stands over an edge with nowhere else to go is drawn whole: the wire's ends, the first bead, the last. Other beads are only hinted at.
        var wireMm = model.Reckoned.Piece.Wire.WireMm;
        double left = RowComposition.EndReachMm(model.Ends.Start, wireMm) - model.StartMm,
            right = model.FinishMm + RowComposition.EndReachMm(model.Ends.Finish, wireMm) - model.RowMm;
        double hintLeft = 0, hintRight = 0;
        for (var r = 0; r < model.Rows.Length; r++)
            foreach (var bead in model.Rows[r].Beads)
            {
                if (r == 0) left = Math.Max(left, -bead.Over.FromMm); else hintLeft = Math.Max(hintLeft, -bead.Over.FromMm);
                if (r == model.Rows.Length - 1) right = Math.Max(right, bead.Over.ToMm - model.RowMm); else hintRight = Math.Max(hintRight, bead.Over.ToMm - model.RowMm);
            }
        var numbers = model.Rows.Max(r => style.Number.WidthMm(RowComposition.NumberOf(r))) + 2;
        // Lines are thicker than nothing: a little more than the beads' own reach.
        const double airMm = 0.8;
        var around = 2 * options.MarginMm + numbers + 2 * airMm;
        double Left(double scale) => Math.Max(Math.Max(0, left) * scale, Math.Min(hintLeft * scale, RowFrame.HintMm));
        double Right(double scale) => Math.Max(Math.Max(0, right) * scale, Math.Min(hintRight * scale, RowFrame.HintMm));
        double Whole(double scale) => around + Left(scale) + model.RowMm * scale + Right(scale);

        var scale = Math.Clamp(options.Scale, TurnRowsOptions.LeastScale, TurnRowsOptions.MostScale);
        if (options.WidthMm is { } width)
        {
            // The whole grows with the scale, so halving finds the largest that fits.
            double fits = TurnRowsOptions.LeastScale, tooLarge = TurnRowsOptions.MostScale;
            for (var i = 0; i < 50; i++)
            {
                var middle = (fits + tooLarge) / 2;
                if (Whole(middle) <= width) fits = middle; else tooLarge = middle;
            }
            scale = fits;
        }
        var rows = Whole(scale);
        var page = Math.Max(rows, options.WidthMm ?? 0);
        if (!options.RowsAlone) page = Math.Max(page, 2 * options.MarginMm + Math.Max(KeyComposition.LeastMm(style, model.Reckoned.Counts, scale), RulerMm * scale + 8));
        var edge = options.MarginMm + numbers + airMm + Left(scale) + (page - rows) / 2;
        return new RowFrame(edge, scale, model.RowMm * scale, page, options.MarginMm, edge + model.TopMm * scale);
    }

    /// <summary>How many rows a piece has.</summary>
    internal static int RowsOf(Reckoned reckoned) => TurnRowsModel.Of(reckoned).Rows.Length;

    private static double Rows(Style style, TurnRowsModel model, RowFrame frame, IReadOnlyDictionary<int, BeadFigure> figures, TurnRowsOptions options, double topMm,
        ImmutableArray<Mark>.Builder marks)
    {
        var inTheWay = new List<Box>();
        var y = AxisWords(style, model, frame, topMm, marks);
        var lineFrom = y;
        var laid = new List<Mark>();
        var (letters, words) = (0, 0);
        var hasLongTieWords = RowComposition.HasRoomForLongTieWords(style, model, frame);
        var end = Math.Min(model.Rows.Length, options.FirstRow + Math.Min(options.MostRows, model.Rows.Length));
        for (var r = options.FirstRow; r < end; r++)
        {
            var row = new RowComposition(style, model, frame, r, figures, hasLongTieWords).Lay();
            var wire = y + RowGapMm - row.Extent.TopMm;
            laid.Add(new Group(row.Marks) { MoveDownMm = wire, Class = "row", Id = "row-" + (r + 1).ToString(CultureInfo.InvariantCulture) });
            inTheWay.AddRange(row.InTheWay.Select(b => b.Moved(0, wire)));
            y = wire + row.Extent.BottomMm;
            letters += row.LettersLeftOut;
            words += row.WordsLeftOut;
        }
        y += RowGapMm;
        Uprights(style, model, frame, lineFrom, y, inTheWay, marks);
        marks.AddRange(laid);
        if (letters + words > 0 || !options.RowsAlone) y += 2.5;
        foreach (var note in new[] { (letters, style.Words.SomeLetters), (words, style.Words.SomePlaces) })
            if (note.Item1 > 0)
                foreach (var line in style.Face.Lines(note.Item2, style.Caption.SizeMm, TextWeight.Regular, frame.PageMm - 2 * frame.MarginMm))
                {
                    marks.Add(style.Caption.Under(line, frame.MarginMm, y) with { Class = "note" });
                    y += style.Caption.LineMm;
                }
        return y + (options.RowsAlone ? 0.5 : 2);
    }

    // Rows as close as the turns lie on the wrist: a wide bead stands over its neighbours' rows as it does over their turns.
    private static double CloseRows(Style style, TurnRowsModel model, RowFrame frame, IReadOnlyDictionary<int, BeadFigure> figures, double topMm,
        ImmutableArray<Mark>.Builder marks)
    {
        var lineFrom = AxisWords(style, model, frame, topMm, marks);
        var rows = Enumerable.Range(0, model.Rows.Length).Select(r => new RowComposition(style, model, frame, r, figures, false)).ToArray();
        var pitch = model.Reckoned.Worn.PitchMm * frame.Scale;
        var wire = lineFrom + RowGapMm;
        for (var r = 0; r < rows.Length; r++) wire = Math.Max(wire, lineFrom + RowGapMm + rows[r].HalfMm - r * pitch);
        var bottom = Enumerable.Range(0, rows.Length).Max(r => wire + r * pitch + rows[r].HalfMm);
        List<Mark> laid = [], above = [], letters = [];
        var placed = new List<Box>();
        var numbered = double.MinValue;
        for (var r = 0; r < rows.Length; r++)
        {
            var (row, over, onBeads) = rows[r].LayClose();
            var down = wire + r * pitch;
            laid.Add(new Group(row) { MoveDownMm = down, Class = "row", Id = "row-" + (r + 1).ToString(CultureInfo.InvariantCulture) });
            if (!over.IsEmpty) above.Add(new Group(over) { MoveDownMm = down, Class = "row-above" });
            foreach (var letter in onBeads)
            {
                // A letter that a neighbouring turn's bead reaches into would be taken for that bead's.
                var hidden = Enumerable.Range(0, rows.Length).Any(q => q != r && rows[q].Covers(letter.Box.Moved(0, (r - q) * pitch), onlyAbove: letter.IsAbove || q < r));
                var box = letter.Box.Moved(0, down);
                if (hidden || placed.Any(p => p.Overlaps(box))) continue;
                placed.Add(box);
                letters.Add(new Group(letter.Marks) { MoveDownMm = down });
            }
            var number = style.Value.Centred(RowComposition.NumberOf(model.Rows[r]), new Point(frame.MarginMm, down), TextAnchor.Start);
            // Where turns are narrower than their numbers, every second or third has one.
            if (number.Box(style.Face).TopMm < numbered) continue;
            laid.Add(number with { Class = "turn-number" });
            numbered = number.Box(style.Face).BottomMm;
        }
        Uprights(style, model, frame, lineFrom, bottom + RowGapMm, [], marks);
        marks.AddRange(laid);
        marks.AddRange(above);
        marks.Add(new Group([.. letters]) { Class = "letters" });
        return bottom + RowGapMm + 4.5;
    }

    private static void Uprights(Style style, TurnRowsModel model, RowFrame frame, double fromMm, double toMm, List<Box> inTheWay, ImmutableArray<Mark>.Builder marks)
    {
        var top = new Pen(style.Inks.Accent, 0.4) { DashesMm = [0.01, 1.3], Ends = LineEnds.Round };
        // A pale hairline may pass close by words, a dark line may not.
        const double closeMm = 0.3, farMm = 0.7;
        foreach (var x in Undersides(model, frame))
            marks.Add(new Drawn(UprightLine(x, fromMm, toMm, inTheWay, closeMm), Paint.Lined(style.Inks.Hairline, 0.25)) { Class = "underside-line" });
        if (model.StartMm > 0)
            marks.Add(new Drawn(UprightLine(frame.X(model.StartMm), fromMm, toMm, inTheWay, farMm),
                Paint.Lined(new Pen(style.Inks.Quiet, 0.18) { DashesMm = [1.4, 1.1] }))
            { Class = "turns-begin-line" });
        marks.Add(new Drawn(UprightLine(frame.TopOfWristMm, fromMm, toMm, inTheWay, farMm), Paint.Lined(top)) { Class = "top-line" });
    }

    private static double[] Undersides(TurnRowsModel model, RowFrame frame) =>
        model.UndersideMm == 0 ? [frame.LeftMm, frame.RightMm] : [frame.X(model.UndersideMm)];

    // The top and the underside in words; where the page is too narrow for all, the underside goes without.
    private static double AxisWords(Style style, TurnRowsModel model, RowFrame frame, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var placer = new LabelPlacer();
        var bottom = topMm;
        // Beside its line, on the side away from another line, where words in the middle would run into that one's.
        bool PutBeside(string words, Lettering lettering, double x, double awayFrom, string sort)
        {
            var width = lettering.WidthMm(words);
            var middle = Box.At(x - width / 2, topMm, width, lettering.BoxMm);
            var beside = Box.At(x >= awayFrom ? x : x - width, topMm, width, lettering.BoxMm);
            if (placer.IsFree(middle) || !placer.IsFree(beside.Grown(1.5)) || beside.LeftMm < frame.MarginMm || beside.RightMm > frame.PageMm - frame.MarginMm) return false;
            placer.Take(beside);
            marks.Add(lettering.In(words, beside) with { Class = sort });
            return true;
        }
        void Put(string words, Lettering lettering, double x, string sort)
        {
            // Air at both sides, so that two words on one line do not read as one.
            const double airMm = 1;
            var wish = new LabelWish(x, lettering.WidthMm(words) + 2 * airMm, lettering.BoxMm, topMm, topMm + 2.5 * lettering.BoxMm, Upwards: false)
            { LeastMm = frame.MarginMm - airMm, MostMm = frame.PageMm - frame.MarginMm + airMm, NeedsLeader = false };
            if (placer.Place(wish) is not { } place) return;
            marks.Add(lettering.In(words, place.Box) with { Class = sort });
            bottom = Math.Max(bottom, place.Box.BottomMm);
        }
        Put(style.Words.Top, style.Tie, frame.TopOfWristMm, "top-words");
        const string turnsBegin = "turns-begin-words";
        if (model.StartMm > 0 && !PutBeside(style.Words.TurnsBegin, style.Caption, frame.X(model.StartMm), frame.TopOfWristMm, turnsBegin))
            Put(style.Words.TurnsBegin, style.Caption, frame.X(model.StartMm), turnsBegin);
        foreach (var x in Undersides(model, frame)) Put(style.Words.Underside, style.Caption, x, "underside-words");
        return bottom + 0.8;
    }

    // An upright line from head to foot, left out where words stand.
    private static Outline UprightLine(double x, double fromMm, double toMm, List<Box> inTheWay, double besideMm)
    {
        const double airMm = 0.4;
        var pieces = new List<Outline>();
        var y = fromMm;
        foreach (var box in inTheWay.Where(b => b.LeftMm - besideMm < x && b.RightMm + besideMm > x).OrderBy(b => b.TopMm))
        {
            if (box.TopMm - airMm > y) pieces.Add(Outline.Line(new(x, y), new(x, Math.Min(toMm, box.TopMm - airMm))));
            y = Math.Max(y, box.BottomMm + airMm);
        }
        if (y < toMm) pieces.Add(Outline.Line(new(x, y), new(x, toMm)));
        return Outline.Together(pieces);
    }

    private static double Foot(Style style, RowFrame frame, double leftMm, double rightMm, double topMm, ImmutableArray<Mark>.Builder marks)
    {
        var numbers = new Lettering(style.Face, 2.2, style.Inks.Quiet);
        // The first number stands half over the end of the ruler.
        marks.Add(CheckRuler.Draw(leftMm + 1, topMm, RulerMm, frame.Scale, numbers, style.Inks));
        var isTrue = Math.Abs(frame.Scale - 1) < 0.0005;
        var words = style.Language.Fill(isTrue ? style.Words.TrueSize : style.Words.Scaled, ("length", style.Short(RulerMm)), ("percent", frame.Scale));
        double x = leftMm + 1 + RulerMm * frame.Scale + 4, y = topMm + CheckRuler.HeightMm - style.Caption.BoxMm;
        if (rightMm - x < 40) (x, y) = (leftMm, topMm + CheckRuler.HeightMm + 1.5);
        foreach (var line in style.Face.Lines(words, style.Caption.SizeMm, TextWeight.Regular, rightMm - x))
        {
            marks.Add(style.Caption.Under(line, x, y) with { Class = "note" });
            y += style.Caption.LineMm;
        }
        return Math.Max(y, topMm + CheckRuler.HeightMm + 1);
    }

    private static string Described(Style style, TurnRowsModel model)
    {
        var (words, reckoned) = (style.Words, model.Reckoned);
        var text = new StringBuilder(style.Language.Fill(words.Shows, ("title", reckoned.Piece.Title), ("beads", reckoned.Lie.Count), ("wrist", style.Length(reckoned.WristMm))));
        text.Append(' ').Append(style.Language.Terms.LiningUp[reckoned.LiningUp.Word]);
        // The nearest few: a list of hundreds helps nobody who listens.
        foreach (var pair in reckoned.LiningUp.Pairs.Take(6))
            text.Append(' ').Append(style.Language.Fill(words.ShowsPlace, ("name", pair.Name), ("turn", pair.TurnA), ("next", pair.TurnB),
                ("place", style.Language.Place(pair.AngleDeg)), ("off", style.Short(Math.Abs(pair.OffSquareMm)))));
        return text.ToString();
    }
}
