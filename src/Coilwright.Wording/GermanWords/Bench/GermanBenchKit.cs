namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="KitPageWords"/>.</summary>
internal static class GermanBenchKit
{
    internal static KitPageWords Make() => new()
    {
        Heading = "Bausätze",
        Lead = "Was in welchem Tütchen liegt, was aus welcher Schublade zu holen ist, wie viele Packungen es jetzt gibt, und Etiketten zum Drucken.",
        SparesHeading = "Ersatz",
        SparesHint = "In jedem Tütchen, oder für alle zusammen beiseitegelegt.",
        SparePerPiece = "In jedem Tütchen",
        SparePercent = "Beiseite, von hundert",
        UseStock = "Den Vorrat ansehen",
        Planning = "Es wird gezählt…",
        NotPlanned = "Es lässt sich nicht zählen:",
        LabelsHeading = "Etiketten",
        LabelsHint = "Der Bogen, wie er auf der Packung steht, in mm. Ohne Ränder liegen die Etiketten in der Mitte des Papiers. Mit 100 % drucken.",
        Paper = "Papier",
        Columns = "Nebeneinander",
        Rows = "Untereinander",
        Width = "Breite von einem, mm",
        Height = "Höhe von einem, mm",
        Left = "Rand links, mm",
        Top = "Rand oben, mm",
        Across = "Abstand nebeneinander, mm",
        Down = "Abstand untereinander, mm",
        LabelCount = "{labels} {labels:Etikett|Etiketten} auf {sheets} {sheets:Bogen|Bögen}.",
        NoLabels = "So keine Etiketten:",
        SaveLabels = "Etiketten speichern (PDF)",
        SavePicks = "Packliste speichern (PDF)",
        Edited = "{title} wurde bearbeitet, seit die Etiketten zuletzt gemacht wurden: Sie sind von Fassung {made}, jetzt ist es Fassung {now}. Was damit gepackt ist, enthält, was Fassung {made} sagt; für diese neue machen.",
    };
}
