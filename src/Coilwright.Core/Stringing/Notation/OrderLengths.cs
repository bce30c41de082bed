namespace Coilwright.Core.Stringing.Notation;

/// <summary>How many beads each part of a sound tree strings. Worked out once for each part that is asked for.</summary>
internal sealed class OrderLengths(OrderGroups names)
{
    private readonly Dictionary<OrderNode, int> _known = [];

    /// <summary>The kind of bead that a name is; -1 for a group's name.</summary>
    public int KindOf(OrderNameUse use) => names.Bead(use.Name.Text);

    /// <summary>Beads of items one after another.</summary>
    public int Of(OrderRun run)
    {
        if (_known.TryGetValue(run, out var count)) return count;
        foreach (var item in run.Items) count += Of(item);
        return _known[run] = count;
    }

    /// <summary>Beads of an item, everything counted out.</summary>
    public int Of(OrderItem item)
    {
        var part = Of(item.Part!);
        return item.Times == 1 ? part : item.Times * part + (item.Times - 1) * OfSeparator(item);
    }

    /// <summary>Beads of what goes between two of an item's part; 0 when nothing does.</summary>
    public int OfSeparator(OrderItem item) => item.Separator is null ? 0 : Of(item.Separator);

    /// <summary>Beads of a part strung once.</summary>
    public int Of(OrderPart part)
    {
        switch (part)
        {
            case OrderNameUse use when KindOf(use) >= 0:
                return 1;
            case OrderNameUse use:
                return Of(names.Run(use.Name.Text));
            case OrderBracket bracket:
                return Of(bracket.Run);
            case OrderBackwards backwards:
                return Of(backwards.Part);
            case OrderMirror mirror:
                return 2 * Of(mirror.Half) + (mirror.Centre is null ? 0 : Of(mirror.Centre));
            default:
                throw new System.Diagnostics.UnreachableException();
        }
    }
}
