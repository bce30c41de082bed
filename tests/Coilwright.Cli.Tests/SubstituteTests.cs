using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>substitute</c>: what it finds and says, and what it refuses.</summary>
public class SubstituteTests
{
    private static readonly AnswerSchema Schema = new("substitute");

    private static readonly string[] Round = ["substitute", TheProgram.Example("boardwalk"), "--bead", "round", "--among", TheProgram.Example("tidewrack"), TheProgram.Example("puddle-hop")];

    private static JsonNode Valid(Ran ran, int code = 0)
    {
        Assert.Equal(code, ran.Code);
        return Schema.Valid(ran.Out);
    }

    [Fact]
    public void The_piece_as_it_is_is_the_one_that_reckon_reads_and_each_stand_in_changes_it()
    {
        var answer = Valid(TheProgram.Run([.. Round, "--json"]));
        var reckoned = JsonNode.Parse(TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--json").Out)!;
        Assert.Equal((double)reckoned["lengths"]!["beadedMm"]!, (double)answer["now"]!["beadedMm"]!);
        Assert.Equal((double)reckoned["mass"]!["totalG"]!, (double)answer["now"]!["totalG"]!);
        Assert.Equal(135, (int)answer["need"]!);
        Assert.Equal(5, answer["substitutes"]!.AsArray().Count);
        Assert.All(answer["substitutes"]!.AsArray(), s => Assert.NotEqual(answer["now"]!.ToJsonString(), s!["piece"]!.ToJsonString()));
    }

    [Fact]
    public void A_stand_in_takes_the_part_of_the_bead_that_it_stands_for()
    {
        // A drop that is a focal in its own piece is none in place of a round one.
        var ran = TheProgram.Run([.. Round, "--most", "20"]);
        Assert.DoesNotContain("focal lands", ran.Out, StringComparison.Ordinal);
        Assert.Contains("Painted raindrop", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Too_few_of_them_are_told_and_come_last()
    {
        var answer = Valid(TheProgram.Run([.. Round, "--home", "pea=134", "--most", "20", "--json"]));
        var last = answer["substitutes"]!.AsArray()[^1]!;
        Assert.Equal(("pea", 134, false), ((string)last["bead"]!, (int)last["have"]!, (bool)last["enough"]!));
        Assert.True((bool)Valid(TheProgram.Run([.. Round, "--home", "pea=135", "--most", "20", "--json"]))["substitutes"]!.AsArray().Single(s => (string)s!["bead"]! == "pea")!["enough"]!);
    }

    [Fact]
    public void Nothing_that_would_do_ends_with_1()
    {
        Valid(TheProgram.Run("substitute", TheProgram.Example("boardwalk"), "--bead", "round", "--among", TheProgram.Example("boardwalk"), "--json"), 1);
        Assert.Contains("There is no other bead", TheProgram.Run("substitute", TheProgram.Example("boardwalk"), "--bead", "round", "--among", TheProgram.Example("boardwalk")).Out, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_missing_or_unknown_is_told()
    {
        foreach (var (args, says) in new (string[], string)[]
                 {
                     (["substitute", TheProgram.Example("boardwalk"), "--bead", "round"], "--among"), (["substitute", TheProgram.Example("boardwalk"), "--among", TheProgram.Example("tidewrack")], "--bead"),
                     ([.. Round[..3], "ruond", .. Round[4..]], "round"), ([.. Round, "--home", "pae=1"], "pea"), ([.. Round, "--most", "51"], "--most"),
                 })
        {
            var ran = TheProgram.Run(args);
            Assert.Equal((2, ""), (ran.Code, ran.Out));
            Assert.Contains(says, ran.Error, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void The_page_is_no_wider_than_a_page_and_has_no_gap_in_either_language()
    {
        foreach (var language in new[] { "en", "de" })
        {
            var ran = TheProgram.Run([.. Round, "--home", "pea=3", "--most", "20", "--language", language]);
            Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
            Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
        }
    }
}
