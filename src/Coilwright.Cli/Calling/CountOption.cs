using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The options of how many of which piece.</summary>
internal static class CountOption
{
    /// <summary>The pieces' own names; the whole path where two have the same.</summary>
    public static string[] NamesOf(string[] paths)
    {
        string[] names = [.. paths.Select(FileStem.Of)];
        return [.. names.Select((name, p) => names.Count(n => n == name) > 1 ? paths[p] : name)];
    }

    /// <summary>How many of each piece; 1 where nothing is said. What is wrong is added to the faults.</summary>
    public static int[] Read(ParseResult parsed, Option<string[]> from, string[] names, List<Fault> faults)
    {
        var (texts, option) = (parsed.GetValue(from) ?? [], from.Name);
        var counts = new int?[names.Length];
        int? every = null;
        foreach (var text in texts)
        {
            var at = text.LastIndexOf('=');
            var number = text[(at + 1)..];
            if (!int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out var n) || n is < 1 or > CuttingRules.MostPieces || at == 0)
                faults.Add(Fault.Of(UsageCodes.CountForm, option, text, ("max", Language.PlainNumber(CuttingRules.MostPieces, 0))));
            else if (at < 0)
            {
                if (every is not null) faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option} {text}"));
                every = n;
            }
            else
            {
                var name = text[..at];
                if (!names.Contains(name))
                    faults.Add(Fault.Of(FaultCodes.WordUnknown, option, name, ("known", string.Join(", ", names.Distinct())), ("nearest", NearestName.Of(name, names) ?? "")));
                for (var p = 0; p < names.Length; p++)
                {
                    if (names[p] != name) continue;
                    if (counts[p] is not null) faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option} {name}"));
                    counts[p] = n;
                }
            }
        }
        return [.. counts.Select(n => n ?? every ?? 1)];
    }

    /// <summary>A whole number from 1 on; null where it is not given or is wrong, and then a fault is added.</summary>
    public static int? ReadWhole(ParseResult parsed, Option<string?> option, int most, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most) return number;
        faults.Add(Fault.Of(UsageCodes.WholeForm, option.Name, text, ("max", Language.PlainNumber(most, 0))));
        return null;
    }
}
