namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ClassPageWords"/>.</summary>
internal static class GermanBenchClass
{
    internal static ClassPageWords Make() => new()
    {
        Heading = "Kurs",
        Lead = "Ein Stück im Kurs: sagen, wie viele kommen und wie lange, und es steht da, was zu packen ist, wann jeder Schritt beginnt, was nicht hineinpasst und was ein Platz kostet.",
        AskHeading = "Der Kurs",
        Participants = "Wie viele teilnehmen",
        SpareKits = "Materialsätze außerdem",
        SpareBeads = "Ersatzperlen je Beutel",
        Factor = "So vielmal so lang brauchen Lernende",
        Start = "Beginnt um",
        End = "Endet um",
        Breaks = "Pausen",
        BreakAt = "Pause um",
        BreakMinutes = "Ihre Minuten",
        AddBreak = "Eine Pause dazu",
        TakeOutBreak = "Pause um {at} streichen",
        Places = "Plätze an den Tischen",
        Around = "Minuten zum Aufbauen und Aufräumen",
        Room = "Raum und was sonst einmal bezahlt wird",
        Rule = "Preis eines Platzes nach",
        Shares = "Wer sich Werkzeug teilt",
        ShareHint = "Eines für so viele; 1 heißt eines für jede Person. Augenschutz hat immer jede Person.",
        Own = "Eigene Minuten",
        OwnHint = "Was leer ist, kommt aus den gemessenen Schritten in den Kosten, bei denen steht, welche Schritte sie sind.",
        BeforehandHeading = "Du machst vorher",
        Working = "Wird ausgerechnet…",
        NotMade = "Es lässt sich nicht ausrechnen:",
        SaveTeacher = "Eigenes Blatt als PDF speichern",
        SaveTeacherPage = "Eigenes Blatt als Webseite speichern",
        SavePlace = "Blatt für die Teilnehmenden als PDF speichern",
        SavePlacePage = "Blatt für die Teilnehmenden als Webseite speichern",
        NoTime = "Das ist keine Uhrzeit. Etwa 10:00 schreiben.",
        OpenHint = "Eine Zahl eines Materialsatzes öffnen, um zu sehen, woher sie kommt.",
        KitCost = "Ein Materialsatz",
    };
}
