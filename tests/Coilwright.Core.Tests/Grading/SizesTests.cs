using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Costing;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing.Notation;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Core.Tests.Arrangement;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;
using Size = Coilwright.Core.Grading.Size;

namespace Coilwright.Core.Tests.Grading;

public class SizesTests
{
    private static readonly ImmutableArray<double> Wrists = [145, 152, 160, 163, 170, 178, 190];

    private static Sizes Of(Piece piece, params double[] wrists) => Grader.Of(piece, Data, new SizesRequest(wrists.Length > 0 ? [.. wrists] : Wrists, Effort: 1));

    // What holds for every size of every design ---------------------------------------------------------------------------------------------

    [Fact]
    public void The_base_size_is_the_design_unchanged() => GradedPieces.Any.Sample(piece =>
    {
        var own = Assert.Single(Of(piece, piece.Wearer.WristMm).All);
        Assert.True(own.IsBase);
        Assert.True(own.IsUnchanged);
        Assert.Equal(piece.OrderText, own.Piece.OrderText);
        Assert.Equal(piece.Wire, own.Piece.Wire);
        Assert.Equal(Reckoning.Of(piece, Data).Lie.BeadedMm, own.Reckoned.Lie.BeadedMm);
    }, iter: 12);

    [Fact]
    public void Every_size_is_an_order_that_reads_back_with_her_comments_and_groups() => GradedPieces.Any.Sample(piece =>
    {
        foreach (var size in Of(piece).All)
        {
            var read = OrderNotation.Read(size.Piece.OrderText!, [.. size.Piece.Beads.Select(b => b.Id)]);
            Assert.NotNull(read.Order);
            Assert.Equal(size.Piece.Order.Kinds.AsEnumerable(), read.Order.Kinds);
            Assert.Equal(size.Piece.Order.Groups.AsEnumerable(), read.Order.Groups);
            Assert.StartsWith("# as it came\na = 3 ball   # three\nb = 4 chip\n", size.Piece.OrderText, StringComparison.Ordinal);
        }
    }, iter: 15);

    [Fact]
    public void Groups_stay_whole_and_the_focal_stays_one() => GradedPieces.Any.Sample(piece =>
    {
        foreach (var size in Of(piece).All)
        {
            Assert.All(size.Piece.Order.ReadingGroups, g => Assert.Equal(
                Enumerable.Repeat(g.Name == "a" ? 0 : 1, g.Name == "a" ? 3 : 4), size.Piece.Order.Kinds.Skip(g.First).Take(g.Count)));
            Assert.Equal(piece.Order.Kinds.Count(k => k == GradedPieces.Moon), size.Piece.Order.Kinds.Count(k => k == GradedPieces.Moon));
            // Nothing of a cluster stands outside of one.
            Assert.Equal(size.Piece.Order.ReadingGroups.Sum(g => g.Count), size.Piece.Order.Kinds.Count(k => k <= 1));
        }
    }, iter: 15);

    [Fact]
    public void A_size_comes_out_within_the_tolerance_or_says_by_how_much_it_does_not() => GradedPieces.Any.Sample(piece =>
    {
        var sizes = Of(piece);
        var turns = sizes.Base.Fit.TurnsWorn;
        foreach (var size in sizes.All)
        {
            // No overlap and no turns are stated: as many turns as the design has on its own wrist.
            Near.Equal(turns * size.Reckoned.Worn.WirePerTurnMm, size.WantedMm, 1e-9, "wanted");
            Near.Equal(size.Reckoned.Lie.BeadedMm - size.WantedMm, size.OffMm, 1e-9, "off");
            Assert.Equal(Math.Abs(size.OffMm) <= Choices.OverlapToleranceMm, size.ComesOut);
            Assert.Equal(size.WristMm, size.Piece.Wearer.WristMm);
        }
        // Dots of six millimetres in every run: there is always a way.
        Assert.All(sizes.All, size => Assert.True(size.ComesOut, $"{size.WristMm}: {size.OffMm}"));
    }, iter: 15);

