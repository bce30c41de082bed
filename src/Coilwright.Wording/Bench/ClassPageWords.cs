namespace Coilwright.Wording;

/// <summary>Words of the page of a class. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ClassPageWords
{
    /// <summary>Heading of the page.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Heading of what is asked.</summary>
    public required string AskHeading { get; init; }

    /// <summary>How many take part.</summary>
    public required string Participants { get; init; }

    /// <summary>Kits beside theirs.</summary>
    public required string SpareKits { get; init; }

    /// <summary>Beads to spare in each bag.</summary>
    public required string SpareBeads { get; init; }

    /// <summary>How many times as long learners take.</summary>
    public required string Factor { get; init; }

    /// <summary>When it begins.</summary>
    public required string Start { get; init; }

    /// <summary>When it ends.</summary>
    public required string End { get; init; }

    /// <summary>Heading of the breaks.</summary>
    public required string Breaks { get; init; }

    /// <summary>When a break begins.</summary>
    public required string BreakAt { get; init; }

    /// <summary>How long a break is.</summary>
    public required string BreakMinutes { get; init; }

    /// <summary>Adds a break.</summary>
    public required string AddBreak { get; init; }

    /// <summary>Takes out a break: {at}.</summary>
    public required string TakeOutBreak { get; init; }

    /// <summary>Places in the room.</summary>
    public required string Places { get; init; }

    /// <summary>Minutes to set up and clear away.</summary>
    public required string Around { get; init; }

    /// <summary>What is paid once.</summary>
    public required string Room { get; init; }

    /// <summary>The rule.</summary>
    public required string Rule { get; init; }

    /// <summary>Heading of shared tools.</summary>
    public required string Shares { get; init; }

    /// <summary>What a shared tool means.</summary>
    public required string ShareHint { get; init; }

    /// <summary>Heading of her own minutes.</summary>
    public required string Own { get; init; }

    /// <summary>Where times come from otherwise.</summary>
    public required string OwnHint { get; init; }

    /// <summary>Heading of what is done beforehand.</summary>
    public required string BeforehandHeading { get; init; }

    /// <summary>It is worked out.</summary>
    public required string Working { get; init; }

    /// <summary>It cannot be worked out.</summary>
    public required string NotMade { get; init; }

    /// <summary>The teacher's sheet as PDF.</summary>
    public required string SaveTeacher { get; init; }

    /// <summary>The same as web page.</summary>
    public required string SaveTeacherPage { get; init; }

    /// <summary>A participant's sheet as PDF.</summary>
    public required string SavePlace { get; init; }

    /// <summary>The same as web page.</summary>
    public required string SavePlacePage { get; init; }

    /// <summary>A time that is none.</summary>
    public required string NoTime { get; init; }

    /// <summary>How to open a figure.</summary>
    public required string OpenHint { get; init; }

    /// <summary>Heading of what a kit costs.</summary>
    public required string KitCost { get; init; }
}
