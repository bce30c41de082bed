using System.Collections.Immutable;
using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The option of beads strung in place of others, as <c>chip=pebble</c>.</summary>
internal static class SwapOption
{
    /// <summary>Reads it. What is wrong is added to the faults.</summary>
    public static ImmutableArray<(string Bead, string With)> Read(ParseResult parsed, Option<string[]> option, List<Fault> faults)
    {
        var swaps = ImmutableArray.CreateBuilder<(string, string)>();
        var seen = new HashSet<string>(StringComparer.Ordinal);
        foreach (var text in parsed.GetValue(option) ?? [])
        {
            if (text.Split('=') is not [{ Length: > 0 } bead, { Length: > 0 } with]) faults.Add(Fault.Of(UsageCodes.SwapForm, option.Name, text));
            else if (!seen.Add(bead)) faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option.Name} {bead}"));
            else swaps.Add((bead, with));
        }
        return swaps.ToImmutable();
    }
}
