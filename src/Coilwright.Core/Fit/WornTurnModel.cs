using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.StringingMaterials.MemoryWire;

namespace Coilwright.Core.Fit;

/// <summary>One turn as worn: the larger of the coil at rest and the wrist with what lies between it and the wire.</summary>
/// <remarks><c>C = max(2 pi R0, wrist + ease + 2 pi e)</c>, <c>T = sqrt(C^2 + p^2)</c>. The wrist may be any rounded shape: a line at distance e
/// outside a convex curve is longer than it by 2 pi e. Model, limits and the choice of e: docs/theory/worn-turn.md.</remarks>
public sealed class WornTurnModel
{
    private readonly Piece _piece;
    private readonly ReckoningChoices _choices;
    private readonly double _reachMm, _pitchMm, _beadVariancePerMm, _lotVarianceShare;

    /// <summary>Prepares a piece.</summary>
    public WornTurnModel(Piece piece, ReckoningChoices choices)
    {
        _piece = piece;
        _choices = choices;
        var counts = new int[piece.Beads.Length];
        foreach (var kind in piece.Order.Kinds) counts[kind]++;
        _reachMm = piece.Wearer.BearingReachMm ?? BearingReachMm(piece.Beads, counts, choices.BearingShare);
        double length = 0, width = 0, beadVariance = 0, lotVariance = 0;
        for (var k = 0; k < counts.Length; k++)
        {
            var bead = piece.Beads[k];
            length += counts[k] * bead.LengthOnWireMm;
            width += counts[k] * bead.LengthOnWireMm * bead.WidthMm;
            beadVariance += counts[k] * bead.BeadSdMm * bead.BeadSdMm;
            lotVariance += Math.Pow(counts[k] * bead.LotMeanSdMm, 2);
        }
        _pitchMm = width / length;
        _beadVariancePerMm = beadVariance / length;
        _lotVarianceShare = lotVariance / (length * length);
    }

    /// <summary>The reach that beads covering a share of the beaded length reach or exceed, mm: they are what bears on the wrist.</summary>
    /// <param name="kinds">Kinds of bead.</param>
    /// <param name="counts">How many of each, at least one in all.</param>
    /// <param name="bearingShare">The share, above 0, up to 1.</param>
    public static double BearingReachMm(ImmutableArray<Bead> kinds, ReadOnlySpan<int> counts, double bearingShare)
    {
        var byReach = new List<(double Reach, double Length)>(kinds.Length);
        double total = 0;
        for (var k = 0; k < counts.Length; k++)
        {
            if (counts[k] == 0) continue;
            var length = counts[k] * kinds[k].LengthOnWireMm;
            byReach.Add((kinds[k].BearingReachMm, length));
            total += length;
        }
        byReach.Sort((a, b) => b.Reach.CompareTo(a.Reach));
        double covered = 0;
        foreach (var (reach, length) in byReach)
        {
            covered += length;
            if (covered >= bearingShare * total) return reach;
        }
        return byReach[^1].Reach;
    }

    /// <summary>The worn turn on a wrist.</summary>
    /// <param name="wristMm">Wrist, mm.</param>
    /// <param name="givenCircumferenceMm">Worn circumference that the maker measured, mm; null: by the formula.</param>
    public WornTurn On(double wristMm, double? givenCircumferenceMm = null)
    {
        var coil = _piece.Wire.LoopMm;
        var asked = wristMm + _piece.Wearer.EaseMm + 2 * Math.PI * _reachMm;
        var by = givenCircumferenceMm is not null ? WornBy.Given : asked > coil ? WornBy.Wrist : WornBy.Coil;
        var c = givenCircumferenceMm ?? Math.Max(coil, asked);
        var band = by switch
        {
            WornBy.Given => 0,
            WornBy.Wrist => _choices.WornBandWristMm,
            _ => _piece.Wire.Datum == CoilDatum.MeasuredLoop ? _choices.WornBandMeasuredMm : _choices.WornBandLabelMm,
        };
        var t = WirePerTurnMm(c);
        // The beads of one turn add their own spread; both together are taken as uniform with the same variance.
        var beads = _beadVariancePerMm * t + _lotVarianceShare * t * t;
        return new WornTurn(c, band, by, _reachMm, c / (2 * Math.PI), _pitchMm, t, coil - asked)
        {
            // Half a turn either way is as unsure as a shift can be: further on, the same places come round again.
            AveragingMm = Math.Min(t / 2, Math.Max(_choices.LeastAveragingMm, Math.Sqrt(band * band + 3 * beads))),
        };
    }

    /// <summary>Wire per turn at a worn circumference, mm.</summary>
    public double WirePerTurnMm(double circumferenceMm) => Math.Sqrt(circumferenceMm * circumferenceMm + _pitchMm * _pitchMm);

    /// <summary>The worn circumference at which a turn takes so much wire, mm; 0 where the pitch alone takes it.</summary>
    public double CircumferenceForMm(double wirePerTurnMm) => Math.Sqrt(Math.Max(0, wirePerTurnMm * wirePerTurnMm - _pitchMm * _pitchMm));

    /// <summary>The wrist on which a worn circumference is reached, mm: what is left of it when reach and ease are taken off.</summary>
    public double WristForMm(double circumferenceMm) => circumferenceMm - 2 * Math.PI * _reachMm - _piece.Wearer.EaseMm;
}
