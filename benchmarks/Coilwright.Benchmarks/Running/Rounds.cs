using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Exporters;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using Perfolizer.Horology;

namespace Coilwright.Benchmarks.Running;

/// <summary>A class of benchmarks run over and over: each round measures all its methods, so what slows the machine for a while slows both sides of a ratio.</summary>
public sealed class Rounds
{
    private readonly List<Dictionary<string, BenchmarkReport>> _rounds = [];

    private Rounds() { }

    /// <summary>Runs a class.</summary>
    /// <param name="howOften">Rounds, 1 or more.</param>
    /// <param name="iterations">Measurements of each method in a round.</param>
    public static Rounds Of<T>(int howOften, int iterations = 15)
    {
        var config = ManualConfig.CreateEmpty()
            .WithBuildTimeout(TimeSpan.FromMinutes(10))
            .AddLogger(new ConsoleLogger())
            .AddColumn(TargetMethodColumn.Method, StatisticColumn.Median, StatisticColumn.Min, StatisticColumn.StdDev)
            .AddColumnProvider(DefaultColumnProviders.Metrics)
            .AddColumn(BaselineRatioColumn.RatioMean)
            .AddDiagnoser(MemoryDiagnoser.Default)
            .AddExporter(MarkdownExporter.Console)
            .AddLogicalGroupRules(BenchmarkLogicalGroupRule.ByCategory)
            .AddJob(Job.Default.WithWarmupCount(5).WithIterationCount(iterations).WithIterationTime(TimeInterval.FromMilliseconds(250)));
        var rounds = new Rounds();
        for (var r = 0; r < howOften; r++)
        {
            var summary = BenchmarkRunner.Run<T>(config);
            if (summary.HasCriticalValidationErrors || summary.Reports.Any(x => !x.Success || x.ResultStatistics is null))
                throw new InvalidOperationException($"The benchmarks of {typeof(T).Name} did not run; what they said stands above.");
            rounds._rounds.Add(summary.Reports.ToDictionary(x => x.BenchmarkCase.Descriptor.WorkloadMethod.Name));
        }
        return rounds;
    }

    /// <summary>For each round, the median time of one method over that of another.</summary>
    public double[] Ratio(string over, string under) => [.. _rounds.Select(r => r[over].ResultStatistics!.Median / r[under].ResultStatistics!.Median)];

    /// <summary>Bytes that one call of a method allocates, the most of the rounds.</summary>
    public long AllocatedBytes(string method) => _rounds.Max(r => r[method].GcStats.GetBytesAllocatedPerOperation(r[method].BenchmarkCase) ?? 0);
}
