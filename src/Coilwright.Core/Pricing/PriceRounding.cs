namespace Coilwright.Core.Pricing;

/// <summary>Prices are only rounded up: a price rounded down takes from the maker what her formula gave her.</summary>
/// <remarks>A division such as 10/3*3 leaves a hair at the 28th digit; what is within 10^-10 of a round price is that price, so that a hair does not cost a whole step.</remarks>
public static class PriceRounding
{
    /// <summary>Prices without a rule of their own go up to a hundredth: a cent.</summary>
    public const decimal Cent = 0.01m;

    /// <summary>Most that is rounded, either way of nought.</summary>
    public const decimal Most = 1_000_000_000_000m;

    /// <summary>The least step.</summary>
    public const decimal LeastStep = 0.0001m;

    private const int HairDecimals = 10;

    /// <summary>Up to the next multiple of a step.</summary>
    /// <param name="value">The value, at most <see cref="Most"/> either way of nought.</param>
    /// <param name="step">At least <see cref="LeastStep"/>.</param>
    public static decimal Up(decimal value, decimal step)
    {
        value = Math.Round(value, HairDecimals, MidpointRounding.AwayFromZero);
        var over = value % step;
        return over > 0 ? value - over + step : value - over;
    }

    /// <summary>Up to the next value that ends so: with 0.90 every 0.90, 1.90, 2.90; with 9.90 every 9.90, 19.90, 29.90.</summary>
    /// <param name="value">The value, at most <see cref="Most"/> either way of nought.</param>
    /// <param name="ending">What it ends in, see <see cref="IsEnding"/>.</param>
    public static decimal Ending(decimal value, decimal ending) => Up(value - ending, ending < 1 ? 1 : ending < 10 ? 10 : 100) + ending;

    /// <summary>Whether a price can end so: from 0 on and below 100.</summary>
    public static bool IsEnding(decimal ending) => ending is >= 0 and < 100;
}
