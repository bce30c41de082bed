using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Documents.BeadFigures;
using Coilwright.Documents.Drawing;
using Coilwright.Documents.Layout;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.TurnRows;

/// <summary>A bead where it is drawn.</summary>
/// <param name="Bead">The bead.</param>
/// <param name="Figure">Its figure.</param>
/// <param name="MiddleMm">Its middle on the page.</param>
/// <param name="LetterMm">Middle of the part of it that is drawn on its home row: there its letter stands.</param>
internal readonly record struct DrawnBead(RowBead Bead, BeadFigure Figure, double MiddleMm, double LetterMm)
{
    internal bool IsAbove => Figure.Bead.Shape.HidesHalfMm(Figure.Bead, 1000) is not null;
}

/// <summary>A letter on its bead.</summary>
/// <param name="Marks">The letter, with the patch beneath it where it needs one.</param>
/// <param name="Box">The letter's box.</param>
/// <param name="IsAbove">Whether its bead lies above all others.</param>
internal sealed record LetterOnBead(ImmutableArray<Mark> Marks, Box Box, bool IsAbove);

/// <summary>The key letters of a row: on the bead where it is large enough, else beneath it, as near as the beads beside it let it.</summary>
/// <remarks>Of small beads of one kind in a run, one word for all: "12 B". Where letters still crowd they step down, and where that would lead too far
/// from the bead some are left out, which the picture then says.</remarks>
internal sealed class RowLetters(Style style, ImmutableArray<DrawnBead> beads, LabelPlacer placer)
{
    private static readonly double[] SizesMm = [3.4, 3.1, 2.8, 2.5, 2.2];

    // How far beneath the row the lowest letter may stand, in lines.
    private const double LinesBeneath = 3.2;
    private const double CloseMm = 0.45;

    // Bead on either side of a letter that stands on it.
    private const double SideMm = 0.5;

    private readonly ImmutableArray<Mark>.Builder _marks = ImmutableArray.CreateBuilder<Mark>();

    /// <summary>Letters that found no room.</summary>
    internal int LeftOut { get; private set; }

    /// <summary>Places letters on the beads that are large enough, and none beneath.</summary>
    internal ImmutableArray<LetterOnBead> PlaceOnBeads() =>
        [.. Enumerable.Range(0, beads.Length).Where(i => beads[i].Bead.IsHome).Select(OnBead).OfType<LetterOnBead>()];

    /// <summary>Places the letters; y is 0 at the wire.</summary>
    internal ImmutableArray<Mark> Place()
    {
        var beneath = new List<int>();
        for (var i = 0; i < beads.Length; i++)
        {
            if (!beads[i].Bead.IsHome) continue;
            var on = OnBead(i);
            if (on is null) beneath.Add(i); else _marks.AddRange(on.Marks);
        }
        for (var at = 0; at < beneath.Count;)
        {
            var end = RunEnd(beneath, at);
            if (end - at >= 3 && (IsTight(beneath, at, end) || IsUneven(beneath, at, end))) Run(beneath, at, end);
            else
                for (var k = at; k < end; k++) Beneath(beneath[k]);
            at = end;
        }
        return _marks.ToImmutable();
    }

    // The letter on its bead, with the patch under it; null when it has no room there.
    private LetterOnBead? OnBead(int i)
    {
        var (bead, figure, middle, at) = beads[i];
        // A bead over the row's edge shows a part only; its letter keeps to that.
        var shown = figure.Silhouette.HalfLengthMm - Math.Abs(at - middle);
        foreach (var size in SizesMm)
        {
            var lettering = new Lettering(style.Face, size * style.Letters, figure.Ground.Readable(style.Inks.Dark, style.Inks.Light), TextWeight.Bold);
            double half = lettering.WidthMm(bead.Kind.Letter) / 2, high = style.Face.CapitalEm * size * style.Letters / 2;
            if (half + SideMm > shown || !figure.Silhouette.Holds(at - middle, half + SideMm, high + 0.3)) continue;
            var text = lettering.Centred(bead.Kind.Letter, new Point(at, 0));
            var box = text.Box(style.Face);
            if (IsCovered(i, box) || !placer.IsFree(box)) return null;
            placer.Take(box);
            var letter = text with { Class = "letter", OfBead = bead.Index };
            var patch = new Ellipse(new Point(at, 0), Math.Min(half + 0.7, shown), high + 0.55, Paint.Filled(figure.Ground)) { OfBead = bead.Index };
            return new LetterOnBead(figure.LetterNeedsPatch ? [patch, letter] : [letter], box, beads[i].IsAbove);
        }
        return null;
    }

