using System.Collections.Immutable;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Fit;
using Coilwright.Core.Geometry;
using Coilwright.Core.Lies;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Scenes;

/// <summary>How a piece is shown in space.</summary>
public enum CoilPose
{
    /// <summary>On the wrist that it was reckoned on.</summary>
    Worn,

    /// <summary>At rest, as it lies on the table.</summary>
    AtRest,
}

/// <summary>A kind of bead in a scene.</summary>
/// <param name="Count">The kind, with its key letter.</param>
/// <param name="Colour">Its colour; white where its meshes bring their own.</param>
/// <param name="Finish">How it takes light.</param>
/// <param name="Meshes">Its mesh, or the several that a rough kind has.</param>
public sealed record SceneKind(KindCount Count, Srgb Colour, SurfaceFinish Finish, ImmutableArray<SolidMesh> Meshes);

/// <summary>A bead where it stands: which way it looks and which mesh of its kind it has.</summary>
/// <param name="Index">Its place in the order, from 0.</param>
/// <param name="Kind">Its kind, an index of <see cref="CoilScene.Kinds"/>.</param>
/// <param name="Mesh">Its mesh, an index of <see cref="SceneKind.Meshes"/>.</param>
/// <param name="Place">The wire's centre under its middle, mm.</param>
/// <param name="Along">The way the beads run, one long: its mesh's x.</param>
/// <param name="Outwards">Away from the wrist, one long: its mesh's y. Its z is along crossed with outwards, down the arm.</param>
public readonly record struct StandingBead(int Index, int Kind, int Mesh, Point3 Place, Point3 Along, Point3 Outwards);

/// <summary>A piece as it stands in space: each bead's skin at true size, the wire, and the form that stands for the wrist.</summary>
/// <remarks>
/// <para>Millimetres. x to the right, y upwards, z towards whoever looks, right-handed; the coil's axis is y, its middle the origin. The top of the wrist (0 degrees) faces whoever looks, angles grow
/// to the right, and the coil goes down as it goes round.</para>
/// <para>Beads stand where their lie says, each square to the wire at its middle; the wire is a round helix under them. Nothing sags, tips or rolls. Limits: docs/theory/coil-in-space.md.</para>
/// </remarks>
public sealed class CoilScene
{
    // A bead of no known colour: pale horn. Our choice.
    private static readonly Srgb Plain = new(0xd8, 0xcb, 0xb4);
    private static readonly Srgb White = new(255, 255, 255);

    private CoilScene(Reckoned reckoned, CoilPose pose, Fineness fineness)
    {
        (Reckoned, Pose) = (reckoned, pose);
        Lie = pose == CoilPose.Worn ? reckoned.Lie : AtRest(reckoned);
        PitchMm = reckoned.Worn.PitchMm;
        var order = reckoned.Piece.Order.Kinds;
        var path = new CoilPath(Lie, PitchMm);
        var indexOf = reckoned.Counts.Select((count, at) => (count.KindIndex, at)).ToDictionary(p => p.KindIndex, p => p.at);
        Kinds = [.. reckoned.Counts.Select(count => KindOf(count, Lie.RadiusMm, fineness))];
        var strung = new int[Kinds.Length];
        var beads = ImmutableArray.CreateBuilder<StandingBead>(order.Length);
        for (var i = 0; i < order.Length; i++)
        {
            var kind = indexOf[order[i]];
            var (place, along, outwards) = path.At(Lie.BeadMiddleMm(i));
            beads.Add(new StandingBead(i, kind, strung[kind]++ % Kinds[kind].Meshes.Length, place, along, outwards));
        }
        Beads = beads.MoveToImmutable();
        Wire = WireTube.Of(path, reckoned.Piece, fineness);
        HeightMm = PitchMm * Lie.Turns;
    }

    /// <summary>The readings that it stands on.</summary>
    public Reckoned Reckoned { get; }

    /// <summary>Worn or at rest.</summary>
    public CoilPose Pose { get; }

    /// <summary>Where each bead lies in this pose.</summary>
    public Lie Lie { get; }

