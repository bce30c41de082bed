using System.Collections.Immutable;

namespace Coilwright.Core.Colour;

/// <summary>A family of colours as a maker sorts by, known by samples.</summary>
/// <param name="Key">Its name in the data, as <c>turquoise</c>.</param>
/// <param name="Samples">Colours that belong to it beyond doubt; at least one.</param>
public sealed record ColourFamily(string Key, ImmutableArray<Srgb> Samples);

/// <summary>Sorts colours into families: each goes to the family of the sample that looks nearest.</summary>
/// <remarks>Is for finding beads again, not a statement about a colour: at a border two beads that look alike may fall apart. Which samples there are is data, our own choice.</remarks>
public sealed class ColourFamilies
{
    private readonly ImmutableArray<(Lab Lab, string Key)> _samples;

    /// <summary>Families in the order in which they are shown.</summary>
    /// <param name="all">The families, at least one.</param>
    public ColourFamilies(ImmutableArray<ColourFamily> all)
    {
        if (all.IsDefaultOrEmpty || all.Any(f => f.Samples.IsDefaultOrEmpty)) throw new ArgumentException("Each family has a sample, and there is one.", nameof(all));
        All = all;
        _samples = [.. all.SelectMany(f => f.Samples.Select(s => (Lab.FromSrgb(s), f.Key)))];
    }

    /// <summary>The families.</summary>
    public ImmutableArray<ColourFamily> All { get; }

    /// <summary>The key of the family that a colour goes to; the first of two that are as near.</summary>
    public string Of(Srgb colour)
    {
        var lab = Lab.FromSrgb(colour);
        var (best, least) = (_samples[0].Key, double.PositiveInfinity);
        foreach (var (sample, key) in _samples)
            if (ColourDifference.Ciede2000(lab, sample) is var far && far < least) (best, least) = (key, far);
        return best;
    }
}
