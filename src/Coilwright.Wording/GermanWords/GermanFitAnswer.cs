namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="FitAnswerWords"/>.</summary>
internal static class GermanFitAnswer
{
    internal static FitAnswerWords Make() => new()
    {
        Heading = "Passt es mir?",
        For = "Für ein Handgelenk von {wristMm:exact}:",
        Yes = "Ja, es passt.",
        FewerTurns = "Es lässt sich tragen, macht aber etwa {turns} {turns:Windung|Windungen} statt {designed}.",
        MoreTurns = "Es lässt sich tragen; es macht etwa {turns} {turns:Windung|Windungen}, mehr als die {designed}, für die es gemacht ist.",
        HangsLoose = "Nein: Es würde locker hängen, mit {roomMm:length} Luft rund um das Handgelenk.",
        UnderOneTurn = "Nein: Es reicht nicht einmal um das Handgelenk. Die Perlen bedecken {turns} einer Windung.",
        EndsTooFar = "Es lässt sich tragen, aber die Enden liegen {mm:length} weiter auseinander, als sie sollen.",
        NotAsItIs = "Nein: So lässt es sich nicht machen oder tragen ({reasons}).",
        Turns = "An Ihnen macht es etwa {turns} {turns:Windung|Windungen}: zwischen {from} und {to}, denn kein Handgelenk ist auf den Millimeter bekannt.",
        EndsMeet = "Die beiden Enden treffen sich.",
        EndsOverlap = "Die beiden Enden liegen {mm:length} übereinander.",
        EndsApart = "Zwischen den beiden Enden bleiben {mm:length} offen.",
        Focal = "Der Blickfang ({bead}) sitzt {angleDeg:place}.",
        FocalBand = "An einem etwas kleineren oder größeren Handgelenk: von {fromDeg:place} bis {toDeg:place}.",
        LinesUp = "Gleiche Perlen liegen von Windung zu Windung übereinander.",
        Between = "Manche gleichen Perlen liegen von Windung zu Windung übereinander.",
        Mixed = "Gleiche Perlen liegen von Windung zu Windung gemischt.",
        NearBorder = "Das liegt nahe an der Grenze: Für ein {bandMm:length} kleineres oder größeres Handgelenk kann die Antwort anders lauten. Bitte vor dem Bestellen noch einmal messen.",
        OrderMore = "Bitte für Ihr Handgelenk von {wristMm:exact} machen lassen: Mit etwa {mm:size} Perlen mehr macht es seine {designed} {designed:Windung|Windungen}.",
        OrderLess = "Bitte für Ihr Handgelenk von {wristMm:exact} machen lassen: Mit etwa {mm:size} Perlen weniger macht es seine {designed} {designed:Windung|Windungen}.",
        OrderSmallerCoil = "Bitte für Ihr Handgelenk von {wristMm:exact} machen lassen, auf kleiner gewundenem Draht.",
    };
}
