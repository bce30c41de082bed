namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="BatchWords"/>.</summary>
internal static class GermanBatch
{
    internal static BatchWords Make() => new()
    {
        Verb = "Ein Stück mehrmals gleich machen: was in welches Fach einer Sortierschale gezählt wird, in Fädelreihenfolge, der Draht zum Schneiden, die Zeit nach eigenen gemessenen Schritten; mit einem Blatt zum Abhaken beim Fädeln.",
        CountOption = "Wie viele gemacht werden. Ohne: 10.",
        WellsOption = "Fächer in einer Schale. Ohne: {usual}.",
        RoundsOption = "Wie viele runde Perlen von 6 mm in ein Fach gehen: einmal zählen. Von anderen gehen so viele hinein, wie gleich viel Platz brauchen. Ohne: {usual}.",
        CostsOption = "Die Kostendatei mit den eigenen gemessenen Schritten.",
        OutOption = "Der Ordner, in den batch.pdf, batch.html, tick-sheet.pdf und tick-sheet.html geschrieben werden.",
        Heading = "{count} × {name}",
        Title = "Mehrmals gleich",
        TraysHeading = "Auszählen",
        Trays = "{trays} {trays:Schale|Schalen} mit {wells} {wells:Fach|Fächern} für jedes Stück, {count} Mal gleich gefüllt.",
        ByTurn = "Die Fächer folgen dem Fädeln, Windung für Windung: Ist ein Fach leer, ist diese Perle der Windung fertig.",
        ByKind = "Jedes Fach enthält eine Sorte für das ganze Stück, in der Reihenfolge, in der die Sorten zuerst gefädelt werden.",
        Beside = "Zu groß für ein Fach, neben die Schale legen: {beads}.",
        BesideOf = "{count} × {bead}",
        TrayColumn = "Schale",
        WellColumn = "Fach",
        TurnColumn = "Windung",
        CountColumn = "je Fach",
        AllColumn = "zusammen",
        FetchHeading = "Holen",
        WireHeading = "Draht",
        Wire = "{count} {count:Stück|Stücke} zu {loops} {loops:Ring|Ringe} schneiden, je {cutMm:cut}: zusammen {allMm:cut}.",
        TimeHeading = "Zeit",
        Once = "{name}: {minutes} min, einmal",
        Each = "{name}: je {each} min, zusammen {minutes} min",
        TimeInAll = "Zusammen {minutes} min, {each} min je Stück.",
        NoTimes = "Wie lange es dauert, steht nicht da: Für Stücke wurde kein Arbeitsschritt gemessen. Am Arbeitsplatz messen und in der Kostendatei notieren.",
        SaysStop = "Der Bericht zu diesem Stück sagt Halt. Erst ansehen, dann mehrmals machen.",
        Written = "{file} ist geschrieben.",
        TickTitle = "Abhakblatt: {name}",
        TickLead = "Für jedes Mal, das ein Schritt gefädelt ist, ein Kästchen abhaken. Die Zahl sagt, wie viele Perlen dann auf dem Draht sind; zusammen {beads}.",
        BoxColumn = "fertig",
        StepColumn = "fädeln",
        AfterColumn = "am Draht",
    };
}
