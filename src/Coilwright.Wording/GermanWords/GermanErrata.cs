using System.Collections.Frozen;
using Coilwright.Core.Making;

namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ErrataWords"/>.</summary>
internal static class GermanErrata
{
    internal static ErrataWords Make() => new()
    {
        Verb = "Aufschreiben, was eine Anleitung anders sagt als eine frühere Fassung: ein Blatt zum Drucken und Verschicken an alle, die die alte haben.",
        OldPiece = "Die Stückdatei der Fassung, die die Leute haben.",
        NewPiece = "Die Stückdatei der richtigen Fassung.",
        Title = "Berichtigung: {title}",
        Lead = "Was in der früheren Fassung dieser Anleitung falsch ist und was in der neuen steht.",
        Renamed = "Die frühere Fassung heißt {old}.",
        Nothing = "Es gibt nichts zu berichtigen: Beide Fassungen sagen dasselbe.",
        MindFirst = "Wer schon begonnen hat",
        WireTooShort = "Nach der früheren Fassung zugeschnittener Draht ist um {mm:length} zu kurz.",
        LetterMoved = "{letter} war {old}; jetzt ist es {name}.",
        Beads = "Perlen",
        Figures = "Draht und Maße",
        Steps = "Schritte",
        Checks = "Zählen zur Kontrolle",
        ChecksNote = "Diese Schritte bleiben, wie sie waren. Durch Änderungen davor ist nach jedem mehr oder weniger auf dem Draht.",
        Settled = "Erledigte Hinweise aus dem Probefädeln",
        StepColumn = "Schritt",
        OldColumn = "Falsch",
        NewColumn = "Richtig",
        FigureColumn = "Was",
        MovedNumber = "{old},\u00a0jetzt\u00a0{new}",
        LeftOut = "fällt weg",
        NotThere = "fehlte",
        Check = "{beads} {beads:Perle|Perlen}, {alongMm:length}",
        NoteBy = "{note} (von {by})",
        Grams = "{grams} Gramm",
        Loops = "{loops} {loops:Ring|Ringe}",
        FigureNames = new Dictionary<PatternFigure, string>
        {
            [PatternFigure.WristMm] = "Für ein Handgelenk von",
            [PatternFigure.CutMm] = "Draht zuschneiden",
            [PatternFigure.LoopsToCut] = "Das sind von der Spirale",
            [PatternFigure.BeadedMm] = "Perlenlänge, abgelegt",
            [PatternFigure.TurnsWorn] = "Windungen, getragen",
            [PatternFigure.InsideMm] = "Innen rundum, abgelegt",
            [PatternFigure.EndsOverlapMm] = "Enden",
            [PatternFigure.MassG] = "Gewicht",
        }.ToFrozenDictionary(),
    };
}
