using System.CommandLine;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Calling;

/// <summary>An option that is an amount of money, with a decimal point in every language.</summary>
internal static class AmountOption
{
    /// <summary>Reads it; null when it is not given or is wrong, and then a fault is added.</summary>
    public static decimal? Read(ParseResult parsed, Option<string?> option, List<Fault> faults)
    {
        if (parsed.GetValue(option) is not { } text) return null;
        if (decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var amount) && amount <= BuyingList.MostMoney) return amount;
        faults.Add(Fault.Of(UsageCodes.AmountForm, option.Name, text, ("max", BuyingList.MostMoney.ToString("0", CultureInfo.InvariantCulture))));
        return null;
    }
}
