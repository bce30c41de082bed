using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Documents.Tests.TurnRows;
using Coilwright.Wording;
using CsCheck;

namespace Coilwright.Documents.Tests.Patterns;

public class WrittenStepsTests
{
    private static IEnumerable<string> LettersOf(Reckoned reckoned) =>
        reckoned.Piece.Order.Kinds.Select(kind => reckoned.Counts.Single(k => k.KindIndex == kind).Letter);

    // What the sentences say, read by someone who has nothing else, is the order bead by bead; and each count after a step is what she has on the wire.
    private static void IsStrungFrom(Reckoned reckoned, Language language)
    {
        var sentences = new PatternSentences(reckoned, language);
        var strung = new List<string>();
        foreach (var step in PatternSteps.Of(reckoned).Where(s => s.Strung is not null))
        {
            strung.AddRange(StepReader.Strung(sentences.Of(step)));
            Assert.Equal(step.BeadsSoFar, strung.Count);
        }
        Assert.Equal(LettersOf(reckoned), strung);
    }

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void The_steps_as_written_string_the_piece(string name)
    {
        IsStrungFrom(DrawnPieces.Reckoned(name), Languages.English);
        IsStrungFrom(DrawnPieces.Reckoned(name), Languages.German);
    }

    [Fact]
    public void The_steps_of_any_piece_as_written_string_it() => RandomPieces.Pieces.Sample(piece =>
    {
        var reckoned = DrawnPieces.Reckon(piece);
        IsStrungFrom(reckoned, Languages.English);
        IsStrungFrom(reckoned, Languages.German);
    }, iter: 60);

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void The_length_so_far_grows_to_the_wire_under_all_beads(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var steps = PatternSteps.Of(reckoned);
        Assert.Equal(steps.Select(s => s.LengthSoFarMm).Order(), steps.Select(s => s.LengthSoFarMm));
        // A sum in two orders of adding.
        Assert.Equal(reckoned.RelaxedBeadedMm, steps[^1].LengthSoFarMm, 1e-6);
        Assert.Equal([.. Enumerable.Range(1, steps.Length)], steps.Select(s => s.Number));
    }

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void Every_caution_of_wire_and_beads_stands_in_a_step(string name) =>
        Assert.Equal(Enum.GetValues<Caution>().Order(), PatternSteps.Of(DrawnPieces.Reckoned(name)).SelectMany(s => s.Cautions).Distinct().Order());

    [Theory]
    [MemberData(nameof(DrawnPieces.Names), MemberType = typeof(DrawnPieces))]
    public void The_proof_reader_has_nothing_to_say_of_the_programs_own_sentences(string name)
    {
        var reckoned = DrawnPieces.Reckoned(name);
        var steps = PatternSteps.Of(reckoned);
        foreach (var language in Languages.All)
        {
            var sentences = new PatternSentences(reckoned, language);
            foreach (var step in steps)
            {
                var text = $"{sentences.Of(step)} {(step.Action == StepAction.CutWire ? sentences.CutMadeOf() : "")} {sentences.Check(step)}";
                // What a group is called is hers; a name with numbers in it would be read too.
                Assert.Empty(ProofReading.Read(text, StepProof.Of(step, steps, reckoned), language.Pattern.Proof));
            }
        }
    }
}
