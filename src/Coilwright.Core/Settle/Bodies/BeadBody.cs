using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;

namespace Coilwright.Core.Settle.Bodies;

/// <summary>A part of a bead, as a ball about the middle of its hole.</summary>
/// <param name="AlongMm">Along the hole from its middle, the way the beads run, mm.</param>
/// <param name="OutwardMm">Away from the wrist, mm.</param>
/// <param name="DownMm">Along the arm, mm.</param>
/// <param name="RadiusMm">Its radius, mm.</param>
public readonly record struct BeadPart(double AlongMm, double OutwardMm, double DownMm, double RadiusMm);

/// <summary>A kind of bead as a body: what of it touches, where its weight is, and how it can turn about the wire.</summary>
/// <remarks>Covered by balls as its profile says, in cells along the hole and across it, each as thick as the bead is there. Between two balls of flat-ended beads the cover lies up to 7 % of the
/// thickness inside of the bead. Model and limits: docs/theory/settle.md.</remarks>
public sealed class BeadBody
{
    /// <summary>How far the edges of beads are rounded, mm: nothing hinges nearer to the wire than that. Our choice.</summary>
    public const double RoundedMm = 0.1;

    // A slab covered more finely than this costs more than it tells. Our choice.
    private const int MostCells = 9;
    // Parts smaller than this touch nothing that another does not, mm. Our choice.
    private const double LeastRadiusMm = 0.05;

    private BeadBody(ImmutableArray<BeadPart> parts, double weightOutwardMm, bool isRound, bool followsWire) =>
        (Parts, WeightOutwardMm, IsRound, FollowsWire) = (parts, weightOutwardMm, isRound, followsWire);

    /// <summary>What of it touches.</summary>
    public ImmutableArray<BeadPart> Parts { get; }

    /// <summary>Where its weight is, away from the wrist over the hole's centre, mm.</summary>
    public double WeightOutwardMm { get; }

    /// <summary>Whether it is round about its hole, so that nothing tells how it is turned.</summary>
    public bool IsRound { get; }

    /// <summary>Whether it is bent as the wire is, and so turns as the wire does.</summary>
    public bool FollowsWire { get; }

    /// <summary>Whether it rolls about the wire.</summary>
    public bool Rolls => !IsRound && !FollowsWire;

    /// <summary>Makes it.</summary>
    /// <param name="bead">The kind.</param>
    /// <param name="radiusMm">Radius of the wire's centre line at rest, mm.</param>
    public static BeadBody Of(Bead bead, double radiusMm)
    {
        var bow = bead.Shape.BowRadiusMm(bead, radiusMm);
        var isRound = bow is null && bead.HoleOffsetMm == 0 && Math.Abs(bead.WidthMm - bead.ThicknessMm) < 1e-9;
        var parts = ImmutableArray.CreateBuilder<BeadPart>();
        var back = bead.Shape.FlatBackMm(bead);
        var thick = back is { } b ? bead.OuterReachMm - b : bead.ThicknessMm;
        Cover(bead, thick, back, bow, parts);
        var weight = back is { } from ? from + 3.0 / 8 * thick : bead.HoleOffsetMm;
        if (bead.Description.Seat is { } seat)
        {
            // The seat under the back, taken as wide as it is high.
            var high = bead.BearingReachMm + seat.ClearMm;
            var middle = seat.ClearMm - high / 2;
            if (high / 2 > LeastRadiusMm) parts.Add(new BeadPart(0, middle, 0, high / 2));
            var (dome, under) = (Math.PI / 6 * bead.LengthMm * bead.WidthMm * thick, seat.LengthMm * high * Math.Min(high, bead.WidthMm));
            weight = (dome * weight + under * middle) / (dome + under);
        }
        return new BeadBody(parts.ToImmutable(), weight, isRound, bow is not null);
    }

    private static void Cover(Bead bead, double thick, double? back, double? bow, ImmutableArray<BeadPart>.Builder parts)
    {
        var profile = bead.Shape.Profile(bead);
        var across = Math.Min(thick, bead.WidthMm);
        // Flat ends need a finer row; of round forms the middle must be one of them.
        var cells = profile.Ends == EndForm.Flat ? Cells(2 * bead.LengthMm / across) : Cells(bead.LengthMm / across) | 1;
        for (var i = 0; i < cells; i++)
        {
            var u = (2 * i + 1.0) / cells - 1;
            var (high, wide) = (thick / 2 * profile.Thickness(u), bead.WidthMm / 2 * profile.Width(u));
            var radius = Math.Min(high, wide);
            if (radius < LeastRadiusMm) continue;
            var along = u * bead.LengthMm / 2;
            var middle = back is { } from ? from + high : bead.HoleOffsetMm;
            if (bow is { } curve) middle -= curve - Math.Sqrt(Math.Max(0, curve * curve - along * along));
            var spread = Math.Max(high, wide) - radius;
            var beside = spread < 1e-9 ? 1 : 1 + Cells(2 * spread / radius);
            for (var k = 0; k < beside; k++)
            {
                var off = beside == 1 ? 0 : spread * (2.0 * k / (beside - 1) - 1);
                parts.Add(wide > high ? new BeadPart(along, middle, off, radius) : new BeadPart(along, middle + off, 0, radius));
            }
        }
    }

    private static int Cells(double wanted) => Math.Clamp((int)Math.Ceiling(wanted - 1e-9), 1, MostCells);
}
