namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="KitPageWords"/>.</summary>
internal static class EnglishBenchKit
{
    internal static KitPageWords Make() => new()
    {
        Heading = "Kits",
        Lead = "What lies in which bag, what to fetch from which drawer, how many kits there are now, and labels to print.",
        SparesHeading = "Spares",
        SparesHint = "In each bag, or laid aside for the whole batch.",
        SparePerPiece = "In each bag",
        SparePercent = "Laid aside, in a hundred",
        UseStock = "Look at what is in stock",
        Planning = "Counting…",
        NotPlanned = "It cannot be counted:",
        LabelsHeading = "Labels",
        LabelsHint = "The sheet as it is printed on its packet, in mm. Without margins the labels lie in the middle of the paper. Print at 100 %.",
        Paper = "Paper",
        Columns = "Side by side",
        Rows = "One under the other",
        Width = "Width of one, mm",
        Height = "Height of one, mm",
        Left = "Margin at the left, mm",
        Top = "Margin at the top, mm",
        Across = "Gap side by side, mm",
        Down = "Gap one under the other, mm",
        LabelCount = "{labels} {labels:label|labels} on {sheets} {sheets:sheet|sheets}.",
        NoLabels = "No labels like this:",
        SaveLabels = "Save the labels (PDF)",
        SavePicks = "Save the pick list (PDF)",
        Edited = "{title} was edited since its labels were last made: they are of version {made}, it is at version {now}. Kits packed with them hold what version {made} says; for this one make them anew.",
    };
}
