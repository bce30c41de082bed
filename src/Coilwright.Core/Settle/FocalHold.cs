using Coilwright.Core.Geometry;
using Coilwright.Core.Settle.Bodies;
using Coilwright.Core.Settle.Contacts;
using Coilwright.Core.Settle.Loads;
using Coilwright.Core.Settle.Rods;
using Coilwright.Core.Settle.Solving;

namespace Coilwright.Core.Settle;

/// <summary>What it takes to keep a bead from rolling about the wire, and what presses on it that could.</summary>
internal static class FocalHold
{
    /// <summary>Looks at a shape in which the bead's roll is held.</summary>
    /// <param name="strung">The strung wire.</param>
    /// <param name="state">How it lies.</param>
    /// <param name="bead">The bead, one that rolls.</param>
    /// <param name="row">What keeps neighbours apart.</param>
    /// <param name="turns">What keeps turns apart.</param>
    /// <param name="wrist">What keeps beads off the wrist.</param>
    /// <param name="weight">What everything weighs.</param>
    /// <returns>What holds it, N mm, positive where it would roll back: the slope of the energy by its roll. And what presses on it, each push times how far from the wire it does, N mm: rubbing by a coefficient
    /// gives that coefficient's share of it at most, square to the push. The hole's own push on the wire is left out, since the wire is half a millimetre thick.</returns>
    public static (double HoldNmm, double PressesNmm) Of(StrungRod strung, RodState state, int bead, RowTerm row, TurnsTerm turns, WristTerm wrist, WeightTerm weight)
    {
        var slopes = new double[state.Unknowns];
        foreach (var term in (IEnergyTerm[])[row, turns, wrist, weight]) term.AddSlopes(state, slopes, null, false);
        var (middle, t) = (new BallPlace(state, strung.Middle(bead)).Centre, state.Tangents[bead]);
        double FromWire(Point3 at)
        {
            var off = at - middle;
            return (off - off.Dot(t) * t).Length;
        }
        double presses = 0;
        // Its two neighbours: the hinge at each of its edge's nodes.
        for (var h = 0; h < strung.Hinges.Count; h++)
            if (strung.Hinges[h].Node == bead || strung.Hinges[h].Node == bead + 1) presses += row.ForceN(state, h) * strung.Hinges[h].LeverMm;
        for (var b = 0; b < strung.Balls.Count; b++)
            if (strung.Balls[b].Bead == bead && wrist.ForceN(state, b) is > 0 and var force) presses += force * FromWire(wrist.TouchedAt(state, b));
        foreach (var pair in turns.Pairs)
        {
            var (one, other) = (strung.Balls[pair.First], strung.Balls[pair.Second]);
            if (one.Bead != bead && other.Bead != bead) continue;
            var (mine, its) = one.Bead == bead ? (one, other) : (other, one);
            var centre = new BallPlace(state, mine).Centre;
            presses += turns.ForceN(state, pair) * FromWire(centre + mine.RadiusMm * (new BallPlace(state, its).Centre - centre).Unit);
        }
        return (slopes[strung.Angles[bead]], presses);
    }
}
