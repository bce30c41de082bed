namespace Coilwright.Wording.GermanWords;

/// <summary>German captions of the turn rows.</summary>
internal static class GermanTurnRows
{
    internal static TurnRowsWords Make() => new()
    {
        Wrist = "Handgelenk",
        WirePerTurn = "Draht je Windung",
        TurnsWorn = "Windungen, getragen",
        Beads = "Perlen",
        Focal = "Blickfang",
        FocalOnTop = "Windung {turn}, mitten auf der Oberseite",
        FocalPast = "Windung {turn}, {off} hinter der Mitte",
        FocalBefore = "Windung {turn}, {off} vor der Mitte",
        Cover = "{percent:percent} der Gruppenlänge liegen über einer gleichen Gruppe.",
        CoverRuns = "{percent:percent} der Perlenlänge liegen über gleichen Perlen.",
        Hatched = "Schraffiert: Gleiches liegt über Gleichem, und um wie viel die Mitten versetzt sind.",
        Open = "Offene Balken: Gleiches steht wie gewünscht über Gleichem, und um wie viel die Mitten versetzt sind.",
        Top = "Oberseite",
        Underside = "Unterseite",
        Start = "Anfang",
        Finish = "Ende",
        Turn = "Windung {turn}",
        TurnsBegin = "Beginn jeder Windung",
        OffSquare = "{name}, {off} versetzt",
        OffShort = "{name}, {off}",
        Square = "{name}, genau darüber",
        PastTop = "{off} hinter der Mitte",
        BeforeTop = "{off} vor der Mitte",
        BareWire = "{length} blanker Draht",
        Key = "Perlen",
        KeySizes = "längs zum Loch × quer dazu",
        Use = "{count} Stück, {size}",
        UseFocal = "Blickfang, {count} Stück, {size}",
        Size = "{along} × {across}",
        TrueSize = "Dieser Balken ist {length} lang, wenn die Seite mit 100 % gedruckt ist.",
        Scaled = "Auf {percent:percent} der Originalgröße gezeichnet: Dieser Balken entspricht {length} am Stück.",
        SomeLetters = "Wo die Perlen klein sind, hat nicht jede Platz für ihr Kürzel.",
        SomePlaces = "Wo sich gleiche Stellen drängen, ist nicht für alle Platz, sie zu benennen.",
        BeadTitle = "Perle {number}, Windung {turn}: {name}",
        Shows = "{title}: {beads} {beads:Perle|Perlen} an einem Handgelenk von {wrist}, jede Windung als gerade Reihe gezeichnet, "
            + "so dass auf dem Blatt übereinanderliegt, was am Handgelenk übereinanderliegt.",
        ShowsPlace = "{name} über {name}, Windungen {turn} und {next}, {place}, {off} versetzt.",
    };
}
