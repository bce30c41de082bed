using System.Collections.Frozen;
using Coilwright.Core.Making;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Wording.GermanWords;

/// <summary>German words of the written pattern.</summary>
internal static class GermanPattern
{
    internal static PatternWords Make() => new()
    {
        SoFar = "Bis hier {beads} {beads:Perle|Perlen}, {alongMm:length} am Draht entlang.",
        InAll = "Insgesamt {beads} {beads:Perle|Perlen}, {alongMm:length} am Draht entlang.",
        Foot = "{title}, Anleitung",
        By = "Entworfen von {by}",
        CoverPhoto = "{title}, das fertige Stück",
        CoverStill = "{title}, aus der Fädelfolge räumlich gezeichnet",
        CoverAlt = "Bild von {title}: {beads} {beads:Perle|Perlen}, {turns} {turns:Windung|Windungen}.",
        AtAGlance = "Auf einen Blick",
        Level = "Schwierigkeit",
        Levels = new Dictionary<PatternLevel, string>
        {
            [PatternLevel.Beginner] = "für ein erstes Stück",
            [PatternLevel.Intermediate] = "mit etwas Übung",
            [PatternLevel.Advanced] = "für geübte Hände",
        }.ToFrozenDictionary(),
        Time = "Zeit",
        TimeIs = "etwa{?hours: {hours} Std.}{?minutes: {minutes} Min.}",
        Techniques = "Was man können sollte",
        FiguresNote = "Jede Abbildung zeigt die neuen Perlen eines Schritts voll und die davor blass; aufgefädelt wird von links nach rechts, wie der Pfeil zeigt. Die kleine Spirale ist das Stück, "
            + "von seinem Anfang her gesehen, den der Punkt markiert: Die dicke Linie ist die Stelle, an der man ist.",
        Figure = "Abbildung {number}",
        SeeFigure = "(Abbildung {number})",
        FigureAlt = "Perlen {first} bis {last} voll gezeichnet{?before:, nach {before} schon aufgefädelten}.",
        Top = "oben",
        Colourways = "Farbvarianten",
        ColourwaysNote = "Dieselbe Reihenfolge in anderen Farben. Buchstaben und Schritte bleiben, wie sie sind.",
        Colourway = "Variante",
        Care = "Pflege",
        Usage = "Was mit dieser Anleitung erlaubt ist",
        Slips = new Dictionary<ProofSlip, string>
        {
            [ProofSlip.LetterUnknown] = "„{said}“: Das Stück hat keine Perle mit diesem Buchstaben. Seine Buchstaben sind {known}.",
            [ProofSlip.LetterElsewhere] = "„{said}“: Diese Perle wird in diesem Schritt nicht aufgefädelt{?known:, sondern {known}}.",
            [ProofSlip.LetterMissing] = "Dieser Schritt fädelt auch {said} auf; der Text nennt sie nicht.",
            [ProofSlip.CountDiffers] = "„{said}“: Das Stück hat hier {known}.",
            [ProofSlip.OrderDiffers] = "„{said}“ steht, wo {known} aufgefädelt wird: Die Reihenfolge ist eine andere.",
            [ProofSlip.LengthUnknown] = "„{said}“: Nichts, was hierher gehört, ist so lang.",
            [ProofSlip.LengthsDisagree] = "„{said}“: Die beiden Längen sind nicht gleich.",
            [ProofSlip.MassUnknown] = "„{said}“: Nichts an dem Stück wiegt so viel.",
            [ProofSlip.NumberUnknown] = "„{said}“: Das Stück hat hier keine solche Zahl.",
            [ProofSlip.Promise] = "„{said}“ kann nur ein Prüflabor sagen, keine Anleitung.",
            [ProofSlip.WrittenForOther] = "Geschrieben, als dieser Schritt {said} auffädelte. Jetzt ist es {known}.",
            [ProofSlip.StepGone] = "Den Schritt, für den dieser Text geschrieben wurde, gibt es nicht mehr{?said:; er fädelte {said} auf}. Der Text bleibt aufgehoben.",
        }.ToFrozenDictionary(),
        Proof = new ProofLanguage
        {
            DecimalSign = ',',
            NumberWords = new Dictionary<string, int>
            {
                ["zwei"] = 2,
                ["drei"] = 3,
                ["vier"] = 4,
                ["fünf"] = 5,
                ["sechs"] = 6,
                ["sieben"] = 7,
                ["acht"] = 8,
                ["neun"] = 9,
                ["zehn"] = 10,
                ["elf"] = 11,
                ["zwölf"] = 12,
                ["zweimal"] = 2,
                ["dreimal"] = 3,
            }.ToFrozenDictionary(),
            LengthUnits = new Dictionary<string, double>
            {
                ["mm"] = 1,
                ["Millimeter"] = 1,
                ["cm"] = 10,
                ["Zentimeter"] = 10,
                ["in"] = InchFraction.MmPerInch,
                ["Zoll"] = InchFraction.MmPerInch,
                ["\""] = InchFraction.MmPerInch,
                ["″"] = InchFraction.MmPerInch,
            }.ToFrozenDictionary(),
            MassUnits = new Dictionary<string, double> { ["g"] = 1, ["Gramm"] = 1, ["oz"] = Ounce.Grams, ["Unze"] = Ounce.Grams, ["Unzen"] = Ounce.Grams }.ToFrozenDictionary(),
            BetweenMeasures = FrozenSet.Create("×", "x", "-", "–", "bis", "mal"),
            UnitsThatAreWords = FrozenSet.Create("in"),
            LetterWords = FrozenSet<string>.Empty,
            Promises = ["nickelfrei", "bleifrei", "cadmiumfrei", "hypoallergen", "kindersicher", "für kinder geeignet", "zertifiziert", "geprüft"],
        },
    };
}
