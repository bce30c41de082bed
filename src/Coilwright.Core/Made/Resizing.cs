using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Costing;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;

namespace Coilwright.Core.Made;

/// <summary>What becomes of the wire of a piece that is re-sized.</summary>
public enum WireNeed
{
    /// <summary>It stays as it is.</summary>
    Same,

    /// <summary>It is cut shorter.</summary>
    CutDown,

    /// <summary>A new one is cut: it is too short, or another coil serves.</summary>
    New,
}

/// <summary>What changes when a piece that was made is strung again for another wrist, as the sizes of its design say. Nothing is booked by it.</summary>
/// <param name="Sizes">The design, with the one size.</param>
/// <param name="Wire">What becomes of the wire.</param>
/// <param name="Added">Beads that are strung in addition, none below one, each kind once.</param>
/// <param name="TakenOff">Beads that come off.</param>
public sealed record Resizing(Sizes Sizes, WireNeed Wire, ImmutableArray<(Bead Bead, int Count)> Added, ImmutableArray<(Bead Bead, int Count)> TakenOff)
{
    // Loops to cut are in tenths: half of one is what rounding may leave.
    private const double SameLoops = 0.05;

    /// <summary>The size.</summary>
    public Size Size => Sizes.All[0];

    /// <summary>Loops of wire as it was made.</summary>
    public double FromLoops => Sizes.Base.Wire.LoopsToCut;

    /// <summary>Loops of wire for the new wrist.</summary>
    public double ToLoops => Size.Reckoned.Wire.LoopsToCut;

    /// <summary>Reckons it.</summary>
    /// <param name="piece">The piece as it was strung.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="wristMm">The new wrist, mm, in the range of wrists.</param>
    /// <param name="cancel">Gives up.</param>
    /// <exception cref="OperationCanceledException">It was given up.</exception>
    public static Resizing Of(Piece piece, ReckoningData data, double wristMm, CancellationToken cancel = default)
    {
        var sizes = Grader.Of(piece, data, new SizesRequest([wristMm]), null, cancel);
        cancel.ThrowIfCancellationRequested();
        var size = sizes.All[0];
        var more = MaterialsList.Of(piece).Lines.Concat(MaterialsList.Of(size.Piece).Lines).GroupBy(l => l.Bead.Id, StringComparer.Ordinal)
            .Select(g => (g.First().Bead, Count: Uses(size.Piece, g.Key) - Uses(piece, g.Key))).ToArray();
        var (from, to) = (sizes.Base.Wire.LoopsToCut, size.Reckoned.Wire.LoopsToCut);
        var wire = size.Coil.Answer == CoilAnswer.Other || to > from + SameLoops ? WireNeed.New : to < from - SameLoops ? WireNeed.CutDown : WireNeed.Same;
        return new Resizing(sizes, wire, [.. more.Where(m => m.Count > 0)], [.. more.Where(m => m.Count < 0).Select(m => (m.Bead, -m.Count))]);
    }

    private static int Uses(Piece piece, string bead) => MaterialsList.Of(piece).Lines.Where(l => l.Bead.Id == bead).Sum(l => l.Use);
}
