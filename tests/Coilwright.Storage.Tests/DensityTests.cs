using System.Globalization;

namespace Coilwright.Storage.Tests;

/// <summary>The densities of the data against what was read elsewhere: a slip of a digit in a data file must not pass.</summary>
public class DensityTests
{
    private static readonly List<string[]> Rows = [.. File.ReadLines(Path.Combine(AppContext.BaseDirectory, "Reference", "densities.csv"))
        .Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Split(',', 5))];

    [Fact]
    public void Every_material_has_a_row_of_reference() =>
        Assert.Equal(TestData.Data.Materials.Keys.Order(StringComparer.Ordinal), Rows.Select(r => r[0]).Order(StringComparer.Ordinal));

    [Fact]
    public void Every_density_is_the_printed_one_and_within_the_printed_range()
    {
        foreach (var row in Rows)
        {
            var density = TestData.Data.Materials[row[0]].DensityGPerCm3;
            if (Number(row[1]) is { } typical) Assert.Equal(typical, density);
            Assert.True(!(density < Number(row[2])), $"{row[0]}: {density} is less than {row[2]}");
            Assert.True(!(density > Number(row[3])), $"{row[0]}: {density} is more than {row[3]}");
        }
    }

    // Second way: 92.5 parts of silver and 7.5 of copper by mass, mixed without change of volume, from the data's own figures. 0.5 %: the two
    // printed figures for sterling, 10.36 and 10.40, differ by nearly that.
    [Fact]
    public void Sterling_silver_is_what_its_parts_make()
    {
        var parts = TestData.Data.Materials;
        var mixed = 1 / (0.925 / parts["fine-silver"].DensityGPerCm3 + 0.075 / parts["copper"].DensityGPerCm3);
        Assert.Equal(mixed, parts["sterling-silver"].DensityGPerCm3, 0.005 * mixed);
    }

    [Fact]
    public void Metals_are_told_from_what_is_none()
    {
        Assert.Equal(
            ["aluminium", "brass", "bronze", "copper", "fine-silver", "nickel-silver", "pewter", "stainless-steel", "sterling-silver", "tin", "zinc"],
            TestData.Data.Materials.Values.Where(m => m.IsMetal).Select(m => m.Key).Order(StringComparer.Ordinal));
    }

    private static double? Number(string text) => text.Length == 0 ? null : double.Parse(text, CultureInfo.InvariantCulture);
}
