using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>How far apart a bead's sides are, against its inner side: what decides in which direction it lets the wire bend.</summary>
/// <param name="Outer">The outer side's reach from the hole over the inner side's.</param>
/// <param name="Side">The reach along the arm over the inner side's.</param>
/// <param name="Angle">The unknown by which the bead is turned; -1 for one that is round about its hole.</param>
public readonly record struct HingeSides(double Outer, double Side, int Angle)
{
    /// <summary>A bead round about its hole.</summary>
    public static HingeSides Round { get; } = new(1, 1, -1);
}

/// <summary>Two neighbouring beads that hinge on each other's edges.</summary>
/// <param name="Node">The node between them.</param>
/// <param name="MostBend">The bend 2 tan(angle / 2) at which they touch on the inner side, above 0.</param>
/// <param name="LeverMm">From the wire to where they touch, mm, above 0.</param>
/// <param name="Before">The bead before.</param>
/// <param name="After">The bead after.</param>
public readonly record struct Hinge(int Node, double MostBend, double LeverMm, HingeSides Before, HingeSides After)
{
    /// <summary>Whether both are round about their hole.</summary>
    public bool IsRound => Before == HingeSides.Round && After == HingeSides.Round;
}

/// <summary>Keeps neighbours along the row apart: they hinge on their inner edges, which limits how much the wire can bend there.</summary>
/// <remarks>
/// <para>The gap is <c>lever (most bend - bend)</c>. For flat ends that is the distance between the two edges, divided by the cosine of half the angle;
/// for others it has the right zero and the right slope there. A bend another way than inwards counts as much more or less as the bead's side there is further
/// out or nearer in, half by either bead. Derived in docs/theory/settle.md.</para>
/// </remarks>
public sealed class RowTerm : IEnergyTerm
{
    // Where the wire is all but straight no side is the inner one; over this share of the most bend one goes over into the other.
    private const double SmoothShare = 0.01;
    private const int Local = BendSlopes.Local;

    private readonly Hinge[] _hinges;
    private readonly ContactBarrier _barrier;
    private readonly int[][] _kept;

