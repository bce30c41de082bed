namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="SellingPageWords"/>.</summary>
internal static class GermanBenchSelling
{
    internal static SellingPageWords Make() => new()
    {
        Heading = "Verkaufen",
        Lead = "Was Käuferinnen fragen, beantwortet aus dem Stück selbst. Ändert sich eine Perle, ändert sich der Text; kopieren, wenn er passt.",
        Piece = "Stück",
        Working = "Wird ausgerechnet…",
        Copy = "Kopieren",
        Copied = "Kopiert.",
        NotCopied = "Der Browser hat das Kopieren nicht erlaubt. Bitte den Text markieren und von Hand kopieren.",
        Save = "Als Textdatei speichern",
        Wrist = "Ihr Handgelenk",
        WristHint = "So, wie sie es sagt: 165, 16,5 cm, 6 1/2 in.",
        ForYou = "Für Sie, nicht für den Text",
    };
}
