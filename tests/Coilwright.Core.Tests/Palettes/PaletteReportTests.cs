using Coilwright.Core.Colour;
using Coilwright.Core.Palettes;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using CsCheck;

namespace Coilwright.Core.Tests.Palettes;

public class PaletteReportTests
{
    private static PaletteReport Of(string[] colours, IEnumerable<int> kinds) => PaletteReport.Of(Reckoning.Of(Strung(colours, kinds), SamplePieces.Data));

    private static Piece Strung(string[] colours, IEnumerable<int> kinds) =>
        SamplePieces.Piece([.. colours.Select((c, i) => SamplePieces.Bead($"k{i}", "round", 6, colour: c.Length == 0 ? null : c))], kinds);

    private static IEnumerable<int> Turns(params int[] repeat) => Enumerable.Range(0, 72).Select(i => repeat[i % repeat.Length]);

    [Fact]
    public void Two_dye_lots_beside_each_other_vanish_and_two_named_colours_do_not()
    {
        var report = Of(["#2ab5b0", "#2eb2b2", "#c81e1e"], Turns(0, 1, 2));
        var lots = report.Pairs[0];
        Assert.Equal(("k0", "k1"), (lots.One.Kind.Bead.Id, lots.Other.Kind.Bead.Id));
        Assert.Equal(Telling.Vanishes, lots.At(Sight.Full).Told);
        Assert.Equal(lots, Assert.Single(report.Lost(Sight.Full)));
        Assert.All(report.Pairs.Skip(1), p => Assert.Equal(Telling.Apart, p.At(Sight.Full).Told));
    }

    // Red and green of about one lightness: what the most common colour blindness is known for.
    [Fact]
    public void Red_beside_green_is_lost_on_a_deutan_and_blue_beside_yellow_on_none_of_red_and_green()
    {
        var report = Of(["#b35a2e", "#7d7a1e", "#1f4fbf", "#f2d23a"], Turns(0, 1, 2, 3));
        var redGreen = report.Pairs.Single(p => (p.One.Kind.Letter, p.Other.Kind.Letter) == ("A", "B"));
        Assert.Equal(Telling.Apart, redGreen.At(Sight.Full).Told);
        Assert.True(redGreen.At(Sight.Deutan).Least < redGreen.At(Sight.Full).Least / 3);
        var blueYellow = report.Pairs.Single(p => (p.One.Kind.Letter, p.Other.Kind.Letter) == ("C", "D"));
        Assert.All(new[] { Sight.Protan, Sight.Deutan }, s => Assert.True(blueYellow.At(s).Least > 30));
        Assert.DoesNotContain(blueYellow, report.Lost(Sight.Protan));
    }

    [Fact]
    public void Colours_of_one_lightness_are_one_grey_in_print()
    {
        var report = Of(["#c05050", "#2f8f4f", "#ffffff"], Turns(0, 1, 2));
        Assert.Contains(report.Pairs.Single(p => p.Other.Kind.Letter == "B"), report.Lost(Sight.Grey));
        Assert.All(report.Pairs.Where(p => p.Other.Kind.Letter == "C"), p => Assert.Equal(Telling.Apart, p.At(Sight.Grey).Told));
    }

    [Fact]
    public void What_vanishes_to_every_eye_is_not_told_again_for_each()
    {
        var report = Of(["#2ab5b0", "#2eb2b2"], Turns(0, 1));
        Assert.Single(report.Lost(Sight.Full));
        Assert.All(new[] { Sight.Protan, Sight.Deutan, Sight.Tritan, Sight.Grey }, s => Assert.Empty(report.Lost(s)));
    }

    [Fact]
    public void Kinds_that_never_meet_are_told_last_and_lost_on_nobody()
    {
        // One turn of each, far longer than a turn: the first and the third kind are strung apart, two turns away.
        var report = Of(["#2ab5b0", "#c81e1e", "#2eb2b2"], Enumerable.Repeat(0, 40).Concat(Enumerable.Repeat(1, 40)).Concat(Enumerable.Repeat(2, 40)));
        var apart = report.Pairs[^1];
        Assert.Equal(("A", "C", false), (apart.One.Kind.Letter, apart.Other.Kind.Letter, apart.AreBeside));
        Assert.Equal(Telling.Vanishes, apart.At(Sight.Full).Told);
        Assert.Empty(report.Lost(Sight.Full));
    }

