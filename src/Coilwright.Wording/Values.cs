using System.Globalization;
using Coilwright.Core.Cures;
using Coilwright.Core.Faults;
using Coilwright.Core.Readings;

namespace Coilwright.Wording;

/// <summary>Where a template finds its values by name.</summary>
internal interface IValues
{
    /// <summary>The value of a name: a text or a number; null when there is none.</summary>
    object? Find(string name);
}

/// <summary>A fault's own values, its field in words and its value.</summary>
internal sealed class FaultValues(Fault fault, Language language) : IValues
{
    public object? Find(string name) => name switch
    {
        "field" => language.FieldInWords(fault.Field),
        "value" when fault.Code is FaultCodes.SaleUnitNeeds or FaultCodes.SaleUnitOther or FaultCodes.SaleUnitHoldsNone => language.Terms.SaleUnits.GetValueOrDefault(fault.Value, fault.Value),
        "value" => fault.Value,
        "one" or "other" when fault.Code == FaultCodes.SaleUnitUnclear && Known(name) is { } unit => language.Terms.SaleUnits.GetValueOrDefault(unit, unit),
        "needs" when Known(name) is { } field => language.FieldInWords(field),
        "countedIn" when Known(name) is { } counted => language.Terms.CountedIn.GetValueOrDefault(counted, counted),
        "expected" when fault.Code == FaultCodes.OrderExpected && Known(name) is { } what => language.Terms.OrderExpectations.GetValueOrDefault(what, what),
        "expected" or "found" when Known(name) is { } type => language.Terms.FaultTypes.GetValueOrDefault(type, type),
        "detail" when Known(name) is { } detail =>
            language.Terms.FaultDetails.TryGetValue(detail, out var words) ? Template.Fill(words, this, language) : detail,
        _ => Known(name),
    };

    private string? Known(string name) => fault.Values.GetValueOrDefault(name);
}

/// <summary>A notice's own values, its bead's name and the places of the beads it means.</summary>
internal sealed class NoticeValues(Notice notice, Func<string, string> beadName, Language language) : IValues
{
    private const int PlacesShown = 6;

    public object? Find(string name) => name switch
    {
        "bead" => notice.BeadId is { } id ? beadName(id) : null,
        "positions" => Positions(),
        "group" or "beside" when notice.Words.TryGetValue(name, out var group) => beadName(group),
        "groups" when notice.Words.TryGetValue(name, out var groups) => string.Join(", ", groups.Split(", ").Select(beadName)),
        "end" or "side" when notice.Words.TryGetValue(name, out var word) => language.Terms.NoticeWords.GetValueOrDefault(word, word),
        _ when notice.Numbers.TryGetValue(name, out var number) => number,
        _ => notice.Words.GetValueOrDefault(name),
    };

    private string? Positions()
    {
        if (notice.Positions.IsEmpty) return null;
        var shown = notice.Positions.Take(PlacesShown).Select(p => (p + 1).ToString(CultureInfo.InvariantCulture));
        var list = string.Join(", ", shown);
        return notice.Positions.Length <= PlacesShown ? list
            : language.Fill(language.Terms.AndMore, ("list", list), ("more", notice.Positions.Length - PlacesShown));
    }
}

/// <summary>A cure's own values and its bead's name.</summary>
internal sealed class CureValues(Cure cure, Func<string, string> beadName, Language language) : IValues
{
    public object? Find(string name) => name switch
    {
        "bead" => cure.BeadId is { } id ? beadName(id) : null,
        "end" when cure.Words.TryGetValue(name, out var word) => language.Terms.NoticeWords.GetValueOrDefault(word, word),
        _ when cure.Numbers.TryGetValue(name, out var number) => number,
        _ => cure.Words.GetValueOrDefault(name),
    };
}

/// <summary>Values handed over by name.</summary>
internal sealed class NamedValues(IReadOnlyDictionary<string, object?> values) : IValues
{
    public object? Find(string name) => values.GetValueOrDefault(name);
}
