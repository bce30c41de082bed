using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Colour;
using Coilwright.Core.Readings;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.BeadCards;

/// <summary>A card for each kind of bead at true size, with its key letter: to lay the bead on, to label its bag, to sort by.</summary>
/// <remarks>Each shows the bead from outside and, where it is not as thick as wide or its hole is off the middle, from the side, with its hole dashed and
/// its measures beside it. A bead larger than its card is drawn smaller, and the card says so.</remarks>
public static class BeadCardsDrawing
{
    private const double MarginMm = 6;
    private const double OwnWidthMm = 190;
    private const double LeastCardMm = 56;
    private const double BetweenMm = 4;
    private const double PadMm = 4;

    // A bead taller than this would make its row of cards a page of its own.
    private const double TallestMm = 60;

    /// <summary>Draws the cards.</summary>
    public static Picture Of(Reckoned reckoned, PictureOptions? options = null)
    {
        options ??= new PictureOptions();
        var style = new PictureStyle(options);
        var width = Math.Max(LeastCardMm + 2 * MarginMm, options.WidthMm ?? OwnWidthMm);
        var kinds = reckoned.Counts;
        var patterns = Likenesses.Patterns([.. kinds.Select(k => k.Bead)]);
        // Cards stand on a raster; one whose bead asks for more room takes two places or more.
        var inner = width - 2 * MarginMm;
        var columns = Math.Max(1, (int)((inner + BetweenMm) / (LeastCardMm + BetweenMm)));
        var place = (inner - (columns - 1) * BetweenMm) / columns;
        double Wide(int places) => places * (place + BetweenMm) - BetweenMm;
        int Places(Bead bead) => Math.Clamp((int)Math.Ceiling((Views.WidthMm(style, bead, 1) + 2 * PadMm + BetweenMm) / (place + BetweenMm)), 1, columns);

        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = MarginMm;
        for (var at = 0; at < kinds.Length;)
        {
            List<(Card Card, double LeftMm, KindCount Kind)> row = [];
            for (var taken = 0; at < kinds.Length && taken + Places(kinds[at].Bead) <= columns; at++)
            {
                var places = Places(kinds[at].Bead);
                row.Add((new Card(style, kinds[at], patterns[at], Wide(places)), MarginMm + taken * (place + BetweenMm), kinds[at]));
                taken += places;
            }
            var tall = row.Max(c => c.Card.HeightMm);
            foreach (var (card, left, kind) in row)
                marks.Add(new Group([.. card.Draw(tall)])
                {
                    MoveRightMm = left,
                    MoveDownMm = y,
                    Class = "card",
                    Id = "card-" + kind.Letter.ToLowerInvariant(),
                    Title = kind.Bead.Name,
                });
            y += tall + BetweenMm;
        }
        y += MarginMm - BetweenMm;
        marks.InsertRange(0, style.Paper(options, width, y));
        var said = style.Language.Fill(style.Language.Pictures.Cards, ("title", reckoned.Piece.Title), ("kinds", kinds.Length));
        return new Picture(width, y, reckoned.Piece.Title, said, marks.ToImmutable()) { Language = style.Language.Code };
    }

    /// <summary>One card.</summary>
    private sealed class Card
    {
        private readonly PictureStyle _style;
        private readonly KindCount _kind;
        private readonly double _width;
        private readonly Views _views;
        private readonly ImmutableArray<string> _name;
        private readonly ImmutableArray<string> _facts;
        private readonly Lettering _letter;
        private readonly Lettering _title;

        internal Card(PictureStyle style, KindCount kind, Pattern pattern, double widthMm)
        {
            (_style, _kind, _width) = (style, kind, widthMm);
            _letter = new Lettering(style.Face, 7.5, style.Inks.Ink, TextWeight.Bold);
            _title = style.Body;
            var room = widthMm - 2 * PadMm;
            var scale = Math.Min(1, Math.Min(room / Views.WidthMm(style, kind.Bead, 1), TallestMm / kind.Bead.WidthMm));
            // Words beside the bead do not shrink with it: a second look at what is left for it.
            if (scale < 1) scale = Math.Max(0.05, Math.Min(scale, (room - (Views.WidthMm(style, kind.Bead, 0))) / Math.Max(1, Views.WidthMm(style, kind.Bead, 1) - Views.WidthMm(style, kind.Bead, 0))));
            _views = new Views(style, kind, pattern, scale);
            _name = style.Face.Lines(kind.Bead.Name, _title.SizeMm, TextWeight.Regular, room, 3);
            _facts = style.Face.Lines(string.Join(", ", Facts(scale)), style.Caption.SizeMm, TextWeight.Regular, room, 3);
        }

