namespace Coilwright.Wording;

/// <summary>What she does to the order, and what the bench says to it.</summary>
public sealed record EditWords
{
    /// <summary>What can be done with what is selected, as read aloud.</summary>
    public required string Tools { get; init; }

    /// <summary>Takes the last step back.</summary>
    public required string Undo { get; init; }

    /// <summary>Takes it again.</summary>
    public required string Redo { get; init; }

    /// <summary>Takes beads off the wire.</summary>
    public required string TakeOff { get; init; }

    /// <summary>Strings them a second time.</summary>
    public required string Twice { get; init; }

    /// <summary>Strings them several times.</summary>
    public required string Repeat { get; init; }

    /// <summary>How many times in all.</summary>
    public required string Times { get; init; }

    /// <summary>Moves them one bead toward the start.</summary>
    public required string MoveBack { get; init; }

    /// <summary>Moves them one bead toward the finish.</summary>
    public required string MoveOn { get; init; }

    /// <summary>Strings them once more from their other end.</summary>
    public required string Mirror { get; init; }

    /// <summary>The same with the last one standing once in the middle.</summary>
    public required string MirrorAroundLast { get; init; }

    /// <summary>Name for a group.</summary>
    public required string GroupName { get; init; }

    /// <summary>Makes them a group of this name.</summary>
    public required string MakeGroup { get; init; }

    /// <summary>Lets the group be no group any more.</summary>
    public required string Ungroup { get; init; }

    /// <summary>Every place is changed that the same words string.</summary>
    public required string EveryPass { get; init; }

    /// <summary>What a tap on a bead of the tray does.</summary>
    public required string TapTo { get; init; }

    /// <summary>Strings it after what is selected.</summary>
    public required string After { get; init; }

    /// <summary>Strings it before.</summary>
    public required string Before { get; init; }

    /// <summary>Strings it in place of each selected bead.</summary>
    public required string Instead { get; init; }

    /// <summary>Strings it between each two.</summary>
    public required string Between { get; init; }

    /// <summary>Strings it at the end, where nothing is selected.</summary>
    public required string AtTheEnd { get; init; }

    /// <summary>Strings it at the start, where nothing is selected.</summary>
    public required string AtTheStart { get; init; }

    /// <summary>The beads and groups to string, as read aloud.</summary>
    public required string Tray { get; init; }

    /// <summary>A bead or group of the tray, as read aloud: {name}.</summary>
    public required string StringIt { get; init; }

    /// <summary>What she asked for cannot be done: heading.</summary>
    public required string Refused { get; init; }

    /// <summary>Puts a note away that she has read.</summary>
    public required string PutAway { get; init; }

    /// <summary>Steps show on the page and are not written down: {steps}.</summary>
    public required string NotWritten { get; init; }

    /// <summary>Tries to write them again.</summary>
    public required string TryAgain { get; init; }

    /// <summary>The piece went on in another window: {steps} of hers wait.</summary>
    public required string Behind { get; init; }

    /// <summary>Drops her own steps and shows the piece as it is.</summary>
    public required string TakeTheirs { get; init; }

    /// <summary>Puts her own steps after the others.</summary>
    public required string KeepMine { get; init; }

    /// <summary>The piece was changed in another window and is shown as it is now.</summary>
    public required string ChangedElsewhere { get; init; }

    /// <summary>The shelf has the piece no more.</summary>
    public required string Gone { get; init; }

    /// <summary>The order as text, as read aloud.</summary>
    public required string OrderText { get; init; }

    /// <summary>How it is written and strung.</summary>
    public required string OrderTextHint { get; init; }

    /// <summary>Strings what was typed.</summary>
    public required string StringText { get; init; }

    /// <summary>Drops what was typed.</summary>
    public required string DropText { get; init; }
}
