using System.Collections.Immutable;
using Coilwright.Core.Measures;

namespace Coilwright.Core.Lies;

/// <summary>Where each bead lies: its turn, its place and share of the wire, and its angle round the wrist.</summary>
/// <remarks>
/// <para>The noun in the middle: fit makes the quick one, settling the mechanical one; lining up, drawings and screens read either.</para>
/// <para>Millimetres of wire from the starting end. The shares tile the wire: each starts where the one before it ends. Angles in degrees, in
/// (-180, 180], 0 the top of the wrist, positive the way the beads run. Turns count from 1.</para>
/// </remarks>
public sealed class Lie
{
    private readonly ImmutableArray<double> _beadMiddlesMm;

    private Lie(Lie other, double startAngleDeg, ImmutableArray<double> beadMiddlesMm)
    {
        _beadMiddlesMm = beadMiddlesMm;
        (SharesMm, StartsMm, BeadedMm) = (other.SharesMm, other.StartsMm, other.BeadedMm);
        (WirePerTurnMm, RadiusMm, StartAngleDeg) = (other.WirePerTurnMm, other.RadiusMm, startAngleDeg);
    }

    /// <summary>Makes a lie from the shares of the wire.</summary>
    /// <param name="sharesMm">Each bead's share of the wire, mm, above 0.</param>
    /// <param name="wirePerTurnMm">Wire in one turn, mm, above 0 (T).</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm (R).</param>
    /// <param name="startAngleDeg">Angle of the starting end, degrees.</param>
    public Lie(ImmutableArray<double> sharesMm, double wirePerTurnMm, double radiusMm, double startAngleDeg)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(wirePerTurnMm);
        SharesMm = sharesMm;
        WirePerTurnMm = wirePerTurnMm;
        RadiusMm = radiusMm;
        StartAngleDeg = startAngleDeg;
        var starts = ImmutableArray.CreateBuilder<double>(sharesMm.Length);
        var along = 0.0;
        foreach (var share in sharesMm)
        {
            starts.Add(along);
            along += share;
        }
        StartsMm = starts.MoveToImmutable();
        BeadedMm = along;
    }

    /// <summary>How many beads.</summary>
    public int Count => SharesMm.Length;

    /// <summary>Each bead's share of the wire, mm (lambda).</summary>
    public ImmutableArray<double> SharesMm { get; }

    /// <summary>Where each share starts, mm from the starting end (s).</summary>
    public ImmutableArray<double> StartsMm { get; }

    /// <summary>Wire under all beads, mm (L).</summary>
    public double BeadedMm { get; }

    /// <summary>Wire in one turn, mm (T).</summary>
    public double WirePerTurnMm { get; }

    /// <summary>Radius of the wire's centre line, mm (R).</summary>
    public double RadiusMm { get; }

    /// <summary>Angle of the starting end, degrees.</summary>
    public double StartAngleDeg { get; }

    /// <summary>Turns that the beads cover (L / T).</summary>
    public double Turns => TurnsAt(BeadedMm);

    /// <summary>The same turned round the wrist, so that its starting end lies at another angle, degrees.</summary>
    public Lie StartingAt(double startAngleDeg) => new(this, Angles.NormalizedDeg(startAngleDeg), _beadMiddlesMm);

    /// <summary>The same knowing where each bead itself stands, mm from the starting end; see <see cref="BeadMiddleMm"/>.</summary>
    public Lie WithBeadMiddles(ImmutableArray<double> beadMiddlesMm) => new(this, StartAngleDeg, beadMiddlesMm);

    /// <summary>Where a bead's own middle stands, mm from the starting end: what is drawn.</summary>
    /// <remarks>Not the middle of its share. Two neighbours part the wire between their middles evenly, so a nugget beside a long tube has a share
    /// that reaches towards the tube, and stands nearer to its other neighbour. Where the lie was made from shares alone, the middle of the share.</remarks>
    public double BeadMiddleMm(int index) => _beadMiddlesMm.IsDefault ? MiddleMm(index) : _beadMiddlesMm[index];

    /// <summary>Middle of a bead's share, mm from the starting end.</summary>
    public double MiddleMm(int index) => StartsMm[index] + SharesMm[index] / 2;

    /// <summary>The turn a bead's middle lies on, from 1.</summary>
    public int Turn(int index) => TurnAt(MiddleMm(index));

    // A last turn shorter than this share of a turn is no turn to its maker, but where the ends overlap: our choice.
    private const double OverlapShare = 0.1;

    /// <summary>The turn that a maker strings a bead with, from 1: its own, but the turn before where the last one is only where the ends overlap.</summary>
    public int TurnWithOverlap(int index)
    {
        var (turn, last) = (Turn(index), Turn(Count - 1));
        return turn < last || last == 1 || Turns - (last - 1) >= OverlapShare ? turn : last - 1;
    }

    /// <summary>A bead's angle, degrees in (-180, 180].</summary>
    public double AngleDeg(int index) => AngleDegAt(MiddleMm(index));

    /// <summary>The turn of a place on the wire, from 1.</summary>
    public int TurnAt(double alongMm) => 1 + (int)Math.Floor(TurnsAt(alongMm));

    /// <summary>Turns from the starting end to a place on the wire.</summary>
    public double TurnsAt(double alongMm) => alongMm / WirePerTurnMm;

    /// <summary>The angle of a place on the wire, degrees in (-180, 180].</summary>
    public double AngleDegAt(double alongMm) => Angles.NormalizedDeg(StartAngleDeg + 360 * alongMm / WirePerTurnMm);

    /// <summary>The bead whose share a place on the wire lies in; null before the first and after the last.</summary>
    /// <param name="alongMm">The place, mm from the starting end. Where two shares meet, the later one's.</param>
    public int? BeadAt(double alongMm)
    {
        if (!(alongMm >= 0 && alongMm < BeadedMm)) return null;
        var found = StartsMm.BinarySearch(alongMm);
        return found >= 0 ? found : ~found - 1;
    }

    /// <summary>The bead that lies over, or under, a bead's middle some turns on; null where no bead does.</summary>
    /// <param name="index">The bead.</param>
    /// <param name="turns">How many turns on; negative goes back towards the starting end.</param>
    public int? BeadOver(int index, int turns) => BeadAt(MiddleMm(index) + turns * WirePerTurnMm);
}
