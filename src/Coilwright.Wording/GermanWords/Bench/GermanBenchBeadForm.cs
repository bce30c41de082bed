namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="BeadFormWords"/>.</summary>
internal static class GermanBenchBeadForm
{
    internal static BeadFormWords Make() => new()
    {
        Heading = "Eine Perle",
        TrueSize = "echte Größe",
        DrawnOnceSized = "Sie wird gezeichnet, sobald ihre Größe bekannt ist.",
        Name = "Name",
        Shape = "Form",
        Label = "Größe auf dem Etikett",
        Which = "Das Loch entlang läuft",
        AlongIs = "{mm:fine}",
        LengthBy = "Länge längs zum Loch",
        ByOne = "eine Perle",
        ByRow = "eine Reihe, gemessen",
        ByRange = "von, bis",
        Along = "Längs zum Loch",
        RowCount = "Perlen in der Reihe",
        RowTotal = "Die Reihe misst",
        Shortest = "Kürzeste",
        Longest = "Längste",
        Across = "Quer dazu",
        Thickness = "Dicke, falls anders",
        Hole = "Loch",
        EndFace = "Fläche an den Enden",
        HoleOffset = "Loch aus der Mitte",
        Wall = "Wand, falls hohl",
        CurveRadius = "Radius der Biegung",
        Matched = "gebogen wie die Spirale",
        Colour = "Farbe",
        Material = "Material",
        MaterialUnknown = "nicht bekannt",
        Role = "Rolle",
        Add = "Zum Stück legen",
        Keep = "Übernehmen",
        Cancel = "Lassen",
        Change = "Ändern",
        AnotherColour = "Andere Farbe",
        ReplaceEverywhere = "{name} überall ersetzen durch",
        ReplaceBy = "Überall ersetzen durch",
        NotStrung = "nicht aufgefädelt",
        PutBack = "Zurücklegen",
        Another = "Noch eine Perle",
    };
}
