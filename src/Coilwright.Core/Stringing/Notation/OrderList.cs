using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Stringing.Notation;

/// <summary>One item of an order written as a flat list: a bead, or a stringing of a named group with all its beads.</summary>
/// <remarks>Equality is that of the beads' ids and the groups' names; two groups' lists are equal when they are the same list.</remarks>
public abstract record OrderListItem
{
    private OrderListItem() { }

    /// <summary>One bead.</summary>
    /// <param name="Id">Its id.</param>
    public sealed record Bead(string Id) : OrderListItem;

    /// <summary>One stringing of a named group, bead by bead as strung here.</summary>
    /// <param name="Name">The group's name.</param>
    /// <param name="Of">Its beads and the groups inside it, at least one.</param>
    public sealed record Group(string Name, ImmutableArray<OrderListItem> Of) : OrderListItem;
}

/// <summary>The flat form of an order, as other programs write it: every bead spelled out.</summary>
/// <remarks>The rules are those of the notation, but for one: since a list spells out every stringing, a group's name may come again, with the same
/// beads or with others. A name that is written out is not used bare.</remarks>
public static class OrderList
{
    /// <summary>Reads an order from its flat form.</summary>
    /// <param name="items">The items from the starting end.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    /// <returns>The order, or faults with field paths into the list, as <c>[3]</c> or <c>[2].of[0]</c>.</returns>
    public static ReadOrder Read(IReadOnlyList<OrderListItem> items, IReadOnlyList<string> beadIds)
    {
        var reader = new Reader(beadIds);
        reader.ReadAll(items);
        return reader.Outcome();
    }

    /// <summary>The flat form of an order. Reading it gives an equal order.</summary>
    /// <param name="order">The order.</param>
    /// <param name="beadIds">Ids of the piece's beads, in the piece's order.</param>
    public static ImmutableArray<OrderListItem> Of(StringingOrder order, IReadOnlyList<string> beadIds)
    {
        var open = new Stack<(GroupRun? Group, ImmutableArray<OrderListItem>.Builder Items)>();
        open.Push((null, ImmutableArray.CreateBuilder<OrderListItem>()));
        var next = 0;
        for (var i = 0; i < order.Count; i++)
        {
            for (; next < order.Groups.Length && order.Groups[next].First == i; next++)
                open.Push((order.Groups[next], ImmutableArray.CreateBuilder<OrderListItem>()));
            open.Peek().Items.Add(new OrderListItem.Bead(beadIds[order.Kinds[i]]));
            while (open.Peek().Group is { } group && group.End == i + 1)
            {
                var done = open.Pop();
                open.Peek().Items.Add(new OrderListItem.Group(group.Name, done.Items.ToImmutable()));
            }
        }
        if (open.Count != 1) throw new ArgumentException("The order's groups do not lie inside one another.", nameof(order));
        return open.Pop().Items.ToImmutable();
    }

    private sealed class Reader(IReadOnlyList<string> beadIds)
    {
        private readonly Dictionary<string, int> _beads = Indexed(beadIds);
        private readonly ImmutableArray<int>.Builder _kinds = ImmutableArray.CreateBuilder<int>();
        private readonly List<GroupRun> _groups = [];
        private readonly ImmutableArray<Fault>.Builder _faults = ImmutableArray.CreateBuilder<Fault>();

        // Where reading stands: the indexes from the outside in, and the names of the groups around.
        private readonly List<int> _path = [];
        private readonly List<string> _around = [];
        private bool _stopped;

        public void ReadAll(IReadOnlyList<OrderListItem> items)
        {
            if (items.Count == 0) Tell(FaultCodes.OrderEmpty, "", "");
            _path.Add(0);
            for (var i = 0; i < items.Count && !_stopped; i++)
            {
                _path[^1] = i;
                if (items[i] is OrderListItem.Group group) ReadGroup(group);
                else if (items[i] is OrderListItem.Bead bead) ReadBead(bead.Id);
            }
            _path.RemoveAt(_path.Count - 1);
        }

