using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;
using Coilwright.Core.Pricing.Formulas;
using CsCheck;

namespace Coilwright.Core.Tests.Pricing;

/// <summary>Formulas: what they come to, and where they are wrong.</summary>
public class FormulaTests
{
    private static readonly Dictionary<string, decimal> Figures = new() { ["cost"] = 12.5m, ["hours"] = 0.75m, ["labour"] = 9m, ["none"] = 0m, ["much"] = 1e20m };

    private static Fault? Slip(string text)
    {
        if (!Formula.TryRead(text, out var formula, out var fault)) return fault;
        formula!.TryWorkOut(n => Figures[n], out _, out fault);
        return fault;
    }

    private static decimal Worked(string text)
    {
        Assert.True(Formula.TryRead(text, out var formula, out var fault), fault?.ToString());
        Assert.True(formula!.TryWorkOut(n => Figures[n], out var value, out fault), fault?.ToString());
        return value;
    }

    // Worked by hand.
    [Theory]
    [InlineData("2 + 3 * 4", 14)]
    [InlineData("(2 + 3) * 4", 20)]
    [InlineData("10 - 3 - 2", 5)]
    [InlineData("24 / 4 / 2", 3)]
    [InlineData("24 / (4 / 2)", 12)]
    [InlineData("2 * -3 + 10", 4)]
    [InlineData("--4", 4)]
    [InlineData("-2 * -2", 4)]
    [InlineData("cost * 2", 25)]
    [InlineData("cost*(1+10%)", 13.75)]
    [InlineData("40%%", 0.004)]
    [InlineData("labour / hours", 12)]
    [InlineData("3 × 4 ÷ 2 − 1", 5)]
    [InlineData("min(cost, 9, 11)", 9)]
    [InlineData("max(cost, 9)", 12.5)]
    [InlineData("up(12.31, 0.5)", 12.5)]
    [InlineData("up(12.5, 0.5)", 12.5)]
    [InlineData("up(10 / 3 * 3, 0.5)", 10)]
    [InlineData("up(-0.7, 0.5)", -0.5)]
    [InlineData("ending(12.31, 0.9)", 12.9)]
    [InlineData("ending(12.91, 0.9)", 13.9)]
    [InlineData("ending(23, 9.9)", 29.9)]
    [InlineData("ending(120, 95)", 195)]
    [InlineData("ending(12, 0)", 12)]
    [InlineData(".5 + 1.", 1.5)]
    public void A_formula_comes_to_what_is_worked_by_hand(string text, double value) => Assert.Equal((decimal)value, Worked(text));

    [Theory]
    [InlineData("", FaultCodes.FormulaValueExpected, 1)]
    [InlineData("2 +", FaultCodes.FormulaValueExpected, 4)]
    [InlineData("2 + * 3", FaultCodes.FormulaValueExpected, 5)]
    [InlineData("1.2.3", FaultCodes.FormulaValueExpected, 1)]
    [InlineData("Cost", FaultCodes.FormulaValueExpected, 1)]
    [InlineData("2 cost", FaultCodes.FormulaSignExpected, 3)]
    [InlineData("2,5 * 3", FaultCodes.FormulaSignExpected, 2)]
    [InlineData("2)", FaultCodes.FormulaSignExpected, 2)]
    [InlineData("cost; labour", FaultCodes.FormulaSignExpected, 5)]
    [InlineData("(2 + 3", FaultCodes.FormulaBracketOpen, 7)]
    [InlineData("min(2, 3", FaultCodes.FormulaBracketOpen, 9)]
    [InlineData("2 + min(3)", FaultCodes.FormulaValues, 5)]
    [InlineData("min", FaultCodes.FormulaValues, 1)]
    [InlineData("up(1, 2, 3)", FaultCodes.FormulaValues, 1)]
    [InlineData("min()", FaultCodes.FormulaValueExpected, 5)]
    [InlineData("cost / none", FaultCodes.FormulaDividesByZero, 6)]
    [InlineData("1 + 2 / (3 - 3)", FaultCodes.FormulaDividesByZero, 7)]
    [InlineData("much * much", FaultCodes.FormulaTooLarge, 6)]
    [InlineData("99999999999999999999999999999999", FaultCodes.FormulaValueExpected, 1)]
    [InlineData("up(much, 1)", FaultCodes.FormulaTooLarge, 1)]
    [InlineData("up(cost, 0)", FaultCodes.FormulaStep, 1)]
    [InlineData("up(cost, -1)", FaultCodes.FormulaStep, 1)]
    [InlineData("1 + ending(cost, 100)", FaultCodes.FormulaEnding, 5)]
    public void A_slip_is_told_by_its_character(string text, string code, int at)
    {
        var fault = Slip(text);
        Assert.Equal((code, at.ToString(CultureInfo.InvariantCulture)), (fault?.Code, fault?.Values["at"]));
    }

    [Fact]
    public void A_formula_too_long_is_not_read() =>
        Assert.Equal(FaultCodes.TextTooLong, Slip(string.Join('+', Enumerable.Repeat("1", 201)))?.Code);

    [Fact]
    public void Brackets_as_deep_as_the_text_is_long_are_read() => Assert.Equal(7, Worked(new string('(', 199) + "7" + new string(')', 199)));

    [Fact]
    public void Names_are_told_once_with_their_first_place()
    {
        Assert.True(Formula.TryRead("max(cost, b_2) + cost / hours", out var formula, out _));
        Assert.Equal([("cost", 5), ("b_2", 11), ("hours", 25)], formula!.Names);
    }

