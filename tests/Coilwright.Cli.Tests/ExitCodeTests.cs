namespace Coilwright.Cli.Tests;

/// <summary>What the program tells the shell, and what it leaves behind.</summary>
public class ExitCodeTests
{
    [Fact]
    public void A_sound_piece_ends_with_0()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("reckon", folder.Write("two.piece.json", Pieces.Sound));
        Assert.Equal(0, ran.Code);
        Assert.Empty(ran.Error);
        Assert.StartsWith("Two turns\n===", ran.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_piece_that_cannot_be_made_ends_with_1_and_still_has_its_report()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("tight.piece.json", Pieces.With("\"boreMm\": 1.0", "\"boreMm\": 0.5"));
        var ran = TheProgram.Run("reckon", path);
        Assert.Equal(1, ran.Code);
        Assert.Empty(ran.Error);
        Assert.Contains("No: Green round (A) will not go on the wire.", ran.Out, StringComparison.Ordinal);
        Assert.Equal(1, TheProgram.Run("reckon", path, "--json").Code);
    }

    [Fact]
    public void A_wrong_piece_ends_with_2_and_is_said_on_standard_error_alone()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("bad.piece.json", Pieces.With("\"boreMm\": 1.0", "\"boreMm\": 0"));
        var ran = TheProgram.Run("reckon", path);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.StartsWith($"{path}, line 5, column ", ran.Error, StringComparison.Ordinal);
        Assert.Contains("The hole (\"boreMm\") is 0 mm. It must be more than 0 mm.", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rekon", "x")]
    [InlineData("reckon")]
    [InlineData("reckon", "x", "--wrost", "5")]
    [InlineData("reckon", "x", "--wrist", "160,5")]
    [InlineData("reckon", "nowhere.piece.json")]
    [InlineData("reckon", "src")]
    [InlineData("--nope")]
    public void A_wrong_call_ends_with_2_and_nothing_on_standard_output(params string[] args)
    {
        var ran = TheProgram.Run(args);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.NotEmpty(ran.Error);
        Assert.DoesNotContain("   at ", ran.Error, StringComparison.Ordinal);
    }

    // The memory of a process is a file that the system opens and then will not read from its start, for an administrator either.
    [Fact]
    public void A_file_that_the_system_will_not_read_ends_with_2()
    {
        var ran = TheProgram.Run("reckon", "/proc/self/mem");
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains("The file cannot be read", ran.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("choices.json", "{", "the program's own data")]
    [InlineData("choices.json", null, "the program's own data")]
    public void Broken_data_of_the_programs_own_ends_with_3(string file, string? text, string said)
    {
        using var folder = new OwnFolder();
        Copy(AppContext.BaseDirectory, folder.Path);
        var data = Path.Combine(folder.Path, "data", file);
        Assert.True(File.Exists(data));
        if (text is null) File.Delete(data); else File.WriteAllText(data, text);
        var piece = folder.Write("two.piece.json", Pieces.Sound);
        var ran = TheProgram.Run([], ["reckon", piece], folder["coilwright.dll"]);
        Assert.Equal(3, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains(said, ran.Error, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(3, TheProgram.Run([], ["reckon", piece, "--json"], folder["coilwright.dll"]).Code);
    }

    [Fact]
    public void A_full_disk_under_standard_output_ends_with_2()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("two.piece.json", Pieces.Sound);
        var ran = TheProgram.Shell($"$P reckon {path} > /dev/full");
        Assert.Equal(2, ran.Code);
        Assert.Contains("cannot be written", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_reader_that_goes_away_is_no_trouble()
    {
        using var folder = new OwnFolder();
        var path = folder.Write("long.piece.json", Pieces.Long(2000));
        var ran = TheProgram.Shell($"{{ $P reckon {path} --json; echo $? >&2; }} | head -c 100 > /dev/null");
        Assert.Equal("0", ran.Error.Trim());
    }

    private static void Copy(string from, string to)
    {
        foreach (var folder in Directory.GetDirectories(from, "*", SearchOption.AllDirectories))
            Directory.CreateDirectory(Path.Combine(to, Path.GetRelativePath(from, folder)));
        foreach (var file in Directory.GetFiles(from, "*", SearchOption.AllDirectories)) File.Copy(file, Path.Combine(to, Path.GetRelativePath(from, file)));
    }
}
