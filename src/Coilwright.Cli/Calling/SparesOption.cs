using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Shopping;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>The options of beads beside those that are used: spares, and what is at home.</summary>
internal static class SparesOption
{
    /// <summary>Reads spares: <c>5%</c> of all, <c>2</c> with each piece, or one of both for one bead as <c>chip=10%</c>. What is wrong is added to the faults.</summary>
    public static Spares Read(ParseResult parsed, Option<string[]> option, List<Fault> faults)
    {
        var (usual, byBead) = (SparesRule.None, ImmutableSortedDictionary.Create<string, SparesRule>(StringComparer.Ordinal));
        var said = new HashSet<(string, bool)>();
        foreach (var text in parsed.GetValue(option) ?? [])
        {
            var at = text.LastIndexOf('=');
            var (bead, amount) = (at < 0 ? "" : text[..at], text[(at + 1)..]);
            var isPercent = amount.EndsWith('%');
            decimal percent = 0;
            var each = 0;
            var reads = isPercent ? decimal.TryParse(amount[..^1], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out percent) && percent <= SparesRule.MostPercent
                : int.TryParse(amount, NumberStyles.None, CultureInfo.InvariantCulture, out each) && each <= SparesRule.MostPerPiece;
            if (!reads || at == 0)
                faults.Add(Fault.Of(UsageCodes.SparesForm, option.Name, text, ("max", Language.PlainNumber(SparesRule.MostPercent, 0))));
            else if (!said.Add((bead, isPercent)))
                faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option.Name} {text}"));
            else if (at < 0)
                usual = isPercent ? usual with { Percent = percent } : usual with { PerPiece = each };
            else
            {
                var rule = byBead.GetValueOrDefault(bead, SparesRule.None);
                byBead = byBead.SetItem(bead, isPercent ? rule with { Percent = percent } : rule with { PerPiece = each });
            }
        }
        return new Spares(usual, byBead);
    }

    /// <summary>Beads of spares and of what is at home that no piece has: a slip in a name would leave them out without a word.</summary>
    public static Fault[] Unknown(IEnumerable<Piece> pieces, Spares spares, Dictionary<string, int> home)
    {
        ImmutableArray<string> beads = [.. pieces.SelectMany(p => p.Order.Kinds.Distinct().Select(k => p.Beads[k].Id)).Distinct().Order(StringComparer.Ordinal)];
        return [.. spares.ByBead.Keys.Select(b => (Option: "--spares", Bead: b)).Concat(home.Keys.Select(b => (Option: "--home", Bead: b)))
            .Where(b => !beads.Contains(b.Bead)).Select(b => Fault.Of(FaultCodes.WordUnknown, b.Option, b.Bead, ("known", string.Join(", ", beads)), ("nearest", NearestName.Of(b.Bead, beads) ?? "")))];
    }

    /// <summary>Reads what is at home, as <c>chip=23</c>. What is wrong is added to the faults.</summary>
    public static Dictionary<string, int> ReadHome(ParseResult parsed, Option<string[]> option, List<Fault> faults)
    {
        var home = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var text in parsed.GetValue(option) ?? [])
        {
            var at = text.LastIndexOf('=');
            if (at < 1 || !int.TryParse(text[(at + 1)..], NumberStyles.None, CultureInfo.InvariantCulture, out var count) || count > BuyingList.MostCount)
                faults.Add(Fault.Of(UsageCodes.HomeForm, option.Name, text, ("max", Language.PlainNumber(BuyingList.MostCount, 0))));
            else if (!home.TryAdd(text[..at], count))
                faults.Add(Fault.Of(UsageCodes.OptionTwice, "", $"{option.Name} {text[..at]}"));
        }
        return home;
    }
}