        public ReadOrder Outcome() =>
            _faults.Count > 0 ? new ReadOrder(null, _faults.ToImmutable()) : new ReadOrder(new StringingOrder(_kinds.ToImmutable(), [.. _groups]), []);

        private void ReadBead(string id)
        {
            if (_kinds.Count == OrderLimits.Beads)
            {
                Tell(FaultCodes.OrderTooMany, "", "", ("max", OrderFaultList.Number(OrderLimits.Beads)));
                _stopped = true;
                return;
            }
            if (!_beads.TryGetValue(id, out var kind))
            {
                if (!OrderLexer.IsName(id)) TellMalformed(id, "");
                else Add(OrderFaultList.WithNearest(Fault.Of(FaultCodes.OrderUnknownName, Field(""), OrderFaultList.Clipped(id)), id, beadIds));
            }
            _kinds.Add(kind);
        }

        private void ReadGroup(OrderListItem.Group group)
        {
            if (_around.Count == OrderLimits.Depth)
            {
                Tell(FaultCodes.OrderTooDeep, group.Name, "", ("max", OrderFaultList.Number(OrderLimits.Depth)));
                return;
            }
            if (_groups.Count == OrderLimits.GroupStringings)
            {
                Tell(FaultCodes.OrderTooManyGroups, "", "", ("max", OrderFaultList.Number(OrderLimits.GroupStringings)));
                _stopped = true;
                return;
            }
            CheckGroupName(group.Name);
            var (index, first) = (_groups.Count, _kinds.Count);
            _groups.Add(new GroupRun(group.Name, first, 1));
            if (group.Of.IsDefaultOrEmpty)
            {
                Tell(FaultCodes.OrderEmpty, group.Name, ".of");
                return;
            }
            _around.Add(group.Name);
            ReadAll(group.Of);
            _around.RemoveAt(_around.Count - 1);
            _groups[index] = new GroupRun(group.Name, first, _kinds.Count - first);
        }

        private void CheckGroupName(string name)
        {
            if (OrderWords.Reserved.Contains(name)) Tell(FaultCodes.OrderNameReserved, name, ".group", ("known", string.Join(", ", OrderWords.Reserved)));
            else if (!OrderLexer.IsName(name)) TellMalformed(name, ".group");
            else if (_beads.ContainsKey(name)) Tell(FaultCodes.OrderGroupIsBead, name, ".group");
            else if (_around.IndexOf(name) is var from and >= 0)
                Tell(FaultCodes.OrderGroupInItself, name, "", ("path", string.Join(" > ", _around.Skip(from).Append(name))));
        }

        private void TellMalformed(string name, string field)
        {
            if (name.Length == 0)
            {
                Tell(FaultCodes.TextEmpty, "", field);
                return;
            }
            var (fault, near) = OrderFaultList.NameForm(Field(field), name);
            Add(OrderFaultList.WithNearest(fault, near, beadIds));
        }

        private void Tell(string code, string value, string field, params ReadOnlySpan<(string Name, string Value)> values) =>
            Add(Fault.Of(code, Field(field), OrderFaultList.Clipped(value), values));

        private void Add(Fault fault)
        {
            _faults.Add(fault);
            if (_faults.Count == OrderLimits.FaultsTold) _stopped = true;
        }

        private string Field(string last) =>
            string.Join(".of", _path.Select(index => "[" + index.ToString(CultureInfo.InvariantCulture) + "]")) + last;

        private static Dictionary<string, int> Indexed(IReadOnlyList<string> beadIds)
        {
            var indexes = new Dictionary<string, int>(StringComparer.Ordinal);
            for (var i = 0; i < beadIds.Count; i++) indexes.TryAdd(beadIds[i], i);
            return indexes;
        }
    }
}
