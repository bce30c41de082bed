using System.Collections.Frozen;
using Coilwright.Core.Making;

namespace Coilwright.Wording;

/// <summary>Words of the written pattern. Names in braces are filled in; see <see cref="Template"/>. What it shares with the pattern sheet is said there.</summary>
public sealed record PatternWords
{
    /// <summary>After a step: {beads}, {alongMm} of wire under them.</summary>
    public required string SoFar { get; init; }

    /// <summary>After the last bead, likewise.</summary>
    public required string InAll { get; init; }

    /// <summary>What the proof-reader found: {said}, {known}.</summary>
    public required FrozenDictionary<ProofSlip, string> Slips { get; init; }

    /// <summary>Numbers, units and letters as this language writes them.</summary>
    public required ProofLanguage Proof { get; init; }
}
