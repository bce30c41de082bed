using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Pricing.Formulas;

/// <summary>Reads a formula from left to right: sums of products of values. Stops at the first slip.</summary>
internal sealed class FormulaParser(string text)
{
    private int _at;
    private Fault? _fault;

    /// <summary>The formula; null, with the fault, when it is none.</summary>
    public FormulaNode? Read(out Fault? fault)
    {
        var node = Sum();
        if (node is not null && Peek() is not '\0') node = Slip(FaultCodes.FormulaSignExpected);
        fault = _fault;
        return node;
    }

    private FormulaNode? Sum()
    {
        var left = Product();
        while (left is not null && Peek() is '+' or '-' or '−')
        {
            var (at, sign) = (_at + 1, text[_at++] == '+' ? '+' : '-');
            left = Product() is { } right ? new CalculationNode(at, sign, left!, right) : null;
        }
        return left;
    }

    private FormulaNode? Product()
    {
        var left = Signed();
        while (left is not null && Peek() is '*' or '×' or '/' or '÷')
        {
            var (at, sign) = (_at + 1, text[_at++] is '*' or '×' ? '*' : '/');
            left = Signed() is { } right ? new CalculationNode(at, sign, left!, right) : null;
        }
        return left;
    }

    private FormulaNode? Signed()
    {
        if (Peek() is not ('-' or '−')) return InHundred();
        var at = ++_at;
        return Signed() is { } of ? new MinusNode(at, of) : null;
    }

    private FormulaNode? InHundred()
    {
        var value = Value();
        while (value is not null && Peek() == '%') value = new PercentNode(++_at, value);
        return value;
    }

    private FormulaNode? Value()
    {
        var first = Peek();
        var start = _at;
        if (first == '(')
        {
            _at++;
            return Sum() is { } inside ? Close(inside) : null;
        }
        if (char.IsAsciiDigit(first) || first == '.')
        {
            while (_at < text.Length && (char.IsAsciiDigit(text[_at]) || text[_at] == '.')) _at++;
            if (decimal.TryParse(text.AsSpan(start, _at - start), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)) return new NumberNode(start + 1, number);
            _at = start;
            return Slip(FaultCodes.FormulaValueExpected);
        }
        if (!IsLetter(first)) return Slip(FaultCodes.FormulaValueExpected);
        while (_at < text.Length && (IsLetter(text[_at]) || char.IsAsciiDigit(text[_at]) || text[_at] == '_')) _at++;
        var name = text[start.._at];
        return FormulaFunctions.Names.Contains(name) ? Function(name, start + 1) : new NameNode(start + 1, name);
    }

    private FunctionNode? Function(string name, int at)
    {
        var values = ImmutableArray.CreateBuilder<FormulaNode>();
        if (Peek() == '(')
        {
            do
            {
                _at++;
                if (Sum() is not { } value) return null;
                values.Add(value);
            }
            while (Peek() == ',');
            if (Close(values[0]) is null) return null;
        }
        if (FormulaFunctions.Takes(name, values.Count)) return new FunctionNode(at, name, values.ToImmutable());
        _fault ??= Fault.Of(FaultCodes.FormulaValues, "", text, ("function", name), ("at", Text(at)));
        return null;
    }

    private FormulaNode? Close(FormulaNode inside)
    {
        if (Peek() != ')') return Slip(FaultCodes.FormulaBracketOpen);
        _at++;
        return inside;
    }

    private FormulaNode? Slip(string code)
    {
        _fault ??= Fault.Of(code, "", text, ("at", Text(_at + 1)));
        return null;
    }

    /// <summary>The next sign that is no blank; a nought character at the end.</summary>
    private char Peek()
    {
        while (_at < text.Length && char.IsWhiteSpace(text[_at])) _at++;
        return _at < text.Length ? text[_at] : '\0';
    }

    private static bool IsLetter(char c) => char.IsAsciiLetterLower(c);

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
