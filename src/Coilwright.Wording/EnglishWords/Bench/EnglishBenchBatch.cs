namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="BatchPageWords"/>.</summary>
internal static class EnglishBenchBatch
{
    internal static BatchPageWords Make() => new()
    {
        Heading = "Several alike",
        Lead = "Count out once, cut once, and string one after the other.",
        AskHeading = "What is made",
        Count = "How many",
        Wells = "Wells in a tray",
        Rounds = "Round beads of 6 mm in a well",
        Working = "Working it out…",
        NotMade = "It cannot be worked out:",
        SavePlan = "Save the plan as PDF",
        SaveTicks = "Save the tick sheet as PDF",
        WireAtHand = "From the wire at hand:",
    };
}
