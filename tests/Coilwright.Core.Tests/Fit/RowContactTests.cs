using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Sections;
using Coilwright.Core.Fit;
using Coilwright.Core.Stringing;
using Coilwright.Core.Tests.Beads;
using CsCheck;

namespace Coilwright.Core.Tests.Fit;

/// <summary>A whole row on the curve: nothing overlaps, neighbour or not. Derived in docs/theory/curve-true-length.md.</summary>
public class RowContactTests
{
    private static CurveShares Prepared(ImmutableArray<Bead> row) => new(row, new StringingOrder([.. Enumerable.Range(0, row.Length)], []));

    private static ImmutableArray<double> Shares(ImmutableArray<Bead> row, double radius) => Prepared(row).AtRadius(radius);

    /// <summary>Angle from the middle of bead i to the middle of bead j.</summary>
    private static double Along(ImmutableArray<Bead> row, double radius, int i, int j)
    {
        var middles = Prepared(row).MiddlesAtRadius(radius);
        return (middles[j] - middles[i]) / radius;
    }

    /// <summary>Rows of any beads with small discs and dots strung between, over which their neighbours may meet.</summary>
    private static readonly Gen<ImmutableArray<Bead>> Rows = Gen.Select(SampleBeads.Any, Gen.Int[0, 2], Gen.Bool, (bead, small, round) =>
        Enumerable.Repeat(round ? SamplePieces.Bead("dot", "round", 1.5) : SamplePieces.Bead("disc", "heishi", 0.8, 2, bore: null), small).Prepend(bead))
        .Array[1, 4].Select(parts => parts.SelectMany(p => p).ToImmutableArray()).Where(row => row.Length > 1);

    [Fact]
    public void Nothing_in_a_row_overlaps_anything_else_in_it() =>
        Gen.Select(Rows, Gen.Double[24, 60]).Sample((row, radius) =>
        {
            var middles = Prepared(row).MiddlesAtRadius(radius);
            var polars = row.Select(b => new PolarContact(b, radius)).ToList();
            for (var i = 0; i < row.Length; i++)
                for (var j = i + 1; j < row.Length; j++)
                {
                    var along = (middles[j] - middles[i]) / radius;
                    // Beyond half a turn the far side of the coil comes round, which a row does not know.
                    if (along > Math.PI / 2) break;
                    var contact = PolarContact.AngleRad(polars[i], polars[j]);
                    // The sampled figures lie inside the true ones; 1e-8 is what the search for the least sum may miss.
                    Assert.True(along >= contact - 1e-8, FormattableString.Invariant(
                        $"R {radius:R}: {i} and {j} of {string.Join(" | ", row.Select(SampleBeads.Tell))} stand at {along:R}, overlap below {contact:R}"));
                }
        }, iter: 150);

    [Fact]
    public void The_mirror_image_of_a_row_has_the_same_shares() =>
        Gen.Select(Rows, Gen.Double[24, 60]).Sample((row, radius) =>
        {
            var forth = Shares(row, radius);
            var back = Shares([.. row.Reverse()], radius);
            // What the search for the least sum may miss, in mm.
            for (var i = 0; i < row.Length; i++) Near.Equal(forth[i], back[row.Length - 1 - i], 1e-6);
        }, iter: 150);

    // Two cubes of 12 mm on a coil of 28 mm meet on their inner edges before a thin small disc between them is reached by both.
    [Fact]
    public void Tall_beads_touch_over_a_small_one_between_them()
    {
        const double Radius = 28;
        var cube = SamplePieces.Bead("cube", "cube", 12);
        var disc = SamplePieces.Bead("disc", "heishi", 0.8, 2, bore: null);
        var shares = Shares([cube, disc, cube], Radius);
        // Closed form of two flat beads, from middle to middle.
        Near.Equal(Radius * 2 * Math.Atan(12 / (2 * Radius - 12)), Along([cube, disc, cube], Radius, 0, 2) * Radius, 1e-9);
        // The disc has room: its share is more than it takes beside one cube alone, and both halves are alike.
        Assert.True(Along([cube, disc, cube], Radius, 0, 1) > Along([cube, disc], Radius, 0, 1));
        Near.Equal(shares[0], shares[2], 1e-9);
    }

    // A focal on a narrow foot, a dot that goes right under its overhang, and a stone that does not.
    [Fact]
    public void A_stone_beyond_a_tucked_dot_stops_at_the_overhang()
    {
        const double Radius = 32;
        var focal = SamplePieces.Bead("focal", "focal", 30, 20, 8, with: d => d with { HoleOffsetMm = 2, Seat = new Seat(5, 2) });
        var dot = SamplePieces.Bead("dot", "round", 3);
        var stone = SamplePieces.Bead("stone", "round", 12);
        var direct = NeighbourContact.AngleRad(focal.Shape.Sections(focal, Radius), stone.Shape.Sections(stone, Radius), Radius);
        Near.Equal(direct, Along([focal, dot, stone], Radius, 0, 2), 1e-9);
        Assert.True(direct > Along([focal, dot], Radius, 0, 1) + Along([dot, stone], Radius, 0, 1));
    }

    [Fact]
    public void A_row_of_one_kind_is_not_widened()
    {
        foreach (var bead in SampleBeads.Few)
        {
            var angle = NeighbourContact.AngleRad(bead.Shape.Sections(bead, 40), bead.Shape.Sections(bead, 40), 40);
            var kinds = ImmutableArray.Create(bead);
            var shares = new CurveShares(kinds, new StringingOrder([0, 0, 0, 0, 0], [])).AtRadius(40);
            Near.Equal(40 * angle, shares[2], 1e-12, SampleBeads.Tell(bead)); // the same sum
        }
    }
}
