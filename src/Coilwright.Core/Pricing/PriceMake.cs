using System.Collections.Immutable;

namespace Coilwright.Core.Pricing;

/// <summary>A part of a price.</summary>
public enum PricePart
{
    /// <summary>Materials.</summary>
    Materials,

    /// <summary>Labour.</summary>
    Labour,

    /// <summary>Overheads.</summary>
    Overhead,

    /// <summary>Fees.</summary>
    Fees,

    /// <summary>What is left of it.</summary>
    Gain,
}

/// <summary>What a rule's price is made of: its parts add up to it, whatever it loses.</summary>
/// <param name="Asked">The price.</param>
/// <param name="Parts">Each part and how much it is, 0 or more but for <see cref="PricePart.Gain"/>, which is below 0 when the price loses.</param>
public sealed record PriceMake(AskedPrice Asked, ImmutableArray<(PricePart Part, decimal Amount)> Parts)
{
    /// <summary>What a price of a plan is made of.</summary>
    public static PriceMake Of(PricePlan plan, AskedPrice asked)
    {
        var product = plan.Products.First(p => p.Sold == asked.Rule.Sells);
        return new PriceMake(asked,
        [
            (PricePart.Materials, product.Figure(CostFigures.Materials, null)), (PricePart.Labour, product.Figure(CostFigures.Labour, null)),
            (PricePart.Overhead, product.Figure(CostFigures.Overhead, null)), (PricePart.Fees, asked.Outcome.FeesTotal), (PricePart.Gain, asked.Outcome.Gain),
        ]);
    }
}

/// <summary>What a rule leaves over a span of prices: a straight line, since fees are a part of the price and a fixed sum.</summary>
/// <param name="Asked">The price that the rule asks.</param>
/// <param name="GainFrom">The gain at the least price of the span.</param>
/// <param name="GainTo">The gain at the greatest.</param>
/// <param name="Even">The price at which nothing is gained and nothing lost, not rounded.</param>
public sealed record GainLine(AskedPrice Asked, decimal GainFrom, decimal GainTo, decimal Even);

/// <summary>What the rules that sell the same leave over a span of prices.</summary>
/// <param name="From">The least price.</param>
/// <param name="To">The greatest: a quarter beyond all that is asked and all that is lost from.</param>
/// <param name="Lines">A line for each rule.</param>
public sealed record GainSpan(decimal From, decimal To, ImmutableArray<GainLine> Lines)
{
    /// <summary>The span of what is sold; null where no rule sells it, or everything is free.</summary>
    public static GainSpan? Of(PricePlan plan, Sold sold)
    {
        AskedPrice[] prices = [.. plan.Prices.Where(p => p.Rule.Sells == sold)];
        if (prices.Length == 0) return null;
        var to = prices.Max(p => Math.Max(p.Outcome.Price, Even(p))) * 1.25m;
        return to == 0 ? null : new GainSpan(0, to, [.. prices.Select(p => new GainLine(p, Gain(p, 0), Gain(p, to), Even(p)))]);
    }

    private static decimal Gain(AskedPrice asked, decimal price) => price - asked.Outcome.Fees.Sum(f => price * f.Fee.Percent / 100 + f.Fee.Fixed) - asked.Outcome.Cost;

    private static decimal Even(AskedPrice asked) => (asked.Outcome.Cost + asked.Outcome.Fees.Sum(f => f.Fee.Fixed)) / (1 - asked.Outcome.Fees.Sum(f => f.Fee.Percent) / 100);
}
