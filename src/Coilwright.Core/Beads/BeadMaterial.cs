namespace Coilwright.Core.Beads;

/// <summary>How a polished bead of a material takes light.</summary>
public enum MaterialLook
{
    /// <summary>Smooth and not to be seen through: plastic, glaze, and whatever is unknown.</summary>
    Plain,

    /// <summary>Lets light through: glass, crystal, clear stones.</summary>
    Glass,

    /// <summary>Polished stone.</summary>
    Stone,

    /// <summary>Mirrors as metal does.</summary>
    Metal,

    /// <summary>A soft shine from beneath the surface.</summary>
    Pearl,

    /// <summary>Oiled or raw wood.</summary>
    Wood,
}

/// <summary>What a bead is made of, as far as its mass and its cautions go.</summary>
/// <param name="Key">Name in the data, as <c>soda-lime-glass</c>.</param>
/// <param name="DensityGPerCm3">Density, g/cm3, above 0.</param>
/// <param name="IsMetal">Whether rules on nickel, lead and cadmium in metals may concern it.</param>
/// <param name="Source">Where the density was read.</param>
public sealed record BeadMaterial(string Key, double DensityGPerCm3, bool IsMetal, string Source)
{
    /// <summary>How it takes light, for pictures.</summary>
    public MaterialLook Look { get; init; }
}
