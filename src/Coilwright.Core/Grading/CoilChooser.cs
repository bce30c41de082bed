using Coilwright.Core.Fit;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Grading;

/// <summary>Chooses the coil of a size among the design's own and those that the piece allows: the one that lies on the wrist most as the design's own does
/// on its wearer's.</summary>
internal sealed class CoilChooser
{
    private readonly Piece _piece;
    private readonly ReckoningChoices _choices;
    private readonly double _roomMm, _mostRoomMm;
    private readonly double? _mostShare;

    public CoilChooser(Reckoned design)
    {
        (_piece, _choices) = (design.Piece, design.Choices);
        _roomMm = design.Worn.RoomMm;
        // What is so in the design is as she wants it.
        _mostRoomMm = Math.Max(_choices.LooseFromMm, _roomMm);
        _mostShare = design.Strength?.Share is { } share ? Math.Max(_choices.StressShareFrom, share) : null;
    }

    /// <summary>The design's own coil, as it is on a wrist.</summary>
    public SizeCoil Own(double wristMm)
    {
        var worn = new WornTurnModel(_piece, _choices).On(wristMm);
        return new SizeCoil(CoilAnswer.Own, _piece.Wire, _piece.Wire.LoopMm - worn.RoomMm);
    }

    /// <summary>The coil for a wrist.</summary>
    public SizeCoil On(double wristMm)
    {
        var own = _piece.Wire with { CutMm = null };
        var allowed = _piece.Wishes.Free.Coils.IsDefault ? [] : _piece.Wishes.Free.Coils;
        // The first of equally good ones: her own coil before others.
        var (wire, worn) = allowed.Select(c => own with { Datum = c.Datum, SizeMm = c.SizeMm }).Prepend(own)
            .Select(w => (Wire: w, Worn: new WornTurnModel(_piece with { Wire = w }, _choices).On(wristMm)))
            .MinBy(c => (Trouble(c.Wire, c.Worn) != 0, Math.Round(Math.Abs(c.Worn.RoomMm - _roomMm), 6)));
        var answer = Trouble(wire, worn) switch
        {
            > 0 => CoilAnswer.SmallerWanted,
            < 0 => CoilAnswer.LargerWanted,
            _ => wire == own ? CoilAnswer.Own : CoilAnswer.Other,
        };
        return new SizeCoil(answer, wire, wire.LoopMm - worn.RoomMm);
    }

    // Above 0 too large, below 0 too small.
    private int Trouble(CoilWire wire, WornTurn worn)
    {
        if (worn.By == WornBy.Coil && worn.RoomMm > _mostRoomMm + 1e-9) return 1;
        if (_mostShare is not { } most || wire.Steel is not { } steel || steel.LeastStrengthMPa(wire.WireMm) is not { } strength) return 0;
        return WireStrength.SurfaceStressMPa(wire.WireMm, steel.YoungsModulusMPa, wire.RelaxedRadiusMm, worn.RadiusMm) / strength > most + 1e-9 ? -1 : 0;
    }
}
