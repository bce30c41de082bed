using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Arrangement;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of an effort: a whole number from 1 on.</summary>
internal static class EffortOption
{
    /// <summary>Reads it; the usual where it is not given or is wrong, and then a fault is added.</summary>
    public static int Read(ParseResult parsed, Option<string?> option, int usual, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return usual;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var effort) && effort is >= 1 and <= ArrangeRequest.MostEffort) return effort;
        faults.Add(Fault.Of(UsageCodes.EffortForm, option.Name, text, ("max", Language.PlainNumber(ArrangeRequest.MostEffort, 0))));
        return usual;
    }
}
