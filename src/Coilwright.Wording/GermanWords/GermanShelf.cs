using Coilwright.Core.Faults;

namespace Coilwright.Wording.GermanWords;

/// <summary>German sentences of a shelf that cannot be used, and of photos that are not taken.</summary>
internal static class GermanShelf
{
    internal static IEnumerable<KeyValuePair<string, FaultSentence>> Make() => new Dictionary<string, FaultSentence>(StringComparer.Ordinal)
    {
        [FaultCodes.ShelfLocked] = new("Ein anderes Programm benutzt die Stücke gerade.", "Schreiben kann immer nur eines.",
            "Gleich noch einmal versuchen. Was zuletzt getan wurde, ist noch da."),
        [FaultCodes.ShelfReadOnly] = new("Die Stücke dürfen nicht geändert werden{?value:: {value}}.", "Die Datei und ihr Ordner müssen beschreibbar sein.",
            "Die Rechte von beiden prüfen, dann noch einmal versuchen. Im Regal wurde nichts geändert."),
        [FaultCodes.ShelfDiskFull] = new("Der Datenträger ist voll, darum konnte dies nicht aufgehoben werden.", "Eine Änderung braucht etwas Platz.",
            "Etwas Platz schaffen, dann noch einmal versuchen. Was vorher aufgehoben war, ist sicher."),
        [FaultCodes.ShelfNotOne] = new("Das ist kein Regal mit Stücken{?value:: {value}}.", "Es muss eine Datei sein, die Coilwright angelegt hat.",
            "Eine andere Datei oder einen anderen Ordner wählen. Darin wurde nichts geändert."),
        [FaultCodes.ShelfNewer] = new("Diese Stücke hat ein neueres Coilwright aufgehoben (Form {found}).", "Dieses hier kennt Formen bis {known}.",
            "Sie mit dem neueren öffnen. Geändert wurde nichts."),
        [FaultCodes.ShelfDamaged] = new("Die Datei mit den Stücken ist beschädigt{?value:: {value}}{?reason: ({reason})}.", "Jede Seite darin muss heil sein.",
            "Die Datei an einen sicheren Ort kopieren, dann die letzte Sicherung zurückholen."),
        [FaultCodes.ShelfUnreachable] = new("Der Ort der Stücke ist nicht zu benutzen{?value:: {value}}{?detail:: {detail}}.",
            "Es muss ein Ordner sein, in den geschrieben werden darf.", "Den Namen prüfen, und ob der Datenträger da ist."),
        [FaultCodes.ShelfPieceUnreadable] = new("Das Stück „{title}“ ist in seinem Stand {revision} nicht zu lesen{?detail: ({detail})}.",
            "Ein Stück muss in einer Form geschrieben sein, die dieses Programm kennt.",
            "Hat ein neueres Coilwright es aufgehoben, es mit jenem öffnen. Die anderen Stücke sind da."),
        [FaultCodes.ShelfOther] = new("Die Stücke sind gerade nicht zu benutzen{?reason:: {reason}}.", "Die Datei muss erreichbar sein.",
            "Noch einmal versuchen. Bleibt es so, die Datei an einen sicheren Ort kopieren und die letzte Sicherung zurückholen."),
        [FaultCodes.ShelfOwnFile] = new("In dieser Datei liegen die Stücke selbst{?value:: {value}}.", "Eine Sicherung muss eine eigene Datei sein.",
            "Einen anderen Namen oder Ordner wählen. Geändert wurde nichts."),
        [FaultCodes.PhotoTooLarge] = new("Das Foto ist zu groß.", "Erlaubt sind höchstens {max}.", "Ein kleineres nehmen, oder die Kamera kleiner speichern lassen."),
        [FaultCodes.PhotoKind] = new("Das ist kein Foto dieser Art.", "Ein Foto ist eines von: {known}.", "Ein Foto wählen, wie es aus der Kamera kam."),
    };
}
