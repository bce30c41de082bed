using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Rods;

namespace Coilwright.Core.Settle.Solving;

/// <summary>Why a search for rest ended.</summary>
public enum RestExit
{
    /// <summary>Nothing pulls any more, and every way out of the shape costs energy.</summary>
    AtRest,

    /// <summary>Nothing pulls any more, but the least push would make it jump.</summary>
    OnEdge,

    /// <summary>Rounding leaves nothing to gain, though the pull that is left is above what was asked.</summary>
    NoProgress,

    /// <summary>The steps allowed ran out.</summary>
    OutOfSteps,
}

/// <summary>How a search for rest ended.</summary>
/// <param name="State">The shape reached.</param>
/// <param name="Exit">Why it ended.</param>
/// <param name="Steps">Newton steps taken.</param>
/// <param name="ResidualN">The largest force left on an unknown that is free, N; moments over the reach they were weighed by.</param>
/// <param name="Energy">The energy, N mm.</param>
/// <param name="Falling">Directions in which the energy falls at the shape reached.</param>
public sealed record RestResult(RodState State, RestExit Exit, int Steps, double ResidualN, double Energy, int Falling);

/// <summary>How to look for rest.</summary>
public sealed record RestOptions
{
    /// <summary>Force that may be left, N.</summary>
    public double ResidualN { get; init; } = 1e-8;

    /// <summary>Most Newton steps.</summary>
    public int MostSteps { get; init; } = 400;

    /// <summary>Furthest that an edge may turn in one step, radians.</summary>
    public double MostTurnRad { get; init; } = 0.6;

    /// <summary>Length by which a moment is weighed against a force, mm: a coil's radius.</summary>
    public double ReachMm { get; init; } = 30;

    /// <summary>A direction that falls by less than this is not counted as falling, N/mm; 0 or more.</summary>
    public double LeastStiffnessNPerMm { get; init; }

    /// <summary>The order of elimination; null: the best.</summary>
    public EliminationOrder? Order { get; init; }
}

/// <summary>Finds where a wire comes to rest: Newton's method on its energy, with a line search.</summary>
/// <remarks>A step is taken with the true second slopes where they rise in every direction, which the pivots of the factor tell; elsewhere each element's falling directions are
/// taken out. A step that would run bodies into each other is shortened, for there the energy is infinite. What a step stretches by turning edges is taken out again with the same factor, before it is judged.</remarks>
public sealed class Newton
{
    private readonly IReadOnlyList<IEnergyTerm> _terms;
    private readonly bool[] _isFixed;
    private readonly int[] _groupOf;
    private readonly Func<RodState, double[]>? _anglesOf;
    private readonly RestOptions _options;
    // How often a step is mended at most, and how many of the longest trials are mended though they did not do. Our choice.
    private const int MostMends = 4, MendedTrials = 2;

    private StiffnessMatrix? _matrix;
    private Elimination? _order;

    /// <summary>Prepares it.</summary>
    /// <param name="terms">The parts of the energy.</param>
    /// <param name="isFixed">For each unknown whether it is held.</param>
    /// <param name="groupOf">For each unknown the group that it is eliminated with; a node's four belong together.</param>
    /// <param name="anglesOf">Where each group stands round the arm; null when there is no arm.</param>
    /// <param name="options">How to look.</param>
    public Newton(IReadOnlyList<IEnergyTerm> terms, bool[] isFixed, int[] groupOf, Func<RodState, double[]>? anglesOf, RestOptions options) =>
        (_terms, _isFixed, _groupOf, _anglesOf, _options) = (terms, isFixed, groupOf, anglesOf, options);

    /// <summary>The groups of a wire by itself: each node with the angle of the edge after it.</summary>
    /// <param name="state">The wire.</param>
    /// <param name="rollEdges">For each bead that rolls the edge that it sits on; null where none does.</param>
    public static int[] GroupsOf(RodState state, IReadOnlyList<int>? rollEdges = null)
    {
        var groups = new int[state.Unknowns];
        for (var u = 0; u < state.FirstRoll; u++) groups[u] = Math.Min(u / 4, state.Positions.Length - 1);
        for (var r = 0; r < state.Rolls.Length; r++) groups[state.FirstRoll + r] = rollEdges![r];
        return groups;
    }

