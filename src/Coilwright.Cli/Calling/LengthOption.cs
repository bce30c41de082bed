using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Measures;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>An option that is a length: a bare number is millimetres, anything else has its unit.</summary>
internal static class LengthOption
{
    /// <summary>Reads it; null when it is not given or is wrong, and then a fault is added.</summary>
    public static double? Read(ParseResult parsed, Option<string?> option, double minMm, double maxMm, List<Fault> faults) =>
        parsed.GetValue(option) is { } text ? Read(text, option.Name, minMm, maxMm, faults) : null;

    /// <summary>Reads one length of an option; null when it is wrong, and then a fault is added.</summary>
    public static double? Read(string text, string option, double minMm, double maxMm, List<Fault> faults)
    {
        if (!IsNumber(text, out var mm) && !LengthText.TryParse(text, out mm))
        {
            var meant = text.Replace(',', '.');
            var isComma = meant != text && (IsNumber(meant, out _)
                || LengthText.TryParse(meant, out _));
            faults.Add(isComma ? Fault.Of(UsageCodes.LengthComma, option, text, ("meant", meant)) : Fault.Of(UsageCodes.LengthForm, option, text));
            return null;
        }
        if (mm >= minMm && mm <= maxMm) return mm;
        faults.Add(Fault.Of(UsageCodes.LengthBounds, option, Language.PlainNumber(mm, 2), ("min", Language.PlainNumber(minMm, 0)),
            ("max", Language.PlainNumber(maxMm, 0))));
        return null;
    }

    // Words for what is no number are none here.
    private static bool IsNumber(string text, out double number) => double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out number) && double.IsFinite(number);
}
