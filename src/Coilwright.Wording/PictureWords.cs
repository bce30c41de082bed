namespace Coilwright.Wording;

/// <summary>Captions of the smaller pictures. Names in braces are filled in; see <see cref="Template"/>. Lengths come as text, in the units asked for.</summary>
public sealed record PictureWords
{
    // The coil at a slant.

    /// <summary>What the coil's picture shows, for someone who cannot see it: {title}, {turns}, {beads}.</summary>
    public required string Coil { get; init; }

    /// <summary>Beneath the coil: how it is seen.</summary>
    public required string CoilSeen { get; init; }

    // Bead cards.

    /// <summary>What the cards show: {title}, {kinds}.</summary>
    public required string Cards { get; init; }

    /// <summary>How many are used: {count}.</summary>
    public required string CardUse { get; init; }

    /// <summary>The hole: {bore}.</summary>
    public required string CardHole { get; init; }

    /// <summary>The hole is not known.</summary>
    public required string CardHoleUnknown { get; init; }

    /// <summary>The bead is drawn smaller than it is: {percent}.</summary>
    public required string CardScaled { get; init; }

    /// <summary>Beneath the view from outside.</summary>
    public required string CardFront { get; init; }

    /// <summary>Beneath the view along the arm.</summary>
    public required string CardSide { get; init; }

    // End loops in stages.

    /// <summary>What the stages show: {title}.</summary>
    public required string Ends { get; init; }

    /// <summary>Heading: both ends are alike.</summary>
    public required string BothEnds { get; init; }

    /// <summary>Heading: the end strung first.</summary>
    public required string StartEnd { get; init; }

    /// <summary>Heading: the end strung last.</summary>
    public required string FinishEnd { get; init; }

    /// <summary>Stages of a turned loop: {wire}.</summary>
    public required string LoopTrim { get; init; }

    /// <summary>{inside}.</summary>
    public required string LoopGrip { get; init; }

    /// <summary>The roll.</summary>
    public required string LoopRoll { get; init; }

    /// <summary>{inside}.</summary>
    public required string LoopClose { get; init; }

    /// <summary>The roll of a loop that something is hung in.</summary>
    public required string DangleRoll { get; init; }

    /// <summary>The dangle is hung in, and the loop closed: {inside}.</summary>
    public required string DangleHang { get; init; }

    /// <summary>Stages of a glued cap: {depth}.</summary>
    public required string CapRoughen { get; init; }

    /// <summary>The glue.</summary>
    public required string CapGlue { get; init; }

    /// <summary>The push.</summary>
    public required string CapPush { get; init; }
}
