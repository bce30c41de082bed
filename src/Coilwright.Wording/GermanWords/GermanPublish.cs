using System.Collections.Frozen;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PublishWords"/>.</summary>
internal static class GermanPublish
{
    internal static PublishWords Make() => new()
    {
        Verb = "Alles zum Verkaufen einer Anleitung in eine Zip-Datei legen: ihre Blätter als PDF und Webseite, Bilder, ein Modell zum Drehen, eine Karte der Kürzel, das Material als Tabelle, ein Angebot und eine Liste von allem.",
        OutOption = "Die Zip-Datei, die geschrieben wird. Eine Datei mit diesem Namen wird ersetzt.",
        PixelsOption = "Eine Größe der Bilder, Breite x Höhe in Pixeln; darf mehrmals stehen. Ohne Angabe: {usual}.",
        WhiteOption = "Die Bilder auf Weiß zeichnen statt auf warmem Papier.",
        ExamplePack = "mein-armband.zip",
        Written = "Geschrieben: {file}, mit {files} {files:Datei|Dateien}",
        OnPaper = "{name}, zum Drucken auf {paper}{?large:, in Großdruck}.",
        OnScreen = "{name}, als Webseite, die für sich steht.",
        Letter = "US-Letter",
        Documents = new Dictionary<string, string> { ["sheet"] = "Das Anleitungsblatt", ["pattern"] = "Die ausführliche Anleitung" }.ToFrozenDictionary(StringComparer.Ordinal),
        Materials = "Was hineinkommt und was zu kaufen ist, als Tabelle.",
        Model = "Das getragene Stück als Modell im Raum, das sich drehen lässt (glTF 2.0, Meter, +Y oben).",
        ModelSettled = "Das Stück, wie es am Handgelenk sitzt, als Modell im Raum, das sich drehen lässt (glTF 2.0, Meter, +Y oben).",
        ListingText = "Der Text zum Verkaufen.",
        SaveAsItSits = "Das Modell, wie es am Handgelenk sitzt",
        Save = "Paket zum Verkaufen speichern",
        SaveNote = "Eine Zip-Datei: Blätter, Bilder, ein Modell zum Drehen, Karte der Kürzel, Material, Angebot.",
    };
}
