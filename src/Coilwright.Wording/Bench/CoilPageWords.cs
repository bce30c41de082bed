namespace Coilwright.Wording;

/// <summary>The page of the piece in space. Names in braces are filled in.</summary>
public sealed record CoilPageWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Worn, settled or at rest: legend.</summary>
    public required string Pose { get; init; }

    /// <summary>On the wrist as it is reckoned.</summary>
    public required string Worn { get; init; }

    /// <summary>On the wrist as it settles there.</summary>
    public required string AsItSits { get; init; }

    /// <summary>At rest.</summary>
    public required string AtRest { get; init; }

    /// <summary>It is shown as it sits: {wristMm}.</summary>
    public required string ShownAsItSits { get; init; }

    /// <summary>No rest was found, so the picture stays as it was.</summary>
    public required string ShownAsReckoned { get; init; }

    /// <summary>She stopped it: the picture stays as it was.</summary>
    public required string StoppedShort { get; init; }

    /// <summary>What the picture that can be turned is called.</summary>
    public required string Picture { get; init; }

    /// <summary>Which keys and hands turn it.</summary>
    public required string Keys { get; init; }

    /// <summary>The browser has no WebGL.</summary>
    public required string DrawnOnly { get; init; }

    /// <summary>Turning it by buttons: read aloud.</summary>
    public required string Turning { get; init; }

    /// <summary>Turns it to the left.</summary>
    public required string Left { get; init; }

    /// <summary>Turns it to the right.</summary>
    public required string Right { get; init; }

    /// <summary>Looks at it more from above.</summary>
    public required string FromAbove { get; init; }

    /// <summary>Looks at it more from below.</summary>
    public required string FromBelow { get; init; }

    /// <summary>Comes nearer.</summary>
    public required string Nearer { get; init; }

    /// <summary>Goes farther away.</summary>
    public required string Farther { get; init; }

    /// <summary>Looks at it as at first.</summary>
    public required string AsAtFirst { get; init; }

    /// <summary>The list of beads: heading.</summary>
    public required string Beads { get; init; }

    /// <summary>A turn: {turn}.</summary>
    public required string Turn { get; init; }

    /// <summary>A bead: {number} in the order, key {letter}, {name}, {turn} and {angleDeg} in what is shown.</summary>
    public required string Bead { get; init; }

    /// <summary>No bead is selected.</summary>
    public required string NonePicked { get; init; }

    /// <summary>The next bead.</summary>
    public required string Next { get; init; }

    /// <summary>The bead before.</summary>
    public required string Back { get; init; }

    /// <summary>Still pictures: heading.</summary>
    public required string Still { get; init; }

    /// <summary>What they show.</summary>
    public required string StillNote { get; init; }

    /// <summary>Width in pixels.</summary>
    public required string Width { get; init; }

    /// <summary>Height in pixels.</summary>
    public required string Height { get; init; }

    /// <summary>Saves one picture.</summary>
    public required string SaveStill { get; init; }

    /// <summary>How many pictures all round.</summary>
    public required string Count { get; init; }

    /// <summary>Saves the pictures all round as one zip.</summary>
    public required string SaveTurntable { get; init; }

    /// <summary>How far the making has come: {at} of {of}.</summary>
    public required string At { get; init; }

    /// <summary>A picture or the model could not be made.</summary>
    public required string Trouble { get; init; }

    /// <summary>The models: heading.</summary>
    public required string Model { get; init; }

    /// <summary>What the models are.</summary>
    public required string ModelNote { get; init; }

    /// <summary>Saves the model as worn.</summary>
    public required string SaveWorn { get; init; }

    /// <summary>Saves the model as it sits.</summary>
    public required string SaveAsItSits { get; init; }

    /// <summary>Saves the model at rest.</summary>
    public required string SaveAtRest { get; init; }
}
