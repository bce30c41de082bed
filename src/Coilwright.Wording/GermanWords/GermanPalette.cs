using System.Collections.Frozen;
using Coilwright.Core.Palettes;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PaletteWords"/>.</summary>
internal static class GermanPalette
{
    internal static PaletteWords Make() => new()
    {
        Verb = "Die Farben eines Stücks ansehen: welche Perlen nebeneinander verschwinden, für alle Augen, für farbenblinde Augen und im Druck in Grautönen.",
        Heading = "Farbpalette",
        Lead = "Welche Perlen sich in der Farbe unterscheiden, wo sie nebeneinanderliegen, auf dem Draht und auf benachbarten Windungen. Größe und Form können sie trotzdem unterscheiden.",
        For = "Die Farben von {title}",
        Sights = new Dictionary<Sight, string>
        {
            [Sight.Full] = "Für die meisten Augen",
            [Sight.Protan] = "Für ein rotblindes Auge (Protanopie)",
            [Sight.Deutan] = "Für ein grünblindes Auge (Deuteranopie)",
            [Sight.Tritan] = "Für ein blaublindes Auge (Tritanopie)",
            [Sight.Grey] = "In Grautönen gedruckt",
        }.ToFrozenDictionary(),
        Explained = new Dictionary<Sight, string>
        {
            [Sight.Full] = "Wie die Farben aufgeschrieben sind.",
            [Sight.Protan] = "Etwa einer von hundert Männern. Rot ist dunkel und kommt Braun und Grün nahe.",
            [Sight.Deutan] = "Etwa einer von hundert Männern, und fünf weitere in milderer Form. Rot, Grün und Braun kommen einander nahe.",
            [Sight.Tritan] = "Selten, bei Frauen so oft wie bei Männern. Blau kommt Grün nahe, Gelb kommt Grau und Rosa nahe.",
            [Sight.Grey] = "Wie ein Blatt in Grautönen sie zeigt, und wie sie in schwachem Licht sind.",
        }.ToFrozenDictionary(),
        AllApart = "Jede Perle hebt sich von ihren Nachbarn ab.",
        NothingMore = "Es geht nichts verloren, was andere sehen.",
        NoneBeside = "Nirgends liegen zwei Farben nebeneinander.",
        Vanishes = "{one} und {other} verschwinden nebeneinander: {where} (Unterschied {difference}).",
        Unsure = "{one} und {other} verschwinden vielleicht nebeneinander: {where} (Unterschied {least} bis {most}, je nach Nachbildung).",
        Along = "an {places} {places:Stelle|Stellen} auf dem Draht",
        Across = "{mm} auf benachbarten Windungen",
        Kind = "{letter} {name}",
        WithoutColour = "{name} hat keine aufgeschriebene Farbe und bleibt außen vor.",
        AlongMean = "Auf dem Draht unterscheidet sich eine Farbe von der nächsten im Mittel um {difference}; 0 ist gleich, 100 ist Schwarz auf Weiß.",
        AcrossMean = "Von Windung zu Windung sind es {difference}.",
        WhatToDo = "Damit sie sich unterscheiden: eine von beiden heller oder dunkler wählen, das sieht jedes Auge und zeigt jeder Druck; oder eine dritte Perle dazwischensetzen.",
        KindsHeading = "Perlen und ihre Farben",
        Letter = "Kürzel",
        Bead = "Perle",
        Colours = "Farben",
        Lightness = "Helligkeit",
        SourcesHeading = "Wie das berechnet wird",
        Sources = "Unterschiede sind CIEDE2000; unter {vanish} verschwindet eine Perle neben einer anderen. In Grautönen zählt die Helligkeit, 0 bis 100, und die Grenze ist {grey}. Beide Grenzen sind unsere Wahl. Was farbenblinde Augen sehen, ist nachgebildet nach Brettel, Viénot und Mollon (1997), Viénot, Brettel und Mollon (1999; Rot und Grün) und Machado, Oliveira und Fernandes (2009); Bilder nach der ersten. Eine Perle mit mehreren Farben zählt als deren Mittel. Eine Bildschirmfarbe ist keine Perle: vor der Entscheidung nebeneinanderhalten.",
    };
}
