using System.Collections.Immutable;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using Coilwright.Documents.Errata;
using Coilwright.Documents.Pages;
using Coilwright.Documents.Tests.Rendering;
using Coilwright.Documents.Tests.TurnRows;
using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Documents.Tests.Errata;

/// <summary>What a pattern says otherwise than an earlier version of it: as data, and as a note to print.</summary>
public class PatternChangesTests
{
    // Two versions: beads are taken out, put in and changed in the second, and its kinds may stand in another order, so that letters move.
    private static readonly Gen<(Reckoned Old, Reckoned New)> Versions =
        from piece in RandomPieces.Pieces
        from edits in Gen.Select(Gen.Int[0, 2], Gen.Int[0, 10_000], Gen.Int[0, 10_000]).Array[0, 6]
        from turned in Gen.Bool
        select (DrawnPieces.Reckon(piece), DrawnPieces.Reckon(Edited(piece, edits, turned)));

    private static Piece Edited(Piece piece, (int What, int At, int Kind)[] edits, bool turned)
    {
        var kinds = piece.Order.Kinds.ToList();
        foreach (var (what, at, kind) in edits)
            if (what == 0) kinds.Insert(at % (kinds.Count + 1), kind % piece.Beads.Length);
            else if (what == 1) kinds[at % kinds.Count] = kind % piece.Beads.Length;
            else if (kinds.Count > 1) kinds.RemoveAt(at % kinds.Count);
        ImmutableArray<GroupRun> groups = [.. piece.Order.Groups.Where(g => g.End <= kinds.Count)];
        var last = piece.Beads.Length - 1;
        return piece with
        {
            Beads = turned ? [.. piece.Beads.Reverse()] : piece.Beads,
            Order = new StringingOrder([.. kinds.Select(k => turned ? last - k : k)], groups),
        };
    }

    private static Dictionary<string, (string Letter, int Count)> Counts(Reckoned reckoned) => reckoned.Counts.ToDictionary(k => k.Bead.Id, k => (k.Letter, k.Count));

    [Fact]
    public void The_old_counts_with_the_listed_ones_written_over_them_are_the_new_counts() => Versions.Sample((old, now) =>
    {
        var counts = Counts(old);
        foreach (var kind in PatternChanges.Of(old, now).Kinds)
        {
            Assert.Equal((kind.OldLetter, kind.Old), counts.TryGetValue(kind.Bead, out var was) ? (was.Letter, was.Count) : (null, 0));
            if (kind.NewLetter is null) counts.Remove(kind.Bead);
            else counts[kind.Bead] = (kind.NewLetter, kind.New);
        }
        Assert.Equal(Counts(now).OrderBy(c => c.Key, StringComparer.Ordinal), counts.OrderBy(c => c.Key, StringComparer.Ordinal));
    }, iter: 60);

    // The old pattern with its listed steps struck out and the new ones written in at their numbers says, bead by bead, what the new pattern says.
    [Fact]
    public void The_old_pattern_corrected_by_hand_is_the_new_pattern() => Versions.Sample((old, now) =>
    {
        var changes = PatternChanges.Of(old, now);
        var (before, after) = (new PatternSentences(old, Languages.English), new PatternSentences(now, Languages.English));
        var struck = changes.Steps.Select(s => s.Old?.Id).OfType<string>().ToHashSet();
        var kept = new Queue<PatternStep>(PatternSteps.Of(old).Where(s => !struck.Contains(s.Id)));
        var written = changes.Steps.Where(s => s.New is not null).ToDictionary(s => s.New!.Number, s => s.New!);
        var checks = changes.Checks.ToDictionary(c => c.Old.Id, c => c.New);
        foreach (var step in PatternSteps.Of(now))
        {
            if (written.TryGetValue(step.Number, out var here))
            {
                Assert.Equal(step.Id, here.Id);
                continue;
            }
            var was = kept.Dequeue();
            Assert.Equal(after.Of(step), before.Of(was));
            Assert.Equal(after.Check(step), checks.TryGetValue(was.Id, out var check) ? after.Check(check) : before.Check(was));
        }
        Assert.Empty(kept);
    }, iter: 60);

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Nothing_changed_is_an_empty_note_that_says_so(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var changes = PatternChanges.Of(reckoned, DrawnPieces.Reckon(reckoned.Piece));
        Assert.Empty(changes.Kinds);
        Assert.Empty(changes.Figures);
        Assert.Empty(changes.Steps);
        Assert.Empty(changes.Checks);
        foreach (var language in Languages.All)
        {
            Assert.True(new ErrataSentences(changes, language).IsEmpty);
            var document = ErrataDocument.Of(changes, language);
            Assert.Equal(2, document.Blocks.Length);
            Assert.Equal(language.Errata.Nothing, Assert.IsType<Block.Paragraph>(document.Blocks[1]).Text.PlainText);
        }
    }

