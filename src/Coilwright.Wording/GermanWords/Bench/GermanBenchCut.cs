namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CutPageWords"/>.</summary>
internal static class GermanBenchCut
{
    internal static CutPageWords Make() => new()
    {
        Heading = "Draht",
        Lead = "Wähle, was du machen möchtest. Der vorhandene Draht wird so geplant, dass so wenig neuer wie möglich angefangen wird, Reste zuerst.",
        WireHeading = "Vorhandener Draht",
        NoWire = "Noch keiner ist notiert.",
        LotSays = "{mm:length}, {loops} Ringe, Draht von {wireMm:fine}{?offcut:, Rest}{?count:, {count} davon}{?any:, so viele wie nötig}{?price:, je {price}}",
        TakeOut = "Herausnehmen",
        Add = "Mehr Draht notieren",
        WireOf = "Der Draht von",
        What = "Was es ist",
        Packs = "Neu, in Packungen",
        Offcut = "Ein Rest",
        Loops = "Ringe in einer Packung",
        Length = "Länge",
        Price = "Preis einer Packung, falls bekannt",
        HowManyPacks = "Wie viele Packungen; leer für so viele wie nötig",
        HowManyOffcuts = "Wie viele von dieser Länge; leer für einen",
        AddIt = "Notieren",
        OffcutOf = "Rest von {title}",
        PacksFor = "Packungen zu {loops} Ringen, wie für {title}",
        Bring = "Oder eine Drahtdatei übernehmen",
        Unreadable = "Die aufbewahrte Drahtliste ist nicht lesbar.",
        Planning = "Die besten Schnitte werden gesucht …",
        ItIsCut = "Es ist geschnitten: notieren, was übrig ist",
        ItIsCutHint = "Lange genug gebliebene Reste werden aufgehoben, angefangene Packungen sind weg.",
        Done = "Der Draht, der übrig ist, ist notiert.",
    };
}
