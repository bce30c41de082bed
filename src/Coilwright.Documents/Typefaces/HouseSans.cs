namespace Coilwright.Documents.Typefaces;

/// <summary>The house faces as pictures are measured in them where they are sure to be there: on a page that brings them along.</summary>
/// <remarks>A character that they lack is as wide as <see cref="CautiousSans"/> says: a web page borrows it from the reader's machine. Heights are cautious too.</remarks>
public sealed class HouseSans : ITypeface
{
    private HouseSans() { }

    /// <summary>The one there is.</summary>
    public static HouseSans Instance { get; } = new();

    /// <inheritdoc/>
    public double WidthEm(string text, TextWeight weight)
    {
        var face = HouseFaces.Of(weight == TextWeight.Bold ? FaceStyle.Bold : FaceStyle.Regular);
        var em = 0.0;
        foreach (var rune in text.EnumerateRunes())
            em += face.Has(rune) ? face.WidthEm(rune) : CautiousSans.Instance.WidthEm(rune.ToString(), weight);
        return em;
    }

    /// <inheritdoc/>
    public double AscentEm => CautiousSans.Instance.AscentEm;

    /// <inheritdoc/>
    public double DescentEm => CautiousSans.Instance.DescentEm;

    /// <inheritdoc/>
    public double CapitalEm => CautiousSans.Instance.CapitalEm;
}
