using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Loads;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;
using CsCheck;

namespace Coilwright.Core.Tests.Settle;

/// <summary>Contacts and loads: slopes and second slopes against differences, over random shapes.</summary>
public class ContactSlopesTests
{
    private static readonly Gen<Point3> Wobble = Gen.Select(Gen.Double[-0.15, 0.15], Gen.Double[-0.15, 0.15], Gen.Double[-0.15, 0.15], (x, y, z) => new Point3(x, y, z));

    // Eight nodes round most of a loop of radius 1, thrown about, two beads that roll.
    private static readonly Gen<RodState> States = Gen.Select(Wobble.Array[8], Gen.Double[-1.0, 1.0].Array[9], (wobble, angles) =>
    {
        var state = RodState.Lay([.. wobble.Select((w, i) => new Point3(Math.Sin(i * 0.8), -0.1 * i, Math.Cos(i * 0.8)) + w)], m => new Point3(m.X, 0.2, m.Z), rolls: 2);
        var step = new double[state.Unknowns];
        for (var e = 0; e < state.Edges; e++) step[4 * e + 3] = angles[e];
        (step[state.FirstRoll], step[state.FirstRoll + 1]) = (angles[7], angles[8]);
        return state.Moved(step, 1);
    });

    private static Ball[] Balls(RodState state) =>
        [new(0, 0.4, 0.1, -0.15, 0.2, state.FirstRoll), new(2, 0.5, 0, 0, 0.25), new(4, 1.2, -0.1, 0.1, 0.15, state.FirstRoll + 1), new(6, 0.3, 0.1, 0.05, 0.1, 4 * 6 + 3)];

    [Fact]
    public void Slopes_of_weight_are_those_of_its_energy() => States.Sample(state =>
        Dense.AgreesWithDifferences(new WeightTerm(Balls(state).Select((b, i) => (b, 10.0 * (i + 1))), [1, 2, 3, 4, 5, 6, 7, 8], new Point3(0.6, 0, -0.8)), state, 0.004, 1e-7), iter: 50);

    [Fact]
    public void Slopes_of_holding_are_those_of_its_energy() => States.Sample(state =>
    {
        Dense.AgreesWithDifferences(new HoldTerm(3, new Point3(0.1, 0.2, 0.3), new Point3(0.6, 0, -0.8)), state, 0.004, 1e-7);
        Dense.AgreesWithDifferences(new HairTerm(state.Moved(Enumerable.Repeat(0.1, state.Unknowns).ToArray(), 1), 0.3, 0.7), state, 0.004, 1e-7);
    }, iter: 10);

    // Small balls in a small wrist, so that all are near it and none in it.
    [Fact]
    public void Slopes_of_the_wrist_are_those_of_its_energy() => States.Sample(state =>
        Dense.AgreesWithDifferences(new WristTerm(Balls(state), new WristSection(2.4, 0.7, 0.2), new ContactBarrier(0.7, 1.5)), state, 0.002, 1e-6), iter: 50);

    [Fact]
    public void Slopes_between_turns_are_those_of_their_energy() => States.Sample(state =>
    {
        // All of them meet, as if each were far off on the wire.
        var term = new TurnsTerm(Balls(state), [0, 0, 10, 0, 20, 0, 30], 5, new ContactBarrier(0.7, 2));
        Assert.True(term.Renew(state));
        Assert.NotEmpty(term.Elements);
        Dense.AgreesWithDifferences(term, state, 0.002, 1e-6);
    }, iter: 50);

    // Bends here run up to 2 tan 0.6; past the most bend there is no energy.
    [Fact]
    public void Slopes_along_the_row_are_those_of_their_energy() => States.Sample(state =>
    {
        var (a, b) = (new HingeSides(1.3, 0.8, state.FirstRoll), new HingeSides(0.7, 1.2, state.FirstRoll + 1));
        Dense.AgreesWithDifferences(new RowTerm([new(1, 2.5, 0.5, a, HingeSides.Round), new(3, 2.2, 0.4, HingeSides.Round, HingeSides.Round), new(5, 2.5, 0.6, b, a)], 8, new ContactBarrier(0.7, 4)), state, 0.002, 1e-6);
    }, iter: 50);

    // What is told to be no more than the distance is none: on an axis it is the distance itself, but for rounding.
    [Fact]
    public void What_is_far_from_the_wrist_is_never_told_to_be_farther() => Gen.Select(Gen.Double[0.3, 1.0], Gen.Double[0, 2 * Math.PI], Gen.Double[1.001, 4.0], Gen.Double[-0.3, 0.3]).Sample((aspect, angle, out_, taper) =>
    {
        var wrist = new WristSection(160, aspect, taper);
        var scale = wrist.ScaleAt(20);
        var place = new Point3(out_ * scale * wrist.HalfWidthMm * Math.Sin(angle), 20, out_ * scale * wrist.HalfThicknessMm * Math.Cos(angle));
        Assert.True(wrist.AtLeastMm(place) <= wrist.DistanceMm(place) + 1e-9, $"{wrist.AtLeastMm(place)} {wrist.DistanceMm(place)}");
        var top = new Point3(0, 20, 3 * wrist.HalfThicknessMm);
        Near.Equal(wrist.DistanceMm(top), wrist.AtLeastMm(top), 1e-9);
    });