    /// <summary>From turn to turn along the arm, mm.</summary>
    public double PitchMm { get; }

    /// <summary>How far the wire rises from end to end, mm.</summary>
    public double HeightMm { get; }

    /// <summary>The kinds, in the order of the key letters.</summary>
    public ImmutableArray<SceneKind> Kinds { get; }

    /// <summary>The beads, from the starting end.</summary>
    public ImmutableArray<StandingBead> Beads { get; }

    /// <summary>The wire with both its ends.</summary>
    public SolidMesh Wire { get; }

    /// <summary>The wrist as a round form, with some of it to be seen over and under the coil; null at rest.</summary>
    public SolidMesh? Form => Pose == CoilPose.Worn ? WristForm.Of(Reckoned.WristMm, HeightMm + PitchMm) : null;

    /// <summary>Sets a piece up.</summary>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="pose">Worn or at rest.</param>
    /// <param name="fineness">How fine the meshes are; null: by how many beads it has.</param>
    public static CoilScene Of(Reckoned reckoned, CoilPose pose, Fineness? fineness = null) =>
        new(reckoned, pose, fineness ?? Fineness.For(reckoned.Piece.Order.Count));

    private static SceneKind KindOf(KindCount count, double radiusMm, Fineness fineness)
    {
        var bead = count.Bead;
        var isRough = bead.Shape.Profile(bead).Look == SurfaceLook.Uneven;
        var meshes = Enumerable.Range(0, isRough ? Math.Min(BeadMesher.Stones, count.Count) : 1).Select(stone => BeadMesher.Of(bead, radiusMm, fineness, stone)).ToImmutableArray();
        var colour = bead.Colours.Length switch { 0 => Plain, 1 => bead.Colours[0], _ => White };
        return new SceneKind(count, colour, SurfaceFinish.Of(bead), meshes);
    }

    // The readings keep the shares at rest. What a measured row scales them by is what they differ by from the shares that the beads' lengths give.
    private static Lie AtRest(Reckoned reckoned)
    {
        var (piece, radius) = (reckoned.Piece, reckoned.Piece.Wire.RelaxedRadiusMm);
        var plain = new CurveShares(piece.Beads, piece.Order).AtRadius(radius);
        var factors = plain.Select((share, i) => reckoned.RelaxedSharesMm[i] / share).ToArray();
        var turn = new Helix(radius, reckoned.Worn.PitchMm).TurnLengthMm;
        var lie = new Lie(reckoned.RelaxedSharesMm, turn, radius, reckoned.Lie.StartAngleDeg)
            .WithBeadMiddles(new CurveShares(piece.Beads, piece.Order, factors).MiddlesAtRadius(radius));
        // Whatever faces the top when it is worn does so at rest too.
        return reckoned.Focal is { } focal && piece.Wearer.FocalOnTop ? lie.StartingAt(-360 * lie.MiddleMm(focal.Index) / turn) : lie;
    }
}

/// <summary>The wire's way round the wrist and down the arm.</summary>
internal sealed class CoilPath(Lie lie, double pitchMm)
{
    private readonly Helix _helix = new(lie.RadiusMm, pitchMm);
    private readonly double _midTurns = lie.Turns / 2;

    /// <summary>Wire under the beads, mm.</summary>
    internal double LengthMm => lie.BeadedMm;

    /// <summary>Radius of the wire's centre line, mm.</summary>
    internal double RadiusMm => lie.RadiusMm;

    /// <summary>A place on the wire, the way it runs there, and away from the wrist.</summary>
    /// <param name="alongMm">Mm from the starting end.</param>
    internal (Point3 Place, Point3 Along, Point3 Outwards) At(double alongMm)
    {
        var angle = lie.AngleDegAt(alongMm) * Math.PI / 180;
        var (towards, right, down) = _helix.At(angle, lie.TurnsAt(alongMm) - _midTurns);
        var (sin, cos) = Math.SinCos(angle);
        return (new Point3(right, -down, towards), new Point3(lie.RadiusMm * cos, -pitchMm / (2 * Math.PI), -lie.RadiusMm * sin).Unit, new Point3(sin, 0, cos));
    }
}
