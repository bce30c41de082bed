using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording.GermanWords;

/// <summary>German words of the bench in the browser.</summary>
internal static class GermanBench
{
    internal static BenchWords Make() => new()
    {
        Start = new StartWords
        {
            OpenAt = "Die Werkbank von Coilwright ist offen unter {address}",
            ToStop = "Nur dieser Rechner erreicht sie. Strg+C schließt sie.",
            PortTaken = "Anschluss {port} ist belegt. Mit --port einen anderen nennen, oder die Option weglassen: Dann wird ein freier genommen.",
            BadOption = "„{option}“ ist nicht zu verstehen. Es gibt eine Option: --port und eine Zahl von 0 bis 65535.",
        },
        Frame = new FrameWords
        {
            SkipToContent = "Weiter zur Werkbank",
            Pages = "Seiten",
            Bench = "Werkbank",
            Pieces = "Stücke",
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
        },
        Rows = new RowsWords
        {
            Heading = "Windung für Windung",
            BeadList = "Perlen in der Reihenfolge, in der sie aufgefädelt werden",
            Bead = "{number}, {name}, {letter}, Windung {turn}, {angleDeg:place}",
            Keys = "Eine Perle antippen. Tasten: links und rechts den Draht entlang, auf und ab zur Windung daneben; mit Umschalttaste kommen mehr hinzu.",
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
        },
        Wrist = new WristWords
        {
            Heading = "Am Handgelenk",
            Slider = "Handgelenk",
            Typed = "Handgelenk, eingetippt",
            TypedHint = "In Millimetern oder Zoll: 165, 6 1/2 Zoll",
            TypedWrong = "Eine Länge von {min} bis {max} eintippen, etwa 165 oder 6 1/2 Zoll.",
            Smaller = "Einen Millimeter kleiner",
            Larger = "Einen Millimeter größer",
            Back = "Zurück zu {mm:length}",
            Elsewhere = "Das Stück ist für {mm:length} gemacht; so sieht es an einem anderen Handgelenk aus.",
        },
        Readings = new ReadingsWords
        {
            Heading = "Ergebnisse",
            Beads = "Perlen",
            Length = "Auf dem Draht",
            Turns = "Windungen",
            Fit = "Sitz",
            FitYes = "passt",
            FitNo = "passt nicht",
            Focal = "Blickfang",
            FocalAt = "{angleDeg:place}",
            LiningUp = "Übereinander",
            LiningUpWords = new Dictionary<LiningUpWord, string>
            {
                [LiningUpWord.LinesUp] = "gleich über gleich",
                [LiningUpWord.Between] = "teils, teils",
                [LiningUpWord.Mixed] = "gemischt",
                [LiningUpWord.TooLittle] = "zu wenig für ein Urteil",
            }.ToFrozenDictionary(),
            Weight = "Gewicht",
            Grams = "{grams} g",
            Cut = "Draht abschneiden",
            NotKnown = "nicht bekannt",
            ShowMe = "Zeigen",
            BeadsOfThePiece = "Perlen des Stücks",
            ShowKind = "Alle {name} auswählen",
            Use = "{count} Stück",
            Sizes = "{alongMm:mm} längs zum Loch, {acrossMm:mm} quer dazu",
            Cautions = "Vorsicht",
        },
        Order = new OrderViewWords
        {
            Heading = "Fädelreihenfolge",
            View = "Ansicht",
            AsCards = "als Karten",
            AsText = "als Text",
            Between = "dazwischen",
        },
        Pieces = new PiecesWords
        {
            Heading = "Stücke",
            Search = "Nach Titel suchen",
            ShowArchived = "Auch zeigen, was weggelegt ist",
            NoneFound = "Kein Stück hat das im Titel.",
            ChangedOn = "geändert {date}",
            PutAway = "weggelegt, geändert {date}",
            Copy = "Kopieren",
            CopyOf = "{title}, Kopie",
            Archive = "Weglegen",
            TakeOut = "Wieder hervorholen",
            SaveFile = "Als Datei speichern",
            BringIn = "Ein Stück aus einer Datei holen",
            BringInHint = "Eine Datei, deren Name auf .piece.json endet",
            NotBroughtIn = "{file} wurde nicht hereingeholt:",
            AtPlace = "Zeile {line}, Spalte {column}:",
            NotKept = "Das konnte nicht aufgehoben werden.",
        },
    };
}
