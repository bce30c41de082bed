namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="EditWords"/>.</summary>
internal static class GermanBenchEdit
{
    internal static EditWords Make() => new()
    {
        Tools = "Was mit den gewählten Perlen geschehen soll",
        Undo = "Zurücknehmen",
        Redo = "Wieder tun",
        TakeOff = "Abnehmen",
        Twice = "Zweimal",
        Repeat = "Wiederholen",
        Times = "Mal",
        MoveBack = "Nach vorn rücken",
        MoveOn = "Nach hinten rücken",
        Mirror = "Spiegeln",
        MirrorAroundLast = "Um die letzte spiegeln",
        GroupName = "Gruppenname",
        MakeGroup = "Zur Gruppe machen",
        Ungroup = "Gruppe auflösen",
        EveryPass = "überall, wo die Reihenfolge es wiederholt",
        TapTo = "Eine Perle antippen fädelt sie",
        After = "dahinter",
        Before = "davor",
        Instead = "statt jeder",
        Between = "zwischen je zwei",
        AtTheEnd = "ans Ende",
        AtTheStart = "an den Anfang",
        Tray = "Perlen und Gruppen zum Auffädeln",
        StringIt = "{name} auffädeln",
        Refused = "Das geht nicht:",
        PutAway = "Verstanden",
        NotWritten = "{steps} {steps:Schritt, der|Schritte, die} hier zu sehen {steps:ist|sind}, {steps:konnte|konnten} noch nicht aufgeschrieben werden. Solange diese Seite offen bleibt, geht nichts verloren.",
        TryAgain = "Noch einmal aufschreiben",
        Behind = "Das Stück wurde in einem anderen Fenster geändert, bevor {steps:dieser Schritt|diese Schritte} aufgeschrieben werden {steps:konnte|konnten}. Nichts ist verloren: bitte wählen.",
        TakeTheirs = "Das Stück zeigen, wie es das andere Fenster hinterließ",
        KeepMine = "Das Eigene danach aufschreiben",
        ChangedElsewhere = "Das Stück wurde in einem anderen Fenster geändert. Hier ist es zu sehen, wie es jetzt ist.",
        Gone = "Dieses Stück liegt nicht mehr im Regal.",
        OrderText = "Die Fädelreihenfolge als Text",
        OrderTextHint = "Perlen mit ihren Namen schreiben, etwa 2 pearl, disc. Gruppen, Wiederholungen und gespiegelte Hälften bleiben, wie sie geschrieben sind.",
        StringText = "So auffädeln",
        DropText = "Zurück zu dem, was aufgefädelt ist",
    };
}
