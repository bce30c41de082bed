namespace Coilwright.Core.Measures;

/// <summary>The avoirdupois ounce, in which seed beads and wire are sold by weight.</summary>
public static class Ounce
{
    /// <summary>Grams in one, exact by definition (international yard and pound agreement, 1959).</summary>
    public const double Grams = 28.349523125;
}
