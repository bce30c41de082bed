namespace Coilwright.Wording;

/// <summary>In which units a length is shown.</summary>
public enum LengthUnits
{
    /// <summary>Millimetres, with inches to the nearest sixteenth beside them.</summary>
    Both,

    /// <summary>Millimetres alone.</summary>
    Mm,

    /// <summary>Inches to the nearest sixteenth alone.</summary>
    Inches,
}
