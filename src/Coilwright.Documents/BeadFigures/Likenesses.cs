using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.BeadFigures;

/// <summary>The lines drawn over a kind of bead so that it is not taken for another without colour.</summary>
public enum Pattern
{
    /// <summary>None: its shape or its lightness tells it apart.</summary>
    None,

    /// <summary>Lines that rise to the right.</summary>
    Rising,

    /// <summary>Lines that fall to the right.</summary>
    Falling,

    /// <summary>Lines along the hole.</summary>
    Lengthwise,

    /// <summary>Lines across the hole.</summary>
    Across,

    /// <summary>Rising and falling lines.</summary>
    Crossed,
}

/// <summary>Which kinds would look alike in greyscale, and the pattern that each takes against that.</summary>
public static class Likenesses
{
    // How far apart two greys must be to be told apart side by side on paper, in shares of the printed range: our choice, about an eighth.
    private const double GreyApart = 0.12;

    // How far apart two measures must be to be seen as two sizes: our choice, a third.
    private const double SizeApart = 1.35;

    /// <summary>A pattern for each kind: the first one that no earlier kind of like shape, size and lightness has. Kinds beyond the sixth that
    /// look alike share patterns; their letters tell them apart.</summary>
    public static ImmutableArray<Pattern> Patterns(ImmutableArray<Bead> kinds)
    {
        var patterns = ImmutableArray.CreateBuilder<Pattern>(kinds.Length);
        for (var i = 0; i < kinds.Length; i++)
        {
            var taken = Enumerable.Range(0, i).Where(j => Alike(kinds[i], kinds[j])).Select(j => patterns[j]).ToHashSet();
            var free = Enum.GetValues<Pattern>().Where(p => !taken.Contains(p)).ToArray();
            patterns.Add(free.Length > 0 ? free[0] : (Pattern)(i % Enum.GetValues<Pattern>().Length));
        }
        return patterns.MoveToImmutable();
    }

    /// <summary>Whether two kinds would be taken for one another without colour.</summary>
    public static bool Alike(Bead one, Bead other)
    {
        if (one.Shape != other.Shape) return false;
        static bool Near(double a, double b) => Math.Max(a, b) / Math.Min(a, b) < SizeApart;
        return Near(one.LengthMm, other.LengthMm) && Near(one.WidthMm, other.WidthMm) && Math.Abs(Grey(one) - Grey(other)) < GreyApart;
    }

    private static double Grey(Bead bead) =>
        bead.Colours.IsEmpty ? Palette.Colour.Plain.Grey().Red / 255.0 : bead.Colours.Average(c => c.Grey().Red / 255.0);
}
