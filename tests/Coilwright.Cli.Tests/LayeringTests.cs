using System.Reflection;
using NetArchTest.Rules;

namespace Coilwright.Cli.Tests;

/// <summary>The walls of the house: what may know of what.</summary>
public class LayeringTests
{
    private static readonly Assembly Core = typeof(Core.Pieces.Piece).Assembly;
    private static readonly Assembly Wording = typeof(Wording.Language).Assembly;
    private static readonly Assembly Documents = typeof(Documents.Canvases.SvgCanvas).Assembly;
    private static readonly Assembly Storage = typeof(Storage.PieceFile).Assembly;

    [Fact]
    public void The_core_knows_nothing_of_ours_and_nothing_of_the_world() => AssertFree(Types.InAssembly(Core), "Coilwright.Wording",
        "Coilwright.Documents", "Coilwright.Storage", "Coilwright.Cli", "System.IO", "System.Net", "System.Net.Http", "System.Console",
        "System.Diagnostics.Process", "System.CommandLine", "System.DateTime", "System.TimeProvider");

    [Fact]
    public void Wording_knows_the_core_alone() =>
        AssertFree(Types.InAssembly(Wording), "Coilwright.Documents", "Coilwright.Storage", "Coilwright.Cli", "System.IO", "System.Console");

    [Fact]
    public void Documents_know_the_core_and_wording_alone() => AssertFree(Types.InAssembly(Documents), "Coilwright.Storage", "Coilwright.Cli");

    [Fact]
    public void Storage_knows_the_core_alone() =>
        AssertFree(Types.InAssembly(Storage), "Coilwright.Wording", "Coilwright.Documents", "Coilwright.Cli");

    // Each folder of the core may know those in lines above its own and in its own line, faults and measures always.
    private static readonly string[][] Order =
    [
        ["Faults"],
        ["Measures"],
        ["Buying"],
        ["Numerics", "Geometry", "Colour"],
        ["Beads", "StringingMaterials", "Findings"],
        ["Stringing"],
        ["Pieces"],
        ["Lies"],
        ["Fit", "Alignment"],
        ["Settle"],
        ["Spread"],
        ["Readings"],
        ["Scenes", "Palettes"],
        ["Making", "Cutting", "Stock", "Tray"],
        ["Listings"],
        ["Costing"],
        ["Editing"],
        ["Cures", "Arrangement"],
        ["Grading", "Shopping", "Substitutes"],
        ["Kits"],
        ["Pricing"],
        ["Made", "Batches"],
        ["Quotes", "Classes"],
    ];

    public static TheoryData<string> Folders => [.. Order.SelectMany(f => f)];

    [Theory, MemberData(nameof(Folders))]
    public void A_folder_of_the_core_knows_nothing_that_stands_over_it(string folder)
    {
        var at = Array.FindIndex(Order, line => line.Contains(folder));
        string[] over = [.. Order.Skip(at + 1).SelectMany(f => f).Select(f => $"Coilwright.Core.{f}")];
        var types = Types.InAssembly(Core).That().ResideInNamespace($"Coilwright.Core.{folder}");
        Assert.NotEmpty(types.GetTypes());
        if (over.Length > 0) AssertFree(types, over);
    }

    [Fact]
    public void Every_folder_of_the_core_has_its_place_in_the_order()
    {
        var folders = Core.GetTypes().Where(t => t.Namespace?.StartsWith("Coilwright.Core.", StringComparison.Ordinal) == true)
            .Select(t => t.Namespace!.Split('.')[2]).Distinct();
        Assert.Equal(Order.SelectMany(f => f).Order(StringComparer.Ordinal), folders.Order(StringComparer.Ordinal));
    }

    private static void AssertFree(PredicateList types, params string[] of) => AssertFree(types.Should().NotHaveDependencyOnAny(of));

    private static void AssertFree(Types types, params string[] of) => AssertFree(types.Should().NotHaveDependencyOnAny(of));

    private static void AssertFree(ConditionList condition)
    {
        var result = condition.GetResult();
        Assert.True(result.IsSuccessful, string.Join('\n', (result.FailingTypes ?? []).Select(t => $"{t.FullName}: {t.Explanation}")));
    }
}
