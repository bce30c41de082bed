using System.Collections.Immutable;
using Coilwright.Core.Beads;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Making;

public class StepTextsTests
{
    private static readonly ImmutableArray<Bead> Beads = [.. "abcd".Select(c => SamplePieces.Bead(c.ToString(), "round", 6))];

    // "ab|wave:aab|c": loose beads and groups, one letter each bead.
    private static Piece Piece(string written)
    {
        var kinds = new List<int>();
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        foreach (var stretch in written.Split('|'))
        {
            var beads = stretch[(stretch.IndexOf(':', StringComparison.Ordinal) + 1)..];
            if (stretch.Length > beads.Length) groups.Add(new GroupRun(stretch[..^(beads.Length + 1)], kinds.Count, beads.Length));
            kinds.AddRange(beads.Select(b => b - 'a'));
        }
        return SamplePieces.Piece(Beads, kinds, groups: groups.ToImmutable());
    }

    private static ImmutableArray<PatternStep> Steps(Piece piece) => PatternSteps.Of(Reckoning.Of(piece, SamplePieces.Data));

    private static ImmutableArray<StepText> Written(Piece piece, params (string Step, string Text)[] texts)
    {
        ImmutableArray<StepText> all = [];
        foreach (var (step, text) in texts) all = StepTexts.With(Steps(piece), all, piece, step, text);
        return all;
    }

    private static string[] Said(Piece piece, ImmutableArray<StepText> texts)
    {
        var steps = Steps(piece);
        var matched = StepTexts.Match(steps, texts, piece);
        return [.. steps.Select((s, i) => (s.Id, matched.OfStep[i]?.Text)).Where(s => s.Text is not null).Select(s => s.Id + ": " + s.Text + (matched.Changed.Contains(s.Id) ? " (changed)" : "")),
            .. matched.Homeless.Select(h => "gone: " + h.Text)];
    }

    private const string Before = "dd|wave:aab|c|crest:dad|c|wave:aab|bb|wave:aab";

    [Fact]
    public void Words_stay_with_their_step() =>
        Assert.Equal(["cut: Snip.", "wave.2: Again."], Said(Piece(Before), Written(Piece(Before), ("wave.2", "Again."), ("cut", "Snip."))));

    [Fact]
    public void A_group_strung_before_it_does_not_take_its_words() =>
        Assert.Equal(["wave.3: Again."], Said(Piece("dd|wave:aab|c|wave:aab|b|crest:dad|c|wave:aab|bb|wave:aab"), Written(Piece(Before), ("wave.2", "Again."))));

    [Fact]
    public void A_group_that_was_changed_keeps_its_words_and_is_told() =>
        Assert.Equal(["crest.1: High. (changed)"], Said(Piece("dd|wave:aab|c|crest:daad|c|wave:aab|bb|wave:aab"), Written(Piece(Before), ("crest.1", "High."))));

    [Fact]
    public void A_group_that_was_moved_takes_its_words_along() =>
        Assert.Equal(["crest.1: High."], Said(Piece("dd|wave:aab|c|wave:aab|bb|wave:aab|c|crest:dad"), Written(Piece(Before), ("crest.1", "High."))));

    [Fact]
    public void Loose_beads_keep_theirs() =>
        Assert.Equal(["after.wave.3: Two."], Said(Piece("dd|wave:aab|wave:aba|c|crest:dad|c|wave:aab|bb|wave:aab"), Written(Piece(Before), ("after.wave.2", "Two."))));

    [Fact]
    public void Words_whose_step_is_gone_are_kept() =>
        Assert.Equal(["gone: High."], Said(Piece("dd|wave:aab|c"), Written(Piece(Before), ("crest.1", "High."))));

    [Fact]
    public void Words_are_written_anew_and_taken_away()
    {
        var piece = Piece(Before);
        var once = Written(piece, ("crest.1", "High."), ("crest.1", "Higher."));
        Assert.Equal(["crest.1: Higher."], Said(piece, once));
        Assert.Empty(StepTexts.With(Steps(piece), once, piece, "crest.1", " "));
    }

    [Fact]
    public void A_step_that_is_not_there_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => StepTexts.With(Steps(Piece(Before)), [], Piece(Before), "wave.9", "x"));

    private static readonly Gen<string> Any = Gen.Select(Gen.OneOf(Gen.Const(""), Gen.Const("wave:"), Gen.Const("crest:")), Gen.String[Gen.Char["abcd"], 1, 4], (name, beads) => name + beads)
        .Array[1, 9].Select(stretches => string.Join('|', stretches));

    [Fact]
    public void Nothing_is_lost_and_nothing_said_twice_whatever_was_edited() => Gen.Select(Any, Any).Sample((before, after) =>
    {
        var piece = Piece(before);
        ImmutableArray<StepText> texts = [];
        foreach (var step in Steps(piece)) texts = StepTexts.With(Steps(piece), texts, piece, step.Id, "of " + step.Id);
        // Unedited, each stands with its own step.
        Assert.Equal(Steps(piece).Select(s => s.Id + ": of " + s.Id), Said(piece, texts));
        var matched = StepTexts.Match(Steps(Piece(after)), texts, Piece(after));
        Assert.Equal(texts.Select(t => t.Text).Order(), matched.OfStep.OfType<StepText>().Concat(matched.Homeless).Select(t => t.Text).Order());
    }, iter: 300);
}
