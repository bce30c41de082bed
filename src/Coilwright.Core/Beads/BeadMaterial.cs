namespace Coilwright.Core.Beads;

/// <summary>What a bead is made of, as far as its mass and its cautions go.</summary>
/// <param name="Key">Name in the data, as <c>soda-lime-glass</c>.</param>
/// <param name="DensityGPerCm3">Density, g/cm3, above 0.</param>
/// <param name="IsMetal">Whether rules on nickel, lead and cadmium in metals may concern it.</param>
/// <param name="Source">Where the density was read.</param>
public sealed record BeadMaterial(string Key, double DensityGPerCm3, bool IsMetal, string Source);
