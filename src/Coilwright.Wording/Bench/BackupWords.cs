namespace Coilwright.Wording;

/// <summary>The page where everything is saved to one file and brought back from one.</summary>
public sealed record BackupWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for: {file}, where the pieces lie.</summary>
    public required string Lead { get; init; }

    /// <summary>Saving: heading.</summary>
    public required string SaveHeading { get; init; }

    /// <summary>What is saved: {pieces}.</summary>
    public required string SaveLead { get; init; }

    /// <summary>Saves it.</summary>
    public required string Save { get; init; }

    /// <summary>Bringing back: heading.</summary>
    public required string RestoreHeading { get; init; }

    /// <summary>What happens.</summary>
    public required string RestoreLead { get; init; }

    /// <summary>Chooses the file.</summary>
    public required string Choose { get; init; }

    /// <summary>The file is being read: {done} of it, 0 to 1.</summary>
    public required string Reading { get; init; }

    /// <summary>It is being looked through and brought back.</summary>
    public required string Restoring { get; init; }

    /// <summary>Asks whether it is meant: {file}, {pieces} on the shelf now.</summary>
    public required string Sure { get; init; }

    /// <summary>It is.</summary>
    public required string Yes { get; init; }

    /// <summary>It is not.</summary>
    public required string No { get; init; }

    /// <summary>It is brought back: {pieces}.</summary>
    public required string Restored { get; init; }

    /// <summary>What was there before: {file}.</summary>
    public required string Before { get; init; }

    /// <summary>It was not brought back: {file}.</summary>
    public required string NotRestored { get; init; }

    /// <summary>Where the pieces lie, when that is a database: {database}.</summary>
    public required string DatabaseLead { get; init; }

    /// <summary>How a database is saved; the command follows.</summary>
    public required string DatabaseSaveLead { get; init; }

    /// <summary>How it is brought back; the command follows.</summary>
    public required string DatabaseRestoreLead { get; init; }

    /// <summary>Single pieces can be saved as files all the same.</summary>
    public required string DatabasePieces { get; init; }

    /// <summary>Nothing was changed.</summary>
    public required string StaysAsItWas { get; init; }
}
