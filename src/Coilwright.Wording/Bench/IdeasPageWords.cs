namespace Coilwright.Wording;

/// <summary>The page where better orders of a piece are looked for.</summary>
public sealed record IdeasPageWords
{
    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Starts the search.</summary>
    public required string Look { get; init; }

    /// <summary>Starts it again.</summary>
    public required string LookAgain { get; init; }

    /// <summary>Looks longer.</summary>
    public required string LookLonger { get; init; }

    /// <summary>It is being looked for.</summary>
    public required string Looking { get; init; }

    /// <summary>As many jobs wait as can.</summary>
    public required string TooManyWait { get; init; }

    /// <summary>The piece was changed since.</summary>
    public required string Earlier { get; init; }

    /// <summary>Heading of the order as it is.</summary>
    public required string AsItIs { get; init; }

    /// <summary>Does what an idea says.</summary>
    public required string StringIt { get; init; }

    /// <summary>That it can be taken back.</summary>
    public required string CanBeTakenBack { get; init; }

    /// <summary>It could not be kept.</summary>
    public required string NotKept { get; init; }

    /// <summary>What else there is to know.</summary>
    public required string Details { get; init; }

    /// <summary>The job's name: {title}.</summary>
    public required string Job { get; init; }

    /// <summary>How long it has been looked for: {elapsed}.</summary>
    public required string LookingFor { get; init; }

    /// <summary>The best so far: {against}.</summary>
    public required string SoFar { get; init; }

    /// <summary>Goes to what was found.</summary>
    public required string See { get; init; }
}
