namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="BackupWords"/>.</summary>
internal static class EnglishBenchBackup
{
    internal static BackupWords Make() => new()
    {
        Heading = "Keep everything safe",
        Lead = "Your pieces are in one file on this machine: {file}",
        SaveHeading = "Save everything",
        SaveLead = "All {pieces} {pieces:piece|pieces} with every step, name, trial and photo, in one file. Keep it on another disk. You can go on working meanwhile.",
        Save = "Save to one file",
        RestoreHeading = "Bring everything back",
        RestoreLead = "Everything in the file comes back in place of what is here. The file is looked through first; what is here now is kept in a file of its own.",
        Choose = "Choose a file that was saved here",
        Reading = "Reading the file: {done:percent}",
        Restoring = "Looking through the file …",
        Sure = "Replace the {pieces} {pieces:piece|pieces} that are here by what is in {file}?",
        Yes = "Replace them",
        No = "Leave everything as it is",
        Restored = "Brought back: {pieces} {pieces:piece|pieces}.",
        Before = "What was here before is kept in {file}",
        NotRestored = "{file} was not brought back:",
        DatabaseLead = "Your pieces are in a database: {database}",
        DatabaseSaveLead = "A database is saved with PostgreSQL's own tools, on a machine that has them. Every step, name, trial and photo goes into one file; everybody can go on working meanwhile.",
        DatabaseRestoreLead = "Close Coilwright everywhere first: what is in the file comes back in place of what is in the database now.",
        DatabasePieces = "Single pieces can be saved as files and brought in again, in any Coilwright.",
        StaysAsItWas = "Everything here is as it was.",
    };
}
