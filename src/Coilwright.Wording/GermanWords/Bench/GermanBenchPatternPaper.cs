namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PatternPaperWords"/>.</summary>
internal static class GermanBenchPatternPaper
{
    internal static PatternPaperWords Make() => new()
    {
        Heading = "Anleitung auf Papier",
        Lead = "So, wie Käufer sie bekommen, für ein Handgelenk von {wristMm:length}. Hier als eine lange Seite zu sehen; das PDF ist Seite für Seite gesetzt.",
        Language = "Sprache der Anleitung",
        Colourways = "Farbvarianten, die sie zeigt",
        Look = "Die Anleitung, wie sie gespeichert wird",
        Making = "Die Anleitung wird gesetzt.",
        NotMade = "Ein Teil der Anleitung lässt sich nicht herstellen:",
        Parts = "Seiten der Anleitung",
        Text = "Worte und Schritte",
    };
}
