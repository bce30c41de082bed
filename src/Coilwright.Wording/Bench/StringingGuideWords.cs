namespace Coilwright.Wording;

/// <summary>The page that leads through the stringing of a piece, step by step. Names in braces are filled in.</summary>
public sealed record StringingGuideWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>Where she is: {step} of {steps}.</summary>
    public required string StepOf { get; init; }

    /// <summary>The turn of the step: {turn}.</summary>
    public required string Turn { get; init; }

    /// <summary>Goes to the next step.</summary>
    public required string Next { get; init; }

    /// <summary>Goes back one step.</summary>
    public required string Back { get; init; }

    /// <summary>After the last step: back to the piece.</summary>
    public required string Done { get; init; }

    /// <summary>Begins again at the first step.</summary>
    public required string FromTheStart { get; init; }

    /// <summary>Leaves the guide.</summary>
    public required string Leave { get; init; }

    /// <summary>Reads each step aloud as it comes, till it is tapped again.</summary>
    public required string ReadAloud { get; init; }

    /// <summary>The browser cannot speak this language, or not at all.</summary>
    public required string NoVoice { get; init; }

    /// <summary>Which keys go on and back.</summary>
    public required string Keys { get; init; }

    /// <summary>Her own words were written when the step strung something else.</summary>
    public required string WordsAreOld { get; init; }

    /// <summary>The place could not be kept; the guide goes on all the same.</summary>
    public required string NotKept { get; init; }

    /// <summary>The beads of the step with their letters: heading, read aloud only.</summary>
    public required string Beads { get; init; }
}
