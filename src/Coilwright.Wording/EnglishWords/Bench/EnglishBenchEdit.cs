namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="EditWords"/>.</summary>
internal static class EnglishBenchEdit
{
    internal static EditWords Make() => new()
    {
        Tools = "What to do with the selected beads",
        Undo = "Take back",
        Redo = "Take again",
        TakeOff = "Take off",
        Twice = "Twice",
        Repeat = "Repeat",
        Times = "Times",
        MoveBack = "Move back",
        MoveOn = "Move on",
        Mirror = "Mirror",
        MirrorAroundLast = "Mirror around the last",
        GroupName = "Name",
        MakeGroup = "Make a group",
        Ungroup = "Ungroup",
        EveryPass = "wherever the order repeats it",
        TapTo = "Tap a bead to string it",
        After = "after",
        Before = "before",
        Instead = "in place of each",
        Between = "between each two",
        AtTheEnd = "at the end",
        AtTheStart = "at the start",
        Tray = "Beads and groups to string",
        StringIt = "String {name}",
        Refused = "That cannot be done:",
        PutAway = "Understood",
        NotWritten = "{steps} {steps:step|steps} shown here could not be written down yet. Nothing is lost while this page stays open.",
        TryAgain = "Try again to write it down",
        Behind = "The piece was changed in another window before your {steps:step|steps} could be written down. Nothing is lost: choose.",
        TakeTheirs = "Show the piece as the other window left it",
        KeepMine = "Write down mine after it",
        ChangedElsewhere = "The piece was changed in another window. You see it as it is now.",
        Gone = "This piece is no longer on the shelf.",
        OrderText = "The stringing order as text",
        OrderTextHint = "Write beads by their names, as 2 pearl, disc. Groups, repeats and mirrored halves are kept as you write them.",
        StringText = "String it like this",
        DropText = "Back to what is strung",
    };
}
