using Coilwright.Core.Fit;
using Coilwright.Core.Geometry;
using Coilwright.Core.Pieces;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Settle;

/// <summary>A strung wire as a rod with a body on each of its edges: what it is, not how it lies.</summary>
/// <remarks>Each bead is an edge of the rod, straight and touching the coil's circle at the bead's middle; the wire bends at the nodes between them. Beads stand where they are strung, which is with the coil at
/// rest: there each touches its neighbours. Model: docs/theory/settle.md.</remarks>
public sealed class StrungRod
{
    // How much wider the coil is opened to see how fast neighbours part: small against it, large against rounding.
    private const double Opened = 1.02;

    private readonly double[] _lengths, _bends, _halves, _middleOnEdge;

    /// <summary>Makes it.</summary>
    /// <param name="piece">The piece, its kinds as corrected from the bench; three beads or more.</param>
    /// <param name="factors">For each bead, what a measured row scales its share by; null when nothing was measured.</param>
    /// <param name="steel">The wire's steel.</param>
    /// <param name="curlMm">Radius to which the wire curls by itself, mm; null: the coil's own.</param>
    public StrungRod(Piece piece, double[]? factors, WireSteel steel, double? curlMm = null)
    {
        var order = piece.Order.Kinds;
        Piece = piece;
        var shares = new CurveShares(piece.Beads, piece.Order, factors);
        CurlMm = curlMm ?? piece.Wire.RelaxedRadiusMm;
        StrungRadiusMm = Math.Max(piece.Wire.RelaxedRadiusMm, CurveShares.LeastRadiusMm(piece.Beads, piece.Order));
        MiddlesMm = [.. shares.MiddlesAtRadius(StrungRadiusMm)];
        SharesMm = [.. shares.AtRadius(StrungRadiusMm)];
        var wider = shares.MiddlesAtRadius(Opened * StrungRadiusMm);
        var beads = order.Length;
        _bends = new double[beads - 1];
        _halves = new double[beads + 1];
        var last = SharesMm.Sum() - MiddlesMm[^1];
        (_halves[0], _halves[beads]) = (MiddlesMm[0], last);
        for (var i = 0; i + 1 < beads; i++)
        {
            var angle = AngleRad(MiddlesMm[i + 1] - MiddlesMm[i], StrungRadiusMm);
            SharpestRad = Math.Max(SharpestRad, angle);
            _bends[i] = 2 * Math.Tan(angle / 2);
            _halves[i + 1] = StrungRadiusMm * _bends[i] / 2;
        }
        _lengths = new double[beads];
        _middleOnEdge = new double[beads];
        for (var i = 0; i < beads; i++)
        {
            _lengths[i] = _halves[i] + _halves[i + 1];
            _middleOnEdge[i] = _halves[i] / _lengths[i];
        }
        Nodes = beads + 1;
        Bodies = [.. piece.Beads.Select(b => BeadBody.Of(b, StrungRadiusMm))];
        Angles = new int[beads];
        var rolling = new List<int>();
        for (var i = 0; i < beads; i++)
        {
            var body = Bodies[order[i]];
            Angles[i] = body.FollowsWire ? 4 * i + 3 : body.Rolls ? 4 * Nodes - 1 + rolling.Count : -1;
            if (body.Rolls) rolling.Add(i);
        }
        RollingBeads = [.. rolling];
        Balls = [.. Enumerable.Range(0, beads).SelectMany(i => Bodies[order[i]].Parts.Select(p =>
            new Ball(i, _middleOnEdge[i] + p.AlongMm / _lengths[i], p.OutwardMm, p.DownMm, p.RadiusMm, Angles[i])))];
        Weights = [.. Enumerable.Range(0, beads).Select(i => (new Ball(i, _middleOnEdge[i], Bodies[order[i]].WeightOutwardMm, 0, 0, Angles[i]), piece.Beads[order[i]].MassG ?? 0))];
        Hinges = [.. Enumerable.Range(0, beads - 1).Select(i => HingeAfter(i, wider))];

        var wire = piece.Wire.WireMm;
        var area = Math.PI / 4 * wire * wire;
        NodesG = new double[Nodes];
        for (var i = 0; i < beads; i++)
        {
            var half = area * _lengths[i] / 2 * steel.DensityGPerCm3 / 1000;
            NodesG[i] += half;
            NodesG[i + 1] += half;
        }
        var bending = WireStrength.BendingStiffnessNmm2(wire, steel.YoungsModulusMPa);
        // Round wire: twice the second moment of area is the polar one.
        var twisting = steel.ShearModulusMPa * Math.PI / 32 * Math.Pow(wire, 4);
        Rod = new RodModel(Natural(), (bending, bending), twisting, steel.YoungsModulusMPa * area);
    }

    /// <summary>The piece.</summary>
    public Piece Piece { get; }

    /// <summary>The wire.</summary>
    public RodModel Rod { get; }

    /// <summary>How many nodes: one more than beads.</summary>
    public int Nodes { get; }

    /// <summary>Each kind's body.</summary>
    public IReadOnlyList<BeadBody> Bodies { get; }

    /// <summary>Where each bead's middle stands on the wire, mm from its starting end.</summary>
    public IReadOnlyList<double> MiddlesMm { get; }

    /// <summary>Each bead's share of the wire as strung, mm.</summary>
    public IReadOnlyList<double> SharesMm { get; }

    /// <summary>Radius at which the beads are strung touching, mm: the coil's at rest, or the least at which they stand round a circle at all.</summary>
    public double StrungRadiusMm { get; }

