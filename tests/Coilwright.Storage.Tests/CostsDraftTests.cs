using System.Text.Json;
using Coilwright.Core.Faults;
using Coilwright.Core.Pricing;

namespace Coilwright.Storage.Tests;

/// <summary>Costs while they are written.</summary>
public class CostsDraftTests
{
    private static readonly string Example = File.ReadAllText(Path.Combine(TestData.Root, "examples", "studio.costs.json"));

    [Fact]
    public void A_file_taken_as_a_draft_says_the_same_to_the_last_digit()
    {
        var draft = CostsDraft.Of(Example);
        using JsonDocument before = JsonDocument.Parse(Example), after = JsonDocument.Parse(draft.Text);
        Assert.True(JsonElement.DeepEquals(before.RootElement, after.RootElement));
        // As it is written: 16.50 is not 16.5 to whoever reads the file.
        Assert.Contains("16.50", draft.Text, StringComparison.Ordinal);
        Assert.Equal(draft.Text, CostsDraft.Of(draft.Text).Text);
    }

    [Fact]
    public void Every_kind_of_field_can_be_set_and_read_back_and_emptied()
    {
        var draft = CostsDraft.Empty;
        Assert.Empty(draft.Read().Faults);
        CostField wage = new("", null, "wagePerHour"), price = new("wire", null, "price"), loops = new("wire", null, "loops"), name = new("steps", 0, "name"), batch = new("steps", 0, "perBatch"), sold = new("steps", 0, "for");
        draft = draft.With(wage, 16.50m).With(price, 4.8m).With(loops, 24).WithLine("steps").With(name, "string").With(new CostField("steps", 0, "minutes"), 26.25m).With(batch, true).With(sold, ["piece", "kit"]);
        Assert.Equal((16.50m, 4.8m, "string", true, 1), (draft.NumberOf(wage), draft.NumberOf(price), draft.TextOf(name), draft.IsYes(batch), draft.Lines("steps")));
        Assert.Equal(["piece", "kit"], draft.WordsOf(sold)!.Value);
        var sheet = draft.Read().Costs!.Sheet;
        Assert.Equal((16.50m, new WirePack(4.8m, 24, null)), (sheet.WagePerHour, sheet.Wire));
        Assert.Equal(("string", 26.25m, true), (sheet.Steps[0].Name, sheet.Steps[0].Minutes, sheet.Steps[0].PerBatch));
        Assert.Equal(CostsDraft.Empty.Text, draft.With(wage, (decimal?)null).With(price, (decimal?)null).With(loops, (decimal?)null).WithoutLine("steps", 0).Text);
    }

    [Fact]
    public void What_is_not_filled_in_yet_is_told_by_its_path_and_not_taken_for_nought()
    {
        var faults = CostsDraft.Empty.WithLine("packaging").Read().Faults;
        Assert.All(faults, f => Assert.Equal(FaultCodes.FieldMissing, f.Code));
        Assert.Equal(["packaging[0].count", "packaging[0].holds", "packaging[0].name", "packaging[0].price"], faults.Select(f => f.Field).Order(StringComparer.Ordinal));
        Assert.Equal("packaging[0].name", new CostField("packaging", 0, "name").Path);
    }

    [Fact]
    public void A_slip_in_a_formula_is_told_with_its_rule_and_character()
    {
        var formula = new CostField("rules", 1, "formula");
        var fault = Assert.Single(CostsDraft.Of(Example).With(formula, "cost * (2 + ").Read().Faults);
        Assert.Equal(formula.Path, fault.Field);
        Assert.True(fault.Values.ContainsKey("at"));
    }
}
