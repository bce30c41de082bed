using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Wording;

namespace Coilwright.Documents.Tests.Patterns;

public class ProofReadingTests
{
    // Tidewrack's wrack is 1 A, 1 D, 1 A, 2 D, 1 A: three nuggets with one disc and then two between them.
    private static readonly Coilwright.Core.Readings.Reckoned Reckoned = DrawnPieces.Reckoned("tidewrack");
    private static readonly System.Collections.Immutable.ImmutableArray<PatternStep> Steps = PatternSteps.Of(Reckoned);

    private static string[] Slips(string id, string text, Language? language = null) =>
        [.. ProofReading.Read(text, StepProof.Of(Steps.Single(s => s.Id == id), Steps, Reckoned), (language ?? Languages.English).Pattern.Proof).Select(m => m.Slip + ": " + m.Said)];

    private static string[] OfWhole(string text) => [.. ProofReading.Read(text, StepProof.OfPiece(Steps, Reckoned), Languages.English.Pattern.Proof).Select(m => m.Slip + ": " + m.Said)];

    [Theory]
    [InlineData("wrack.1", "Now the wrack: 1 A, 1 D, 1 A, 2 D, 1 A.")]
    [InlineData("wrack.1", "The wrack again, 6 beads with A outside: A, D, A, two D, A.")]
    [InlineData("wrack.1", "All 3 A and all three D, as in Figure 1. A wrack is heavy.")]
    [InlineData("wrack.1", "1 A (9.5 × 11 mm), 1 D, 1 A, 2 D, 1 A")]
    [InlineData("tuft.1", "Five B in a tuft: 5 in a row. I like them tight.")]
    [InlineData("tuft.1", "String 5B of the 25B.")]
    [InlineData("cut", "Cut 862 mm (33 15/16 in) of the 0.62 mm wire.")]
    [InlineData("first-end", "Turn a loop of 3 mm; it takes 12.5 mm (1/2 in), or 1.25 cm.")]
    public void Words_that_agree_pass(string step, string text) => Assert.Empty(Slips(step, text));

    [Theory]
    [InlineData("tuft.1", "Now 6 B.", "CountDiffers: 6 B")]
    [InlineData("tuft.1", "Now six B.", "CountDiffers: six B")]
    [InlineData("tuft.1", "Now 5 B and 1 Q.", "LetterUnknown: 1 Q")]
    [InlineData("tuft.1", "Now 5 B and 1 A.", "LetterElsewhere: 1 A")]
    [InlineData("tuft.1", "Now the chips.", "LetterMissing: B")]
    [InlineData("wrack.1", "1 D, 1 A, 1 A, 2 D, 1 A", "OrderDiffers: 1 D")]
    [InlineData("tuft.1", "5 B, 31 mm of them", "LengthUnknown: 31 mm")]
    [InlineData("cut", "Cut 862 mm (34 15/16 in).", "LengthsDisagree: 862 mm (34 15/16 in")]
    [InlineData("cut", "Cut 826 mm.", "LengthUnknown: 826 mm")]
    [InlineData("tuft.1", "5 B, and so 17 beads.", "NumberUnknown: 17")]
    [InlineData("tuft.1", "5 B, nickel-free.", "Promise: nickel-free")]
    [InlineData("tuft.1", "2.5 B", "CountDiffers: 2.5 B")]
    public void Words_that_do_not_are_told(string step, string text, string slip) => Assert.Equal([slip], Slips(step, text));

    [Fact]
    public void A_decimal_comma_is_read_where_the_language_writes_it() =>
        Assert.Equal(["LengthUnknown: 12,9 mm"], Slips("first-end", "Eine Öse: 12,5 mm Draht, oder 12,9 mm.", Languages.German));

    [Fact]
    public void Numbers_as_words_are_of_the_language() => Assert.Equal(["CountDiffers: sechs B"], Slips("tuft.1", "Jetzt sechs B.", Languages.German));

    [Theory]
    [InlineData("A bracelet of 4 turns and 109 beads for a wrist of 165 mm (6 1/2 in); it weighs 58 g.")]
    [InlineData("About 2 oz, on 0.62 mm wire.")]
    public void What_is_true_of_the_whole_piece_passes(string text) => Assert.Empty(OfWhole(text));

    [Theory]
    [InlineData("109 beads, 60 g", "MassUnknown: 60 g")]
    [InlineData("A bracelet of 5 turns", "NumberUnknown: 5")]
    [InlineData("for a wrist of 8 1/2 in", "LengthUnknown: 8 1/2 in")]
    [InlineData("You need 24 B.", "CountDiffers: 24 B")]
    public void What_is_not_true_of_it_is_told(string text, string slip) => Assert.Equal([slip], OfWhole(text));

    [Fact]
    public void Techniques_are_read_too_and_so_is_who_designed_it_whose_initials_are_no_beads()
    {
        var notes = PatternNotes.None with { Techniques = ["turning a loop", "stringing 24 B"], By = "M. Q. Lee, lead-free" };
        var found = StepProof.Read(Steps, new MatchedTexts([.. new StepText?[Steps.Length]], [], []), notes.Texts, Reckoned, Languages.English.Pattern.Proof);
        Assert.Equal(["techniques: 24 B", "by: lead-free"], found.SelectMany(f => f.Marks.Select(m => f.Where + ": " + m.Said)));
    }

    [Fact]
    public void Where_a_slip_stands_is_what_it_says()
    {
        const string text = "First 5 B, then 31 mm, then 2 Q; all nickel-free.";
        foreach (var mark in ProofReading.Read(text, StepProof.Of(Steps.Single(s => s.Id == "tuft.1"), Steps, Reckoned), Languages.English.Pattern.Proof))
            Assert.Equal(mark.Said, text.Substring(mark.At, mark.Length));
    }

    [Fact]
    public void A_text_as_long_as_is_accepted_is_read()
    {
        var text = string.Concat(Enumerable.Repeat("12 1/2 in, 3.25 mm or 5 B; ", PatternNotes.MostText / 27 + 1))[..PatternNotes.MostText];
        Assert.NotEmpty(Slips("tuft.1", text));
        Assert.Equal([], Slips("tuft.1", string.Concat(Enumerable.Repeat("5 B ", PatternNotes.MostText / 4))));
    }

    [Fact]
    public void Every_slip_has_a_sentence_in_every_language()
    {
        foreach (var language in Languages.All) Assert.Equal(Enum.GetValues<ProofSlip>().Order(), language.Pattern.Slips.Keys.Order());
    }
}
