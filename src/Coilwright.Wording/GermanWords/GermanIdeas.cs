namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="IdeaWords"/>.</summary>
internal static class GermanIdeas
{
    internal static IdeaWords Make() => new()
    {
        Heading = "Vorschläge",
        Now = "So wie aufgefädelt liegen {against:percent} der Länge aller Gruppen gegen den Wunsch, im Mittel über {wrists} {wrists:Handgelenk|Handgelenke}.",
        NowFails = "Der Wunsch geht nicht auf bei {wrists}.",
        NowHolds = "Der Wunsch geht bei jedem davon auf.",
        SmallestCure = "Die kleinste Änderung, die hilft",
        FewBeads = "Das Beste, was bis zu drei Perlen können",
        Best = "Das Beste, was gefunden wurde",
        More = "{by} mehr: {bead}, dann {to}, {where}",
        Fewer = "{by} weniger: {bead}, dann {to}, {where}",
        Where = "{?before:nach {before} }({?last:Perlen {first} bis {last}}{?one:Perle {one}}){?after: vor {after}}",
        Brings = "Was gegen den Wunsch liegt, geht von {before:percent} auf {after:percent}.",
        Holds = "Der Wunsch geht dann bei jedem geprüften Handgelenk auf.",
        Fails = "Der Wunsch geht dann nicht auf bei {wrists}.",
        Longer = "Die Perlen brauchen {mm:size} mehr Draht.",
        Shorter = "Die Perlen brauchen {mm:size} weniger Draht.",
        SameLength = "Die Perlen brauchen so viel Draht wie zuvor.",
        Cut = "Abzuschneiden: {after:cut} Draht, bisher {before:cut}.",
        Focal = "Der Blickfang liegt dann in Windung {turn}, {angleDeg:place}.",
        NoSmaller = "Jede kleinere Änderung wurde probiert: keine hilft bei allen Handgelenken.",
        PerhapsSmaller = "Nicht jede kleinere Änderung konnte probiert werden; vielleicht genügt eine davon.",
        NoBetter = "Keine andere erlaubte Anzahl ist besser.",
        PerhapsAnother = "Nicht jede Änderung von bis zu drei Perlen konnte geprüft werden; eine andere ist vielleicht besser.",
        NoBetterFew = "Keine andere Änderung von bis zu drei Perlen ist besser.",
        PerhapsBetter = "Das Beste, was es gibt, kann um höchstens {gap:percent} besser sein.",
        Ways = "{gaps} {gaps:Reihe|Reihen} von Zwischen- und Verbindungsperlen dürfen sich ändern, auf {ways} Arten.",
        Stopped = "Die Suche wurde vor dem Ende angehalten.",
        NoWish = "Für das Stück ist nicht gewünscht, was sich decken soll; so ist keine Reihenfolge besser als eine andere. Erst „gemischt“ oder „in Säulen“ wünschen, dann noch einmal suchen.",
        NoGap = "Zwischen den Gruppen steht keine Reihe von Zwischen- oder Verbindungsperlen, die sich ändern darf. Einer Perle diese Rolle geben, oder sie bei den Wünschen freigeben.",
        NoneAllowed = "Keine Reihenfolge ist erlaubt. Was sich nicht zusammen einhalten lässt: {rules}.",
        RuleLength = "die Länge des Stücks",
        RuleOnHand = "der Vorrat an {bead}",
        And = " und ",
        NoneBetter = "Keine erlaubte Änderung ist besser als das Aufgefädelte.",
        Written = "Das Beste steht in {file}.",
        NotWritten = "{file} wurde nicht geschrieben: es gibt nichts Besseres.",
    };
}
