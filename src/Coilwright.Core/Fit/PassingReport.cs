namespace Coilwright.Core.Fit;

/// <summary>Whether a bead goes over the wire.</summary>
public enum Passes
{
    /// <summary>It does.</summary>
    Yes,

    /// <summary>It does, with less room than the hole may be off by.</summary>
    Tight,

    /// <summary>It does not: with this hole, or with any that the bead has room for.</summary>
    No,

    /// <summary>Its hole is not known.</summary>
    Unknown,
}

/// <summary>One kind of bead against the wire. Model: docs/theory/passing.md.</summary>
/// <param name="BeadId">The kind.</param>
/// <param name="Passes">Whether it passes.</param>
/// <param name="ClearanceMm">Hole less wire, mm; null when the hole is not known.</param>
/// <param name="LongestMm">Longest bead with this hole that passes, mm; null when any length does or the hole is not known.</param>
/// <param name="NeededBoreMm">Least hole with which this bead passes, mm; null when none that the bead has room for would do.</param>
public sealed record PassingReport(string BeadId, Passes Passes, double? ClearanceMm, double? LongestMm, double? NeededBoreMm);
