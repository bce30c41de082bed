using Coilwright.Core.Findings;
using Coilwright.Core.Listings;
using Coilwright.Core.Measures;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Tests.Listings;

/// <summary>What a buyer is told of a piece.</summary>
public class ListingTests
{
    private static readonly SmallPartsCylinder Cylinder = new(31.7, 25.4, 57.1, "the rule");

    private static Listing Of(int rounds) => Listing.Of(Reckoning.Of(SamplePieces.Piece([SamplePieces.Bead("round", "round", 6)], Enumerable.Repeat(0, rounds)), SamplePieces.Data), Cylinder);

    // NIST SP 811 (2008), appendix B.8: 1 in = 25.4 mm, 1 oz (avoirdupois) = 28.34952 g, its last digit rounded; the exact pound is 0.45359237 kg.
    [Fact]
    public void An_inch_and_an_ounce_are_the_ones_of_the_standard()
    {
        Assert.Equal(25.4, InchFraction.MmPerInch);
        Assert.Equal(453.59237 / 16, Ounce.Grams, 12);
        Assert.Equal(28.34952, Ounce.Grams, 5);
    }

    [Fact]
    public void Length_is_the_row_with_both_loops_on_it()
    {
        var listing = Of(130);
        Assert.Equal(listing.Reckoned.Lie.BeadedMm + 2 * (3 + 2 * 0.62), listing.LengthMm, 9);
        var piece = listing.Reckoned.Piece;
        var capped = Listing.Of(Reckoning.Of(piece with { Ends = piece.Ends with { Start = new WireEnd(EndFinish.GluedCap, 4) } }, SamplePieces.Data), Cylinder);
        Assert.Equal(listing.LengthMm - 3 - 2 * 0.62, capped.LengthMm, 9);
    }

    // Rounds of 6 mm lie side by side as rows of 6 mm.
    [Theory, InlineData(66, 12), InlineData(130, 24), InlineData(20, 6)]
    public void Width_is_as_many_rows_as_the_turns_begin(int rounds, double widthMm) => Assert.Equal(widthMm, Of(rounds).WidthMm, 9);

    [Fact]
    public void Inside_across_is_the_circle_of_inside_round() => Assert.Equal(Of(130).InsideMm, Math.PI * Of(130).InsideAcrossMm, 9);

    [Fact]
    public void Every_bead_is_in_one_material_and_what_is_not_known_is_said_so()
    {
        var beads = new[]
        {
            SamplePieces.Bead("a", "round", 6, with: d => d with { Material = new("brass", 8.5, true, "s"), Coating = "plated" }), SamplePieces.Bead("b", "round", 8, with: d => d with { OtherMaterial = "bog oak" }),
            SamplePieces.Bead("c", "round", 40), SamplePieces.Bead("d", "round", 4, with: d => d with { Material = new("brass", 8.5, true, "s"), Coating = "plated" }),
        };
        var listing = Listing.Of(Reckoning.Of(SamplePieces.Piece([.. beads], [0, 1, 2, 3, 0, 1, 3, 3]), SamplePieces.Data), Cylinder);
        Assert.Equal(8, listing.Materials.Sum(m => m.Count));
        Assert.Equal([("brass", null, 5), (null, "bog oak", 2), (null, null, 1)], listing.Materials.Select(m => (m.Material?.Key, m.Other, m.Count)));
        Assert.Equal(["plated"], listing.Finishes);
        Assert.True(listing.HasMetalBeads && !listing.MaterialsAreKnown);
        Assert.Equal(["a", "b", "d"], listing.SmallParts.Select(k => k.Bead.Id));
    }
}
