using Coilwright.Core.Beads;

namespace Coilwright.Core.Scenes;

/// <summary>How a surface takes light, in the terms of physically based rendering.</summary>
/// <remarks>For pictures alone: nothing is reckoned from it. The figures are our choice, looked at beside each other; indices of refraction are those of any book.</remarks>
/// <param name="Roughness">From 0, a mirror, to 1, chalk.</param>
/// <param name="IsMetal">Whether it mirrors in its own colour.</param>
public readonly record struct SurfaceFinish(double Roughness, bool IsMetal)
{
    /// <summary>Share of the light that goes through it, 0 to 1.</summary>
    public double LetsThrough { get; init; }

    /// <summary>Index of refraction of what lets light through.</summary>
    public double RefractiveIndex { get; init; } = 1.5;

    /// <summary>A clear coat over it, 0 to 1.</summary>
    public double Coat { get; init; }

    /// <summary>The play of colours over pearl and lustre, 0 to 1.</summary>
    public double Lustre { get; init; }

    // Words that makers and sellers write, in the languages that we speak; a part of a word is enough.
    private static readonly string[] Matte = ["matt", "frost", "satin", "etched", "sandblast", "geätzt", "raw", "roh"];
    private static readonly string[] Lustrous = ["lustre", "luster", "lüster", "pearl", "perlmutt", "iris", "rainbow", "aurora", "opal"];
    private static readonly string[] Metallic = ["metallic", "metallis", "plated", "vergold", "versilber", "gilt", "galvan", "gold-filled"];

    /// <summary>The finish of a kind of bead: by its material, and by the words of its coating where they say something of it.</summary>
    public static SurfaceFinish Of(Bead bead)
    {
        var bare = (bead.Description.Material?.Look ?? MaterialLook.Plain) switch
        {
            MaterialLook.Glass => new SurfaceFinish(0.06, false) { LetsThrough = 0.75 },
            MaterialLook.Stone => new SurfaceFinish(0.34, false) { Coat = 0.25 },
            MaterialLook.Metal => new SurfaceFinish(0.24, true),
            MaterialLook.Pearl => new SurfaceFinish(0.3, false) { Coat = 0.6, Lustre = 0.7 },
            MaterialLook.Wood => new SurfaceFinish(0.62, false) { Coat = 0.1 },
            _ => new SurfaceFinish(0.3, false) { Coat = 0.35 },
        };
        if (bead.Description.Coating is not { Length: > 0 } coating) return bare;
        bool Says(string[] words) => words.Any(w => coating.Contains(w, StringComparison.OrdinalIgnoreCase));
        if (Says(Metallic)) bare = new SurfaceFinish(0.28, true);
        if (Says(Lustrous)) bare = bare with { Lustre = 0.8, Coat = 0.7 };
        // A ground surface scatters what goes through it, and has no coat to shine.
        return Says(Matte) ? bare with { Roughness = bare.IsMetal ? 0.5 : 0.72, Coat = 0, LetsThrough = bare.LetsThrough * 0.6 } : bare;
    }

    /// <summary>The bare wire.</summary>
    public static SurfaceFinish Wire { get; } = new(0.22, true);

    /// <summary>The form that stands for the wrist.</summary>
    public static SurfaceFinish Form { get; } = new(0.9, false);
}
