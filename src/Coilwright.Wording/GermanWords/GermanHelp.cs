namespace Coilwright.Wording.GermanWords;

/// <summary>German words of the command line.</summary>
internal static class GermanHelp
{
    internal static HelpWords Make() => new()
    {
        Program = "Ein Werkzeug für Perlenschmuck auf Memory-Draht: die Fädelreihenfolge einmal aufschreiben, und alles andere wird daraus berechnet.",
        Reckon = "Alles zu einem Stück berechnen: ob es passt, wo jede Perle landet, was übereinanderliegt, wie viel Draht abzuschneiden ist.",
        Sheet = "Die Fädelanleitung eines Stücks schreiben, zum Drucken und Danach-Arbeiten: ein PDF, eine Webseite und jede ihrer Zeichnungen als SVG.",
        Arrange = "Eine bessere Reihenfolge nach den Wünschen des Stücks suchen, kleinste Änderung zuerst, und die beste in eine Datei schreiben.",
        ArrangeOut = "Die Stückdatei, in die die beste Reihenfolge kommt; gibt es sie schon, wird sie ersetzt.",
        Sizes = "Einen Entwurf für mehrere Handgelenke machen: was jede Größe braucht, was sich gegenüber der Grundgröße ändert, und die Perlen für alle.",
        Wrists = "Die Handgelenke, bis zu {max}, mit Kommas dazwischen: 145,160,175. Ohne Angabe: die, an denen das Stück gut sein soll, sonst die von Erwachsenen.",
        SizesOut = "Ein Ordner, in den jede Größe als eigenes Stück geschrieben wird; er wird angelegt, wenn es ihn nicht gibt. Dateien mit demselben Namen werden ersetzt.",
        Effort = "Wie viel gesucht wird, als ganze Zahl; dieselbe mit derselben Startzahl ergibt überall dasselbe. Ohne Angabe: {usual}.",
        Scatter = "Dieselben Perlen und Gruppen ohne sichtbare Wiederholung auffädeln, mit jeder Startzahl anders, und das in eine Datei schreiben.",
        ScatterOut = "Die Stückdatei, in die die Reihenfolge kommt; gibt es sie schon, wird sie ersetzt.",
        Seconds = "Stattdessen höchstens so viele Sekunden suchen; was bis dahin gefunden ist, gilt.",
        SheetOut = "Der Ordner, in den geschrieben wird; er wird angelegt, wenn es ihn nicht gibt. Dateien mit demselben Namen werden ersetzt.",
        SheetPaper = "Das Papier: a4 oder letter. Ohne Angabe: a4.",
        SheetSizes = "Auch drucken, was der Entwurf an anderen Handgelenken braucht: 145,160,175, oder usual für die, an denen er gut sein soll, sonst die von Erwachsenen. Dauert etwas länger.",
        SheetLargePrint = "Alles um die Hälfte größer setzen. Streifen bleiben in Originalgröße.",
        SheetGreyscale = "In Grautönen drucken.",
        SheetWritten = "Geschrieben: {file}",
        Piece = "Die Stückdatei, etwa mein-armband.piece.json.",
        Wrist = "Ein anderes Handgelenk als das des Stücks, in mm (165) oder mit Einheit (\"6 1/2in\").",
        WornCircumference = "Der gemessene Umfang des Drahts beim Tragen, in mm oder mit Einheit; er gilt statt der Berechnung.",
        Seed = "Eine ganze Zahl, von der die Zufallsfolgen ausgehen; dieselbe ergibt dasselbe. Ohne Angabe: 1.",
        Json = "Alles als JSON ausgeben und sonst nichts.",
        Draw = "Die Windungen auch als gerade Reihen in diese SVG-Datei zeichnen.",
        Language = "Die Sprache der Sätze: {codes}. Ohne Angabe: en. Zahlen in Dateien und Optionen bleiben dieselben.",
        Help = "Diese Hilfe zeigen.",
        Version = "Die Version zeigen.",
        UsageHeading = "So wird es aufgerufen:",
        VerbsHeading = "Was es kann:",
        OptionsHeading = "Optionen:",
        OptionsWord = "Optionen",
        ExamplePiece = "mein-armband.piece.json",
        ExampleDrawing = "mein-armband.svg",
        ExampleBetter = "mein-armband-besser.piece.json",
        ExampleFolder = "anleitungen",
        ExamplesHeading = "Beispiele:",
        ExitCodesHeading = "Rückgabewerte:",
        ExitCodes =
        [
            (0, "fertig"),
            (1, "fertig, und so kann es nicht gemacht oder getragen werden, geht nicht auf oder bringt Verlust"),
            (2, "mit dem Aufruf, der Stückdatei oder einem Pfad stimmt etwas nicht"),
            (3, "im Programm selbst ist etwas schiefgegangen"),
            (130, "mit Strg-C angehalten"),
        ],
        More = "Mehr zu einem davon: {command}",
        FaultPlace = "{file}{?line:, Zeile {line}}{?column:, Spalte {column}}{?field:, {field}}",
        ToMend = "Abhilfe:",
        FurtherFaults = "und {more} {more:weiterer Fehler|weitere Fehler}.",
        Drawn = "Die Windungen sind in {file} gezeichnet.",
    };
}
