namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="SheetPageWords"/>.</summary>
internal static class GermanBenchSheet
{
    internal static SheetPageWords Make() => new()
    {
        Heading = "Fädelanleitung",
        Lead = "Zum Ausdrucken und Danach-Fädeln, für ein Handgelenk von {wristMm:length}. Hier als eine lange Seite zu sehen; das PDF ist Seite für Seite gesetzt.",
        Paper = "Papier",
        PaperA4 = "A4",
        PaperLetter = "US-Letter",
        Letters = "Schrift",
        LettersUsual = "üblich",
        LettersLarge = "Großdruck",
        Ink = "Farbe",
        InkColour = "bunt",
        InkGrey = "Grautöne",
        Amount = "Tinte",
        AmountUsual = "voll",
        AmountSpared = "sparsam",
        SavePdf = "PDF zum Drucken speichern",
        SaveHtml = "Als Webseite speichern",
        Look = "Das Blatt, wie es gespeichert wird",
        Making = "Das Blatt wird gesetzt.",
        NotMade = "Ein Teil des Blattes lässt sich nicht herstellen:",
        EveryPaper = "Alle Papiere auf einmal",
        AllPieces = "Alle meine Stücke, so wie dieses",
        TooManyJobs = "Es ist schon zu viel in Arbeit. Warten, bis etwas davon fertig ist, oder es anhalten.",
    };
}
