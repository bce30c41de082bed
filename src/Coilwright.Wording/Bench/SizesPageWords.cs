namespace Coilwright.Wording;

/// <summary>The page where the sizes of a design are made.</summary>
public sealed record SizesPageWords
{
    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Over the chosen wrists.</summary>
    public required string Wrists { get; init; }

    /// <summary>The box for one more wrist.</summary>
    public required string Add { get; init; }

    /// <summary>Leaves out the wrist that stands before it.</summary>
    public required string LeaveOut { get; init; }

    /// <summary>Goes back to the usual wrists.</summary>
    public required string Usual { get; init; }

    /// <summary>What the usual wrists are.</summary>
    public required string UsualHint { get; init; }

    /// <summary>There are as many wrists as there may be: {max}.</summary>
    public required string Enough { get; init; }

    /// <summary>Makes the sizes.</summary>
    public required string Make { get; init; }

    /// <summary>Makes them again.</summary>
    public required string MakeAgain { get; init; }

    /// <summary>They are being made.</summary>
    public required string Making { get; init; }

    /// <summary>As many jobs wait as can.</summary>
    public required string TooManyWait { get; init; }

    /// <summary>The piece was changed since.</summary>
    public required string Earlier { get; init; }

    /// <summary>The work was stopped before all were made.</summary>
    public required string Stopped { get; init; }

    /// <summary>Heading of the table.</summary>
    public required string AtAGlance { get; init; }

    /// <summary>Heading of the sizes one by one.</summary>
    public required string OneByOne { get; init; }

    /// <summary>Keeps a size as a piece.</summary>
    public required string KeepIt { get; init; }

    /// <summary>A size was kept.</summary>
    public required string Kept { get; init; }

    /// <summary>Opens a size that was kept: {title}.</summary>
    public required string Open { get; init; }

    /// <summary>It could not be kept.</summary>
    public required string NotKept { get; init; }

    /// <summary>Where the gaps are.</summary>
    public required string WhereGaps { get; init; }

    /// <summary>The job's name: {title}.</summary>
    public required string Job { get; init; }

    /// <summary>How many are made: {made}, {of}.</summary>
    public required string SoFar { get; init; }

    /// <summary>Goes to them.</summary>
    public required string See { get; init; }
}
