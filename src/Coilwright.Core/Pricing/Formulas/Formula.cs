using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Pricing.Formulas;

/// <summary>A formula of the maker's own: numbers, named figures, <c>+ - * /</c>, brackets, percent, and <see cref="FormulaFunctions"/>. It is read, never run as code.</summary>
/// <remarks>
/// <para>Calculations go from left to right, products before sums, a sign before both; <c>%</c> after a value is a hundredth of it. Numbers have a decimal point. Names are small letters,
/// digits and underscores.</para>
/// <para>Reckoned in decimals of 28 digits: sums and products of money are exact, a division is rounded at its last digit.</para>
/// </remarks>
public sealed class Formula
{
    /// <summary>The longest formula, characters.</summary>
    public const int MostLength = 400;

    private readonly FormulaNode _root;

    private Formula(string text, FormulaNode root)
    {
        (Text, _root) = (text, root);
        var names = ImmutableArray.CreateBuilder<(string, int)>();
        Collect(root, names);
        Names = [.. names.DistinctBy(n => n.Item1)];
    }

    /// <summary>As it was written.</summary>
    public string Text { get; }

    /// <summary>The figures and rules that it names, each once, with the character from 1 where it stands first.</summary>
    public ImmutableArray<(string Name, int At)> Names { get; }

    /// <summary>Reads a formula.</summary>
    /// <param name="text">The text, at most <see cref="MostLength"/> characters.</param>
    /// <param name="formula">The formula.</param>
    /// <param name="fault">What is wrong, with the character from 1 under <c>at</c>; null when it is read.</param>
    public static bool TryRead(string text, out Formula? formula, out Fault? fault)
    {
        formula = null;
        fault = text.Length > MostLength ? Fault.Of(FaultCodes.TextTooLong, "", text[..60], ("max", MostLength.ToString(CultureInfo.InvariantCulture))) : null;
        if (fault is not null || new FormulaParser(text).Read(out fault) is not { } root) return false;
        formula = new Formula(text, root);
        return true;
    }

    /// <summary>Works it out.</summary>
    /// <param name="figure">The value of each of <see cref="Names"/>.</param>
    /// <param name="value">The value.</param>
    /// <param name="fault">Why there is none: a division by nought, a step too small, a number too large; null when there is one.</param>
    public bool TryWorkOut(Func<string, decimal> figure, out decimal value, out Fault? fault)
    {
        fault = null;
        value = Of(_root, figure, ref fault);
        return fault is null;
    }

    private decimal Of(FormulaNode node, Func<string, decimal> figure, ref Fault? fault)
    {
        switch (node)
        {
            case NumberNode number: return number.Value;
            case NameNode name: return figure(name.Name);
            case MinusNode minus: return -Of(minus.Of, figure, ref fault);
            case PercentNode percent: return Of(percent.Of, figure, ref fault) / 100;
            case CalculationNode both:
                var (left, right) = (Of(both.Left, figure, ref fault), Of(both.Right, figure, ref fault));
                if (fault is null && both.Sign == '/' && right == 0) fault = Slip(FaultCodes.FormulaDividesByZero, node);
                return fault is null ? Calculate(both, left, right, ref fault) : 0;
            case FunctionNode function:
                var values = new decimal[function.Values.Length];
                for (var v = 0; v < values.Length; v++) values[v] = Of(function.Values[v], figure, ref fault);
                return fault is null ? Apply(function, values, ref fault) : 0;
            default: throw new InvalidOperationException($"No formula has a {node.GetType().Name}.");
        }
    }

    private decimal Calculate(CalculationNode both, decimal left, decimal right, ref Fault? fault)
    {
        try
        {
            return both.Sign switch { '+' => left + right, '-' => left - right, '*' => left * right, _ => left / right };
        }
        catch (OverflowException)
        {
            fault = Slip(FaultCodes.FormulaTooLarge, both);
            return 0;
        }
    }

    private decimal Apply(FunctionNode function, decimal[] values, ref Fault? fault)
    {
        if (function.Name == FormulaFunctions.Min) return values.Min();
        if (function.Name == FormulaFunctions.Max) return values.Max();
        var isStep = function.Name == FormulaFunctions.Up;
        var fits = isStep ? values[1] >= PriceRounding.LeastStep : PriceRounding.IsEnding(values[1]);
        if (!fits) fault = Slip(isStep ? FaultCodes.FormulaStep : FaultCodes.FormulaEnding, function);
        else if (Math.Abs(values[0]) > PriceRounding.Most || values[1] > PriceRounding.Most) fault = Slip(FaultCodes.FormulaTooLarge, function);
        if (fault is not null) return 0;
        return isStep ? PriceRounding.Up(values[0], values[1]) : PriceRounding.Ending(values[0], values[1]);
    }

    private Fault Slip(string code, FormulaNode node) => Fault.Of(code, "", Text, ("at", node.At.ToString(CultureInfo.InvariantCulture)));

    private static void Collect(FormulaNode node, ImmutableArray<(string, int)>.Builder names)
    {
        switch (node)
        {
            case NameNode name: names.Add((name.Name, name.At)); break;
            case MinusNode minus: Collect(minus.Of, names); break;
            case PercentNode percent: Collect(percent.Of, names); break;
            case CalculationNode both:
                Collect(both.Left, names);
                Collect(both.Right, names);
                break;
            case FunctionNode function:
                foreach (var value in function.Values) Collect(value, names);
                break;
        }
    }
}
