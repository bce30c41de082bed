namespace Coilwright.Wording;

/// <summary>Words of making several alike. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record BatchWords
{
    /// <summary>What <c>batch</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--count</c>.</summary>
    public required string CountOption { get; init; }

    /// <summary><c>--wells</c>: {usual}.</summary>
    public required string WellsOption { get; init; }

    /// <summary><c>--rounds</c>: {usual}.</summary>
    public required string RoundsOption { get; init; }

    /// <summary><c>--costs</c>.</summary>
    public required string CostsOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>Heading: {count} of {name}.</summary>
    public required string Heading { get; init; }

    /// <summary>Title of the plan.</summary>
    public required string Title { get; init; }

    /// <summary>Heading of the trays.</summary>
    public required string TraysHeading { get; init; }

    /// <summary>{trays} trays of {wells} wells for each of {count} pieces.</summary>
    public required string Trays { get; init; }

    /// <summary>Wells follow the turns.</summary>
    public required string ByTurn { get; init; }

    /// <summary>Wells are for the whole piece.</summary>
    public required string ByKind { get; init; }

    /// <summary>What lies beside the tray: {beads}.</summary>
    public required string Beside { get; init; }

    /// <summary>{count} of {bead}.</summary>
    public required string BesideOf { get; init; }

    /// <summary>Column of trays.</summary>
    public required string TrayColumn { get; init; }

    /// <summary>Column of wells.</summary>
    public required string WellColumn { get; init; }

    /// <summary>Column of turns.</summary>
    public required string TurnColumn { get; init; }

    /// <summary>Column of how many in one well.</summary>
    public required string CountColumn { get; init; }

    /// <summary>Column of how many in all trays together.</summary>
    public required string AllColumn { get; init; }

    /// <summary>Heading of the beads of the whole batch.</summary>
    public required string FetchHeading { get; init; }

    /// <summary>Heading of the wire.</summary>
    public required string WireHeading { get; init; }

    /// <summary>{count} lengths of {loops} loops, {cutMm} each, {allMm} in all.</summary>
    public required string Wire { get; init; }

    /// <summary>Heading of the time.</summary>
    public required string TimeHeading { get; init; }

    /// <summary>A step done once: {name}, {minutes} minutes.</summary>
    public required string Once { get; init; }

    /// <summary>A step done for each: {name}, {each} minutes each, {minutes} in all.</summary>
    public required string Each { get; init; }

    /// <summary>{minutes} in all, {each} a piece.</summary>
    public required string TimeInAll { get; init; }

    /// <summary>No step was timed.</summary>
    public required string NoTimes { get; init; }

    /// <summary>The report says stop.</summary>
    public required string SaysStop { get; init; }

    /// <summary>A file was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>Title of the tick sheet: {name}.</summary>
    public required string TickTitle { get; init; }

    /// <summary>How it is used: {beads} beads.</summary>
    public required string TickLead { get; init; }

    /// <summary>Column of boxes to tick.</summary>
    public required string BoxColumn { get; init; }

    /// <summary>Column of steps.</summary>
    public required string StepColumn { get; init; }

    /// <summary>Column of the count afterwards.</summary>
    public required string AfterColumn { get; init; }
}
