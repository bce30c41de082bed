using System.Collections.Frozen;
using Coilwright.Core.Alignment;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ReadingsWords"/>.</summary>
internal static class GermanBenchReadings
{
    internal static ReadingsWords Make() => new()
    {
        Heading = "Ergebnisse",
        Beads = "Perlen",
        Length = "Auf dem Draht",
        Turns = "Windungen",
        Fit = "Sitz",
        FitYes = "passt",
        FitNo = "passt nicht",
        Focal = "Blickfang",
        FocalAt = "{angleDeg:place}",
        LiningUp = "Übereinander",
        LiningUpWords = new Dictionary<LiningUpWord, string>
        {
            [LiningUpWord.LinesUp] = "gleich über gleich",
            [LiningUpWord.Between] = "teils, teils",
            [LiningUpWord.Mixed] = "gemischt",
            [LiningUpWord.TooLittle] = "zu wenig für ein Urteil",
        }.ToFrozenDictionary(),
        Weight = "Gewicht",
        Grams = "{grams} g",
        Cut = "Draht abschneiden",
        NotKnown = "nicht bekannt",
        ShowMe = "Zeigen",
        BeadsOfThePiece = "Perlen des Stücks",
        ShowKind = "Alle {name} auswählen",
        Use = "{count} Stück",
        Sizes = "{alongMm:mm} längs zum Loch, {acrossMm:mm} quer dazu",
        Cautions = "Vorsicht",
    };
}