    // Counted over again bead by bead: each place along the wire, and every millimetre of the one turn over the other.
    [Fact]
    public void Places_and_lengths_are_those_that_a_walk_along_the_wire_counts() => Gen.Int[0, 3].Array[30, 90].Sample(kinds =>
    {
        var report = Of(["#111111", "#666666", "#aaaaaa", "#eeeeee"], kinds);
        var lie = report.Reckoned.Lie;
        var (turn, step) = (lie.WirePerTurnMm, 0.25);
        foreach (var pair in report.Pairs)
        {
            var (one, other) = (pair.One.Kind.KindIndex, pair.Other.Kind.KindIndex);
            bool Is(int a, int b) => (a, b) == (one, other) || (b, a) == (one, other);
            Assert.Equal(Enumerable.Range(1, kinds.Length - 1).Count(i => Is(kinds[i - 1], kinds[i])), pair.Places);
            var over = 0.0;
            for (var at = step / 2; at + turn < lie.BeadedMm; at += step)
                if (lie.BeadAt(at) is { } a && lie.BeadAt(at + turn) is { } b && Is(kinds[a], kinds[b])) over += step;
            // Each border of a bead, on either turn, is met within half a step.
            Near.Equal(over, pair.OverMm, step / 2 * (2 * kinds.Length + 1), pair);
        }
        var (places, lengths) = (report.Pairs.Sum(p => p.Places), report.Pairs.Sum(p => p.OverMm));
        if (places > 0) Assert.InRange(report.AlongMean!.Value, report.Pairs.Where(p => p.Places > 0).Min(p => p.At(Sight.Full).Least) - 1e-9, report.Pairs.Max(p => p.At(Sight.Full).Least) + 1e-9);
        Assert.Equal(lengths == 0, report.AcrossMean is null);
    }, iter: 20);

    [Fact]
    public void A_kind_without_a_colour_is_left_out_and_named()
    {
        var report = Of(["#2ab5b0", ""], Turns(0, 1));
        Assert.Equal("k1", Assert.Single(report.WithoutColour).Bead.Id);
        Assert.Empty(report.Pairs);
        Assert.Null(report.AlongMean);
    }

    [Fact]
    public void At_a_sight_the_piece_is_the_same_but_for_its_colours()
    {
        var report = Of(["#c81e1e", "#3a8f3a"], Turns(0, 1));
        Assert.Same(report.Reckoned, report.At(Sight.Full));
        foreach (var sight in new[] { Sight.Protan, Sight.Deutan, Sight.Tritan, Sight.Grey })
        {
            var seen = report.At(sight);
            Assert.Equal(report.Reckoned.Lie, seen.Lie);
            Assert.Equal(report.Kinds.Select(k => k.Seen(sight)[0]), seen.Piece.Beads.Select(b => b.Colours[0]));
            Assert.Equal(seen.Piece.Beads.Select(b => b.Colours[0]), seen.Counts.Select(k => k.Bead.Colours[0]));
            Assert.NotEqual(report.Reckoned.Piece.Beads[0].Colours[0], seen.Piece.Beads[0].Colours[0]);
            if (sight == Sight.Grey) Assert.All(seen.Piece.Beads, b => Assert.Equal((b.Colours[0].Red, b.Colours[0].Red), (b.Colours[0].Green, b.Colours[0].Blue)));
        }
    }

    [Fact]
    public void What_is_told_follows_from_the_least_and_the_most_that_the_simulations_find()
    {
        var all = Gen.Select(Gen.Byte, Gen.Byte, Gen.Byte, (r, g, b) => new Srgb(r, g, b).ToString());
        Gen.Select(all, all).Sample((one, other) =>
        {
            var pair = Of([one, other], Turns(0, 1)).Pairs[0];
            foreach (var seen in pair.Seen)
            {
                Assert.True(seen.Least <= seen.Most);
                var from = seen.Sight == Sight.Grey ? 8 : 5;
                Assert.Equal(seen.Most < from ? Telling.Vanishes : seen.Least < from ? Telling.Unsure : Telling.Apart, seen.Told);
            }
            Assert.NotEqual(Telling.Unsure, pair.At(Sight.Full).Told);
            Assert.NotEqual(Telling.Unsure, pair.At(Sight.Grey).Told);
        }, iter: 20);
    }
}