    // Tolerance: the distance to the nearest of so many points round the ellipse is off by the square of half their spacing over twice the distance.
    [Fact]
    public void Distance_from_the_wrist_is_that_to_its_nearest_point() => Gen.Select(Gen.Double[0.3, 1.0], Gen.Double[0, 2 * Math.PI], Gen.Double[1.05, 3.0]).Sample((aspect, angle, out_) =>
    {
        var wrist = new WristSection(160, aspect, 0);
        var place = new Point3(out_ * wrist.HalfWidthMm * Math.Sin(angle), 3, out_ * wrist.HalfWidthMm * Math.Cos(angle));
        const int Points = 20_000;
        double nearest = double.PositiveInfinity, round = 0;
        Point3 Of(int i) => new(wrist.HalfWidthMm * Math.Sin(2 * Math.PI * i / Points), 3, wrist.HalfThicknessMm * Math.Cos(2 * Math.PI * i / Points));
        for (var i = 0; i < Points; i++)
        {
            nearest = Math.Min(nearest, (place - Of(i)).Length);
            round += (Of(i + 1) - Of(i)).Length;
        }
        Near.Equal(nearest, wrist.DistanceMm(place), 1e-4);
        // The girth is the tape's: the formula for it is good to 1e-6 of it, the polygon to less.
        Near.Equal(160, round, 160 * 2e-5);
    }, iter: 20);

    [Fact]
    public void No_step_passes_through_another_turn_or_the_wrist() => Gen.Select(States, Gen.Double[-3.0, 3.0].Array[33]).Sample((state, step) =>
    {
        var turns = new TurnsTerm(Balls(state), [0, 0, 10, 0, 20, 0, 30], 5, new ContactBarrier(0.7, 0.05));
        var wrist = new WristTerm(Balls(state), new WristSection(2.4, 0.7, 0.2), new ContactBarrier(0.7, 0.05));
        turns.Renew(state);
        if (double.IsInfinity(turns.Value(state) + wrist.Value(state))) return;
        // No edge turns by more than this in a step.
        var share = wrist.FurthestShare(state, step, turns.FurthestShare(state, step, 0.1));
        Assert.InRange(share, double.Epsilon, 0.1);
        for (var k = 1; k <= 50; k++)
        {
            var there = state.Moved(step, share * k / 50);
            Assert.True(double.IsFinite(wrist.Value(there)));
            foreach (var pair in turns.Nearer(there, 0)) Assert.Fail($"{pair} overlap.");
        }
    }, iter: 200);

    // Reference: n flat beads of length a strung on one loop hinge on their inner edges until those are a regular n-sided figure, whose inscribed circle has the radius
    // a / (2 tan(pi / n)) (plane geometry; the row of beads that makers close by hand). Tolerance: the barrier of height m leaves each bend m / M short of its limit under the
    // moment M with which the wire curls, and n of these, seen from a radius away, are n R m / M; as much again for the sum's own shape.
    [Theory]
    [InlineData(32, 5.0, 8.0)]
    [InlineData(60, 3.0, 4.0)]
    public void Flat_beads_close_to_the_ring_that_their_inner_edges_make(int count, double length, double thickness)
    {
        var inner = length / (2 * Math.Tan(Math.PI / count));
        var radius = inner + thickness / 2;
        var apart = 2 * radius * Math.Tan(Math.PI / count);
        // Laid a fifth wider, with fewer beads than would close; the wire would curl a tenth tighter.
        var (open, curl) = (1.2 * radius, 0.9 * radius);
        RodState Laid(double r) => RodState.Lay([.. Enumerable.Range(0, count + 1).Select(i => 2 * i * Math.Asin(apart / (2 * r))).Select(a => new Point3(r * Math.Sin(a), 0, r * Math.Cos(a)))], m => m);
        var model = new RodModel(Laid(curl), (2275, 2275), 1750, 7e4);
        var state = Laid(open);
        // Flat ends: the edges meet where the bend times half the thickness is the play between the faces.
        Hinge[] hinges = [.. Enumerable.Range(1, count - 1).Select(i => new Hinge(i, (apart - length) / (thickness / 2), thickness / 2, HingeSides.Round, HingeSides.Round))];
        foreach (var height in new[] { 1e-2, 1e-3, 1e-4, 1e-5 })
        {
            var row = new RowTerm(hinges, count + 1, new ContactBarrier(height, 0.2));
            var rest = TestRods.Rest(model, state, TestRods.Held(state, [0, 1], [0], flat: true), new RestOptions { ResidualN = 1e-6, ReachMm = radius }, row);
            Assert.Equal(RestExit.AtRest, rest.Exit);
            state = rest.State;
        }
        var off = 2 * count * radius * 1e-5 / (2275 * (1 / curl - 1 / radius));
        Assert.InRange(off, 1e-4, 0.01);
        // Closed: the last bead's end comes back to the first's start, and every inner edge lies as far in as the figure's sides.
        Near.Equal(0, (state.Positions[0] - state.Positions[^1]).Length, off);
        var middle = 1.0 / count * state.Positions.Take(count).Aggregate(default(Point3), (a, b) => a + b);
        for (var e = 0; e < count; e++)
            Near.Equal(inner, (0.5 * (state.Positions[e] + state.Positions[e + 1]) - middle).Length - thickness / 2, off);
    }
}
