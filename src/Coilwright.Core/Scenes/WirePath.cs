using Coilwright.Core.Geometry;
using Coilwright.Core.Lies;
using Coilwright.Core.Settle;

namespace Coilwright.Core.Scenes;

/// <summary>The wire's way through the beads.</summary>
internal interface IWirePath
{
    /// <summary>Wire under the beads, mm.</summary>
    double LengthMm { get; }

    /// <summary>Radius that its turns have about, mm.</summary>
    double RadiusMm { get; }

    /// <summary>A place on the wire, the way it runs there, and away from the wrist, square to that.</summary>
    /// <param name="alongMm">Mm from the starting end.</param>
    (Point3 Place, Point3 Along, Point3 Outwards) At(double alongMm);
}

/// <summary>An even helix round the wrist and down the arm.</summary>
internal sealed class CoilPath(Lie lie, double pitchMm) : IWirePath
{
    private readonly Helix _helix = new(lie.RadiusMm, pitchMm);
    private readonly double _midTurns = lie.Turns / 2;

    public double LengthMm => lie.BeadedMm;

    public double RadiusMm => lie.RadiusMm;

    public (Point3 Place, Point3 Along, Point3 Outwards) At(double alongMm)
    {
        var angle = lie.AngleDegAt(alongMm) * Math.PI / 180;
        var (towards, right, down) = _helix.At(angle, lie.TurnsAt(alongMm) - _midTurns);
        var (sin, cos) = Math.SinCos(angle);
        return (new Point3(right, -down, towards), new Point3(lie.RadiusMm * cos, -pitchMm / (2 * Math.PI), -lie.RadiusMm * sin).Unit, new Point3(sin, 0, cos));
    }
}

/// <summary>The wire through beads where they settled: from middle to middle a cubic (C. Hermite) that leaves and arrives along the beads' holes, and straight on beyond the first and the last.</summary>
/// <remarks>Its pull at both ends, 2 chord/(1 + cos(half the turn)), is that with which a cubic follows a circle the best, so that on an even coil it strays from it by a ten-thousandth of its radius at most.</remarks>
internal sealed class SettledPath(Settled settled) : IWirePath
{
    private readonly double[] _middles = [.. Enumerable.Range(0, settled.Beads.Length).Select(settled.Lie!.BeadMiddleMm)];

    public double LengthMm => settled.Lie!.BeadedMm;

    public double RadiusMm => settled.Lie!.RadiusMm;

    public (Point3 Place, Point3 Along, Point3 Outwards) At(double alongMm)
    {
        var found = Array.BinarySearch(_middles, alongMm);
        var next = found >= 0 ? found : ~found;
        if (next == 0) return Beyond(0, alongMm);
        if (next == _middles.Length) return Beyond(next - 1, alongMm);
        var (from, to) = (settled.Beads[next - 1], settled.Beads[next]);
        var chord = to.Place - from.Place;
        var pull = 2 * chord.Length / (1 + Math.Sqrt(Math.Max(0, (1 + from.Along.Dot(to.Along)) / 2)));
        var u = (alongMm - _middles[next - 1]) / (_middles[next] - _middles[next - 1]);
        var (leaves, arrives) = (pull * from.Along, pull * to.Along);
        var place = from.Place + u * u * (3 - 2 * u) * chord + u * (1 - u) * (1 - u) * leaves - u * u * (1 - u) * arrives;
        var along = 6 * u * (1 - u) * chord + (1 - u) * (1 - 3 * u) * leaves + u * (3 * u - 2) * arrives;
        return Standing(place, along.Unit);
    }

    private (Point3 Place, Point3 Along, Point3 Outwards) Beyond(int bead, double alongMm)
    {
        var last = settled.Beads[bead];
        return Standing(last.Place + (alongMm - _middles[bead]) * last.Along, last.Along);
    }

    // Beads roll about the wire; the wire itself has no outward side but away from the arm.
    private static (Point3 Place, Point3 Along, Point3 Outwards) Standing(Point3 place, Point3 along)
    {
        var away = new Point3(place.X, 0, place.Z);
        return (place, along, (away - away.Dot(along) * along).Unit);
    }
}
