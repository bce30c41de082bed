using System.Text.RegularExpressions;

namespace Coilwright.Cli.Tests;

public class HelpTests
{
    [Fact]
    public void Called_bare_it_shows_what_it_does()
    {
        var ran = TheProgram.Run();
        Assert.Equal(0, ran.Code);
        Assert.Contains("reckon", ran.Out, StringComparison.Ordinal);
        Assert.Equal(ran.Out, TheProgram.Run("--help").Out);
        Assert.Equal(ran.Out, TheProgram.Run("help").Out);
    }

    [Fact]
    public void Every_verb_has_an_example_and_a_section_of_its_own()
    {
        var (readme, commands) = (File.ReadAllText(Path.Combine(TheProgram.Root, "README.md")), File.ReadAllText(Path.Combine(TheProgram.Root, "docs/commands.md")));
        string[] verbs = [.. Regex.Matches(TheProgram.Run("help").Out, @"(?m)^  ([a-z]+)  ").Select(m => m.Groups[1].Value)];
        Assert.Contains("reckon", verbs);
        foreach (var verb in verbs)
        {
            var help = TheProgram.Run("help", verb).Out;
            Assert.Equal(help, TheProgram.Run(verb, "--help").Out);
            Assert.Contains($"\n  coilwright {verb} ", help[help.IndexOf("Examples:", StringComparison.Ordinal)..], StringComparison.Ordinal);
            Assert.Contains($"\n## {verb}\n\n`coilwright {verb} ", commands, StringComparison.Ordinal);
            Assert.Contains($"\n| `{verb}` | ", readme, StringComparison.Ordinal);
            foreach (Match option in Regex.Matches(commands[commands.IndexOf($"\n## {verb}\n", StringComparison.Ordinal)..].Split("\n## ")[1], "`(--[a-z-]+)"))
                Assert.Contains(option.Groups[1].Value, help, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("reckon", "--help")]
    [InlineData("reckon", "-h")]
    [InlineData("reckon", "x", "--wrost", "--help")]
    public void Help_of_a_verb_has_every_option_and_an_example(params string[] args)
    {
        var ran = TheProgram.Run(args);
        Assert.Equal(0, ran.Code);
        foreach (var word in new[] { "--wrist MM", "--worn-circumference MM", "--seed N", "--json", "--draw FILE.svg", "coilwright reckon my-bracelet.piece.json" })
            Assert.Contains(word, ran.Out, StringComparison.Ordinal);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Fact]
    public void The_version_is_the_programs_own()
    {
        var ran = TheProgram.Run("--version");
        Assert.Equal(0, ran.Code);
        Assert.Matches(@"^coilwright \d+\.\d+\.\d+\n$", ran.Out);
    }
}
