using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

/// <summary>A random piece whose shares and turn, and what its focals hide, are whole numbers of small steps.</summary>
internal sealed record LatticePiece(Piece Piece, Lie Lie, double PitchMm, double AveragingMm, double StepMm)
{
    /// <summary>Step of the lattice, mm: a fiftieth of a millimetre, finer than any bead's edge.</summary>
    public const double Step = 0.02;

    public LatticeLiningUp SecondWay(ReckoningChoices choices) => new(Piece, choices, Lie, PitchMm, StepMm);

    public override string ToString() => string.Join(' ', Piece.Order.Kinds.Select(k => Piece.Beads[k].Id))
        + "\ngroups " + string.Join(' ', Piece.Order.Groups.Select(g => $"{g.Name}@{g.First}+{g.Count}"))
        + "\nshares " + string.Join(' ', Lie.SharesMm) + FormattableString.Invariant($"\nT {Lie.WirePerTurnMm} start {Lie.StartAngleDeg} pitch {PitchMm} avg {AveragingMm}")
        + "\nwishes " + Piece.Wishes.LiningUp + " " + string.Join(' ', Piece.Wishes.Places) + " " + string.Join(' ', Piece.Wishes.Groups);
}

internal static class LatticePieces
{
    public static ImmutableArray<Bead> Kinds { get; } =
    [
        SamplePieces.Bead("ball", "round", 8, colour: "#6fa3a8"),
        SamplePieces.Bead("pea", "round", 7.6, colour: "#7ba6a4"),
        SamplePieces.Bead("tube", "tube", 12, 4, role: Role.Connector, colour: "#b08d57"),
        SamplePieces.Bead("disc", "heishi", 1.2, 4, role: Role.Spacer, colour: "#a9adb0"),
        SamplePieces.Bead("chip", "chip", 4, 6, 5, role: Role.Accent, colour: "#7d5a7d"),
        SamplePieces.Bead("plain", "round", 6),
        Star(26),
        Moon(20),
    ];

    private static Bead Star(double lengthMm) => SamplePieces.Bead("star", "focal", lengthMm, 14, 8, role: Role.Focal, colour: "#803030",
        with: d => d with { HoleOffsetMm = 2, Seat = new Seat(9, 2.5) });

    private static Bead Moon(double lengthMm) => SamplePieces.Bead("moon", "focal", lengthMm, 38, 8, role: Role.Focal, colour: "#303080",
        with: d => d with { HoleOffsetMm = 2.5 });

    private const int FirstFocal = 6;

    /// <summary>Pieces of one to five turns, with or without groups (nested too), focals, and wishes by place and group.</summary>
    public static Gen<LatticePiece> Any(bool focals, bool places) =>
        from count in Gen.Int[4, 36]
        from kindCount in Gen.Int[1, FirstFocal]
        from kinds in Gen.Int[0, kindCount - 1].Array[count]
        from jitter in Gen.Int[-40, 40].Array[count]
        from focalAt in focals ? Gen.Int[0, count - 1].Array[1, 2] : Gen.Const(Array.Empty<int>())
        from focalKind in Gen.Int[FirstFocal, FirstFocal + 1]
        from groups in Groups(count)
        from turns in Gen.Double[0.7, 5]
        from start in Gen.Double[-180, 180]
        from averaging in Gen.Int[1, 120]
        from whole in Gen.Enum<LiningUpWish>()
        from place in places ? Place.Array[0, 2] : Gen.Const(Array.Empty<PlaceWish>())
        from byGroup in Gen.Select(Name("a", "b", "c", "whole", "ball"), Gen.Enum<LiningUpWish>()).Array[0, 3]
        select Make([.. kinds.Select((k, i) => focalAt.Contains(i) ? focalKind : k)], jitter, groups, turns, start, averaging, whole, place, byGroup);

    private static Gen<string> Name(params string[] names) => Gen.Int[0, names.Length - 1].Select(i => names[i]);

    private static Gen<PlaceWish> Place => Gen.Select(Gen.Int[-180, 180], Gen.Int[-180, 180], Gen.Enum<LiningUpWish>(), (f, t, w) => new PlaceWish(f, t, w));

    // None, one after another, or one after another inside groups of several.
    private static Gen<ImmutableArray<GroupRun>> Groups(int count) =>
        from named in Gen.Bool
        from lengths in Gen.Int[1, 6].Array[count]
        from gaps in Gen.Int[0, 2].Array[count]
        from names in Name("a", "b", "c").Array[count]
        from nest in Gen.Int[0, 3].Array[count]
        select named ? Strung(count, lengths, gaps, names, nest) : [];

    private static ImmutableArray<GroupRun> Strung(int count, int[] lengths, int[] gaps, string[] names, int[] nest)
    {
        var groups = new List<GroupRun>();
        var at = 0;
        for (var g = 0; at + gaps[g] + lengths[g] <= count; g++)
        {
            at += gaps[g];
            // A group of its own size round it, or one a little larger, on every so many.
            if (nest[g] == 1) groups.Add(new GroupRun("whole", at, lengths[g]));
            if (nest[g] == 2 && at + lengths[g] + 2 <= count) groups.Add(new GroupRun("whole", at, lengths[g] + 2));
            groups.Add(new GroupRun(names[g], at, lengths[g]));
            at += lengths[g] + (nest[g] == 2 ? 2 : 0);
            if (at >= count) break;
        }
        return [.. groups];
    }

    private static LatticePiece Make(ImmutableArray<int> kinds, int[] jitter, ImmutableArray<GroupRun> groups, double turns, double startDeg,
        int averaging, LiningUpWish whole, PlaceWish[] places, (string, LiningUpWish)[] byGroup)
    {
        // A focal takes an even number of steps, so that its middle lies on the lattice too.
        var steps = kinds.Select((k, i) => Math.Max(20, (int)(Kinds[k].LengthOnWireMm / LatticePiece.Step) + jitter[i]) & (k < FirstFocal ? ~0 : ~1)).ToArray();
        var perTurn = Math.Max(800, (int)(steps.Sum() / turns));
        var shares = steps.Select(s => s * LatticePiece.Step).ToImmutableArray();
        var turn = perTurn * LatticePiece.Step;
        var radius = turn / (2 * Math.PI);
        var piece = SamplePieces.Piece([.. Kinds[..FirstFocal], HidingWholeSteps(Kinds[FirstFocal], Star, radius), HidingWholeSteps(Kinds[FirstFocal + 1], Moon, radius)],
            kinds, groups: groups) with
        {
            Wishes = new Wishes
            {
                LiningUp = whole,
                Places = [.. places],
                Groups = byGroup.DistinctBy(g => g.Item1).ToImmutableSortedDictionary(g => g.Item1, g => g.Item2, StringComparer.Ordinal),
            },
        };
        var half = Math.Min(averaging, perTurn - 1) * LatticePiece.Step;
        return new LatticePiece(piece, new Lie(shares, turn, radius, startDeg), 7, half, LatticePiece.Step);
    }

    // The focal a little shorter, so that what it hides to either side of its middle is a whole number of steps: half = R atan(length / 2 / (R + clear)).
    private static Bead HidingWholeSteps(Bead focal, Func<double, Bead> ofLength, double radiusMm)
    {
        var clear = focal.Description.Seat?.ClearMm ?? -focal.BearingReachMm;
        var half = Math.Floor(radiusMm * Math.Atan(focal.LengthMm / 2 / (radiusMm + clear)) / LatticePiece.Step) * LatticePiece.Step;
        return ofLength(2 * (radiusMm + clear) * Math.Tan(half / radiusMm));
    }
}