    /// <summary>Looks for rest.</summary>
    /// <param name="state">Where it starts; a state of finite energy.</param>
    /// <param name="cancel">Stops it.</param>
    public RestResult Run(RodState state, CancellationToken cancel = default)
    {
        var n = state.Unknowns;
        Renewed(state);
        var (gradient, step, next) = (new double[n], new double[n], new double[n]);
        var energy = Energy(state);
        Slopes(state, gradient);
        var residual = ResidualOf(state, gradient);
        var stalled = 0;
        for (var steps = 0; ; steps++)
        {
            cancel.ThrowIfCancellationRequested();
            if (residual <= _options.ResidualN) return Ended(state, steps, residual, energy, null);
            if (steps == _options.MostSteps) return Ended(state, steps, residual, energy, RestExit.OutOfSteps);
            Direction(state, gradient, step);
            double slope = 0;
            for (var u = 0; u < n; u++) slope += gradient[u] * step[u];
            var share = FurthestFree(state, step);
            (RodState State, double Energy, double Residual)? taken = null;
            for (var halvings = 0; halvings < 50; halvings++, share /= 2)
            {
                var trial = state.Moved(step, share);
                var e = Energy(trial);
                if (!double.IsFinite(e)) continue;
                var noise = Noise(e, energy);
                // Where the fall drowns in rounding the slopes tell.
                var drowns = Math.Abs(share * slope) <= 1e3 * noise;
                if (!Enough() && !drowns && halvings >= MendedTrials) continue;
                Slopes(trial, next);
                var left = ResidualOf(trial, next);
                (trial, e, left) = Mended(trial, e, left, next);
                if (!Enough() && !(drowns && left < residual)) continue;
                taken = (trial, e, left);
                break;

                bool Enough() => e <= energy + 1e-4 * share * slope;
            }
            if (taken is not { } t) return Ended(state, steps, residual, energy, RestExit.NoProgress);
            stalled = t.Residual > 0.5 * residual && Math.Abs(slope) < 1e-13 * (Math.Abs(energy) + 1e-12) ? stalled + 1 : 0;
            (state, energy, residual) = t;
            (gradient, next) = (next, gradient);
            if (Renewed(state))
            {
                energy = Energy(state);
                Slopes(state, gradient);
                residual = ResidualOf(state, gradient);
                stalled = 0;
            }
            if (stalled == 8) return Ended(state, steps + 1, residual, energy, RestExit.NoProgress);
        }
    }

    /// <summary>The energy of a state.</summary>
    public double Energy(RodState state)
    {
        double sum = 0;
        foreach (var term in _terms) sum += term.Value(state);
        return sum;
    }

    /// <summary>The slopes at a state, over all unknowns, those held too: there they are what holds them.</summary>
    public void Slopes(RodState state, double[] gradient)
    {
        Array.Clear(gradient);
        foreach (var term in _terms) term.AddSlopes(state, gradient, null, false);
    }

    /// <summary>Directions in which the energy falls at a state.</summary>
    public int Falling(RodState state)
    {
        var matrix = Fill(state, new double[state.Unknowns], false);
        if (_options.LeastStiffnessNPerMm > 0)
        {
            matrix.AddToDiagonal(_options.LeastStiffnessNPerMm);
            matrix.Fill(0);
        }
        return matrix.Factor.Negative;
    }

    private static double Noise(double energy, double other) => 1e-14 * (Math.Abs(energy) + Math.Abs(other)) + 1e-300;

    // An edge that turns by a step is stretched by the square of it, and wire hardly stretches: its energy would have every step be short. Steps with the factor at hand take that out for a
    // fraction of what a new one costs. The slopes at the state become those at the mended one.
    private (RodState State, double Energy, double Residual) Mended(RodState state, double energy, double residual, double[] gradient)
    {
        var (right, step, slopes) = (new double[gradient.Length], new double[gradient.Length], new double[gradient.Length]);
        for (var mends = 0; mends < MostMends && residual > _options.ResidualN; mends++)
        {
            for (var u = 0; u < right.Length; u++) right[u] = -gradient[u];
            _matrix!.Solve(right, step);
            var trial = state.Moved(step, FurthestFree(state, step));
            var e = Energy(trial);
            if (!(e <= energy + Noise(e, energy))) break;
            Slopes(trial, slopes);
            var left = ResidualOf(trial, slopes);
            if (!(left < residual) && !(e < energy - Noise(e, energy))) break;
            var slow = left > 0.5 * residual;
            (state, energy, residual) = (trial, e, left);
            slopes.AsSpan().CopyTo(gradient);
            if (slow) break;
        }
        return (state, energy, residual);
    }

