using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;
using CsCheck;

namespace Coilwright.Core.Tests.Settle;

public class RodSlopesTests
{
    private static readonly Gen<Point3> Wobble = Gen.Select(Gen.Double[-0.35, 0.35], Gen.Double[-0.35, 0.35], Gen.Double[-0.35, 0.35], (x, y, z) => new Point3(x, y, z));

    // Six nodes round a loop, each thrown about, so that an edge turns against the next by anything up to a right angle.
    private static Gen<RodState> States(bool closed) => Gen.Select(Wobble.Array[6], Gen.Double[-2.0, 2.0].Array[6], (wobble, angles) =>
    {
        var nodes = wobble.Select((w, i) => new Point3(Math.Cos(i * Math.PI / 3), 0.2 * (closed ? 0 : i), Math.Sin(i * Math.PI / 3)) + w).ToArray();
        var state = RodState.Lay(nodes, middle => middle + new Point3(0.1, 0.3, 0.2), closed);
        var step = new double[state.Unknowns];
        for (var e = 0; e < state.Edges; e++) step[4 * e + 3] = angles[e];
        return state.Moved(step, 1);
    });

    private static RodModel Model(RodState natural) => new(natural, (1.3, 0.7), 0.9, 40);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Slopes_of_bending_and_twisting_are_those_of_their_energy(bool closed) =>
        Gen.Select(States(closed), States(closed)).Sample((natural, state) => Dense.AgreesWithDifferences(new BendTerm(Model(natural)), state, 0.004, 1e-7), iter: 100);

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Slopes_of_stretching_are_those_of_its_energy(bool closed) =>
        Gen.Select(States(closed), States(closed)).Sample((natural, state) => Dense.AgreesWithDifferences(new StretchTerm(Model(natural)), state, 0.004, 1e-7), iter: 100);

    [Fact]
    public void A_wire_as_it_is_at_rest_has_no_energy_and_nothing_pulls_at_it() => States(false).Sample(state =>
    {
        var model = Model(state);
        foreach (IEnergyTerm term in new IEnergyTerm[] { new BendTerm(model), new StretchTerm(model) })
        {
            var slopes = new double[state.Unknowns];
            term.AddSlopes(state, slopes, null, false);
            Assert.Equal(0, term.Value(state));
            Assert.All(slopes, s => Assert.Equal(0, s));
        }
    });

    [Fact]
    public void Moved_and_turned_as_a_whole_a_wire_has_the_same_energy() => Gen.Select(States(false), States(false), Gen.Double[-3.0, 3.0]).Sample((natural, state, angle) =>
    {
        var (sin, cos) = Math.SinCos(angle);
        Point3 Turned(Point3 v) => new(cos * v.X - sin * v.Y + 5, sin * v.X + cos * v.Y - 2, v.Z + 1);
        var model = Model(natural);
        var step = new double[state.Unknowns];
        // In many small turns, as a wire would be carried: the directions are carried along, so that their own turning is undone by hand.
        var other = RodState.Lay([.. state.Positions.Select(Turned)], _ => new Point3(0, 0, 1));
        for (var e = 0; e < state.Edges; e++)
        {
            var first = Turned(state.Axes(e).First) - Turned(default);
            step[4 * e + 3] = Turning.SignedAngle(other.Axes(e).First, first, other.Tangents[e]);
        }
        other = other.Moved(step, 1);
        // Twist is known to whole turns only from how a wire came there; compare what does not ask for it.
        for (var i = 1; i < state.Positions.Length - 1; i++)
        {
            var (a, b) = (new NodeBend(state, i), new NodeBend(other, i));
            Near.Equal(a.Bend1, b.Bend1, 1e-10);
            Near.Equal(a.Bend2, b.Bend2, 1e-10);
            Near.Equal(0, Math.IEEERemainder(a.Twist - b.Twist, 2 * Math.PI), 1e-10);
        }
        Near.Equal(new StretchTerm(model).Value(state), new StretchTerm(model).Value(other), 1e-9);
    }, iter: 200);

    [Fact]
    public void Made_convex_no_element_falls_and_one_that_did_not_stays_as_it_was() => Gen.Double[-1.0, 1.0].Array[36].Sample(entries =>
    {
        var m = new double[36];
        for (var r = 0; r < 6; r++)
            for (var c = 0; c < 6; c++) m[r * 6 + c] = entries[r * 6 + c] + entries[c * 6 + r];
        var before = MathNet.Numerics.LinearAlgebra.Double.DenseMatrix.Create(6, 6, (r, c) => m[r * 6 + c]).Evd(MathNet.Numerics.LinearAlgebra.Symmetricity.Symmetric);
        var expected = before.EigenVectors * MathNet.Numerics.LinearAlgebra.Double.DenseMatrix.CreateDiagonal(6, 6, i => Math.Max(0, before.EigenValues[i].Real)) * before.EigenVectors.Transpose();
        SmallMatrix.MakeConvex(m, 6);
        for (var r = 0; r < 6; r++)
            for (var c = 0; c < 6; c++) Near.Equal(expected[r, c], m[r * 6 + c], 1e-12);
    });

    [Fact]
    public void Twist_is_followed_beyond_half_a_turn()
    {
        var state = RodState.Lay([default, new Point3(1, 0, 0), new Point3(2, 0, 0)], _ => new Point3(0, 0, 1));
        var step = new double[state.Unknowns];
        step[7] = 0.5;
        for (var k = 0; k < 20; k++) state = state.Moved(step, 1);
        Near.Equal(10, new NodeBend(state, 1).Twist, 1e-12);
    }
}
