using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.Json.Nodes;
using Json.Schema;

namespace Coilwright.Cli.Tests;

/// <summary>A schema among the papers, to which what the program prints or writes is held.</summary>
/// <param name="name">What it describes: a verb, or a file.</param>
internal sealed class AnswerSchema(string name)
{
    // A schema has an identifier, and may be read only once.
    private static readonly ConcurrentDictionary<string, Lazy<JsonSchema>> Read = [];

    private readonly Lazy<JsonSchema> _schema = Read.GetOrAdd(name, n => new(() => JsonSchema.FromText(File.ReadAllText(Path.Combine(TheProgram.Root, "docs", $"{n}.schema.json")))));

    /// <summary>Reads a text that must be as the schema has it; what is not is told with its place.</summary>
    public JsonNode Valid(string json)
    {
        using var document = JsonDocument.Parse(json);
        var result = _schema.Value.Evaluate(document.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(result.IsValid, string.Join('\n', (result.Details ?? []).Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join("; ", d.Errors!.Values)}").Append(json)));
        return JsonNode.Parse(json)!;
    }
}
