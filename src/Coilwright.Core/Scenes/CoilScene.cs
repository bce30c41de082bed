using System.Collections.Immutable;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Fit;
using Coilwright.Core.Geometry;
using Coilwright.Core.Lies;
using Coilwright.Core.Readings;
using Coilwright.Core.Settle;
using Coilwright.Core.Settle.Contacts;

namespace Coilwright.Core.Scenes;

/// <summary>How a piece is shown in space.</summary>
public enum CoilPose
{
    /// <summary>On the wrist that it was reckoned on.</summary>
    Worn,

    /// <summary>At rest, as it lies on the table.</summary>
    AtRest,

    /// <summary>On the wrist as it was found to lie when everything that pulls and pushes is at rest.</summary>
    Settled,
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
/// <para>Beads stand where their lie says, each square to the wire at its middle; the wire is a round helix under them, and nothing sags, tips or rolls. A settled piece stands as it was settled: each bead at
/// its own place, turned as it rolled, the wire smoothly through them, on an oval wrist. Limits: docs/theory/coil-in-space.md.</para>
/// </remarks>
public sealed class CoilScene
{
    // A bead of no known colour: pale horn. Our choice.
    private static readonly Srgb Plain = new(0xd8, 0xcb, 0xb4);
    private static readonly Srgb White = new(255, 255, 255);

    private readonly Settled? _settled;

    private CoilScene(Reckoned reckoned, CoilPose pose, Settled? settled, Fineness fineness)
    {
        (Reckoned, Pose, _settled) = (reckoned, pose, settled);
        Lie = settled?.Lie ?? LieOf(reckoned, pose);
        PitchMm = settled?.Worn!.Value.PitchMm ?? reckoned.Worn.PitchMm;
        var order = reckoned.Piece.Order.Kinds;
        IWirePath path = settled is null ? new CoilPath(Lie, PitchMm) : new SettledPath(settled);
        var indexOf = reckoned.Counts.Select((count, at) => (count.KindIndex, at)).ToDictionary(p => p.KindIndex, p => p.at);
        Kinds = [.. reckoned.Counts.Select(count => KindOf(count, Lie.RadiusMm, fineness))];
        var strung = new int[Kinds.Length];
        var beads = ImmutableArray.CreateBuilder<StandingBead>(order.Length);
        for (var i = 0; i < order.Length; i++)
        {
            var kind = indexOf[order[i]];
            var (place, along, outwards) = settled is null ? path.At(Lie.BeadMiddleMm(i)) : (settled.Beads[i].Place, settled.Beads[i].Along, settled.Beads[i].Outwards);
            beads.Add(new StandingBead(i, kind, strung[kind]++ % Kinds[kind].Meshes.Length, place, along, outwards));
        }
        Beads = beads.MoveToImmutable();
        Wire = WireTube.Of(path, reckoned.Piece, fineness);
        HeightMm = settled is null ? PitchMm * Lie.Turns : Beads.Max(b => b.Place.Y) - Beads.Min(b => b.Place.Y);
    }

    /// <summary>The readings that it stands on.</summary>
    public Reckoned Reckoned { get; }

    /// <summary>Worn, at rest, or as it sits.</summary>
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

    /// <summary>The wrist as a form, with some of it to be seen over and under the coil: round, and oval and tapering as it was settled on; null at rest.</summary>
    public SolidMesh? Form => (Pose, _settled) switch
    {
        (_, { } settled) => WristForm.Of(settled.Request.Wrist, Beads.Min(b => b.Place.Y) - PitchMm / 2, Beads.Max(b => b.Place.Y) + PitchMm / 2),
        (CoilPose.Worn, _) => WristForm.Of(new WristSection(Reckoned.WristMm, 1, 0), -(HeightMm + PitchMm) / 2, (HeightMm + PitchMm) / 2),
        _ => null,
    };

    /// <summary>Sets a piece up.</summary>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="pose">Worn or at rest.</param>
    /// <param name="fineness">How fine the meshes are; null: by how many beads it has.</param>
    /// <exception cref="ArgumentOutOfRangeException">A settled one needs what settling found: the other way to set it up.</exception>
    public static CoilScene Of(Reckoned reckoned, CoilPose pose, Fineness? fineness = null)
    {
        if (pose == CoilPose.Settled) throw new ArgumentOutOfRangeException(nameof(pose), pose, "Set it up with what settling found.");
        return new(reckoned, pose, null, fineness ?? Fineness.For(reckoned.Piece.Order.Count));
    }

    /// <summary>Sets a piece up as it settled.</summary>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="settled">How the same piece lies; a rest was found.</param>
    /// <param name="fineness">How fine the meshes are; null: by how many beads it has.</param>
    /// <exception cref="ArgumentException">No rest was found, or it is another piece's.</exception>
    public static CoilScene Of(Reckoned reckoned, Settled settled, Fineness? fineness = null)
    {
        if (settled.Lie is null || settled.Beads.Length != reckoned.Piece.Order.Count) throw new ArgumentException("It lies nowhere.", nameof(settled));
        return new(reckoned, CoilPose.Settled, settled, fineness ?? Fineness.For(reckoned.Piece.Order.Count));
    }

    /// <summary>Where each bead lies in a pose, without setting the piece up.</summary>
    /// <param name="reckoned">Its readings.</param>
    /// <param name="pose">Worn or at rest.</param>
    /// <exception cref="ArgumentOutOfRangeException">A settled one lies as settling found.</exception>
    public static Lie LieOf(Reckoned reckoned, CoilPose pose) => pose switch
    {
        CoilPose.Worn => reckoned.Lie,
        CoilPose.AtRest => AtRest(reckoned),
        _ => throw new ArgumentOutOfRangeException(nameof(pose), pose, "It lies as settling found."),
    };

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
