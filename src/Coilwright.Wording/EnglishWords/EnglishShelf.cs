using Coilwright.Core.Faults;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English sentences of a shelf that cannot be used, and of photos that are not taken.</summary>
internal static class EnglishShelf
{
    internal static IEnumerable<KeyValuePair<string, FaultSentence>> Make() => new Dictionary<string, FaultSentence>(StringComparer.Ordinal)
    {
        [FaultCodes.ShelfLocked] = new("Another program is using your pieces just now.", "Only one can write at a time.",
            "What you did is still here. Try again shortly."),
        [FaultCodes.ShelfReadOnly] = new("Your pieces may not be written to{?value:: {value}}.", "The file and its folder must be open to changes.",
            "Check the rights of both, then try again. Nothing on the shelf was changed."),
        [FaultCodes.ShelfDiskFull] = new("The disk is full, so this could not be kept.", "A change needs a little room on the disk.",
            "Make some room, then try again. What was kept before is safe."),
        [FaultCodes.ShelfNotOne] = new("This is not a shelf of pieces{?value:: {value}}.", "It must be a file that Coilwright made.",
            "Choose another file or folder. Nothing in it was changed."),
        [FaultCodes.ShelfNewer] = new("These pieces were kept by a newer Coilwright (form {found}).", "This one knows forms up to {known}.",
            "Open them with the newer one. Nothing was changed."),
        [FaultCodes.ShelfDamaged] = new("The file with your pieces is damaged{?value:: {value}}{?reason: ({reason})}.", "Every page of it must be sound.",
            "Copy the file somewhere safe, then restore your last backup."),
        [FaultCodes.ShelfUnreachable] = new("The place of your pieces cannot be used{?value:: {value}}{?detail:: {detail}}.",
            "It must be a folder that you may write to.", "Check the name, and that the disk is there."),
        [FaultCodes.ShelfPieceUnreadable] = new("The piece \"{title}\" cannot be read in its state {revision}{?detail: ({detail})}.",
            "A piece must be written in a form that this program knows.", "If a newer Coilwright kept it, open it with that one. Your other pieces are there."),
        [FaultCodes.ShelfOther] = new("Your pieces cannot be used just now{?reason:: {reason}}.", "The file must be within reach.",
            "Try again. If it stays so, copy the file somewhere safe and restore your last backup."),
        [FaultCodes.ShelfOwnFile] = new("Your pieces themselves are in that file{?value:: {value}}.", "A backup must be a file of its own.",
            "Choose another name or folder. Nothing was changed."),
        [FaultCodes.DatabaseAddress] = new("The address of the database cannot be read{?value:: \"{value}\" is not understood}{?missing:: {missing} is missing}.",
            "It is written as \"Host=...;Username=...;Database=...\".", "Check it; a value with a semicolon or an equals sign in it stands in quotes."),
        [FaultCodes.DatabaseUnreachable] = new("No database server answers: {value}.", "It must be running and within reach.",
            "Start it, or check host and port, then try again. What was kept before is safe."),
        [FaultCodes.DatabaseLost] = new("The database server went away: {value}.", "It must answer until a change is written down.",
            "Try again once it is back. What was kept before is safe."),
        [FaultCodes.DatabaseSlow] = new("The database server took too long to answer: {value}.", "It must answer within the time that is set for it.",
            "Try again shortly. What was kept before is safe."),
        [FaultCodes.DatabaseRefused] = new("The database server does not let this user in: {value}.", "User name and password must be the server's.",
            "Check both, and whether the server lets this user in from here. The password may stand in PGPASSWORD or in a password file."),
        [FaultCodes.DatabaseMissing] = new("The server has no such database: {value}.", "It must be made before pieces can be kept in it.",
            "Check its name, or make it with createdb."),
        [FaultCodes.DatabaseNoRights] = new("This user may not do that in the database: {value}.", "She must own it, or have rights to the schema coilwright.",
            "Ask whoever looks after the server. Nothing was changed."),
        [FaultCodes.DatabaseReadOnly] = new("The database takes no changes: {value}.", "It must not be a copy, nor set to be read only.",
            "Name the server that it is a copy of, or ask whoever looks after it. Nothing was changed."),
        [FaultCodes.DatabaseFull] = new("The disk of the database server is full, so this could not be kept: {value}.", "A change needs a little room on that disk.",
            "Make some room there, then try again. What was kept before is safe."),
        [FaultCodes.DatabaseCrowded] = new("The database server takes no more visitors just now: {value}.", "It lets in only so many at a time.",
            "Close what else uses it, then try again."),
        [FaultCodes.DatabaseNotOurs] = new("Something else lies in the schema coilwright of the database: {value}.", "The schema must be empty or made by Coilwright.",
            "Name another database. Nothing in it was changed."),
        [FaultCodes.DatabaseOther] = new("The database cannot be used just now: {value}{?reason: ({reason})}.", "It must take what is asked of it.",
            "Try again. If it stays so, show this to whoever looks after the server."),
        [FaultCodes.DatabaseBackup] = new("Pieces in a database are backed up on its server, not here: {value}.", "That is the work of pg_dump and pg_restore.",
            "Save them with: pg_dump --format=custom --schema=coilwright --file=FILE DATABASE"),
        [FaultCodes.PhotoTooLarge] = new("The photo is too large.", "At most {max}.", "Take a smaller one, or have your camera save it smaller."),
        [FaultCodes.PhotoKind] = new("This is not a photo of that kind.", "A photo is one of: {known}.", "Choose a photo as it came from the camera."),
    };
}
