using System.Collections.Immutable;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Beads;
using Coilwright.Core.Editing;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Core.StringingMaterials.MemoryWire;
using CsCheck;
using static Coilwright.Core.Tests.SamplePieces;

namespace Coilwright.Core.Tests.Arrangement;

/// <summary>Where the wire starts, the coil and the turns, left free to a search.</summary>
public class OtherwiseWornTests
{
    private static readonly ArrangeRequest Quick = new(Effort: 1);

    private static readonly string Mixed = "a1 b2 a2 b1 a1 a2 b2 a1 b1 a2 b1 a1 b2 a1 a1 b2 a1 b1";

    private static OrderJudgement AsStrung(Piece piece)
    {
        var space = new OrderSpace(piece, Data);
        return space.Judge(space.Problem.Start.AsSpan());
    }

    // Mixed on one side of the wrist and columns on the other.
    private static Piece WithPlaces(StartRange? range, double wristMm, params PlaceWish[] places)
    {
        var piece = ClusterPieces.Piece(Mixed, wristMm, free: new FreeToChange { StartAngle = range, Runs = FreeToChange.Usual.Runs.Add("bar", new RunRange(1, 2)) },
            wrists: [new(wristMm, 1), new(wristMm + 8, 1)]);
        return piece with { Wishes = piece.Wishes with { Places = [.. places] } };
    }

    [Theory]
    [InlineData(-20, 20, 10, new double[] { -20, -10, 0, 10, 20 })]
    [InlineData(0, 12, 5, new double[] { 0, 5, 10, 12 })]
    [InlineData(170, -170, 10, new double[] { 170, 180, -170 })]
    [InlineData(-180, 180, 90, new double[] { 180, -90, 0, 90 })]
    [InlineData(30, 30, 5, new double[] { 30 })]
    public void The_places_of_a_range_are_its_steps_and_its_last(double from, double to, double step, double[] places) =>
        Assert.Equal(places, new StartRange(from, to, step).Places);

    [Fact]
    public void A_piece_turned_is_the_piece_with_its_places_turned_back() => Gen.Select(Gen.Double[-180, 180], Gen.Double[150, 190]).Sample((by, wrist) =>
    {
        var piece = WithPlaces(null, wrist, new PlaceWish(-60, 75, LiningUpWish.Columns));
        var turned = piece with { Wearer = piece.Wearer with { StartAngleDeg = piece.Wearer.StartAngleDeg + by } };
        double Back(double deg) => Angles.NormalizedDeg(deg - by);
        var back = WithPlaces(null, wrist, new PlaceWish(Back(-60), Back(75), LiningUpWish.Columns));
        Near.Equal(AsStrung(back).Loss!.Value, AsStrung(turned).Loss!.Value, 1e-9, "");
    }, iter: 60);

    [Fact]
    public void The_start_that_is_offered_is_the_best_of_the_grid() => Gen.Double[150, 190].Sample(wrist =>
    {
        var range = new StartRange(90, -90, 15);
        var piece = WithPlaces(range, wrist, new PlaceWish(-60, 75, LiningUpWish.Columns));
        var before = AsStrung(piece);
        var judged = range.Places.Select(deg => AsStrung(piece with { Wearer = piece.Wearer with { StartAngleDeg = deg } })).ToArray();
        // A start that cures comes before one that does not.
        var wanted = (judged.Any(j => j.FailingMm.IsEmpty) ? judged.Where(j => j.FailingMm.IsEmpty) : judged).Min(j => j.Loss!.Value);
        var idea = Arranging.Of(piece, Data, Quick).Ideas.SingleOrDefault(i => i.Kind == IdeaKind.OtherStart);
        if (wanted > before.Loss - 0.005)
        {
            Assert.Null(idea);
            return;
        }
        Near.Equal(wanted, idea!.Judged.Loss!.Value, 1e-8, "");
        Assert.True(idea.IsProven);
        Assert.Equal(0, idea.Changed);
        var done = Assert.IsType<EditOutcome.Done>(PieceEditing.Apply(piece, idea.Edit, Data));
        Assert.Equal(piece.Order, done.Piece.Order);
        Near.Equal(idea.Judged.Loss.Value, AsStrung(done.Piece).Loss!.Value, 1e-12, "");
    }, iter: 15);

