using Coilwright.Documents.Drawing;
using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Prices;

/// <summary>How a picture of prices or kits is drawn.</summary>
public sealed record PricePictureOptions
{
    /// <summary>Width of the picture, mm.</summary>
    public double WidthMm { get; init; } = 120;

    /// <summary>Language of its words.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>The inks.</summary>
    public Palette Inks { get; init; } = Palette.Colour;

    /// <summary>What the words are measured with.</summary>
    public ITypeface Typeface { get; init; } = CautiousSans.Instance;
}
