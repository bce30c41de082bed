using System.Collections.Frozen;
using Coilwright.Core.Alignment;
using Coilwright.Core.Beads;
using Coilwright.Core.Fit;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>Words that stand by themselves, and the ones that sentences are put together from.</summary>
public sealed record Terms
{
    /// <summary>Millimetres, short.</summary>
    public required string Mm { get; init; }

    /// <summary>Inches, short.</summary>
    public required string Inch { get; init; }

    /// <summary>Grams, short.</summary>
    public required string Gram { get; init; }

    /// <summary>What a fault without a field is about.</summary>
    public required string ThisFile { get; init; }

    /// <summary>A field as sentences show it: {words}, {field} as it stands in the file.</summary>
    public required string FieldInWords { get; init; }

    /// <summary>A field without words of its own: {field}.</summary>
    public required string FieldByName { get; init; }

    /// <summary>A list that is cut short: {list}, {more}.</summary>
    public required string AndMore { get; init; }

    /// <summary>Places round the wrist.</summary>
    public required Places Places { get; init; }

    /// <summary>What a field is and should be, by <see cref="Core.Faults.FaultTypes"/>.</summary>
    public required FrozenDictionary<string, string> FaultTypes { get; init; }

    /// <summary>What should stand in the order, by <see cref="Core.Faults.OrderExpectations"/>.</summary>
    public required FrozenDictionary<string, string> OrderExpectations { get; init; }

    /// <summary>Why a file cannot be used, by <see cref="Core.Faults.FaultDetails"/>: {reason} is the system's own word.</summary>
    public required FrozenDictionary<string, string> FaultDetails { get; init; }

    /// <summary>Units of sale, by <see cref="Core.Stock.SaleUnits.Word"/>.</summary>
    public required FrozenDictionary<string, string> SaleUnits { get; init; }

    /// <summary>What stock is counted in: <c>each</c>, <c>mm</c> and <c>g</c>.</summary>
    public required FrozenDictionary<string, string> CountedIn { get; init; }

    /// <summary>How much a notice matters.</summary>
    public required FrozenDictionary<Severity, string> Severities { get; init; }

    /// <summary>Words inside notices: <c>start</c> and <c>finish</c> of an end, <c>past</c> and <c>before</c> of a place.</summary>
    public required FrozenDictionary<string, string> NoticeWords { get; init; }

    /// <summary>How a piece lines up.</summary>
    public required FrozenDictionary<LiningUpWord, string> LiningUp { get; init; }

    /// <summary>Whether a bead passes: {clearanceMm}, {longestMm}, {neededBoreMm}, each where it is known.</summary>
    public required FrozenDictionary<Passes, string> Passing { get; init; }

    /// <summary>What decides the worn size.</summary>
    public required FrozenDictionary<WornBy, string> WornBy { get; init; }

    /// <summary>What a bead does in the piece.</summary>
    public required FrozenDictionary<Role, string> Roles { get; init; }

    /// <summary>Bead shapes by their names in the piece file.</summary>
    public required FrozenDictionary<string, string> Shapes { get; init; }
}
