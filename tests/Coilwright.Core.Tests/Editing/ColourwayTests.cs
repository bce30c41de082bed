using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Tests.Editing;

public class ColourwayTests
{
    private static readonly Srgb Red = new(0xaa, 0x22, 0x44);

    private static readonly Piece Piece = SamplePieces.Piece(
        [SamplePieces.Bead("round", "round", 8, colour: "#224466", with: d => d with { Lot = "box 3" }), SamplePieces.Bead("dot", "round", 3, colour: "#c0a060", with: d => d with { Lot = "box 4" })],
        Enumerable.Range(0, 90).Select(i => i % 10 == 9 ? 1 : 0)) is var p
        ? p with { Wire = p.Wire with { CutMm = 900 }, MeasuredRows = [new MeasuredRow(1, 12, 92), new MeasuredRow(10, 10, 3.1)] } : null!;

    private static Piece In(string id, Srgb colour) => Colourway.Of(Piece, ImmutableSortedDictionary<string, ImmutableArray<Srgb>>.Empty.Add(id, [colour]));

    [Fact]
    public void Only_the_colours_change_and_what_is_of_the_very_beads_stays_behind()
    {
        var red = In("round", Red);
        Assert.Equal([Red], red.Beads[0].Colours);
        Assert.Equal(Piece.Beads[0].Description with { Colours = red.Beads[0].Colours, Lot = null }, red.Beads[0].Description);
        Assert.Same(Piece.Beads[1], red.Beads[1]);
        Assert.Equal(Piece.Order.Kinds, red.Order.Kinds);
        Assert.Null(red.Wire.CutMm);
        // The row over beads 1 to 12 held rounds; the one over the tenth held a dot alone.
        Assert.Equal([new MeasuredRow(10, 10, 3.1)], red.MeasuredRows);
    }

    [Fact]
    public void The_same_colour_again_is_no_other_bead()
    {
        var same = In("dot", Piece.Beads[1].Colours[0]);
        Assert.Same(Piece.Beads[1], same.Beads[1]);
        Assert.Equal(Piece.MeasuredRows, same.MeasuredRows);
    }

    [Fact]
    public void A_piece_in_other_colours_is_its_colourway_and_one_of_another_order_or_with_another_bead_is_none()
    {
        Assert.True(Colourway.Is(In("round", Red), Piece));
        Assert.True(Colourway.Is(Piece, In("round", Red)));
        Assert.False(Colourway.Is(Piece with { Order = new([.. Piece.Order.Kinds.Reverse()], []) }, Piece));
        Assert.False(Colourway.Is(Piece with { Order = new([.. Piece.Order.Kinds.Skip(1)], []) }, Piece));
        Assert.False(Colourway.Is(Piece with { Beads = Piece.Beads.Add(SamplePieces.Bead("moon", "round", 5)) }, Piece));
    }

    [Fact]
    public void A_bead_that_the_piece_has_not_is_refused() => Assert.Throws<ArgumentException>(() => In("moon", Red));
}
