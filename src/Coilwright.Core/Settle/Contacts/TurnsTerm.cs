using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>Two balls of different beads that are near one another.</summary>
public readonly record struct BallPair(int First, int Second);

/// <summary>Keeps turn from turn: balls of beads that lie at least half a turn apart on the wire do not pass into each other.</summary>
/// <remarks>Which balls are near is looked for along the arm, in one fixed order. Beads nearer than that on the wire are kept apart by <see cref="RowTerm"/>.</remarks>
public sealed class TurnsTerm : IContactTerm
{
    // Found this far beyond the barrier's width, so that the list need not be made anew at each step. Our choice.
    private const double MarginMm = 1;

    private readonly Ball[] _balls;
    private readonly double[] _alongMm, _radii;
    private readonly double _apartMm;
    private readonly ContactBarrier _barrier;
    private int[][] _elements = [];
    private BallPair[] _pairs = [];
    private HashSet<BallPair> _listed = [];
    private Point3[]? _foundAt;

    /// <summary>Makes it.</summary>
    /// <param name="balls">All balls.</param>
    /// <param name="alongMm">For each bead where it is on the wire, mm.</param>
    /// <param name="apartMm">Least wire between two beads that may meet, mm.</param>
    /// <param name="barrier">What keeps them apart.</param>
    public TurnsTerm(IReadOnlyList<Ball> balls, IReadOnlyList<double> alongMm, double apartMm, ContactBarrier barrier)
    {
        (_balls, _alongMm, _apartMm, _barrier) = ([.. balls], [.. alongMm], apartMm, barrier);
        _radii = [.. balls.Select(b => b.RadiusMm)];
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements => _elements;

    /// <summary>Pairs that are near, as last looked for.</summary>
    public IReadOnlyList<BallPair> Pairs => _pairs;

    /// <summary>Room between two balls, mm.</summary>
    public double GapMm(RodState state, BallPair pair)
    {
        var (a, b) = (_balls[pair.First], _balls[pair.Second]);
        return (new BallPlace(state, a).Centre - new BallPlace(state, b).Centre).Length - a.RadiusMm - b.RadiusMm;
    }

    /// <summary>What two balls push each other with, N.</summary>
    public double ForceN(RodState state, BallPair pair) => _barrier.ForceN(GapMm(state, pair));

    /// <summary>All pairs of balls with less room than this between them, mm.</summary>
    public IReadOnlyList<BallPair> Nearer(RodState state, double gapMm) => Near(Centres(state), gapMm);

    /// <inheritdoc/>
    public bool Renew(RodState state)
    {
        var centres = Centres(state);
        if (_foundAt is { } before)
        {
            double moved = 0;
            for (var i = 0; i < centres.Length; i++) moved = Math.Max(moved, (centres[i] - before[i]).Length);
            if (4 * moved <= MarginMm) return false;
        }
        _foundAt = centres;
        // A list that has all that are coming near will do, whatever else is on it: a new one is a new matrix.
        var isMissing = false;
        ForNear(centres, _radii, _barrier.WidthMm + MarginMm / 2, (i, j) => isMissing |= !_listed.Contains(new BallPair(i, j)));
        if (!isMissing) return false;
        var pairs = Near(centres, _barrier.WidthMm + MarginMm);
        (_pairs, _listed) = (pairs, [.. pairs]);
        _elements = Array.ConvertAll(pairs, p => (int[])[.. _balls[p.First].Unknowns(), .. _balls[p.Second].Unknowns()]);
        return true;
    }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        foreach (var pair in _pairs)
        {
            energy += _barrier.Value(GapMm(state, pair));
            if (double.IsInfinity(energy)) break;
        }
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<Point3> moves = stackalloc Point3[14];
        Span<double> second = stackalloc double[196];
        for (var p = 0; p < _pairs.Length; p++)
        {
            var (a, b) = (_balls[_pairs[p].First], _balls[_pairs[p].Second]);
            var one = new BallPlace(state, a);
            var other = new BallPlace(state, b);
            var between = one.Centre - other.Centre;
            var distance = between.Length;
            var gap = distance - a.RadiusMm - b.RadiusMm;
            if (gap >= _barrier.WidthMm) continue;
            var away = 1 / distance * between;
            var (force, stiffness) = (_barrier.ForceN(gap), _barrier.StiffnessNPerMm(gap));
            one.Moves(moves);
            other.Moves(moves[one.Size..]);
            var size = one.Size + other.Size;
            for (var k = one.Size; k < size; k++) moves[k] = -moves[k];
            for (var k = 0; k < size; k++) gradient[_elements[p][k]] -= force * away.Dot(moves[k]);
            if (hessian is null) continue;
            var across = convex ? 0 : force / distance;
            for (var r = 0; r < size; r++)
                for (var c = 0; c < size; c++)
                {
                    var (ar, ac) = (away.Dot(moves[r]), away.Dot(moves[c]));
                    second[r * size + c] = (stiffness + across) * ar * ac - across * moves[r].Dot(moves[c]);
                }
            if (!convex)
            {
                one.AddSecond(second, 0, size, away, -force);
                other.AddSecond(second, one.Size, size, away, force);
            }
            hessian.Add(p, second[..(size * size)]);
        }
    }