    // A formula as a tree of its own, written down with some brackets and blanks more than it needs, and worked out in fractions of whole numbers.
    private abstract record Made
    {
        public sealed record Leaf(decimal Value, bool Percent) : Made;

        public sealed record Both(char Sign, Made Left, Made Right) : Made;

        public sealed record Other(Made Of) : Made;

        public sealed record Choice(string Name, Made Left, Made Right) : Made;
    }

    private static Gen<Made> Any(int depth)
    {
        var leaf = Gen.Select(Gen.Int[0, 99_999], Gen.Bool, (n, percent) => (Made)new Made.Leaf(n / 100m, percent));
        if (depth == 0) return leaf;
        var less = Any(depth - 1);
        return Gen.Frequency((1, leaf), (6, Gen.Select(Gen.Int[0, 3].Select(i => "+-*/"[i]), less, less, (s, a, b) => (Made)new Made.Both(s, a, b))),
            (1, less.Select(a => (Made)new Made.Other(a))), (1, Gen.Select(Gen.Bool.Select(least => least ? "min" : "max"), less, less, (f, a, b) => (Made)new Made.Choice(f, a, b))));
    }

    private static int Strength(Made made) => made switch { Made.Both { Sign: '+' or '-' } => 0, Made.Both => 1, Made.Other => 2, _ => 3 };

    private static string Written(Made made, Random random)
    {
        var text = made switch
        {
            Made.Leaf leaf => leaf.Value.ToString(CultureInfo.InvariantCulture) + (leaf.Percent ? "%" : ""),
            Made.Both both => Inside(both.Left, Strength(both)) + Blank() + both.Sign + Blank() + Inside(both.Right, Strength(both) + 1),
            Made.Other other => "-" + Inside(other.Of, 2),
            Made.Choice choice => $"{choice.Name}({Blank()}{Written(choice.Left, random)},{Blank()}{Written(choice.Right, random)})",
            _ => throw new InvalidOperationException(),
        };
        return random.Next(8) == 0 ? $"({text})" : text;

        string Inside(Made part, int least) => Strength(part) < least ? $"({Written(part, random)})" : Written(part, random);
        string Blank() => random.Next(2) == 0 ? " " : "";
    }

    // The value, and by how much 28 digits can be off it, followed through each calculation.
    private static (Fraction Value, double Off)? Exact(Made made)
    {
        if (made is Made.Leaf leaf) return (leaf.Percent ? Fraction.Of(leaf.Value) / 100m : leaf.Value, 0);
        if (made is Made.Other other) return Exact(other.Of) is var (of, off) ? (0m - of, off) : null;
        var (first, second) = made is Made.Both both_ ? (both_.Left, both_.Right) : ((Made.Choice)made is var c ? (c.Left, c.Right) : default);
        if (Exact(first) is not var (a, da) || Exact(second) is not var (b, db)) return null;
        if (made is Made.Choice choice) return (choice.Name == "min" == a < b ? a : b, Math.Max(da, db));
        var sign = ((Made.Both)made).Sign;
        // A divisor that may be nought or not by its last digits says nothing.
        if (sign == '/' && (b.IsZero || Size(b) < 1e3 * db)) return null;
        var value = sign switch { '+' => a + b, '-' => a - b, '*' => a * b, _ => a / b };
        var carried = sign switch { '+' or '-' => da + db, '*' => Size(a) * db + Size(b) * da + da * db, _ => (da + Size(value) * db) / (Size(b) - db) };
        return (value, carried + 1e-28 * Math.Max(1, Size(value)));
    }

    private static double Size(Fraction value) => value.IsZero ? 0 : value.Abs.Double;

    [Fact]
    public void A_random_formula_comes_to_what_fractions_come_to()
    {
        var known = 0;
        Gen.Select(Any(4), Gen.Int[0, int.MaxValue]).Sample((made, seed) =>
        {
            var text = Written(made, new Random(seed));
            if (text.Length > Formula.MostLength) return;
            Assert.True(Formula.TryRead(text, out var formula, out var slip), $"{text}: {slip}");
            var worked = formula!.TryWorkOut(_ => 0, out var value, out var fault);
            if (Exact(made) is not var (exact, off)) return;
            known++;
            Assert.True(worked, $"{text}: {fault}");
            Assert.True(Size(exact - value) <= off * 1.001, $"{text} = {value}, not {exact} within {off}");
        }, iter: 4000, threads: 1);
        Assert.True(known > 2000, $"Only {known} formulas could be told.");
    }

    [Fact]
    public void Rounding_goes_up_as_fractions_do_and_never_by_a_step_or_more() => Gen.Select(Gen.Long[-10_000_000, 10_000_000], Gen.Int[1, 50_000]).Sample((cents, step) =>
    {
        var (value, by) = (cents / 1000m, step / 1000m);
        var up = PriceRounding.Up(value, by);
        Assert.True(up >= value && up - value < by && up % by == 0);
        Assert.True((Fraction.Of(up) - Fraction.Of(value).Up(by)).IsZero);
        var ending = (step % 10_000) / 100m;
        var ended = PriceRounding.Ending(value, ending);
        var every = ending < 1 ? 1 : ending < 10 ? 10 : 100;
        Assert.True(ended >= value && ended - value < every && (ended - ending) % every == 0, $"{value} {ending} {ended}");
    }, iter: 2000, threads: 1);
}
