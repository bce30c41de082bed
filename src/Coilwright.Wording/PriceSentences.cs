using Coilwright.Core.Pricing;
using Coilwright.Core.Shopping;

namespace Coilwright.Wording;

/// <summary>What a piece costs and what to ask for it, in a maker's words.</summary>
public sealed class PriceSentences(PricePlan plan, Language language)
{
    private readonly PriceWords _words = language.Price;

    /// <summary>What it is for.</summary>
    public string For() => language.Sentence(_words.For, ("name", plan.List.Pieces[0].Name), ("count", plan.List.Pieces[0].Count is > 1 and var count ? count : null));

    /// <summary>What is not counted into the piece, and which rules lose. A kit and a pattern show theirs by their lines.</summary>
    public IEnumerable<string> Mind()
    {
        foreach (var gap in plan.Products[0].Gaps) yield return Of(gap);
        string[] unpriced = [.. plan.Products[0].Unpriced.Select(NameOf)];
        if (unpriced.Length > 0) yield return language.Sentence(_words.Unpriced, ("count", unpriced.Length), ("names", string.Join(", ", unpriced)));
        foreach (var price in plan.Prices.Where(p => p.Outcome.Gain < 0))
            yield return language.Sentence(_words.Loses, ("rule", price.Rule.Name), ("loss", Money(-price.Outcome.Gain)), ("least", Money(price.LeastPrice)));
    }

    /// <summary>Heading over what something costs.</summary>
    public string HeadingOf(Sold sold) => sold switch { Sold.Kit => _words.KitHeading, Sold.Pattern => _words.PatternHeading, _ => _words.PieceHeading };

    /// <summary>What something costs, line by line: name, how it comes about, amount. Lines stand further in than the one they belong to.</summary>
    public IEnumerable<string[]> Lines(CostOf product) => Lines(product.Cost, 0);

    /// <summary>A line's name for people.</summary>
    public string NameOf(CostLine line) => line.Figure.Length > 0 ? FigureWords(line.Figure) : line.Name == ShoppingItem.GluedCap ? _words.Caps : line.Name == ShoppingItem.Dangle ? _words.Dangles : line.Name;

    /// <summary>What each rule asks: rule, price, left after fees, gain, gain of price, an hour.</summary>
    public IEnumerable<string[]> Prices() => plan.Prices.Select(p => Row(p.Rule.Name, p.Outcome));

    /// <summary>What another price leaves, likewise.</summary>
    public IEnumerable<string[]> At() => plan.At is { } at ? [Row(_words.NoRule, at)] : plan.Prices.Where(p => p.At is not null).Select(p => Row(p.Rule.Name, p.At!));

    /// <summary>Heading over another price; null when nobody asked.</summary>
    public string? AtHeading() => (plan.At ?? plan.Prices.FirstOrDefault()?.At) is { } at ? language.Sentence(_words.AtHeading, ("price", Money(at.Price))) : null;

    /// <summary>How each rule came to its price, what is kept of it, and after how many an outlay is back.</summary>
    public IEnumerable<string> Rules()
    {
        if (plan.Prices.IsEmpty) yield return _words.NoRules;
        foreach (var price in plan.Prices) yield return RuleOf(price);
    }

    /// <summary>How one rule came to its price, likewise.</summary>
    public string RuleOf(AskedPrice price)
    {
        var uses = string.Join(", ", price.Uses.Select(u => $"{u.Name} {ValueOf(u.Name, u.Value)}"));
        var said = language.Fill(_words.Worked, ("rule", price.Rule.Name), ("formula", price.Rule.Formula), ("uses", uses), ("worked", Money(price.Worked)),
            ("price", price.Outcome.Price == price.Worked ? null : Money(price.Outcome.Price)));
        if (!price.Outcome.Fees.IsEmpty)
            said += " " + language.Sentence(_words.Fees, ("fees", string.Join(", ", price.Outcome.Fees.Select(f => language.Fill(_words.FeeOf, ("name", f.Fee.Name), ("amount", Money(f.Amount)))))));
        if (price.Outcome.BreakEven is { } count)
            said += " " + language.Sentence(_words.BreakEven, ("outlay", Money(price.Outcome.OutlayTotal)), ("count", language.Number((double)count, 0)));
        return said;
    }

