using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;

namespace Coilwright.Core.Settle.Bodies;

/// <summary>Where a ball is and how it moves with its unknowns.</summary>
/// <remarks>Its middle is <c>a + share e + v</c> with the edge e from a to b and v square to it. As the edge turns by the smallest turn, v changes by
/// <c>-(v.change of t) t</c>; as the bead rolls, by <c>t x v</c>. Derived in docs/theory/settle.md.</remarks>
internal readonly ref struct BallPlace
{
    private readonly Point3 _t, _v, _u;
    private readonly double _length, _share;

    public BallPlace(RodState state, in Ball ball)
    {
        var (a, b) = (state.Positions[ball.Bead], state.Positions[ball.Bead + 1]);
        (_t, _length, _share) = (state.Tangents[ball.Bead], state.Lengths[ball.Bead], ball.Share);
        Size = ball.Angle < 0 ? 6 : 7;
        if (ball.Angle >= 0)
        {
            var (outward, down) = Axes(state, ball.Bead, ball.Angle);
            _v = ball.OutwardMm * outward + ball.DownMm * down;
            _u = _t.Cross(_v);
        }
        Centre = a + _share * (b - a) + _v;
    }

    /// <summary>Its middle.</summary>
    public Point3 Centre { get; }

    /// <summary>How many unknowns move it.</summary>
    public int Size { get; }

    /// <summary>A bead's own axes: away from the wrist and along the arm, as it is turned.</summary>
    public static (Point3 Outward, Point3 Down) Axes(RodState state, int bead, int angle)
    {
        var (reference, t) = (state.References[bead], state.Tangents[bead]);
        var (sin, cos) = Math.SinCos(angle < 0 ? 0 : state.AngleOf(angle));
        var across = t.Cross(reference);
        return (cos * reference + sin * across, cos * across - sin * reference);
    }

    /// <summary>How the middle moves with each unknown: one direction for each.</summary>
    public void Moves(Span<Point3> moves)
    {
        for (var k = 0; k < 3; k++)
        {
            var unit = new Point3(k == 0 ? 1 : 0, k == 1 ? 1 : 0, k == 2 ? 1 : 0);
            // By the edge: share I - t v' / length, and its first node goes the other way.
            var byEdge = _share * unit - _v[k] / _length * _t;
            moves[k] = unit - byEdge;
            moves[3 + k] = byEdge;
        }
        if (Size == 7) moves[6] = _u;
    }

    /// <summary>Adds the second slopes of the middle along a direction, times a factor.</summary>
    /// <param name="h">A matrix with <paramref name="stride"/> columns.</param>
    /// <param name="at">Its row and column of the ball's first unknown.</param>
    /// <param name="stride">Columns.</param>
    /// <param name="direction">The direction, any length.</param>
    /// <param name="factor">The factor.</param>
    public void AddSecond(Span<double> h, int at, int stride, Point3 direction, double factor)
    {
        if (Size != 7) return;
        var along = direction.Dot(_t);
        var across = direction - along * _t;
        var s = factor / (_length * _length);
        for (var r = 0; r < 3; r++)
        {
            for (var c = 0; c < 3; c++)
            {
                var value = s * (along * (_t[r] * _v[c] + _v[r] * _t[c]) - 0.5 * (_v[r] * across[c] + across[r] * _v[c]));
                h[(at + r) * stride + at + c] += value;
                h[(at + 3 + r) * stride + at + 3 + c] += value;
                h[(at + r) * stride + at + 3 + c] -= value;
                h[(at + 3 + r) * stride + at + c] -= value;
            }
            var rolled = factor * along * _u[r] / _length;
            h[(at + r) * stride + at + 6] += rolled;
            h[(at + 6) * stride + at + r] += rolled;
            h[(at + 3 + r) * stride + at + 6] -= rolled;
            h[(at + 6) * stride + at + 3 + r] -= rolled;
        }
        h[(at + 6) * stride + at + 6] -= factor * direction.Dot(_v);
    }

    /// <summary>How the middle sets out with a step, and how far it strays from that line at most by turning, mm: that times the square of the share gone.</summary>
    public (Point3 Straight, double StrayMm) Going(in Ball ball, ReadOnlySpan<double> step)
    {
        var a = 4 * ball.Bead;
        var (from, to) = (new Point3(step[a], step[a + 1], step[a + 2]), new Point3(step[a + 4], step[a + 5], step[a + 6]));
        var edge = to - from;
        var straight = from + _share * edge;
        if (Size != 7) return (straight, 0);
        // Of second order both turns count no more than squared; the length of the edge changes by a hair against them.
        var turned = 2 * edge.Length / _length + Math.Abs(step[ball.Angle]);
        return (straight - _v.Dot(edge) / _length * _t + step[ball.Angle] * _u, _v.Length * turned * turned);
    }
}