    /// <summary>Radius to which the wire curls by itself, mm.</summary>
    public double CurlMm { get; }

    /// <summary>The most that the wire bends between two beads as strung, radians.</summary>
    public double SharpestRad { get; }

    /// <summary>Shortest edge, mm.</summary>
    public double ShortestEdgeMm => _lengths.Min();

    /// <summary>For each bead the unknown by which it is turned about the wire; -1 for a round one.</summary>
    public int[] Angles { get; }

    /// <summary>Beads that roll about the wire.</summary>
    public int[] RollingBeads { get; }

    /// <summary>What of all beads touches.</summary>
    public IReadOnlyList<Ball> Balls { get; }

    /// <summary>Each bead's weight: where and how much, g; 0 where it is not known.</summary>
    public IReadOnlyList<(Ball At, double MassG)> Weights { get; }

    /// <summary>The wire's mass at each node, g.</summary>
    public double[] NodesG { get; }

    /// <summary>What hinges on what.</summary>
    public IReadOnlyList<Hinge> Hinges { get; }

    /// <summary>A bead's middle on the wire.</summary>
    public Ball Middle(int bead) => new(bead, _middleOnEdge[bead], 0, 0, 0);

    /// <summary>Lays it round the arm as an even helix: down the arm as it goes round, the way a piece in space is told.</summary>
    /// <param name="radiusMm">Radius of the circle that the beads touch, mm.</param>
    /// <param name="pitchMm">From turn to turn, mm.</param>
    /// <param name="bead">The bead that stands at a given angle.</param>
    /// <param name="angleRad">That angle, 0 the top of the wrist.</param>
    public RodState Helix(double radiusMm, double pitchMm, int bead, double angleRad)
    {
        // Every bead touches the circle at its middle, so that no two neighbours bend more than they did when strung. A rise shortens what is seen along the arm.
        var level = 1 / Math.Sqrt(1 + Math.Pow(pitchMm / (2 * Math.PI * radiusMm), 2));
        var (angles, nodes, down) = (new double[Nodes - 1], new (double Angle, double Radius)[Nodes], new double[Nodes]);
        for (var i = 0; i < Nodes; i++)
        {
            var half = _halves[i] * level;
            var turn = Math.Atan(half / radiusMm);
            if (i + 1 < Nodes) angles[i] = i == 0 ? 0 : angles[i - 1] + 2 * turn;
            nodes[i] = (i == 0 ? -turn : angles[i - 1] + turn, Math.Sqrt(radiusMm * radiusMm + half * half));
            if (i > 0) down[i] = down[i - 1] + _lengths[i - 1] * Math.Sqrt(1 - level * level);
        }
        return RodState.Lay([.. nodes.Select((n, i) =>
        {
            var (sin, cos) = Math.SinCos(n.Angle - angles[bead] + angleRad);
            return new Point3(n.Radius * sin, down[^1] / 2 - down[i], n.Radius * cos);
        })], place => new Point3(place.X, 0, place.Z), rolls: RollingBeads.Length);
    }

    // Between two middles so far apart on a circle. Short of half a turn, at which the bend is without end: pieces that come near it are refused by SharpestRad.
    private static double AngleRad(double apartMm, double radiusMm) => Math.Min(apartMm / radiusMm, Math.PI * 0.95);

    // The wire by itself: flat, and bent between two beads as far as their middles are apart on its own circle.
    private RodState Natural()
    {
        var places = new Point3[Nodes];
        double angle = 0;
        for (var i = 0; i < _lengths.Length; i++)
        {
            if (i > 0) angle += 2 * Math.Atan(_bends[i - 1] / 2) * StrungRadiusMm / CurlMm;
            var (sin, cos) = Math.SinCos(angle);
            places[i + 1] = places[i] + _lengths[i] * new Point3(cos, 0, -sin);
        }
        // Outwards is square to the wire, away from where it curls to.
        var state = RodState.Lay(places, _ => new Point3(0, 1, 0));
        var quarter = new double[state.Unknowns];
        for (var e = 0; e < state.Edges; e++) quarter[4 * e + 3] = Math.PI / 2;
        return state.Moved(quarter, 1);
    }

    private Hinge HingeAfter(int bead, IReadOnlyList<double> wider)
    {
        var order = Piece.Order.Kinds;
        var open = Opened * StrungRadiusMm;
        var openBend = 2 * Math.Tan(AngleRad(wider[bead + 1] - wider[bead], open) / 2);
        // Neighbours touch with their middles R bend apart; how that grows with the bend is how far from the wire they touch.
        var parted = _bends[bead] - openBend;
        var lever = parted > 1e-12 ? (StrungRadiusMm * _bends[bead] - open * openBend) / parted : 0;
        return new Hinge(bead + 1, _bends[bead], Math.Max(lever, BeadBody.RoundedMm), Sides(Bodies[order[bead]], bead), Sides(Bodies[order[bead + 1]], bead + 1));

        // A side that stands further out than its neighbour's has nothing there to meet.
        HingeSides Sides(BeadBody body, int i)
        {
            if (!body.Rolls) return HingeSides.Round;
            var (one, other) = (Piece.Beads[order[bead]], Piece.Beads[order[bead + 1]]);
            var inner = Math.Max(Math.Min(one.BearingReachMm, other.BearingReachMm), BeadBody.RoundedMm);
            return new HingeSides(Math.Min(one.OuterReachMm, other.OuterReachMm) / inner, Math.Min(one.WidthMm, other.WidthMm) / 2 / inner, Angles[i]);
        }
    }
}
