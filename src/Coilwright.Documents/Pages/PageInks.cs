using Coilwright.Core.Colour;

namespace Coilwright.Documents.Pages;

/// <summary>The inks of every page: dark warm ink on white, one accent, and what recedes. Each text ink reads at 4.5 to 1 or better on white and on
/// <see cref="Wash"/> (WCAG 2.2, success criterion 1.4.3); a test holds that.</summary>
public static class PageInks
{
    /// <summary>Running text.</summary>
    public static Srgb Ink { get; } = new(0x2b, 0x27, 0x22);

    /// <summary>Captions, feet, what may be passed over.</summary>
    public static Srgb Quiet { get; } = new(0x67, 0x5e, 0x53);

    /// <summary>The one accent: burnt orange.</summary>
    public static Srgb Accent { get; } = new(0xa8, 0x4a, 0x23);

    /// <summary>Fine lines between rows.</summary>
    public static Srgb Hairline { get; } = new(0xd9, 0xcf, 0xbf);

    /// <summary>Ground of notes.</summary>
    public static Srgb Wash { get; } = new(0xfa, 0xf4, 0xea);

    /// <summary>Paper.</summary>
    public static Srgb White { get; } = new(0xff, 0xff, 0xff);
}
