using System.Globalization;

namespace Coilwright.Benchmarks.Running;

/// <summary>What a claim promises of its ratio.</summary>
public enum Promise
{
    /// <summary>At least the goal: so many times as fast.</summary>
    AtLeast,

    /// <summary>At most the goal: so many times as long.</summary>
    AtMost,
}

/// <summary>A claim's ratio as it was measured, beside its goal.</summary>
/// <param name="What">What is held against what.</param>
/// <param name="Ratios">The ratio of each round: two medians, measured one after the other. Their median counts.</param>
/// <param name="Promise">Whether the goal is a least or a most.</param>
/// <param name="Goal">The goal; null for a ratio that is told and promises nothing.</param>
public sealed record Verdict(string What, IReadOnlyList<double> Ratios, Promise Promise, double? Goal)
{
    public double Ratio => Medians.Of(Ratios);

    public bool Met => Goal is not { } goal || (Promise == Promise.AtLeast ? Ratio >= goal : Ratio <= goal);

    public override string ToString()
    {
        var goal = Goal is { } g ? string.Create(CultureInfo.InvariantCulture, $"goal at {(Promise == Promise.AtLeast ? "least" : "most")} {g}: {(Met ? "met" : "NOT MET")}") : "no goal";
        return string.Create(CultureInfo.InvariantCulture, $"{What}: {Ratio:0.0#} (rounds {Ratios.Min():0.0#} to {Ratios.Max():0.0#}), {goal}");
    }
}

/// <summary>Medians.</summary>
public static class Medians
{
    public static double Of(IEnumerable<double> values)
    {
        double[] sorted = [.. values.Order()];
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }
}
