namespace Coilwright.Cli.Tests;

/// <summary>Calls as they go wrong when somebody tries the program for the first time: each is told what is wrong with it and what would be right, in words of ours, and nothing of hers is changed.</summary>
public class WrongCallsTests
{
    public static TheoryData<string, string[]> Calls => new()
    {
        { "\"rekon\" is not something that coilwright does.", ["help", "rekon"] },
        { "Did you mean \"reckon\"?", ["help", "rekon"] },
        { "NEW is missing. The verb errata needs it.", ["errata", "{piece}"] },
        { "must be millimetres, or a length with its unit", ["reckon", "{piece}", "--wrist", "NaN"] },
        { "must be millimetres, or a length with its unit", ["reckon", "{piece}", "--wrist", "Infinity"] },
        { "The drawing is written as .svg.", ["reckon", "{piece}", "--draw", "rows.png"] },
        { "--costs is missing. The verb quote needs it.", ["quote", "{piece}", "--rule", "retail"] },
        { "--costs is missing. The verb class needs it.", ["class", "{piece}", "--participants", "6", "--rule", "retail"] },
        { "it is a file, and a folder is needed", ["sheet", "{piece}", "--out", "{note}"] },
        { "it is a file, and a folder is needed", ["kit", "{piece}", "--out", "{note}"] },
        { "it is a file, and a folder is needed", ["shop", "{piece}", "--shelf", "{note}"] },
        { "it is a file, and a folder is needed", ["tray", "--shelf", "{note}"] },
        { "which is another kind of file. Here it must be coilwright.piece/1.", ["reckon", "{costs}"] },
        { "which is another kind of file. Here it must be coilwright.costs/1.", ["price", "{piece}", "--costs", "{piece}"] },
        { "\"--for\" is too long", ["quote", "{piece}", "--for", new string('x', 201)] },
    };

    [Theory, MemberData(nameof(Calls))]
    public void Is_told_in_words_that_help_and_changes_nothing(string told, string[] call)
    {
        using var folder = new OwnFolder();
        var (piece, note) = (folder.Write("two.piece.json", Pieces.Sound), folder.Write("note.txt", "hers"));
        var costs = Path.Combine(Path.GetDirectoryName(TheProgram.Example("boardwalk"))!, "studio.costs.json");
        string[] args = [.. call.Select(a => a switch { "{piece}" => piece, "{note}" => note, "{costs}" => costs, _ => a == "rows.png" ? folder[a] : a })];
        var ran = TheProgram.Run(args);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        // Lines are broken at their width.
        Assert.Contains(told, string.Join(' ', ran.Error.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
        Assert.DoesNotContain("already exists", ran.Error, StringComparison.Ordinal);
        Assert.Equal(["note.txt", "two.piece.json"], Directory.GetFileSystemEntries(folder.Path).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.Equal(("hers", Pieces.Sound), (File.ReadAllText(note), File.ReadAllText(piece)));
    }

    [Fact]
    public void A_full_disk_under_what_is_printed_is_told_in_words_of_ours_and_in_her_language()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "The device that is always full is one of Linux.");
        using var folder = new OwnFolder();
        var ran = TheProgram.Shell($"$P reckon {folder.Write("two.piece.json", Pieces.Sound)} --language de > /dev/full");
        Assert.Equal(2, ran.Code);
        Assert.Contains("der Datenträger ist voll", ran.Error, StringComparison.Ordinal);
    }
}
