using System.Text;
using System.Text.Json;
using Coilwright.Core.Cutting;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Storage.Binding;
using Json.Schema;

namespace Coilwright.Storage.Tests;

/// <summary>Files of wire at hand: what is read, written back, and promised by their schema.</summary>
public class WireFileTests
{
    private static readonly string SchemaText = File.ReadAllText(Path.Combine(TestData.Root, "docs", "wire.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private const string Drawer = """
        {
          "format": "coilwright.wire/1",
          "lossMm": 0.5,
          "keepFromMm": 120,
          "wire": [
            { "name": "packs", "gauge": "22 AWG", "insideMm": 55, "loops": 12, "howMany": 4, "price": 3.20 },
            { "wireMm": 0.62, "steel": "stainless-302", "loopMm": 191, "massOz": 1 },
            { "wireMm": 0.62, "steel": "stainless-302", "centreMm": 61, "massG": 28.349523125, "howMany": 2 },
            { "name": "tin", "wireMm": 0.62, "loopMm": 191, "wireLengthMm": 640.5, "offcut": true }
          ]
        }
        """;

    private static WireAtHand Read(string text)
    {
        var (wire, faults) = WireFile.Read(Encoding.UTF8.GetBytes(text), TestData.Data);
        Assert.Empty(faults);
        return wire!;
    }

    [Fact]
    public void Packs_weights_and_offcuts_are_read_as_they_are_meant()
    {
        var wire = Read(Drawer);
        Assert.Equal(new CuttingRules(0.5, 120), wire.Rules);
        Assert.Equal(12 * Math.PI * (55 + wire.Lots[0].Wire.WireMm), wire.Lots[0].LengthMm, 1e-9);
        Assert.Equal((4, 3.20m, false), (wire.Lots[0].Count, wire.Lots[0].Price, wire.Lots[0].IsOffcut));
        // New wire of which nothing is told is there as much as it takes; of an offcut there is one.
        Assert.Equal((int?)null, wire.Lots[1].Count);
        Assert.Equal((1, true), (wire.Lots[3].Count, wire.Lots[3].IsOffcut));
        // An ounce is an ounce, whatever the loop: pi/4 d2 L rho.
        Assert.Equal(28.349523125, Math.PI / 4 * 0.62 * 0.62 * wire.Lots[1].LengthMm * TestData.Data.Steels["stainless-302"].DensityGPerCm3 / 1000, 1e-9);
        Assert.Equal(wire.Lots[1].LengthMm, wire.Lots[2].LengthMm, 1e-9);
        Assert.Equal(CoilDatum.MeasuredLoop, wire.Lots[3].Wire.Datum);
    }

    [Fact]
    public void What_is_written_reads_back_the_same_and_keeps_to_the_schema()
    {
        var wire = Read(Drawer);
        var bytes = WireFile.Write(wire);
        var again = WireFile.Read(bytes, TestData.Data).Wire!;
        Assert.Equal(wire.Rules, again.Rules);
        Assert.Equal(wire.Lots, again.Lots);
        foreach (var file in new[] { Encoding.UTF8.GetBytes(Drawer), bytes })
        {
            using var json = JsonDocument.Parse(file);
            Assert.True(Schema.Evaluate(json.RootElement).IsValid);
        }
    }

    [Fact]
    public void The_schema_has_the_fields_that_the_reader_knows_and_describes_each()
    {
        using var schema = JsonDocument.Parse(SchemaText);
        foreach (var (at, fields) in new[] { (schema.RootElement, WireBinder.File), (schema.RootElement.GetProperty("$defs").GetProperty("lot"), WireBinder.Lot) })
        {
            Assert.Equal(fields.Names, at.GetProperty("properties").EnumerateObject().Select(p => p.Name));
            Assert.All(at.GetProperty("properties").EnumerateObject(), p => Assert.True(p.Value.TryGetProperty("description", out _), p.Name));
        }
    }

    // At a bound of the schema the reader takes the number, and just beyond it refuses it.
    [Theory]
    [InlineData("loops", "4999", "5001")]
    [InlineData("wireLengthMm", "250000", "250001")]
    [InlineData("massG", "0.01", "0")]
    [InlineData("massOz", "0.01", "351")]
    [InlineData("howMany", "0", "-1")]
    [InlineData("howMany", "100000", "100001")]
    [InlineData("price", "1000000", "1000001")]
    [InlineData("price", "0.01", "0")]
    [InlineData("insideMm", "10", "9.9")]
    public void The_schemas_bounds_are_the_readers(string field, string inside, string beyond)
    {
        foreach (var (value, good) in new[] { (inside, true), (beyond, false) })
        {
            var amount = field is "loops" or "wireLengthMm" or "massG" or "massOz" ? "" : ", \"wireLengthMm\": 700";
            var size = field == "insideMm" ? "" : ", \"loopMm\": 30";
            var text = $$"""{ "format": "coilwright.wire/1", "wire": [{ "wireMm": 1, "steel": "music-wire"{{size}}{{amount}}, "{{field}}": {{value}} }] }""";
            using var json = JsonDocument.Parse(text);
            Assert.Equal(good, Schema.Evaluate(json.RootElement).IsValid);
            Assert.Equal(good, WireFile.Read(Encoding.UTF8.GetBytes(text), TestData.Data).Faults.IsEmpty);
        }
    }

    [Fact]
    public void More_lots_than_any_drawer_holds_are_refused()
    {
        var lots = string.Join(",", Enumerable.Repeat("""{ "wireMm": 1, "loopMm": 180, "loops": 12 }""", 501));
        Assert.Single(WireFile.Read(Encoding.UTF8.GetBytes("{ \"format\": \"coilwright.wire/1\", \"wire\": [" + lots + "] }"), TestData.Data).Faults);
    }
}
