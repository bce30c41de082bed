using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>An option that is a share, with a decimal point in every language.</summary>
internal static class ShareOption
{
    /// <summary>Reads it; null when it is not given or is wrong, and then a fault is added.</summary>
    public static double? Read(ParseResult parsed, Option<string?> option, double min, double max, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var share) && share >= min && share <= max) return share;
        faults.Add(Fault.Of(UsageCodes.ShareForm, option.Name, text, ("min", Language.PlainNumber(min, 2)), ("max", Language.PlainNumber(max, 2))));
        return null;
    }
}
