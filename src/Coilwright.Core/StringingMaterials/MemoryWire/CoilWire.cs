using System.Collections.Immutable;

namespace Coilwright.Core.StringingMaterials.MemoryWire;

/// <summary>Which circle a coil's labelled diameter is measured on.</summary>
public enum CoilDatum
{
    /// <summary>Inside the wire: the circle that the coil leaves free.</summary>
    Inside,

    /// <summary>The wire's centre line.</summary>
    CentreLine,

    /// <summary>One loop stretched along a ruler: the centre line's length.</summary>
    MeasuredLoop,
}

/// <summary>A steel that coil wire is drawn from.</summary>
/// <param name="Key">Name in the data, as <c>stainless-302</c>.</param>
/// <param name="DensityGPerCm3">Density, g/cm3.</param>
/// <param name="YoungsModulusMPa">Young's modulus, MPa.</param>
/// <param name="ShearModulusMPa">Shear modulus, MPa.</param>
/// <param name="Source">Where the figures were read.</param>
public sealed record WireSteel(string Key, double DensityGPerCm3, double YoungsModulusMPa, double ShearModulusMPa, string Source)
{
    /// <summary>Tensile strength by thickness; empty when the data has none.</summary>
    public ImmutableArray<StrengthBand> Strengths { get; init; } = [];

    /// <summary>Least tensile strength of wire of a thickness, MPa; null when the data has none for it.</summary>
    /// <param name="wireMm">Thickness, mm.</param>
    public double? LeastStrengthMPa(double wireMm) => Strengths.FirstOrDefault(b => wireMm > b.OverMm && wireMm <= b.ToMm)?.LeastMPa;
}

/// <summary>Pre-coiled memory wire as the maker has it in her hand: thickness, steel and the size of one loop at rest.</summary>
/// <remarks>
/// <para>Is the wire at rest, not on a wrist. Millimetres. Pitch at rest is taken as nought: over a turn the rise adds less than 0.4 mm at 12 mm
/// of pitch (docs/theory/worn-turn.md).</para>
/// <para>A label's diameter is given inside or on the centre line; a measured loop overrules both (<see cref="CoilDatum.MeasuredLoop"/>).</para>
/// </remarks>
/// <param name="WireMm">Thickness of the wire, mm, above 0.</param>
/// <param name="Datum">What <paramref name="SizeMm"/> is.</param>
/// <param name="SizeMm">Diameter, mm, or for a measured loop the loop's length, mm.</param>
/// <param name="Steel">The steel, or null when the maker does not know it: mass of wire and stress then stay unknown.</param>
public sealed record CoilWire(double WireMm, CoilDatum Datum, double SizeMm, WireSteel? Steel)
{
    /// <summary>Radius of the wire's centre line at rest, mm (R0).</summary>
    public double RelaxedRadiusMm => Datum switch
    {
        CoilDatum.Inside => (SizeMm + WireMm) / 2,
        CoilDatum.CentreLine => SizeMm / 2,
        _ => SizeMm / (2 * Math.PI),
    };

    /// <summary>Length of one loop at rest along the centre line, mm.</summary>
    public double LoopMm => 2 * Math.PI * RelaxedRadiusMm;

    /// <summary>Wire that the maker has cut, mm, when she has cut it already; null while the piece is being planned.</summary>
    public double? CutMm { get; init; }

    /// <summary>The name she bought it by, as <c>22 AWG</c>, when the thickness came from a gauge; else null.</summary>
    public string? GaugeName { get; init; }

    /// <summary>The same coil with its size said on another circle. The coil itself stays as it is.</summary>
    /// <param name="datum">The circle.</param>
    public CoilWire By(CoilDatum datum) => this with
    {
        Datum = datum,
        SizeMm = datum switch
        {
            CoilDatum.Inside => 2 * RelaxedRadiusMm - WireMm,
            CoilDatum.CentreLine => 2 * RelaxedRadiusMm,
            _ => LoopMm,
        },
    };

    /// <summary>Mass of one loop, g: pi/4 d^2 2 pi R0 rho; null when the steel is unknown.</summary>
    public double? LoopMassG => Steel is null ? null : Math.PI / 4 * WireMm * WireMm * LoopMm * Steel.DensityGPerCm3 / 1000;
}
