namespace Coilwright.Core.Faults;

// What was made.
public static partial class FaultCodes
{
    /// <summary>There is no such record of what was made, or all of it was taken back.</summary>
    public const string MadeNoRecord = "made.no-record";

    /// <summary>A step has the id of another that was written down.</summary>
    public const string MadeIdTaken = "made.id-taken";

    /// <summary>Fewer are there than are to go: {there} at home, or at {show}.</summary>
    public const string MadeTooFew = "made.too-few";

    /// <summary>More are to come back than are out: {out}.</summary>
    public const string MadeTooManyBack = "made.too-many-back";

    /// <summary>A day lies before the one on which it was made, or went: {made}.</summary>
    public const string MadeBefore = "made.before";

    /// <summary>Fees are more than was received: {price}.</summary>
    public const string MadeFeesAbove = "made.fees-above";

    /// <summary>Money is paid back in another currency than it came in: {other}.</summary>
    public const string MadeCurrencyDiffers = "made.currency-differs";

    /// <summary>More money is paid back than is left of what came in: {left} {currency}.</summary>
    public const string MadeRefundAbove = "made.refund-above";

    /// <summary>There is no such step that counts in this record.</summary>
    public const string MadeNoStep = "made.no-step";

    /// <summary>A later step rests on the one that is to be taken back.</summary>
    public const string MadeRestsOn = "made.rests-on";

    /// <summary>All were lost or taken apart.</summary>
    public const string MadeNoneLeft = "made.none-left";

    /// <summary>There is no such piece on the shelf, or no such state of it.</summary>
    public const string MadeNoPiece = "made.no-piece";

    /// <summary>A record of what was made cannot be read; {detail} is the code of what is wrong in it.</summary>
    public const string MadeUnreadable = "made.unreadable";
}
