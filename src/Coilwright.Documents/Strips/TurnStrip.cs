using System.Collections.Immutable;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.TurnRows;
using Coilwright.Wording;

namespace Coilwright.Documents.Strips;

/// <summary>A turn's beads in a straight line at true size, to lay real beads on before they are strung; with a ruler along it.</summary>
/// <remarks>A bead belongs to the turn on which its middle lies, so every bead stands on exactly one strip, unlike in the turn rows, where a bead over
/// a row's edge stands on both. Beads stand as far apart as on the worn wire: what the curve opens between flat faces is bare.</remarks>
/// <param name="Picture">The strip.</param>
/// <param name="Turn">The turn, from 1.</param>
/// <param name="HasOverlap">Whether what lies over the first turn's beginning stands on it too: a last turn of only a bead or two.</param>
/// <param name="Beads">Beads on it.</param>
/// <param name="WireMm">Wire that their shares take, mm.</param>
public sealed record TurnStrip(Picture Picture, int Turn, bool HasOverlap, int Beads, double WireMm)
{
    // Air round the ink, and between letters and ruler.
    private const double AirMm = 0.6;

    // The ruler's nought stands half over its end.
    private const double LeastLeadMm = 1;

    /// <summary>Where its ruler begins, mm from its left edge: the same on all strips of a piece, so that they stand in line.</summary>
    internal double LeadMm { get; private init; }

    /// <summary>A strip for each turn that has beads, in order; a last turn of only a bead or two stands at the end of the strip before.</summary>
    public static ImmutableArray<TurnStrip> Of(Reckoned reckoned, Language language)
    {
        var style = new Style(new TurnRowsOptions { Language = language });
        var patterns = Likenesses.Patterns([.. reckoned.Counts.Select(k => k.Bead)]);
        var figures = reckoned.Counts.Select((k, i) => (k, Figure: new BeadFigure(k.Bead, "strip-" + k.Letter.ToLowerInvariant(), 1, patterns[i], style.Inks)))
            .ToDictionary(f => f.k.KindIndex, f => (f.k, f.Figure));
        var lie = reckoned.Lie;
        var turns = Enumerable.Range(0, lie.Count).GroupBy(lie.TurnWithOverlap).Select(t => (Turn: t.Key, Beads: t.ToArray())).ToArray();
        // Beads that stand over their turn's beginning need room before it.
        var lead = turns.Max(t => t.Beads.Max(i => lie.StartsMm[t.Beads[0]] - lie.BeadMiddleMm(i) + figures[reckoned.Piece.Order.Kinds[i]].Figure.Silhouette.HalfLengthMm));
        return [.. turns.Select(t => Draw(reckoned, t.Turn, t.Beads, Math.Max(LeastLeadMm, lead) + AirMm, figures, style))];
    }

    private static TurnStrip Draw(Reckoned reckoned, int turn, int[] beads, double leadMm, Dictionary<int, (KindCount Kind, BeadFigure Figure)> figures, Style style)
    {
        var lie = reckoned.Lie;
        double from = lie.StartsMm[beads[0]], to = lie.StartsMm[beads[^1]] + lie.SharesMm[beads[^1]];
        double right = to, half = 0;
        foreach (var i in beads)
        {
            var silhouette = figures[reckoned.Piece.Order.Kinds[i]].Figure.Silhouette;
            right = Math.Max(right, lie.BeadMiddleMm(i) + silhouette.HalfLengthMm);
            half = Math.Max(half, silhouette.HalfWidthMm);
        }
        var shift = leadMm - from;
        var nth = NthOfKind.Of(reckoned.Piece.Order.Kinds);
        ImmutableArray<DrawnBead> drawn =
        [
            .. beads.Select(i =>
            {
                var (kind, figure) = figures[reckoned.Piece.Order.Kinds[i]];
                var middle = lie.BeadMiddleMm(i) + shift;
                var over = new Stretch(middle - figure.Silhouette.HalfLengthMm, middle + figure.Silhouette.HalfLengthMm);
                return new DrawnBead(new RowBead(i, nth[i], kind, over, turn, true), figure, middle, middle);
            }),
        ];
        var row = ImmutableArray.CreateBuilder<Mark>();
        row.Add(new Line(new Point(from + shift, 0), new Point(to + shift, 0), new Pen(style.Inks.Steel, reckoned.Piece.Wire.WireMm)));
        // A focal stands over its neighbours.
        foreach (var bead in drawn.OrderBy(b => b.IsAbove)) row.Add(new Stamp(bead.Figure.Of(bead.Bead.Look), new Point(bead.MiddleMm, 0)));
        var placer = new LabelPlacer();
        row.AddRange(new RowLetters(style, drawn, placer).Place());
        var bottom = placer.Taken.Select(b => b.BottomMm).Append(half).Max();

        var wire = half + AirMm;
        var ruler = wire + bottom + AirMm;
        // Whole centimetres, so that its end is a line with a number.
        var length = Math.Max(10, (int)((to - from) / 10) * 10);
        var numbers = new Lettering(style.Face, 2.2, style.Inks.Quiet);
        var width = Math.Max(right + shift, leadMm + length + numbers.WidthMm("000") / 2) + AirMm;
        var picture = new Picture(width, ruler + CheckRuler.HeightMm + 0.3, "", "",
            [new Group(row.ToImmutable()) { MoveDownMm = wire }, CheckRuler.Draw(leadMm, ruler, length, 1, numbers, style.Inks)])
        { Language = style.Language.Code };
        return new TurnStrip(picture, turn, lie.Turn(beads[^1]) > turn, beads.Length, to - from) { LeadMm = leadMm };
    }
}