    [Fact]
    public void A_larger_wrist_never_has_the_shorter_row() => GradedPieces.Any.Sample(piece =>
    {
        var sizes = Of(piece, [.. Enumerable.Range(0, 12).Select(i => 150 + 3.0 * i)]).All.Where(s => s.ComesOut).ToArray();
        foreach (var (smaller, larger) in sizes.Zip(sizes.Skip(1)))
            Assert.True(larger.Reckoned.RuledMm >= smaller.Reckoned.RuledMm - 1e-9, $"{smaller.WristMm}: {smaller.Reckoned.RuledMm}, {larger.WristMm}: {larger.Reckoned.RuledMm}");
    }, iter: 8);

    [Fact]
    public void What_changed_from_the_base_adds_up_to_the_order() => GradedPieces.Any.Sample(piece =>
    {
        var sizes = Of(piece);
        foreach (var size in sizes.All)
        {
            var beads = piece.Order.Count + size.Runs.Sum(r => r.More)
                + size.Groups.Sum(g => (g.IsMore ? 1 : -1) * (g.Beads.Sum(b => b.Count) + g.Beside.Sum(b => b.Count)));
            Assert.Equal(size.Piece.Order.Count, beads);
            Assert.All(size.Runs, r => Assert.Equal((sizes.Gaps[r.Gap - 1].Count, piece.Beads[sizes.Gaps[r.Gap - 1].Kind].Id), (r.From, r.BeadId)));
        }
    }, iter: 15);

    [Fact]
    public void What_is_mirrored_stays_mirrored() => GradedPieces.Mirrored.Sample(piece =>
    {
        var sizes = Of(piece);
        Assert.True(sizes.IsMirrored);
        foreach (var size in sizes.All)
        {
            var order = size.Piece.Order;
            Assert.Equal(order.Kinds.Reverse(), order.Kinds);
            Assert.Equal(order.ReadingGroups.Reverse().Select(g => (g.Name, order.Count - g.End)), order.ReadingGroups.Select(g => (g.Name, g.First)));
            Assert.Equal(GradedPieces.Moon, order.Kinds[order.Count / 2]);
        }
    }, iter: 15);

    [Fact]
    public void Materials_are_what_the_orders_string() => GradedPieces.Any.Sample(piece =>
    {
        var sizes = Of(piece);
        var materials = sizes.Materials;
        for (var i = 0; i < sizes.All.Length; i++)
        {
            Assert.Equal(MaterialsList.Of(sizes.All[i].Piece).Lines.Select(l => (l.KindIndex, l.Use)),
                materials.Lines.Where(l => l.Uses[i] > 0).Select(l => (l.KindIndex, l.Uses[i])));
            Assert.Equal(sizes.All[i].Piece.Order.Count, materials.Beads[i]);
        }
        Assert.All(materials.Lines, line =>
        {
            Assert.Equal(sizes.All.Max(s => s.Piece.Order.Kinds.Count(k => k == line.KindIndex)), line.Most);
            Assert.Equal(sizes.All.Sum(s => s.Piece.Order.Kinds.Count(k => k == line.KindIndex)), line.ForOneOfEach.Use);
        });
    }, iter: 12);

