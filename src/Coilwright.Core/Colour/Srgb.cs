namespace Coilwright.Core.Colour;

/// <summary>A colour as eight-bit sRGB (IEC 61966-2-1). <c>default</c> is black.</summary>
public readonly record struct Srgb(byte Red, byte Green, byte Blue)
{
    /// <summary>Reads <c>#rrggbb</c>, upper or lower case; anything else is refused.</summary>
    public static bool TryParse(string? text, out Srgb colour)
    {
        colour = default;
        if (text is not { Length: 7 } || text[0] != '#') return false;
        Span<byte> bytes = stackalloc byte[3];
        for (var i = 0; i < 3; i++)
            if (!byte.TryParse(text.AsSpan(1 + 2 * i, 2), System.Globalization.NumberStyles.AllowHexSpecifier,
                System.Globalization.CultureInfo.InvariantCulture, out bytes[i]))
                return false;
        colour = new Srgb(bytes[0], bytes[1], bytes[2]);
        return true;
    }

    /// <summary>The colour as <c>#rrggbb</c>.</summary>
    public override string ToString() => $"#{Red:x2}{Green:x2}{Blue:x2}";
}
