using System.Xml.Linq;

namespace Coilwright.Cli.Tests;

/// <summary><c>--draw</c>: the drawing is written whole or not at all.</summary>
public class DrawTests
{
    [Fact]
    public void The_turn_rows_are_drawn_into_the_file_and_the_report_says_so()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--draw", folder["rows.svg"]);
        Assert.Equal(0, ran.Code);
        Assert.EndsWith("rows.svg.\n", ran.Out, StringComparison.Ordinal);
        Assert.Equal("svg", XDocument.Load(folder["rows.svg"]).Root!.Name.LocalName);
        Assert.Equal(["rows.svg"], Directory.GetFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }

    [Fact]
    public void The_same_piece_is_drawn_with_the_same_bytes()
    {
        using var folder = new OwnFolder();
        TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--draw", folder["a.svg"]);
        TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--draw", folder["b.svg"]);
        Assert.Equal(File.ReadAllBytes(folder["a.svg"]), File.ReadAllBytes(folder["b.svg"]));
    }

    // A place in a folder that is none, a folder, a file system that takes no files, a device that is full.
    [Theory]
    [InlineData("nowhere/rows.svg")]
    [InlineData(".")]
    [InlineData("/proc/rows.svg")]
    [InlineData("/dev/full")]
    [InlineData("")]
    public void A_target_that_cannot_be_written_ends_with_2_and_prints_no_report(string target)
    {
        var ran = TheProgram.Run("reckon", TheProgram.Example("boardwalk"), "--draw", target);
        Assert.Equal(2, ran.Code);
        Assert.Empty(ran.Out);
        Assert.Contains("cannot be written", ran.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void A_disk_that_fills_up_leaves_the_old_drawing_as_it_was()
    {
        using var folder = new OwnFolder();
        var old = folder.Write("rows.svg", "the old drawing");
        // A limit of one block on the size of files stands for the full disk: the system refuses the write in the middle.
        var ran = TheProgram.Shell($"ulimit -f 1; DOTNET_EnableDiagnostics=0 DOTNET_EnableWriteXorExecute=0 $P reckon {TheProgram.Example("boardwalk")} --draw {old}");
        Assert.Equal(2, ran.Code);
        Assert.Equal("the old drawing", File.ReadAllText(old));
        Assert.Equal(["rows.svg"], Directory.GetFileSystemEntries(folder.Path).Select(Path.GetFileName));
    }
}
