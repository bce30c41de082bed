using Coilwright.Core.Geometry;

namespace Coilwright.Core.Settle.Rods;

/// <summary>How a wire lies: where its nodes are and how its material is turned about each edge.</summary>
/// <remarks>
/// <para>Each edge has a reference direction square to it. As the wire moves, that direction is carried along by the smallest turn (transport that is
/// parallel in time), so that it never spins about the edge by itself; the material's direction stands at an angle to it. What the reference directions
/// turn from edge to edge is followed continuously, past half a turn too.</para>
/// <para>Beads that are not round about their hole roll about the wire freely: each has an angle of its own to its edge's reference direction.</para>
/// <para>The unknowns in one row: node i has its place at 4i to 4i + 2 and the angle of the edge after it at 4i + 3; the rolls come after all of these.</para>
/// </remarks>
public sealed class RodState
{
    private readonly (Point3 First, Point3 Second)[] _axes;

    private RodState(int nodes, int edges, bool closed, int rolls)
    {
        Closed = closed;
        Positions = new Point3[nodes];
        (Angles, References, Tangents, Lengths) = (new double[edges], new Point3[edges], new Point3[edges], new double[edges]);
        ReferenceTwists = new double[nodes];
        _axes = new (Point3, Point3)[edges];
        Rolls = new double[rolls];
    }

    /// <summary>Lays a wire.</summary>
    /// <param name="positions">Where its nodes are; three or more, two neighbours never in one place.</param>
    /// <param name="outward">For an edge's middle, a direction that is not along the edge: the first axis of the material lies as near to it as it can.</param>
    /// <param name="closed">Whether the last node is joined to the first.</param>
    /// <param name="rolls">How many beads roll about it.</param>
    public static RodState Lay(IReadOnlyList<Point3> positions, Func<Point3, Point3> outward, bool closed = false, int rolls = 0)
    {
        var nodes = positions.Count;
        var state = new RodState(nodes, closed ? nodes : nodes - 1, closed, rolls);
        for (var i = 0; i < nodes; i++) state.Positions[i] = positions[i];
        state.MeasureEdges();
        for (var e = 0; e < state.Edges; e++)
        {
            var middle = 0.5 * (positions[e] + positions[state.NodeAfter(e)]);
            var direction = outward(middle);
            var t = state.Tangents[e];
            state.References[e] = (direction - direction.Dot(t) * t).Unit;
        }
        state.FollowTwists(null);
        state.TurnAxes();
        return state;
    }

    /// <summary>Whether the last node is joined to the first.</summary>
    public bool Closed { get; }

    /// <summary>Where each node is.</summary>
    public Point3[] Positions { get; }

    /// <summary>For each edge the material's angle to the reference direction, radians.</summary>
    public double[] Angles { get; }

    /// <summary>For each edge its reference direction.</summary>
    public Point3[] References { get; }

    /// <summary>For each edge its direction.</summary>
    public Point3[] Tangents { get; }

    /// <summary>For each edge its length.</summary>
    public double[] Lengths { get; }

    /// <summary>For each bead that rolls its angle to its edge's reference direction, radians.</summary>
    public double[] Rolls { get; }

    /// <summary>What the reference directions turn at each node, radians.</summary>
    internal double[] ReferenceTwists { get; }

    /// <summary>How many edges.</summary>
    public int Edges => Lengths.Length;

    /// <summary>How many unknowns.</summary>
    public int Unknowns => FirstRoll + Rolls.Length;

    /// <summary>The unknown of the first roll.</summary>
    public int FirstRoll => 3 * Positions.Length + Edges;

    /// <summary>The angle that an unknown stands for: the material's about an edge or a bead's roll, radians.</summary>
    public double AngleOf(int unknown) => unknown >= FirstRoll ? Rolls[unknown - FirstRoll] : Angles[unknown / 4];

    /// <summary>Whether an unknown is an angle, not a place.</summary>
    public bool IsAngle(int unknown) => unknown % 4 == 3 || unknown >= FirstRoll;

    internal bool BendsAt(int node) => Closed || (node > 0 && node < Positions.Length - 1);

    internal int EdgeBefore(int node) => node == 0 ? Edges - 1 : node - 1;

    internal int NodeAfter(int edge) => edge + 1 == Positions.Length ? 0 : edge + 1;

    /// <summary>The material's two axes at an edge.</summary>
    public (Point3 First, Point3 Second) Axes(int edge) => _axes[edge];

    /// <summary>The state after a step.</summary>
    /// <param name="step">The change of each unknown.</param>
    /// <param name="share">What share of it to go.</param>
    public RodState Moved(ReadOnlySpan<double> step, double share)
    {
        var next = new RodState(Positions.Length, Edges, Closed, Rolls.Length);
        for (var i = 0; i < Positions.Length; i++)
            next.Positions[i] = Positions[i] + share * new Point3(step[4 * i], step[4 * i + 1], step[4 * i + 2]);
        next.MeasureEdges();
        for (var e = 0; e < Edges; e++)
        {
            next.Angles[e] = Angles[e] + share * step[4 * e + 3];
            var carried = Turning.Carried(References[e], Tangents[e], next.Tangents[e]);
            // Rounding would creep in over hundreds of steps.
            next.References[e] = (carried - carried.Dot(next.Tangents[e]) * next.Tangents[e]).Unit;
        }
        for (var r = 0; r < Rolls.Length; r++) next.Rolls[r] = Rolls[r] + share * step[FirstRoll + r];
        next.FollowTwists(ReferenceTwists);
        next.TurnAxes();
        return next;
    }

    private void MeasureEdges()
    {
        for (var e = 0; e < Edges; e++)
        {
            var edge = Positions[NodeAfter(e)] - Positions[e];
            Lengths[e] = edge.Length;
            Tangents[e] = 1 / Lengths[e] * edge;
        }
    }

    private void TurnAxes()
    {
        for (var e = 0; e < Edges; e++)
        {
            var (sin, cos) = Math.SinCos(Angles[e]);
            var second = Tangents[e].Cross(References[e]);
            _axes[e] = (cos * References[e] + sin * second, cos * second - sin * References[e]);
        }
    }

    private void FollowTwists(double[]? before)
    {
        for (var i = 0; i < Positions.Length; i++)
        {
            if (!BendsAt(i)) continue;
            var e = EdgeBefore(i);
            var carried = Turning.Carried(References[e], Tangents[e], Tangents[i]);
            var last = before?[i] ?? 0;
            var (sin, cos) = Math.SinCos(last);
            var expected = cos * carried + sin * Tangents[i].Cross(carried);
            ReferenceTwists[i] = last + Turning.SignedAngle(expected, References[i], Tangents[i]);
        }
    }
}
