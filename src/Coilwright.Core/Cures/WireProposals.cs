using Coilwright.Core.Editing;
using Coilwright.Core.Measures;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Cures;

/// <summary>Proposals that leave the beads where they are and take another wire, or ream the beads for it.</summary>
internal static class WireProposals
{
    // How much coarser a coil or a hole is proposed when the first size that should do does not, in steps of what is sold or drilled.
    private const int MoreSteps = 6;

    private const double CoilStepMm = 1;

    private const double BoreStepMm = 0.05;

    // The thinnest wire that a coil for the wrist keeps its shape with. Common practice, no source: memory wire is sold from 18 to 26 gauge.
    private const int ThinnestAwg = 26;

    public static IEnumerable<Cure> CutAnew(Notice notice, Piece piece)
    {
        // Makers count loops off the coil; quarters can be seen.
        var loops = Math.Ceiling(4 * notice.Numbers["neededMm"] / piece.Wire.LoopMm) / 4;
        var cutMm = Math.Ceiling(loops * piece.Wire.LoopMm);
        yield return Cure.Of(CureCodes.CutAnew, new SetWire(piece.Wire with { CutMm = cutMm }), numbers: [("loops", loops), ("cutMm", cutMm)]);
    }

    public static IEnumerable<Cure> LargerCoil(Piece piece, double loopMm) => Coils(piece, loopMm, CureCodes.LargerCoil);

    public static IEnumerable<Cure> SmallerCoil(Piece piece, double looseMm) => Coils(piece, piece.Wire.LoopMm - looseMm, CureCodes.SmallerCoil);

    public static IEnumerable<Cure> LessStrain(Piece piece, Reckoned reckoned, double limitShare)
    {
        // The stress goes with 1/R0 - 1/R, and the worn radius stays as it is while the wrist opens the coil.
        var (rest, worn, share) = (1 / piece.Wire.RelaxedRadiusMm, 1 / reckoned.Worn.RadiusMm, reckoned.Strength!.Share!.Value);
        return Coils(piece, 2 * Math.PI / (worn + (rest - worn) * limitShare / share), CureCodes.LargerCoil).Concat(ThinnerWires(piece));
    }

    public static IEnumerable<Cure> Passing(Notice notice, Piece piece, double toleranceMm)
    {
        if (notice.Numbers.TryGetValue("neededBoreMm", out var needed))
        {
            var bead = piece.Beads.First(b => b.Id == notice.BeadId);
            var bore = Math.Round(Math.Ceiling((needed + toleranceMm) / BoreStepMm + 1e-6) * BoreStepMm, 2);
            yield return Cure.Of(CureCodes.Ream, new ChangeBead(bead.Id, bead.Description with { BoreMm = bore }), bead.Id, [("boreMm", bore)]);
        }
        foreach (var thinner in ThinnerWires(piece)) yield return thinner;
    }

    private static IEnumerable<Cure> Coils(Piece piece, double loopMm, string code)
    {
        var wanted = new CoilWire(piece.Wire.WireMm, CoilDatum.MeasuredLoop, loopMm, null).By(piece.Wire.Datum).SizeMm;
        for (var step = 0; step <= MoreSteps; step++)
        {
            var size = Math.Ceiling(wanted / CoilStepMm - 1e-9) * CoilStepMm + step * CoilStepMm;
            if (code == CureCodes.LargerCoil ? size <= piece.Wire.SizeMm : size >= piece.Wire.SizeMm) continue;
            var wire = piece.Wire with { SizeMm = size };
            yield return Cure.Of(code, new SetWire(wire), numbers: [("insideMm", wire.By(CoilDatum.Inside).SizeMm), ("loopMm", wire.LoopMm)]);
        }
    }

    private static IEnumerable<Cure> ThinnerWires(Piece piece) =>
        Enumerable.Range(0, ThinnestAwg + 1).Select(n => (Mm: WireGauge.AwgMm(n), Name: WireGauge.AwgName(n))).Where(g => g.Mm < piece.Wire.WireMm - 0.01)
            .Select(g => Cure.Of(CureCodes.ThinnerWire, new SetWire(OfThickness(piece.Wire, g.Mm, g.Name)), numbers: [("wireMm", g.Mm)], words: [("gauge", g.Name)]));

    // The same loop of thinner wire: a size inside it would shrink with the wire.
    private static CoilWire OfThickness(CoilWire wire, double mm, string gauge) =>
        (wire.By(CoilDatum.CentreLine) with { WireMm = mm, GaugeName = gauge }).By(wire.Datum);
}
