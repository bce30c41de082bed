using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Coilwright.Core.Faults;
using Coilwright.Storage.Json;
using JsonValue = Coilwright.Storage.Json.JsonValue;

namespace Coilwright.Storage.Binding;

/// <summary>One step from an older format to the next.</summary>
/// <param name="From">The format it takes.</param>
/// <param name="To">The format it gives.</param>
/// <param name="Change">What it changes, in memory; the format's own name is changed for it.</param>
internal sealed record PieceMigration(string From, string To, Action<JsonObject> Change);

/// <summary>The formats of piece files, and the steps from older ones to the newest.</summary>
internal static class PieceFormats
{
    /// <summary>Every step, oldest first. Empty so far: <c>coilwright.piece/1</c> is the first format there is. A step that is added here brings a
    /// sample of its old format in tests/Coilwright.Storage.Tests/Samples.</summary>
    public static ImmutableArray<PieceMigration> Migrations { get; } = [];

    /// <summary>Checks the format of a file and brings an older one up to date in memory. False, with a fault, when it is none of ours.</summary>
    public static bool Accept(ref JsonText text, FaultList faults) => Accept(ref text, faults, PieceFile.Format, Migrations);

    internal static bool Accept(ref JsonText text, FaultList faults, string newest, ImmutableArray<PieceMigration> migrations)
    {
        var root = text.Root;
        if (root.Kind != JsonKind.Fields)
        {
            faults.Add(root, FaultCodes.FieldType, ("expected", FaultTypes.Fields), ("found", root.KindWord));
            return false;
        }
        JsonValue? found = null;
        foreach (var (name, value) in root.Fields)
            if (name.Raw.SequenceEqual("\"format\""u8))
            {
                found = value;
                break;
            }
        if (found is not { } format)
        {
            faults.AddMissing(root, "format", FaultCodes.FieldMissing);
            return false;
        }
        if (format.Kind != JsonKind.Text)
        {
            faults.Add(format, FaultCodes.FieldType, ("expected", FaultTypes.Text), ("found", format.KindWord));
            return false;
        }
        var written = format.Text;
        if (written == newest) return true;
        if (migrations.All(m => m.From != written))
        {
            var isOurs = written.StartsWith("coilwright.", StringComparison.Ordinal) && KindOf(written) != KindOf(newest);
            faults.Add(format, isOurs ? FaultCodes.FormatOther : FaultCodes.FormatUnknown, ("known", string.Join(", ", migrations.Select(m => m.From).Append(newest))));
            return false;
        }
        return Migrate(ref text, written, newest, migrations, faults);
    }

    private static string KindOf(string format) => format.Split('/')[0];

    private static bool Migrate(ref JsonText text, string written, string newest, ImmutableArray<PieceMigration> migrations, FaultList faults)
    {
        // The framework's tree knows no places: a fault in an older file is told with the place in the migrated text. It refuses a field that
        // stands twice, which has to be told before.
        if (FirstTwice(text.Root) is { } twice)
        {
            faults.Add(twice.Second, FaultCodes.FieldTwice,
                ("firstLine", twice.First.Place.Line.ToString(System.Globalization.CultureInfo.InvariantCulture)));
            return false;
        }
        var tree = JsonNode.Parse(text.Root.Raw)!.AsObject();
        foreach (var step in migrations.SkipWhile(m => m.From != written))
        {
            step.Change(tree);
            tree["format"] = step.To;
            if (step.To == newest) break;
        }
        text = JsonText.Read(System.Text.Encoding.UTF8.GetBytes(tree.ToJsonString(PieceWriter.Options)), out var broken)
            ?? throw new InvalidOperationException($"A migration from {written} gave no sound JSON: {broken!.Code}.");
        return true;
    }

    private static (JsonValue First, JsonValue Second)? FirstTwice(JsonValue at)
    {
        var seen = new Dictionary<string, JsonValue>(StringComparer.Ordinal);
        foreach (var (name, value) in at.Fields)
        {
            if (!seen.TryAdd(name.Text, name)) return (seen[name.Text], name);
            if (FirstTwice(value) is { } inner) return inner;
        }
        foreach (var item in at.Items)
            if (FirstTwice(item) is { } inner)
                return inner;
        return null;
    }
}
