using System.Collections.Immutable;

namespace Coilwright.Core.Pricing;

/// <summary>The figures that a formula can name: parts of what one costs, its hours, and the fees of the rule itself.</summary>
public static class CostFigures
{
    /// <summary>All beads.</summary>
    public const string Beads = "beads";

    /// <summary>Beads that break or do not match.</summary>
    public const string Waste = "waste";

    /// <summary>Findings, caps for glued ends among them.</summary>
    public const string Findings = "findings";

    /// <summary>The wire.</summary>
    public const string Wire = "wire";

    /// <summary>Packaging.</summary>
    public const string Packaging = "packaging";

    /// <summary>All of the above.</summary>
    public const string Materials = "materials";

    /// <summary>Work at its wage.</summary>
    public const string Labour = "labour";

    /// <summary>Overheads.</summary>
    public const string Overhead = "overhead";

    /// <summary>Materials, labour and overhead.</summary>
    public const string Cost = "cost";

    /// <summary>Hours of work in one.</summary>
    public const string Hours = "hours";

    /// <summary>What an hour is paid.</summary>
    public const string Wage = "wage";

    /// <summary>The rule's fees that go by the price, as a part of 1.</summary>
    public const string FeeShare = "fee_share";

    /// <summary>The rule's fees that are the same at every price.</summary>
    public const string FeeFixed = "fee_fixed";

    /// <summary>Their names.</summary>
    public static ImmutableArray<string> Names { get; } = [Beads, Waste, Findings, Wire, Packaging, Materials, Labour, Overhead, Cost, Hours, Wage, FeeShare, FeeFixed];
}
