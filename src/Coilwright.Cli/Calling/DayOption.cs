using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>An option that is a day, as <c>2026-03-31</c> in every language.</summary>
internal static class DayOption
{
    // So that no count of days leaves the calendar.
    private const int FirstYear = 1900, LastYear = 2999;

    /// <summary>Reads it; null when it is not given or is wrong, and then a fault is added.</summary>
    public static DateOnly? Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) && day.Year is >= FirstYear and <= LastYear) return day;
        faults.Add(Fault.Of(UsageCodes.DayForm, option.Name, text, ("min", Language.PlainNumber(FirstYear, 0)), ("max", Language.PlainNumber(LastYear, 0))));
        return null;
    }
}
