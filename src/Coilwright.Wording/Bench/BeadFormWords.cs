namespace Coilwright.Wording;

/// <summary>A bead being described, and what can be done with a kind of bead.</summary>
public sealed record BeadFormWords
{
    /// <summary>The form, as read aloud.</summary>
    public required string Heading { get; init; }

    /// <summary>The drawing has the bead's own size.</summary>
    public required string TrueSize { get; init; }

    /// <summary>Nothing to draw yet.</summary>
    public required string DrawnOnceSized { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Its shape.</summary>
    public required string Shape { get; init; }

    /// <summary>A label with two numbers.</summary>
    public required string Label { get; init; }

    /// <summary>Asks which number runs along the hole.</summary>
    public required string Which { get; init; }

    /// <summary>One of the two: {mm}.</summary>
    public required string AlongIs { get; init; }

    /// <summary>How its length is known.</summary>
    public required string LengthBy { get; init; }

    /// <summary>One figure.</summary>
    public required string ByOne { get; init; }

    /// <summary>A row measured.</summary>
    public required string ByRow { get; init; }

    /// <summary>Shortest and longest.</summary>
    public required string ByRange { get; init; }

    /// <summary>The length of one.</summary>
    public required string Along { get; init; }

    /// <summary>Beads in the row.</summary>
    public required string RowCount { get; init; }

    /// <summary>Length of the row.</summary>
    public required string RowTotal { get; init; }

    /// <summary>The shortest.</summary>
    public required string Shortest { get; init; }

    /// <summary>The longest.</summary>
    public required string Longest { get; init; }

    /// <summary>Across the hole.</summary>
    public required string Across { get; init; }

    /// <summary>Away from the wrist.</summary>
    public required string Thickness { get; init; }

    /// <summary>The hole.</summary>
    public required string Hole { get; init; }

    /// <summary>The flat at each end.</summary>
    public required string EndFace { get; init; }

    /// <summary>How far the hole is off the middle.</summary>
    public required string HoleOffset { get; init; }

    /// <summary>Wall of a hollow bead.</summary>
    public required string Wall { get; init; }

    /// <summary>Radius of a curved tube.</summary>
    public required string CurveRadius { get; init; }

    /// <summary>It follows the coil.</summary>
    public required string Matched { get; init; }

    /// <summary>Its colour.</summary>
    public required string Colour { get; init; }

    /// <summary>Its material.</summary>
    public required string Material { get; init; }

    /// <summary>Not known.</summary>
    public required string MaterialUnknown { get; init; }

    /// <summary>What it is for.</summary>
    public required string Role { get; init; }

    /// <summary>Adds it to the piece.</summary>
    public required string Add { get; init; }

    /// <summary>Keeps the change.</summary>
    public required string Keep { get; init; }

    /// <summary>Leaves it.</summary>
    public required string Cancel { get; init; }

    /// <summary>Changes a bead.</summary>
    public required string Change { get; init; }

    /// <summary>A bead like it in another colour.</summary>
    public required string AnotherColour { get; init; }

    /// <summary>Replaces it everywhere, as read aloud: {name}.</summary>
    public required string ReplaceEverywhere { get; init; }

    /// <summary>Nothing chosen yet.</summary>
    public required string ReplaceBy { get; init; }

    /// <summary>It is not strung.</summary>
    public required string NotStrung { get; init; }

    /// <summary>Takes it out of the piece.</summary>
    public required string PutBack { get; init; }

    /// <summary>Adds a new bead.</summary>
    public required string Another { get; init; }
}
