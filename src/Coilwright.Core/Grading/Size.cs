using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Grading;

/// <summary>A run between groups with another count than in the base size.</summary>
/// <param name="Gap">The run, counted from 1 at the starting end among <see cref="Sizes.Gaps"/>.</param>
/// <param name="BeadId">Its kind.</param>
/// <param name="From">How many it has in the base size.</param>
/// <param name="To">How many here.</param>
public readonly record struct RunChange(int Gap, string BeadId, int From, int To)
{
    /// <summary>How many more; below 0: fewer.</summary>
    public int More => To - From;
}

/// <summary>A whole group that was put on or taken off at an end, with what stood between it and the next.</summary>
/// <param name="AtStart">Whether at the starting end.</param>
/// <param name="IsMore">Whether it was put on.</param>
/// <param name="Group">The group's name; null where groups are runs of one kind.</param>
/// <param name="Beads">The group's beads, from the starting end, each run counted.</param>
/// <param name="Beside">What was strung or taken off beside it, from the starting end, each run counted; may be empty.</param>
public sealed record GroupChange(bool AtStart, bool IsMore, string? Group, ImmutableArray<RunPart> Beads, ImmutableArray<RunPart> Beside);

/// <summary>What a size does about the coil.</summary>
public enum CoilAnswer
{
    /// <summary>The design's own coil serves.</summary>
    Own,

    /// <summary>Another of the coils that the piece allows serves better.</summary>
    Other,

    /// <summary>The coil hangs loose on this wrist and no allowed coil does not: a smaller one is wanted.</summary>
    SmallerWanted,

    /// <summary>The wrist opens the coil so far that it may keep some of the bend, and no allowed coil is opened less: a larger one is wanted.</summary>
    LargerWanted,
}

/// <summary>The coil of a size.</summary>
/// <param name="Answer">What was done about it.</param>
/// <param name="Wire">The coil.</param>
/// <param name="AskedLoopMm">The length of one turn that the wrist asks, mm: a coil of about this loop lies on it without play.</param>
public sealed record SizeCoil(CoilAnswer Answer, CoilWire Wire, double AskedLoopMm);

/// <summary>One size of a design: a piece of its own. That it does not come out is an answer, with its figures.</summary>
public sealed record Size
{
    /// <summary>The wrist, mm.</summary>
    public required double WristMm { get; init; }

    /// <summary>Whether it is the design's own size, left as it is.</summary>
    public required bool IsBase { get; init; }

    /// <summary>The piece: its order is written as the design's, as far as that can be kept.</summary>
    public required Piece Piece { get; init; }

    /// <summary>Every reading of it on its wrist.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>The coil.</summary>
    public required SizeCoil Coil { get; init; }

    /// <summary>Beaded length that the design's turns ask on this wrist, mm.</summary>
    public required double WantedMm { get; init; }

    /// <summary>How much longer the beads are than that, mm; below 0 shorter.</summary>
    public double OffMm => Reckoned.Lie.BeadedMm - WantedMm;

    /// <summary>Whether the length is as wanted, within <see cref="Sizes.ToleranceMm"/>.</summary>
    public required bool ComesOut { get; init; }

    /// <summary>Runs that have another count than in the base size, from the starting end.</summary>
    public required ImmutableArray<RunChange> Runs { get; init; }

    /// <summary>Groups put on or taken off, from the starting end, at each end the outermost first.</summary>
    public required ImmutableArray<GroupChange> Groups { get; init; }

    /// <summary>Whether the order is the base size's.</summary>
    public bool IsUnchanged => Runs.IsEmpty && Groups.IsEmpty;

    /// <summary>Share of the wished groups' length that lies against the wish on this wrist; null without a wish.</summary>
    public required double? Against { get; init; }

    /// <summary>Whether the wish fails on this wrist.</summary>
    public bool FailsWish => Reckoned.LiningUp.FailsWish;

    /// <summary>Whether it is known, by the tables, that no counts within the same ranges lie notably less against the wish.</summary>
    public required bool IsProven { get; init; }
}

/// <summary>One design on a table of wrists.</summary>
public sealed record Sizes
{
    /// <summary>The design on its own wearer's wrist.</summary>
    public required Reckoned Base { get; init; }

    /// <summary>The runs of the base size that may change, from the starting end.</summary>
    public required ImmutableArray<Gap> Gaps { get; init; }

    /// <summary>The sizes, by wrist.</summary>
    public required ImmutableArray<Size> All { get; init; }

    /// <summary>Turns that every size has.</summary>
    public required double Turns { get; init; }

    /// <summary>How far the ends lie over each other in every size beyond those turns, mm, where the piece says; else null.</summary>
    public required double? OverlapMm { get; init; }

    /// <summary>By how much a length may differ from what is wanted, mm.</summary>
    public required double ToleranceMm { get; init; }

    /// <summary>Whether both halves were kept mirrored.</summary>
    public required bool IsMirrored { get; init; }

    /// <summary>Whether the work was stopped before its end: sizes then are missing.</summary>
    public bool WasStopped { get; init; }

    /// <summary>What all of them take.</summary>
    public SizesMaterials Materials => SizesMaterials.Of([.. All.Select(s => s.Piece)], [.. All.Select(s => s.Reckoned.Wire)]);
}
