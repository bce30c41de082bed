using System.Collections.Immutable;

namespace Coilwright.Core.Pricing;

/// <summary>What a fee keeps of a price.</summary>
/// <param name="Fee">The fee.</param>
/// <param name="Amount">What it keeps.</param>
public sealed record FeeTaken(Fee Fee, decimal Amount);

/// <summary>What a price leaves.</summary>
/// <param name="Price">The price.</param>
/// <param name="Fees">What each fee keeps of it.</param>
/// <param name="Cost">What one costs.</param>
/// <param name="WithoutLabour">What one costs beside its labour.</param>
/// <param name="Minutes">Work in one.</param>
/// <param name="OutlayTotal">What is paid once.</param>
public sealed record PriceOutcome(decimal Price, ImmutableArray<FeeTaken> Fees, decimal Cost, decimal WithoutLabour, decimal Minutes, decimal OutlayTotal)
{
    /// <summary>What all fees keep.</summary>
    public decimal FeesTotal => Fees.Sum(f => f.Amount);

    /// <summary>What is left after fees.</summary>
    public decimal Left => Price - FeesTotal;

    /// <summary>What is left after fees and cost, the maker's own wage among it; below 0 when it loses.</summary>
    public decimal Gain => Left - Cost;

    /// <summary>The gain as a part of the price; null at a price of 0.</summary>
    public decimal? Margin => Price == 0 ? null : Gain / Price;

    /// <summary>What is left for an hour of work when all but the labour is paid, below 0 when not even that is; null without timed work.</summary>
    public decimal? PayPerHour => Minutes == 0 ? null : (Left - WithoutLabour) * 60 / Minutes;

    /// <summary>How many must be sold until the gains bring in what was paid once; null when nothing was, or when there is no gain.</summary>
    public decimal? BreakEven => OutlayTotal == 0 || Gain <= 0 || OutlayTotal / PriceRounding.Most > Gain ? null : decimal.Ceiling(OutlayTotal / Gain);
}

/// <summary>A price that a rule gives.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Worked">What its formula comes to.</param>
/// <param name="Uses">The figures and rules that the formula names, with their values.</param>
/// <param name="Outcome">What its price leaves, rounded as the rule asks.</param>
/// <param name="LeastPrice">The least price by the rule's rounding at which nothing is lost.</param>
/// <param name="At">What another price leaves; null when nobody asked.</param>
public sealed record AskedPrice(PriceRule Rule, decimal Worked, ImmutableArray<(string Name, decimal Value)> Uses, PriceOutcome Outcome, decimal LeastPrice, PriceOutcome? At);