    /// <summary>What an hour means here, where there are prices, and how it is rounded.</summary>
    public IEnumerable<string> Notes() => plan.Prices.IsEmpty && plan.At is null ? [_words.Rounding] : [_words.Hour, _words.Rounding];

    /// <summary>An amount with its currency where that is known.</summary>
    public string Money(decimal amount) => plan.Currency is { } currency ? $"{language.Amount(amount)}\u00a0{currency}" : language.Amount(amount);

    private IEnumerable<string[]> Lines(CostLine line, int depth)
    {
        yield return [new string('\u00a0', 2 * depth) + NameOf(line), HowOf(line), AmountOf(line)];
        foreach (var row in line.Parts.SelectMany(p => Lines(p, depth + 1))) yield return row;
    }

    /// <summary>A line's amount; a dash where it has no price.</summary>
    public string AmountOf(CostLine line) => line.Amount is { } amount ? language.Amount(amount) : "–";

    /// <summary>How a line comes about; empty for a sum.</summary>
    public string HowOf(CostLine line) => line.How switch
    {
        SumOfParts => "",
        PartOfPacks part => language.Fill(_words.PartOfPacks, ("count", part.Count), ("price", language.Amount(part.Price)), ("holds", part.Holds), ("supplier", part.Supplier)),
        PartOfStock part => language.Fill(_words.PartOfStock, ("count", part.Count), ("value", language.Amount(part.Value)), ("there", part.There),
            ("first", part.Way == LotWay.FirstIn ? 1 : null), ("average", part.Way == LotWay.Average ? 1 : null)),
        WithoutPrice without => language.Fill(_words.WithoutPrice, ("count", without.Count)),
        InHundred hundred => language.Fill(_words.InHundred, ("percent", language.Number((double)hundred.Percent, 4)), ("of", language.Amount(hundred.Of))),
        LengthOfPack length => language.Fill(_words.LengthOfPack, ("cut", language.Length(length.CutMm)), ("pack", language.Length((double)length.PackMm)), ("price", language.Amount(length.Price))),
        SharedBy shared => language.Fill(_words.SharedBy, ("price", language.Amount(shared.Price)), ("pieces", shared.Pieces)),
        ByTheHour { PerHour: { } wage } work => language.Fill(_words.ByTheHour, ("minutes", language.Number((double)work.Minutes, 2)), ("wage", language.Amount(wage)), ("batch", work.Batch)),
        ByTheHour work => language.Fill(_words.WithoutWage, ("minutes", language.Number((double)work.Minutes, 2))),
        _ => throw new InvalidOperationException($"Nothing is said of a {line.How.GetType().Name}."),
    };

    private string[] Row(string rule, PriceOutcome outcome) =>
    [
        rule, language.Amount(outcome.Price), language.Amount(outcome.Left), language.Amount(outcome.Gain),
        outcome.Margin is { } margin ? language.Number((double)margin * 100, 1) + "\u00a0%" : "–", outcome.PayPerHour is { } pay ? language.Amount(pay) : "–",
    ];

    // A formula is typed in one language, so its names stay beside the words.
    private string FigureWords(string figure) => _words.Figures[figure] is var words && words == figure ? words : $"{words} ({figure})";

    private string ValueOf(string name, decimal value) => name is CostFigures.Hours or CostFigures.FeeShare ? language.Number((double)value, 4) : language.Amount(value);

    /// <summary>What is not counted because nobody told it.</summary>
    public string Of(CostGap gap) => gap switch
    {
        CostGap.Wage => _words.NoWage,
        CostGap.Steps => _words.NoSteps,
        CostGap.Waste => _words.NoWaste,
        CostGap.Wire => _words.NoWire,
        _ => _words.NoOverhead,
    };
}
