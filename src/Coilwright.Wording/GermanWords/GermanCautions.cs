namespace Coilwright.Wording.GermanWords;

/// <summary>German cautions.</summary>
internal static class GermanCautions
{
    internal static CautionWords Make() => new()
    {
        Cutters = "Memory-Draht nur mit einer Schere oder einem kräftigen Seitenschneider schneiden, die dafür gemacht sind. Feine Zangen ruiniert er.",
        FlyingPieces = "Beim Abschneiden beide Enden festhalten oder abdecken und eine Schutzbrille tragen: Abgeschnittene Stücke fliegen weg.",
        Springs = "Die Spirale nicht gerade ziehen. Sie schnellt zurück.",
        SharpEnds = "Scharfe Enden glatt feilen.",
        AdultCuts = "Wenn Kinder basteln, schneidet und biegt ein Erwachsener den Draht.",
        SmallParts = "Jede lose Perle ist ein Kleinteil: nicht für Kinder unter drei Jahren.",
        Metals = "Die Grenzwerte für Nickel, Blei und Cadmium in Metallen sind von Land zu Land verschieden. Nichts hier besagt, dass ein Stück sie einhält: "
            + "Es gelten die Vorschriften vor Ort, und was verkauft wird, gehört vorher in ein Prüflabor.",
    };
}
