using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;
using Coilwright.Core.Substitutes;

namespace Coilwright.Core.Quotes;

/// <summary>What a quote is reckoned from.</summary>
public sealed record QuoteSources
{
    /// <summary>How many of a bead are at home and free; what is not listed is not there.</summary>
    public IReadOnlyDictionary<string, int> Home { get; init; } = ImmutableDictionary<string, int>.Empty;

    /// <summary>Beads at home that may stand in for others.</summary>
    public ImmutableArray<Candidate> Others { get; init; } = [];

    /// <summary>What is to be had beside what is used.</summary>
    public Spares Spares { get; init; } = Spares.None;

    /// <summary>Who sells what, for how much, and how long it takes.</summary>
    public PriceList Prices { get; init; } = PriceList.Empty;

    /// <summary>Costs, timed steps and rules.</summary>
    public Costs Costs { get; init; } = Costs.Empty;

    /// <summary>What beads in stock cost; null where beads are priced as they are bought.</summary>
    public LotCosts? Lots { get; init; }

    /// <summary>Wire at hand; null when nobody said.</summary>
    public ImmutableArray<WireLot>? Wire { get; init; }

    /// <summary>What holds for every cut of it.</summary>
    public CuttingRules Cutting { get; init; } = new();
}