        internal double HeightMm => PadMm + _letter.LineMm + _views.HeightMm + 2 + _name.Length * _title.LineMm + _facts.Length * _style.Caption.LineMm + PadMm - 1;

        internal IEnumerable<Mark> Draw(double heightMm)
        {
            yield return new Rectangle(new Box(0, 0, _width, heightMm), Paint.Lined(_style.Inks.Hairline, 0.3)) { CornerMm = 2.5, Class = "card-edge" };
            yield return _letter.On(_kind.Letter, PadMm, PadMm + _letter.SizeMm * _style.Face.CapitalEm) with { Class = "key-letter" };
            var use = _style.Language.Fill(_style.Language.Pictures.CardUse, ("count", _kind.Count));
            yield return _style.Body.On(use, _width - PadMm, PadMm + _letter.SizeMm * _style.Face.CapitalEm, TextAnchor.End) with { Class = "use" };
            var words = _name.Length * _title.LineMm + _facts.Length * _style.Caption.LineMm;
            var y = heightMm - PadMm + 1 - words;
            // The bead in the middle of what is left between its letter and its words.
            double from = PadMm + _letter.LineMm, to = y - 2;
            foreach (var mark in _views.Draw(_width / 2, (from + to) / 2)) yield return mark;
            foreach (var line in _name)
            {
                yield return _title.Under(line, PadMm, y) with { Class = "name" };
                y += _title.LineMm;
            }
            foreach (var line in _facts)
            {
                yield return _style.Caption.Under(line, PadMm, y) with { Class = "facts" };
                y += _style.Caption.LineMm;
            }
        }

        private IEnumerable<string> Facts(double scale)
        {
            var words = _style.Language.Pictures;
            if (_kind.Bead.Role == Role.Focal) yield return _style.Language.TurnRows.Focal;
            yield return _kind.Bead.BoreMm is { } bore ? _style.Language.Fill(words.CardHole, ("bore", _style.Short(bore))) : words.CardHoleUnknown;
            if (scale < 0.9995) yield return _style.Language.Fill(words.CardScaled, ("percent", scale));
        }
    }

    /// <summary>A bead from outside, and from the side where that says more, with its measures.</summary>
    private sealed class Views(PictureStyle style, KindCount kind, Pattern pattern, double scale)
    {
        private const double GapMm = 5;
        private const double MeasureMm = 2;

        // From the side a bead says more where its thickness is not its width, or its hole is off the middle.
        private static bool HasSide(Bead bead) => Math.Abs(bead.ThicknessMm - bead.WidthMm) > 0.05 * bead.WidthMm || bead.HoleOffsetMm != 0;

        internal static double WidthMm(PictureStyle style, Bead bead, double scale)
        {
            var front = Slot(style, bead, scale) + Upright(style, bead.WidthMm);
            return HasSide(bead) ? front + GapMm + Slot(style, bead, scale) + Upright(style, bead.ThicknessMm) : front;
        }

        private static double Upright(PictureStyle style, double mm) => MeasureMm + 1.4 + style.Caption.WidthMm(style.Short(mm));

        // A view is as wide as its bead, or as the words beneath it.
        private static double Slot(PictureStyle style, Bead bead, double scale)
        {
            var words = style.Language.Pictures;
            var least = style.Caption.WidthMm(style.Short(bead.LengthMm));
            if (HasSide(bead)) least = Math.Max(least, Math.Max(style.Caption.WidthMm(words.CardFront), style.Caption.WidthMm(words.CardSide)));
            return Math.Max(bead.LengthMm * scale, least);
        }

        internal double HeightMm => Math.Max(kind.Bead.WidthMm, HasSide(kind.Bead) ? kind.Bead.ThicknessMm : 0) * scale + MeasureMm + 1.9 + style.Caption.BoxMm + (HasSide(kind.Bead) ? style.Caption.LineMm : 0);

