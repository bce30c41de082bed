using System.Collections.Immutable;

namespace Coilwright.Core.Pricing.Formulas;

/// <summary>What a formula can do beside the four calculations.</summary>
public static class FormulaFunctions
{
    /// <summary>The least of two values or more.</summary>
    public const string Min = "min";

    /// <summary>The greatest of two values or more.</summary>
    public const string Max = "max";

    /// <summary>A value, up to the next multiple of a step: <c>up(cost * 2, 0.5)</c>. See <see cref="PriceRounding.Up"/>.</summary>
    public const string Up = "up";

    /// <summary>A value, up to the next that ends so: <c>ending(cost * 2, 0.9)</c>. See <see cref="PriceRounding.Ending"/>.</summary>
    public const string Ending = "ending";

    /// <summary>Their names.</summary>
    public static ImmutableArray<string> Names { get; } = [Min, Max, Up, Ending];

    /// <summary>Whether so many values are as many as it takes: two, and for the least and greatest also more.</summary>
    internal static bool Takes(string name, int values) => values == 2 || values > 2 && name is Min or Max;
}
