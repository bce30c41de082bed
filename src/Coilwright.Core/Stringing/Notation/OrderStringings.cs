namespace Coilwright.Core.Stringing.Notation;

/// <summary>Walks an order's text along the wire, part by part.</summary>
internal static class OrderStringings
{
    /// <summary>Every stringing of every part that strings anything, each before those inside it; those that stand side by side in no promised order.
    /// A count of many takes one step for each, so this takes time in line with the beads strung.</summary>
    public static IEnumerable<(OrderNode Node, OrderStringing Stringing)> All(OrderMap map)
    {
        var open = new Stack<(OrderNode Node, OrderStringing Stringing)>();
        foreach (var child in Top(map)) open.Push(child);
        while (open.TryPop(out var at))
        {
            yield return at;
            foreach (var child in Inside(map, at.Node, at.Stringing)) open.Push(child);
        }
    }

    /// <summary>The parts that string certain neighbouring beads together, from the outside in.</summary>
    public static IEnumerable<(OrderNode Node, OrderStringing Stringing)> Around(OrderMap map, int first, int count)
    {
        var children = Top(map);
        while (true)
        {
            var inner = children.FirstOrDefault(child => child.Stringing.First <= first && child.Stringing.End >= first + count);
            if (inner.Node is null) yield break;
            yield return inner;
            children = Inside(map, inner.Node, inner.Stringing);
        }
    }

    private static IEnumerable<(OrderNode Node, OrderStringing Stringing)> Top(OrderMap map)
    {
        var at = 0;
        foreach (var entry in map.Tree.Entries)
        {
            if (entry is not OrderItem item) continue;
            var length = map.Lengths.Of(item);
            yield return (item, new OrderStringing(at, length, false));
            at += length;
        }
    }

    private static IEnumerable<(OrderNode Node, OrderStringing Stringing)> Inside(OrderMap map, OrderNode node, OrderStringing at)
    {
        switch (node)
        {
            case OrderRun run:
                return OneAfterAnother(run.Items.Select(item => ((OrderNode)item, map.Lengths.Of(item), false)), at);
            case OrderItem { Times: 1 } item:
                return [(item.Part!, at)];
            case OrderItem item:
                return OneAfterAnother(Passes(map, item), at);
            case OrderNameUse use when map.Names.Bead(use.Name.Text) < 0:
                return [(map.Names.Run(use.Name.Text), at)];
            case OrderBracket bracket:
                return [(bracket.Run, at)];
            case OrderBackwards backwards:
                return [(backwards.Part, at with { Backwards = !at.Backwards })];
            case OrderMirror mirror:
                var half = map.Lengths.Of(mirror.Half);
                IEnumerable<(OrderNode, int, bool)> halves = mirror.Centre is null
                    ? [(mirror.Half, half, false), (mirror.Half, half, true)]
                    : [(mirror.Half, half, false), (mirror.Centre, map.Lengths.Of(mirror.Centre), false), (mirror.Half, half, true)];
                return OneAfterAnother(halves, at);
            default:
                return [];
        }
    }

    private static IEnumerable<(OrderNode Node, int Length, bool Turned)> Passes(OrderMap map, OrderItem item)
    {
        for (var pass = 0; pass < item.Times; pass++)
        {
            if (pass > 0 && item.Separator is not null) yield return (item.Separator, map.Lengths.Of(item.Separator), false);
            yield return (item.Part!, map.Lengths.Of(item.Part!), false);
        }
    }

    private static IEnumerable<(OrderNode Node, OrderStringing Stringing)> OneAfterAnother(IEnumerable<(OrderNode Node, int Length, bool Turned)> children,
        OrderStringing at)
    {
        var from = 0;
        foreach (var (node, length, turned) in children)
        {
            yield return (node, new OrderStringing(at.Backwards ? at.End - from - length : at.First + from, length, at.Backwards != turned));
            from += length;
        }
    }
}
