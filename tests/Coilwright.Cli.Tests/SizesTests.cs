using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Coilwright.Cli.Tests;

/// <summary><c>sizes</c>: what it makes, writes and says.</summary>
public class SizesTests
{
    private static readonly AnswerSchema Schema = new("sizes");

    [Theory]
    [InlineData("tidewrack")]
    [InlineData("boardwalk")]
    [InlineData("puddle-hop")]
    public void Each_size_is_written_and_reckons_as_it_said(string name)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sizes", TheProgram.Example(name), "--wrists", "125,140,170", "--out", folder["sizes"], "--effort", "1", "--json");
        Assert.Equal(0, ran.Code);
        var sizes = Schema.Valid(ran.Out)["sizes"]!.AsArray();
        Assert.Equal([125, 140, 170], sizes.Select(s => (double)s!["wristMm"]!));
        foreach (var size in sizes)
        {
            var reckoned = JsonNode.Parse(TheProgram.Run("reckon", (string)size!["file"]!, "--json").Out)!;
            Assert.Equal((double)size["wristMm"]!, (double)reckoned["wristMm"]!);
            Assert.Equal((double)size["beadedMm"]!, (double)reckoned["lengths"]!["beadedMm"]!);
            Assert.Equal((double)size["cutMm"]!, (double)reckoned["lengths"]!["cutMm"]!);
            Assert.Equal((double)size["turnsWorn"]!, (double)reckoned["fit"]!["turnsWorn"]!);
            Assert.Equal(size["counts"]!.ToJsonString(), reckoned["counts"]!.ToJsonString());
        }
    }

    [Fact]
    public void Without_wrists_it_takes_adults_and_the_wearers_own()
    {
        var ran = TheProgram.Run("sizes", TheProgram.Example("boardwalk"), "--effort", "1", "--json");
        Assert.Equal([142.25, 150, 152, 154, 160, 162, 168, 170, 176, 182, 191], Schema.Valid(ran.Out)["sizes"]!.AsArray().Select(s => (double)s!["wristMm"]!));
    }

    [Fact]
    public void The_same_effort_and_seed_print_the_same_and_a_language_changes_only_words()
    {
        string Run(params string[] more) => TheProgram.Run(["sizes", TheProgram.Example("tidewrack"), "--wrists", "175,150", "--effort", "1", "--seed", "9", "--json", .. more]).Out;
        var first = Run();
        Assert.Equal(first, Run());
        var (english, german) = (Schema.Valid(first), Schema.Valid(Run("--language", "de")));
        foreach (var size in english["sizes"]!.AsArray().Concat(german["sizes"]!.AsArray())) (size!["says"], size["why"]) = (null, null);
        Assert.Equal(english.ToJsonString(), german.ToJsonString());
    }

    [Fact]
    public void The_page_says_what_changes_and_which_beads_all_take()
    {
        var ran = TheProgram.Run("sizes", TheProgram.Example("boardwalk"), "--wrists", "152,175", "--effort", "1");
        Assert.Equal(0, ran.Code);
        var text = Regex.Replace(ran.Out, @"\s+", " ");
        Assert.Contains("152 mm: The base size.", text, StringComparison.Ordinal);
        Assert.Contains("175 mm: 2 more sets of 3 Sea-green round (A) and 1 Brass spacer (B) at each end; 1 more set", text, StringComparison.Ordinal);
        // 45 repeats, and 5 more.
        Assert.Matches("Brass spacer \\(B\\) 45 50 50 95 ", text);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
    }

    [Theory]
    [InlineData("wide", "length-form")]
    [InlineData("", "length-form")]
    [InlineData("150,,160", "length-form")]
    [InlineData("150,30", "length-bounds")]
    [InlineData("150,401", "length-bounds")]
    [InlineData("150,160,150.0", "wrist-twice")]
    [InlineData("50,51,52,53,54,55,56,57,58,59,60,61,62,63,64,65,66,67,68,69,70,71,72,73,74,75,76,77,78,79,80,81,82,83,84,85,86,87,88,89,90", "wrists-too-many")]
    public void Wrong_wrists_are_told_in_one_message(string wrists, string code)
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("sizes", TheProgram.Example("boardwalk"), "--wrists", wrists, "--out", folder["sizes"], "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("usage." + code, (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
        Assert.False(Directory.Exists(folder["sizes"]));
    }

    [Fact]
    public void A_folder_that_cannot_be_made_is_told()
    {
        using var folder = new OwnFolder();
        File.WriteAllText(folder["taken"], "");
        var ran = TheProgram.Run("sizes", TheProgram.Example("boardwalk"), "--wrists", "160", "--effort", "1", "--out", folder["taken"], "--json");
        Assert.Equal(2, ran.Code);
        Assert.Equal("file.unwritable", (string)JsonNode.Parse(ran.Out)!["error"]!["code"]!);
    }
}
