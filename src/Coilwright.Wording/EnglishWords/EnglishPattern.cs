using System.Collections.Frozen;
using Coilwright.Core.Making;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English words of the written pattern.</summary>
internal static class EnglishPattern
{
    internal static PatternWords Make() => new()
    {
        SoFar = "{beads} {beads:bead|beads} so far, {alongMm:length} along the wire.",
        InAll = "{beads} {beads:bead|beads} in all, {alongMm:length} along the wire.",
        Foot = "{title}, pattern",
        By = "Designed by {by}",
        CoverPhoto = "{title}, the finished piece",
        CoverStill = "{title}, drawn in space from its stringing order",
        CoverAlt = "Picture of {title}: {beads} {beads:bead|beads}, {turns} {turns:turn|turns}.",
        AtAGlance = "At a glance",
        Level = "Level",
        Levels = new Dictionary<PatternLevel, string>
        {
            [PatternLevel.Beginner] = "for a first piece",
            [PatternLevel.Intermediate] = "for someone who has strung a few",
            [PatternLevel.Advanced] = "for practised hands",
        }.ToFrozenDictionary(),
        Time = "Time",
        TimeIs = "about{?hours: {hours} h}{?minutes: {minutes} min}",
        Techniques = "What you need to know",
        FiguresNote = "Each figure shows a step’s new beads in full and those before them pale; string from left to right, the way the arrow points. The little coil is the piece "
            + "seen from its starting end, which the dot marks: the thick line is where you are.",
        Figure = "Figure {number}",
        SeeFigure = "(Figure {number})",
        FigureAlt = "Beads {first} to {last} in full{?before:, after {before} that are strung already}.",
        Top = "top",
        Colourways = "Colourways",
        ColourwaysNote = "The same order in other colours. Letters and steps stay as they are.",
        Colourway = "Colourway",
        Care = "Care",
        Usage = "What you may do with this pattern",
        Slips = new Dictionary<ProofSlip, string>
        {
            [ProofSlip.LetterUnknown] = "“{said}”: the piece has no bead of that letter. Its letters are {known}.",
            [ProofSlip.LetterElsewhere] = "“{said}”: no such bead is strung in this step{?known:; it strings {known}}.",
            [ProofSlip.LetterMissing] = "This step strings {said} too, and the words do not name it.",
            [ProofSlip.CountDiffers] = "“{said}”: the piece has {known} here.",
            [ProofSlip.OrderDiffers] = "“{said}” stands where {known} is strung: the order is another.",
            [ProofSlip.LengthUnknown] = "“{said}”: nothing that belongs here is that long.",
            [ProofSlip.LengthsDisagree] = "“{said}”: the two are not the same length.",
            [ProofSlip.MassUnknown] = "“{said}”: nothing of the piece weighs that much.",
            [ProofSlip.NumberUnknown] = "“{said}”: the piece has no such number here.",
            [ProofSlip.Promise] = "“{said}” is for a testing laboratory to say, not for a pattern.",
            [ProofSlip.WrittenForOther] = "Written when this step strung {said}. Now it strings {known}.",
            [ProofSlip.StepGone] = "The step that these words were written for is gone{?said:; it strung {said}}. They are kept.",
        }.ToFrozenDictionary(),
        Proof = new ProofLanguage
        {
            DecimalSign = '.',
            NumberWords = new Dictionary<string, int>
            {
                ["two"] = 2,
                ["three"] = 3,
                ["four"] = 4,
                ["five"] = 5,
                ["six"] = 6,
                ["seven"] = 7,
                ["eight"] = 8,
                ["nine"] = 9,
                ["ten"] = 10,
                ["eleven"] = 11,
                ["twelve"] = 12,
                ["twice"] = 2,
            }.ToFrozenDictionary(),
            LengthUnits = new Dictionary<string, double>
            {
                ["mm"] = 1,
                ["millimetre"] = 1,
                ["millimetres"] = 1,
                ["cm"] = 10,
                ["centimetre"] = 10,
                ["centimetres"] = 10,
                ["in"] = InchFraction.MmPerInch,
                ["inch"] = InchFraction.MmPerInch,
                ["inches"] = InchFraction.MmPerInch,
                ["\""] = InchFraction.MmPerInch,
                ["″"] = InchFraction.MmPerInch,
            }.ToFrozenDictionary(),
            MassUnits = new Dictionary<string, double> { ["g"] = 1, ["gram"] = 1, ["grams"] = 1, ["oz"] = Ounce.Grams, ["ounce"] = Ounce.Grams, ["ounces"] = Ounce.Grams }.ToFrozenDictionary(),
            BetweenMeasures = FrozenSet.Create("×", "x", "-", "–", "to"),
            UnitsThatAreWords = FrozenSet.Create("in"),
            LetterWords = FrozenSet.Create("A", "I"),
            Promises = ["nickel-free", "nickel free", "lead-free", "lead free", "cadmium-free", "hypoallergenic", "child-safe", "child safe", "safe for children", "certified"],
        },
    };
}
