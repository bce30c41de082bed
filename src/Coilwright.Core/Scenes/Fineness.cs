namespace Coilwright.Core.Scenes;

/// <summary>How fine meshes are.</summary>
/// <param name="Spokes">Corners round a bead, a multiple of 8.</param>
/// <param name="Rings">Bands from one end of a rounded bead to the other, 2 or more.</param>
public readonly record struct Fineness(int Spokes, int Rings)
{
    /// <summary>To be looked at closely: what is left out of a ball is less than two hundredths of it.</summary>
    public static Fineness Fine { get; } = new(32, 16);

    /// <summary>Fine enough for a picture of the whole piece, and about as many triangles in all however many beads it has: our choice.</summary>
    /// <param name="beads">How many.</param>
    public static Fineness For(int beads) => beads switch
    {
        <= 60 => Fine,
        <= 300 => new(24, 10),
        <= 800 => new(16, 8),
        _ => new(8, 6),
    };
}
