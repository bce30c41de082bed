namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="BatchWords"/>.</summary>
internal static class EnglishBatch
{
    internal static BatchWords Make() => new()
    {
        Verb = "Make several of a piece alike: what to count out into which well of a tray, in the order of stringing, the wire to cut, how long it takes by your own timed steps; with a sheet to tick off while stringing.",
        CountOption = "How many are made. Without it: 10.",
        WellsOption = "Wells in a tray. Without it: {usual}.",
        RoundsOption = "How many round beads of 6 mm one well holds: count it once. Of other beads as many go in as take the same room. Without it: {usual}.",
        CostsOption = "The file of costs with your timed steps.",
        OutOption = "The folder to write batch.pdf, batch.html, tick-sheet.pdf and tick-sheet.html to.",
        Heading = "{count} × {name}",
        Title = "Making alike",
        TraysHeading = "Count out",
        Trays = "{trays} {trays:tray|trays} of {wells} {wells:well|wells} for each piece, filled alike {count} {count:time|times}.",
        ByTurn = "Wells follow the stringing, turn by turn: an empty well is a turn's bead done.",
        ByKind = "Each well holds a kind for the whole piece, in the order in which the kinds are first strung.",
        Beside = "Too large for a well, lay beside the tray: {beads}.",
        BesideOf = "{count} × {bead}",
        TrayColumn = "tray",
        WellColumn = "well",
        TurnColumn = "turn",
        CountColumn = "in each",
        AllColumn = "in all",
        FetchHeading = "Fetch",
        WireHeading = "Wire",
        Wire = "Cut {count} {count:length|lengths} of {loops} {loops:loop|loops}, {cutMm:cut} each: {allMm:cut} in all.",
        TimeHeading = "Time",
        Once = "{name}: {minutes} min, once",
        Each = "{name}: {each} min each, {minutes} min in all",
        TimeInAll = "{minutes} min in all, {each} min a piece.",
        NoTimes = "How long it takes is not told: no step of work was timed for pieces. Time them at the bench and note them in the file of costs.",
        SaysStop = "The report of this piece says stop. Look at it before you make several.",
        Written = "{file} is written.",
        TickTitle = "Tick sheet: {name}",
        TickLead = "Tick a box for each time that a step is strung. The number is how many beads are on the wire then; {beads} in all.",
        BoxColumn = "done",
        StepColumn = "string",
        AfterColumn = "on the wire",
    };
}
