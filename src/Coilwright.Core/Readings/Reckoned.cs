using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Spread;

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

    /// <summary>Our choices that it was judged by: where lining up and being mixed begin, how fine the curve is.</summary>
    public required ReckoningChoices Choices { get; init; }

    /// <summary>The kinds that are used, in the order the piece lists them.</summary>
    public required ImmutableArray<KindCount> Counts { get; init; }

    /// <summary>The worn turn.</summary>
    public required WornTurn Worn { get; init; }

    /// <summary>Where each bead lies when worn.</summary>
    public required Lie Lie { get; init; }

    /// <summary>Each bead's share of the wire with the coil at rest, as it is strung, mm.</summary>
    public required ImmutableArray<double> RelaxedSharesMm { get; init; }

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

/// <summary>One wrist of the lining-up curve.</summary>
/// <param name="WristMm">Wrist, mm.</param>
/// <param name="CircumferenceMm">Worn circumference, mm.</param>
/// <param name="WirePerTurnMm">Wire per turn, mm.</param>
/// <param name="TurnsWorn">Turns worn.</param>
/// <param name="Cover">Headline, averaged.</param>
/// <param name="CoverExact">Headline, exact.</param>
/// <param name="Relative">By bead against chance, averaged.</param>
/// <param name="FailsMix">Whether it lines up there although she wants a mix.</param>
/// <param name="FailsColumns">Whether the columns that she wants do not come there.</param>
public sealed record WristPoint(double WristMm, double CircumferenceMm, double WirePerTurnMm, double TurnsWorn, double? Cover, double? CoverExact,
    double? Relative, bool FailsMix, bool FailsColumns)
{
    /// <summary>Whether it fails the piece's wish there.</summary>
    public bool FailsWish => FailsMix || FailsColumns;
}

/// <summary>Neighbouring wrists on which a piece fails its lining-up wish in the same way.</summary>
/// <remarks>The borders are sought between the points of the curve to within <see cref="BorderMm"/>. What fails only between two neighbouring points is not
/// seen: the readings are averaged over more than a point's step, so there is hardly any.</remarks>
/// <param name="FromMm">Smallest of them, mm.</param>
/// <param name="ToMm">Largest of them, mm.</param>
/// <param name="FailsMix">Whether it lines up there although she wants a mix.</param>
/// <param name="FailsColumns">Whether the columns that she wants do not come there.</param>
public readonly record struct WishFailure(double FromMm, double ToMm, bool FailsMix, bool FailsColumns)
{
    /// <summary>How near a border is found, mm: a tenth of what a tape shows.</summary>
    public const double BorderMm = 0.1;
}

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

/// <summary>The wrists that the piece suits, within the wrists that are reckoned with.</summary>
/// <param name="FromMm">Smallest wrist on which it does not hang looser than the data allows, mm; null when there is none.</param>
/// <param name="ToMm">Largest wrist on which it goes once round, has the turns that she designed (where she did not say: that the wearer's own wrist
/// takes), and its ends lie as far over each other as she wants, where she said so, mm; null when there is none.</param>
/// <param name="WishFails">Stretches of wrists on which it fails its lining-up wish, within the curve, ascending.</param>
public sealed record WristsServed(double? FromMm, double? ToMm, ImmutableArray<WishFailure> WishFails);

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
