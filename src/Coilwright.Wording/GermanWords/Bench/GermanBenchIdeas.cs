namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="IdeasPageWords"/>.</summary>
internal static class GermanBenchIdeas
{
    internal static IdeasPageWords Make() => new()
    {
        Lead = "Liegen gleiche Perlen übereinander, hilft oft eine Zwischenperle mehr hier und eine weniger dort. Zuerst wird die kleinste Änderung gesucht; die Gruppen bleiben, wie sie sind, wenn das Stück sie nicht die Plätze tauschen lässt.",
        Look = "Vorschläge suchen",
        LookAgain = "Noch einmal suchen",
        LookLonger = "Länger suchen",
        Looking = "Es wird gesucht. Die Arbeit kann weitergehen; was gefunden wird, wartet hier.",
        TooManyWait = "Es ist schon so viel in Arbeit, dass dies nicht auch noch warten kann. Erst etwas wegräumen.",
        Earlier = "Das Stück wurde seitdem geändert. Noch einmal suchen, um Vorschläge für den jetzigen Stand zu haben.",
        AsItIs = "So wie aufgefädelt",
        StringIt = "So auffädeln",
        CanBeTakenBack = "Das lässt sich auf der Werkbank zurücknehmen wie jeder Schritt.",
        NotKept = "Das konnte nicht aufgehoben werden.",
        Details = "Einzelheiten",
        Job = "Vorschläge für „{title}“",
        LookingFor = "wird gesucht, {elapsed}",
        SoFar = "Bisher am besten: {against:percent} gegen den Wunsch.",
        See = "Die Vorschläge ansehen",
    };
}
