namespace Coilwright.Wording;

/// <summary>Work that goes on while she does something else.</summary>
public sealed record JobWords
{
    /// <summary>Heading, as read aloud.</summary>
    public required string Heading { get; init; }

    /// <summary>The sheets of one piece on every paper: {title}.</summary>
    public required string EverySheet { get; init; }

    /// <summary>The sheets of several pieces: {pieces}.</summary>
    public required string SheetsOfPieces { get; init; }

    /// <summary>How many sheets are made: {made}, {of}.</summary>
    public required string SheetsSoFar { get; init; }

    /// <summary>How far it is, as read aloud.</summary>
    public required string HowFar { get; init; }

    /// <summary>Another is done first.</summary>
    public required string Waiting { get; init; }

    /// <summary>It runs: {share} of it is done, for {elapsed}.</summary>
    public required string Running { get; init; }

    /// <summary>It is done: {elapsed}.</summary>
    public required string Done { get; init; }

    /// <summary>She stopped it.</summary>
    public required string Stopped { get; init; }

    /// <summary>It went wrong.</summary>
    public required string Failed { get; init; }

    /// <summary>Stops it.</summary>
    public required string Stop { get; init; }

    /// <summary>Saves the sheets in one file: {made}.</summary>
    public required string Save { get; init; }

    /// <summary>Puts it away.</summary>
    public required string PutAway { get; init; }
}
