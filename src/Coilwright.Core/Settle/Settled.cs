using System.Collections.Immutable;
using Coilwright.Core.Geometry;
using Coilwright.Core.Lies;

namespace Coilwright.Core.Settle;

/// <summary>What came of settling a piece.</summary>
public enum SettleOutcome
{
    /// <summary>It rests: nothing pulls any more.</summary>
    Settled,

    /// <summary>Its beads are too thick to stand round the coil at its own size: they hold it open, or have no room at all, which <see cref="Settled.Reason"/> tells.</summary>
    CannotClose,

    /// <summary>It rests, but the wire is bent beyond its strength and would stay bent.</summary>
    WristBeyondYield,

    /// <summary>No rest was found; <see cref="Settled.Reason"/> says why.</summary>
    DidNotSettle,
}

/// <summary>Why no rest was found.</summary>
public enum SettleReason
{
    /// <summary>The wire's steel is not known, so neither is how stiff it is.</summary>
    SteelUnknown,

    /// <summary>Fewer than three beads: a chain of them does not go round.</summary>
    TooFewBeads,

    /// <summary>Neighbours bend the wire more sharply than the model goes: beads as long as the coil is wide.</summary>
    BeadsTooLong,

    /// <summary>Beads stand in the same place on the wire.</summary>
    BeadsInOnePlace,

    /// <summary>Beads have no room: they stand in one another's place across the coil.</summary>
    BeadsTooThick,

    /// <summary>It goes less than half of the way round, or hangs so loosely that nothing keeps it on: it falls off the wrist.</summary>
    FallsOff,

    /// <summary>The steps allowed ran out.</summary>
    OutOfSteps,

    /// <summary>Rounding left nothing to gain while something still pulled.</summary>
    NoProgress,
}

/// <summary>A bead where it lies.</summary>
/// <param name="Index">Its place in the order, from 0.</param>
/// <param name="Place">The wire's centre under its middle, mm: x to the right, y up the arm, z away from the top of the wrist.</param>
/// <param name="Along">The way the beads run, one long.</param>
/// <param name="Outwards">Away from the wrist as the bead is turned, one long.</param>
/// <param name="AngleDeg">Its angle round the arm, degrees in (-180, 180], 0 the top.</param>
/// <param name="OffWristMm">Room between it and the wrist, mm; null where there is no wrist.</param>
public readonly record struct SettledBead(int Index, Point3 Place, Point3 Along, Point3 Outwards, double AngleDeg, double? OffWristMm);

/// <summary>What two things push each other with.</summary>
public enum PushKind
{
    /// <summary>Neighbours along the row, on their inner edges.</summary>
    Row,

    /// <summary>Beads of two turns.</summary>
    Turns,

    /// <summary>A bead and the wrist.</summary>
    Wrist,
}

/// <summary>A push.</summary>
/// <param name="Kind">Between what.</param>
/// <param name="First">A bead, from 0.</param>
/// <param name="Second">The other bead; null for the wrist.</param>
/// <param name="ForceN">How much, N.</param>
public readonly record struct Push(PushKind Kind, int First, int? Second, double ForceN);

/// <summary>Room between a bead and the turn after its own.</summary>
/// <param name="Bead">The bead, from 0.</param>
/// <param name="Over">The bead of the next turn that is nearest.</param>
/// <param name="GapMm">Room between them, mm.</param>
public readonly record struct TurnGap(int Bead, int Over, double GapMm);

/// <summary>Where the focal lies and how it stands with the arm held one way.</summary>
/// <param name="Pose">The way.</param>
/// <param name="AngleDeg">Its angle round the arm, degrees, 0 the top.</param>
/// <param name="AlongMm">How far it has slid along the arm from where it lies with the top of the wrist up, mm; positive up the arm.</param>
/// <param name="TipsDeg">How far it tips about the wire from facing straight off the wrist, degrees; positive towards the finishing end's side.</param>
/// <param name="LeansDeg">How far it leans along the wire, degrees.</param>
/// <param name="Rests">Whether rest was found.</param>
public readonly record struct FocalStand(ArmPose Pose, double AngleDeg, double AlongMm, double TipsDeg, double LeansDeg, bool Rests);

/// <summary>What keeps the focal facing straight off the wrist, were it set so, with the arm held the way in which it tips most: nothing rubs in the search, so there its roll is held.</summary>
/// <param name="Pose">That way.</param>
/// <param name="HoldNmm">What it takes against rolling about the wire, N mm.</param>
/// <param name="PressesNmm">What presses on it times how far from the wire it does, N mm: rubbing gives so much of it as its coefficient says. Its hole on the wire is left out, being so near to it.</param>
/// <param name="TipsDeg">How far it tipped all the same when it was held, degrees.</param>
public readonly record struct FocalKept(ArmPose Pose, double HoldNmm, double PressesNmm, double TipsDeg)
{
    /// <summary>The least coefficient of friction with which it stays; null where nothing presses on it.</summary>
    public double? LeastFriction => PressesNmm > 0 ? HoldNmm / PressesNmm : null;
}

