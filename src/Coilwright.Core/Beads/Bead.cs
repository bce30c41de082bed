using System.Collections.Immutable;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Beads;

/// <summary>Which length of a curved tube its label gives.</summary>
public enum CurvedLength
{
    /// <summary>Along the tube's own curve.</summary>
    Arc,

    /// <summary>Straight from end to end.</summary>
    Chord,
}

/// <summary>How a bead is sold.</summary>
/// <param name="Unit">The unit of sale, as <c>strand</c>.</param>
/// <param name="Beads">Beads in one unit, 1 or more.</param>
public sealed record Pack(string Unit, int Beads);

/// <summary>The drilled back of a focal: the part that meets the wire, under an outline that stands over its neighbours.</summary>
/// <param name="LengthMm">Length of the wire that the drilled back takes, mm.</param>
/// <param name="ClearMm">Height of the overhang's underside above the hole's centre, mm: a neighbour that reaches no higher tucks under it.</param>
public sealed record Seat(double LengthMm, double ClearMm);

/// <summary>What the maker wrote of a bead, before it is checked. Every measure is in millimetres; null where she wrote nothing.</summary>
public sealed record BeadDescription
{
    /// <summary>Name in the order, <c>[a-z][a-z0-9-]*</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Name for people; the id when empty.</summary>
    public string? Name { get; init; }

    /// <summary>Shape family, one of <see cref="BeadShapes"/>.</summary>
    public required string Shape { get; init; }

    /// <summary>Length along the hole.</summary>
    public BeadLength? Length { get; init; }

    /// <summary>Measure along the arm, across the hole, mm.</summary>
    public double? WidthMm { get; init; }

    /// <summary>Measure away from the wrist, across the hole, mm.</summary>
    public double? ThicknessMm { get; init; }

    /// <summary>Diameter of the hole, mm; null when unknown.</summary>
    public double? BoreMm { get; init; }

    /// <summary>How far the hole lies from the bead's middle towards the wrist, mm.</summary>
    public double? HoleOffsetMm { get; init; }

    /// <summary>Diameter of the flat face at each end, mm.</summary>
    public double? EndFaceMm { get; init; }

    /// <summary>Thickness of the wall of a hollow bead, mm.</summary>
    public double? WallMm { get; init; }

    /// <summary>Radius of a curved tube's own curve along its middle, mm.</summary>
    public double? CurveRadiusMm { get; init; }

    /// <summary>Whether a curved tube was made to lie on this coil: it then takes its arc on the wire at any size.</summary>
    public bool Matched { get; init; }

    /// <summary>What the label's length of a curved tube is; arc when null.</summary>
    public CurvedLength? CurvedLength { get; init; }

    /// <summary>Where the drilled back of a focal meets the wire; null when its outline does.</summary>
    public Seat? Seat { get; init; }

    /// <summary>The bead's colours.</summary>
    public ImmutableArray<Srgb> Colours { get; init; } = [];

    /// <summary>Finish or coating, free text.</summary>
    public string? Coating { get; init; }

    /// <summary>Material, or null when unknown.</summary>
    public BeadMaterial? Material { get; init; }

    /// <summary>A material that the data does not know, as she wrote it; null otherwise. Her own density or weighed mass then counts.</summary>
    public string? OtherMaterial { get; init; }

    /// <summary>Density that overrules the material's, g/cm3.</summary>
    public double? DensityGPerCm3 { get; init; }

    /// <summary>Weighed mass of one bead, g: overrules density.</summary>
    public double? MassG { get; init; }

    /// <summary>The maker's choice of role.</summary>
    public Role Role { get; init; }

    /// <summary>How much the bead shows, 0 to 1; null: by role.</summary>
    public double? Shows { get; init; }

    /// <summary>Unit of sale.</summary>
    public Pack? Pack { get; init; }

    /// <summary>Price of one unit of sale, in the piece's currency.</summary>
    public decimal? Price { get; init; }

    /// <summary>Lot or dye lot.</summary>
    public string? Lot { get; init; }

    /// <summary>Other names of the same bead.</summary>
    public ImmutableArray<string> Aliases { get; init; } = [];
}

/// <summary>A kind of bead: a catalogue entry, not one bead on the wire.</summary>
/// <remarks>
/// <para>Immutable, and sound once made: <see cref="TryMake"/> is the only door. Lengths in millimetres. <see cref="LengthMm"/> is along the hole,
/// <see cref="WidthMm"/> along the arm, <see cref="ThicknessMm"/> away from the wrist. "6x4" on a label is not one of these fields: which number is
/// which depends on the shape and is asked where it is typed.</para>
/// <para>Sizes run up to <see cref="MaxSizeMm"/>: longer than any bracelet bead, short of nonsense.</para>
/// </remarks>
public sealed record Bead
{
    /// <summary>Largest measure accepted, mm: longer than a loop of any bracelet coil would be strung with.</summary>
    public const double MaxSizeMm = 200;

