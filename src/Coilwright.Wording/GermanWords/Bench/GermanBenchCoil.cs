namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CoilPageWords"/>.</summary>
internal static class GermanBenchCoil
{
    internal static CoilPageWords Make() => new()
    {
        Heading = "Rundum",
        Lead = "Das Stück drehen wie in der Hand. Die Perlen sind so groß, wie sie sind, und stehen, wo der Draht sie hält.",
        Pose = "Wie es liegt",
        Worn = "Am Handgelenk, wie gerechnet",
        AsItSits = "Am Handgelenk, wie es sitzt",
        AtRest = "Entspannt",
        ShownAsItSits = "Zu sehen ist, wie es auf einem ovalen Handgelenk von {wristMm:mm} sitzt.",
        ShownAsReckoned = "Zu sehen ist es wie zuvor.",
        StoppedShort = "Angehalten. Zu sehen ist es wie zuvor.",
        Picture = "Das Stück im Raum",
        Keys = "Zum Drehen ziehen oder die Pfeiltasten nehmen, Plus und Minus für näher und weiter, Pos1 wie zu Anfang. Eine Perle antippen, um sie kennenzulernen.",
        DrawnOnly = "Dieser Browser kann keine drehbaren Bilder zeigen, deshalb ist das Stück gezeichnet. Die Liste der Perlen antwortet trotzdem.",
        Turning = "Drehen",
        Left = "Links",
        Right = "Rechts",
        FromAbove = "Von oben",
        FromBelow = "Von unten",
        Nearer = "Näher",
        Farther = "Weiter weg",
        AsAtFirst = "Wie zu Anfang",
        Beads = "Perlen, Windung für Windung",
        Turn = "Windung {turn}",
        Bead = "Perle {number}: {letter}, {name}, Windung {turn}, {angleDeg:place}",
        NonePicked = "Eine Perle im Bild oder in der Liste antippen, dann steht sie hier.",
        Next = "Nächste Perle",
        Back = "Perle davor",
        Still = "Bilder zum Aufheben",
        StillNote = "So, wie es gerade zu sehen ist, auf dem Papier dahinter, in jeder Größe.",
        Width = "Breite, Pixel",
        Height = "Höhe, Pixel",
        SaveStill = "Diese Ansicht speichern",
        Count = "Bilder rundum",
        SaveTurntable = "Rundum speichern",
        At = "Bild {at} von {of}",
        Trouble = "Das ließ sich nicht machen. Mit einer kleineren Größe versuchen oder die Seite neu laden.",
        Model = "Für andere Programme",
        ModelNote = "Ein Modell zum Drehen, Beleuchten und Drucken in anderen Programmen: glTF 2.0 in einer Datei (.glb), Meter, oben ist +Y, jede Perle nach Platz, Kürzel und Name benannt.",
        SaveWorn = "Getragen speichern",
        SaveAsItSits = "Wie es sitzt speichern",
        SaveAtRest = "Entspannt speichern",
    };
}
