namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="RowsWords"/>.</summary>
internal static class GermanBenchRows
{
    internal static RowsWords Make() => new()
    {
        Heading = "Windung für Windung",
        BeadList = "Perlen in der Reihenfolge, in der sie aufgefädelt werden",
        Bead = "{number}, {name}, {letter}, Windung {turn}, {angleDeg:place}",
        Keys = "Eine Perle antippen. Tasten: links und rechts den Draht entlang, auf und ab zur Windung daneben; mit Umschalttaste kommen mehr hinzu. Ein Kürzel fädelt seine Perle, eine Zahl wiederholt, Entf nimmt ab, Alt mit links oder rechts rückt.",
        SelectionName = "Ausgewählte Perlen",
        NoneSelected = "Keine Perle ist ausgewählt.",
        OneSelected = "Perle {number}: {name} ({letter}), Windung {turn}, {angleDeg:place}.",
        SomeSelected = "{beads} Perlen, {mm:length} Draht.",
        Before = "Perle davor",
        After = "Perle danach",
        Several = "Mehrere auswählen",
        Clear = "Keine auswählen",
        Larger = "Reihen größer",
        Smaller = "Reihen kleiner",
        WholeWidth = "Ganze Breite",
    };
}