    [Fact]
    public void A_focal_off_the_top_is_brought_there_by_the_start_that_is_nearest()
    {
        var star = Bead("star", "round", 12, 12, 12, role: Role.Focal, colour: "#aa5522");
        var piece = ClusterPieces.Piece(Mixed, 165, free: new FreeToChange { StartAngle = new StartRange(-180, 180, 10), LengthWithinMm = 2 }, wrists: [new(165, 1)]);
        piece = piece with
        {
            Beads = piece.Beads.Add(star),
            Order = new StringingOrder(piece.Order.Kinds.Add(ClusterPieces.Kinds.Length), piece.Order.Groups),
        };
        var focal = Reckoning.Of(piece, Data).Focal!.AngleDeg;
        // Off by 47 degrees, and allowed 12: by steps of ten it must turn by 40, the nearest from which it lies within.
        piece = piece with
        {
            Wearer = piece.Wearer with { StartAngleDeg = Angles.NormalizedDeg(piece.Wearer.StartAngleDeg + 47 - focal) },
            Wishes = piece.Wishes with { FocalWithinDeg = 12 },
        };
        piece = piece with { Wishes = piece.Wishes with { Free = piece.Wishes.Free with { StartAngle = new StartRange(piece.Wearer.StartAngleDeg - 60 is var f && f < -180 ? f + 360 : f, piece.Wearer.StartAngleDeg, 10) } } };
        var arranged = Arranging.Of(piece, Data, Quick);
        Assert.Equal(NoIdeas.None, arranged.WhyNone);
        var idea = Assert.Single(arranged.Ideas, i => i.Kind == IdeaKind.OtherStart);
        Near.Equal(7, idea.After.Focal!.AngleDeg, 1e-6, "");
    }

    [Fact]
    public void Where_the_piece_is_turned_to_its_focal_no_other_start_is_looked_for()
    {
        var piece = WithPlaces(new StartRange(90, -90, 15), 165, new PlaceWish(-60, 75, LiningUpWish.Columns));
        Assert.Empty(Refits.Starts(piece with { Wearer = piece.Wearer with { FocalOnTop = true } }));
        Assert.NotEmpty(Refits.Starts(piece));
    }

    [Fact]
    public void The_coil_that_is_offered_is_the_best_of_those_that_may_be_taken()
    {
        // Four of these go to a turn of the piece's own coil, larger than the wrist asks: all stand in columns, which another coil undoes.
        var piece = ClusterPieces.Piece(string.Join(' ', Enumerable.Repeat("a1 b2", 9)), 130, wrists: [new(130, 1)]);
        var losses = Enumerable.Range(0, 25).Select(i => 180.0 + 2 * i).Select(mm => (Mm: mm, Loss: AsStrung(On(piece, mm)).Loss!.Value)).ToArray();
        var worst = losses.MaxBy(l => l.Loss);
        var coils = losses.Where(l => Math.Abs(l.Mm - worst.Mm) is > 0 and <= 12).Select(l => new CoilSize(CoilDatum.MeasuredLoop, l.Mm)).ToImmutableArray();
        piece = On(piece, worst.Mm);
        piece = piece with { Wishes = piece.Wishes with { Free = new FreeToChange { Coils = coils } } };
        var idea = Assert.Single(Arranging.Of(piece, Data, Quick).Ideas, i => i.Kind == IdeaKind.OtherCoil);
        var wire = Assert.IsType<SetWire>(idea.Edit).Wire;
        // None that warns of nothing new does better.
        var before = Reckoning.Of(piece, Data).Notices.Select(n => n.Code).ToHashSet();
        var sound = coils.Where(c => Reckoning.Of(On(piece, c.SizeMm), Data).Notices.All(n => n.Severity < Severity.Warn && n.Code != NoticeCodes.HangsLoose || before.Contains(n.Code))).ToArray();
        Assert.Equal(sound.Min(c => AsStrung(On(piece, c.SizeMm)).Loss), AsStrung(On(piece, wire.SizeMm)).Loss);
        Assert.Contains(new CoilSize(wire.Datum, wire.SizeMm), coils);
        Assert.True(idea.Judged.Loss < worst.Loss);

        static Piece On(Piece piece, double loopMm) => piece with { Wire = new CoilWire(0.62, CoilDatum.MeasuredLoop, loopMm, null) };
    }

