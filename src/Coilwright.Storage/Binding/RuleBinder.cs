using System.Collections.Immutable;
using Coilwright.Core.Faults;
using Coilwright.Core.Pieces;
using Coilwright.Core.Stringing;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes the rules of the order of a file's wishes, noting everything wrong with them.</summary>
/// <param name="ids">Ids of the piece's beads; empty when they are not known here.</param>
/// <param name="order">The order; null when it is not known here.</param>
/// <param name="faults">What is wrong.</param>
internal sealed class RuleBinder(IReadOnlyCollection<string> ids, StringingOrder? order, FaultList faults)
{
    private readonly ImmutableSortedSet<string> _beads = ids.ToImmutableSortedSet(StringComparer.Ordinal);
    private readonly ImmutableSortedSet<string>? _known = order is null ? null : PieceRules.NamesForRules(order, ids);

    /// <summary>The rules, in the order of the fields.</summary>
    public ImmutableArray<OrderRule> Read(Fields wishes)
    {
        var rules = ImmutableArray.CreateBuilder<OrderRule>();
        foreach (var fields in Each(wishes, "longestRun", PieceFields.LongestRun))
        {
            var name = Name(fields, "name");
            if ((fields.Require("most") ? fields.Whole("most", PieceRules.LongestRun) : null) is { } most && name is not null) rules.Add(new OrderRule.LongestRun(name, most));
        }
        foreach (var fields in Each(wishes, "inAnyRow", PieceFields.InAnyRow))
        {
            var names = Names(fields);
            var upTo = fields.Require("upTo") ? fields.Whole("upTo", PieceRules.UpTo) : null;
            var ofAny = fields.Require("ofAny") ? fields.Whole("ofAny", PieceRules.OfAny(upTo ?? 0)) : null;
            if (upTo is { } most && ofAny is { } of && names is { } all) Add(fields, "names", new OrderRule.InAnyRow(all, most, of));
        }
        foreach (var fields in Each(wishes, "apart", PieceFields.Neighbours))
            if ((Name(fields, "name"), Name(fields, "beside")) is ({ } name, { } beside)) Add(fields, "beside", new OrderRule.Apart(name, beside));
        foreach (var fields in Each(wishes, "together", PieceFields.Neighbours))
            if ((Name(fields, "name"), Name(fields, "beside")) is ({ } name, { } beside)) Add(fields, "beside", new OrderRule.Together(name, beside));
        if (wishes.Has("startsWith") && Name(wishes, "startsWith") is { } first) rules.Add(new OrderRule.StartsWith(first));
        if (wishes.Has("endsWith") && Name(wishes, "endsWith") is { } last) rules.Add(new OrderRule.EndsWith(last));
        return rules.ToImmutable();

        void Add(Fields fields, string field, OrderRule rule)
        {
            if (_known is not null && PieceRules.MixedWith(rule, _beads, _known) is { } other) fields.FaultOf(field, rule.Named[0], Fault.Of(FaultCodes.RuleMixed, field, rule.Named[0], ("other", other)));
            else rules.Add(rule);
        }
    }

    private IEnumerable<Fields> Each(Fields wishes, string name, FieldSet set)
    {
        foreach (var item in wishes.List(name) ?? [])
            if (Fields.Of(item, set, faults) is { } fields) yield return fields;
    }

    private string? Name(Fields fields, string field) =>
        fields.Require(field) && fields.Text(field, mayBeEmpty: false) is { } name && IsKnown(fields, field, fields[field]!.Value, name) ? name : null;

    // All or, with faults noted, none.
    private ImmutableArray<string>? Names(Fields fields)
    {
        if (!fields.Require("names")) return null;
        var names = fields.Texts("names");
        if (names.IsEmpty && !fields.Wrong("names")) fields.Fault("names", FaultCodes.TextEmpty);
        if (fields.Wrong("names")) return null;
        var known = fields.List("names")!.Zip(names, (item, name) => IsKnown(fields, "names", item, name)).ToArray();
        return known.All(yes => yes) ? names : null;
    }

    private bool IsKnown(Fields fields, string field, JsonValue at, string name)
    {
        if (_known is null || _known.Contains(name)) return true;
        fields.ItemFault(field, at, FaultCodes.OrderUnknownName, ("nearest", NearestName.Of(name, _known) ?? ""));
        return false;
    }
}
