using System.Collections.Immutable;

namespace Coilwright.Core.Pieces;

/// <summary>A rule that the order is to keep. A closed list: the rules are those of this file.</summary>
/// <remarks>Its names are beads, and then it is kept bead by bead, or groups, and then it is kept group by group, whatever stands between. A rule judges
/// the order and binds ideas for better ones; it never changes anything.</remarks>
public abstract record OrderRule
{
    private OrderRule() { }

    /// <summary>The names that it is about, its own first.</summary>
    public abstract ImmutableArray<string> Named { get; }

    /// <summary>No more than so many of one kind in a row.</summary>
    /// <param name="Name">The bead or group.</param>
    /// <param name="Most">The most, 1 or more.</param>
    public sealed record LongestRun(string Name, int Most) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => [Name];
    }

    /// <summary>No more than so many of one kind, or of several together, among any so many that stand next to each other.</summary>
    /// <param name="Names">The beads, or the groups.</param>
    /// <param name="UpTo">The most of them, 0 or more.</param>
    /// <param name="OfAny">Among so many neighbours, more than <paramref name="UpTo"/>. A shorter order is held to it as a whole.</param>
    public sealed record InAnyRow(ImmutableArray<string> Names, int UpTo, int OfAny) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => Names;

        /// <summary>Equal when the names and numbers are.</summary>
        public bool Equals(InAnyRow? other) => other is not null && UpTo == other.UpTo && OfAny == other.OfAny && Names.SequenceEqual(other.Names);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(UpTo, OfAny, Names.Length);
    }

    /// <summary>Two kinds never stand next to each other.</summary>
    /// <param name="Name">The one.</param>
    /// <param name="Beside">The other; may be the same.</param>
    public sealed record Apart(string Name, string Beside) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => [Name, Beside];
    }

    /// <summary>Each of a kind has one of another kind next to it, before or after.</summary>
    /// <param name="Name">The kind of which each must.</param>
    /// <param name="Beside">The kind that must stand there.</param>
    public sealed record Together(string Name, string Beside) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => [Name, Beside];
    }

    /// <summary>The order begins with a kind.</summary>
    /// <param name="Name">The bead or group.</param>
    public sealed record StartsWith(string Name) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => [Name];
    }

    /// <summary>The order ends with a kind.</summary>
    /// <param name="Name">The bead or group.</param>
    public sealed record EndsWith(string Name) : OrderRule
    {
        /// <inheritdoc/>
        public override ImmutableArray<string> Named => [Name];
    }

    /// <summary>The same rule with another name in place of one.</summary>
    public OrderRule Renamed(string from, string to)
    {
        string New(string name) => name == from ? to : name;
        return this switch
        {
            LongestRun run => run with { Name = New(run.Name) },
            InAnyRow row => row with { Names = [.. row.Names.Select(New)] },
            Apart apart => new Apart(New(apart.Name), New(apart.Beside)),
            Together together => new Together(New(together.Name), New(together.Beside)),
            StartsWith starts => new StartsWith(New(starts.Name)),
            EndsWith ends => new EndsWith(New(ends.Name)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
    }

    /// <summary>The same rule without names that are not known any more; null when nothing is left of it.</summary>
    public OrderRule? OnlyOf(Func<string, bool> isKnown)
    {
        if (Named.All(isKnown)) return this;
        return this is InAnyRow row && row.Names.Any(isKnown) ? row with { Names = [.. row.Names.Where(isKnown)] } : null;
    }
}
