using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Coilwright.Core.Beads;
using Coilwright.Core.Beads.Shapes;
using Coilwright.Core.Faults;
using Coilwright.Storage.Binding;

namespace Coilwright.Storage.Tests;

/// <summary>The published schema and the reader say the same of a piece file, as far as a schema can say it.</summary>
public class SchemaTests
{
    public static TheoryData<string> Examples => ExamplesTests.Files;

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_example_is_accepted_by_the_schema(string file)
    {
        var bytes = File.ReadAllBytes(Path.Combine(TestData.Examples, file));
        Assert.True(PieceSchema.Accepts(bytes), PieceSchema.Complaints(bytes));
    }

    // Where an object stands in the schema, and the reader's own list of its fields.
    private static readonly (string Path, FieldSet Fields)[] Objects =
    [
        ("", PieceFields.Piece),
        ("$defs/bead", PieceFields.Bead),
        ("$defs/bead/properties/row", PieceFields.BeadRow),
        ("$defs/bead/properties/seat", PieceFields.Seat),
        ("$defs/bead/properties/pack", PieceFields.Pack),
        ("$defs/stringingMaterial", PieceFields.StringingMaterial),
        ("$defs/ends", PieceFields.Ends),
        ("$defs/end", PieceFields.End),
        ("$defs/wearer", PieceFields.Wearer),
        ("$defs/measuredRow", PieceFields.MeasuredRow),
        ("$defs/measuredLoop", PieceFields.MeasuredLoop),
        ("$defs/measuredEndLoop", PieceFields.MeasuredEndLoop),
        ("$defs/order", PieceFields.Order),
        ("$defs/orderGroup", PieceFields.OrderGroup),
        ("$defs/wishes", PieceFields.Wishes),
        ("$defs/longestRun", PieceFields.LongestRun),
        ("$defs/inAnyRow", PieceFields.InAnyRow),
        ("$defs/neighbours", PieceFields.Neighbours),
        ("$defs/standIn", PieceFields.StandIn),
        ("$defs/free", PieceFields.Free),
        ("$defs/startRange", PieceFields.StartRange),
        ("$defs/turnsRange", PieceFields.TurnsRange),
        ("$defs/coil", PieceFields.Coil),
        ("$defs/freeRun", PieceFields.FreeRun),
        ("$defs/beadsOnHand", PieceFields.OnHand),
        ("$defs/weighedWrist", PieceFields.Wrist),
        ("$defs/placeWish", PieceFields.PlaceWish),
        ("$defs/pattern", PieceFields.Pattern),
        ("$defs/stepWords", PieceFields.StepWords),
        ("$defs/testerNote", PieceFields.TesterNote),
    ];

    [Fact]
    public void At_every_level_the_schema_has_the_fields_that_the_reader_knows()
    {
        foreach (var (path, fields) in Objects)
        {
            var at = PieceSchema.At(path);
            Assert.Equal(fields.Names, at.GetProperty("properties").EnumerateObject().Select(p => p.Name));
            Assert.False(at.GetProperty("additionalProperties").GetBoolean());
        }
    }