    // The counts -----------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void No_counts_of_the_wanted_length_do_better_where_it_says_so()
    {
        var proven = 0;
        Gen.Select(Gen.Select(Gen.Bool, Gen.Int[1, 2], Gen.Bool).Array[4, 5], Gen.Int[1, 2], Gen.Int[2, 14]).Sample((clusters, wish, larger) =>
        {
            var text = "a = 3 ball\nb = 4 chip\n" + string.Join(", ", clusters.Select(c => "2 a, " + (c.Item1 ? "2 b" : "b") + $", {c.Item2} " + (c.Item3 ? "bar" : "dot"))) + ", b";
            var piece = GradedPieces.Written(text, 180, (LiningUpWish)wish);
            var size = Assert.Single(Of(piece, 180 + larger).All);
            if (!size.IsProven || !size.ComesOut || size.IsUnchanged || !size.Groups.IsEmpty) return;
            proven++;
            var wrist = size.Piece.Wearer;
            var space = new OrderSpace(piece with { Wearer = wrist, Wishes = piece.Wishes with { Wrists = [new WeighedWrist(wrist.WristMm, 1)] } }, Data);
            var chosen = space.Gaps.Select((g, i) => size.Runs.Where(r => r.Gap == i + 1).Select(r => r.To).DefaultIfEmpty(g.Count).Single()).ToArray();
            var lies = new Core.Fit.WornLies(piece with { Wearer = wrist }, null, Choices);
            foreach (var counts in RandomProblems.EveryChoice(new GapProblem(space.Problem.Gaps, space.Problem.Kinds, space.Problem.StepMm, [], 0)))
            {
                var order = space.Strung(counts);
                var laid = new Core.Fit.WornLies(piece with { Wearer = wrist, Order = order }, null, Choices);
                var lie = laid.At(laid.Turns.On(wrist.WristMm).CircumferenceMm);
                // A hair inside of what the search keeps to, so that rounding at its border decides nothing.
                if (Math.Abs(lie.BeadedMm - size.WantedMm) > 0.8 * Choices.OverlapToleranceMm - 0.3) continue;
                // Half a percent of the groups' length is not worth a less even row.
                Assert.True(space.Problem.Loss(counts) >= space.Problem.Loss(chosen) - 0.005 - 1e-9, $"{string.Join(',', counts)} beats {string.Join(',', chosen)}");
            }
        }, iter: 60, threads: 1);
        Assert.True(proven > 10, $"{proven}");
    }

    [Fact]
    public void Beads_to_hand_are_not_exceeded()
    {
        const string text = "a = 3 ball\nb = 4 chip\n9 (a, dot, b, 2 dot)";
        var dots = GradedPieces.Written(text).Order.Kinds.Count(k => k == 2);
        var piece = GradedPieces.Written(text, free: new FreeToChange { OnHand = FreeToChange.Usual.OnHand.Add("dot", dots + 3).Add("ball", 30).Add("chip", 36) });
        var sizes = Of(piece, 150, 165, 175, 220);
        Assert.All(sizes.All, s =>
        {
            Assert.True(s.Piece.Order.Kinds.Count(k => k == 2) <= dots + 3);
            Assert.True(s.Piece.Order.Kinds.Count(k => k == 0) <= 30);
        });
        // Three dots more and one group of balls reach a little further, not that far.
        Assert.False(sizes.All[^1].ComesOut);
        Assert.True(sizes.All[^1].OffMm < -Choices.OverlapToleranceMm);
    }

    [Fact]
    public void A_kind_that_is_not_named_stays_as_it_is_strung()
    {
        var free = new FreeToChange { Runs = FreeToChange.Usual.Runs.Add("dot", new RunRange(1, 5)) };
        var piece = GradedPieces.Written("a = 3 ball\nb = 4 chip\n8 (a, 2 dot, b, bar)", free: free);
        Assert.All(Of(piece).All.SelectMany(s => s.Runs), run => Assert.Equal("dot", run.BeadId));
    }

    [Fact]
    public void Ends_that_are_wanted_over_each_other_lie_so_in_every_size()
    {
        var piece = GradedPieces.Written("a = 3 ball\nb = 4 chip\n11 (a, 2 dot, b, 2 dot)");
        var turns = Reckoning.Of(piece, Data).Fit.OverlapTurns;
        piece = piece with { Ends = piece.Ends with { OverlapMm = 12 } };
        Assert.All(Of(piece).All.Where(s => !s.IsBase), size =>
        {
            Near.Equal(turns * size.Reckoned.Worn.WirePerTurnMm + 12, size.WantedMm, 1e-9, "wanted");
            Assert.True(size.ComesOut);
            Assert.InRange(size.Reckoned.Fit.EndsOverlapMm, 12 - Choices.OverlapToleranceMm, 12 + Choices.OverlapToleranceMm);
        });
    }

    [Fact]
    public void A_focal_that_is_not_turned_to_the_top_stays_where_it_may_be()
    {
        var piece = GradedPieces.Written("a = 3 ball\nb = 4 chip\n6 (a, 2 dot, b, 2 dot), moon, 6 (2 dot, a, 2 dot, b)", wish: LiningUpWish.Mix);
        var angle = Reckoning.Of(piece, Data).Focal!.AngleDeg;
        piece = piece with { Wearer = piece.Wearer with { StartAngleDeg = 180 - angle } };
        Assert.All(Of(piece).All, size => Assert.InRange(Math.Abs(size.Reckoned.Focal!.AngleDeg), 0, Choices.FocalWithinDeg));
    }

