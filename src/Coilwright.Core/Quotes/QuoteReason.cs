namespace Coilwright.Core.Quotes;

/// <summary>What stands against promising an order, or is to be known before.</summary>
public enum QuoteReason
{
    /// <summary>The design does not come out at this size.</summary>
    SizeDoesNotComeOut,

    /// <summary>The report of this size says stop.</summary>
    ReportSaysStop,

    /// <summary>Beads cannot be had from anybody.</summary>
    CannotBeHad,

    /// <summary>No order would be large enough to be sent.</summary>
    NoOrderCanBeSent,

    /// <summary>No rule prices a piece.</summary>
    NoRule,

    /// <summary>The price is less than it costs.</summary>
    Loses,

    /// <summary>A smaller coil is wanted. No hindrance.</summary>
    SmallerCoilWanted,

    /// <summary>A larger coil is wanted. No hindrance.</summary>
    LargerCoilWanted,

    /// <summary>The wire at hand is not enough. No hindrance: wire can be bought.</summary>
    WireShort,

    /// <summary>A bead has no price: what it costs is not in the price. No hindrance.</summary>
    BeadsUnpriced,

    /// <summary>When the beads are there is not told. No hindrance.</summary>
    DayNotTold,

    /// <summary>No step of work was timed. No hindrance.</summary>
    NotTimed,
}
