using System.Collections.Immutable;

namespace Coilwright.Documents.Pages.Composition;

/// <summary>A flow through columns of equal width: as low as they can be while their order stands, so that they end about level.</summary>
internal sealed class ColumnsFlow(int count, double gutter, double step, Flow inner) : Flow
{
    public override Taken? Take(Room room)
    {
        var width = (room.Width - gutter * (count - 1)) / count;
        if (Fill(width, room.Height, room.Last) is not { } full) return null;
        if (full.Rest is not null)
            return new Taken(full.Slab, new ColumnsFlow(count, gutter, step, full.Rest) { Before = Before, After = After });
        // All of it fits: the lowest height at which it still does, to a fraction of a line.
        double low = 0, high = full.Slab.Height;
        var best = full;
        while (high - low > step)
        {
            var middle = (low + high) / 2;
            if (Fill(width, middle, false) is { Rest: null } lower) (high, best) = (middle, lower);
            else low = middle;
        }
        return best;
    }

    private Taken? Fill(double width, double height, bool last)
    {
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        var used = 0.0;
        var rest = inner;
        for (var i = 0; i < count && rest is not null; i++)
        {
            if (rest.Take(new Room(width, height, last)) is not { } taken)
            {
                if (i == 0) return null;
                break;
            }
            foreach (var mark in taken.Slab.Marks) marks.Add(mark.Moved(i * (width + gutter), 0));
            used = Math.Max(used, taken.Slab.Height);
            rest = taken.Rest;
        }
        return new Taken(new Slab(used, marks.ToImmutable()), rest);
    }
}

/// <summary>Flows side by side on one page; one under the other where the tallest is higher than a page.</summary>
internal sealed class BesideFlow(ImmutableArray<(double Share, Flow Flow)> cells, double gutter, double gap) : Flow
{
    public override Taken? Take(Room room)
    {
        var shares = cells.Sum(c => c.Share);
        var width = room.Width - gutter * (cells.Length - 1);
        var marks = ImmutableArray.CreateBuilder<PageMark>();
        double x = 0, height = 0;
        foreach (var (share, flow) in cells)
        {
            var own = width * share / shares;
            if (flow.Take(new Room(own, double.MaxValue, true)) is not { Rest: null } taken) continue;
            foreach (var mark in taken.Slab.Marks) marks.Add(mark.Moved(x, 0));
            height = Math.Max(height, taken.Slab.Height);
            x += own + gutter;
        }
        if (height <= room.Height) return new Taken(new Slab(height, marks.ToImmutable()), null);
        return room.Last ? new Sequence([.. cells.SelectMany<(double, Flow Flow), Flow>(c => [c.Flow, new White(gap)])]).Take(room) : null;
    }
}
