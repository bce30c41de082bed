using System.Text.RegularExpressions;
using Coilwright.Core.Stringing.Notation;

namespace Coilwright.Cli.Tests;

/// <summary>The papers say what is so: links lead somewhere, and what they show as an example works.</summary>
public partial class PapersTests
{
    public static TheoryData<string> Papers => [.. Directory.GetFiles(TheProgram.Root, "*.md")
        .Concat(new[] { "docs", "data", "examples" }.SelectMany(f => Directory.GetFiles(Path.Combine(TheProgram.Root, f), "*.md", SearchOption.AllDirectories)))
        .Select(p => Path.GetRelativePath(TheProgram.Root, p)).Order(StringComparer.Ordinal)];

    [Theory, MemberData(nameof(Papers))]
    public void Every_link_of_a_paper_leads_to_a_file(string paper)
    {
        var folder = Path.GetDirectoryName(Path.Combine(TheProgram.Root, paper))!;
        foreach (Match link in Link().Matches(File.ReadAllText(Path.Combine(TheProgram.Root, paper))))
        {
            var target = link.Groups[1].Value.Split('#')[0];
            if (target.Length == 0) continue;
            Assert.DoesNotContain("://", target, StringComparison.Ordinal);
            Assert.True(Path.Exists(Path.Combine(folder, target)), $"{paper} leads to {target}, which is not there.");
        }
    }

    [Fact]
    public void The_readme_gives_two_commands_and_a_piece_that_is_there()
    {
        var readme = File.ReadAllText(Path.Combine(TheProgram.Root, "README.md"));
        Assert.Matches(@"(?m)^dotnet run --project src/Coilwright\.Web$", readme);
        Assert.Matches(@"(?m)^bash \.ci/run$", readme);
        var piece = Regex.Match(readme, @"`dotnet run --project src/Coilwright\.Cli -- reckon (\S+)`").Groups[1].Value;
        Assert.True(File.Exists(Path.Combine(TheProgram.Root, piece)), piece);
        Assert.Equal(0, TheProgram.Run("reckon", piece).Code);
    }

    [Fact]
    public void The_readmes_order_reads()
    {
        var readme = File.ReadAllText(Path.Combine(TheProgram.Root, "README.md"));
        var order = Regex.Match(readme, "The order reads like a note:\n\n```\n(.*?)```", RegexOptions.Singleline).Groups[1].Value;
        Assert.NotEmpty(order);
        Assert.Empty(OrderNotation.Read(order, ["shard", "dot", "moon", "tube", "pebble"]).Faults);
    }

    [Fact]
    public void The_layers_named_for_newcomers_are_all_the_layers()
    {
        var text = File.ReadAllText(Path.Combine(TheProgram.Root, "CONTRIBUTING.md"));
        foreach (var row in LayeringTests.Folders) Assert.Contains(row.Data, text, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();
}
