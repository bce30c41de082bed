using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of a seed: a whole number from 0 on.</summary>
internal static class SeedOption
{
    /// <summary>Reads it; the usual where it is not given or is wrong, and then a fault is added.</summary>
    public static ulong Read(ParseResult parsed, Option<string?> option, ulong usual, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return usual;
        if (ulong.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var seed)) return seed;
        faults.Add(Fault.Of(UsageCodes.SeedForm, option.Name, text));
        return usual;
    }
}
