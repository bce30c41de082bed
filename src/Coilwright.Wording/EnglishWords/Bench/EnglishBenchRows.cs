namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="RowsWords"/>.</summary>
internal static class EnglishBenchRows
{
    internal static RowsWords Make() => new()
    {
        Heading = "Turn by turn",
        BeadList = "Beads in the order they are strung",
        Bead = "{number}, {name}, {letter}, turn {turn}, {angleDeg:place}",
        Keys = "Tap a bead. Keys: left and right go along the wire, up and down to the turn beside; with Shift they take more in. A key letter strings its bead, a number repeats, Delete takes off, Alt with left or right moves.",
        SelectionName = "Selected beads",
        NoneSelected = "No bead is selected.",
        OneSelected = "Bead {number}: {name} ({letter}), turn {turn}, {angleDeg:place}.",
        SomeSelected = "{beads} beads, {mm:length} of wire.",
        Before = "Bead before",
        After = "Bead after",
        Several = "Select several",
        Clear = "Select none",
        Larger = "Larger rows",
        Smaller = "Smaller rows",
        WholeWidth = "Whole width",
    };
}
