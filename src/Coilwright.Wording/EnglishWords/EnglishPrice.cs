using System.Collections.Frozen;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PriceWords"/>.</summary>
internal static class EnglishPrice
{
    internal static PriceWords Make() => new()
    {
        Verb = "Work out what a piece costs, line by line, and what your own rules ask for it: to shops, to buyers, on consignment, as a kit, as a pattern.",
        CostsOption = "What your work costs and how you price it, as my-studio.costs.json. Without it: the beads alone.",
        PricesOption = "Who sells what in which packs at what price; each bead is reckoned at the cheapest. Without it: the pack and price that stand with each bead.",
        CountOption = "How many are made together: steps done once for all are divided by it, and beads cost what so many cost. Without it: 1.",
        AtOption = "Look at another price too: what it leaves under each rule.",
        ShelfOption = "The folder that the bench keeps its pieces in: beads of which enough is in its stock cost what those cost, the others what the prices say.",
        LotsOption = "How it is reckoned what those in stock cost: average or first-in. Without it: average.",
        ExampleCosts = "my-studio.costs.json",
        Title = "What it costs, and what to ask",
        For = "For one {name}{?count:, {count} made together}.",
        NoWage = "No wage is told, so work is counted as nothing.",
        NoSteps = "No step of work is timed, so no work is counted in.",
        NoWaste = "No waste is told: a bead that breaks is not counted in.",
        NoWire = "No price of wire is told, so the wire is not counted in.",
        NoOverhead = "No overhead is told, so none is counted in.",
        Unpriced = "{count} {count:thing has|things have} no price and {count:is|are} counted as nothing: {names}.",
        PieceHeading = "What one costs",
        KitHeading = "What a kit of it costs",
        PatternHeading = "What the pattern of it costs",
        Caps = "caps to glue on",
        PartOfPacks = "{count}, at {price} for {holds}{?supplier: from {supplier}}",
        PartOfStock = "{count} from stock, at {value} for the {there} there{?first: (first in, first out)}{?average: (on average)}",
        WithoutPrice = "{count}, without a price",
        InHundred = "{percent}\u00a0% of {of}",
        LengthOfPack = "{cut} out of {pack} at {price}",
        SharedBy = "{price} for {pieces}",
        ByTheHour = "{minutes} minutes at {wage} an hour{?batch: ({batch} at once)}",
        WithoutWage = "{minutes} minutes, without a wage",
        AskHeading = "What to ask",
        AtHeading = "What {price} would leave",
        NoRules = "No rule says what to ask. Rules stand in a file of costs, after --costs.",
        RuleColumn = "rule",
        PriceColumn = "price",
        LeftColumn = "after fees",
        GainColumn = "gain",
        MarginColumn = "of price",
        HourColumn = "an hour",
        NoRule = "without fees",
        Worked = "{rule}: \"{formula}\"{?uses: with {uses}} comes to {worked}{?price:, rounded up to {price}}.",
        Fees = "Kept of it: {fees}.",
        FeeOf = "{name} {amount}",
        BreakEven = "The {outlay} paid once are back after {count} sold.",
        Loses = "\"{rule}\" loses {loss} on each. From {least} on nothing is lost.",
        Hour = "An hour is what is left for an hour of work when all but the work is paid.",
        Rounding = "Only prices are rounded, up; everything else is shown to the cent. A bead costs its part of a pack. This is no advice on taxes.",
        Figures = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["beads"] = "beads",
            ["waste"] = "waste",
            ["findings"] = "findings",
            ["wire"] = "wire",
            ["packaging"] = "packaging",
            ["materials"] = "materials",
            ["labour"] = "labour",
            ["overhead"] = "overhead",
            ["cost"] = "cost",
        }.ToFrozenDictionary(StringComparer.Ordinal),
    };
}
