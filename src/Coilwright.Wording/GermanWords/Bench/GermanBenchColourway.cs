namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ColourwayWords"/>.</summary>
internal static class GermanBenchColourway
{
    internal static ColourwayWords Make() => new()
    {
        Open = "In anderen Farben",
        Heading = "Dasselbe Stück in anderen Farben",
        Hint = "Perle für Perle bleibt die Fädelfolge; das neue Stück kommt neben dieses. Chargen, gemessene Reihen und der abgeschnittene Draht gehören zu diesen Perlen und kommen nicht mit.",
        Before = "jetzt",
        After = "dann",
        ColourOf = "Farbe {?number:{number} }von {name}",
        Rows = "Die Reihen in den neuen Farben",
        Title = "Titel des neuen Stücks",
        TitleOf = "{title}, in anderen Farben",
        Make = "Das neue Stück anlegen",
        Leave = "Lassen",
    };
}
