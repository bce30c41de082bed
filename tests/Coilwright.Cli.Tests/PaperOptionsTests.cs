namespace Coilwright.Cli.Tests;

/// <summary>Documents for the workshop are put on paper as asked for, as those to sell are.</summary>
public class PaperOptionsTests
{
    [Theory, InlineData("batch", "--count", "3"), InlineData("class", "--participants", "3"), InlineData("quote", "--wrist", "165")]
    public void Letters_greys_and_spared_ink_are_heeded(string verb, string option, string value)
    {
        foreach (var otherwise in new[] { false, true })
        {
            using var folder = new OwnFolder();
            string[] how = otherwise ? ["--large-print", "--greyscale", "--ink-saving"] : [];
            Assert.InRange(TheProgram.Run([verb, TheProgram.Example("boardwalk"), option, value, "--out", folder.Path, .. how]).Code, 0, 1);
            string[] pages = [.. Directory.GetFiles(folder.Path, "*.html").Select(File.ReadAllText)];
            Assert.NotEmpty(pages);
            Assert.All(pages, page => Assert.Equal((otherwise, otherwise), (PaperMarks.IsLarge(page), PaperMarks.HasNoGround(page))));
            if (otherwise) Assert.All(pages, page => Assert.True(PaperMarks.IsGrey(page)));
        }
    }
}
