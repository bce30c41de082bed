namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="BackupWords"/>.</summary>
internal static class GermanBenchBackup
{
    internal static BackupWords Make() => new()
    {
        Heading = "Alles sichern",
        Lead = "Die Stücke liegen in einer Datei auf diesem Rechner: {file}",
        SaveHeading = "Alles speichern",
        SaveLead = "Alle Stücke ({pieces}) mit jedem Schritt, Namen, Versuch und Foto, in einer Datei. Am besten auf einem anderen Datenträger aufbewahren. Nebenher lässt sich weiterarbeiten.",
        Save = "In eine Datei speichern",
        RestoreHeading = "Alles zurückholen",
        RestoreLead = "Alles aus der Datei kommt an die Stelle dessen, was hier ist. Die Datei wird vorher durchgesehen; was jetzt hier ist, wird in einer eigenen Datei aufgehoben.",
        Choose = "Eine hier gespeicherte Datei wählen",
        Reading = "Die Datei wird gelesen: {done:percent}",
        Restoring = "Die Datei wird durchgesehen …",
        Sure = "Was hier ist ({pieces} {pieces:Stück|Stücke}) durch den Inhalt von {file} ersetzen?",
        Yes = "Ersetzen",
        No = "Alles lassen, wie es ist",
        Restored = "Zurückgeholt: {pieces} {pieces:Stück|Stücke}.",
        Before = "Was vorher hier war, ist aufgehoben in {file}",
        NotRestored = "{file} wurde nicht zurückgeholt:",
        DatabaseLead = "Die Stücke liegen in einer Datenbank: {database}",
        DatabaseSaveLead = "Eine Datenbank wird mit den eigenen Werkzeugen von PostgreSQL gesichert, auf einem Rechner, der sie hat. Jeder Schritt, Name, Versuch und jedes Foto kommt in eine Datei; alle können nebenher weiterarbeiten.",
        DatabaseRestoreLead = "Vorher Coilwright überall schließen: Was in der Datei ist, kommt an die Stelle dessen, was jetzt in der Datenbank ist.",
        DatabasePieces = "Einzelne Stücke lassen sich als Dateien speichern und wieder hereinholen, in jedem Coilwright.",
        StaysAsItWas = "Hier ist alles, wie es war.",
    };
}
