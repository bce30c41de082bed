using System.Collections.Immutable;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Alignment;

/// <summary>How a piece lines up, in a maker's words.</summary>
public enum LiningUpWord
{
    /// <summary>Like lies over like.</summary>
    LinesUp,

    /// <summary>Neither one nor the other.</summary>
    Between,

    /// <summary>Like seldom lies over like.</summary>
    Mixed,

    /// <summary>Too little lies over anything to say.</summary>
    TooLittle,
}

/// <summary>What lies over what on neighbouring turns. Model: docs/theory/lining-up.md.</summary>
/// <remarks>A reading that is null has its reason in <see cref="WhyNull"/> under its JSON name.</remarks>
public sealed record LiningUpReport
{
    /// <summary>Headline: of the length of groups that lies over anything, the share over a group of its own kind; averaged over the uncertainty of T.</summary>
    public required double? Cover { get; init; }

    /// <summary>The same exactly at T.</summary>
    public required double? CoverExact { get; init; }

    /// <summary>The headline in words.</summary>
    public required LiningUpWord Word { get; init; }

    /// <summary>Whether the groups are runs of one kind, for want of named groups in the order.</summary>
    public required bool GroupsAreRuns { get; init; }

    /// <summary>By bead: likeness over what lies over anything, exactly at T (S).</summary>
    public required double? Share { get; init; }

    /// <summary>What chance would give with the same beads (S0).</summary>
    public required double? Chance { get; init; }

    /// <summary>Share against chance (S / S0), exactly at T.</summary>
    public required double? Relative { get; init; }

    /// <summary>The same averaged over the uncertainty of T.</summary>
    public required double? RelativeAveraged { get; init; }

    /// <summary>Share of shuffles of the same beads that line up less.</summary>
    public required double? Rank { get; init; }

    /// <summary>Same kind over same kind against chance, exactly at T.</summary>
    public required double? StrictRelative { get; init; }

    /// <summary>Same kind over same kind, exactly at T, before division by chance.</summary>
    public required double? StrictShare { get; init; }

    /// <summary>Length that lies over anything, hidden parts left out, mm.</summary>
    public required double OverMm { get; init; }

    /// <summary>Length left out because a focal hides it, mm.</summary>
    public required double HiddenMm { get; init; }

    /// <summary>Groups over their own kind, nearest to square first.</summary>
    public required ImmutableArray<LiningUpPair> Pairs { get; init; }

    /// <summary>Each kind over itself.</summary>
    public required ImmutableArray<KindOverKind> Kinds { get; init; }

    /// <summary>Headline of the groups that should mix, averaged; null when none should, or too little of them lies over anything.</summary>
    public required double? MixCover { get; init; }

    /// <summary>Headline of the groups that should stand in columns, averaged; null when none should, or too little of them lies over anything.</summary>
    public required double? ColumnsCover { get; init; }

    /// <summary>Whether what should mix lines up. What cannot be judged does not fail.</summary>
    public required bool FailsMix { get; init; }

    /// <summary>Whether what should stand in columns does not line up. What cannot be judged does not fail.</summary>
    public required bool FailsColumns { get; init; }

    /// <summary>Whether it fails the piece's wish, either way.</summary>
    public bool FailsWish => FailsMix || FailsColumns;

    /// <summary>Why a reading is null, by its JSON name: <c>nothing-over</c>, <c>too-little-over</c>, <c>no-groups</c>, <c>no-group-over</c>,
    /// <c>chance-nought</c>.</summary>
    public required ImmutableSortedDictionary<string, string> WhyNull { get; init; }
}

/// <summary>A group that lies over a group of its own kind on the next turn.</summary>
/// <param name="Name">The group's name, or the bead's id where groups are runs.</param>
/// <param name="FirstA">First bead of the earlier one, index from 0.</param>
/// <param name="CountA">Its beads.</param>
/// <param name="FirstB">First bead of the later one.</param>
/// <param name="CountB">Its beads.</param>
/// <param name="TurnA">Turn of the earlier one where the later one lies over it, from 1.</param>
/// <param name="TurnB">Turn of the later one there: the next.</param>
/// <param name="AngleDeg">Middle of what lies over each other, degrees, 0 the top.</param>
/// <param name="OffSquareMm">Later middle less earlier middle less T, mm: 0 is square, positive is further the way the beads run. 0 for a group
/// that is longer than a turn and lies over itself (both ends of the pair are then the same group).</param>
/// <param name="OverlapMm">Length that lies over each other and is seen, mm.</param>
/// <param name="OverlapFromMm">Where that starts on the later turn, mm from the starting end.</param>
/// <param name="OverlapToMm">Where it ends there, mm from the starting end: where a focal hides a part of it, further on than its start plus its length.</param>
public sealed record LiningUpPair(string Name, int FirstA, int CountA, int FirstB, int CountB, int TurnA, int TurnB, double AngleDeg,
    double OffSquareMm, double OverlapMm, double OverlapFromMm, double OverlapToMm)
{
    /// <summary>The wish that holds for the most of what lies over each other.</summary>
    public LiningUpWish Wish { get; init; }
}

/// <summary>A kind of bead over its own kind, exactly at T.</summary>
/// <param name="BeadId">The kind.</param>
/// <param name="OverMm">Length of it that lies over anything, mm.</param>
/// <param name="OverOwnMm">Length of it that lies over its own kind, mm.</param>
/// <param name="Share">The one over the other; null when nothing of it lies over anything.</param>
/// <param name="Chance">What chance would give; null with one bead of the kind.</param>
public sealed record KindOverKind(string BeadId, double OverMm, double OverOwnMm, double? Share, double? Chance);
