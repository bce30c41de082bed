using System.Collections.Immutable;

namespace Coilwright.Core.Stringing;

/// <summary>One stringing of a named group: a run of neighbouring beads that reads as one thing.</summary>
/// <param name="Name">The group's name; groups of one name are of one kind, also when mirrored.</param>
/// <param name="First">Index of its first bead in the order, from 0.</param>
/// <param name="Count">How many beads it has, 1 or more.</param>
public sealed record GroupRun(string Name, int First, int Count)
{
    /// <summary>Index after its last bead.</summary>
    public int End => First + Count;
}

/// <summary>The stringing order: the beads on the wire, one by one, from the starting end, with the named groups that they stand in.</summary>
/// <remarks>The flat outcome of the order's text or list. It is not the text: that keeps its comments and spacing in its own tree.
/// Where a group stands in another, both are here; the innermost one is what reads as one thing (<see cref="ReadingGroups"/>).</remarks>
public sealed class StringingOrder
{
    private readonly ImmutableArray<int> _kinds;

    /// <summary>Makes an order.</summary>
    /// <param name="kinds">For each bead, the index of its kind in the piece's list of beads.</param>
    /// <param name="groups">Every stringing of a named group, outer before inner, by first bead.</param>
    public StringingOrder(ImmutableArray<int> kinds, ImmutableArray<GroupRun> groups)
    {
        if (kinds.IsDefaultOrEmpty) throw new ArgumentException("An order strings at least one bead.", nameof(kinds));
        _kinds = kinds;
        Groups = groups;
    }

    /// <summary>How many beads are strung.</summary>
    public int Count => _kinds.Length;

    /// <summary>For each bead, the index of its kind in the piece's list of beads.</summary>
    public ImmutableArray<int> Kinds => _kinds;

    /// <summary>Every stringing of a named group.</summary>
    public ImmutableArray<GroupRun> Groups { get; }

    /// <summary>The groups that read as one thing: those with no other group inside them, by first bead. They never overlap.</summary>
    public ImmutableArray<GroupRun> ReadingGroups
    {
        get
        {
            // Outer before inner: a group has another inside it exactly when the next one starts before it ends.
            var innermost = ImmutableArray.CreateBuilder<GroupRun>();
            for (var i = 0; i < Groups.Length; i++)
                if (i + 1 == Groups.Length || Groups[i + 1].First >= Groups[i].End)
                    innermost.Add(Groups[i]);
            return innermost.ToImmutable();
        }
    }

    /// <summary>The order cut into the groups that read as one thing and what is strung between them: every bead is in exactly one stretch.</summary>
    public ImmutableArray<Stretch> Stretches
    {
        get
        {
            var stretches = ImmutableArray.CreateBuilder<Stretch>();
            var next = 0;
            foreach (var group in ReadingGroups)
            {
                if (group.First > next) stretches.Add(new Stretch(null, next, group.First - next));
                stretches.Add(new Stretch(group.Name, group.First, group.Count));
                next = group.End;
            }
            if (next < Count) stretches.Add(new Stretch(null, next, Count - next));
            return stretches.ToImmutable();
        }
    }
}

/// <summary>Neighbouring beads of an order: a group that reads as one thing, or what is strung between two of them.</summary>
/// <param name="Group">The group's name; null between groups.</param>
/// <param name="First">Index of its first bead, from 0.</param>
/// <param name="Count">How many beads, 1 or more.</param>
public sealed record Stretch(string? Group, int First, int Count);
