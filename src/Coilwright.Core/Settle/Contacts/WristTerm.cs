using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Contacts;

/// <summary>Keeps beads off the wrist.</summary>
public sealed class WristTerm : IContactTerm
{
    private readonly Ball[] _balls;
    private readonly WristSection _wrist;
    private readonly ContactBarrier _barrier;

    /// <summary>Makes it.</summary>
    /// <param name="balls">All balls.</param>
    /// <param name="wrist">The wrist.</param>
    /// <param name="barrier">What keeps them off.</param>
    public WristTerm(IReadOnlyList<Ball> balls, WristSection wrist, ContactBarrier barrier)
    {
        (_balls, _wrist, _barrier) = ([.. balls], wrist, barrier);
        Elements = Array.ConvertAll(_balls, b => b.Unknowns());
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <summary>Room between a ball and the wrist, mm.</summary>
    public double GapMm(RodState state, int ball) => _wrist.DistanceMm(new BallPlace(state, _balls[ball]).Centre) - _balls[ball].RadiusMm;

    /// <summary>What a ball and the wrist push each other with, N.</summary>
    public double ForceN(RodState state, int ball) => _barrier.ForceN(GapMm(state, ball));

    /// <summary>Where a ball is nearest to the wrist.</summary>
    public Point3 TouchedAt(RodState state, int ball)
    {
        Span<double> second = stackalloc double[6];
        var centre = new BallPlace(state, _balls[ball]).Centre;
        _wrist.Distance(centre, out var away, second);
        return centre - _balls[ball].RadiusMm * away.Unit;
    }

    /// <inheritdoc/>
    public bool Renew(RodState state) => false;

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double energy = 0;
        for (var i = 0; i < _balls.Length; i++)
        {
            var centre = new BallPlace(state, _balls[i]).Centre;
            if (_wrist.AtLeastMm(centre) - _balls[i].RadiusMm >= _barrier.WidthMm) continue;
            energy += _barrier.Value(_wrist.DistanceMm(centre) - _balls[i].RadiusMm);
            if (double.IsInfinity(energy)) break;
        }
        return energy;
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        Span<Point3> moves = stackalloc Point3[7], bent = stackalloc Point3[7];
        Span<double> second = stackalloc double[49], curving = stackalloc double[6];
        for (var i = 0; i < _balls.Length; i++)
        {
            var place = new BallPlace(state, _balls[i]);
            if (_wrist.AtLeastMm(place.Centre) - _balls[i].RadiusMm >= _barrier.WidthMm) continue;
            var gap = _wrist.Distance(place.Centre, out var slope, curving) - _balls[i].RadiusMm;
            if (gap >= _barrier.WidthMm) continue;
            var (force, stiffness) = (_barrier.ForceN(gap), _barrier.StiffnessNPerMm(gap));
            place.Moves(moves);
            var size = place.Size;
            for (var k = 0; k < size; k++) gradient[Elements[i][k]] -= force * slope.Dot(moves[k]);
            if (hessian is null) continue;
            for (var k = 0; k < size; k++)
            {
                var m = moves[k];
                bent[k] = new Point3(curving[0] * m.X + curving[3] * m.Y + curving[5] * m.Z, curving[3] * m.X + curving[1] * m.Y + curving[4] * m.Z,
                    curving[5] * m.X + curving[4] * m.Y + curving[2] * m.Z);
            }
            for (var r = 0; r < size; r++)
                for (var c = 0; c < size; c++)
                    second[r * size + c] = stiffness * slope.Dot(moves[r]) * slope.Dot(moves[c]) - (convex ? 0 : force * moves[r].Dot(bent[c]));
            if (!convex) place.AddSecond(second, 0, size, slope, -force);
            hessian.Add(i, second[..(size * size)]);
        }
    }

    /// <inheritdoc/>
    public double FurthestShare(RodState state, ReadOnlySpan<double> step, double share)
    {
        Span<double> curving = stackalloc double[6];
        for (var i = 0; i < _balls.Length; i++)
        {
            var place = new BallPlace(state, _balls[i]);
            var gap = _wrist.Distance(place.Centre, out var slope, curving) - _balls[i].RadiusMm;
            var (straight, stray) = place.Going(_balls[i], step);
            // The distance from a convex form never falls below its own tangent.
            var closing = slope.Length * share * stray - slope.Dot(straight);
            if (closing > 0) share = Math.Min(share, 0.9 * gap / closing);
        }
        return share;
    }
}
