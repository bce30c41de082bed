namespace Coilwright.Documents.Pages;

/// <summary>A sheet of paper, upright.</summary>
/// <param name="Name">Its name as printers know it, also in style sheets.</param>
/// <param name="WidthMm">Short side, mm.</param>
/// <param name="HeightMm">Long side, mm.</param>
public sealed record Paper(string Name, double WidthMm, double HeightMm)
{
    /// <summary>210 by 297 mm (ISO 216).</summary>
    public static Paper A4 { get; } = new("A4", 210, 297);

    /// <summary>8 1/2 by 11 inches: 215.9 by 279.4 mm (ANSI/ASME Y14.1, size A).</summary>
    public static Paper Letter { get; } = new("letter", 215.9, 279.4);
}

/// <summary>How a document is put on paper.</summary>
public sealed record PageSetup
{
    /// <summary>Millimetres in a printer's point: 72 to the inch.</summary>
    public const double PointMm = 25.4 / 72;

    /// <summary>The paper.</summary>
    public Paper Paper { get; init; } = Paper.A4;

    /// <summary>Whether everything is set half as large again: running text of 18 points for 12. True-size strips stay as they are.</summary>
    public bool LargePrint { get; init; }

    /// <summary>Whether all colours become greys of the same lightness.</summary>
    public bool Greyscale { get; init; }

    /// <summary>Whether ink is spared: areas in pictures hardly tinted, so that lines and letters say what is what, and no ground under notes.</summary>
    public bool InkSaving { get; init; }

    /// <summary>White at the left and right of an upright page, mm.</summary>
    public double SideMm { get; init; } = 21;

    /// <summary>White above, mm.</summary>
    public double TopMm { get; init; } = 17;

    /// <summary>White below, mm; the foot stands in it.</summary>
    public double BottomMm { get; init; } = 20;

    /// <summary>White on all sides of a turned page, mm: little, so that a whole turn of wire goes on in one length. Common printers reach within 6 mm.</summary>
    public double TurnedMarginMm { get; init; } = 13;

    /// <summary>Size of running text, points.</summary>
    public double BasePoints => LargePrint ? 18 : 12;

    /// <summary>How much larger than usual everything is.</summary>
    public double Enlarged => BasePoints / 12;
}
