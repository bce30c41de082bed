using Coilwright.Core.Beads;
using Coilwright.Core.Lies;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Fit;

/// <summary>Where the focal lands round the wrist.</summary>
public static class FocalModel
{
    /// <summary>Index of the focal: the bead in the role of focal whose place in the order is nearest the middle; null when there is none.</summary>
    public static int? IndexOf(Piece piece)
    {
        int? best = null;
        var middle = (piece.Order.Count - 1) / 2.0;
        for (var i = 0; i < piece.Order.Count; i++)
            if (piece.Beads[piece.Order.Kinds[i]].Role == Role.Focal && (best is null || Math.Abs(i - middle) < Math.Abs(best.Value - middle)))
                best = i;
        return best;
    }

    /// <summary>Its place, with what it would be at either end of the band of the worn circumference.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="focal">The focal's index.</param>
    /// <param name="lie">The lie.</param>
    /// <param name="narrow">The lie at the narrow end of the band.</param>
    /// <param name="wide">The lie at the wide end.</param>
    public static FocalPlace Of(Piece piece, int focal, Lie lie, Lie narrow, Lie wide)
    {
        var angle = lie.AngleDeg(focal);
        // The three angles are told as one band, so those of the ends are not wrapped away from the middle's.
        double Near(Lie other) => angle + Angles.NormalizedDeg(other.AngleDeg(focal) - angle);
        return new FocalPlace(focal, piece.Beads[piece.Order.Kinds[focal]].Id, lie.Turn(focal), angle, angle / 360 * lie.WirePerTurnMm,
            Angles.NormalizedDeg(-angle), Near(narrow), Near(wide));
    }
}