        internal IEnumerable<Mark> Draw(double middleMm, double heightMm)
        {
            var bead = kind.Bead;
            var tall = Math.Max(bead.WidthMm, HasSide(bead) ? bead.ThicknessMm : 0) * scale;
            var y = heightMm - HeightMm / 2 + tall / 2;
            var slot = Slot(style, bead, scale);
            var x = middleMm - WidthMm(style, bead, scale) / 2 + slot / 2;
            var figure = new BeadFigure(bead, "card-" + kind.Letter.ToLowerInvariant() + "-drawn", scale, pattern, style.Inks);
            yield return new Stamp(figure.Of(0), new Point(x, y));
            foreach (var mark in Hole(figure.Silhouette, figure.Ground, x, y, 0)) yield return mark;
            foreach (var mark in Along(x, y + tall / 2)) yield return mark;
            foreach (var mark in Across(x + bead.LengthMm * scale / 2, y, bead.WidthMm)) yield return mark;
            if (!HasSide(bead)) yield break;

            var front = x;
            x += slot + Upright(style, bead.WidthMm) + GapMm;
            var side = new Silhouette(bead, scale, fromTheSide: true);
            var fill = figure.Ground;
            var outline = side.Whole.Moved(x, y);
            yield return new Drawn(outline, Paint.Filled(fill));
            yield return new Drawn(side.Part(-0.98, 0.98, 0.62, 0.97).Moved(x, y), Paint.Filled(fill.Mixed(style.Inks.Ink, 0.14)));
            yield return new Drawn(outline, Paint.Lined(figure.EdgePen));
            foreach (var mark in Hole(side, fill, x, y, bead.HoleOffsetMm * scale)) yield return mark;
            foreach (var mark in Across(x + bead.LengthMm * scale / 2, y, bead.ThicknessMm)) yield return mark;
            var words = style.Language.Pictures;
            var under = y + tall / 2 + MeasureMm + 1.1 + style.Caption.LineMm;
            yield return style.Caption.Under(words.CardFront, front, under, TextAnchor.Middle) with { Class = "view" };
            yield return style.Caption.Under(words.CardSide, x, under, TextAnchor.Middle) with { Class = "view" };
        }

        // The hole through it, dashed: two lines where it is wide enough, else one.
        private IEnumerable<Mark> Hole(Silhouette silhouette, Srgb ground, double x, double y, double downMm)
        {
            if (kind.Bead.BoreMm is not { } bore) yield break;
            var half = bore * scale / 2;
            double[] lines = half >= 0.25 ? [-half, half] : [0];
            double[] dashes = [0.9, 0.7];
            Outline Lines(double from, double to) => Outline.Together(lines.Select(l => Outline.Line(new(x + from, y + downMm + l), new(x + to, y + downMm + l))));
            var end = silhouette.HalfLengthMm;
            var inside = new Pen(ground.Readable(style.Inks.Ink, style.Inks.Light), 0.18) { DashesMm = [.. dashes] };
            yield return new Drawn(Lines(-end, end), Paint.Lined(inside)) { Class = "hole" };
            yield return new Drawn(Outline.Together([Lines(-end - 1.4, -end), Lines(end, end + 1.4)]), Paint.Lined(inside with { Ink = style.Inks.Quiet })) { Class = "hole" };
        }

        private IEnumerable<Mark> Along(double x, double bottomMm)
        {
            double half = kind.Bead.LengthMm * scale / 2, at = bottomMm + MeasureMm;
            yield return Ends(new(x - half, at), new(x + half, at), 0, 0.7);
            yield return style.Caption.Under(style.Short(kind.Bead.LengthMm), x, at + 1.1, TextAnchor.Middle) with { Class = "measure" };
        }

        private IEnumerable<Mark> Across(double rightMm, double y, double mm)
        {
            double half = mm * scale / 2, at = rightMm + MeasureMm;
            yield return Ends(new(at, y - half), new(at, y + half), 0.7, 0);
            yield return style.Caption.Centred(style.Short(mm), new Point(at + 1.2, y), TextAnchor.Start) with { Class = "measure" };
        }

        private Drawn Ends(Point from, Point to, double alongMm, double acrossMm) => new(Outline.Together([
            Outline.Line(from, to), Outline.Line(from.Moved(-alongMm, -acrossMm), from.Moved(alongMm, acrossMm)),
            Outline.Line(to.Moved(-alongMm, -acrossMm), to.Moved(alongMm, acrossMm))]), Paint.Lined(style.Inks.Quiet, 0.18));

    }
}
