namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ScatterWords"/>.</summary>
internal static class GermanScatter
{
    internal static ScatterWords Make() => new()
    {
        Heading = "Eine Reihenfolge ohne Wiederholung",
        Lead = "Dieselben Perlen und Gruppen, wie zufällig aufgefädelt und doch gut verteilt: Gruppen bleiben ganz, Zwischenperlen und Blickfang bleiben, wo sie sind.",
        NoneShows = "Keine Wiederholung fällt auf: Kein Abstand und keine Folge kehrt öfter wieder, als der Zufall es täte, und keine Sorte häuft sich oder fehlt lange.",
        SomeShows = "Eine Wiederholung fällt noch auf: Diese Mengen und Regeln lassen keine Reihenfolge ohne sie zu.",
        Alike = "Am ähnlichsten {period} {period:Platz|Plätze} weiter: {share:percent} haben dort ihresgleichen; bis {upTo:percent} fällt nichts auf.",
        Longest = "Die längste Folge, die wiederkehrt, hat {beads} {beads:Perle oder Gruppe|Perlen oder Gruppen}; bis {upTo} fällt nichts auf.",
        Against = "{after:percent} der Länge aller Gruppen liegen dann gegen den Wunsch.",
        TextAnew = "Die Reihenfolge wird neu geschrieben; Bemerkungen darin entfallen.",
        OneKind = "Es gibt keine zwei Sorten von Perlen oder Gruppen, die die Plätze tauschen dürfen.",
        NoneAllowed = "Es wurde keine Reihenfolge gefunden, die die Regeln einhält. Eine lockern und noch einmal versuchen.",
        NotWritten = "Die Reihenfolge lässt sich nicht schreiben: Ein Gruppenname steht für verschiedene Perlen.",
        Make = "Verstreuen",
        Another = "Anders verstreuen",
        Written = "Sie steht in {file}.",
    };
}
