using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Pricing;

/// <summary>What a piece costs, and what each rule asks for it.</summary>
/// <remarks>Money is decimal throughout and nothing is rounded on the way: only the price of a rule is, up, as the rule says. A rule that names another takes its rounded price.</remarks>
public sealed record PricePlan
{
    private PricePlan(Costs costs, ShoppingList list) => (Costs, List) = (costs, list);

    /// <summary>The costs.</summary>
    public Costs Costs { get; }

    /// <summary>The piece, how many are made together, and the beads.</summary>
    public ShoppingList List { get; }

    /// <summary>What one costs: the piece first, then a kit and a pattern where a rule sells one.</summary>
    public ImmutableArray<CostOf> Products { get; private init; } = [];

    /// <summary>What each rule asks, in the order in which they are written.</summary>
    public ImmutableArray<AskedPrice> Prices { get; private init; } = [];

    /// <summary>What another price leaves of the piece, without fees; null when nobody asked, or when there are rules to tell it.</summary>
    public PriceOutcome? At { get; private init; }

    /// <summary>The currency of all amounts; null when nobody said.</summary>
    public string? Currency => Costs.Sheet.Currency ?? List.Prices.Currency ?? LotCurrency;

    private string? LotCurrency { get; init; }

    /// <summary>Whether no rule asks for less than it costs.</summary>
    public bool NothingIsLost => Prices.All(p => p.Outcome.Gain >= 0);

    /// <summary>Works it out.</summary>
    /// <param name="costs">The costs.</param>
    /// <param name="list">So many pieces of one design, with their beads and prices.</param>
    /// <param name="wire">The wire of one.</param>
    /// <param name="at">Another price to look at, 0 or more; null for none.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="faults">Why there is none, by the path in the sheet: currencies that differ, a division by nought, a price below nought.</param>
    public static bool TryMake(Costs costs, ShoppingList list, WireUse wire, decimal? at, out PricePlan? plan, out ImmutableArray<Fault> faults) =>
        TryMake(costs, list, wire, null, at, out plan, out faults);

    /// <summary>Works it out with beads at what those in stock cost, where enough of them is there.</summary>
    /// <param name="costs">The costs.</param>
    /// <param name="list">So many pieces of one design, with their beads and prices.</param>
    /// <param name="wire">The wire of one.</param>
    /// <param name="lots">What beads in stock cost; null for none.</param>
    /// <param name="at">Another price to look at, 0 or more; null for none.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="faults">Why there is none, by the path in the sheet: currencies that differ, a division by nought, a price below nought.</param>
    public static bool TryMake(Costs costs, ShoppingList list, WireUse wire, LotCosts? lots, decimal? at, out PricePlan? plan, out ImmutableArray<Fault> faults)
    {
        plan = null;
        var sheet = costs.Sheet;
        if (sheet.Currency is { } one && list.Prices.Currency is { } other && one != other)
        {
            faults = [Fault.Of(FaultCodes.CurrenciesDiffer, "currency", one, ("other", other))];
            return false;
        }
        var paid = list.Items.Select(i => (Item: i, CostOf.LotOf(i, list, lots)?.Currency)).Where(i => i.Currency is not null).ToArray();
        var currency = sheet.Currency ?? list.Prices.Currency ?? paid.FirstOrDefault().Currency;
        if (paid.FirstOrDefault(p => p.Currency != currency) is { Item: { } odd } lot)
        {
            faults = [Fault.Of(FaultCodes.LotCurrencyDiffers, "", lot.Currency!, ("bead", odd.Bead!.Name), ("other", currency!))];
            return false;
        }
        Sold[] sold = [Sold.Piece, .. new[] { Sold.Kit, Sold.Pattern }.Where(s => sheet.Rules.Any(r => r.Sells == s))];
        ImmutableArray<CostOf> products = [.. sold.Select(s => CostOf.Of(s, sheet, list, wire, lots))];
        var prices = new AskedPrice?[sheet.Rules.Length];
        foreach (var r in costs.Order)
        {
            prices[r] = Price(costs, r, products.First(p => p.Sold == sheet.Rules[r].Sells), prices, at, out var fault);
            if (fault is null) continue;
            faults = [fault];
            return false;
        }
        faults = [];
        plan = new PricePlan(costs, list)
        {
            Products = products,
            LotCurrency = paid.FirstOrDefault().Currency,
            Prices = [.. prices.Select(p => p!)],
            At = at is { } price && sheet.Rules.IsEmpty ? OutcomeOf(price, [], products[0], sheet) : null,
        };
        return true;
    }

