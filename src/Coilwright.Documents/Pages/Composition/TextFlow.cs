using System.Collections.Immutable;
using Coilwright.Documents.Typefaces;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>Text in lines. Never leaves a single line of several behind at a page's end or start, unless a page holds no more.</summary>
internal sealed class TextFlow(RichText text, TextLook look, CellAlign align = CellAlign.Left) : Flow
{
    private ImmutableArray<SetLine> _lines;
    private double _width;
    private int _from;

    public override Taken? Take(Room room)
    {
        // What is left of a text keeps its lines: columns and pages of one flow are equally wide.
        if (_lines.IsDefault || (_from == 0 && _width != room.Width)) (_lines, _width) = (LineBreaker.Break(text, look, room.Width), room.Width);
        var left = _lines.Length - _from;
        if (left == 0) return new Taken(new Slab(0, []), null);
        var fit = (int)Math.Min(left, Math.Floor(room.Height / look.Leading + 1e-9));
        if (fit < left && left - fit < 2) fit = left - 2;
        if (fit < left && fit < 2 && !room.Last) return null;
        if (fit < 1)
        {
            if (!room.Last) return null;
            fit = Math.Clamp((int)Math.Floor(room.Height / look.Leading + 1e-9), 1, left);
        }
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        for (var i = 0; i < fit; i++) Set(marks, _lines[_from + i], look, align, 0, i * look.Leading, room.Width, false);
        var rest = fit == left ? null : new TextFlow(text, look, align) { _lines = _lines, _width = _width, _from = _from + fit };
        return new Taken(new Slab(fit * look.Leading, marks.ToImmutable()), rest);
    }

    /// <summary>Puts down a line with its top left corner at a place.</summary>
    public static void Set(ImmutableArray<PageMark>.Builder marks, SetLine line, TextLook look, CellAlign align, double x, double top, double width,
        bool decoration)
    {
        var left = x + align switch
        {
            CellAlign.Right => width - line.Width,
            CellAlign.Centre => (width - line.Width) / 2,
            _ => 0,
        };
        var baseline = top + look.Drop;
        foreach (var run in line.Runs)
        {
            if (!run.Ringed)
            {
                marks.Add(new PageMark.Letters(run.Text, left + run.X, baseline, run.Face, look.Size, run.Ink) { Decoration = decoration });
                continue;
            }
            var face = HouseFaces.Of(run.Face);
            var letters = face.WidthEm(run.Text) * look.Size;
            var height = LineBreaker.RingHeight * look.Size;
            var gap = LineBreaker.RingGap * look.Size;
            var ring = new Area(left + run.X + gap, baseline - face.CapHeightEm * look.Size / 2 - height / 2, run.Width - 2 * gap, height);
            marks.Add(new PageMark.Ring(ring, height / 2, look.Size / 18, run.Ink));
            marks.Add(new PageMark.Letters(run.Text, left + run.X + (run.Width - letters) / 2, baseline, run.Face, look.Size, run.Ink)
            {
                Decoration = decoration,
            });
        }
    }
}

/// <summary>A label in the margin of its text: a number, a dot, a box to tick.</summary>
internal sealed class Labelled(ImmutableArray<PageMark> label, double indent, Flow inner) : Flow
{
    public override Taken? Take(Room room)
    {
        if (inner.Take(room with { Width = room.Width - indent }) is not { } taken) return null;
        var marks = taken.Slab.Marks.Select(m => m.Moved(indent, 0));
        return new Taken(new Slab(taken.Slab.Height, [.. label, .. marks]), taken.Rest is null ? null : new Labelled([], indent, taken.Rest));
    }
}

/// <summary>A short thick line of the accent, under a title.</summary>
internal sealed class BarFlow(double width, double height) : Flow
{
    public override Taken? Take(Room room) => room.Height < height && !room.Last ? null
        : new(new Slab(height, [new PageMark.Fill(new Area(0, 0, Math.Min(width, room.Width), height), 0, PageInks.Accent)]), null);
}

/// <summary>A box for what must not be missed: the accent along its left edge, and a pale ground where ink is not spared.</summary>
internal sealed class NoteFlow(Flow inner, double padding, double bar, bool grounded) : Flow
{
    public override Taken? Take(Room room)
    {
        var inside = new Room(room.Width - 2 * padding - bar, room.Height - 2 * padding, room.Last);
        if (inner.Take(inside) is not { } taken) return null;
        if (taken.Rest is not null && !room.Last) return null;
        var height = taken.Slab.Height + 2 * padding;
        return new Taken(new Slab(height,
        [
            .. grounded ? [new PageMark.Fill(new Area(0, 0, room.Width, height), 0, PageInks.Wash)] : Array.Empty<PageMark>(),
            new PageMark.Fill(new Area(0, 0, bar, height), 0, PageInks.Accent),
            .. taken.Slab.Marks.Select(m => m.Moved(bar + padding, padding)),
        ]), taken.Rest is null ? null : new NoteFlow(taken.Rest, padding, bar, grounded));
    }
}
