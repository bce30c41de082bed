using System.Text;
using System.Text.Json;
using Coilwright.Core.Faults;
using Coilwright.Core.Making;
using Coilwright.Core.Pricing;
using Coilwright.Core.Pricing.Formulas;
using Coilwright.Storage.Binding;
using Json.Schema;

namespace Coilwright.Storage.Tests;

/// <summary>Files of costs: what is read, and promised by their schema.</summary>
public class CostsFileTests
{
    private static readonly string SchemaText = File.ReadAllText(Path.Combine(TestData.Root, "docs", "costs.schema.json"));

    private static readonly JsonSchema Schema = JsonSchema.FromText(SchemaText);

    private const string Text = """
        {
          "format": "coilwright.costs/1",
          "currency": "EUR",
          "wagePerHour": 16.5,
          "wastePercent": 4,
          "wire": { "price": 4.80, "loops": 24 },
          "findings": [{ "name": "pin", "count": 2, "price": 2.4, "holds": 50 }],
          "packaging": [{ "name": "bag", "count": 6, "price": 3.5, "holds": 100, "for": ["kit"] }],
          "steps": [{ "name": "string", "minutes": 26.5, "does": ["firstEnd", "stringBeads"], "waitMinutes": 30 }, { "name": "photograph", "minutes": 20, "perBatch": true, "for": ["piece", "pattern"] }],
          "overheads": [{ "name": "room", "perMonth": 96, "pieces": 40 }, { "name": "tools", "perHour": 1.2 }, { "name": "rest", "percent": 3 }],
          "fees": [{ "name": "card", "percent": 1.9, "fixed": 0.15 }, { "name": "gallery", "percent": 40 }],
          "outlays": [{ "name": "table", "amount": 85, "for": ["piece"] }],
          "rules": [
            { "name": "wholesale", "sells": "piece", "formula": "cost * 2", "roundUpTo": 0.5 },
            { "name": "retail", "sells": "piece", "formula": "wholesale * 2 + fee_fixed", "fees": ["card"], "endIn": 0.9 }
          ]
        }
        """;

    [Fact]
    public void Costs_are_read_as_they_are_meant()
    {
        var read = CostsFile.Read(Encoding.UTF8.GetBytes(Text));
        Assert.Empty(read.Faults);
        var sheet = read.Costs!.Sheet;
        Assert.Equal(("EUR", 16.5m, 4m, new WirePack(4.80m, 24, null)), (sheet.Currency, sheet.WagePerHour, sheet.WastePercent, sheet.Wire));
        Assert.Equal([("pin", false, 2, 2.4m, 50), ("bag", true, 6, 3.5m, 100)], sheet.Items.Select(i => (i.Name, i.IsPackaging, i.Count, i.Price, i.Holds)));
        Assert.Equal([[Sold.Piece, Sold.Kit], [Sold.Kit]], sheet.Items.Select(i => i.For.ToArray()));
        Assert.Equal([("string", 26.5m, false), ("photograph", 20m, true)], sheet.Steps.Select(s => (s.Name, s.Minutes, s.PerBatch)));
        Assert.Equal([StepAction.FirstEnd, StepAction.StringBeads], sheet.Steps[0].Does);
        Assert.Empty(sheet.Steps[1].Does);
        Assert.Equal([30m, null], sheet.Steps.Select(s => s.WaitMinutes));
        Assert.Equal([[Sold.Piece], [Sold.Piece, Sold.Pattern]], sheet.Steps.Select(s => s.For.ToArray()));
        Assert.Equal([("room", null, null, 96m, 40), ("tools", null, 1.2m, null, null), ("rest", (decimal?)3, (decimal?)null, (decimal?)null, (int?)null)],
            sheet.Overheads.Select(o => (o.Name, o.Percent, o.PerHour, o.PerMonth, o.Pieces)));
        Assert.Equal([new Fee("card", 1.9m, 0.15m), new Fee("gallery", 40, 0)], sheet.Fees);
        Assert.Equal(("table", 85m), (sheet.Outlays[0].Name, sheet.Outlays[0].Amount));
        Assert.Equal([("wholesale", (decimal?)0.5m, (decimal?)null), ("retail", null, 0.9m)], sheet.Rules.Select(r => (r.Name, r.RoundUpTo, r.EndIn)));
        Assert.Equal(["card"], sheet.Rules[1].Fees);
        using var json = JsonDocument.Parse(Text);
        Assert.True(Schema.Evaluate(json.RootElement).IsValid);
    }

