namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="StringingGuideWords"/>.</summary>
internal static class GermanBenchStringing
{
    internal static StringingGuideWords Make() => new()
    {
        Heading = "Auffädeln",
        StepOf = "Schritt {step} von {steps}",
        Turn = "Windung {turn}",
        Next = "Weiter",
        Back = "Zurück",
        Done = "Fertig",
        FromTheStart = "Von vorn",
        Leave = "Verlassen",
        ReadAloud = "Vorlesen",
        NoVoice = "Dieser Browser hat keine Stimme für diese Worte. Alles steht hier zu lesen.",
        Keys = "Leertaste, Eingabe, Pfeiltasten und Bild auf oder ab führen weiter und zurück; ebenso ein Pedal, das eine davon sendet.",
        WordsAreOld = "Diese Worte wurden geschrieben, als der Schritt etwas anderes auffädelte. Jetzt heißt er:",
        NotKept = "Die Stelle konnte nicht aufgehoben werden. Es geht trotzdem weiter; nach neuem Laden der Seite vielleicht bei einem früheren Schritt.",
        Beads = "Perlen dieses Schritts",
    };
}