    private static (Reckoned Old, Reckoned New) Two(Func<Piece, Piece> edit) => (DrawnPieces.Reckoned("tidewrack"), DrawnPieces.Reckon(edit(DrawnPieces.Reckoned("tidewrack").Piece)));

    [Fact]
    public void Words_of_hers_and_settled_notes_are_told()
    {
        var (old, now) = Two(p => p with
        {
            Pattern = p.Pattern with
            {
                Words = PatternSteps.Of(DrawnPieces.Reckon(p)) is var steps ? StepTexts.With(steps, [], p, steps[2].Id, "Take five shards, 5 B.") : [],
                Testers = [new TesterNote(null, "Five, not four", "Ines", "first", true), new TesterNote(null, "Still odd", "", "", false)],
            },
        });
        var changes = PatternChanges.Of(old, now);
        Assert.Empty(changes.Kinds);
        Assert.Empty(changes.Checks);
        var step = Assert.Single(changes.Steps);
        Assert.Equal((null, "Take five shards, 5 B.", true), (step.OldWords, step.NewWords, step.DoesOtherwise));
        var said = new ErrataSentences(changes, Languages.English);
        Assert.StartsWith("Take five shards, 5 B.", Assert.Single(said.Steps()).New, StringComparison.Ordinal);
        Assert.Equal(["Five, not four (Ines)"], said.Settled());
    }

    [Fact]
    public void Letters_that_moved_and_a_wire_too_short_are_told_first()
    {
        var (old, now) = Two(p =>
        {
            int[] to = [0, 2, 1, 3, 4, 5, 6];
            return p with
            {
                Beads = [p.Beads[0], p.Beads[2], p.Beads[1], .. p.Beads[3..]],
                Order = new StringingOrder([.. p.Order.Kinds.Select(k => to[k]), 0, 0], p.Order.Groups),
                Written = null,
            };
        });
        var said = new ErrataSentences(PatternChanges.Of(old, now), Languages.English).MindFirst().ToArray();
        Assert.Contains("too short", said[0], StringComparison.Ordinal);
        Assert.Equal(["B was Jasper chip; it is Frosted pebble now.", "C was Frosted pebble; it is Jasper chip now."], said[1..]);
    }

    [Theory]
    [InlineData("a4", "en")]
    [InlineData("letter", "de")]
    public void The_note_is_sound_on_paper_with_every_correction_on_it(string paper, string code)
    {
        var language = Languages.Find(code)!;
        var (old, now) = Two(p => p with { Title = "Tidewrack anew", Order = new StringingOrder([.. p.Order.Kinds, 0, 4], p.Order.Groups), Written = null });
        var changes = PatternChanges.Of(old, now);
        var setup = new PageSetup { Paper = paper == "a4" ? Paper.A4 : Paper.Letter };
        var files = DocumentFiles.Of("errata", ErrataDocument.Of(changes, language), setup).ToArray();
        Assert.Equal(["errata.pdf", "errata.html"], files.Select(f => f.Name));
        Assert.All(files, f => Assert.Empty(f.Faults));
        using var place = new Workplace();
        var pdf = place.File("a.pdf", files[0].Bytes);
        Programs.Output("qpdf", "--check", pdf);
        Assert.Contains(paper == "a4" ? "595" : "612 x 792", Programs.Output("pdfinfo", pdf), StringComparison.Ordinal);
        var text = string.Join(' ', Programs.Output("pdftotext", "-layout", pdf, "-").Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        var said = new ErrataSentences(changes, language);
        Assert.NotEmpty(said.Kinds());
        foreach (var kind in said.Kinds()) Assert.Contains(kind.What, text, StringComparison.Ordinal);
        foreach (var heading in (string[])[language.Errata.Beads, language.Errata.Figures, language.Errata.Steps]) Assert.Contains(heading, text, StringComparison.Ordinal);
        Assert.DoesNotContain("(?)", text, StringComparison.Ordinal);
    }
}
