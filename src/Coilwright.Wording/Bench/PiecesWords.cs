namespace Coilwright.Wording;

/// <summary>The page of all pieces.</summary>
public sealed record PiecesWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>Looks for a piece by its title.</summary>
    public required string Search { get; init; }

    /// <summary>Shows what was put away as well.</summary>
    public required string ShowArchived { get; init; }

    /// <summary>Nothing is found.</summary>
    public required string NoneFound { get; init; }

    /// <summary>When a piece was last changed: {date}.</summary>
    public required string ChangedOn { get; init; }

    /// <summary>The same of one that was put away: {date}.</summary>
    public required string PutAway { get; init; }

    /// <summary>Makes a copy.</summary>
    public required string Copy { get; init; }

    /// <summary>Title of a copy: {title}.</summary>
    public required string CopyOf { get; init; }

    /// <summary>Puts a piece away.</summary>
    public required string Archive { get; init; }

    /// <summary>Takes it out again.</summary>
    public required string TakeOut { get; init; }

    /// <summary>Saves it as a file of her own.</summary>
    public required string SaveFile { get; init; }

    /// <summary>Brings in a piece from a file.</summary>
    public required string BringIn { get; init; }

    /// <summary>What kind of file.</summary>
    public required string BringInHint { get; init; }

    /// <summary>The file was not brought in: {file}.</summary>
    public required string NotBroughtIn { get; init; }

    /// <summary>A place in the file: {line}, {column}.</summary>
    public required string AtPlace { get; init; }

    /// <summary>What she asked for could not be kept.</summary>
    public required string NotKept { get; init; }
}