    // Groups at the ends ---------------------------------------------------------------------------------------------------------------------

    [Theory]
    // A plain repeat goes on as it went, and stays one phrase.
    [InlineData("12 (3 ball, dot)", 183, "13 (3 ball, dot)")]
    [InlineData("12 (3 ball, dot)", 217, "15 (3 ball, dot)")]
    [InlineData("40 ball", 200, "46 ball")]
    public void A_repeat_is_strung_more_often(string text, double wristMm, string larger)
    {
        var size = Assert.Single(Of(GradedPieces.Written(text), wristMm).All);
        Assert.True(size.ComesOut);
        Assert.Equal(larger, size.Piece.OrderText!.Trim());
        Assert.Empty(size.Runs);
        Assert.All(size.Groups, g => Assert.True(g.IsMore));
    }

    [Theory]
    [InlineData("a, dot, b, dot, a, dot, b, dot, a", true, "b, dot, a, dot, b, dot, a, dot, b, dot, a, dot, b")]
    // None is like the outermost: the one just inside, so that like does not stand beside like.
    [InlineData("a, dot, b, 2 dot, moon, 2 dot, b, dot, a", true, "b, dot, a, dot, b, 2 dot, moon, 2 dot, b, dot, a, dot, b")]
    // The focal is never strung twice.
    [InlineData("a, dot, moon, dot, a", true, "a, dot, a, dot, moon, dot, a, dot, a")]
    [InlineData("a, dot, b, 2 dot, moon, 2 dot, b, dot, a", false, "b, 2 dot, moon, 2 dot, b")]
    public void Groups_go_on_and_off_as_the_design_goes_on(string text, bool more, string after)
    {
        const string groups = "a = 3 ball\nb = 4 chip\n";
        var piece = GradedPieces.Written(groups + text);
        var stepped = EndGroups.StepBoth(Regrouped.Unchanged(piece), Data, more);
        var meant = GradedPieces.Written(groups + after);
        Assert.Equal(meant.Order.Kinds.AsEnumerable(), stepped!.Piece.Order.Kinds);
        Assert.Equal(meant.Order.ReadingGroups.AsEnumerable(), stepped.Piece.Order.ReadingGroups);
    }

    [Fact]
    public void A_mirrored_phrase_stays_one_when_both_its_ends_change()
    {
        var piece = GradedPieces.Written("a = 3 ball\nb = 4 chip\nmirror (a, dot, b, 2 dot) around moon");
        var off = EndGroups.StepBoth(Regrouped.Unchanged(piece), Data, more: false);
        Assert.EndsWith("mirror (b, 2 dot) around moon", off!.Piece.OrderText, StringComparison.Ordinal);
        var on = EndGroups.StepBoth(Regrouped.Unchanged(piece), Data, more: true);
        Assert.EndsWith("\nb, dot, mirror (a, dot, b, 2 dot) around moon, dot, b", on!.Piece.OrderText, StringComparison.Ordinal);
    }

    [Fact]
    public void What_cannot_come_out_is_said_with_the_nearest()
    {
        // Focals alone: nothing may change.
        var size = Assert.Single(Of(GradedPieces.Written("16 moon"), 190).All);
        Assert.False(size.ComesOut);
        Assert.True(size.IsUnchanged);
        Assert.True(size.OffMm < -Choices.OverlapToleranceMm);
    }