    private Bead(BeadDescription d, BeadShape shape, double lengthMm, double widthMm, double thicknessMm, double lotMeanSdMm)
    {
        Description = d;
        Shape = shape;
        LengthMm = lengthMm;
        WidthMm = widthMm;
        ThicknessMm = thicknessMm;
        LotMeanSdMm = lotMeanSdMm;
    }

    /// <summary>What was written, for round trips and editing.</summary>
    public BeadDescription Description { get; }

    /// <summary>Name in the order.</summary>
    public string Id => Description.Id;

    /// <summary>Name for people.</summary>
    public string Name => string.IsNullOrEmpty(Description.Name) ? Id : Description.Name;

    /// <summary>Shape family.</summary>
    public BeadShape Shape { get; }

    /// <summary>Mean length along the hole, mm (a). For a curved tube, along its curve.</summary>
    public double LengthMm { get; }

    /// <summary>Measure along the arm, mm.</summary>
    public double WidthMm { get; }

    /// <summary>Measure away from the wrist, mm (t).</summary>
    public double ThicknessMm { get; }

    /// <summary>Standard deviation of one bead about its lot's mean, mm.</summary>
    public double BeadSdMm => Description.Length!.BeadSdMm;

    /// <summary>Standard deviation of the lot's mean, mm.</summary>
    public double LotMeanSdMm { get; }

    /// <summary>Diameter of the hole, mm (b); null when unknown.</summary>
    public double? BoreMm => Description.BoreMm;

    /// <summary>How far the hole lies from the bead's middle towards the wrist, mm; 0 when centred.</summary>
    public double HoleOffsetMm => Description.HoleOffsetMm ?? 0;

    /// <summary>Distance from the wire's centre to the bead's inner surface, mm: what lifts the wire off the wrist (e).</summary>
    public double BearingReachMm => ThicknessMm / 2 - HoleOffsetMm;

    /// <summary>Distance from the wire's centre to the bead's outer surface, mm.</summary>
    public double OuterReachMm => ThicknessMm / 2 + HoleOffsetMm;

    /// <summary>Length of wire that the bead itself covers on a straight wire, mm: the seat of a focal that has one, else the length.</summary>
    public double LengthOnWireMm => Description.Seat?.LengthMm ?? LengthMm;

    /// <summary>The maker's choice of role.</summary>
    public Role Role => Description.Role;

    /// <summary>The bead's colours in equal areas; empty when none was given.</summary>
    public ImmutableArray<Srgb> Colours => Description.Colours;

    /// <summary>Mass of one bead, g: weighed, else volume times density; null when neither is known.</summary>
    public double? MassG => Description.MassG
        ?? (Description.DensityGPerCm3 ?? Description.Material?.DensityGPerCm3) * BeadVolume.Mm3(this) / 1000;

    /// <summary>The same bead in other colours.</summary>
    public Bead WithColours(ImmutableArray<Srgb> colours) => new(Description with { Colours = colours }, Shape, LengthMm, WidthMm, ThicknessMm, LotMeanSdMm);

    /// <summary>The same bead with another mean length along the hole, as a measured row taught it.</summary>
    /// <param name="lengthMm">New mean length, mm, above 0.</param>
    /// <param name="lotMeanSdMm">Standard deviation that is left of the lot's mean, mm, 0 or more; null: as before.</param>
    public Bead WithLengthMm(double lengthMm, double? lotMeanSdMm = null)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(lengthMm);
        if (lotMeanSdMm is { } sd) ArgumentOutOfRangeException.ThrowIfNegative(sd);
        return new Bead(Description, Shape, lengthMm, WidthMm, ThicknessMm, lotMeanSdMm ?? LotMeanSdMm);
    }

    /// <summary>Everything wrong with a name that the order may use, a bead's or a group's: <c>[a-z][a-z0-9-]*</c>, at most 60 characters, and none of
    /// <see cref="OrderWords"/>.</summary>
    /// <param name="field">Field that the faults name.</param>
    /// <param name="name">The name.</param>
    public static ImmutableArray<Fault> CheckName(string field, string name)
    {
        var faults = new List<Fault>();
        BeadCheck.CheckId(field, name, faults);
        return [.. faults];
    }

    /// <summary>Checks a description and makes the bead of it, or says everything that is wrong with it.</summary>
    public static bool TryMake(BeadDescription description, out Bead? bead, out ImmutableArray<Fault> faults)
    {
        var check = new BeadCheck(description);
        faults = check.Run(out var shape, out var lengthMm, out var widthMm, out var thicknessMm);
        bead = faults.IsEmpty ? new Bead(description, shape!, lengthMm, widthMm, thicknessMm, description.Length!.LotMeanSdMm) : null;
        return bead is not null;
    }
}
