namespace Coilwright.Core.Faults;

// Edits of a piece.
public static partial class FaultCodes
{
    /// <summary>An edit means a bead that the order does not reach; {beads} is how many there are.</summary>
    public const string EditNoSuchBead = "edit.no-such-bead";

    /// <summary>An edit means no bead at all.</summary>
    public const string EditNothingChosen = "edit.nothing-chosen";

    /// <summary>An edit needs at least {least} beads.</summary>
    public const string EditTooFew = "edit.too-few";

    /// <summary>An edit needs neighbouring beads, and others stand between these.</summary>
    public const string EditNotTogether = "edit.not-together";

    /// <summary>Beads are to become a group, and hold only a part of the group {group}.</summary>
    public const string EditCutsGroup = "edit.cuts-group";

    /// <summary>The beads stand in no group together.</summary>
    public const string EditNoGroup = "edit.no-group";

    /// <summary>The name given is that of a group with other beads.</summary>
    public const string EditGroupDiffers = "edit.group-differs";

    /// <summary>A part of the order's text is meant that is not there, or strings nothing.</summary>
    public const string EditNotStrung = "edit.not-strung";

    /// <summary>An edit would change nothing.</summary>
    public const string EditChangesNothing = "edit.changes-nothing";

    /// <summary>An edit would leave no bead on the wire.</summary>
    public const string EditNothingLeft = "edit.nothing-left";

    /// <summary>The notation has no words for what an edit would string.</summary>
    public const string EditNotWritten = "edit.not-written";

    /// <summary>The piece has no kind of bead of this id; {nearest} is the likeliest.</summary>
    public const string EditBeadUnknown = "edit.bead-unknown";

    /// <summary>A kind of bead is to go, and the order strings it {times} times.</summary>
    public const string EditBeadInUse = "edit.bead-in-use";

    /// <summary>A kind of bead is to go, and the group {group}, which is not strung, names it.</summary>
    public const string EditBeadInGroup = "edit.bead-in-group";

    /// <summary>There is no measured row of this number.</summary>
    public const string EditNoSuchRow = "edit.no-such-row";

    /// <summary>A measured row no longer holds, for its beads are others now: beads {first} to {last} were {total} mm. Told beside an edit that was done.</summary>
    public const string EditRowLost = "edit.row-lost";
}
