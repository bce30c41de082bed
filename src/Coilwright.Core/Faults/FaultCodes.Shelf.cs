namespace Coilwright.Core.Faults;

// The shelf of pieces.
public static partial class FaultCodes
{
    /// <summary>Another program holds the shelf of pieces, and did not let go for as long as was waited.</summary>
    public const string ShelfLocked = "shelf.locked";

    /// <summary>The shelf's file, or its folder, may not be written to.</summary>
    public const string ShelfReadOnly = "shelf.read-only";

    /// <summary>The disk that the shelf is on is full.</summary>
    public const string ShelfDiskFull = "shelf.disk-full";

    /// <summary>The file is no shelf of pieces.</summary>
    public const string ShelfNotOne = "shelf.not-one";

    /// <summary>The shelf is in a form of a newer program: {found}, where this one knows up to {known}.</summary>
    public const string ShelfNewer = "shelf.newer";

    /// <summary>The shelf's file is damaged; {reason} is what was found, and empty when the system did not say.</summary>
    public const string ShelfDamaged = "shelf.damaged";

    /// <summary>The folder of the shelf cannot be reached or made; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string ShelfUnreachable = "shelf.unreachable";

    /// <summary>A state of a piece on the shelf cannot be read: {title}, {revision}; {detail} is the code of what is wrong in it.</summary>
    public const string ShelfPieceUnreadable = "shelf.piece-unreadable";

    /// <summary>The shelf cannot be used for another reason, as {reason} in the system's own words.</summary>
    public const string ShelfOther = "shelf.other";

    /// <summary>The file named for a backup is the one that the shelf itself lies in, or one beside it that belongs to it.</summary>
    public const string ShelfOwnFile = "shelf.own-file";
}
