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
