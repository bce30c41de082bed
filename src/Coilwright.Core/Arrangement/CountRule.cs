using Coilwright.Core.Fit;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Arrangement;

/// <summary>Something that the counts of all gaps keep together or do not.</summary>
public interface ICountRule
{
    /// <summary>Whether counts within their ranges keep it.</summary>
    bool Keeps(ReadOnlySpan<int> counts);
}

/// <summary>The rules of the order, for every choice of counts.</summary>
internal sealed class StrungRules(OrderSpace space, Piece piece) : ICountRule
{
    public bool Keeps(ReadOnlySpan<int> counts) => RuleBreaks.Keeps(space.Strung(counts), piece.Beads, piece.Wishes.Rules);
}

/// <summary>The focal on the top within what the piece says: the gaps before it together may take only so much more or less wire.</summary>
/// <remarks>By the turn as it is now, which other counts hardly change; what is offered is reckoned again in full.</remarks>
internal sealed class FocalRule : ICountRule
{
    private readonly GapProblem _problem;
    private readonly int _before;
    private readonly double _angleDeg, _degPerMm, _withinDeg;

    private FocalRule(GapProblem problem, int before, double angleDeg, double degPerMm, double withinDeg) =>
        (_problem, _before, _angleDeg, _degPerMm, _withinDeg) = (problem, before, angleDeg, degPerMm, withinDeg);

    /// <summary>The rule of a piece; null when it does not say how far off the top its focal may lie, or turns with it.</summary>
    public static FocalRule? Of(Piece piece, double[]? factors, ReckoningChoices choices, IReadOnlyCollection<Gap> gaps, GapProblem problem)
    {
        if (piece.Wishes.FocalWithinDeg is not { } within || piece.Wearer.FocalOnTop) return null;
        var lies = new WornLies(piece, factors, choices);
        if (lies.Focal is not { } focal) return null;
        var lie = lies.At(lies.Turns.On(piece.Wearer.WristMm).CircumferenceMm);
        return new FocalRule(problem, gaps.Count(gap => gap.First < focal), lie.AngleDegAt(lie.MiddleMm(focal)), 360 / lie.WirePerTurnMm, within);
    }

    public bool Keeps(ReadOnlySpan<int> counts)
    {
        double moreMm = 0;
        for (var g = 0; g < _before; g++) moreMm += (counts[g] - _problem.Start[g]) * _problem.StepMm[_problem.Kinds[g]];
        return Math.Abs(Angles.NormalizedDeg(_angleDeg + moreMm * _degPerMm)) <= _withinDeg + 1e-9;
    }
}
