using System.Collections.Frozen;
using Coilwright.Core.Making;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ErrataWords"/>.</summary>
internal static class EnglishErrata
{
    internal static ErrataWords Make() => new()
    {
        Verb = "Write what a pattern says otherwise than an earlier version of it, as a page to print and to send to those who have the old one.",
        OldPiece = "The piece file of the version that people have.",
        NewPiece = "The piece file of the version that is right.",
        Title = "Corrections: {title}",
        Lead = "What is wrong in the earlier version of this pattern, and what stands in the new one.",
        Renamed = "The earlier version is called {old}.",
        Nothing = "There is nothing to correct: both versions say the same.",
        MindFirst = "If you have begun",
        WireTooShort = "Wire cut by the earlier version is {mm:length} too short.",
        LetterMoved = "{letter} was {old}; it is {name} now.",
        Beads = "Beads",
        Figures = "Wire and sizes",
        Steps = "Steps",
        Checks = "Counts to check by",
        ChecksNote = "These steps are done as before. Because of what changed before them, there is more or less on the wire after each.",
        Settled = "Testers' notes that are dealt with",
        StepColumn = "Step",
        OldColumn = "Wrong",
        NewColumn = "Right",
        FigureColumn = "What",
        MovedNumber = "{old},\u00a0now\u00a0{new}",
        LeftOut = "left out",
        NotThere = "was missing",
        Check = "{beads} {beads:bead|beads}, {alongMm:length}",
        NoteBy = "{note} ({by})",
        Grams = "{grams} g",
        Loops = "{loops} {loops:loop|loops}",
        FigureNames = new Dictionary<PatternFigure, string>
        {
            [PatternFigure.WristMm] = "For a wrist of",
            [PatternFigure.CutMm] = "Wire to cut",
            [PatternFigure.LoopsToCut] = "That is, of the coil",
            [PatternFigure.BeadedMm] = "Beaded length, off the wrist",
            [PatternFigure.TurnsWorn] = "Turns, worn",
            [PatternFigure.InsideMm] = "Round on the inside, off the wrist",
            [PatternFigure.EndsOverlapMm] = "Ends",
            [PatternFigure.MassG] = "Weight",
        }.ToFrozenDictionary(),
    };
}