    [Fact]
    public void The_example_keeps_to_the_schema_and_is_read()
    {
        var bytes = File.ReadAllBytes(Path.Combine(TestData.Root, "examples", "studio.costs.json"));
        using var json = JsonDocument.Parse(bytes);
        Assert.True(Schema.Evaluate(json.RootElement).IsValid);
        Assert.Equal(5, CostsFile.Read(bytes).Costs!.Sheet.Rules.Length);
    }

    [Fact]
    public void Nothing_but_the_format_is_enough() => Assert.Empty(CostsFile.Read("""{ "format": "coilwright.costs/1" }"""u8.ToArray()).Costs!.Sheet.Rules);

    [Theory]
    [InlineData("\"EUR\"", "\"eur\"", FaultCodes.CurrencyForm, "currency")]
    [InlineData("16.5", "-1", FaultCodes.ValueAtLeast, "wagePerHour")]
    [InlineData("\"loops\": 24", "\"loops\": 24, \"pieces\": 3", FaultCodes.FieldOneOf, "wire.pieces")]
    [InlineData(", \"loops\": 24", "", FaultCodes.FieldOneOf, "wire.loops")]
    [InlineData("\"holds\": 50", "\"holds\": 0", FaultCodes.ValueAtLeast, "findings[0].holds")]
    [InlineData("[\"kit\"]", "[\"kits\"]", FaultCodes.WordUnknown, "packaging[0].for[0]")]
    [InlineData("\"minutes\": 26.5", "\"minutes\": 0", FaultCodes.ValueAtLeast, "steps[0].minutes")]
    [InlineData("[\"firstEnd\", ", "[\"fristEnd\", ", FaultCodes.WordUnknown, "steps[0].does[0]")]
    [InlineData("\"waitMinutes\": 30", "\"waitMinutes\": 0", FaultCodes.ValueAtLeast, "steps[0].waitMinutes")]
    [InlineData("\"perBatch\": true", "\"perBatch\": 1", FaultCodes.FieldType, "steps[1].perBatch")]
    [InlineData(", \"pieces\": 40", "", FaultCodes.FieldMissing, "overheads[0].pieces")]
    [InlineData("\"perHour\": 1.2", "\"perHour\": 1.2, \"pieces\": 2", FaultCodes.FieldNotWith, "overheads[1].pieces")]
    [InlineData(", \"percent\": 40", "", FaultCodes.FieldMissing, "fees[1].percent")]
    [InlineData("\"percent\": 1.9", "\"percent\": 100", FaultCodes.FeesTakeAll, "rules[1].fees")]
    [InlineData("\"name\": \"gallery\"", "\"name\": \"card\"", FaultCodes.NameTwice, "fees[1].name")]
    [InlineData("\"amount\": 85", "\"amounts\": 85", FaultCodes.FieldUnknown, "outlays[0].amounts")]
    [InlineData("\"roundUpTo\": 0.5", "\"roundUpTo\": 0.5, \"endIn\": 0.9", FaultCodes.FieldNotWith, "rules[0].endIn")]
    [InlineData("\"roundUpTo\": 0.5", "\"roundUpTo\": 0", FaultCodes.ValueAtLeast, "rules[0].roundUpTo")]
    [InlineData("\"endIn\": 0.9", "\"endIn\": 100", FaultCodes.ValueAtMost, "rules[1].endIn")]
    [InlineData("[\"card\"]", "[\"crad\"]", FaultCodes.WordUnknown, "rules[1].fees[0]")]
    [InlineData("\"sells\": \"piece\", \"formula\": \"cost", "\"formula\": \"cost", FaultCodes.FieldMissing, "rules[0].sells")]
    [InlineData("\"cost * 2\"", "\"\"", FaultCodes.TextEmpty, "rules[0].formula")]
    [InlineData("\"cost * 2\"", "\"retail / 2\"", FaultCodes.FormulaCycle, "rules[1].formula")]
    [InlineData("\"name\": \"retail\"", "\"name\": \"Retail\"", FaultCodes.PriceRuleNameForm, "rules[1].name")]
    public void A_slip_is_told_by_its_place(string from, string to, string code, string field)
    {
        Assert.Contains(from, Text, StringComparison.Ordinal);
        var read = CostsFile.Read(Encoding.UTF8.GetBytes(Text.Replace(from, to, StringComparison.Ordinal)));
        Assert.Null(read.Costs);
        var fault = Assert.Single(read.Faults);
        Assert.Equal((code, field), (fault.Code, fault.Field));
        Assert.True(fault.Line > 0);
    }

