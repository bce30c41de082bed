namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="FrameWords"/>.</summary>
internal static class GermanBenchFrame
{
    internal static FrameWords Make() => new()
    {
        SkipToContent = "Weiter zur Werkbank",
        Pages = "Seiten",
        Bench = "Werkbank",
        Pieces = "Stücke",
        Workshop = "Werkstatt",
        Selling = "Verkauf",
        PieceLook = "Ansehen",
        PieceMake = "Arbeiten",
        PieceSell = "Verkaufen",
        Settings = "Einstellungen",
        Close = "Schließen",
        Units = "Längen in",
        UnitsBoth = "mm und Zoll",
        UnitsMm = "mm",
        UnitsInches = "Zoll",
        Light = "Licht",
        LightAsMachine = "wie am Gerät",
        LightDay = "Tag",
        LightEvening = "Abend",
        TextSize = "Schrift",
        TextUsual = "normal",
        TextLarger = "größer",
        TextLargest = "am größten",
        Language = "Sprache",
        NotFound = "Hier ist nichts",
        NotFoundWhatToDo = "Diese Seite oder dieses Stück gibt es nicht. Vorhanden sind:",
        Broken = "Bei uns ist etwas schiefgegangen",
        BrokenWhatToDo = "Das Stück ist so aufgehoben, wie es zuletzt geändert wurde. Die Seite neu laden; wenn es wieder geschieht, bitte melden, was vorher getan wurde.",
        Reload = "Neu laden",
        Reconnecting = "Das Programm wird gesucht …",
        NoAnswer = "Das Programm antwortet nicht",
        NoAnswerWhatToDo = "Es wurde geschlossen, oder der Rechner hat geschlafen. Es neu starten; was getan wurde, ist aufgehoben.",
        TryAgain = "Noch einmal versuchen",
        StaysHere = "Alles bleibt auf diesem Rechner. Coilwright arbeitet ohne Internet und sendet nirgendwohin etwas.",
        StaysInDatabase = "Die Stücke liegen in der Datenbank {database}. Coilwright arbeitet ohne Internet und sendet sonst nirgendwohin etwas.",
    };
}
