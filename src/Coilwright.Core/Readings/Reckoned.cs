using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Readings;

/// <summary>Every reading of a piece on one wrist.</summary>
/// <remarks>Final numbers: clients print and draw them and work out nothing. Lengths in mm, angles in degrees with 0 the top of the wrist,
/// ratios plain. A reading that cannot be had is null and says why beside it.</remarks>
public sealed record Reckoned
{
    /// <summary>The piece, with its beads' lengths as the measured rows taught them.</summary>
    public required Piece Piece { get; init; }

    /// <summary>The wrist it is reckoned on, mm.</summary>
    public required double WristMm { get; init; }

    /// <summary>The kinds that are used, in the order the piece lists them.</summary>
    public required ImmutableArray<KindCount> Counts { get; init; }

    /// <summary>The worn turn.</summary>
    public required WornTurn Worn { get; init; }

    /// <summary>Where each bead lies when worn.</summary>
    public required Lie Lie { get; init; }

    /// <summary>Wire under all beads with the coil at rest, mm.</summary>
    public required double RelaxedBeadedMm { get; init; }

    /// <summary>Sum of the beads' lengths along their holes, as a ruler reads them laid straight, mm.</summary>
    public required double RuledMm { get; init; }

    /// <summary>How it sits on the wrist.</summary>
    public required FitReport Fit { get; init; }

    /// <summary>Whether each kind passes the wire, in the order of <see cref="Counts"/>.</summary>
    public required ImmutableArray<PassingReport> Passing { get; init; }

    /// <summary>What lies over what on neighbouring turns.</summary>
    public required LiningUpReport LiningUp { get; init; }

    /// <summary>Lining up over wrists.</summary>
    public required ImmutableArray<WristPoint> Curve { get; init; }

    /// <summary>The wire: what to cut and where to trim.</summary>
    public required WireReport Wire { get; init; }

    /// <summary>Where the focal lands; null when the piece has none.</summary>
    public required FocalPlace? Focal { get; init; }

    /// <summary>How the repeat drifts; null when the order is no plain repeat.</summary>
    public required RepeatDrift? Repeat { get; init; }

    /// <summary>Mass.</summary>
    public required MassReport Mass { get; init; }

    /// <summary>How it may come out, over the spread of beads and worn size.</summary>
    public required SpreadReport Spread { get; init; }

    /// <summary>The wire as a spring; null when the steel is unknown.</summary>
    public required StrengthReport? Strength { get; init; }

    /// <summary>The wrists it suits.</summary>
    public required WristsServed Wrists { get; init; }

    /// <summary>What the maker should know, worst first.</summary>
    public required ImmutableArray<Notice> Notices { get; init; }
}

/// <summary>One kind of bead in the piece.</summary>
/// <param name="Bead">The kind.</param>
/// <param name="KindIndex">Its index in the piece's list of beads.</param>
/// <param name="Letter">Key letter: A to Z, then AA, AB.</param>
/// <param name="Count">How many are strung.</param>
/// <param name="RuledMm">Their length laid straight, mm.</param>
public sealed record KindCount(Bead Bead, int KindIndex, string Letter, int Count, double RuledMm);

/// <summary>What decides the worn circumference.</summary>
public enum WornBy
{
    /// <summary>The coil is larger than the wrist asks: it stays at its own size.</summary>
    Coil,

    /// <summary>The wrist opens the coil.</summary>
    Wrist,

    /// <summary>The maker gave it.</summary>
    Given,
}

/// <summary>One turn as worn. Model: docs/theory/worn-turn.md.</summary>
/// <param name="CircumferenceMm">Centre line of the wire round the wrist, mm (C).</param>
/// <param name="BandMm">Half width of the band that C is known in, mm.</param>
/// <param name="By">What decides it.</param>
/// <param name="BearingReachMm">Distance from the wire's centre to the surface that bears on the wrist, mm (e).</param>
/// <param name="RadiusMm">C / 2 pi, mm (R).</param>
/// <param name="PitchMm">Distance from turn to turn along the arm, mm (p).</param>
/// <param name="WirePerTurnMm">Wire in one turn, mm (T).</param>
/// <param name="RoomMm">What the coil leaves beyond the wrist at rest, mm of circumference; negative when the wrist opens it.</param>
public sealed record WornTurn(double CircumferenceMm, double BandMm, WornBy By, double BearingReachMm, double RadiusMm, double PitchMm,
    double WirePerTurnMm, double RoomMm)
{
    /// <summary>Half width over which lining up is averaged, mm of wire per turn.</summary>
    public required double AveragingMm { get; init; }
}