    /// <summary>Makes it.</summary>
    /// <param name="hinges">The hinges, each at a node that bends.</param>
    /// <param name="nodes">Nodes of the wire.</param>
    /// <param name="barrier">What keeps neighbours apart.</param>
    public RowTerm(IReadOnlyList<Hinge> hinges, int nodes, ContactBarrier barrier)
    {
        (_hinges, _barrier) = ([.. hinges], barrier);
        var elements = new int[_hinges.Length][];
        _kept = new int[_hinges.Length][];
        for (var h = 0; h < _hinges.Length; h++)
        {
            var (i, before, after) = (_hinges[h].Node, _hinges[h].Before.Angle, _hinges[h].After.Angle);
            int a = 4 * (i == 0 ? nodes - 1 : i - 1), b = 4 * i, c = 4 * (i + 1 == nodes ? 0 : i + 1);
            // Places as BendSlopes spreads them: a node, the angle before, a node, the angle after, a node.
            int[] all = [a, a + 1, a + 2, before, b, b + 1, b + 2, after, c, c + 1, c + 2];
            _kept[h] = [.. Enumerable.Range(0, all.Length).Where(k => all[k] >= 0)];
            elements[h] = Array.ConvertAll(_kept[h], k => all[k]);
        }
        Elements = elements;
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <summary>Room between two neighbours where they would touch first, mm.</summary>
    public double GapMm(RodState state, int hinge)
    {
        var h = _hinges[hinge];
        var smooth = SmoothShare * h.MostBend;
        if (h.IsRound) return Gap(h, smooth, new RoundHinge(state, h.Node, smooth).Counts);
        var bend = new NodeBend(state, h.Node);
        if (!(bend.Chi > 1e-6)) return double.NegativeInfinity;
        double Counts(HingeSides sides, int edge)
        {
            var (of, on) = Bends(state, bend, edge, sides);
            return Math.Sqrt(Weight(sides, of) * of * of + sides.Side * sides.Side * on * on + smooth * smooth);
        }
        return Gap(h, smooth, 0.5 * (Counts(h.Before, state.EdgeBefore(h.Node)) + Counts(h.After, h.Node)));
    }

    private static double Gap(in Hinge hinge, double smooth, double counts) => hinge.LeverMm * (Math.Sqrt(hinge.MostBend * hinge.MostBend + smooth * smooth) - counts);

    /// <summary>What two neighbours push each other with, N.</summary>
    public double ForceN(RodState state, int hinge) => _barrier.ForceN(GapMm(state, hinge));

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        for (var h = 0; h < _hinges.Length; h++)
        {
            energy += _barrier.Value(GapMm(state, h));
            if (double.IsInfinity(energy)) break;
        }
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<double> slope = stackalloc double[Local], second = stackalloc double[Local * Local], spread = stackalloc double[121], kept = stackalloc double[121];
        Span<double> all = stackalloc double[11];
        for (var h = 0; h < _hinges.Length; h++)
        {
            var hinge = _hinges[h];
            if (hinge.IsRound)
            {
                AddRound(state, h, gradient, hessian, convex, second, kept);
                continue;
            }
            var gap = GapMm(state, h);
            if (gap >= _barrier.WidthMm) continue;
            var (force, stiffness) = (_barrier.ForceN(gap), _barrier.StiffnessNPerMm(gap));
            var bend = new NodeBend(state, hinge.Node);
            slope.Clear();
            second.Clear();
            var smooth = SmoothShare * hinge.MostBend;
            var asked = hessian is null ? default : second;
            AddCounts(state, bend, state.EdgeBefore(hinge.Node), hinge.Before, true, smooth, slope, asked);
            AddCounts(state, bend, hinge.Node, hinge.After, false, smooth, slope, asked);
            // The gap falls by the lever times the mean of both counts.
            for (var r = 0; r < Local; r++) slope[r] *= -0.5 * hinge.LeverMm;
            for (var k = 0; k < 3; k++)
            {
                var (e, f) = (-force * slope[BendSlopes.E + k], -force * slope[BendSlopes.F + k]);
                (all[k], all[4 + k], all[8 + k]) = (-e, e - f, f);
            }
            (all[3], all[7]) = (-force * slope[BendSlopes.ThetaE], -force * slope[BendSlopes.ThetaF]);
            var (places, size) = (_kept[h], _kept[h].Length);
            for (var k = 0; k < size; k++) gradient[Elements[h][k]] += all[places[k]];
            if (hessian is null) continue;
            for (var r = 0; r < Local; r++)
                for (var c = r; c < Local; c++) second[r * Local + c] = stiffness * slope[r] * slope[c] + 0.5 * force * hinge.LeverMm * second[r * Local + c];
            SmallMatrix.Mirror(second, Local);
            if (convex) SmallMatrix.MakeConvex(second, Local);
            BendSlopes.Spread(second, spread);
            for (var r = 0; r < size; r++)
                for (var c = 0; c < size; c++) kept[r * size + c] = spread[places[r] * 11 + places[c]];
            hessian.Add(h, kept[..(size * size)]);
        }
    }

    private void AddRound(RodState state, int index, double[] gradient, IHessianSink? hessian, bool convex, Span<double> second, Span<double> spread)
    {
        var hinge = _hinges[index];
        var smooth = SmoothShare * hinge.MostBend;
        var round = new RoundHinge(state, hinge.Node, smooth);
        var gap = Gap(hinge, smooth, round.Counts);
        if (gap >= _barrier.WidthMm) return;
        // The energy rises with the count by the force times the lever.
        var (rises, curves) = (_barrier.ForceN(gap) * hinge.LeverMm, _barrier.StiffnessNPerMm(gap) * hinge.LeverMm * hinge.LeverMm);
        var (byE, byF) = round.Slopes;
        var (e, f) = (rises * byE, rises * byF);
        var element = Elements[index];
        for (var k = 0; k < 3; k++)
        {
            gradient[element[k]] -= e[k];
            gradient[element[3 + k]] += e[k] - f[k];
            gradient[element[6 + k]] += f[k];
        }
        if (hessian is null) return;
        const int Rows = 6, Places = 9;
        round.Second(rises, curves, second);
        if (convex) SmallMatrix.MakeConvex(second[..(Rows * Rows)], Rows);
        BendSlopes.SpreadPlaces(second, Rows, Rows / 2, spread, Places, Places / 3);
        hessian.Add(index, spread[..(Places * Places)]);
    }