    [Fact]
    public void Counts_are_allowed_when_the_turns_are_as_said() => Gen.Select(ClusterPieces.Any, Gen.Int[0, 4].Array[24], Gen.Double[-0.4, 0.4], Gen.Double[0, 0.5]).Sample((piece, draws, off, wide) =>
    {
        var turns = Reckoning.Of(piece, OneDraw).Lie.Turns;
        var range = new TurnsRange(Math.Max(0.1, turns + off), Math.Max(0.1, turns + off) + wide);
        var space = new OrderSpace(piece with { Wishes = piece.Wishes with { Free = piece.Wishes.Free with { Turns = range } } }, Data);
        int[] counts = [.. space.Gaps.Select((gap, g) => gap.Least + draws[g % draws.Length] % (gap.Most - gap.Least + 1))];
        var after = Reckoning.Of(piece with { Order = space.Strung(counts), Written = null }, OneDraw).Lie.Turns;
        // At the very edge a hair decides.
        if (Math.Abs(after - range.Least) < 1e-6 || Math.Abs(after - range.Most) < 1e-6) return;
        Assert.Equal(after >= range.Least && after <= range.Most, space.Problem.Allows(counts));
    }, iter: 60);

    [Fact]
    public void With_turns_said_the_best_of_all_is_found_also_where_the_piece_is_outside_of_them() => Gen.Select(Gen.Int[0, 1000], Gen.Double[-0.25, 0.25]).Sample((seed, off) =>
    {
        var pattern = string.Join(' ', Enumerable.Range(0, 10).Select(i => (((seed >> i) & 1) == 0 ? "a" : "b") + (1 + (seed / 7 + i * i) % 3) + (i % 2 == 0 ? "|" : "")));
        var piece = ClusterPieces.Piece(pattern, 160, free: new FreeToChange { Runs = FreeToChange.Usual.Runs.Add("bar", new RunRange(1, 3)) }, wrists: [new(160, 1), new(168, 1)]);
        var least = Reckoning.Of(piece, OneDraw).Lie.Turns + off;
        piece = piece with { Wishes = piece.Wishes with { Free = piece.Wishes.Free with { Turns = new TurnsRange(least, least + 0.2) } } };
        var problem = new OrderSpace(piece, Data).Problem;
        var all = new EveryCount().Find(problem);
        var byTurn = new TurnByTurn(rounds: 20).Find(problem, double.PositiveInfinity, null, CancellationToken.None, out var bound);
        var steps = new Descent(starts: 6, shakes: 40).Find(problem);
        if (all is null)
        {
            Assert.Null(steps);
            return;
        }
        Assert.True(bound <= all.Loss + 1e-9);
        // With a loss to begin from it goes back along the wire, and proves the best whatever the length asks.
        if (byTurn is not null) Near.Equal(all.Loss, byTurn.Loss, 1e-9, "");
        Assert.True(problem.Allows(all.Counts.AsSpan()));
        if (steps is null) return;
        Assert.True(problem.Allows(steps.Counts.AsSpan()));
        Assert.True(steps.Loss >= all.Loss - 1e-9);
    }, iter: 40);

    private static readonly ReckoningData OneDraw = Data with { Choices = Choices with { Shuffles = 1, SpreadDraws = 1, CurveStepMm = Wearer.MostWristMm } };
}
