using BenchmarkDotNet.Attributes;
using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Lies;
using Coilwright.Core.Pieces;

namespace Coilwright.Benchmarks.LiningUp;

/// <summary>Is the exact measure of lining up worth having beside walking the wire in steps of 0.1 mm? 200 beads, five turns, 121 wrists.</summary>
/// <remarks>Both read the same lies, made beforehand, and give the same readings: the headline at T and averaged, and by bead averaged. The exact side
/// judges the wish too, and divides by chance. One thread on both sides.</remarks>
public class LiningUpBenchmarks
{
    private const double StepMm = 0.1;

    private readonly LiningUpModel _exact;
    private readonly GridLiningUp _grid;
    private readonly GlanceRoom _room = new();
    private readonly Piece _piece = GeneratedPieces.OfFiveTurns(200);
    private readonly ReckoningChoices _choices = GeneratedPieces.Data.Choices;
    private readonly (Lie Lie, double PitchMm, double AveragingMm)[] _lies;

    public LiningUpBenchmarks()
    {
        _exact = new LiningUpModel(_piece, _choices);
        _grid = new GridLiningUp(_piece, _choices, StepMm);
        var turns = new WornTurnModel(_piece, _choices);
        var shares = new CurveShares(_piece.Beads, _piece.Order);
        _lies = [.. Enumerable.Range(0, 121).Select(i =>
        {
            // Wrists from the coil's own size upwards, half a millimetre apart, so that each has a lie of its own.
            var worn = turns.On(turns.WristForMm(_piece.Wire.LoopMm) + 0.5 * i);
            return (new Lie(shares.AtRadius(worn.RadiusMm), worn.WirePerTurnMm, worn.RadiusMm, 180), worn.PitchMm, worn.AveragingMm);
        })];
    }

    [Benchmark(Baseline = true)]
    public double Grid()
    {
        double sum = 0;
        foreach (var (lie, _, averaging) in _lies) sum += _grid.Of(lie, averaging).Cover;
        return sum;
    }

    [Benchmark]
    public double Exact()
    {
        double sum = 0;
        foreach (var (lie, pitch, averaging) in _lies) sum += _exact.Glance(lie, pitch, averaging, _room).Cover ?? 0;
        return sum;
    }

    /// <summary>The most by which the grid's three readings differ from the exact ones, over all wrists.</summary>
    public double LargestDifference(double stepMm)
    {
        var grid = new GridLiningUp(_piece, _choices, stepMm);
        double most = 0;
        foreach (var (lie, pitch, averaging) in _lies)
        {
            var exact = _exact.Measure(lie, pitch, averaging, seed: 1);
            var walked = grid.Of(lie, averaging);
            most = Math.Max(most, Math.Abs(exact.CoverExact!.Value - walked.CoverExact));
            most = Math.Max(most, Math.Abs(exact.Cover!.Value - walked.Cover));
            most = Math.Max(most, Math.Abs(exact.RelativeAveraged!.Value * exact.Chance!.Value - walked.ShareAveraged));
        }
        return most;
    }
}
