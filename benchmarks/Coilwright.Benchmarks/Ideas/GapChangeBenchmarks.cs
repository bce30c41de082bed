using BenchmarkDotNet.Attributes;
using Coilwright.Core.Arrangement;

namespace Coilwright.Benchmarks.Ideas;

/// <summary>What one gap changed costs by the tables, and by laying every bead on twelve wrists: 400 beads, 40 gaps.</summary>
public class GapChangeBenchmarks
{
    private const int Gaps = 40;

    private readonly OrderSpace _space = new(ClusterPieces.Of(Gaps, 400, seed: 1), GeneratedPieces.Data);
    private readonly GapScore _score;
    private readonly int[] _counts;

    public GapChangeBenchmarks()
    {
        _counts = [.. _space.Problem.Start];
        _score = new GapScore(_space.Problem, _counts);
    }

    [Benchmark(Baseline = true)]
    public double EveryBeadLaid() => _space.Judge(_counts).Loss!.Value;

    /// <summary>Every gap with a bead more, one after another; the time is that of one.</summary>
    [Benchmark(OperationsPerInvoke = Gaps)]
    public double LookedUp()
    {
        double sum = 0;
        for (var g = 0; g < Gaps; g++) sum += _score.Change(g, _counts[g] + 1);
        return sum;
    }

    /// <summary>The most by which a look-up differs from laying every bead anew.</summary>
    public double LargestDifference()
    {
        double most = 0;
        var before = _space.Judge(_counts).Loss!.Value;
        for (var g = 0; g < Gaps; g++)
        {
            int[] after = [.. _counts];
            after[g]++;
            most = Math.Max(most, Math.Abs(_space.Judge(after).Loss!.Value - before - _score.Change(g, after[g])));
        }
        return most;
    }
}
