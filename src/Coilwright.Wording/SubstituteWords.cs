namespace Coilwright.Wording;

/// <summary>Words of beads that may stand in for another. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record SubstituteWords
{
    /// <summary>What <c>substitute</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--bead</c>.</summary>
    public required string BeadOption { get; init; }

    /// <summary><c>--among</c>.</summary>
    public required string AmongOption { get; init; }

    /// <summary><c>--home</c>.</summary>
    public required string HomeOption { get; init; }

    /// <summary><c>--most</c>; {usual}.</summary>
    public required string MostOption { get; init; }

    /// <summary>A bead in the examples.</summary>
    public required string ExampleBead { get; init; }

    /// <summary>Title.</summary>
    public required string Title { get; init; }

    /// <summary>What is looked for: {bead}, {need} of it, in {title}.</summary>
    public required string For { get; init; }

    /// <summary>There is nothing to look through.</summary>
    public required string Nothing { get; init; }

    /// <summary>None of them would do.</summary>
    public required string NoneWouldDo { get; init; }

    /// <summary>A bead, {bead}, and how near it is, {near}.</summary>
    public required string Heading { get; init; }

    /// <summary>Within one hesitation.</summary>
    public required string VeryNear { get; init; }

    /// <summary>Within two.</summary>
    public required string Near { get; init; }

    /// <summary>Within four.</summary>
    public required string SomeWayOff { get; init; }

    /// <summary>Beyond.</summary>
    public required string FarOff { get; init; }

    /// <summary>Too few: {have} of {need}.</summary>
    public required string TooFew { get; init; }

    /// <summary>A notice says stop.</summary>
    public required string BringsStop { get; init; }

    /// <summary>It hardly differs.</summary>
    public required string DiffersHardly { get; init; }

    /// <summary>It differs in {parts}.</summary>
    public required string DiffersIn { get; init; }

    /// <summary>Its length.</summary>
    public required string Length { get; init; }

    /// <summary>Its width or thickness.</summary>
    public required string Across { get; init; }

    /// <summary>Its hole.</summary>
    public required string Bore { get; init; }

    /// <summary>Its colour.</summary>
    public required string Colour { get; init; }

    /// <summary>Its shape.</summary>
    public required string Shape { get; init; }

    /// <summary>Its material.</summary>
    public required string Material { get; init; }

    /// <summary>Heading of the column of the piece as it is.</summary>
    public required string NowColumn { get; init; }

    /// <summary>Heading of the column of the piece with it.</summary>
    public required string ThenColumn { get; init; }
}
