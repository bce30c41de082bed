using System.Text.Json;
using Json.Schema;

namespace Coilwright.Storage.Tests;

/// <summary>The published schema, docs/piece.schema.json.</summary>
internal static class PieceSchema
{
    public static string Text { get; } = File.ReadAllText(Path.Combine(TestData.Root, "docs", "piece.schema.json"));

    public static JsonElement Root { get; } = JsonDocument.Parse(Text).RootElement;

    private static JsonSchema Schema { get; } = JsonSchema.FromText(Text);

    /// <summary>Whether the schema accepts a file.</summary>
    public static bool Accepts(ReadOnlyMemory<byte> utf8)
    {
        using var file = JsonDocument.Parse(utf8);
        return Schema.Evaluate(file.RootElement).IsValid;
    }

    /// <summary>What the schema has against a file, for the message of a failing test.</summary>
    public static string Complaints(ReadOnlyMemory<byte> utf8)
    {
        using var file = JsonDocument.Parse(utf8);
        var result = Schema.Evaluate(file.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        return string.Join("\n", (result.Details ?? []).Where(d => !d.IsValid && d.Errors is not null)
            .Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}"));
    }

    /// <summary>A part of the schema by a path such as <c>$defs/bead/properties/row</c>; empty for the whole.</summary>
    public static JsonElement At(string path) =>
        path.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate(Root, (at, step) => Resolved(at.GetProperty(step)));

    /// <summary>What a reference refers to.</summary>
    public static JsonElement Resolved(JsonElement schema) =>
        schema.ValueKind == JsonValueKind.Object && schema.TryGetProperty("$ref", out var reference)
            ? At(reference.GetString()!["#/".Length..])
            : schema;
}