    /// <inheritdoc/>
    public double FurthestShare(RodState state, ReadOnlySpan<double> step, double share)
    {
        var centres = new Point3[_balls.Length];
        var (going, stray) = (new Point3[_balls.Length], new double[_balls.Length]);
        var reaches = new double[_balls.Length];
        for (var i = 0; i < _balls.Length; i++)
        {
            var place = new BallPlace(state, _balls[i]);
            centres[i] = place.Centre;
            (going[i], stray[i]) = place.Going(_balls[i], step);
            stray[i] *= share;
            reaches[i] = _balls[i].RadiusMm + share * going[i].Length + stray[i];
        }
        ForNear(centres, reaches, _barrier.WidthMm, (i, j) =>
        {
            var (apart, closing, turning) = (centres[i] - centres[j], going[i] - going[j], stray[i] + stray[j]);
            // One that is not on the list yet has no energy: it may come near enough to be listed, no nearer.
            var reach = _balls[i].RadiusMm + _balls[j].RadiusMm + (_listed.Contains(new BallPair(i, j)) ? 0 : _barrier.WidthMm);
            // |apart + s closing| = reach + s turning: the least s above 0.
            var a = closing.Dot(closing) - turning * turning;
            var b = apart.Dot(closing) - reach * turning;
            var c = apart.Dot(apart) - reach * reach;
            if (c <= 0 || (b >= 0 && a >= 0)) return;
            var root = b * b - a * c;
            if (root < 0) return;
            var meets = c / (-b + Math.Sqrt(root));
            if (meets > 0) share = Math.Min(share, 0.9 * meets);
        });
        return share;
    }

    private Point3[] Centres(RodState state)
    {
        var centres = new Point3[_balls.Length];
        for (var i = 0; i < centres.Length; i++) centres[i] = new BallPlace(state, _balls[i]).Centre;
        return centres;
    }

    private BallPair[] Near(Point3[] centres, double gapMm)
    {
        var found = new List<BallPair>();
        ForNear(centres, _radii, gapMm, (i, j) => found.Add(new BallPair(i, j)));
        found.Sort((p, q) => p.First.CompareTo(q.First) is not 0 and var by ? by : p.Second.CompareTo(q.Second));
        return [.. found];
    }

    // Each pair whose reaches leave less room than that between them, the one with the lower number first.
    private void ForNear(Point3[] centres, double[] reaches, double gapMm, Action<int, int> take)
    {
        var furthest = reaches.Length == 0 ? 0 : reaches.Max();
        int[] order = [.. Enumerable.Range(0, centres.Length)];
        Array.Sort(Array.ConvertAll(centres, c => c.Y), order);
        for (var m = 0; m < order.Length; m++)
        {
            var i = order[m];
            var at = centres[i];
            var most = gapMm + reaches[i] + furthest;
            for (var n = m + 1; n < order.Length; n++)
            {
                var j = order[n];
                var to = centres[j];
                if (to.Y - at.Y >= most) break;
                double x = to.X - at.X, y = to.Y - at.Y, z = to.Z - at.Z;
                var reach = gapMm + reaches[i] + reaches[j];
                if (x * x + y * y + z * z >= reach * reach) continue;
                if (Math.Abs(_alongMm[_balls[i].Bead] - _alongMm[_balls[j].Bead]) < _apartMm) continue;
                take(Math.Min(i, j), Math.Max(i, j));
            }
        }
    }
}
