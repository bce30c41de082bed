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
        [FaultCodes.PhotoTooLarge] = new("The photo is too large.", "At most {max}.", "Take a smaller one, or have your camera save it smaller."),
        [FaultCodes.PhotoKind] = new("This is not a photo of that kind.", "A photo is one of: {known}.", "Choose a photo as it came from the camera."),
    };
}
