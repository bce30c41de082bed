using System.Collections.Frozen;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="PriceWords"/>.</summary>
internal static class GermanPrice
{
    internal static PriceWords Make() => new()
    {
        Verb = "Ausrechnen, was ein Stück kostet, Zeile für Zeile, und was die eigenen Regeln dafür verlangen: von Läden, von Käufern, in Kommission, als Bausatz, als Anleitung.",
        CostsOption = "Was die Arbeit kostet und wie die Preise werden, wie meine-werkstatt.costs.json. Ohne: nur die Perlen.",
        PricesOption = "Wer was in welchen Packungen zu welchem Preis verkauft; jede Perle wird zum billigsten gerechnet. Ohne: Packung und Preis, die bei jeder Perle stehen.",
        CountOption = "Wie viele zusammen gemacht werden: Schritte für alle auf einmal werden dadurch geteilt, und Perlen kosten, was so viele kosten. Ohne: 1.",
        AtOption = "Auch einen anderen Preis ansehen: was er nach jeder Regel übrig lässt.",
        ShelfOption = "Der Ordner, in dem die Werkbank ihre Stücke aufbewahrt: Perlen, von denen genug im Vorrat ist, kosten, was jene gekostet haben, die anderen, was die Preise sagen.",
        LotsOption = "Wie gerechnet wird, was jene im Vorrat gekostet haben: average oder first-in. Ohne: average.",
        ExampleCosts = "meine-werkstatt.costs.json",
        Title = "Was es kostet, und was zu verlangen ist",
        For = "Für ein {name}{?count:, {count} zusammen gemacht}.",
        NoWage = "Kein Lohn ist genannt, also ist Arbeit für nichts gerechnet.",
        NoSteps = "Kein Arbeitsschritt hat eine Zeit, also ist keine Arbeit darin.",
        NoWaste = "Kein Verschnitt ist genannt: Eine Perle, die zerbricht, ist nicht darin.",
        NoWire = "Kein Preis für Draht ist genannt, also ist der Draht nicht darin.",
        NoOverhead = "Keine laufenden Kosten sind genannt, also sind keine darin.",
        Unpriced = "{count} {count:Sache hat|Sachen haben} keinen Preis und {count:ist|sind} für nichts gerechnet: {names}.",
        PieceHeading = "Was eines kostet",
        KitHeading = "Was ein Bausatz davon kostet",
        PatternHeading = "Was die Anleitung dazu kostet",
        Caps = "Kappen zum Kleben",
        PartOfPacks = "{count}, zu {price} für {holds}{?supplier: bei {supplier}}",
        PartOfStock = "{count} aus dem Vorrat, zu {value} für die {there} dort{?first: (zuerst gekommen, zuerst gegangen)}{?average: (im Durchschnitt)}",
        WithoutPrice = "{count}, ohne Preis",
        InHundred = "{percent}\u00a0% von {of}",
        LengthOfPack = "{cut} von {pack} zu {price}",
        SharedBy = "{price} für {pieces}",
        ByTheHour = "{minutes} Minuten zu {wage} je Stunde{?batch: ({batch} auf einmal)}",
        WithoutWage = "{minutes} Minuten, ohne Lohn",
        AskHeading = "Was zu verlangen ist",
        AtHeading = "Was {price} übrig ließe",
        NoRules = "Keine Regel sagt, was zu verlangen ist. Regeln stehen in einer Datei der Kosten, nach --costs.",
        RuleColumn = "Regel",
        PriceColumn = "Preis",
        LeftColumn = "nach Gebühren",
        GainColumn = "Gewinn",
        MarginColumn = "vom Preis",
        HourColumn = "je Stunde",
        NoRule = "ohne Gebühren",
        Worked = "{rule}: „{formula}“{?uses: mit {uses}} ergibt {worked}{?price:, aufgerundet {price}}.",
        Fees = "Davon behalten: {fees}.",
        FeeOf = "{name} {amount}",
        BreakEven = "Die {outlay}, die einmal bezahlt wurden, sind nach {count} verkauften wieder da.",
        Loses = "„{rule}“ verliert an jedem {loss}. Ab {least} geht nichts verloren.",
        Hour = "Je Stunde heißt: was für eine Stunde Arbeit übrig bleibt, wenn alles andere bezahlt ist.",
        Rounding = "Gerundet werden nur Preise, nach oben; alles andere ist auf Cent gezeigt. Eine Perle kostet ihren Teil einer Packung. Dies ist kein Rat zu Steuern.",
        Figures = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["beads"] = "Perlen",
            ["waste"] = "Verschnitt",
            ["findings"] = "Zubehör",
            ["wire"] = "Draht",
            ["packaging"] = "Verpackung",
            ["materials"] = "Material",
            ["labour"] = "Arbeit",
            ["overhead"] = "laufende Kosten",
            ["cost"] = "Kosten",
        }.ToFrozenDictionary(StringComparer.Ordinal),
    };
}