    [Fact]
    public void No_object_of_the_schema_is_left_out_of_that_comparison()
    {
        var found = new List<string>();
        Walk(PieceSchema.Root, "", (path, at) =>
        {
            if (at.TryGetProperty("properties", out _) && !IsCondition(path)) found.Add(path);
        });
        Assert.Equal(Objects.Select(o => o.Path).Order(StringComparer.Ordinal), found.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_list_of_words_in_the_schema_is_the_readers()
    {
        IEnumerable<string> Words(string path) => PieceSchema.At(path).GetProperty("enum").EnumerateArray().Select(w => w.GetString()!);
        Assert.Equal(BeadShapes.Names, Words("$defs/bead/properties/shape"));
        Assert.Equal(PieceFields.Roles.Words, Words("$defs/bead/properties/role"));
        Assert.Equal(PieceFields.LengthIs.Words, Words("$defs/bead/properties/lengthIs"));
        Assert.Equal(PieceFields.MaterialKinds.Words, Words("$defs/stringingMaterial/properties/kind"));
        Assert.Equal(PieceFields.Finishes.Words, Words("$defs/end/properties/finish"));
        Assert.Equal(PieceFields.WhichEnds.Words, Words("$defs/measuredEndLoop/properties/end"));
        Assert.Equal(PieceFields.LiningUp.Words, Words("$defs/wish"));
        Assert.Equal(PieceFields.JudgedBys.Words, Words("$defs/wishes/properties/judgedBy"));
        Assert.Equal(PieceFields.Levels.Words, Words("$defs/pattern/properties/level"));
        Assert.Equal(OrderWords.Reserved.Order(StringComparer.Ordinal), Words("$defs/name/not"));
        Assert.Equal(PieceFields.MeasuredWhats.Words, new[] { "Row", "Loop", "EndLoop" }
            .Select(w => PieceSchema.At($"$defs/measured{w}/properties/what").GetProperty("const").GetString()!));
        Assert.Equal(PieceFile.Format, PieceSchema.At("properties/format").GetProperty("const").GetString());
        Assert.Equal(PieceFields.FocalOnTop, PieceSchema.At("$defs/wearer/properties/startAngleDeg").GetProperty("oneOf")[1].GetProperty("const").GetString());
    }

    [Fact]
    public void Every_field_has_a_description()
    {
        Walk(PieceSchema.Root, "", (path, at) =>
        {
            if (!at.TryGetProperty("properties", out var properties) || IsCondition(path)) return;
            foreach (var property in properties.EnumerateObject())
                Assert.True(property.Value.TryGetProperty("description", out _) || property.Value.TryGetProperty("const", out _)
                    || PieceSchema.Resolved(property.Value).TryGetProperty("description", out _), path + "/" + property.Name);
        });
    }

    // Every number that a file can hold, in files that between them have every field. What is checked: at a bound of the schema the reader has
    // nothing against the number's own range, and just beyond it the reader refuses it, as the schema does.
    [Fact]
    public void The_schemas_bounds_are_the_readers()
    {
        var seen = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var file in FilesWithEveryField.All)
            Numbers(JsonNode.Parse(file)!, PieceSchema.Root, "", (path, schema) =>
            {
                seen.Add(schema.GetProperty("description").GetString()!);
                foreach (var (bound, inside, sign) in new[] { ("minimum", true, -1), ("exclusiveMinimum", false, -1), ("maximum", true, 1) })
                {
                    if (!schema.TryGetProperty(bound, out var value)) continue;
                    var at = value.GetDouble();
                    var step = schema.GetProperty("type").GetString() == "integer" ? 1 : 0.01;
                    var told = RangeFaults(file, path, at);
                    if (NarrowedByAnotherField.Contains(path)) told.RemoveAll(b => b != at.ToString(CultureInfo.InvariantCulture));
                    Assert.True(inside == (told.Count == 0), $"{path} at {bound}");
                    Assert.True(RangeFaults(file, path, at + sign * step).Count > 0, $"{path} beyond {bound}");
                    Assert.False(PieceSchema.Accepts(With(file, path, at + sign * step)), $"{path} beyond {bound} in the schema");
                }
            });
        var all = new SortedSet<string>(StringComparer.Ordinal);
        Walk(PieceSchema.Root, "", (_, at) =>
        {
            if (at.TryGetProperty("type", out var type) && type.ValueKind == JsonValueKind.String && type.GetString() is "number" or "integer")
                all.Add(at.GetProperty("description").GetString()!);
        });
        Assert.Equal(all, seen);
    }

    // Where another field narrows the range further, which a schema cannot say: a flat within its face, a wall within its bead, a row by its count. At
    // the schema's bound the reader then names a bound of its own.
    private static readonly string[] NarrowedByAnotherField =
    [
        "beads[0].toleranceMm", "beads[0].wallMm", "beads[1].row.totalMm", "beads[3].endFaceMm", "beads[4].lengthMm", "beads[5].seat.lengthMm",
        "beads[5].seat.clearMm", "measured[0].totalMm", "measured[1].totalMm", "wishes.inAnyRow[0].ofAny",
    ];

    [Fact]
    public void The_files_with_every_field_are_sound_and_accepted()
    {
        foreach (var file in FilesWithEveryField.All)
        {
            Assert.Empty(TestData.Read(file).Faults);
            Assert.True(PieceSchema.Accepts(Encoding.UTF8.GetBytes(file)), PieceSchema.Complaints(Encoding.UTF8.GetBytes(file)));
        }
    }

    /// <summary>Whether a part of the schema only ties fields together that are described elsewhere.</summary>
    private static bool IsCondition(string path) => path.Split('/').Any(step => step is "oneOf" or "anyOf" or "contains");

    /// <summary>The bounds that the reader names in its faults of a number's range.</summary>
    private static List<string> RangeFaults(string file, string path, double number) =>
        [.. PieceFile.Read(With(file, path, number), null, TestData.Data).Faults
            .Where(f => f.Field == path && f.Code is FaultCodes.ValueAbove or FaultCodes.ValueAtLeast or FaultCodes.ValueAtMost)
            .Select(f => f.Values.GetValueOrDefault("max") ?? f.Values["min"])];

    private static byte[] With(string file, string path, double number)
    {
        var root = JsonNode.Parse(file)!;
        var steps = path.Replace("[", ".[", StringComparison.Ordinal).Split('.', StringSplitOptions.RemoveEmptyEntries);
        var at = root;
        foreach (var step in steps[..^1]) at = Step(at, step);
        if (steps[^1][0] == '[') at.AsArray()[Index(steps[^1])] = JsonValue.Create(number);
        else at[steps[^1]] = JsonValue.Create(number);
        return Encoding.UTF8.GetBytes(root.ToJsonString());
    }

    private static JsonNode Step(JsonNode at, string step) => step[0] == '[' ? at[Index(step)]! : at[step]!;

    private static int Index(string step) => int.Parse(step.AsSpan(1, step.Length - 2), CultureInfo.InvariantCulture);

    private static void Numbers(JsonNode value, JsonElement schema, string path, Action<string, JsonElement> found)
    {
        schema = PieceSchema.Resolved(schema);
        if (schema.TryGetProperty("oneOf", out var ways) && !schema.TryGetProperty("properties", out _))
            schema = ways.EnumerateArray().Select(PieceSchema.Resolved).First(w => Fits(value, w));
        switch (value)
        {
            case JsonObject fields when schema.TryGetProperty("properties", out var properties):
                foreach (var (name, inner) in fields)
                    if (properties.TryGetProperty(name, out var property) && inner is not null
                        && (property.TryGetProperty("type", out var type) ? type.GetString() != "string" : true))
                        Numbers(inner, property, path.Length == 0 ? name : path + "." + name, found);
                break;
            case JsonArray items:
                for (var i = 0; i < items.Count; i++)
                    if (items[i] is { } item)
                        Numbers(item, schema.TryGetProperty("prefixItems", out var prefix) ? prefix[i] : schema.GetProperty("items"), $"{path}[{i}]", found);
                break;
            case JsonValue number when number.GetValueKind() == JsonValueKind.Number:
                found(path, schema);
                break;
        }
    }

    private static bool Fits(JsonNode value, JsonElement way) => value switch
    {
        JsonObject fields when way.TryGetProperty("properties", out var properties) =>
            !properties.TryGetProperty("what", out var what) || what.GetProperty("const").GetString() == fields["what"]!.GetValue<string>(),
        JsonValue number when number.GetValueKind() == JsonValueKind.Number => way.TryGetProperty("type", out var type) && type.GetString() == "number",
        JsonValue => way.TryGetProperty("const", out _) || way.TryGetProperty("type", out var type) && type.GetString() == "string",
        _ => false,
    };

    private static void Walk(JsonElement at, string path, Action<string, JsonElement> visit)
    {
        if (at.ValueKind == JsonValueKind.Object)
        {
            visit(path, at);
            foreach (var property in at.EnumerateObject()) Walk(property.Value, path.Length == 0 ? property.Name : path + "/" + property.Name, visit);
        }
        else if (at.ValueKind == JsonValueKind.Array)
        {
            var i = 0;
            foreach (var item in at.EnumerateArray()) Walk(item, $"{path}/{i++}", visit);
        }
    }
}
