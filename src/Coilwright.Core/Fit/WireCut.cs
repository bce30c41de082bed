using Coilwright.Core.Pieces;

namespace Coilwright.Core.Fit;

/// <summary>The wire to cut, and where to trim. Model: docs/theory/wire.md.</summary>
public static class WireCut
{
    /// <summary>Reckons it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="wornBeadedMm">Wire under the beads when worn, mm.</param>
    /// <param name="relaxedBeadedMm">Wire under the beads at rest, mm.</param>
    public static WireReport Of(Piece piece, double wornBeadedMm, double relaxedBeadedMm)
    {
        var wire = piece.Wire;
        var beaded = Math.Max(wornBeadedMm, relaxedBeadedMm);
        var start = piece.Ends.Start.WireUsedMm(wire.WireMm);
        var finish = piece.Ends.Finish.WireUsedMm(wire.WireMm);
        var grip = 2 * piece.Ends.GripMm;
        var cut = beaded + start + finish + grip + piece.Ends.SpareMm;
        return new WireReport(beaded, start + finish, grip, piece.Ends.SpareMm, cut, cut / wire.LoopMm, wire.LoopMassG, start, finish,
            wire.CutMm - beaded - start - finish);
    }
}