/// <summary>What a shape says of the whole coil.</summary>
/// <param name="Turns">Turns that the beads cover, share by share.</param>
/// <param name="WirePerTurnMm">Wire in one turn, mm.</param>
/// <param name="PitchMm">From turn to turn along the arm, mm.</param>
/// <param name="CircumferenceMm">The wire's centre line round the arm, mm: what is left of a turn's wire when its rise is taken out.</param>
/// <param name="InsideMm">What beads leave free inside, mm: the circumference less 2 pi of the reach that bears on the wrist.</param>
public readonly record struct TurnSize(double Turns, double WirePerTurnMm, double PitchMm, double CircumferenceMm, double InsideMm);

/// <summary>How a piece lies when everything that pulls and pushes is at rest.</summary>
/// <remarks>A static equilibrium with its stated residual. Several may exist: this is the one reached from a wide helix that touches nothing, first with bodies kept well apart and then nearer and nearer.
/// What is not modelled: docs/theory/settle.md.</remarks>
public sealed record Settled
{
    /// <summary>What came of it.</summary>
    public required SettleOutcome Outcome { get; init; }

    /// <summary>Why no rest was found; null where it was.</summary>
    public SettleReason? Reason { get; init; }

    /// <summary>What it was settled with.</summary>
    public required SettleRequest Request { get; init; }

    /// <summary>Newton steps, all stages of the worn shape together.</summary>
    public int Steps { get; init; }

    /// <summary>Steps in each stage, the widest first.</summary>
    public ImmutableArray<int> StageSteps { get; init; } = [];

    /// <summary>Radius and pitch of the helix that it started from, mm.</summary>
    public (double RadiusMm, double PitchMm) StartedFrom { get; init; }

    /// <summary>The largest force left, N.</summary>
    public double ResidualN { get; init; }

    /// <summary>How far any two bodies overlap at most, mm: none do, by the way contact is reckoned.</summary>
    public double WorstOverlapMm { get; init; }

    /// <summary>Whether the least push would make it jump to another shape.</summary>
    public bool OnEdge { get; init; }

    /// <summary>The coil at rest without a wrist and without weight; null where no rest was found.</summary>
    public TurnSize? Relaxed { get; init; }

    /// <summary>The coil as worn; null where no rest was found.</summary>
    public TurnSize? Worn { get; init; }

    /// <summary>Each bead as worn; empty where no rest was found.</summary>
    public ImmutableArray<SettledBead> Beads { get; init; } = [];

    /// <summary>Room between the turns, for each bead that has a turn after its own beside it.</summary>
    public ImmutableArray<TurnGap> Gaps { get; init; } = [];

    /// <summary>Beads of two turns that touch, each pair once.</summary>
    public ImmutableArray<TurnGap> Touching { get; init; } = [];

    /// <summary>Every push of at least <see cref="Settling.LeastPushN"/>, the row's first, then between turns, then the wrist's.</summary>
    public ImmutableArray<Push> Pushes { get; init; } = [];

    /// <summary>The share of beads that bear on the wrist.</summary>
    public double BearingShare { get; init; }

    /// <summary>What holds it from turning round the arm, N mm, and from sliding along it, N; positive where it would go the way the beads run, and up the arm.</summary>
    public (double TurningNmm, double SlidingN) Held { get; init; }

    /// <summary>The most stress in the wire beyond that at rest, MPa.</summary>
    public double StressMPa { get; init; }

    /// <summary>Least tensile strength of such wire, MPa; null when the data has none.</summary>
    public double? StrengthMPa { get; init; }

    /// <summary>Kinds whose mass is not known and that weigh nothing here.</summary>
    public ImmutableArray<string> WithoutWeight { get; init; } = [];

    /// <summary>The focal, from 0; null when the piece has none.</summary>
    public int? Focal { get; init; }

    /// <summary>How the focal stands with the arm held each way; empty without one.</summary>
    public ImmutableArray<FocalStand> FocalStands { get; init; } = [];

    /// <summary>What keeps the focal straight; null without one, where it is round about its hole, or where no rest was found with it held.</summary>
    public FocalKept? FocalKept { get; init; }

    /// <summary>The lie that settling gives, even over all turns; null where no rest was found.</summary>
    public Lie? Lie { get; init; }

    /// <summary>The quick lie on the same wrist.</summary>
    public required Lie Quick { get; init; }

    /// <summary>The widest gap between turns; null where there is none.</summary>
    public TurnGap? Widest => Gaps.IsEmpty ? null : Gaps.MaxBy(g => g.GapMm);

    /// <summary>What all beads press on the wrist with, N.</summary>
    public double WristN => Pushes.Where(p => p.Kind == PushKind.Wrist).Sum(p => p.ForceN);
}
