using System.Collections.Immutable;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Core.Editing.Marking;

/// <summary>One thing to be strung, as an edit puts it on the wire: a bead, or a stringing of a named group with all its beads.</summary>
internal abstract record Thing
{
    private Thing() { }

    /// <summary>How many beads it is.</summary>
    public abstract int Beads { get; }

    /// <summary>A bead, by the index of its kind.</summary>
    public sealed record Bead(int Kind) : Thing
    {
        public override int Beads => 1;
    }

    /// <summary>A stringing of a group.</summary>
    /// <param name="Name">The group's name.</param>
    /// <param name="Backwards">Whether it is strung from its other end, against how its text is written.</param>
    /// <param name="Of">What it strings, in the order in which it is strung here.</param>
    public sealed record Group(string Name, bool Backwards, ImmutableArray<Thing> Of) : Thing
    {
        public override int Beads { get; } = Of.Sum(thing => thing.Beads);
    }
}

/// <summary>Things in a row.</summary>
internal static class Things
{
    /// <summary>What an order strings between two places. Groups that lie in it whole stay groups; of others only the beads are taken.</summary>
    /// <param name="order">The order.</param>
    /// <param name="map">Its map; null where it was given as a list, whose groups are never backwards.</param>
    /// <param name="first">Index of the first bead.</param>
    /// <param name="end">Index after the last.</param>
    public static ImmutableArray<Thing> Of(StringingOrder order, OrderMap? map, int first, int end)
    {
        var at = first;
        var next = FirstGroupFrom(order.Groups, first);
        return Until(end);

        ImmutableArray<Thing> Until(int until)
        {
            var things = ImmutableArray.CreateBuilder<Thing>();
            while (at < until)
            {
                if (next == order.Groups.Length || order.Groups[next].First > at)
                {
                    things.Add(new Thing.Bead(order.Kinds[at++]));
                    continue;
                }
                var group = next++;
                if (order.Groups[group].End > end) continue;
                things.Add(new Thing.Group(order.Groups[group].Name, map?.IsGroupBackwards(group) ?? false, Until(order.Groups[group].End)));
            }
            return things.ToImmutable();
        }
    }

    /// <summary>What a run of an order's text strings.</summary>
    public static ImmutableArray<Thing> Of(OrderRun run, OrderGroups names)
    {
        var things = ImmutableArray.CreateBuilder<Thing>();
        foreach (var item in run.Items) Add(item);
        return things.ToImmutable();

        void Add(OrderItem item)
        {
            for (var pass = 0; pass < item.Times; pass++)
            {
                if (pass > 0 && item.Separator is not null) Add(item.Separator);
                things.AddRange(Of(item.Part!, names));
            }
        }
    }

    private static ImmutableArray<Thing> Of(OrderPart part, OrderGroups names) => part switch
    {
        OrderNameUse use when names.Bead(use.Name.Text) is var kind and >= 0 => [new Thing.Bead(kind)],
        OrderNameUse use => [new Thing.Group(use.Name.Text, false, Of(names.Run(use.Name.Text), names))],
        OrderBracket { Name: not null } bracket => [new Thing.Group(bracket.Name.Text, false, Of(bracket.Run, names))],
        OrderBracket bracket => Of(bracket.Run, names),
        OrderBackwards backwards => Reversed(Of(backwards.Part, names)),
        OrderMirror mirror => Mirrored(mirror, names),
        _ => throw new System.Diagnostics.UnreachableException(),
    };

    private static ImmutableArray<Thing> Mirrored(OrderMirror mirror, OrderGroups names)
    {
        var half = Of(mirror.Half, names);
        var things = half.ToBuilder();
        if (mirror.Centre is { } centre)
            for (var pass = 0; pass < centre.Times; pass++)
                things.AddRange(Of(centre.Part!, names));
        things.AddRange(Reversed(half));
        return things.ToImmutable();
    }

    /// <summary>The same things from the other end.</summary>
    public static ImmutableArray<Thing> Reversed(ImmutableArray<Thing> things) =>
        [.. things.Reverse().Select(thing => thing is Thing.Group group ? new Thing.Group(group.Name, !group.Backwards, Reversed(group.Of)) : thing)];

    /// <summary>Whether two rows are the same beads in the same groups.</summary>
    public static bool Same(ImmutableArray<Thing> some, ImmutableArray<Thing> others)
    {
        if (some.Length != others.Length) return false;
        for (var i = 0; i < some.Length; i++)
        {
            var alike = (some[i], others[i]) switch
            {
                (Thing.Bead one, Thing.Bead other) => one.Kind == other.Kind,
                (Thing.Group one, Thing.Group other) => one.Name == other.Name && Same(one.Of, other.Of),
                _ => false,
            };
            if (!alike) return false;
        }
        return true;
    }

    /// <summary>Whether a row is the same from either end.</summary>
    public static bool IsSameFromBothEnds(ImmutableArray<Thing> things) => Same(things, Reversed(things));

    /// <summary>How many beads a row is; saturates far above any limit.</summary>
    public static long Beads(ImmutableArray<Thing> things)
    {
        long beads = 0;
        foreach (var thing in things) beads += thing.Beads;
        return beads;
    }

    private static int FirstGroupFrom(ImmutableArray<GroupRun> groups, int first)
    {
        var (low, high) = (0, groups.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            if (groups[middle].First >= first) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
