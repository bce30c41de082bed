using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Fit;

/// <summary>The quick lies of a piece: where its beads lie at one worn circumference or another.</summary>
/// <param name="piece">The piece, its kinds as corrected from the bench.</param>
/// <param name="factors">For each bead, what a measured row scales its share by; null when nothing was measured.</param>
/// <param name="choices">Our choices.</param>
internal sealed class WornLies(Piece piece, double[]? factors, ReckoningChoices choices)
{
    /// <summary>Each bead's share of the wire.</summary>
    public CurveShares Shares { get; } = new(piece.Beads, piece.Order, factors);

    /// <summary>The worn turn on a wrist.</summary>
    public WornTurnModel Turns { get; } = new(piece, choices);

    /// <summary>Index of the focal; null when there is none.</summary>
    public int? Focal { get; } = FocalModel.IndexOf(piece);

    /// <summary>The lie at a worn circumference, mm.</summary>
    public Lie At(double circumferenceMm)
    {
        var radius = circumferenceMm / (2 * Math.PI);
        return FocalOnTop(new Lie(Shares.AtRadius(radius), Turns.WirePerTurnMm(circumferenceMm), radius, piece.Wearer.StartAngleDeg));
    }

    /// <summary>The same lie turned so that the focal is on top, where the wearer wants that.</summary>
    public Lie FocalOnTop(Lie lie) =>
        piece.Wearer.FocalOnTop && Focal is { } focal ? lie.StartingAt(-360 * lie.MiddleMm(focal) / lie.WirePerTurnMm) : lie;
}
