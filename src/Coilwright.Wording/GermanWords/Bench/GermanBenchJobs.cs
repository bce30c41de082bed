namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="JobWords"/>.</summary>
internal static class GermanBenchJobs
{
    internal static JobWords Make() => new()
    {
        Heading = "Was in Arbeit ist",
        EverySheet = "Alle Blätter von „{title}“",
        SheetsOfPieces = "Die Blätter von {pieces} {pieces:Stück|Stücken}",
        SheetsSoFar = "{made} von {of} {of:Blatt|Blättern} fertig.",
        HowFar = "Wie weit es ist",
        Waiting = "wartet, bis es an der Reihe ist",
        Running = "{share:percent} fertig, {elapsed}",
        Done = "Fertig in {elapsed}.",
        Stopped = "Angehalten. Es ist nichts dabei entstanden.",
        Failed = "Das ging schief, und es entstand nichts. Verloren ist nichts: noch einmal anfangen.",
        Stop = "Anhalten",
        Save = "{made} {made:Blatt|Blätter} in einer Datei sichern",
        PutAway = "Wegräumen",
    };
}
