using System.Collections.Immutable;

namespace Coilwright.Core.Buying;

/// <summary>From how many units on, a unit costs how much: every one of them, not only those above.</summary>
/// <param name="From">Units, 1 or more.</param>
/// <param name="Price">Of one unit, 0 or more, in the currency of the whole list.</param>
public sealed record PriceStep(int From, decimal Price);

/// <summary>One way to buy a bead: a unit of sale of one supplier.</summary>
/// <param name="Item">What it is, by name.</param>
/// <param name="Supplier">Who sells it, by name.</param>
/// <param name="Unit">The unit of sale, as <c>strand</c>.</param>
/// <param name="Holds">How many of the item one unit holds, 1 or more.</param>
/// <param name="Prices">Its price steps, the first from 1, each from more units than the one before.</param>
public sealed record Offer(string Item, string Supplier, string Unit, int Holds, ImmutableArray<PriceStep> Prices)
{
    /// <summary>How many units the supplier has; null when nobody said.</summary>
    public int? Most { get; init; }

    /// <summary>The supplier's own number for it; null when unknown.</summary>
    public string? Number { get; init; }

    /// <summary>What so many units cost.</summary>
    /// <param name="units">0 or more.</param>
    public decimal Cost(int units)
    {
        if (units == 0) return 0;
        var step = Prices[0];
        foreach (var later in Prices)
            if (later.From <= units) step = later;
        return units * step.Price;
    }
}

/// <summary>What a supplier asks beside the prices.</summary>
/// <param name="Name">By this name offers call it.</param>
/// <param name="LeastOrder">Goods for less than this are not sent, 0 or more.</param>
/// <param name="Freight">What sending costs, 0 or more.</param>
/// <param name="FreeFrom">Goods for this much or more are sent free; null when they never are.</param>
public sealed record Supplier(string Name, decimal LeastOrder = 0, decimal Freight = 0, decimal? FreeFrom = null)
{
    /// <summary>Most days that may be told from ordering until goods are there.</summary>
    public const int MostLeadDays = 1_000;

    /// <summary>Days from ordering until the goods are there, counted on the calendar, 0 to <see cref="MostLeadDays"/>; null when nobody said.</summary>
    public int? LeadDays { get; init; }

    /// <summary>What sending goods for so much costs.</summary>
    public decimal FreightFor(decimal goods) => FreeFrom is { } from && goods >= from ? 0 : Freight;
}

/// <summary>How many of an item to buy: what is used and to spare, less what is at home.</summary>
/// <param name="Item">What, by name.</param>
/// <param name="Amount">How many, 1 or more.</param>
public sealed record Want(string Item, int Amount);