    /// <summary>What a rule asks for something else than it was written for: every figure that it names is that of <paramref name="product"/>, and so are those of the rules it names.</summary>
    /// <param name="costs">The costs.</param>
    /// <param name="rule">The rule, by its name among them.</param>
    /// <param name="product">What is sold.</param>
    /// <param name="price">The price; what was paid once for kits is no part of its outcome.</param>
    /// <param name="faults">Why there is none, by the path in the sheet: a division by nought, a price below nought.</param>
    public static bool TryAsk(Costs costs, string rule, CostOf product, out AskedPrice? price, out ImmutableArray<Fault> faults)
    {
        var known = new AskedPrice?[costs.Sheet.Rules.Length];
        (price, faults) = (null, []);
        foreach (var r in costs.Order.TakeWhile(_ => known.All(k => k?.Rule.Name != rule)))
        {
            known[r] = Price(costs, r, product, known, null, out var fault);
            if (fault is null) continue;
            faults = [fault];
            return false;
        }
        price = known.First(k => k?.Rule.Name == rule)!;
        price = price with { Outcome = price.Outcome with { OutlayTotal = 0 } };
        return true;
    }

    private static AskedPrice? Price(Costs costs, int r, CostOf product, AskedPrice?[] known, decimal? at, out Fault? fault)
    {
        var (sheet, rule, formula) = (costs.Sheet, costs.Sheet.Rules[r], costs.Formulas[r]);
        Fee[] fees = [.. rule.Fees.Select(name => sheet.Fees.First(f => f.Name == name))];
        var (share, each) = (fees.Sum(f => f.Percent) / 100, fees.Sum(f => f.Fixed));
        var field = $"rules[{r.ToString(CultureInfo.InvariantCulture)}].formula";
        if (!formula.TryWorkOut(Figure, out var worked, out fault))
        {
            fault = fault!.Under(field);
            return null;
        }
        fault = worked < 0 ? Fault.Of(FaultCodes.PriceBelowZero, field, formula.Text, ("price", worked.ToString("0.00", CultureInfo.InvariantCulture)))
            : worked > BuyingList.MostMoney ? Fault.Of(FaultCodes.FormulaTooLarge, field, formula.Text, ("at", "1")) : null;
        if (fault is not null) return null;
        var least = rule.Rounded((product.Cost.Amount!.Value + each) / (1 - share));
        return new AskedPrice(rule, worked, [.. formula.Names.Select(n => (n.Name, Figure(n.Name)))], OutcomeOf(rule.Rounded(worked), fees, product, sheet), least,
            at is { } price ? OutcomeOf(price, fees, product, sheet) : null);

        decimal Figure(string name) => name switch
        {
            CostFigures.FeeShare => share,
            CostFigures.FeeFixed => each,
            _ => known.FirstOrDefault(k => k?.Rule.Name == name)?.Outcome.Price ?? product.Figure(name, sheet.WagePerHour),
        };
    }

    private static PriceOutcome OutcomeOf(decimal price, IReadOnlyList<Fee> fees, CostOf product, CostSheet sheet)
    {
        var cost = product.Cost.Amount!.Value;
        return new PriceOutcome(price, [.. fees.Select(f => new FeeTaken(f, price * f.Percent / 100 + f.Fixed))], cost, cost - product.Figure(CostFigures.Labour, null), product.Minutes,
            sheet.Outlays.Where(o => o.For.Contains(product.Sold)).Sum(o => o.Amount));
    }
}
