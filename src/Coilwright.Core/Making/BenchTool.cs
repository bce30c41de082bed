using System.Collections.Immutable;
using Coilwright.Core.Findings;

namespace Coilwright.Core.Making;

/// <summary>A tool of the bench. Its name is the language's.</summary>
public enum BenchTool
{
    /// <summary>Eye protection: cut ends of hardened wire fly.</summary>
    EyeProtection,

    /// <summary>Shears or heavy cutters made for memory wire: it ruins others.</summary>
    Shears,

    /// <summary>Round-nose pliers, for turned loops.</summary>
    RoundNosePliers,

    /// <summary>A fine file, for ends.</summary>
    File,

    /// <summary>Glue for metal, for caps.</summary>
    Glue,

    /// <summary>A ruler or tape.</summary>
    Ruler,
}

/// <summary>Which tools a step of the pattern takes.</summary>
/// <remarks>Common practice, no source.</remarks>
public static class StepTools
{
    /// <summary>The tools of a step of a piece with such ends; none for stringing, which fingers do.</summary>
    public static ImmutableArray<BenchTool> Of(StepAction action, WireEnds ends) => action switch
    {
        StepAction.CutWire => [BenchTool.EyeProtection, BenchTool.Shears, BenchTool.Ruler],
        StepAction.FirstEnd => [BenchTool.File, OfEnd(ends.Start)],
        StepAction.LastEnd => [BenchTool.EyeProtection, BenchTool.Shears, BenchTool.File, OfEnd(ends.Finish)],
        _ => [],
    };

    private static BenchTool OfEnd(WireEnd end) => end.IsTurned ? BenchTool.RoundNosePliers : BenchTool.Glue;
}
