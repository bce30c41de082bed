namespace Coilwright.Core.Classes;

/// <summary>What stands against holding a class as it is planned, or is to be known before.</summary>
public enum ClassReason
{
    /// <summary>The report of the piece says stop.</summary>
    ReportSaysStop,

    /// <summary>More take part than the room has places.</summary>
    TooFewPlaces,

    /// <summary>The steps take longer than there is time.</summary>
    TooLong,

    /// <summary>Beads cannot be had from anybody.</summary>
    CannotBeHad,

    /// <summary>No order would be large enough to be sent.</summary>
    NoOrderCanBeSent,

    /// <summary>A place is sold for less than it costs.</summary>
    Loses,

    /// <summary>A step was not timed. No hindrance, but whether it fits is then not known.</summary>
    NotTimed,

    /// <summary>Timed steps do not say which steps of the pattern they are, and a step of the pattern has no time. No hindrance.</summary>
    StepsNotNamed,

    /// <summary>A step that was timed once for a batch gives no time. No hindrance.</summary>
    OnceForBatch,

    /// <summary>An end is glued before the last step, and how long glue sets is not told. No hindrance.</summary>
    GlueNotTold,

    /// <summary>How much longer a learner takes was not told: times are the maker's own. No hindrance.</summary>
    FactorNotTold,

    /// <summary>Some take turns at a tool, and the others wait. No hindrance.</summary>
    TakeTurns,

    /// <summary>When it ends was not told: whether it fits was not asked. No hindrance.</summary>
    EndNotTold,

    /// <summary>No rule prices a place. No hindrance.</summary>
    NoRule,

    /// <summary>No wage was told: teaching is counted as nothing. No hindrance.</summary>
    NoWage,

    /// <summary>A bead has no price. No hindrance.</summary>
    BeadsUnpriced,
}