    // About the bead's two axes: inwards or outwards (negative is inwards), and sideways.
    private static (double Of, double On) Bends(RodState state, in NodeBend bend, int edge, HingeSides sides)
    {
        var (outward, down) = Bodies.BallPlace.Axes(state, edge, sides.Angle);
        return (bend.Binormal.Dot(down), bend.Binormal.Dot(outward));
    }

    private static double Weight(HingeSides sides, double of) => of > 0 ? sides.Outer * sides.Outer : 1;

    // Adds the slopes, and where there is room for them the second slopes, of sqrt(w of^2 + side^2 on^2 + smooth^2) as one bead sees the bend.
    private static void AddCounts(RodState state, in NodeBend bend, int edge, HingeSides sides, bool isBefore, double smooth, Span<double> slope, Span<double> second)
    {
        var (outward, down) = Bodies.BallPlace.Axes(state, edge, sides.Angle);
        var (of, on) = (bend.Binormal.Dot(down), bend.Binormal.Dot(outward));
        double w = Weight(sides, of), s = sides.Side * sides.Side;
        var counts = Math.Sqrt(w * of * of + s * on * on + smooth * smooth);
        Span<double> gOf = stackalloc double[Local], gOn = stackalloc double[Local], q = stackalloc double[Local];
        var tt = 1 / bend.Chi * (bend.Te + bend.Tf);
        First(bend, tt, down, isBefore, gOf);
        First(bend, tt, outward, isBefore, gOn);
        for (var k = 0; k < Local; k++)
        {
            q[k] = 2 * (w * of * gOf[k] + s * on * gOn[k]);
            slope[k] += q[k] / (2 * counts);
        }
        if (second.IsEmpty) return;
        for (var r = 0; r < Local; r++)
            for (var c = r; c < Local; c++)
                second[r * Local + c] += (w * gOf[r] * gOf[c] + s * gOn[r] * gOn[c]) / counts - q[r] * q[c] / (4 * counts * counts * counts);
        // Half of the bend about an axis is what the wire's own bend is with the other edge's axes left out; along and down change as the second axis and the first do.
        Point3 none = default;
        var (ofFactor, onFactor) = (2 * w * of / counts, 2 * s * on / counts);
        if (isBefore)
        {
            BendSlopes.AddSecondOfBend(second, ofFactor, bend, 0.5 * of, tt, down, none, outward, none, 1);
            BendSlopes.AddSecondOfBend(second, -onFactor, bend, -0.5 * on, tt, outward, none, down, none, -1);
        }
        else
        {
            BendSlopes.AddSecondOfBend(second, ofFactor, bend, 0.5 * of, tt, none, down, none, outward, 1);
            BendSlopes.AddSecondOfBend(second, -onFactor, bend, -0.5 * on, tt, none, outward, none, down, -1);
        }
    }

    // First slopes of the bend about an axis that one edge carries.
    private static void First(in NodeBend b, Point3 tt, Point3 axis, bool isBefore, Span<double> g)
    {
        var bend = b.Binormal.Dot(axis);
        var d = 2 / b.Chi * axis;
        var e = 1 / b.Le * (b.Tf.Cross(d) - bend * tt);
        var f = 1 / b.Lf * (-b.Te.Cross(d) - bend * tt);
        for (var k = 0; k < 3; k++) (g[BendSlopes.E + k], g[BendSlopes.F + k]) = (e[k], f[k]);
        // Rolled, an axis goes over into the one square to it.
        var turned = b.Binormal.Dot((isBefore ? b.Te : b.Tf).Cross(axis));
        (g[BendSlopes.ThetaE], g[BendSlopes.ThetaF]) = isBefore ? (turned, 0.0) : (0.0, turned);
    }
}
