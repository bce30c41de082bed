namespace Coilwright.Wording;

/// <summary>Why a reading cannot be had, where the core leaves a null that speaks for itself. Lining up names its own reasons.</summary>
public static class WhyNotCodes
{
    /// <summary>The turns designed are not written in the piece.</summary>
    public const string TurnsNotSaid = "turns-not-said";

    /// <summary>The end has no turned loop.</summary>
    public const string NoEndLoop = "no-end-loop";

    /// <summary>A hole is not known.</summary>
    public const string BoreUnknown = "bore-unknown";

    /// <summary>There is no longest bead that passes.</summary>
    public const string AnyLength = "any-length";

    /// <summary>A bead's mass is not known.</summary>
    public const string MassUnknown = "mass-unknown";

    /// <summary>The wire's steel is not known.</summary>
    public const string SteelUnknown = "steel-unknown";

    /// <summary>The piece has no focal.</summary>
    public const string NoFocal = "no-focal";

    /// <summary>The order is no plain repeat.</summary>
    public const string NoRepeat = "no-repeat";

    /// <summary>No wire is cut yet.</summary>
    public const string NotCut = "not-cut";

    /// <summary>No hole that the bead has room for lets it pass.</summary>
    public const string NoHole = "no-hole";

    /// <summary>No wrist is served.</summary>
    public const string NoWrist = "no-wrist";

    /// <summary>Chance needs two beads of a kind.</summary>
    public const string OneBead = "one-bead";

    /// <summary>None of the kind lies over anything.</summary>
    public const string NoneOver = "none-over";

    /// <summary>Too little lies over anything on that wrist.</summary>
    public const string NotOnThisWrist = "not-on-this-wrist";

    /// <summary>Nothing was wanted that could come out or not.</summary>
    public const string NothingWanted = "nothing-wanted";

    /// <summary>The data has no strength for wire of this steel and thickness.</summary>
    public const string StrengthUnknown = "strength-unknown";

    /// <summary>The bead says nothing of how it is sold.</summary>
    public const string PackUnknown = "pack-unknown";

    /// <summary>The bead has no price.</summary>
    public const string PriceUnknown = "price-unknown";

    /// <summary>Every order would be too small to be sent.</summary>
    public const string NoOrderCanBeSent = "no-order-can-be-sent";

    /// <summary>No wage is told.</summary>
    public const string NoWage = "no-wage";

    /// <summary>No work is timed.</summary>
    public const string NoTime = "no-time";

    /// <summary>A price is 0.</summary>
    public const string PriceIsNothing = "price-is-nothing";

    /// <summary>Nothing was paid once.</summary>
    public const string NoOutlay = "no-outlay";

    /// <summary>There is no gain to pay an outlay from, or too little.</summary>
    public const string NoGain = "no-gain";

    /// <summary>Of a supplier nobody told how long it takes.</summary>
    public const string DaysNotTold = "days-not-told";

    /// <summary>Nobody is named who sells it.</summary>
    public const string NobodySells = "nobody-sells";

    /// <summary>All who sell it have too little, or no order is large enough to be sent.</summary>
    public const string CannotBeHad = "cannot-be-had";

    /// <summary>No rule prices it.</summary>
    public const string NoPriceRule = "no-price-rule";

    /// <summary>No two colours lie beside each other.</summary>
    public const string NoColoursBeside = "no-colours-beside";

    /// <summary>No rule prices a place in a class.</summary>
    public const string NoPlaceRule = "no-place-rule";

    /// <summary>The reckoning gave no finite number: a defect.</summary>
    public const string NotFinite = "not-finite";
}