    // A bead strung later lies over the one before it, and a focal over all.
    private bool IsCovered(int i, Box letter)
    {
        for (var j = 0; j < beads.Length; j++)
        {
            if (j == i || !(beads[j].IsAbove && !beads[i].IsAbove || j == i + 1 && beads[j].IsAbove == beads[i].IsAbove)) continue;
            var off = beads[j].MiddleMm;
            if (beads[j].Figure.Silhouette.GreatestHalfWidthMm(letter.LeftMm - off, letter.RightMm - off) > 0) return true;
        }
        return false;
    }

    private int RunEnd(List<int> beneath, int at)
    {
        var end = at + 1;
        while (end < beneath.Count && beneath[end] == beneath[end - 1] + 1 && beads[beneath[end]].Bead.Kind == beads[beneath[at]].Bead.Kind) end++;
        return end;
    }

    private bool IsTight(List<int> beneath, int at, int end)
    {
        var apart = (beads[beneath[end - 1]].LetterMm - beads[beneath[at]].LetterMm) / (end - at - 1);
        return apart < style.UnderLetter.WidthMm(beads[beneath[at]].Bead.Kind.Letter) + 0.8;
    }

    // Beads beneath a focal: their letters would follow its rim down, each on a line of its own.
    private bool IsUneven(List<int> beneath, int at, int end)
    {
        var depths = Enumerable.Range(at, end - at).Select(k => DepthMm(beads[beneath[k]].LetterMm, beads[beneath[k]].LetterMm)).ToArray();
        return depths.Max() - depths.Min() > style.UnderLetter.BoxMm;
    }

    private void Run(List<int> beneath, int at, int end)
    {
        DrawnBead first = beads[beneath[at]], last = beads[beneath[end - 1]];
        var words = (end - at).ToString(CultureInfo.InvariantCulture) + " " + first.Bead.Kind.Letter;
        double from = first.LetterMm, to = last.LetterMm;
        var line = DepthMm(from, to) + CloseMm;
        var width = style.UnderLetter.WidthMm(words);
        var lineBox = new Box(from, line, to, line + 0.2);
        var middle = (from + to) / 2;
        // The words may be broader than the run, and reach under a deeper neighbour.
        var near = Math.Max(line + 0.45, DepthMm(middle - width / 2 - 0.2, middle + width / 2 + 0.2) + CloseMm);
        if (placer.IsFree(lineBox) && placer.Place(Wish(middle, width, near, line)) is { } place)
        {
            placer.Take(lineBox);
            _marks.Add(new Drawn(new OutlineBuilder().Move(new(from, line - 0.35)).Line(new(from, line)).Line(new(to, line)).Line(new(to, line - 0.35)).Make(), Paint.Lined(style.Inks.Quiet, 0.16))
            { OfBead = first.Bead.Index });
            Set(words, place, first.Bead.Index);
        }
        else LeftOut += end - at;
    }

    private void Beneath(int i)
    {
        var (letter, at) = (beads[i].Bead.Kind.Letter, beads[i].LetterMm);
        var width = style.UnderLetter.WidthMm(letter);
        var near = DepthMm(at - width / 2 - 0.2, at + width / 2 + 0.2) + CloseMm;
        if (placer.Place(Wish(at, width, near, DepthMm(at, at) + 0.3)) is { } place) Set(letter, place, beads[i].Bead.Index);
        else LeftOut++;
    }

    private LabelWish Wish(double middle, double width, double near, double leaderFrom) =>
        new(middle, width, style.UnderLetter.BoxMm, near, near + LinesBeneath * style.UnderLetter.BoxMm, Upwards: false) { LeaderFromMm = leaderFrom };

    private void Set(string words, LabelPlace place, int bead)
    {
        if (place.Leader is { } leader) _marks.Add(new Line(leader.From, leader.To, new Pen(style.Inks.Hairline.Mixed(style.Inks.Quiet, 0.5), 0.14)) { OfBead = bead });
        _marks.Add(style.UnderLetter.In(words, place.Box) with { Class = "letter", OfBead = bead });
    }

    // How deep the beads reach beneath the wire between two places.
    internal double DepthMm(double fromMm, double toMm) =>
        beads.Select(b => b.Figure.Silhouette.GreatestHalfWidthMm(fromMm - b.MiddleMm, toMm - b.MiddleMm)).Append(0).Max();
}
