using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>An option that is several wrists, with commas between.</summary>
internal static class WristsOption
{
    /// <summary>Reads it; empty when it is not given or is wrong, and then one fault is added: the first.</summary>
    public static ImmutableArray<double> Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return [];
        var parts = text.Split(',', StringSplitOptions.TrimEntries);
        var wrists = ImmutableArray.CreateBuilder<double>();
        foreach (var part in parts)
        {
            if (LengthOption.Read(part, option.Name, Wearer.LeastWristMm, Wearer.MostWristMm, faults) is not { } wrist) return [];
            if (wrists.Contains(wrist))
            {
                faults.Add(Fault.Of(UsageCodes.WristTwice, option.Name, Language.PlainNumber(wrist, 2)));
                return [];
            }
            wrists.Add(wrist);
        }
        if (wrists.Count <= SizesRequest.MostWrists) return wrists.ToImmutable();
        faults.Add(Fault.Of(UsageCodes.WristsTooMany, option.Name, wrists.Count.ToString(CultureInfo.InvariantCulture), ("max", Language.PlainNumber(SizesRequest.MostWrists, 0))));
        return [];
    }
}
