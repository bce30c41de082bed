using System.Collections.Immutable;
using Coilwright.Core.Beads;

namespace Coilwright.Core.Quotes;

/// <summary>One bead of the design strung in place of another in this order.</summary>
/// <param name="Bead">The bead of the design, by its name in the order.</param>
/// <param name="With">The bead in its place.</param>
public sealed record Swap(string Bead, Bead With);

/// <summary>What someone ordered, and what the maker says to it.</summary>
/// <remarks>The day comes from outside, the terms from the maker: nothing of them is guessed or kept here.</remarks>
public sealed record QuoteAsk
{
    /// <summary>The wrist, mm, within a wearer's bounds.</summary>
    public required double WristMm { get; init; }

    /// <summary>The day of the quote.</summary>
    public required DateOnly On { get; init; }

    /// <summary>How many alike, 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Who asks, as the maker writes it; empty for nobody named.</summary>
    public string For { get; init; } = "";

    /// <summary>The last day on which the price stands; null when it is not told.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>What is paid before work begins, in a hundred of the price, 0 to 100; null for nothing.</summary>
    public decimal? DepositPercent { get; init; }

    /// <summary>The rule that prices it; null for the first one that sells pieces.</summary>
    public string? Rule { get; init; }

    /// <summary>Beads strung in place of others.</summary>
    public ImmutableArray<Swap> Swaps { get; init; } = [];
}