/// <summary>How the piece sits. "Does not fit" is an answer, with its reasons.</summary>
/// <param name="TurnsWorn">Turns that the beads cover when worn (L / T).</param>
/// <param name="TurnsWornFrom">The same at the wide end of the band of C.</param>
/// <param name="TurnsWornTo">The same at the narrow end.</param>
/// <param name="TurnsRelaxed">Turns at rest.</param>
/// <param name="TurnsDesigned">Turns she designed it for, or null.</param>
/// <param name="Fits">Whether nothing stops it from being strung and worn.</param>
/// <param name="Reasons">Codes of the notices that stop it; empty when it fits.</param>
/// <param name="EndsOverlapMm">How far the ends lie over each other, mm; negative is a gap. Against the whole number of turns designed, or the
/// nearest one.</param>
/// <param name="OverlapTurns">The whole number of turns that the overlap is measured against.</param>
/// <param name="InsideRelaxedMm">Circumference that the beaded coil leaves free at rest, mm.</param>
/// <param name="EndLoopHidden">Whether each end bead is large enough to hide the end loop, start then finish; null where there is no loop.</param>
public sealed record FitReport(double TurnsWorn, double TurnsWornFrom, double TurnsWornTo, double TurnsRelaxed, double? TurnsDesigned, bool Fits,
    ImmutableArray<string> Reasons, double EndsOverlapMm, int OverlapTurns, double InsideRelaxedMm, ImmutableArray<bool?> EndLoopHidden);

/// <summary>Whether a bead goes over the wire.</summary>
public enum Passes
{
    /// <summary>It does.</summary>
    Yes,

    /// <summary>It does, with less room than the hole may be off by.</summary>
    Tight,

    /// <summary>It does not.</summary>
    No,

    /// <summary>Its hole is not known.</summary>
    Unknown,
}

/// <summary>One kind of bead against the wire. Model: docs/theory/passing.md.</summary>
/// <param name="BeadId">The kind.</param>
/// <param name="Passes">Whether it passes.</param>
/// <param name="ClearanceMm">Hole less wire, mm; null when the hole is not known.</param>
/// <param name="LongestMm">Longest bead with this hole that passes, mm; null when any length does or the hole is not known.</param>
/// <param name="NeededBoreMm">Least hole with which this bead passes, mm.</param>
public sealed record PassingReport(string BeadId, Passes Passes, double? ClearanceMm, double? LongestMm, double NeededBoreMm);

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

    /// <summary>Whether it fails the piece's wish: what should mix lines up, or what should stand in columns does not.</summary>
    public required bool FailsWish { get; init; }

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
/// <param name="TurnA">Turn of the earlier one's middle, from 1.</param>
/// <param name="TurnB">Turn of the later one's middle.</param>
/// <param name="AngleDeg">Middle of what lies over each other, degrees, 0 the top.</param>
/// <param name="OffSquareMm">Later middle less earlier middle less T, mm: 0 is square, positive is further the way the beads run.</param>
/// <param name="OverlapMm">Length that lies over each other, mm.</param>
/// <param name="OverlapFromMm">Where that starts on the later turn, mm from the starting end.</param>
public sealed record LiningUpPair(string Name, int FirstA, int CountA, int FirstB, int CountB, int TurnA, int TurnB, double AngleDeg,
    double OffSquareMm, double OverlapMm, double OverlapFromMm);

/// <summary>A kind of bead over its own kind, exactly at T.</summary>
/// <param name="BeadId">The kind.</param>
/// <param name="OverMm">Length of it that lies over anything, mm.</param>
/// <param name="OverOwnMm">Length of it that lies over its own kind, mm.</param>
/// <param name="Share">The one over the other; null when nothing of it lies over anything.</param>
/// <param name="Chance">What chance would give; null with one bead of the kind.</param>
public sealed record KindOverKind(string BeadId, double OverMm, double OverOwnMm, double? Share, double? Chance);

/// <summary>One wrist of the lining-up curve.</summary>
/// <param name="WristMm">Wrist, mm.</param>
/// <param name="CircumferenceMm">Worn circumference, mm.</param>
/// <param name="WirePerTurnMm">Wire per turn, mm.</param>
/// <param name="TurnsWorn">Turns worn.</param>
/// <param name="Cover">Headline, averaged.</param>
/// <param name="CoverExact">Headline, exact.</param>
/// <param name="Relative">By bead against chance, averaged.</param>
/// <param name="FailsWish">Whether it fails the piece's wish there.</param>
public sealed record WristPoint(double WristMm, double CircumferenceMm, double WirePerTurnMm, double TurnsWorn, double? Cover, double? CoverExact,
    double? Relative, bool FailsWish);

/// <summary>The wire to cut and where to trim. Model: docs/theory/wire.md.</summary>
/// <param name="BeadedMm">Wire under the beads that the cut is reckoned from, mm: the larger of relaxed and worn.</param>
/// <param name="EndsMm">Wire in both ends' finishes, mm.</param>
/// <param name="GripMm">Wire for the pliers at both ends, trimmed afterwards, mm.</param>
/// <param name="SpareMm">Spare, mm.</param>
/// <param name="CutMm">Wire to cut, mm.</param>
/// <param name="Loops">The same in loops of the coil at rest.</param>
/// <param name="LoopMassG">Mass of one loop, g; null when the steel is unknown.</param>
/// <param name="TrimStartMm">Where to trim at the start, mm beyond the first bead.</param>
/// <param name="TrimFinishMm">Where to trim at the finish, mm beyond the last bead.</param>
/// <param name="SlackMm">Wire left over of what she cut, mm; negative when short; null while nothing is cut.</param>
public sealed record WireReport(double BeadedMm, double EndsMm, double GripMm, double SpareMm, double CutMm, double Loops, double? LoopMassG,
    double TrimStartMm, double TrimFinishMm, double? SlackMm);

