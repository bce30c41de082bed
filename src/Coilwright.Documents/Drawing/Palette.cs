using Coilwright.Core.Colour;

namespace Coilwright.Documents.Drawing;

/// <summary>The inks of our pages: warm paper, dark ink, one accent, quiet grey for what is secondary. Nothing is said by colour alone.</summary>
/// <remarks>Against the paper: ink 14:1, quiet 5:1, accent 6:1, so all of them read at text sizes (4.5:1 and more, WCAG 2.2).</remarks>
public sealed record Palette
{
    private Palette() { }

    /// <summary>The paper.</summary>
    public Srgb Paper { get; private init; } = new(0xfa, 0xf4, 0xea);

    /// <summary>What is read first.</summary>
    public Srgb Ink { get; private init; } = new(0x2b, 0x27, 0x22);

    /// <summary>What is read second.</summary>
    public Srgb Quiet { get; private init; } = new(0x67, 0x5e, 0x53);

    /// <summary>Thin lines that only order the page.</summary>
    public Srgb Hairline { get; private init; } = new(0xd9, 0xcf, 0xbf);

    /// <summary>What must catch the eye.</summary>
    public Srgb Accent { get; private init; } = new(0xa8, 0x4a, 0x23);

    /// <summary>The wire.</summary>
    public Srgb Steel { get; private init; } = new(0x6b, 0x70, 0x73);

    /// <summary>A bead whose colour nobody wrote down.</summary>
    public Srgb Plain { get; private init; } = new(0xdd, 0xd4, 0xc4);

    /// <summary>Dark letters on a light bead: darker than the ink, so that one of the two reads on any colour at 4:1 or better.</summary>
    public Srgb Dark { get; private init; } = new(0x12, 0x0f, 0x0c);

    /// <summary>Light letters on a dark bead.</summary>
    public Srgb Light { get; private init; } = new(0xff, 0xfd, 0xf8);

    private bool _grey;

    /// <summary>The inks in colour.</summary>
    public static Palette Colour { get; } = new();

    /// <summary>The same inks as a greyscale printer shows them, on white.</summary>
    public static Palette Grey { get; } = new()
    {
        Paper = new Srgb(255, 255, 255),
        Ink = Colour.Ink.Grey(),
        Quiet = Colour.Quiet.Grey(),
        Hairline = Colour.Hairline.Grey(),
        Accent = Colour.Accent.Grey(),
        Steel = Colour.Steel.Grey(),
        Plain = Colour.Plain.Grey(),
        Dark = Colour.Dark.Grey(),
        Light = new Srgb(255, 255, 255),
        _grey = true,
    };

    /// <summary>The inks on a dark ground, for screens in the evening: for pictures that are lines and words, not beads, which keep their paper.</summary>
    /// <remarks>Against the ground: ink 13:1, quiet 7:1, accent 7:1.</remarks>
    public static Palette Evening { get; } = new()
    {
        Paper = new Srgb(0x1c, 0x18, 0x14),
        Ink = new Srgb(0xf1, 0xe9, 0xdb),
        Quiet = new Srgb(0xb8, 0xad, 0x9b),
        Hairline = new Srgb(0x5a, 0x4e, 0x40),
        Accent = new Srgb(0xeb, 0xa3, 0x87),
        Steel = new Srgb(0xa3, 0xa8, 0xab),
    };

    /// <summary>The line round an area of a colour: its own colour darker, or lighter where it is so dark that a darker line would not show.</summary>
    public Srgb EdgeOf(Srgb ground) => ground.Luminance() < 0.04 ? ground.Mixed(Light, 0.34) : ground.Mixed(Ink, 0.62);

    /// <summary>A colour from outside, as these inks print it.</summary>
    public Srgb Of(Srgb colour) => _grey ? colour.Grey() : colour;
}
