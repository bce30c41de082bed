namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="BatchPageWords"/>.</summary>
internal static class GermanBenchBatch
{
    internal static BatchPageWords Make() => new()
    {
        Heading = "Mehrere gleiche",
        Lead = "Einmal auszählen, einmal schneiden und eines nach dem anderen fädeln.",
        AskHeading = "Was gemacht wird",
        Count = "Wie viele",
        Wells = "Fächer einer Schale",
        Rounds = "Runde Perlen von 6 mm in einem Fach",
        Working = "Wird ausgerechnet…",
        NotMade = "Es lässt sich nicht ausrechnen:",
        SavePlan = "Plan als PDF speichern",
        SaveTicks = "Abhakblatt als PDF speichern",
        WireAtHand = "Aus dem vorhandenen Draht:",
    };
}