    // Coils ----------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void A_small_wrist_wants_a_smaller_coil_and_takes_one_that_is_allowed()
    {
        var piece = GradedPieces.Written("14 (3 ball, dot)", 165);
        var loose = Assert.Single(Of(piece, 130).All);
        Assert.Equal(CoilAnswer.SmallerWanted, loose.Coil.Answer);
        Near.Equal(130 + 2 * Math.PI * 3, loose.Coil.AskedLoopMm, 1e-9, "the wrist and half a bead all round");

        var allowed = new FreeToChange { Coils = [new CoilSize(CoilDatum.MeasuredLoop, 150), new CoilSize(CoilDatum.MeasuredLoop, 170)] };
        var other = Assert.Single(Of(piece with { Wishes = piece.Wishes with { Free = allowed } }, 130).All);
        Assert.Equal((CoilAnswer.Other, 150.0), (other.Coil.Answer, other.Coil.Wire.SizeMm));
        Assert.Equal(150, other.Piece.Wire.LoopMm);
        Assert.True(other.Piece.Order.Count < loose.Piece.Order.Count);
        Assert.Equal(CoilAnswer.Own, Assert.Single(Of(piece with { Wishes = piece.Wishes with { Free = allowed } }, 163).All).Coil.Answer);
    }

    // The call -------------------------------------------------------------------------------------------------------------------------------

    [Fact]
    public void The_same_effort_and_seed_give_the_same_sizes()
    {
        var piece = GradedPieces.Written("a = 3 ball\nb = 4 chip\n9 (a, dot, b, 2 dot), a", wish: LiningUpWish.Mix);
        Assert.Equal(Of(piece).All.Select(s => s.Piece.OrderText), Of(piece).All.Select(s => s.Piece.OrderText));
    }

    [Fact]
    public void Sizes_come_by_wrist_and_each_is_told()
    {
        var told = new List<double>();
        var piece = GradedPieces.Written("14 (3 ball, dot)");
        var sizes = Grader.Of(piece, Data, new SizesRequest([175, 150, 165]), new Told(told));
        Assert.Equal([150, 165, 175], sizes.All.Select(s => s.WristMm));
        Assert.Equal(told, sizes.All.Select(s => s.WristMm));
    }

    [Fact]
    public void Stopped_at_once_it_gives_back_what_it_has()
    {
        using var stopped = new CancellationTokenSource();
        stopped.Cancel();
        var sizes = Grader.Of(GradedPieces.Written("14 (3 ball, dot)"), Data, new SizesRequest(Wrists), cancel: stopped.Token);
        Assert.True(sizes.WasStopped);
        Assert.Empty(sizes.All);
        Assert.Empty(sizes.Materials.Lines);
    }

    [Theory]
    [InlineData(new double[0])]
    [InlineData(new[] { 150.0, 150 })]
    [InlineData(new[] { 49.0 })]
    [InlineData(new[] { double.NaN })]
    public void Wrists_that_make_no_table_are_refused(double[] wrists) =>
        Assert.ThrowsAny<ArgumentException>(() => Grader.Of(GradedPieces.Written("14 (3 ball, dot)"), Data, new SizesRequest([.. wrists])));

    [Fact]
    public void Usual_wrists_are_her_own_among_the_wished_or_adults()
    {
        var piece = GradedPieces.Written("14 (3 ball, dot)", 163);
        Assert.Equal([150, 163, 165, 180], UsualWrists.Of(piece, Data));
        Assert.Equal([155, 163], UsualWrists.Of(piece with { Wishes = piece.Wishes with { Wrists = [new WeighedWrist(163, 1), new WeighedWrist(155, 2)] } }, Data));
        Assert.Equal([120, 130, 140], UsualWrists.Of(piece with { Wearer = piece.Wearer with { WristMm = 130, IsChild = true } }, Data));
    }

    [Fact]
    public void A_few_wrists_run_from_the_smallest_to_the_largest_with_her_own()
    {
        var many = GradedPieces.Written("14 (3 ball, dot)", 163);
        many = many with { Wishes = many.Wishes with { Wrists = [.. Enumerable.Range(0, 10).Select(i => new WeighedWrist(150 + 3 * i, 1))] } };
        Assert.Equal([150, 159, 163, 168, 177], UsualWrists.Few(many, Data));
        Assert.Equal([150, 163, 165, 180], UsualWrists.Few(GradedPieces.Written("14 (3 ball, dot)", 163), Data));
    }

    private sealed class Told(List<double> wrists) : IProgress<Size>
    {
        public void Report(Size value) => wrists.Add(value.WristMm);
    }
}
