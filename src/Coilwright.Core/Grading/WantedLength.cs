using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Grading;

/// <summary>How long the beads are to be on a wrist, so that the piece goes round as often as the design does and its ends meet as they do there.</summary>
internal sealed class WantedLength
{
    /// <summary>Reads it off the design on its own wrist.</summary>
    /// <remarks>Where she said how far the ends lie over each other, they do so in every size, round the whole number of turns. Else she may have said the
    /// turns; else they are as many as are worn.</remarks>
    public WantedLength(Reckoned design)
    {
        OverlapMm = design.Piece.Ends.OverlapMm;
        Turns = OverlapMm is null ? design.Piece.Wishes.Turns ?? design.Fit.TurnsWorn : design.Fit.OverlapTurns;
        ToleranceMm = design.Piece.Wishes.Free.LengthWithinMm ?? design.Choices.OverlapToleranceMm;
    }

    /// <summary>Turns in every size.</summary>
    public double Turns { get; }

    /// <summary>How far the ends lie over each other beyond those turns, mm, where she says.</summary>
    public double? OverlapMm { get; }

    /// <summary>By how much the length may differ, mm.</summary>
    public double ToleranceMm { get; }

    /// <summary>The beaded length wanted where a turn takes so much wire, mm.</summary>
    public double Mm(double wirePerTurnMm) => Turns * wirePerTurnMm + (OverlapMm ?? 0);

    /// <summary>The beaded length of a piece on its wearer's wrist, and what is wanted of it there, mm.</summary>
    public (double BeadedMm, double WantedMm) Of(Piece piece, ReckoningChoices choices)
    {
        var bench = BenchCorrection.Of(piece, choices.RulerErrorMm);
        var lies = new WornLies(piece with { Beads = bench.Kinds }, bench.Factors, choices);
        var lie = lies.At(lies.Turns.On(piece.Wearer.WristMm).CircumferenceMm);
        return (lie.BeadedMm, Mm(lie.WirePerTurnMm));
    }
}
