using System.Collections.Immutable;

namespace Coilwright.Core.Making;

/// <summary>A part of a step, as it is said: a run, something several times over, or beads of one kind with something between them.</summary>
/// <remarks>A closed list. Kinds are indices in the piece's list of beads.</remarks>
public abstract record StepPart
{
    private protected StepPart() { }

    /// <summary>Beads strung in it, all times together.</summary>
    public abstract int Beads { get; }

    /// <summary>The beads one by one, as they are strung.</summary>
    public abstract IEnumerable<int> Kinds { get; }
}

/// <summary>So many beads of one kind, one after the other: "3 A".</summary>
/// <param name="Kind">Index of the kind.</param>
/// <param name="Count">How many, 1 or more.</param>
public sealed record RunPart(int Kind, int Count) : StepPart
{
    /// <inheritdoc/>
    public override int Beads => Count;

    /// <inheritdoc/>
    public override IEnumerable<int> Kinds => Enumerable.Repeat(Kind, Count);
}

/// <summary>Parts that are strung several times over: "4 times (3 A, 1 B)".</summary>
/// <param name="Parts">What is strung each time, at least one.</param>
/// <param name="Times">How often, 2 or more.</param>
public sealed record RepeatPart(ImmutableArray<StepPart> Parts, int Times) : StepPart
{
    /// <inheritdoc/>
    public override int Beads => Parts.Sum(p => p.Beads) * Times;

    /// <inheritdoc/>
    public override IEnumerable<int> Kinds => Enumerable.Repeat(Parts, Times).SelectMany(once => once.SelectMany(p => p.Kinds));

    /// <summary>By what they hold: an array of parts is otherwise compared by where it lies.</summary>
    public bool Equals(RepeatPart? other) => other is not null && Times == other.Times && Parts.SequenceEqual(other.Parts);

    /// <inheritdoc/>
    public override int GetHashCode() => Parts.Aggregate(Times, HashCode.Combine);
}

/// <summary>Single beads of one kind with the same between each two of them: "5 A with 2 B between".</summary>
/// <param name="Kind">Index of the kind that stands first and last.</param>
/// <param name="Count">How many of it, 2 or more.</param>
/// <param name="Between">What stands between each two, at least one run, none of <paramref name="Kind"/> at either end.</param>
public sealed record BetweenPart(int Kind, int Count, ImmutableArray<RunPart> Between) : StepPart
{
    /// <inheritdoc/>
    public override int Beads => Count + (Count - 1) * Between.Sum(r => r.Count);

    /// <inheritdoc/>
    public override IEnumerable<int> Kinds =>
        Enumerable.Range(0, Count).SelectMany(i => i == 0 ? [Kind] : Between.SelectMany(r => r.Kinds).Append(Kind));

    /// <summary>By what they hold: an array of runs is otherwise compared by where it lies.</summary>
    public bool Equals(BetweenPart? other) => other is not null && (Kind, Count) == (other.Kind, other.Count) && Between.SequenceEqual(other.Between);

    /// <inheritdoc/>
    public override int GetHashCode() => Between.Aggregate(HashCode.Combine(Kind, Count), HashCode.Combine);
}
