using Coilwright.Core.Faults;

namespace Coilwright.Wording.GermanWords;

/// <summary>German sentences of edits that cannot be done, and of what is lost beside one.</summary>
internal static class GermanEdits
{
    internal static IEnumerable<KeyValuePair<string, FaultSentence>> Make() => new Dictionary<string, FaultSentence>(StringComparer.Ordinal)
    {
        [FaultCodes.EditNoSuchBead] = new("Es gibt keine Perle {value}: Die Reihenfolge hat {beads} {beads:Perle|Perlen}.",
            "Gezählt wird vom Anfang an, ab 1.", "Die Reihen noch einmal ansehen: Die Reihenfolge kann sich geändert haben."),
        [FaultCodes.EditNothingChosen] = new("Nichts ist gewählt.", "Es braucht wenigstens eine Perle.", "Eine Perle oder eine Gruppe antippen."),
        [FaultCodes.EditTooFew] = new("Nur {value} {value:Perle ist|Perlen sind} gewählt.", "Wenigstens {least} {least:wird|werden} gebraucht.", "Mehr Perlen wählen."),
        [FaultCodes.EditNotTogether] = new("Zwischen den gewählten Perlen stehen andere.", "Sie müssen auf dem Draht Nachbarn sein.",
            "Eine Reihe von Perlen ohne Lücke wählen."),
        [FaultCodes.EditCutsGroup] = new("Von der Gruppe „{group}“ ist nur ein Teil gewählt.",
            "Eine Gruppe steht ganz in einer anderen oder ganz außerhalb.", "„{group}“ ganz oder gar nicht wählen."),
        [FaultCodes.EditNoGroup] = new("Diese Perlen stehen in keiner gemeinsamen Gruppe.", "Nur eine Gruppe lässt sich auflösen.", "Perlen einer Gruppe wählen."),
        [FaultCodes.EditGroupDiffers] = new("Eine Gruppe „{value}“ gibt es schon, und sie hat andere Perlen.",
            "Der Name einer Gruppe steht überall für dieselben Perlen.", "Einen anderen Namen wählen."),
        [FaultCodes.EditNotStrung] = new("Dieser Teil der Reihenfolge fädelt keine Perle auf.", "Was geändert wird, muss auf dem Draht sein.",
            "Erst auffädeln, oder den Text der Reihenfolge ändern."),
        [FaultCodes.EditChangesNothing] = new("Das würde nichts ändern.", "Es ist schon so.", ""),
        [FaultCodes.EditNothingLeft] = new("Danach wäre keine Perle mehr auf dem Draht.", "Eine Reihenfolge hat wenigstens eine Perle.",
            "Eine behalten, oder erst die neuen Perlen auffädeln."),
        [FaultCodes.EditNotWritten] = new("Der Text der Reihenfolge kann das an dieser Stelle nicht sagen.",
            "Eine Reihenfolge wird mit Anzahlen, Klammern, Gruppen und Spiegelungen geschrieben.", "Den Text an dieser Stelle selbst ändern."),
        [FaultCodes.EditBeadUnknown] = new("Das Stück hat keine Perle „{value}“.", "Es muss eine der Perlen des Stücks sein.",
            "{?nearest:War „{nearest}“ gemeint?}"),
        [FaultCodes.EditBeadInUse] = new("Die Perle „{value}“ ist {times} {times:Mal|Mal} aufgefädelt.",
            "Nur eine Perle, die in der Reihenfolge nicht vorkommt, lässt sich aus dem Stück nehmen.", "Erst vom Draht nehmen, oder überall ersetzen."),
        [FaultCodes.EditBeadInGroup] = new("Die Perle „{value}“ kommt in der Reihenfolge{?group:, in der Gruppe „{group}“,} noch vor, obwohl sie nicht aufgefädelt ist.",
            "Nur eine Perle, die in der Reihenfolge nicht vorkommt, lässt sich aus dem Stück nehmen.",
            "Den Namen aus dem Text der Reihenfolge nehmen, oder überall ersetzen."),
        [FaultCodes.EditNoSuchRow] = new("Es gibt keine gemessene Reihe {value}.", "Gemessene Reihen werden ab 1 gezählt.", ""),
        [FaultCodes.EditRowLost] = new("Die Reihe, die über die Perlen {first} bis {last} mit {total} mm gemessen wurde, zählt nicht mehr.",
            "Eine gemessene Reihe gilt für eben die Perlen, die dort liegen.", "Neu messen, sobald die Perlen auf dem Draht sind."),
    };
}
