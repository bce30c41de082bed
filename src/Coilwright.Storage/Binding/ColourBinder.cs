using System.Collections.Immutable;
using Coilwright.Core.Colour;
using Coilwright.Core.Faults;
using Coilwright.Storage.Json;

namespace Coilwright.Storage.Binding;

/// <summary>Makes the colour families of the program's data file.</summary>
internal static class ColourBinder
{
    private static readonly FieldSet Outer = new("reason", "families");
    private static readonly FieldSet Family = new("key", "samples");

    /// <summary>The families.</summary>
    public static ColourFamilies? Families(JsonValue at, string fileName, FaultList faults)
    {
        if (Fields.Of(at, Outer, faults) is not { } fields) return null;
        if (fields.Require("reason")) fields.Text("reason", most: 1000, mayBeEmpty: false);
        var families = ImmutableArray.CreateBuilder<ColourFamily>();
        foreach (var item in (fields.Require("families") ? fields.List("families") : null) ?? [])
        {
            if (Fields.Of(item, Family, faults) is not { } row) continue;
            var key = row.Require("key") ? row.Text("key", mayBeEmpty: false) : null;
            var samples = ImmutableArray.CreateBuilder<Srgb>();
            foreach (var sample in (row.Require("samples") ? row.List("samples") : null) ?? [])
                if (sample.Kind == JsonKind.Text && Srgb.TryParse(sample.Text, out var colour)) samples.Add(colour);
                else row.ItemFault("samples", sample, FaultCodes.ColourForm);
            if (key is not null && samples.Count > 0) families.Add(new ColourFamily(key, samples.ToImmutable()));
            else row.Missing("samples");
        }
        return faults.Count == 0 && families.Count > 0 ? new ColourFamilies(families.ToImmutable()) : null;
    }
}
