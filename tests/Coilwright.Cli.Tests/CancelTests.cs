using System.Diagnostics;

namespace Coilwright.Cli.Tests;

/// <summary>Ctrl-C: a real signal to a real run that is really busy.</summary>
public class CancelTests
{
    [Fact]
    public void Ctrl_C_while_it_waits_for_its_input_ends_with_130()
    {
        using var folder = new OwnFolder();
        var process = Waiting(folder, "reckon", out var held);
        using (held)
        {
            TheProgram.Interrupt(process);
            var ran = TheProgram.Finish(process);
            Assert.Equal(130, ran.Code);
            Assert.Empty(ran.OutBytes);
        }
    }

    [Fact]
    public void Ctrl_C_while_it_reckons_ends_with_130_and_leaves_nothing_half_written()
    {
        using var folder = new OwnFolder();
        Directory.CreateDirectory(folder["target"]);
        var process = Waiting(folder, "reckon", out var held, "--draw", Path.Combine(folder["target"], "rows.svg"), "--json");
        using (var writer = new StreamWriter(held)) writer.Write(Pieces.Long(20_000));
        // It has its whole input from here on; reckoning 80,000 beads takes seconds, so it is in the middle of it.
        Thread.Sleep(300);
        Assert.False(process.HasExited, "The run ended too soon to be interrupted: give it more to do.");
        TheProgram.Interrupt(process);
        var ran = TheProgram.Finish(process);
        Assert.Equal(130, ran.Code);
        Assert.Empty(ran.OutBytes);
        Assert.Empty(Directory.GetFileSystemEntries(folder["target"]));
    }

    [Fact]
    public void Ctrl_C_while_it_settles_ends_with_130_and_one_line()
    {
        using var folder = new OwnFolder();
        var process = Waiting(folder, "settle", out var held);
        using (var writer = new StreamWriter(held)) writer.Write(File.ReadAllText(TheProgram.Example("tidewrack")));
        // It has its whole input from here on; letting a focal down in all six ways takes seconds, so it is in the middle of it.
        Thread.Sleep(300);
        Assert.False(process.HasExited, "The run ended too soon to be interrupted: give it more to do.");
        TheProgram.Interrupt(process);
        var ran = TheProgram.Finish(process);
        Assert.Equal((130, "Stopped.\n"), (ran.Code, ran.Error));
        Assert.Empty(ran.OutBytes);
    }

    /// <summary>A run that has opened a pipe as its piece and waits for what comes through it; the pipe is held open for writing.</summary>
    private static Process Waiting(OwnFolder folder, string verb, out FileStream held, params string[] more)
    {
        var pipe = folder["pipe.piece.json"];
        using (var make = Process.Start("mkfifo", [pipe])) make.WaitForExit();
        var process = TheProgram.StartInterruptible([verb, pipe, .. more]);
        // Opening a pipe for writing waits until the other side has opened it for reading.
        held = new FileStream(pipe, FileMode.Open, FileAccess.Write, FileShare.ReadWrite);
        return process;
    }
}