    // The line is counted in the text above, the column in its line; an escape takes six places of the file and one of the formula.
    [Theory]
    [InlineData("cost * 2", "cost * (2", 14, 67)]
    [InlineData("cost * 2", "cots * 2", 14, 58)]
    [InlineData("cost * 2", "\\u0063ost ** 2", 14, 69)]
    public void A_slip_of_a_formula_is_told_by_its_column(string from, string to, int line, int column)
    {
        var wrong = Text.Replace($"\"{from}\"", $"\"{to}\"", StringComparison.Ordinal);
        var fault = Assert.Single(CostsFile.Read(Encoding.UTF8.GetBytes(wrong)).Faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
    }

    [Fact]
    public void A_fault_found_later_is_placed_in_the_file()
    {
        var read = CostsFile.Read(Encoding.UTF8.GetBytes(Text));
        var placed = read.Placed(Fault.Of(FaultCodes.FormulaDividesByZero, "rules[0].formula", "cost * 2", ("at", "6")));
        Assert.Equal((14, 63), (placed.Line, placed.Column));
        Assert.Equal((3, 15), read.Placed(Fault.Of(FaultCodes.CurrenciesDiffer, "currency", "EUR", ("other", "CHF"))) is var f ? (f.Line, f.Column) : default);
    }

    [Fact]
    public void The_schema_has_the_fields_that_the_reader_knows_and_describes_each()
    {
        using var schema = JsonDocument.Parse(SchemaText);
        var defs = schema.RootElement.GetProperty("$defs");
        foreach (var (at, fields) in new[]
                 {
                     (schema.RootElement, CostsBinder.File), (schema.RootElement.GetProperty("properties").GetProperty("wire"), CostsBinder.WireFields), (defs.GetProperty("item"), CostsBinder.ItemFields),
                     (defs.GetProperty("step"), CostsBinder.StepFields), (defs.GetProperty("overhead"), CostsBinder.OverheadFields), (defs.GetProperty("fee"), CostsBinder.FeeFields),
                     (defs.GetProperty("outlay"), CostsBinder.OutlayFields), (defs.GetProperty("rule"), CostsBinder.RuleFields),
                 })
        {
            Assert.Equal(fields.Names, at.GetProperty("properties").EnumerateObject().Select(p => p.Name));
            Assert.All(at.GetProperty("properties").EnumerateObject(), p => Assert.True(p.Value.TryGetProperty("description", out _), p.Name));
        }
        var formula = defs.GetProperty("rule").GetProperty("properties").GetProperty("formula").GetProperty("description").GetString()!;
        Assert.All(CostFigures.Names.Concat(FormulaFunctions.Names), name => Assert.Contains(name, formula, StringComparison.Ordinal));
    }
}
