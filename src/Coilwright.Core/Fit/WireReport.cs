namespace Coilwright.Core.Fit;

/// <summary>The wire to cut and where to trim. Model: docs/theory/wire.md.</summary>
/// <param name="BeadedMm">Wire under the beads that the cut is reckoned from, mm: the larger of relaxed and worn.</param>
/// <param name="EndsMm">Wire in both ends' finishes, mm.</param>
/// <param name="GripMm">Wire for the pliers at both ends, trimmed afterwards, mm.</param>
/// <param name="SpareMm">Spare, mm.</param>
/// <param name="CutMm">Wire to cut, mm.</param>
/// <param name="Loops">The same in loops of the coil at rest.</param>
/// <param name="LoopMassG">Mass of one loop, g; null when the steel is unknown.</param>
/// <param name="TrimStartMm">Where to trim at the start, mm beyond the first bead.</param>
/// <param name="TrimFinishMm">Where to trim at the finish, mm beyond the last bead.</param>
/// <param name="SlackMm">Wire left over of what she cut, mm; negative when short; null while nothing is cut.</param>
public sealed record WireReport(double BeadedMm, double EndsMm, double GripMm, double SpareMm, double CutMm, double Loops, double? LoopMassG,
    double TrimStartMm, double TrimFinishMm, double? SlackMm)
{
    // A hair is taken off first, so that an exact number of tenths stays what it is.
    private const double HairLoops = 1e-6;

    /// <summary>Loops to cut, in tenths: a loop is cut by eye, a tenth of one is as near as that comes, and it must never be too little.</summary>
    public double LoopsToCut => Math.Ceiling((Loops - HairLoops) * 10) / 10;
}
