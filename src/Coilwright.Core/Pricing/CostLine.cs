using System.Collections.Immutable;

namespace Coilwright.Core.Pricing;

/// <summary>How an amount comes about.</summary>
public abstract record CostHow;

/// <summary>The sum of its parts.</summary>
public sealed record SumOfParts : CostHow;

/// <summary>So many at a part of a pack's price: count times price, over what the pack holds.</summary>
/// <param name="Count">How many.</param>
/// <param name="Price">Of one pack.</param>
/// <param name="Holds">How many one pack holds.</param>
/// <param name="Unit">The unit of sale; empty when nobody said.</param>
/// <param name="Supplier">Who sells it; empty when nobody said.</param>
public sealed record PartOfPacks(int Count, decimal Price, int Holds, string Unit, string Supplier) : CostHow;

/// <summary>So many at what those in stock cost: count times value, over how many are there.</summary>
/// <param name="Count">How many.</param>
/// <param name="Value">What all in stock cost.</param>
/// <param name="There">How many are in stock, 1 or more.</param>
/// <param name="Way">How that is reckoned.</param>
public sealed record PartOfStock(int Count, decimal Value, int There, LotWay Way) : CostHow;

/// <summary>So many, and no price is known: counted as nothing.</summary>
/// <param name="Count">How many.</param>
public sealed record WithoutPrice(int Count) : CostHow;

/// <summary>So many in a hundred of something.</summary>
/// <param name="Percent">How many.</param>
/// <param name="Of">Of what.</param>
public sealed record InHundred(decimal Percent, decimal Of) : CostHow;

/// <summary>A length of a pack of wire.</summary>
/// <param name="Price">Of the pack.</param>
/// <param name="CutMm">Wire to cut, whole mm.</param>
/// <param name="PackMm">Wire in the pack, mm.</param>
public sealed record LengthOfPack(decimal Price, int CutMm, decimal PackMm) : CostHow;

/// <summary>A share of something that is paid once for several.</summary>
/// <param name="Price">What is paid.</param>
/// <param name="Pieces">For how many.</param>
public sealed record SharedBy(decimal Price, int Pieces) : CostHow;

/// <summary>Work by the hour.</summary>
/// <param name="Minutes">How long, for one.</param>
/// <param name="PerHour">What an hour costs; null when no wage is told, and then it is counted as nothing.</param>
/// <param name="Batch">For how many at once the time was taken; null where it is that of one.</param>
public sealed record ByTheHour(decimal Minutes, decimal? PerHour, int? Batch) : CostHow;

/// <summary>One line of what something costs, and the lines it is the sum of.</summary>
/// <param name="Figure">The figure that it is, one of <see cref="CostFigures"/>; empty for a line within one.</param>
/// <param name="Name">What it is: a bead's or step's own name; empty for a figure.</param>
/// <param name="Amount">What it comes to; null when it has no price.</param>
/// <param name="How">How it comes about.</param>
/// <param name="Parts">The lines that it is the sum of.</param>
public sealed record CostLine(string Figure, string Name, decimal? Amount, CostHow How, ImmutableArray<CostLine> Parts)
{
    /// <summary>A line for the sum of others.</summary>
    internal static CostLine Sum(string figure, ImmutableArray<CostLine> parts) => new(figure, "", parts.Sum(p => p.Amount ?? 0), new SumOfParts(), parts);

    /// <summary>A line by itself.</summary>
    internal static CostLine Of(string name, decimal? amount, CostHow how) => new("", name, amount, how, []);
}