    private double FurthestFree(RodState state, double[] step)
    {
        var share = Math.Min(1, FurthestShare(state, step));
        foreach (var term in _terms)
            if (term is IContactTerm contact) share = contact.FurthestShare(state, step, share);
        return share;
    }

    // Bodies that have come near one another are ties that the matrix did not have.
    private bool Renewed(RodState state)
    {
        var renewed = false;
        foreach (var term in _terms)
            if (term is IContactTerm contact) renewed |= contact.Renew(state);
        if (renewed) _matrix = null;
        return renewed;
    }

    private RestResult Ended(RodState state, int steps, double residual, double energy, RestExit? exit)
    {
        var falling = Falling(state);
        return new RestResult(state, exit ?? (falling > 0 ? RestExit.OnEdge : RestExit.AtRest), steps, residual, energy, falling);
    }

    private void Direction(RodState state, double[] gradient, double[] step)
    {
        var scratch = new double[gradient.Length];
        var right = new double[gradient.Length];
        for (var u = 0; u < right.Length; u++) right[u] = -gradient[u];
        var matrix = Fill(state, scratch, false);
        if (matrix.Factor.Negative > 0 || matrix.Factor.Replaced > 0) matrix = Fill(state, scratch, true);
        var lift = 1e-10 * matrix.MeanDiagonal();
        for (var tries = 0; matrix.Factor.Negative > 0 && tries < 30; tries++, lift *= 10)
        {
            matrix.AddToDiagonal(lift);
            matrix.Fill(0);
        }
        matrix.Solve(right, step);
        // One round of refinement: E A is ten thousand times what bends, so the first solution lacks digits.
        matrix.Times(step, scratch);
        for (var u = 0; u < right.Length; u++) right[u] -= scratch[u];
        matrix.Solve(right, scratch);
        for (var u = 0; u < right.Length; u++) step[u] += scratch[u];
    }

    private StiffnessMatrix Fill(RodState state, double[] scratch, bool convex)
    {
        _matrix ??= new StiffnessMatrix([.. _terms.Select(t => t.Elements)], _isFixed, _groupOf, _anglesOf?.Invoke(state), _options.Order, _order);
        _order = _matrix.Chosen;
        _matrix.Clear();
        Array.Clear(scratch);
        for (var t = 0; t < _terms.Count; t++) _terms[t].AddSlopes(state, scratch, _matrix.SinkOf(t, _terms[t].Elements), convex);
        _matrix.Fill(convex ? 1e-12 * _matrix.MeanDiagonal() : 0);
        return _matrix;
    }

    private double FurthestShare(RodState state, double[] step)
    {
        double turn = 0;
        var places = state.Positions.Length;
        for (var i = 0; i < places; i++)
        {
            var by = new Point3(step[4 * i], step[4 * i + 1], step[4 * i + 2]);
            if (i >= state.Edges) continue;
            turn = Math.Max(turn, Math.Abs(step[4 * i + 3]));
            var j = 4 * state.NodeAfter(i);
            var apart = new Point3(step[j], step[j + 1], step[j + 2]) - by;
            turn = Math.Max(turn, apart.Length / state.Lengths[i]);
        }
        for (var u = state.FirstRoll; u < step.Length; u++) turn = Math.Max(turn, Math.Abs(step[u]));
        return _options.MostTurnRad / turn;
    }

    private double ResidualOf(RodState state, double[] gradient)
    {
        double most = 0;
        for (var u = 0; u < gradient.Length; u++)
        {
            if (_isFixed[u]) continue;
            most = Math.Max(most, Math.Abs(gradient[u]) / (state.IsAngle(u) ? _options.ReachMm : 1));
        }
        return most;
    }
}
