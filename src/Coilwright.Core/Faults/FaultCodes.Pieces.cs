namespace Coilwright.Core.Faults;

// Beads, wire, rules and measured rows of a piece.
public static partial class FaultCodes
{
    /// <summary>The hole is not narrower than the bead; {limit} mm is the bead's smaller measure across the hole.</summary>
    public const string BoreTooWide = "bead.bore-too-wide";

    /// <summary>A shape needs a field that is missing; {shape}.</summary>
    public const string ShapeNeeds = "bead.shape-needs";

    /// <summary>A field has no meaning for this shape; {shape}.</summary>
    public const string ShapeHasNo = "bead.shape-has-no";

    /// <summary>The hole would leave the bead: its offset is more than half the thickness less half the bore; {limit} mm.</summary>
    public const string HoleOutside = "bead.hole-outside";

    /// <summary>A colour is not <c>#rrggbb</c>.</summary>
    public const string ColourForm = "colour.form";

    /// <summary>A length is given in two ways; {fields}.</summary>
    public const string LengthTwice = "bead.length-twice";

    /// <summary>A length is missing; {fields} lists the ways it can be given.</summary>
    public const string LengthMissing = "bead.length-missing";

    /// <summary>A material is not in the data and the bead gives neither density nor mass; {known}, {nearest}.</summary>
    public const string MaterialUnknown = "bead.material-unknown";

    /// <summary>A steel is not in the data; {known}, {nearest}.</summary>
    public const string SteelUnknown = "wire.steel-unknown";

    /// <summary>A gauge name is not one of AWG or SWG.</summary>
    public const string GaugeForm = "wire.gauge-form";

    /// <summary>The coil's size is missing or given in two ways; {fields}.</summary>
    public const string CoilSize = "wire.coil-size";

    /// <summary>A rule of the order names a bead and a group, {value} and {other}, so that it is not clear what it counts.</summary>
    public const string RuleMixed = "rule.mixed";

    /// <summary>A bead is named as standing in for itself.</summary>
    public const string StandInItself = "stand-in.itself";

    /// <summary>A measured row names a bead that the order does not reach; {beads} is how many there are.</summary>
    public const string MeasuredBeyond = "measured.beyond";

    /// <summary>A measured row is absurd against the beads' own lengths; {expected} mm.</summary>
    public const string MeasuredAbsurd = "measured.absurd";
}
