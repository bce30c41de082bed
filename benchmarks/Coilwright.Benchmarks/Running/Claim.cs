namespace Coilwright.Benchmarks.Running;

/// <summary>A claim of speed: always a ratio of two things measured side by side, never a time by itself.</summary>
/// <param name="Name">What it is called for on the command line.</param>
/// <param name="Says">The claim in one line.</param>
/// <param name="Measure">Checks that both sides do the same and measures them, in so many rounds.</param>
public sealed record Claim(string Name, string Says, Func<int, IReadOnlyList<Verdict>> Measure);
