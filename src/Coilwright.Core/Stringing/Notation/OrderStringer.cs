using System.Runtime.InteropServices;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>Strings a sound tree bead by bead. Its size is known beforehand and within the limits; its depth too, so that it may call itself.</summary>
internal sealed class OrderStringer
{
    private readonly OrderGroups _names;
    private readonly int[] _kinds;
    private readonly List<GroupRun> _groups;

    // Where each bead and each stringing of a group was written, where that is asked for.
    private readonly OrderSource[]? _beadSources;
    private readonly List<OrderSource>? _groupSources;
    private int _count;

    private OrderStringer(OrderGroups names, bool withSources)
    {
        _names = names;
        _kinds = new int[names.Whole.Beads];
        _groups = new List<GroupRun>((int)names.Whole.Groups);
        if (!withSources) return;
        _beadSources = new OrderSource[_kinds.Length];
        _groupSources = new List<OrderSource>(_groups.Capacity);
    }

    public static StringingOrder String(OrderTree tree, OrderGroups names) => Strung(tree, names, withSources: false).Order;

    /// <summary>The order, and the part of the tree that wrote each bead and each stringing of a group.</summary>
    public static (StringingOrder Order, OrderSource[] Beads, List<OrderSource> Groups) StringWithSources(OrderTree tree, OrderGroups names)
    {
        var strung = Strung(tree, names, withSources: true);
        return (strung.Order, strung._beadSources!, strung._groupSources!);
    }

    private StringingOrder Order => new(ImmutableCollectionsMarshal.AsImmutableArray(_kinds), [.. _groups]);

    private static OrderStringer Strung(OrderTree tree, OrderGroups names, bool withSources)
    {
        var stringer = new OrderStringer(names, withSources);
        foreach (var entry in tree.Entries)
            if (entry is OrderItem item)
                stringer.Add(item, backwards: false);
        return stringer;
    }

    private void Add(OrderRun run, bool backwards)
    {
        for (var i = 0; i < run.Items.Length; i++) Add(run.Items[backwards ? run.Items.Length - 1 - i : i], backwards);
    }

    private void Add(OrderItem item, bool backwards)
    {
        var (beads, groups) = (_count, _groups.Count);
        Add(item.Part!, backwards);
        if (item.Times == 1) return;
        var (partBeads, partGroups) = (_count, _groups.Count);
        // From its other end a row with something between is still parts with that between, so one way of counting out serves both.
        if (item.Separator is not null) Add(item.Separator, backwards);
        var (unitBeads, unitGroups) = (_count, _groups.Count);
        for (var i = 2; i < item.Times; i++) Copy(beads, unitBeads, groups, unitGroups);
        Copy(beads, partBeads, groups, partGroups);
    }

    private void Add(OrderPart part, bool backwards)
    {
        switch (part)
        {
            case OrderNameUse use when _names.Bead(use.Name.Text) is var bead and >= 0:
                if (_beadSources is not null) _beadSources[_count] = new OrderSource(use, backwards);
                _kinds[_count++] = bead;
                break;
            case OrderNameUse use:
                AddGroup(use, use.Name.Text, _names.Run(use.Name.Text), backwards);
                break;
            case OrderBracket { Name: not null } bracket:
                AddGroup(bracket, bracket.Name.Text, bracket.Run, backwards);
                break;
            case OrderBracket bracket:
                Add(bracket.Run, backwards);
                break;
            case OrderMirror mirror:
                // Half, centre, half from its other end. From the other end that is: half, centre from its other end, half from its other end.
                Add(mirror.Half, backwards: false);
                if (mirror.Centre is not null) Add(mirror.Centre, backwards);
                Add(mirror.Half, backwards: true);
                break;
            case OrderBackwards inner:
                Add(inner.Part, !backwards);
                break;
        }
    }

    private void AddGroup(OrderPart part, string name, OrderRun run, bool backwards)
    {
        var (index, first) = (_groups.Count, _count);
        _groupSources?.Add(new OrderSource(part, backwards));
        _groups.Add(new GroupRun(name, first, 1)); // holds its place before the groups inside it; its count follows
        Add(run, backwards);
        _groups[index] = new GroupRun(name, first, _count - first);
    }

    /// <summary>Strings once more what was strung from one bead to another.</summary>
    private void Copy(int firstBead, int endBead, int firstGroup, int endGroup)
    {
        var shift = _count - firstBead;
        Array.Copy(_kinds, firstBead, _kinds, _count, endBead - firstBead);
        if (_beadSources is not null) Array.Copy(_beadSources, firstBead, _beadSources, _count, endBead - firstBead);
        _count += endBead - firstBead;
        for (var i = firstGroup; i < endGroup; i++)
        {
            _groups.Add(_groups[i] with { First = _groups[i].First + shift });
            _groupSources?.Add(_groupSources[i]);
        }
    }
}

/// <summary>The part of a tree that wrote a bead or a stringing of a group, and whether it was strung from its other end.</summary>
internal readonly record struct OrderSource(OrderPart Part, bool Backwards);
