using System.Collections.Immutable;
using Coilwright.Core.Listings;
using Coilwright.Core.Measures;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes the figures behind the cautions of the program's data files, as strictly as <see cref="DataBinder"/>.</summary>
internal static class CautionBinder
{
    private static readonly FieldSet SmallPartsFields = new("key", "inside", "shallow", "deep");
    private static readonly FieldSet MetalsFields = new("key", "limits");
    private static readonly FieldSet LimitFields = new("key", "metal", "value", "unit", "source");

    // Longer than any bead.
    private static readonly Limits SizeMm = Limits.Above0To(200, "mm");

    /// <summary>The small-parts cylinder.</summary>
    public static SmallPartsCylinder? SmallParts(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, SmallPartsFields, faults) is not { } fields) return null;
        DataBinder.Key(fields, fileName);
        var inside = DataBinder.Read(fields, "inside", "mm", SizeMm);
        var shallow = DataBinder.Read(fields, "shallow", "mm", SizeMm);
        var deep = DataBinder.Read(fields, "deep", "mm", SizeMm);
        return inside is { } i && shallow is { } s && deep is { } d && faults.Count == 0 ? new SmallPartsCylinder(i.Value, s.Value, d.Value, i.Source) : null;
    }

    /// <summary>Limits on metals, as read.</summary>
    internal sealed record MetalTable(ImmutableArray<MetalLimit> Limits);

    /// <summary>Limits on metals.</summary>
    public static MetalTable? Metals(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, MetalsFields, faults) is not { } fields) return null;
        DataBinder.Key(fields, fileName);
        var limits = ImmutableArray.CreateBuilder<MetalLimit>();
        foreach (var item in (fields.Require("limits") ? fields.List("limits") : null) ?? [])
        {
            if (Fields.Of(item, LimitFields, faults) is not { } row) continue;
            var key = Text(row, "key");
            var metal = Text(row, "metal");
            var value = row.Require("value") ? row.Number("value", Limits.Above0To(1_000_000, "")) : null;
            var unit = Text(row, "unit");
            var source = Text(row, "source");
            if (key is not null && metal is not null && value is { } v && unit is not null && source is not null) limits.Add(new MetalLimit(key, metal, v, unit, source));
        }
        return faults.Count == 0 ? new MetalTable(limits.ToImmutable()) : null;
    }

    private static string? Text(Fields row, string name) => row.Require(name) ? row.Text(name, most: 1000, mayBeEmpty: false) : null;
}
