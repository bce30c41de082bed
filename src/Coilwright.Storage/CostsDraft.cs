using System.Collections.Immutable;
using System.Text;
using System.Text.Json.Nodes;
using Coilwright.Storage.Binding;

namespace Coilwright.Storage;

/// <summary>One field of a file of costs: of the file itself, of its wire, or of a line in one of its lists.</summary>
/// <param name="List">The list, as <c>steps</c>; <c>wire</c>; empty for the file itself.</param>
/// <param name="Line">Which line of the list, from 0; null where there is no list.</param>
/// <param name="Name">The field.</param>
public readonly record struct CostField(string List, int? Line, string Name)
{
    /// <summary>Its path, as faults have it.</summary>
    public string Path => List.Length == 0 ? Name : Line is { } line ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{List}[{line}].{Name}") : $"{List}.{Name}";
}

/// <summary>A file of costs while somebody writes it: any field can be set or emptied, and whether it can be used is asked of <see cref="CostsFile"/>.</summary>
/// <remarks>Is never changed: each change gives another. What is emptied is not in the file, so that nothing stands there that nobody wrote.</remarks>
public sealed class CostsDraft
{
    private readonly JsonObject _root;

    private CostsDraft(JsonObject root) => (_root, Text) = (root, root.ToJsonString(PieceWriter.Options).ReplaceLineEndings("\n") + "\n");

    /// <summary>Nothing but the format.</summary>
    public static CostsDraft Empty { get; } = new(new JsonObject { ["format"] = CostsFile.Format });

    /// <summary>The file.</summary>
    public string Text { get; }

    /// <summary>The draft of a file that <see cref="CostsFile"/> reads.</summary>
    public static CostsDraft Of(string text) => new((JsonObject)JsonNode.Parse(text)!);

    /// <summary>Whether it can be used, and what is wrong with it.</summary>
    public CostsRead Read() => CostsFile.Read(Encoding.UTF8.GetBytes(Text));

    /// <summary>How many lines a list has.</summary>
    public int Lines(string list) => (_root[list] as JsonArray)?.Count ?? 0;

    /// <summary>A text; empty when there is none.</summary>
    public string TextOf(CostField field) => Value(field) is JsonValue value && value.TryGetValue(out string? text) ? text : "";

    /// <summary>A number; null when there is none.</summary>
    public decimal? NumberOf(CostField field) => Value(field) is JsonValue value && value.TryGetValue(out decimal number) ? number : null;

    /// <summary>Whether something is said to be so.</summary>
    public bool IsYes(CostField field) => Value(field) is JsonValue value && value.TryGetValue(out bool yes) && yes;

    /// <summary>A list of words; null when there is none.</summary>
    public ImmutableArray<string>? WordsOf(CostField field) => Value(field) is JsonArray words ? [.. words.Select(w => w!.GetValue<string>())] : null;

    /// <summary>The same with a text; an empty one is taken out.</summary>
    public CostsDraft With(CostField field, string text) => With(field, text.Length == 0 ? null : JsonValue.Create(text));

    /// <summary>The same with a number; null is taken out.</summary>
    public CostsDraft With(CostField field, decimal? number) => With(field, number is { } known ? JsonValue.Create(known) : null);

    /// <summary>The same with something so or not; what is not so is taken out.</summary>
    public CostsDraft With(CostField field, bool yes) => With(field, yes ? JsonValue.Create(true) : null);

    /// <summary>The same with a list of words.</summary>
    public CostsDraft With(CostField field, ImmutableArray<string> words) => With(field, new JsonArray([.. words.Select(w => (JsonNode)JsonValue.Create(w)!)]));

    /// <summary>The same with an empty line at the end of a list.</summary>
    public CostsDraft WithLine(string list)
    {
        var root = (JsonObject)_root.DeepClone();
        if (root[list] is not JsonArray lines) root[list] = lines = [];
        lines.Add(new JsonObject());
        return new CostsDraft(root);
    }

    /// <summary>The same without a line.</summary>
    public CostsDraft WithoutLine(string list, int line)
    {
        var root = (JsonObject)_root.DeepClone();
        var lines = (JsonArray)root[list]!;
        lines.RemoveAt(line);
        if (lines.Count == 0) root.Remove(list);
        return new CostsDraft(root);
    }

    private CostsDraft With(CostField field, JsonNode? value)
    {
        var root = (JsonObject)_root.DeepClone();
        var owner = Owner(root, field);
        if (owner is null && value is null) return this;
        if (owner is null) root[field.List] = owner = [];
        if (value is null) owner.Remove(field.Name);
        else owner[field.Name] = value;
        // A pack of wire of which nothing is said is no pack.
        if (field is { List.Length: > 0, Line: null } && owner.Count == 0) root.Remove(field.List);
        return new CostsDraft(root);
    }

    private JsonNode? Value(CostField field) => Owner(_root, field)?[field.Name];

    private static JsonObject? Owner(JsonObject root, CostField field) =>
        field.List.Length == 0 ? root : field.Line is { } line ? (JsonObject)((JsonArray)root[field.List]!)[line]! : root[field.List] as JsonObject;
}
