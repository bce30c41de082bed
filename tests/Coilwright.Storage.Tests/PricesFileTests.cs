using System.Text;
using System.Text.Json;
using Coilwright.Core.Buying;
using Coilwright.Core.Faults;
using Coilwright.Core.Shopping;
using Coilwright.Storage.Binding;
using Json.Schema;

namespace Coilwright.Storage.Tests;

/// <summary>Files of prices: what is read, and promised by their schema.</summary>
public class PricesFileTests
{
    private static readonly string SchemaText = File.ReadAllText(Path.Combine(TestData.Root, "docs", "prices.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private const string Prices = """
        {
          "format": "coilwright.prices/1",
          "currency": "EUR",
          "suppliers": [{ "name": "post", "leastOrder": 15, "freight": 4.90, "freeFrom": 60, "leadDays": 12 }],
          "offers": [
            { "bead": "round", "supplier": "post", "number": "R-602", "unit": "bag", "holds": 100, "prices": [{ "from": 1, "price": 3.9 }, { "from": 5, "price": 3.1999 }], "has": 7 },
            { "end": "gluedCap", "supplier": "stall", "unit": "pack", "holds": 2, "price": 1.10 },
            { "end": "dangle", "supplier": "stall", "unit": "piece", "price": 2.50 }
          ]
        }
        """;

    [Fact]
    public void Offers_and_suppliers_are_read_as_they_are_meant()
    {
        var (prices, faults) = PricesFile.Read(Encoding.UTF8.GetBytes(Prices));
        Assert.Empty(faults);
        Assert.Equal("EUR", prices!.Currency);
        Assert.Equal([new Supplier("post", 15, 4.90m, 60) { LeadDays = 12 }], prices.Suppliers);
        Assert.Equal(("round", "post", "R-602", "bag", 100, (int?)7), (prices.Offers[0].Item, prices.Offers[0].Supplier, prices.Offers[0].Number, prices.Offers[0].Unit, prices.Offers[0].Holds, prices.Offers[0].Most));
        Assert.Equal([new PriceStep(1, 3.9m), new PriceStep(5, 3.1999m)], prices.Offers[0].Prices);
        Assert.Equal([ShoppingItem.GluedCap, ShoppingItem.Dangle], prices.Offers.Skip(1).Select(o => o.Item));
        Assert.Equal([new PriceStep(1, 1.10m)], prices.Offers[1].Prices);
        using var json = JsonDocument.Parse(Prices);
        Assert.True(Schema.Evaluate(json.RootElement).IsValid);
    }

    [Theory]
    [InlineData("dozen", 12)]
    [InlineData("gross", 144)]
    [InlineData("piece", 1)]
    public void What_always_holds_the_same_need_not_be_counted(string unit, int holds)
    {
        var text = Prices.Replace("\"unit\": \"pack\", \"holds\": 2", $"\"unit\": \"{unit}\"", StringComparison.Ordinal);
        using var json = JsonDocument.Parse(text);
        Assert.True(Schema.Evaluate(json.RootElement).IsValid);
        Assert.Equal(holds, PricesFile.Read(Encoding.UTF8.GetBytes(text)).Prices!.Offers[1].Holds);
    }

    [Fact]
    public void The_example_keeps_to_the_schema_and_offers_beads_that_are_strung()
    {
        var bytes = File.ReadAllBytes(Path.Combine(TestData.Root, "examples", "two-suppliers.prices.json"));
        using var json = JsonDocument.Parse(bytes);
        Assert.True(Schema.Evaluate(json.RootElement).IsValid);
        var prices = PricesFile.Read(bytes).Prices!;
        var beads = new[] { "tidewrack", "boardwalk" }.SelectMany(p => PieceFile.ReadFrom(Path.Combine(TestData.Root, "examples", p + ".piece.json"), TestData.Data).Piece!.Beads.Select(b => b.Id)).ToHashSet();
        Assert.All(prices.Offers, o => Assert.Contains(o.Item, beads));
    }

    [Theory]
    [InlineData("\"from\": 5", "\"from\": 1", FaultCodes.BuyingStepsOverlap, "offers[0].prices[1].from")]
    [InlineData("\"from\": 1", "\"from\": 2", FaultCodes.BuyingFirstStep, "offers[0].prices[0].from")]
    [InlineData("3.1999", "3.19999", FaultCodes.BuyingTooFine, "offers[0].prices[1].price")]
    [InlineData("\"holds\": 100", "\"holds\": 0", FaultCodes.ValueAtLeast, "offers[0].holds")]
    [InlineData("\"price\": 1.10", "\"price\": -1", FaultCodes.ValueAtLeast, "offers[1].price")]
    [InlineData("\"EUR\"", "\"Euro\"", FaultCodes.TextTooLong, "currency")]
    [InlineData("\"EUR\"", "\"eur\"", FaultCodes.CurrencyForm, "currency")]
    [InlineData("\"gluedCap\"", "\"turnedLoop\"", FaultCodes.WordUnknown, "offers[1].end")]
    [InlineData("\"freight\": 4.90, ", "", FaultCodes.FieldMissing, "suppliers[0].freight")]
    [InlineData("\"end\": \"gluedCap\", ", "", FaultCodes.FieldOneOf, "offers[1].bead")]
    [InlineData("\"price\": 1.10", "\"price\": 1.10, \"prices\": []", FaultCodes.FieldOneOf, "offers[1].prices")]
    [InlineData("[{ \"from\": 1, \"price\": 3.9 }, { \"from\": 5, \"price\": 3.1999 }]", "[]", FaultCodes.BuyingNoPrice, "offers[0].prices")]
    [InlineData("\"unit\": \"pack\", ", "", FaultCodes.FieldMissing, "offers[1].unit")]
    [InlineData("\"unit\": \"bag\"", "\"unit\": \"GR\"", FaultCodes.SaleUnitUnclear, "offers[0].unit")]
    [InlineData("\"unit\": \"bag\"", "\"unit\": \"gross\"", FaultCodes.ValueAtLeast, "offers[0].holds")]
    [InlineData("\"holds\": 2, ", "", FaultCodes.FieldMissing, "offers[1].holds")]
    [InlineData("\"has\": 7", "\"hass\": 7", FaultCodes.FieldUnknown, "offers[0].hass")]
    [InlineData("{ \"name\": \"post\"", "{ \"name\": \"post\" }, { \"name\": \"post\"", FaultCodes.BuyingSupplierTwice, "suppliers[1].name")]
    public void A_slip_is_told_by_its_place(string from, string to, string code, string field)
    {
        Assert.Contains(from, Prices, StringComparison.Ordinal);
        var (prices, faults) = PricesFile.Read(Encoding.UTF8.GetBytes(Prices.Replace(from, to, StringComparison.Ordinal)));
        Assert.Null(prices);
        var fault = Assert.Single(faults);
        Assert.Equal((code, field), (fault.Code, fault.Field));
        Assert.True(fault.Line > 0);
    }

    [Fact]
    public void The_schema_has_the_fields_that_the_reader_knows_and_describes_each()
    {
        using var schema = JsonDocument.Parse(SchemaText);
        var defs = schema.RootElement.GetProperty("$defs");
        foreach (var (at, fields) in new[]
                 {
                     (schema.RootElement, PricesBinder.File), (defs.GetProperty("supplier"), PricesBinder.SupplierFields), (defs.GetProperty("offer"), PricesBinder.OfferFields),
                     (defs.GetProperty("offer").GetProperty("properties").GetProperty("prices").GetProperty("items"), PricesBinder.StepFields),
                 })
        {
            Assert.Equal(fields.Names, at.GetProperty("properties").EnumerateObject().Select(p => p.Name));
            Assert.All(at.GetProperty("properties").EnumerateObject(), p => Assert.True(p.Value.TryGetProperty("description", out _), p.Name));
        }
    }

    [Fact]
    public void Days_of_a_supplier_are_set_and_taken_out_and_all_else_stays_as_it_is_written()
    {
        var text = File.ReadAllText(Path.Combine(TestData.Root, "examples", "two-suppliers.prices.json"));
        int? Days(string file, string supplier) => PricesFile.Read(Encoding.UTF8.GetBytes(file)).Prices!.Suppliers.First(s => s.Name == supplier).LeadDays;
        var told = PricesDraft.WithLeadDays(text, "the post order", 21);
        Assert.Equal((21, 0), (Days(told, "the post order"), Days(told, "the stall at the quay")));
        Assert.Null(Days(PricesDraft.WithLeadDays(told, "the post order", null), "the post order"));
        // As it is written: 4.90 is not 4.9 to whoever reads the file.
        Assert.Contains("4.90", told, StringComparison.Ordinal);
        using JsonDocument before = JsonDocument.Parse(text), after = JsonDocument.Parse(PricesDraft.WithLeadDays(told, "the post order", 9));
        Assert.True(JsonElement.DeepEquals(before.RootElement, after.RootElement));
        // One that only stands with an offer is listed then, and asks for nothing else.
        var bare = """{ "format": "coilwright.prices/1", "offers": [{ "bead": "chip", "supplier": "fair", "unit": "bag", "holds": 50, "price": 2 }] }""";
        var listed = PricesFile.Read(Encoding.UTF8.GetBytes(PricesDraft.WithLeadDays(bare, "fair", 3))).Prices!;
        Assert.Equal([new Supplier("fair") { LeadDays = 3 }], listed.Suppliers);
    }
}
