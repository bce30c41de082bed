using Coilwright.Documents.Typefaces;
using Coilwright.Wording;

namespace Coilwright.Documents.Layout;

/// <summary>How a picture is drawn, as far as all pictures have it in common.</summary>
public sealed record PictureOptions
{
    /// <summary>Whether the sheet is covered with the warm paper's colour; without it the picture is see-through.</summary>
    public bool Paper { get; init; } = true;

    /// <summary>Whether it is drawn in greys, as a greyscale printer would.</summary>
    public bool Greyscale { get; init; }

    /// <summary>Width to fill, mm; null: the picture's own. What is drawn at true size stays so, and the picture may come out wider for it.</summary>
    public double? WidthMm { get; init; }

    /// <summary>White round the whole, mm: none is needed where the picture stands in a page's own margins.</summary>
    public double MarginMm { get; init; } = 6;

    /// <summary>Language of its words, and the units of its lengths.</summary>
    public Language Language { get; init; } = Languages.English;

    /// <summary>What the words are measured with.</summary>
    public ITypeface Typeface { get; init; } = CautiousSans.Instance;
}
