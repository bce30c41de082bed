namespace Coilwright.Wording;

/// <summary>Places round the wrist in words that hold for either hand.</summary>
/// <remarks>
/// <para>Left and right, thumb side and little-finger side change with the wrist and with which way the coil is put on; the way the beads run
/// does not. So a place is the top, the underside or a quarter turn between them, and before or past it the way the beads run from the starting
/// end.</para>
/// <para>Eight places of an eighth of a turn each, the top one from -22.5 to 22.5 degrees. A bound belongs to the place nearer the top.</para>
/// </remarks>
public sealed record Places
{
    /// <summary>Within 22.5 degrees of the top.</summary>
    public required string Top { get; init; }

    /// <summary>An eighth of a turn past the top the way the beads run.</summary>
    public required string PastTop { get; init; }

    /// <summary>A quarter turn past the top.</summary>
    public required string QuarterPast { get; init; }

    /// <summary>An eighth of a turn before the underside.</summary>
    public required string BeforeUnderside { get; init; }

    /// <summary>Within 22.5 degrees of the underside.</summary>
    public required string Underside { get; init; }

    /// <summary>An eighth of a turn past the underside.</summary>
    public required string PastUnderside { get; init; }

    /// <summary>A quarter turn before the top.</summary>
    public required string QuarterBefore { get; init; }

    /// <summary>An eighth of a turn before the top.</summary>
    public required string BeforeTop { get; init; }

    /// <summary>The place of an angle.</summary>
    /// <param name="angleDeg">Angle, degrees in (-180, 180], 0 the top, positive the way the beads run.</param>
    public string Of(double angleDeg) => Math.Abs(angleDeg) switch
    {
        <= 22.5 => Top,
        <= 67.5 => angleDeg > 0 ? PastTop : BeforeTop,
        <= 112.5 => angleDeg > 0 ? QuarterPast : QuarterBefore,
        <= 157.5 => angleDeg > 0 ? BeforeUnderside : PastUnderside,
        _ => Underside,
    };
}
