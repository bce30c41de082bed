using System.Text.Json.Nodes;

namespace Coilwright.Cli.Tests;

/// <summary><c>errata</c>: what it writes, what it says, and what it refuses.</summary>
public class ErrataTests
{
    private static readonly AnswerSchema Schema = new("errata");

    private static JsonNode Valid(Ran ran)
    {
        Assert.Equal((0, ""), (ran.Code, ran.Error));
        return Schema.Valid(ran.Out);
    }

    [Fact]
    public void What_changed_is_told_and_written_as_pdf_and_web_page()
    {
        using var folder = new OwnFolder();
        var (old, now) = (folder.Write("old.piece.json", Pieces.Sound), folder.Write("new.piece.json", Pieces.With("18 (3 round", "19 (3 round")));
        var answer = Valid(TheProgram.Run("errata", old, now, "--out", folder["made"], "--paper", "letter", "--json"));
        Assert.False((bool)answer["isEmpty"]!);
        Assert.Equal([("round", 54, 57), ("spacer", 18, 19)], answer["beads"]!.AsArray().Select(b => ((string)b!["bead"]!, (int)b["old"]!, (int)b["new"]!)));
        Assert.Equal(["new-errata.html", "new-errata.pdf"], Directory.GetFiles(folder["made"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.NotEmpty(answer["steps"]!.AsArray());
    }

    [Theory, InlineData(false), InlineData(true)]
    public void How_it_is_printed_is_heeded(bool otherwise)
    {
        using var folder = new OwnFolder();
        var (old, now) = (folder.Write("old.piece.json", Pieces.Sound), folder.Write("new.piece.json", Pieces.With("18 (3 round", "19 (3 round")));
        string[] how = otherwise ? ["--large-print", "--greyscale", "--ink-saving"] : [];
        Assert.Equal(0, TheProgram.Run(["errata", old, now, "--out", folder["made"], .. how]).Code);
        var page = File.ReadAllText(folder["made/new-errata.html"]);
        Assert.Equal((otherwise, otherwise, otherwise), (PaperMarks.IsLarge(page), PaperMarks.IsGrey(page), PaperMarks.HasNoGround(page)));
    }

    [Fact]
    public void Two_versions_that_say_the_same_are_told_to()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("errata", TheProgram.Example("boardwalk"), TheProgram.Example("boardwalk"), "--out", folder.Path);
        Assert.StartsWith("There is nothing to correct", ran.Out, StringComparison.Ordinal);
        Assert.True((bool)Valid(TheProgram.Run("errata", TheProgram.Example("boardwalk"), TheProgram.Example("boardwalk"), "--out", folder.Path, "--json"))["isEmpty"]!);
    }

    [Fact]
    public void A_missing_version_target_or_letter_is_told_and_nothing_is_written()
    {
        using var folder = new OwnFolder();
        var sound = folder.Write("old.piece.json", Pieces.Sound);
        foreach (var args in new string[][]
                 {
                     ["errata", sound, "--out", folder["made"]], ["errata", sound, sound], ["errata", sound, folder["none.piece.json"], "--out", folder["made"]],
                     ["errata", sound, folder.Write("odd.piece.json", Pieces.With("Two turns", "珠")), "--out", folder["made"]],
                 })
        {
            var ran = TheProgram.Run(args);
            Assert.Equal((2, ""), (ran.Code, ran.Out));
            Assert.NotEmpty(ran.Error);
            Assert.False(Directory.Exists(folder["made"]));
        }
    }
}
