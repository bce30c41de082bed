using System.Collections.Immutable;
using System.Globalization;

namespace Coilwright.Core.Measures;

/// <summary>Wire thickness by gauge name: American wire gauge (AWG) and imperial standard wire gauge (SWG).</summary>
/// <remarks>
/// <para>A gauge is a name, not a measurement. A larger number is a thinner wire, and the two scales differ: 20 AWG is 0.81 mm, 20 SWG 0.91 mm,
/// so "20 gauge" alone is not accepted. AWG is made for copper and other non-ferrous wire and does not formally apply to steel; the trade uses
/// it for memory wire all the same. A caliper's reading overrules either name.</para>
/// <para>Millimetres. AWG runs from 0000 (11.684 mm) to 40 (0.080 mm), ends included, by formula; SWG from 14 (2.032 mm) to 30 (0.315 mm), by table:
/// all that a coil could be wound of. Sources, and which test holds them: docs/theory/wire-gauges.md.</para>
/// </remarks>
public static class WireGauge
{
    /// <summary>The AWG number of 0000, the thickest: 000 is -2, 00 is -1, 0 is 0.</summary>
    public const int AwgFrom = -3;

    /// <summary>The largest AWG number, the thinnest wire.</summary>
    public const int AwgTo = 40;

    /// <summary>The smallest SWG number known here, the thickest wire.</summary>
    public const int SwgFrom = 14;

    // Inches of SWG 14, 15, ... 30. Imperial Standard Wire Gauge, BS 3737:1964 (withdrawn), after the Order in Council of 1883; read in a modern
    // reprint of the table, not in the standard itself.
    private static readonly ImmutableArray<double> SwgInches =
    [
        0.080, 0.072, 0.064, 0.056, 0.048, 0.040, 0.036, 0.032, 0.028, 0.024, 0.022, 0.020, 0.018, 0.0164, 0.0148, 0.0136, 0.0124,
    ];

    /// <summary>The largest SWG number known here, the thinnest wire.</summary>
    public static int SwgTo => SwgFrom + SwgInches.Length - 1;

    /// <summary>Every name that <see cref="TryParse(string?, out double, out string)"/> gives, thick to thin, AWG first.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        .. Enumerable.Range(AwgFrom, AwgTo - AwgFrom + 1).Select(AwgName),
        .. Enumerable.Range(SwgFrom, SwgTo - SwgFrom + 1).Select(SwgName),
    ];

    /// <summary>Thickness of an AWG number, mm: 0.127 x 92^((36 - n)/39).</summary>
    /// <param name="number">From <see cref="AwgFrom"/> (0000) to <see cref="AwgTo"/>, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside that range.</exception>
    public static double AwgMm(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, AwgFrom);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, AwgTo);
        return 0.127 * Math.Pow(92, (36 - number) / 39.0);
    }

    /// <summary>Thickness of an SWG number, mm, from its table in inches.</summary>
    /// <param name="number">From <see cref="SwgFrom"/> to <see cref="SwgTo"/>, ends included.</param>
    /// <exception cref="ArgumentOutOfRangeException">The number is outside that range.</exception>
    public static double SwgMm(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, SwgFrom);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, SwgTo);
        return SwgInches[number - SwgFrom] * InchFraction.MmPerInch;
    }

    /// <summary>The usual way to write an AWG number, as <c>22 AWG</c> or <c>00 AWG</c>.</summary>
    public static string AwgName(int number) =>
        (number >= 0 ? number.ToString(CultureInfo.InvariantCulture) : new string('0', 1 - number)) + " AWG";

    /// <summary>The usual way to write an SWG number, as <c>24 SWG</c>.</summary>
    public static string SwgName(int number) => number.ToString(CultureInfo.InvariantCulture) + " SWG";

    /// <summary>Reads a gauge name: <c>22 AWG</c>, <c>awg 22</c>, <c>24SWG</c>, <c>0000 AWG</c> or <c>4/0 AWG</c>. False, and 0 mm, for anything
    /// else: a number without its scale, a gauge outside the scale's range here.</summary>
    public static bool TryParse(string? text, out double mm) => TryParse(text, out mm, out _);

    /// <summary>Reads a gauge name and gives it back in its usual writing, so that <c>awg22</c> is kept as <c>22 AWG</c>.</summary>
    public static bool TryParse(string? text, out double mm, out string name)
    {
        mm = 0;
        name = "";
        if (text is null) return false;
        var rest = text.AsSpan().Trim();
        const StringComparison AnyCase = StringComparison.OrdinalIgnoreCase;
        var isAwg = rest.StartsWith("AWG", AnyCase) || rest.EndsWith("AWG", AnyCase);
        var isSwg = rest.StartsWith("SWG", AnyCase) || rest.EndsWith("SWG", AnyCase);
        if (isAwg == isSwg) return false;
        var number = (rest.StartsWith("AWG", AnyCase) || rest.StartsWith("SWG", AnyCase) ? rest[3..] : rest[..^3]).Trim();
        if (!TryReadNumber(number, out var gauge)) return false;
        var (from, to) = isAwg ? (AwgFrom, AwgTo) : (SwgFrom, SwgTo);
        if (gauge < from || gauge > to) return false;
        (mm, name) = isAwg ? (AwgMm(gauge), AwgName(gauge)) : (SwgMm(gauge), SwgName(gauge));
        return true;
    }

    private static bool TryReadNumber(ReadOnlySpan<char> text, out int gauge)
    {
        gauge = 0;
        if (text.EndsWith("/0"))
        {
            // 4/0 is the short way to write 0000.
            if (!int.TryParse(text[..^2], NumberStyles.None, CultureInfo.InvariantCulture, out var noughts) || noughts is < 1 or > 4) return false;
            gauge = 1 - noughts;
            return true;
        }
        if (text.Length > 1 && text[0] == '0')
        {
            gauge = 1 - text.Length;
            return text.Length <= 4 && !text.ContainsAnyExcept('0');
        }
        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out gauge);
    }
}
