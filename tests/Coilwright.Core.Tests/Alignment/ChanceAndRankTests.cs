using Coilwright.Core.Alignment;
using Coilwright.Core.Lies;
using Coilwright.Core.Numerics;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

public class ChanceAndRankTests
{
    [Fact]
    public void Chance_is_the_mean_over_every_two_different_beads() => LatticePieces.Any(focals: true, places: false).Sample(p =>
    {
        var choices = SamplePieces.Choices with { Shuffles = 1, LeastOverShare = 0 };
        var report = new LiningUpModel(p.Piece, choices).Measure(p.Lie, p.PitchMm, p.AveragingMm, 1);
        var likeness = new KindLikeness(p.Piece.Beads, choices);
        double weighted = 0, same = 0, pairs = 0;
        for (var i = 0; i < p.Lie.Count; i++)
            for (var j = 0; j < p.Lie.Count; j++)
            {
                if (i == j) continue;
                var (a, b) = (p.Piece.Order.Kinds[i], p.Piece.Order.Kinds[j]);
                var both = p.Lie.SharesMm[i] * p.Lie.SharesMm[j];
                pairs += both;
                weighted += both * likeness[a, b] * Math.Sqrt(choices.ShowsByRole[p.Piece.Beads[a].Role] * choices.ShowsByRole[p.Piece.Beads[b].Role]);
                if (a == b) same += both;
            }
        Near.Equal(weighted / pairs, report.Chance!.Value, 1e-12, p); // rounding of a few thousand terms
        if (report.StrictRelative is { } strict) Near.Equal(report.StrictShare!.Value / (same / pairs), strict, 1e-9, p); // rounding
        foreach (var kind in report.Kinds)
        {
            double own = 0, any = 0;
            for (var i = 0; i < p.Lie.Count; i++)
                for (var j = 0; j < p.Lie.Count; j++)
                {
                    if (i == j || p.Piece.Beads[p.Piece.Order.Kinds[i]].Id != kind.BeadId) continue;
                    any += p.Lie.SharesMm[i] * p.Lie.SharesMm[j];
                    if (p.Piece.Order.Kinds[i] == p.Piece.Order.Kinds[j]) own += p.Lie.SharesMm[i] * p.Lie.SharesMm[j];
                }
            Near.Equal(own / any, kind.Chance!.Value, 1e-9, p); // rounding, as a difference of two sums of like size
        }
    }, iter: 300);

    [Fact]
    public void Rank_is_the_share_of_shuffles_that_line_up_less() => Gen.Select(LatticePieces.Any(focals: true, places: false), Gen.ULong).Sample((p, seed) =>
    {
        var choices = SamplePieces.Choices with { Shuffles = 40 };
        var report = new LiningUpModel(p.Piece, choices).Measure(p.Lie, p.PitchMm, p.AveragingMm, seed);
        if (report.Rank is not { } rank) return;
        double least = 0, most = 0;
        for (var s = 0; s < choices.Shuffles; s++)
        {
            var beads = Enumerable.Range(0, p.Lie.Count).ToArray();
            var draws = new SeededDraws(seed, (ulong)s);
            for (var i = beads.Length - 1; i > 0; i--)
            {
                var j = draws.Below((ulong)i, i + 1);
                (beads[i], beads[j]) = (beads[j], beads[i]);
            }
            var shuffled = p with
            {
                Piece = p.Piece with { Order = new StringingOrder([.. beads.Select(b => p.Piece.Order.Kinds[b])], []) },
                Lie = new Lie([.. beads.Select(b => p.Lie.SharesMm[b])], p.Lie.WirePerTurnMm, p.Lie.RadiusMm, p.Lie.StartAngleDeg),
            };
            var second = shuffled.SecondWay(choices);
            var (over, weighted, _) = second.ByBead();
            // Nearer to the piece's own share than brute force can tell: may count or not. Without a focal only rounding is left.
            var slack = second.SlackMm <= 1e-9 ? 1e-11 : 2 * second.SlackMm / over;
            if (over > 0 && weighted / over < report.Share - slack) least++;
            if (over > 0 && weighted / over < report.Share + (second.SlackMm <= 1e-9 ? -1e-11 : slack)) most++;
        }
        Assert.InRange(rank, least / choices.Shuffles, most / choices.Shuffles);
    }, iter: 40);

    [Fact]
    public void The_same_seed_gives_the_same_rank_and_another_seed_other_shuffles() => LatticePieces.Any(focals: false, places: false).Sample(p =>
    {
        var model = new LiningUpModel(p.Piece, SamplePieces.Choices with { Shuffles = 20 });
        Assert.Equal(model.Measure(p.Lie, p.PitchMm, p.AveragingMm, 5).Rank, model.Measure(p.Lie, p.PitchMm, p.AveragingMm, 5).Rank);
    }, iter: 50);

    [Fact]
    public void Shuffles_stop_when_they_are_asked_to()
    {
        var piece = SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Range(0, 60).Select(i => i % 3));
        var lie = new Lie([.. Enumerable.Repeat(8.0, 60)], 188, 30, 180);
        using var cancel = new CancellationTokenSource();
        cancel.Cancel();
        Assert.Throws<OperationCanceledException>(() => new LiningUpModel(piece, SamplePieces.Choices).Measure(lie, 8, 4, 1, cancel.Token));
    }

    [Fact]
    public void Beads_of_one_kind_are_at_chance_however_they_lie()
    {
        var piece = SamplePieces.Piece(LatticePieces.Kinds, Enumerable.Repeat(0, 60));
        var report = new LiningUpModel(piece, SamplePieces.Choices).Measure(new Lie([.. Enumerable.Repeat(8.0, 60)], 187.3, 30, 180), 8, 4, 1);
        Near.Equal(1, report.Relative!.Value, 1e-12);
        Near.Equal(1, report.StrictRelative!.Value, 1e-12);
        // No shuffle of like beads lines up less.
        Assert.Equal(0, report.Rank);
    }
}
