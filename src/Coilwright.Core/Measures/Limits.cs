using System.Globalization;
using Coilwright.Core.Faults;

namespace Coilwright.Core.Measures;

/// <summary>The range of a number, and its unit.</summary>
/// <remarks>Keeps out slips of the pen: inches for millimetres, a lost decimal point. Whether a sound piece can be made or worn is for the readings to say.</remarks>
/// <param name="Min">Least value.</param>
/// <param name="MinIncluded">Whether the least value itself is allowed.</param>
/// <param name="Max">Greatest value, allowed itself.</param>
/// <param name="Unit">Unit for messages; empty for a bare number.</param>
public readonly record struct Limits(double Min, bool MinIncluded, double Max, string Unit)
{
    /// <summary>Between two values, both allowed.</summary>
    public static Limits Between(double min, double max, string unit) => new(min, true, max, unit);

    /// <summary>Above nought and up to a value.</summary>
    public static Limits Above0To(double max, string unit) => new(0, false, max, unit);

    /// <summary>The fault of a number outside the range, with its code and values only; null when it is inside.</summary>
    public Fault? Check(double value) => value switch
    {
        _ when !double.IsFinite(value) => Fault.Of(FaultCodes.ValueNotFinite, "", ""),
        _ when value < Min && MinIncluded => Fault.Of(FaultCodes.ValueAtLeast, "", "", ("min", Text(Min)), ("unit", Unit)),
        _ when value <= Min && !MinIncluded => Fault.Of(FaultCodes.ValueAbove, "", "", ("min", Text(Min)), ("unit", Unit)),
        _ when value > Max => Fault.Of(FaultCodes.ValueAtMost, "", "", ("max", Text(Max)), ("unit", Unit)),
        _ => null,
    };

    private static string Text(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}
