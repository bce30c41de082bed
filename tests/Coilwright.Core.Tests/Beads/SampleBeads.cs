using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using CsCheck;

namespace Coilwright.Core.Tests.Beads;

/// <summary>Beads of every shape that is listed, in sizes that a maker meets and some that strain the model. A new shape joins by itself.</summary>
public static class SampleBeads
{
    /// <summary>Length along the hole, measure across, flat at the ends, offset of the hole: the plain, the long, the flat, the thick.</summary>
    private static readonly (double Length, double Across, double Face, double Offset)[] Sizes =
        [(6, 8, 3, 0.7), (14, 5, 2, 0.5), (2, 6, 4.5, -0.4), (4, 20, 6, 2), (20, 20, 9, -2)];

    public static TheoryData<string> ShapeNames => new(BeadShapes.All.Select(s => s.Name));

    /// <summary>Beads of one shape: each size plain, then with every optional field that it takes.</summary>
    public static IEnumerable<Bead> Of(string shapeName) => Sizes.SelectMany(size => Of(BeadShapes.Find(shapeName)!, size));

    public static IEnumerable<Bead> All => BeadShapes.All.SelectMany(s => Of(s.Name));

    /// <summary>A few of every shape, enough that all pairs of shapes can be tried: those that differ most.</summary>
    public static IEnumerable<Bead> Few => BeadShapes.All.SelectMany(s =>
    {
        var all = Of(s.Name).ToList();
        return new[] { all[0], all[1], all[^2], all[^1] };
    });

    /// <summary>Any sound bead, for random tests: 1 to 20 mm each way, with or without what its shape takes.</summary>
    public static Gen<Bead> Any { get; } = Gen.Select(Gen.Int[0, BeadShapes.All.Length - 1], Gen.Double[1, 20], Gen.Double[1, 20], Gen.Double[1, 20],
        Gen.Double[0.05, 1], Gen.Double[-0.8, 0.8], Gen.Double[0.05, 0.95], Gen.Int[0, 7]).Select((index, length, width, thickness, face, offset, seat, which) =>
        {
            var shape = BeadShapes.All[index];
            var bare = Plain(shape, length, width, Math.Max(length / 2, width)) with { WidthMm = width, ThicknessMm = thickness, BoreMm = null };
            if (bare.CurveRadiusMm is not null) bare = bare with { CurveRadiusMm = Math.Max(length / 2, thickness) };
            if (shape.Takes.Contains("endFaceMm") && (which & 1) != 0) bare = bare with { EndFaceMm = face * thickness };
            if (shape.Takes.Contains("holeOffsetMm") && (which & 2) != 0) bare = bare with { HoleOffsetMm = offset * thickness / 2 };
            if (bare.HoleOffsetMm > thickness / 2) bare = bare with { HoleOffsetMm = 0.1 * thickness };
            if (shape.Takes.Contains("seat") && (which & 4) != 0)
                bare = bare with { Seat = new Seat(seat * length, seat * (thickness / 2 + bare.HoleOffsetMm ?? 0)) };
            return Make(bare);
        });

    /// <summary>A bead of the shape with what it cannot do without, and nothing else but its hole.</summary>
    public static BeadDescription Plain(BeadShape shape, double length, double across, double curveRadius = 30)
    {
        var plain = new BeadDescription
        {
            Id = "sample",
            Shape = shape.Name,
            Length = new BeadLength.Nominal(length),
            WidthMm = shape.Across is AcrossRule.AsLong or AcrossRule.WideAsLong ? null : across,
            ThicknessMm = shape.Across switch
            {
                AcrossRule.WideAsLong => across / 3,
                AcrossRule.Both => 0.75 * across,
                _ => null,
            },
            BoreMm = Math.Min(length, across) / 5,
        };
        var needs = shape.Needs(plain);
        if (needs.Contains("holeOffsetMm")) plain = plain with { HoleOffsetMm = 0.2 * across };
        if (needs.Contains("curveRadiusMm")) plain = plain with { CurveRadiusMm = curveRadius };
        return plain;
    }

    private static IEnumerable<Bead> Of(BeadShape shape, (double Length, double Across, double Face, double Offset) size)
    {
        var plain = Plain(shape, size.Length, size.Across);
        yield return Make(plain);
        // A shape that follows its length across is made unequal too.
        if (shape.Across == AcrossRule.AsLong) yield return Make(plain with { WidthMm = size.Across, ThicknessMm = size.Across });
        var thickness = Make(plain).ThicknessMm;
        if (shape.Takes.Contains("endFaceMm"))
        {
            yield return Make(plain with { EndFaceMm = size.Face / size.Across * thickness });
            yield return Make(plain with { EndFaceMm = size.Face / size.Across * thickness, HoleOffsetMm = 0.1 * thickness });
        }
        if (shape.Takes.Contains("holeOffsetMm")) yield return Make(plain with { HoleOffsetMm = size.Offset / size.Across * thickness });
        // The cavity stays wider than the hole.
        if (shape.Takes.Contains("wallMm")) yield return Make(plain with { WallMm = Math.Min(0.4, thickness / 8) });
        if (shape.Takes.Contains("curveRadiusMm"))
        {
            yield return Make(plain with { CurveRadiusMm = 1.5 * size.Across });
            yield return Make(plain with { CurveRadiusMm = 1000 });
        }
        if (shape.Takes.Contains("matched")) yield return Make(plain with { Matched = true, CurveRadiusMm = null });
        if (shape.Takes.Contains("seat"))
        {
            var outer = Make(plain).OuterReachMm;
            yield return Make(plain with { Seat = new Seat(0.4 * size.Length, 0.3 * outer) });
            yield return Make(plain with { Seat = new Seat(0.2 * size.Length, 0.8 * outer) });
            // A broad plate on a small foot, high enough for small neighbours to go right under.
            yield return Make(plain with { Seat = new Seat(1.5, 3), HoleOffsetMm = 0, ThicknessMm = 7, Length = new BeadLength.Nominal(30) });
        }
    }

    public static Bead Make(BeadDescription description) =>
        Bead.TryMake(description, out var bead, out var faults) ? bead! : throw new ArgumentException(description + ": " + string.Join("; ", faults));

    /// <summary>What the bead is, for the message of a failed test.</summary>
    public static string Tell(Bead bead) => FormattableString.Invariant(
        $"{bead.Shape} {bead.LengthMm} x {bead.WidthMm} x {bead.ThicknessMm}, face {bead.Description.EndFaceMm}, offset {bead.HoleOffsetMm}, wall {bead.Description.WallMm}, curve {bead.Description.CurveRadiusMm}, matched {bead.Description.Matched}, seat {bead.Description.Seat}");
}
