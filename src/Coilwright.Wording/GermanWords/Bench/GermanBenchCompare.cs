namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CompareWords"/>.</summary>
internal static class GermanBenchCompare
{
    internal static CompareWords Make() => new()
    {
        Heading = "Zwei Fassungen nebeneinander",
        Link = "Nebeneinander",
        Lead = "Beide sind im gleichen Maßstab gezeichnet, jede auf dem Handgelenk, für das sie gemacht ist.",
        One = "Die eine Fassung",
        Other = "Die andere Fassung",
        Differs = "Was anders ausfällt",
        Same = "Beide fallen gleich aus.",
        Beads = "Perlen: {name}",
        Count = "{count} aufgefädelt",
        AllBeads = "Perlen insgesamt",
        Length = "Perlen auf dem Draht",
        Turns = "Windungen am Arm",
        Wrist = "Handgelenk",
        OrderAlone = "Die Perlen sind dieselben, nur die Reihenfolge ist anders.",
    };
}
