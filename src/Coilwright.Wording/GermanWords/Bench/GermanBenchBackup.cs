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
        StaysAsItWas = "Hier ist alles, wie es war.",
    };
}
