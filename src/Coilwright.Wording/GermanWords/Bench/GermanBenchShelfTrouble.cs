namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ShelfTroubleWords"/>.</summary>
internal static class GermanBenchShelfTrouble
{
    internal static ShelfTroubleWords Make() => new()
    {
        Heading = "Die Stücke sind gerade nicht zu lesen",
        Where = "Sie liegen in dieser Datei: {file}",
        WhereDatabase = "Sie liegen in dieser Datenbank: {database}",
        Untouched = "Darin wurde nichts geändert, und solange sie nicht zu lesen ist, wird auch nichts geändert.",
        TryAgain = "Noch einmal versuchen",
        IfItStays = "Wenn es so bleibt",
        First = "Coilwright schließen.",
        Second = "{file} an einen sicheren Ort verschieben, mit jeder Datei dort, deren Name gleich beginnt. Sie aufheben: oft lässt sich vieles daraus retten.",
        Third = "Coilwright neu starten. Es beginnt ein leeres Regal; unter Stücke, Alles sichern, die zuletzt gespeicherte Datei zurückholen.",
        OthersAreThere = "Die anderen Stücke lassen sich öffnen:",
    };
}
