namespace Coilwright.Wording.GermanWords;

/// <summary>German captions of the smaller pictures.</summary>
internal static class GermanPictures
{
    internal static PictureWords Make() => new()
    {
        Coil = "{title} als Spirale mit {turns} {turns:Windung|Windungen} und {beads} {beads:Perle|Perlen}, von vorn und etwas von oben gesehen. "
            + "Die Oberseite des Handgelenks zeigt nach vorn; was hinten liegt, ist blass.",
        CoilSeen = "die Oberseite des Handgelenks vorn",

        Cards = "{title}: eine Karte je Perle, in Originalgröße gezeichnet; {kinds} {kinds:Sorte|Sorten}.",
        CardUse = "{count} Stück",
        CardHole = "Loch {bore}",
        CardHoleUnknown = "Loch nicht gemessen",
        CardScaled = "auf {percent:percent} gezeichnet",
        CardFront = "von vorn",
        CardSide = "von der Seite",

        Ends = "{title}: wie die Enden des Drahts gearbeitet werden, Schritt für Schritt und größer gezeichnet, als sie sind.",
        BothEnds = "Beide Enden",
        StartEnd = "Der Anfang",
        FinishEnd = "Das Ende",
        LoopTrim = "{wire} hinter der Perle abschneiden und die Spitze glatt feilen.",
        LoopGrip = "Die Spitze fassen, wo die Rundzange {inside} dick ist.",
        LoopRoll = "Gegen die Rundung der Spirale rollen. Loslassen, neu fassen, weiterrollen.",
        LoopClose = "Die Öse schließen und gerade über das Loch stellen: innen {inside}.",
        DangleRoll = "Gegen die Rundung der Spirale rollen, aber eine Lücke lassen, durch die der Anhänger passt.",
        DangleHang = "Den Anhänger einhängen. Die Öse schließen und gerade über das Loch stellen: innen {inside}.",
        CapRoughen = "Den Draht {depth} hinter der Perle abschneiden und dieses Ende mit der Feile aufrauen.",
        CapGlue = "Einen Tropfen starken Kleber in das Loch der Endkappe geben.",
        CapPush = "Den Draht bis auf den Grund des Lochs schieben und trocknen lassen.",
    };
}
