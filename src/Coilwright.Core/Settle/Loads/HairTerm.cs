using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle.Loads;

/// <summary>A hair's hold on every node and every roll at where they are as a stage begins, so that what nothing holds does not wander.</summary>
/// <remarks>A bead that touches nothing may stand at any roll, a loose coil may stand askew round the arm at no cost. Each stage begins where the one before ended,
/// and the last is begun anew until hardly anything is held.</remarks>
public sealed class HairTerm : IEnergyTerm
{
    private readonly RodState _from;
    private readonly double _perMm, _perRad;

    /// <summary>Makes it.</summary>
    /// <param name="from">Where the stage begins.</param>
    /// <param name="nPerMm">Hold on each node, N/mm.</param>
    /// <param name="nmmPerRad">Hold on each roll, N mm per radian.</param>
    public HairTerm(RodState from, double nPerMm, double nmmPerRad)
    {
        (_from, _perMm, _perRad) = (from, nPerMm, nmmPerRad);
        var elements = new List<int[]>();
        for (var i = 0; i < from.Positions.Length; i++)
            for (var k = 0; k < 3; k++) elements.Add([4 * i + k]);
        for (var r = 0; r < from.Rolls.Length; r++) elements.Add([from.FirstRoll + r]);
        Elements = elements;
    }

    /// <inheritdoc/>
    public IReadOnlyList<int[]> Elements { get; }

    /// <summary>The most that it holds anything with, N; moments over a reach.</summary>
    public double MostN(RodState state, double reachMm)
    {
        double most = 0;
        for (var i = 0; i < state.Positions.Length; i++) most = Math.Max(most, _perMm * (state.Positions[i] - _from.Positions[i]).Length);
        for (var r = 0; r < state.Rolls.Length; r++) most = Math.Max(most, _perRad * Math.Abs(state.Rolls[r] - _from.Rolls[r]) / reachMm);
        return most;
    }

    /// <inheritdoc/>
    public double Value(RodState state)
    {
        double places = 0, rolls = 0;
        for (var i = 0; i < state.Positions.Length; i++)
        {
            var off = state.Positions[i] - _from.Positions[i];
            places += off.Dot(off);
        }
        for (var r = 0; r < state.Rolls.Length; r++) rolls += (state.Rolls[r] - _from.Rolls[r]) * (state.Rolls[r] - _from.Rolls[r]);
        return 0.5 * (_perMm * places + _perRad * rolls);
    }

    /// <inheritdoc/>
    public void AddSlopes(RodState state, double[] gradient, IHessianSink? hessian, bool convex)
    {
        var nodes = state.Positions.Length;
        for (var i = 0; i < nodes; i++)
        {
            var off = state.Positions[i] - _from.Positions[i];
            for (var k = 0; k < 3; k++)
            {
                gradient[4 * i + k] += _perMm * off[k];
                hessian?.Add(3 * i + k, [_perMm]);
            }
        }
        for (var r = 0; r < state.Rolls.Length; r++)
        {
            gradient[state.FirstRoll + r] += _perRad * (state.Rolls[r] - _from.Rolls[r]);
            hessian?.Add(3 * nodes + r, [_perRad]);
        }
    }
}
