using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>Words of what a piece costs and what to ask for it. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record PriceWords
{
    /// <summary>What <c>price</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--costs</c>.</summary>
    public required string CostsOption { get; init; }

    /// <summary><c>--prices</c>.</summary>
    public required string PricesOption { get; init; }

    /// <summary><c>--count</c>.</summary>
    public required string CountOption { get; init; }

    /// <summary><c>--at</c>.</summary>
    public required string AtOption { get; init; }

    /// <summary><c>--shelf</c>.</summary>
    public required string ShelfOption { get; init; }

    /// <summary><c>--lots</c>.</summary>
    public required string LotsOption { get; init; }

    /// <summary>A file of costs in the examples.</summary>
    public required string ExampleCosts { get; init; }

    /// <summary>Title of the page.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for: {name}, and {count} where several are made together.</summary>
    public required string For { get; init; }

    /// <summary>No wage is told.</summary>
    public required string NoWage { get; init; }

    /// <summary>No step of work is timed.</summary>
    public required string NoSteps { get; init; }

    /// <summary>No waste is told.</summary>
    public required string NoWaste { get; init; }

    /// <summary>No wire is told.</summary>
    public required string NoWire { get; init; }

    /// <summary>No overhead is told.</summary>
    public required string NoOverhead { get; init; }

    /// <summary>Things without a price: {count}, {names}.</summary>
    public required string Unpriced { get; init; }

    /// <summary>Heading over what a piece costs.</summary>
    public required string PieceHeading { get; init; }

    /// <summary>Heading over what a kit costs.</summary>
    public required string KitHeading { get; init; }

    /// <summary>Heading over what a pattern costs.</summary>
    public required string PatternHeading { get; init; }

    /// <summary>Caps for glued ends.</summary>
    public required string Caps { get; init; }

    /// <summary>Dangles that hang in end loops.</summary>
    public required string Dangles { get; init; }

    /// <summary>So many out of packs: {count}, {price}, {holds}, optionally {supplier}.</summary>
    public required string PartOfPacks { get; init; }

    /// <summary>So many out of stock: {count}, {value} for the {there} that are there, {first} in first out or on {average}.</summary>
    public required string PartOfStock { get; init; }

    /// <summary>So many without a price: {count}.</summary>
    public required string WithoutPrice { get; init; }

    /// <summary>A percentage: {percent}, {of}.</summary>
    public required string InHundred { get; init; }

    /// <summary>A length of a pack: {cut}, {pack}, {price}.</summary>
    public required string LengthOfPack { get; init; }

    /// <summary>Paid for several: {price}, {pieces}.</summary>
    public required string SharedBy { get; init; }

    /// <summary>Work: {minutes}, {wage}, optionally {batch}.</summary>
    public required string ByTheHour { get; init; }

    /// <summary>Work without a wage: {minutes}.</summary>
    public required string WithoutWage { get; init; }

    /// <summary>Heading over the prices.</summary>
    public required string AskHeading { get; init; }

    /// <summary>Heading over another price: {price}.</summary>
    public required string AtHeading { get; init; }

    /// <summary>There are no rules.</summary>
    public required string NoRules { get; init; }

    /// <summary>Column of the rule.</summary>
    public required string RuleColumn { get; init; }

    /// <summary>Column of the price.</summary>
    public required string PriceColumn { get; init; }

    /// <summary>Column of what is left after fees.</summary>
    public required string LeftColumn { get; init; }

    /// <summary>Column of the gain.</summary>
    public required string GainColumn { get; init; }

    /// <summary>Column of the gain in a hundred of the price.</summary>
    public required string MarginColumn { get; init; }

    /// <summary>Column of what an hour is paid.</summary>
    public required string HourColumn { get; init; }

    /// <summary>Stands for a rule where there is none.</summary>
    public required string NoRule { get; init; }

    /// <summary>How a rule came to its price: {rule}, {formula}, {worked}, optionally {uses} and the rounded {price}.</summary>
    public required string Worked { get; init; }

    /// <summary>Fees of a price: {fees}.</summary>
    public required string Fees { get; init; }

    /// <summary>A fee: {name}, {amount}.</summary>
    public required string FeeOf { get; init; }

    /// <summary>The outlay comes back: {outlay}, {count}.</summary>
    public required string BreakEven { get; init; }

    /// <summary>A rule loses: {rule}, {loss}, {least}.</summary>
    public required string Loses { get; init; }

    /// <summary>What the last column is.</summary>
    public required string Hour { get; init; }

    /// <summary>How it is rounded.</summary>
    public required string Rounding { get; init; }

    /// <summary>Heading over what prices are made of.</summary>
    public required string MadeOf { get; init; }

    /// <summary>What the bars show: {prices}.</summary>
    public required string MadeOfSays { get; init; }

    /// <summary>Parts of a price by name: materials, labour, overhead, fees, gain, loss.</summary>
    public required FrozenDictionary<string, string> PriceParts { get; init; }

    /// <summary>Heading over what is left over a span of prices.</summary>
    public required string Span { get; init; }

    /// <summary>What it shows: from {from} to {to}; {rules}.</summary>
    public required string SpanSays { get; init; }

    /// <summary>Of a rule: {letter}, {rule}, {price}, {gain}, {even}.</summary>
    public required string SpanRule { get; init; }

    /// <summary>Beside the axis: what is left.</summary>
    public required string SpanGain { get; init; }

    /// <summary>Beneath the axis: the price.</summary>
    public required string SpanPrice { get; init; }

    /// <summary>Figures of a cost, by <see cref="Core.Pricing.CostFigures"/>.</summary>
    public required FrozenDictionary<string, string> Figures { get; init; }
}
