using System.CommandLine;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;

namespace Coilwright.Cli.Calling;

/// <summary>The option of how it is reckoned what beads in stock cost.</summary>
internal static class LotsOption
{
    private static readonly (string Word, LotWay Way)[] Ways = [("average", LotWay.Average), ("first-in", LotWay.FirstIn)];

    /// <summary>Reads it; the average where it is not given, not known or given without a stock, and then a fault is added.</summary>
    public static LotWay Read(ParseResult parsed, Option<string?> option, Option<string?> shelf, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return LotWay.Average;
        if (parsed.GetValue(shelf) is null) faults.Add(Fault.Of(FaultCodes.FieldMissing, shelf.Name, ""));
        string[] known = [.. Ways.Select(w => w.Word)];
        if (Array.IndexOf(known, text) is >= 0 and var at) return Ways[at].Way;
        faults.Add(Fault.Of(FaultCodes.WordUnknown, option.Name, text, ("known", string.Join(", ", known)), ("nearest", NearestName.Of(text, known) ?? "")));
        return LotWay.Average;
    }
}