/// <summary>Where the focal lands.</summary>
/// <param name="Index">Its index in the order: of several, the one nearest the middle of the piece.</param>
/// <param name="BeadId">Its kind.</param>
/// <param name="Turn">Its turn.</param>
/// <param name="AngleDeg">Its angle, degrees, 0 the top.</param>
/// <param name="OffMm">How far off the top, mm of wire; positive the way the beads run.</param>
/// <param name="MoveStartDeg">How far to turn the starting end so that it lies on the top, degrees.</param>
/// <param name="AngleFromDeg">Its angle at the narrow end of the band of C, degrees.</param>
/// <param name="AngleToDeg">Its angle at the wide end, degrees.</param>
public sealed record FocalPlace(int Index, string BeadId, int Turn, double AngleDeg, double OffMm, double MoveStartDeg, double AngleFromDeg,
    double AngleToDeg);

/// <summary>How a plain repeat drifts from turn to turn.</summary>
/// <param name="Beads">Beads in one repeat.</param>
/// <param name="LengthMm">Wire in one repeat, mm (P).</param>
/// <param name="Drift">Signed distance of T / P to the nearest whole number: 0 lines up, 0.5 is brick, small is a spiral.</param>
/// <param name="DriftMm">The same in mm of wire per turn.</param>
public sealed record RepeatDrift(int Beads, double LengthMm, double Drift, double DriftMm);

/// <summary>A band that holds nine in ten.</summary>
/// <param name="From">5th percentile.</param>
/// <param name="To">95th percentile.</param>
public readonly record struct SpreadBand(double From, double To);

/// <summary>How a piece may come out. Model: docs/theory/spread.md.</summary>
/// <param name="Draws">Draws behind it.</param>
/// <param name="LengthSdMm">Standard deviation of the wire under the beads, mm, in closed form.</param>
/// <param name="LengthMm">Band of the wire under the beads, mm.</param>
/// <param name="FitsShare">Share of draws that come out as wanted: wire enough, turns as designed, ends as wanted; null when nothing was wanted.</param>
/// <param name="Cover">Band of the headline exactly at each draw's T; null when there is too little to judge.</param>
/// <param name="Relative">Band of lining up by bead against chance.</param>
/// <param name="FocalDeg">Band of the focal's angle, degrees; null without a focal.</param>
public sealed record SpreadReport(int Draws, double LengthSdMm, SpreadBand LengthMm, double? FitsShare, SpreadBand? Cover, SpreadBand? Relative,
    SpreadBand? FocalDeg);

/// <summary>The wire as a spring that the wrist opens. Model: docs/theory/strength.md.</summary>
/// <param name="OpeningMomentNmm">Moment that holds it open, N mm.</param>
/// <param name="StressMPa">Stress at the wire's surface, MPa.</param>
/// <param name="LeastStrengthMPa">Least tensile strength of such wire, MPa; null when the data has none for its thickness.</param>
/// <param name="Share">Stress as a share of that; null likewise.</param>
public sealed record StrengthReport(double OpeningMomentNmm, double StressMPa, double? LeastStrengthMPa, double? Share);

/// <summary>Mass of the piece.</summary>
/// <param name="BeadsG">Beads, g; null when one is unknown.</param>
/// <param name="WireG">Wire left in the piece, g; null when the steel is unknown.</param>
/// <param name="TotalG">Both, g; null when either is unknown.</param>
/// <param name="PerTurnG">Per worn turn, g.</param>
/// <param name="PostageG">For the scales at the post: the total rounded up to a whole gram, without its packing; null likewise.</param>
/// <param name="UnknownBeads">Kinds whose mass is not known.</param>
public sealed record MassReport(double? BeadsG, double? WireG, double? TotalG, double? PerTurnG, double? PostageG,
    ImmutableArray<string> UnknownBeads);

/// <summary>The wrists that the piece suits.</summary>
/// <param name="FromMm">Smallest wrist on which it does not hang looser than the data allows, mm; null when there is none.</param>
/// <param name="ToMm">Largest wrist on which the turns are as designed and its ends meet as wanted, mm; null when there is none.</param>
/// <param name="WishFailsMm">Stretches of wrists on which it fails its lining-up wish, as from and to, mm.</param>
public sealed record WristsServed(double? FromMm, double? ToMm, ImmutableArray<(double FromMm, double ToMm)> WishFailsMm);

/// <summary>What to reckon with beside the piece.</summary>
public sealed record ReckonRequest
{
    /// <summary>Another wrist than the wearer's, mm.</summary>
    public double? WristMm { get; init; }

    /// <summary>The worn circumference of the wire's centre line where the maker measured it, mm: overrules the formula.</summary>
    public double? WornCircumferenceMm { get; init; }

    /// <summary>Seed of the shuffles.</summary>
    public ulong Seed { get; init; } = 1;
}
