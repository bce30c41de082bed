using System.Collections.Frozen;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="CatalogueWords"/>.</summary>
internal static class GermanBenchCatalogue
{
    internal static CatalogueWords Make() => new()
    {
        Open = "Aus dem Katalog",
        Heading = "Perlen zum Nehmen",
        Search = "Eine Perle suchen",
        From = "Woher",
        OfTheTrade = "übliche Sorten",
        OfMyPieces = "meine anderen Stücke",
        Hint = "Eine antippen. Ihr Blatt öffnet sich ausgefüllt: die eigene Farbe wählen, berichtigen, was abweicht, und hinzunehmen.",
        None = "Keine Perle heißt so.",
        More = "Und {more} weitere: mit einem anderen Wort suchen.",
        Name = "{kind} {label}",
        InPiece = "in „{piece}“",
        Close = "Katalog schließen",
        Kinds = new Dictionary<string, string>
        {
            ["round"] = "Kugel",
            ["rondelle"] = "Rondelle",
            ["faceted-rondelle"] = "Facettierte Rondelle",
            ["bicone"] = "Doppelkegel",
            ["cube"] = "Würfel",
            ["oval"] = "Olive",
            ["barrel"] = "Tönnchen",
            ["coin"] = "Münze",
            ["heishi"] = "Heishi",
            ["spacer-disc"] = "Zwischenscheibe",
            ["tube"] = "Röhrchen",
            ["curved-tube"] = "Gebogenes Röhrchen",
            ["chip"] = "Splitter",
            ["nugget"] = "Nugget",
            ["pressed-drop"] = "Gepresster Tropfen",
            ["seed-bead"] = "Rocaille",
            ["cylinder-seed"] = "Zylinderperle",
            ["bugle"] = "Stift",
        }.ToFrozenDictionary(),
        OtherWords = new Dictionary<string, string>
        {
            ["round"] = "Ball, Perle",
            ["rondelle"] = "Rad, Linse",
            ["faceted-rondelle"] = "geschliffen, Kristall, Linse",
            ["bicone"] = "Kristall, Raute",
            ["cube"] = "Quader, Block",
            ["oval"] = "Reis, oval",
            ["barrel"] = "Fass, Walze",
            ["coin"] = "Scheibe, flach",
            ["heishi"] = "Scheibe, Muschel",
            ["spacer-disc"] = "Ring, Metall, Spacer",
            ["tube"] = "Rohr, Verbinder",
            ["curved-tube"] = "Rohr, Bogen, Verbinder",
            ["chip"] = "Stein, Edelstein, Kies",
            ["nugget"] = "Stein, Kiesel, Edelstein",
            ["pressed-drop"] = "Träne, Briolette",
            ["seed-bead"] = "Saatperle, Indianerperle, Glas",
            ["cylinder-seed"] = "Glas, gerade Rocaille",
            ["bugle"] = "lange Rocaille, Glas, Bugle",
        }.ToFrozenDictionary(),
    };
}
