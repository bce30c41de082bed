namespace Coilwright.Cli.Tests;

/// <summary>A locale with a decimal comma must never change a number.</summary>
public class LocaleTests
{
    private static readonly (string, string)[] Comma = [("LANG", "de_DE.UTF-8"), ("LC_ALL", "de_DE.UTF-8"), ("LC_NUMERIC", "de_DE.UTF-8")];
    private static readonly (string, string)[] Point = [("LANG", "C"), ("LC_ALL", "C")];

    [Theory]
    [InlineData("160.5")]
    [InlineData("16.05cm")]
    [InlineData("6.32in")]
    public void A_wrist_with_a_point_is_that_wrist_in_every_locale(string wrist)
    {
        string[] args = ["reckon", TheProgram.Example("boardwalk"), "--wrist", wrist, "--json"];
        var comma = TheProgram.Run(Comma, args);
        Assert.Equal(0, comma.Code);
        Assert.Equal(TheProgram.Run(Point, args).OutBytes, comma.OutBytes);
        Assert.Contains("\"wristMm\": 160.5", comma.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void The_report_is_the_same_in_every_locale() => Assert.Equal(
        TheProgram.Run(Point, ["reckon", TheProgram.Example("boardwalk")]).Out, TheProgram.Run(Comma, ["reckon", TheProgram.Example("boardwalk")]).Out);

    [Fact]
    public void A_wrist_with_a_comma_is_refused_and_never_read_as_ten_times_as_much()
    {
        var ran = TheProgram.Run(Comma, ["reckon", TheProgram.Example("boardwalk"), "--wrist", "160,5"]);
        Assert.Equal(2, ran.Code);
        Assert.Contains("is \"160,5\", with a comma. Numbers take a decimal point.\nWrite 160.5.", ran.Error, StringComparison.Ordinal);
    }
}
