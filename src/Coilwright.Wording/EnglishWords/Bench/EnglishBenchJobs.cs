namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="JobWords"/>.</summary>
internal static class EnglishBenchJobs
{
    internal static JobWords Make() => new()
    {
        Heading = "Work in hand",
        EverySheet = "Every sheet of “{title}”",
        SheetsOfPieces = "The sheets of {pieces} {pieces:piece|pieces}",
        SheetsSoFar = "{made} of {of} {of:sheet|sheets} made.",
        HowFar = "How far it is",
        Waiting = "waits its turn",
        Running = "{share:percent} done, {elapsed}",
        Done = "Done in {elapsed}.",
        Stopped = "Stopped. Nothing came of it.",
        Failed = "That went wrong, and nothing was made. Nothing of yours is lost: start it again.",
        Stop = "Stop",
        Save = "Save {made} {made:sheet|sheets} as one file",
        PutAway = "Clear away",
    };
}
