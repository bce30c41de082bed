using Coilwright.Core.Colour;
using Coilwright.Documents.Drawing;

namespace Coilwright.Documents.Pages;

/// <summary>The inks of every page: dark warm ink on white, one accent, and what recedes. Each text ink reads at 4.5 to 1 or better on white and on
/// <see cref="Wash"/> (WCAG 2.2, success criterion 1.4.3); a test holds that.</summary>
public static class PageInks
{
    /// <summary>Running text.</summary>
    public static Srgb Ink => Palette.Colour.Ink;

    /// <summary>Captions, feet, what may be passed over.</summary>
    public static Srgb Quiet => Palette.Colour.Quiet;

    /// <summary>The one accent: burnt orange.</summary>
    public static Srgb Accent => Palette.Colour.Accent;

    /// <summary>Fine lines between rows.</summary>
    public static Srgb Hairline => Palette.Colour.Hairline;

    /// <summary>Ground of notes.</summary>
    public static Srgb Wash => Palette.Colour.Paper;

    /// <summary>Paper.</summary>
    public static Srgb White { get; } = new(0xff, 0xff, 0xff);
}
