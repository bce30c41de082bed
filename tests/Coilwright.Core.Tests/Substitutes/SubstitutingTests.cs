using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Readings;
using Coilwright.Core.Substitutes;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Substitutes;

/// <summary>What may stand in for a bead.</summary>
public class SubstitutingTests
{
    private static readonly Bead Blue = Bead("blue", "round", 6, bore: 1, colour: "#2b5f8a");

    private static readonly ImmutableArray<int> Strung = [.. Enumerable.Range(0, 60).Select(i => i % 4 == 0 ? 1 : 0)];

    private static readonly ImmutableArray<Bead> Kinds = [Blue, Bead("disc", "disc", 2, 5, 5, bore: 1.2, colour: "#c8a15a")];

    [Fact]
    public void A_bead_is_no_distance_from_itself_and_as_far_one_way_as_the_other()
    {
        Assert.Equal(0.5, BeadDistance.Of(Blue, Blue).Total, 1e-12); // Its material is not known, so it counts half.
        Gen.Select(Gen.Double[2, 12], Gen.Double[2, 12], Gen.Double[0.5, 1.5], Gen.Double[0.5, 1.5]).Sample((a, b, boreA, boreB) =>
        {
            var (one, other) = (Bead("a", "round", a, bore: boreA, colour: "#102030"), Bead("b", "disc", b, 5, 5, bore: boreB, colour: "#a0b0c0"));
            Assert.Equal(BeadDistance.Of(one, other).Total, BeadDistance.Of(other, one).Total, 1e-12);
        });
    }

    // By the sizes of 1 that are chosen: a tenth longer is 1; a fifth wider is 1; twice a step up is as far as a step up and one more.
    [Fact]
    public void Each_part_is_1_where_a_maker_begins_to_hesitate()
    {
        var drop = Bead("drop", "drop", 10, 5, 5, bore: 0.9, colour: "#2b5f8a");
        Assert.Equal(1, BeadDistance.Of(drop, Bead("longer", "drop", 11, 5, 5, bore: 0.9)).Length, 1e-12);
        Assert.Equal(1, BeadDistance.Of(drop, Bead("wider", "drop", 10, 6, 5, bore: 0.9)).Across, 1e-12);
        Assert.Equal(2, BeadDistance.Of(drop, Bead("drilled", "drop", 10, 5, 5, bore: 0.9 * 16 / 9)).Bore, 1e-12);
        Assert.Equal((1, 0.5, 0.5), (BeadDistance.Of(drop, Bead("other", "round", 10)).Shape, BeadDistance.Of(drop, Bead("undrilled", "drop", 10, 5, 5, bore: null)).Bore, BeadDistance.Of(drop, Bead("bare", "drop", 10, 5, 5)).Colour));
    }

    [Fact]
    public void The_nearest_come_first_and_each_is_reckoned_as_if_it_had_been_strung()
    {
        var piece = Piece(Kinds, Strung);
        Candidate[] there = [new(Bead("red", "round", 6, bore: 1, colour: "#a03030")), new(Bead("navy", "round", 6, bore: 1, colour: "#29598a")), new(Bead("big", "round", 9, bore: 1, colour: "#2b5f8a"))];
        var found = Substituting.For(piece, 0, there, Data);
        Assert.Equal("navy", found[0].Bead.Id);
        Assert.Equal(found.OrderBy(s => s.Likeness.Total).Select(s => s.Bead.Id), found.Select(s => s.Bead.Id));
        foreach (var substitute in found)
        {
            var strung = Piece([substitute.Bead, Kinds[1]], Strung);
            Assert.Equal(Reckoning.Of(strung, Data).Lie.BeadedMm, substitute.With.Lie.BeadedMm, 1e-12);
            Assert.Equal(45, substitute.Need);
        }
    }

    [Fact]
    public void Too_few_of_them_or_a_hole_too_small_puts_a_bead_behind_those_that_would_do()
    {
        var piece = Piece(Kinds, Strung);
        Candidate[] there = [new(Bead("few", "round", 6, bore: 1, colour: "#2b5f8a"), 44), new(Bead("tight", "round", 6, bore: 0.5, colour: "#2b5f8a")), new(Bead("far", "round", 7, bore: 1, colour: "#406080"), 45)];
        var found = Substituting.For(piece, 0, there, Data);
        Assert.Equal(["far", "tight", "few"], found.Select(s => s.Bead.Id));
        Assert.Equal([(true, false), (true, true), (false, false)], found.Select(s => (s.IsEnough, s.BringsStop)));
    }

    [Fact]
    public void The_bead_itself_is_no_substitute_and_no_more_are_tried_than_asked_for()
    {
        var piece = Piece(Kinds, Strung);
        Assert.Empty(Substituting.For(piece, 0, [new(Blue)], Data));
        Assert.Equal(2, Substituting.For(piece, 0, Enumerable.Range(0, 9).Select(i => new Candidate(Bead($"b{i}", "round", 5 + i / 10.0))), Data, 2).Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => Substituting.For(piece, 0, [], Data, 0));
    }
}
