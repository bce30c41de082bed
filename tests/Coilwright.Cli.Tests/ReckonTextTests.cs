using System.Runtime.CompilerServices;

namespace Coilwright.Cli.Tests;

/// <summary>The report that a maker pins up.</summary>
public class ReckonTextTests
{
    public static TheoryData<string> Examples => [.. TheProgram.Examples.Select(p => Path.GetRelativePath(TheProgram.Root, p))];

    // Approved: read by a person and found good. When it changes for a reason, read it again and put it in place of the file.
    [Fact]
    public void The_report_of_boardwalk_reads_as_approved()
    {
        var ran = TheProgram.Run("reckon", TheProgram.Example("boardwalk"));
        Assert.Equal(Approved("boardwalk.approved.txt"), ran.Out);
    }

    [Theory, MemberData(nameof(Examples))]
    public void No_line_is_wider_than_a_page_and_none_has_a_gap(string example)
    {
        var ran = TheProgram.Run("reckon", example);
        Assert.True(ran.Code is 0 or 1, ran.Error);
        Assert.All(ran.Out.Split('\n'), line => Assert.True(line.Length <= 80, line));
        Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
        Assert.DoesNotContain('{', ran.Out);
        Assert.DoesNotContain("(?)", ran.Out, StringComparison.Ordinal);
    }

    [Theory, MemberData(nameof(Examples))]
    public void The_cautions_of_memory_wire_stand_in_every_report(string example)
    {
        var text = TheProgram.Run("reckon", example).Out.Replace("\n  ", " ", StringComparison.Ordinal);
        foreach (var caution in new[] { "shears or heavy cutters", "wear eye protection", "Do not pull the coil straight", "File sharp ends",
            "an adult cuts and bends", "not for children under three", "nickel, lead and cadmium" })
            Assert.Contains(caution, text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_counts_by_turn_add_up_to_the_table_of_beads()
    {
        using var folder = new OwnFolder();
        var text = TheProgram.Run("reckon", folder.Write("two.piece.json", Pieces.Sound)).Out;
        var (a, b) = (0, 0);
        foreach (var turn in text.Split('\n').Where(l => l.StartsWith("  Turn ", StringComparison.Ordinal)))
            foreach (var run in turn[(turn.IndexOf("  ", 3, StringComparison.Ordinal) + 2)..].Split(", "))
            {
                var count = run.Length == 1 ? 1 : int.Parse(run[..^1], System.Globalization.CultureInfo.InvariantCulture);
                if (run[^1] == 'A') a += count; else b += count;
            }
        Assert.Equal((54, 18), (a, b));
        Assert.Contains("  A     54  Green round", text, StringComparison.Ordinal);
        Assert.Contains("  B     18  Brass spacer", text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_title_that_would_command_the_terminal_is_shown_and_not_obeyed()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("reckon", folder.Write("esc.piece.json", Pieces.With("Two turns", "Two\\u001b[31m turns")));
        Assert.Equal(0, ran.Code);
        Assert.DoesNotContain('\u001b', ran.Out);
    }

    [Fact]
    public void Wide_signs_keep_the_columns_straight()
    {
        using var folder = new OwnFolder();
        var ran = TheProgram.Run("reckon", folder.Write("wide.piece.json", Pieces.With("Green round", "緑の玉")));
        var rows = ran.Out.Split('\n').SkipWhile(l => !l.StartsWith("  Key", StringComparison.Ordinal)).Take(3).ToArray();
        // Three signs of two columns each: the text is three signs shorter than it is wide.
        Assert.Equal(rows[2].IndexOf("1.5 mm", StringComparison.Ordinal) + 2, rows[1].IndexOf("6 mm", StringComparison.Ordinal) + 3);
    }

    private static string Approved(string name, [CallerFilePath] string here = "") => File.ReadAllText(Path.Combine(Path.GetDirectoryName(here)!, name));
}
