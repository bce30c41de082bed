using System.Collections.Immutable;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>A picture with words beneath it, on one page.</summary>
/// <param name="picture">The picture.</param>
/// <param name="alt">What it shows.</param>
/// <param name="scale">Points to its millimetre where there is room.</param>
/// <param name="fullWidth">Whether it is as wide as its room.</param>
/// <param name="centred">Whether it stands in the middle of its room.</param>
/// <param name="caption">Words beneath it; null for none.</param>
/// <param name="gap">White between the two; null where the words stand on the picture's own foot.</param>
internal sealed class FigureFlow(Picture picture, string alt, double scale, bool fullWidth, bool centred, Flow? caption, double? gap) : Flow
{
    public override Taken? Take(Room room)
    {
        var words = caption?.Take(new Room(room.Width, double.MaxValue, true))?.Slab;
        var beneath = words is not null && gap is { } white ? words.Height + white : 0;
        var points = room.Width / picture.WidthMm;
        if (!fullWidth) points = Math.Min(points, scale);
        if (picture.HeightMm * points + beneath > room.Height)
        {
            if (!room.Last) return null;
            // Alone on its page and still too high: smaller, but never to nothing for the sake of a caption.
            points = Math.Min(points, Math.Max(room.Height - beneath, room.Height / 2) / picture.HeightMm);
        }
        double width = picture.WidthMm * points, height = picture.HeightMm * points;
        var left = centred ? (room.Width - width) / 2 : 0;
        // Beneath a picture in the middle its words begin where it does, unless they would need more lines there.
        var inset = 0.0;
        if (left > 0 && words is not null && caption?.Take(new Room(room.Width - left, double.MaxValue, true))?.Slab is { } beside && beside.Height <= words.Height) (words, inset) = (beside, left);
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        marks.Add(new PageMark.Open(Tag.Figure) { Alt = alt, Area = new Area(left, 0, width, height) });
        marks.Add(new PageMark.Drawing(picture, left, 0, points, 0, picture.WidthMm));
        if (words is not null)
        {
            marks.Add(new PageMark.Open(Tag.Caption));
            foreach (var mark in words.Marks) marks.Add(mark.Moved(inset, height + beneath - words.Height));
            marks.Add(PageMark.Close.It);
        }
        marks.Add(PageMark.Close.It);
        return new Taken(new Slab(height + beneath, marks.ToImmutable()), null);
    }
}

/// <summary>A picture at its true size, in as many lengths as the paper's width asks for. Every joint has a letter at both its sides.</summary>
internal sealed class StripFlow(Picture picture, string alt, TextLook look, Func<string, string> joinAt) : Flow
{
    private const double Point = 1 / PageSetup.PointMm;

    private int _from; // First length not yet laid.

    public override Taken? Take(Room room)
    {
        var longest = room.Width * PageSetup.PointMm;
        var lengths = Lengths(picture, longest);
        var high = picture.HeightMm * Point;
        var piece = high + (lengths > 1 ? 1.4 * look.Leading : 0);
        var fit = (int)Math.Min(lengths - _from, Math.Floor(room.Height / piece + 1e-9));
        // A strip lies on one page while a page can hold it.
        if (fit < lengths - _from && !room.Last) return null;
        fit = Math.Max(fit, 1);
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        if (_from == 0)
            marks.Add(new PageMark.Open(Tag.Figure)
            {
                Alt = alt,
                Area = new Area(0, 0, Math.Min(picture.WidthMm * Point, room.Width), fit * piece),
            });
        for (var i = 0; i < fit; i++)
        {
            var number = _from + i;
            var top = i * piece + (piece - high);
            double start = number * longest, end = Math.Min(picture.WidthMm, start + longest);
            var joint = top - look.Leading;
            if (number > 0) Joint(marks, number, 0, joint, top + high, CellAlign.Left);
            if (number < lengths - 1) Joint(marks, number + 1, room.Width, joint, top + high, CellAlign.Right);
            marks.Add(new PageMark.Drawing(picture, 0, top, Point, start, end));
        }
        if (_from + fit < lengths)
            return new Taken(new Slab(fit * piece, marks.ToImmutable()), new StripFlow(picture, alt, look, joinAt) { _from = _from + fit });
        marks.Add(PageMark.Close.It);
        return new Taken(new Slab(fit * piece, marks.ToImmutable()), null);
    }

    /// <summary>How many lengths a strip is cut into for paper that takes so much of it at once.</summary>
    public static int Lengths(Picture picture, double longestMm) => Math.Max(1, (int)Math.Ceiling(picture.WidthMm / longestMm - 1e-9));

    /// <summary>Letter of a joint: the first, number 1, is a; after z comes aa.</summary>
    public static string JointLetter(int number)
    {
        var letter = "";
        for (var n = number; n > 0; n = (n - 1) / 26) letter = (char)('a' + (n - 1) % 26) + letter;
        return letter;
    }

    private void Joint(ImmutableArray<PageMark>.Builder marks, int number, double x, double top, double bottom, CellAlign side)
    {
        marks.Add(new PageMark.Stroke(x, top, x, bottom, look.Size / 16, PageInks.Accent) { Dashed = true });
        // A space ends it for readers who join what follows.
        var words = LineBreaker.Break(joinAt(JointLetter(number)) + " ", look, double.MaxValue);
        var inset = look.Size / 3;
        if (words.Length > 0)
            TextFlow.Set(marks, words[0], look, side, side == CellAlign.Left ? inset : x - words[0].Width - inset, top, words[0].Width, false);
    }
}
