using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Findings;
using Coilwright.Core.Stringing;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Pieces;

/// <summary>A piece: what its maker wrote down once, and everything else hangs on.</summary>
/// <remarks>Immutable. Holds what was decided and measured, never what follows from it: that is reckoned anew each time.</remarks>
public sealed record Piece
{
    /// <summary>Its name.</summary>
    public required string Title { get; init; }

    /// <summary>The kinds of bead in it, in the order she wrote them; key letters follow this order.</summary>
    public required ImmutableArray<Bead> Beads { get; init; }

    /// <summary>What it is strung on.</summary>
    public required CoilWire Wire { get; init; }

    /// <summary>Both ends.</summary>
    public required WireEnds Ends { get; init; }

    /// <summary>Who wears it and how.</summary>
    public required Wearer Wearer { get; init; }

    /// <summary>The stringing order.</summary>
    public required StringingOrder Order { get; init; }

    /// <summary>How she wrote the order, with her comments and spacing; null when it was given as a list. Its parts keep their ids from edit to edit, as
    /// long as the tree is handed on.</summary>
    public OrderTree? Written { get; init; }

    /// <summary>The order's lines of notation, for printing and keeping; null when it was given as a list.</summary>
    public string? OrderText => Written?.Text;

    /// <summary>Rows measured on the wire.</summary>
    public ImmutableArray<MeasuredRow> MeasuredRows { get; init; } = [];

    /// <summary>What the maker wants of it.</summary>
    public Wishes Wishes { get; init; } = Wishes.None;

    /// <summary>What she writes for the pattern.</summary>
    public PatternNotes Pattern { get; init; } = PatternNotes.None;
}

/// <summary>The wrist and how the piece sits on it.</summary>
/// <param name="WristMm">Round the wrist at the bone, mm, above 0.</param>
/// <param name="EaseMm">Comfort wanted beyond what the beads take up, mm. Memory wire springs shut, so 0 unless the maker says otherwise.</param>
public sealed record Wearer(double WristMm, double EaseMm)
{
    /// <summary>Smallest wrist accepted, mm: smaller than a newborn's.</summary>
    public const double LeastWristMm = 50;

    /// <summary>Largest wrist accepted, mm: beyond any adult's.</summary>
    public const double MostWristMm = 400;

    /// <summary>Bearing reach that the maker measured, mm; null: from the beads.</summary>
    public double? BearingReachMm { get; init; }

    /// <summary>Angle of the starting end, degrees, 0 the top of the wrist, positive the way the beads run; 180 is the underside.
    /// Not used when <see cref="FocalOnTop"/>.</summary>
    public double StartAngleDeg { get; init; } = 180;

    /// <summary>Whether the whole piece is turned so that its focal lies on the top of the wrist.</summary>
    public bool FocalOnTop { get; init; }

    /// <summary>Whether the wearer is a child: cautions and the choice of wrists follow.</summary>
    public bool IsChild { get; init; }
}

/// <summary>A stretch of the row measured on the wire at the bench.</summary>
/// <param name="FirstBead">First bead of the stretch, counted from 1 at the starting end.</param>
/// <param name="LastBead">Last bead of the stretch, counted from 1, at or after the first.</param>
/// <param name="TotalMm">Length read along the wire, mm.</param>
public sealed record MeasuredRow(int FirstBead, int LastBead, double TotalMm);

/// <summary>What the maker wants of like beads on neighbouring turns.</summary>
public enum LiningUpWish
{
    /// <summary>No wish.</summary>
    Any,

    /// <summary>Like beads should not lie over like.</summary>
    Mix,

    /// <summary>Like beads should stand in columns.</summary>
    Columns,
}

/// <summary>A wish for one stretch round the wrist, overruling the piece's.</summary>
/// <param name="FromDeg">Where it starts, degrees, 0 the top.</param>
/// <param name="ToDeg">Where it ends the way the beads run; when below <paramref name="FromDeg"/> it crosses the underside.</param>
/// <param name="LiningUp">The wish there.</param>
public sealed record PlaceWish(double FromDeg, double ToDeg, LiningUpWish LiningUp)
{
    /// <summary>Whether an angle, degrees in (-180, 180], lies in the stretch, ends included.</summary>
    public bool Covers(double angleDeg) => FromDeg <= ToDeg ? angleDeg >= FromDeg && angleDeg <= ToDeg : angleDeg >= FromDeg || angleDeg <= ToDeg;
}

/// <summary>What is judged of a piece that may come out in one way or another: no two beads are alike, and nobody knows a wrist to the millimetre.</summary>
public enum JudgedBy
{
    /// <summary>The mean over all the ways.</summary>
    Mean,

    /// <summary>What nineteen of twenty do not exceed: the 95th percentile of seeded draws.</summary>
    NineteenInTwenty,
}

/// <summary>What the maker wants of the piece. Wishes judge the readings; they never change them.</summary>
public sealed record Wishes
{
    /// <summary>No wishes.</summary>
    public static Wishes None { get; } = new();

    /// <summary>The wish for the whole piece.</summary>
    public LiningUpWish LiningUp { get; init; } = LiningUpWish.Any;

    /// <summary>Wishes for stretches round the wrist.</summary>
    public ImmutableArray<PlaceWish> Places { get; init; } = [];

    /// <summary>Wishes by group name.</summary>
    public ImmutableSortedDictionary<string, LiningUpWish> Groups { get; init; } = ImmutableSortedDictionary<string, LiningUpWish>.Empty;

    /// <summary>Whether anything of how it lines up is wished for.</summary>
    public bool AnyOfLiningUp => LiningUp != LiningUpWish.Any || Places.Any(p => p.LiningUp != LiningUpWish.Any) || Groups.Values.Any(w => w != LiningUpWish.Any);

    /// <summary>Rules that the order is to keep.</summary>
    public ImmutableArray<OrderRule> Rules { get; init; } = [];

    /// <summary>Turns the piece was designed for; null when she did not say.</summary>
    public double? Turns { get; init; }

    /// <summary>How far from the top the focal may lie, degrees; null: the data's figure.</summary>
    public double? FocalWithinDeg { get; init; }

    /// <summary>What may change when a better order is looked for.</summary>
    public FreeToChange Free { get; init; } = FreeToChange.Usual;

    /// <summary>What of how a piece may come out is judged when a better order is looked for.</summary>
    public JudgedBy JudgedBy { get; init; } = JudgedBy.Mean;

    /// <summary>Wrists that the piece is to be good on, each with its weight; empty: adults' wrists from the data.</summary>
    public ImmutableArray<WeighedWrist> Wrists { get; init; } = [];
}
