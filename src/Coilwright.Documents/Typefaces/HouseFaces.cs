namespace Coilwright.Documents.Typefaces;

/// <summary>The faces that pages are set in.</summary>
public enum FaceStyle
{
    /// <summary>Upright, for running text.</summary>
    Regular,

    /// <summary>Slanted, for asides and captions.</summary>
    Italic,

    /// <summary>Heavy, for headings, counts and key letters.</summary>
    Bold,
}

/// <summary>The typeface of every page: Atkinson Hyperlegible Next, drawn so that 1, l and I, and 0 and O, cannot be mistaken for one another.</summary>
/// <remarks>
/// <para>SIL Open Font License 1.1; its text lies beside the program in <c>licences/</c>. Why this one: docs/decisions, the page on the typeface.</para>
/// <para>Latin letters of Europe, figures, plain fractions and signs; no Greek beyond a few letters, no Cyrillic, no right-to-left scripts, no
/// Chinese, Japanese or Korean, no emoji. Text that needs more is answered by <see cref="PrintableText"/>.</para>
/// </remarks>
public static class HouseFaces
{
    /// <summary>Its name as programs list it.</summary>
    public const string Family = "Atkinson Hyperlegible Next";

    private static readonly Lazy<TrueTypeFace>[] Faces =
    [
        new(() => Load("typeface.regular.ttf")), new(() => Load("typeface.italic.ttf")), new(() => Load("typeface.bold.ttf")),
    ];

    /// <summary>One of its faces.</summary>
    public static TrueTypeFace Of(FaceStyle style) => Faces[(int)style].Value;

    private static TrueTypeFace Load(string name)
    {
        using var stream = typeof(HouseFaces).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidDataException($"The typeface '{name}' was not built into the program.");
        using var memory = new MemoryStream();
        stream.CopyTo(memory);
        return TrueTypeFace.Read(memory.ToArray());
    }
}
