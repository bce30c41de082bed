namespace Coilwright.Core.Faults;

// Money, quotes, classes, and prices with their formulas.
public static partial class FaultCodes
{
    /// <summary>A currency is not three capital letters.</summary>
    public const string CurrencyForm = "currency.form";

    /// <summary>Costs and prices are in two currencies; {other} is that of the prices.</summary>
    public const string CurrenciesDiffer = "currency.differs";

    /// <summary>What is in stock of {bead} was paid for in one currency, and the costs or other beads are in {other}.</summary>
    public const string LotCurrencyDiffers = "currency.lot-differs";

    /// <summary>A quote ends before its own day, {on}.</summary>
    public const string QuoteEndsBefore = "quote.ends-before";

    /// <summary>A time of a class is not after another, {other}.</summary>
    public const string TimeNotAfter = "class.time-not-after";

    /// <summary>Eye protection is shared.</summary>
    public const string NeverShared = "class.never-shared";

    /// <summary>A rule for a price has a name that a formula could not write.</summary>
    public const string PriceRuleNameForm = "price-rule.name-form";

    /// <summary>A rule for a price has the name of a figure or function; {known} lists them.</summary>
    public const string PriceRuleNameTaken = "price-rule.name-taken";

    /// <summary>A rule for a price comes to less than nothing: {price}.</summary>
    public const string PriceBelowZero = "price-rule.below-zero";

    /// <summary>The fees of a rule keep {percent} in a hundred of the price.</summary>
    public const string FeesTakeAll = "fees.take-all";

    /// <summary>At character {at} of a formula a number, a name or a bracket is missing.</summary>
    public const string FormulaValueExpected = "formula.value-expected";

    /// <summary>At character {at} of a formula stands what is neither a sign to reckon with nor its end.</summary>
    public const string FormulaSignExpected = "formula.sign-expected";

    /// <summary>At character {at} of a formula a bracket should close.</summary>
    public const string FormulaBracketOpen = "formula.bracket-open";

    /// <summary>{function} of a formula, at character {at}, does not have two values, nor more where it can.</summary>
    public const string FormulaValues = "formula.values";

    /// <summary>A formula names {name} at character {at}, which is no figure and no rule; {nearest} is the likeliest, {known} lists all.</summary>
    public const string FormulaNameUnknown = "formula.name-unknown";

    /// <summary>A formula comes back to its own rule by way of {way}; {at} is the character where it goes that way.</summary>
    public const string FormulaCycle = "formula.cycle";

    /// <summary>A formula divides by nought at character {at}.</summary>
    public const string FormulaDividesByZero = "formula.divides-by-zero";

    /// <summary>A formula comes to more than can be reckoned at character {at}.</summary>
    public const string FormulaTooLarge = "formula.too-large";

    /// <summary>A formula rounds up to a step that is none, at character {at}.</summary>
    public const string FormulaStep = "formula.step";

    /// <summary>A formula asks at character {at} for an ending that no price has.</summary>
    public const string FormulaEnding = "formula.ending";
}
