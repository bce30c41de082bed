using System.Collections.Immutable;
using Coilwright.Core.Beads.Sections;

namespace Coilwright.Core.Beads.Shapes;

/// <summary>How a shape's two measures across the hole come about.</summary>
public enum AcrossRule
{
    /// <summary>As wide and as thick as long, unless written otherwise: a round, a cube.</summary>
    AsLong,

    /// <summary>As wide as long, and a thickness of its own: a coin.</summary>
    WideAsLong,

    /// <summary>Round across: one measure across is enough.</summary>
    RoundAcross,

    /// <summary>Width and thickness are both asked for.</summary>
    Both,
}

/// <summary>How a bead ends where its neighbour begins.</summary>
public enum EndForm
{
    /// <summary>Curved: neighbours touch near the hole.</summary>
    Curved,

    /// <summary>Pointed: neighbours touch at the hole.</summary>
    Pointed,

    /// <summary>Flat: neighbours hinge on the inner edge.</summary>
    Flat,
}

/// <summary>How a bead's surface looks, for drawings.</summary>
public enum SurfaceLook
{
    /// <summary>Smooth.</summary>
    Smooth,

    /// <summary>Cut in facets.</summary>
    Faceted,

    /// <summary>Uneven, no two alike.</summary>
    Uneven,
}

/// <summary>A bead's profile: how wide and how thick it is along its hole.</summary>
/// <param name="Thickness">Share of the full thickness at u, where u runs from -1 to 1 along the hole; 0 to 1, never rising away from the middle.</param>
/// <param name="Width">Share of the full width at u; the silhouette seen from outside.</param>
/// <param name="AreaFactor">Area across the hole as a share of width times thickness there: pi/4 for an ellipse, 1 for a rectangle.</param>
/// <param name="Ends">How it ends.</param>
/// <param name="Look">How its surface looks.</param>
public sealed record BeadProfile(Func<double, double> Thickness, Func<double, double> Width, double AreaFactor, EndForm Ends, SurfaceLook Look);

/// <summary>A shape family. Tells only what no one else can know; volume, silhouette, contact and mesh follow from it.</summary>
/// <remarks>To add one: a file beside this one and a line in <see cref="BeadShapes"/> (docs/how-to/add-a-bead-shape.md).</remarks>
public abstract class BeadShape
{
    /// <summary>Name in the piece file, <c>[a-z][a-z0-9-]*</c>.</summary>
    public abstract string Name { get; }

    /// <summary>Other names of the trade for the same shape.</summary>
    public virtual ImmutableArray<string> Aliases => [];

    /// <summary>How width and thickness are asked for.</summary>
    public abstract AcrossRule Across { get; }

    /// <summary>Whether the number along the hole is the smaller one of an a-by-b label (rondelle) or the larger (tube, oval).</summary>
    public virtual bool LabelRunsAlongLarger => true;

    /// <summary>Optional fields that mean something for this shape, by their names in the piece file.</summary>
    public virtual ImmutableArray<string> Takes => ["holeOffsetMm", "wallMm"];

    /// <summary>Fields that this bead's shape cannot do without beside its size, by their names in the piece file.</summary>
    public virtual ImmutableArray<string> Needs(BeadDescription description) => [];

    /// <summary>Whether a hollow bead of this shape is open from end to end, as a tube is, rather than walled at its ends.</summary>
    public virtual bool HollowRunsThrough => false;

    /// <summary>Whether the flat at its ends decides how it hinges, so that not knowing it deserves a notice.</summary>
    public virtual bool EndFaceMatters => false;

    /// <summary>Profile of a bead of this shape.</summary>
    public abstract BeadProfile Profile(Bead bead);

    /// <summary>The bead cut through in the plane of the coil, as one convex figure or several.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm: only a matched curved tube asks.</param>
    public abstract ImmutableArray<ConvexSection> Sections(Bead bead, double radiusMm);

    /// <summary>Whether <see cref="Sections"/> depends on the radius.</summary>
    public virtual bool SectionsDependOnRadius => false;

    /// <summary>Longest bead that passes the wire, mm, or null when it passes at any length.</summary>
    /// <param name="bead">The bead; its hole is known.</param>
    /// <param name="wireMm">Thickness of the wire, mm.</param>
    /// <param name="radiusMm">Radius of the wire's centre line at rest, mm.</param>
    /// <param name="boreMm">Diameter of the hole to judge by, mm.</param>
    public virtual double? LongestPassingMm(Bead bead, double boreMm, double wireMm, double radiusMm) =>
        bead.Description.WallMm is { } wall && !HollowRunsThrough
            ? Boring.LongestHollowMm(boreMm, wireMm, radiusMm, wall, bead.OuterReachMm - wall)
            : Boring.LongestStraightMm(boreMm, wireMm, radiusMm);

    /// <summary>Half of the wire that the bead's outline stands over and hides, mm; null for a shape that hides nothing.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="radiusMm">Radius of the wire's centre line, mm.</param>
    public virtual double? HidesHalfMm(Bead bead, double radiusMm) => null;

    /// <summary>Radius of the curve that the bead's own middle follows, mm; null for one that is straight.</summary>
    /// <param name="bead">The bead.</param>
    /// <param name="radiusMm">Radius of the wire's centre line at rest, mm: what a bead made for the coil follows.</param>
    public virtual double? BowRadiusMm(Bead bead, double radiusMm) => null;

    /// <summary>Height of the flat back of a dome over the hole's centre, mm, negative below it; null where both sides bulge alike.</summary>
    public virtual double? FlatBackMm(Bead bead) => null;

    /// <summary>The bead drawn out of a rectangle: its corners in the right half.</summary>
    protected static PolygonSection Box(double halfLengthMm, Bead bead) =>
        new((halfLengthMm, -bead.BearingReachMm), (halfLengthMm, bead.OuterReachMm));

    /// <summary>The share of a flat end face in the thickness; <paramref name="unknown"/> when the maker gave none.</summary>
    protected static double FaceShare(Bead bead, double unknown) =>
        bead.Description.EndFaceMm is { } face ? face / bead.ThicknessMm : unknown;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
