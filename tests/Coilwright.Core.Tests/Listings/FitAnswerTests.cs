using Coilwright.Core.Listings;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;

namespace Coilwright.Core.Tests.Listings;

/// <summary>"Will it fit me?": one answer for each wrist, the same that the wrists a piece suits give.</summary>
public class FitAnswerTests
{
    private static readonly Piece Plain = SamplePieces.Piece([SamplePieces.Bead("round", "round", 6)], Enumerable.Repeat(0, 132)) with { Wishes = new Wishes { Turns = 4 } };

    [Fact]
    public void A_wrist_is_answered_yes_exactly_within_the_wrists_that_it_suits()
    {
        var served = Reckoning.Of(Plain, SamplePieces.Data).Wrists;
        Assert.NotNull(served.FromMm);
        for (var wrist = 120.0; wrist <= 230; wrist += 2.5)
        {
            var answer = FitAnswer.Of(Plain, SamplePieces.Data, wrist);
            // Fewer turns are told from a quarter of one on, and so is more: the wrists that it suits know the first border alone.
            if (answer.Why == WhyNotFit.MoreTurns) continue;
            Assert.Equal(wrist >= served.FromMm && wrist <= served.ToMm, answer.Answer == WillFit.Yes);
        }
    }

    [Fact]
    public void The_larger_the_wrist_the_fewer_the_turns_and_the_answers_go_from_loose_over_yes_to_not_once_round()
    {
        var shortRow = Plain with { Order = SamplePieces.Piece(Plain.Beads, Enumerable.Repeat(0, 33)).Order, Wishes = new Wishes { Turns = 1 } };
        var answers = Enumerable.Range(0, 40).Select(i => FitAnswer.Of(shortRow, SamplePieces.Data, 120 + 5 * i)).ToArray();
        Assert.Equal(WhyNotFit.HangsLoose, answers[0].Why);
        Assert.Contains(answers, a => a.Why == WhyNotFit.None);
        Assert.Equal(WhyNotFit.UnderOneTurn, answers[^1].Why);
        Assert.All(answers.Zip(answers.Skip(1)), pair => Assert.True(pair.First.On.Fit.TurnsWorn >= pair.Second.On.Fit.TurnsWorn - 1e-9));
        Assert.All(answers.Where(a => a.Why == WhyNotFit.UnderOneTurn), a => Assert.Equal(WillFit.No, a.Answer));
    }

    [Fact]
    public void Beads_that_are_missing_are_those_that_make_the_turns_up()
    {
        var answer = FitAnswer.Of(Plain, SamplePieces.Data, 200);
        Assert.Equal(WillFit.Otherwise, answer.Answer);
        Assert.True(answer.MoreBeadsMm > 0 && answer.OrderOtherSize);
        // Strung with so many more rounds, it makes its turns to within one of them.
        var more = (int)Math.Round(answer.MoreBeadsMm / (answer.On.Lie.BeadedMm / 132));
        var longer = Plain with { Order = SamplePieces.Piece(Plain.Beads, Enumerable.Repeat(0, 132 + more)).Order };
        var then = FitAnswer.Of(longer, SamplePieces.Data, 200);
        Assert.Equal(WillFit.Yes, then.Answer);
        Assert.True(Math.Abs(then.MoreBeadsMm) < 6);
    }

    [Fact]
    public void Near_a_border_it_is_told_that_the_answer_may_turn()
    {
        var to = Reckoning.Of(Plain, SamplePieces.Data).Wrists.ToMm!.Value;
        Assert.True(FitAnswer.Of(Plain, SamplePieces.Data, to - 1).IsNearBorder);
        Assert.True(FitAnswer.Of(Plain, SamplePieces.Data, to + 1).IsNearBorder);
        Assert.False(FitAnswer.Of(Plain, SamplePieces.Data, to + 3 * SamplePieces.Choices.WornBandWristMm).IsNearBorder);
    }

    [Fact]
    public void Ends_that_are_to_meet_and_do_not_are_no_plain_yes()
    {
        var meeting = Plain with { Ends = Plain.Ends with { OverlapMm = 0 } };
        var to = Reckoning.Of(meeting, SamplePieces.Data).Wrists.ToMm!.Value;
        Assert.Equal(WillFit.Yes, FitAnswer.Of(meeting, SamplePieces.Data, to - 0.5).Answer);
        var over = FitAnswer.Of(meeting, SamplePieces.Data, to + 0.5);
        Assert.Equal((WillFit.Otherwise, WhyNotFit.EndsTooFar), (over.Answer, over.Why));
        Assert.True(over.EndsShortMm > SamplePieces.Choices.OverlapToleranceMm);
    }

    [Theory, InlineData(double.NaN), InlineData(49.9), InlineData(400.1)]
    public void A_wrist_that_is_none_is_refused(double wristMm) => Assert.Throws<ArgumentOutOfRangeException>(() => FitAnswer.Of(Plain, SamplePieces.Data, wristMm));
}
