using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing.Formulas;

namespace Coilwright.Core.Pricing;

/// <summary>A sheet of costs whose rules can be worked out: every formula is read, every name is known, no rule comes back to itself, and no fees take the whole price.</summary>
public sealed class Costs
{
    /// <summary>What all fees of one rule may keep together, in a hundred of its price: some of it must be left, or no price would ever be enough.</summary>
    public const decimal MostFees = 99.99m;

    private Costs(CostSheet sheet, ImmutableArray<Formula> formulas, ImmutableArray<int> order) => (Sheet, Formulas, Order) = (sheet, formulas, order);

    /// <summary>Nothing but the beads is known.</summary>
    public static readonly Costs Empty = new(CostSheet.Empty, [], []);

    /// <summary>As it was written.</summary>
    public CostSheet Sheet { get; }

    /// <summary>For each rule its formula.</summary>
    public ImmutableArray<Formula> Formulas { get; }

    /// <summary>The rules by index, each after those that it names.</summary>
    public ImmutableArray<int> Order { get; }

    /// <summary>Checks a sheet. That its numbers are within bounds is left to whoever reads it.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="costs">The same, checked.</param>
    /// <param name="faults">What is wrong, by the path in the sheet.</param>
    public static bool TryMake(CostSheet sheet, out Costs? costs, out ImmutableArray<Fault> faults)
    {
        costs = null;
        var found = ImmutableArray.CreateBuilder<Fault>();
        Twice(sheet.Fees.Select(f => f.Name), "fees", found);
        Twice(sheet.Rules.Select(r => r.Name), "rules", found);
        ImmutableArray<string> rules = [.. sheet.Rules.Select(r => r.Name)];
        string[] known = [.. CostFigures.Names, .. rules, .. FormulaFunctions.Names];
        var formulas = ImmutableArray.CreateBuilder<Formula>();
        for (var r = 0; r < sheet.Rules.Length; r++)
        {
            var (rule, at) = (sheet.Rules[r], $"rules[{Text(r)}]");
            if (!IsName(rule.Name)) found.Add(Fault.Of(FaultCodes.PriceRuleNameForm, at + ".name", rule.Name));
            else if (CostFigures.Names.Contains(rule.Name) || FormulaFunctions.Names.Contains(rule.Name))
                found.Add(Fault.Of(FaultCodes.PriceRuleNameTaken, at + ".name", rule.Name, ("known", string.Join(", ", CostFigures.Names.Concat(FormulaFunctions.Names)))));
            Fees(sheet, rule, at, found);
            if (!Formula.TryRead(rule.Formula, out var formula, out var slip)) found.Add(slip!.Under(at + ".formula"));
            else
            {
                formulas.Add(formula!);
                foreach (var (name, character) in formula!.Names.Where(n => !known.Contains(n.Name)))
                    found.Add(Fault.Of(FaultCodes.FormulaNameUnknown, at + ".formula", rule.Formula, ("name", name), ("at", Text(character)), ("known", string.Join(", ", known)), ("nearest", NearestName.Of(name, known) ?? "")));
            }
        }
        ImmutableArray<int> order = [];
        if (found.Count == 0) order = Ordered(sheet, formulas, found);
        faults = found.ToImmutable();
        if (faults.Length > 0) return false;
        costs = new Costs(sheet, formulas.ToImmutable(), order);
        return true;
    }

    private static void Twice(IEnumerable<string> names, string list, ImmutableArray<Fault>.Builder found)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var (name, n) in names.Select((name, n) => (name, n)))
            if (!seen.TryAdd(name, n)) found.Add(Fault.Of(FaultCodes.NameTwice, $"{list}[{Text(n)}].name", name));
    }

    private static void Fees(CostSheet sheet, PriceRule rule, string at, ImmutableArray<Fault>.Builder found)
    {
        string[] known = [.. sheet.Fees.Select(f => f.Name)];
        for (var f = 0; f < rule.Fees.Length; f++)
            if (!known.Contains(rule.Fees[f]))
                found.Add(Fault.Of(FaultCodes.WordUnknown, $"{at}.fees[{Text(f)}]", rule.Fees[f], ("known", string.Join(", ", known)), ("nearest", NearestName.Of(rule.Fees[f], known) ?? "")));
            else if (Array.IndexOf([.. rule.Fees], rule.Fees[f]) < f)
                found.Add(Fault.Of(FaultCodes.NameTwice, $"{at}.fees[{Text(f)}]", rule.Fees[f]));
        var percent = sheet.Fees.Where(f => rule.Fees.Contains(f.Name)).Sum(f => f.Percent);
        if (percent > MostFees) found.Add(Fault.Of(FaultCodes.FeesTakeAll, at + ".fees", "", ("percent", percent.ToString("0.####", CultureInfo.InvariantCulture))));
    }

    // Each rule after those that it names; one that leads back to itself is told with the way round.
    private static ImmutableArray<int> Ordered(CostSheet sheet, ImmutableArray<Formula>.Builder formulas, ImmutableArray<Fault>.Builder found)
    {
        var order = ImmutableArray.CreateBuilder<int>();
        var done = new HashSet<int>();
        var way = new List<int>();
        for (var r = 0; r < sheet.Rules.Length && found.Count == 0; r++) Visit(r);
        return order.ToImmutable();

        void Visit(int r)
        {
            if (done.Contains(r) || found.Count > 0) return;
            way.Add(r);
            foreach (var (name, at) in formulas[r].Names)
            {
                if (IndexOf(name) is not { } next) continue;
                if (way.IndexOf(next) is >= 0 and var from)
                {
                    var round = way.Skip(from).Append(next).Select(w => sheet.Rules[w].Name);
                    found.Add(Fault.Of(FaultCodes.FormulaCycle, $"rules[{Text(r)}].formula", formulas[r].Text, ("way", string.Join(", ", round)), ("at", Text(at))));
                    return;
                }
                Visit(next);
                if (found.Count > 0) return;
            }
            way.RemoveAt(way.Count - 1);
            done.Add(r);
            order.Add(r);
        }

        int? IndexOf(string name)
        {
            for (var r = 0; r < sheet.Rules.Length; r++)
                if (sheet.Rules[r].Name == name) return r;
            return null;
        }
    }

    private static bool IsName(string name) => name.Length > 0 && char.IsAsciiLetterLower(name[0]) && name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_');

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
