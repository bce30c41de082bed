using System.Collections.Immutable;
using Coilwright.Core.Alignment;
using Coilwright.Core.Lies;
using CsCheck;

namespace Coilwright.Core.Tests.Alignment;

public class RepeatDriftTests
{
    private static readonly Gen<(double[] Repeat, int Times, double Turn)> Rows =
        Gen.Select(Gen.Double[1, 20].Array[1, 6], Gen.Int[3, 60], Gen.Double[50, 400]);

    private static (ImmutableArray<int> Kinds, Lie Lie, double Length) Strung(double[] repeat, int times, double turn) =>
        ([.. Enumerable.Range(0, repeat.Length * times).Select(i => i % repeat.Length)],
            new Lie([.. Enumerable.Range(0, repeat.Length * times).Select(i => repeat[i % repeat.Length])], turn, turn / (2 * Math.PI), 180), repeat.Sum());

    [Fact]
    public void The_repeat_found_is_the_shortest_that_trying_every_length_finds() =>
        Gen.Int[0, 2].Array[1, 30].Select(Gen.Int[0, 3], (part, more) => Enumerable.Repeat(part, more + 1).SelectMany(x => x).Take(Math.Max(1, part.Length * (more + 1) - more)).ToImmutableArray())
            .Sample(kinds =>
            {
                int? found = null;
                for (var length = 1; 2 * length <= kinds.Length && found is null; length++)
                    if (Enumerable.Range(0, kinds.Length).All(i => kinds[i] == kinds[i % length])) found = length;
                Assert.Equal(found, RepeatDriftModel.RepeatOf(kinds));
            }, iter: 2000);

    [Fact]
    public void Drift_is_the_signed_distance_to_the_nearest_repeat() => Rows.Sample(x =>
    {
        var (kinds, lie, length) = Strung(x.Repeat, x.Times, x.Turn);
        if (RepeatDriftModel.Of(kinds, lie) is not { } drift) throw new InvalidOperationException("A repeat strung three times is a repeat.");
        Near.Equal(length / x.Repeat.Length * drift.Beads, drift.LengthMm, 1e-9, x); // rounding
        // By trying every whole number of repeats.
        var nearest = Enumerable.Range(0, 500).Select(k => x.Turn - k * drift.LengthMm).MinBy(Math.Abs);
        Near.Equal(Math.Abs(nearest), Math.Abs(drift.DriftMm), 1e-6, x); // rounding, over up to 400 repeats
        if (Math.Abs(Math.Abs(drift.Drift) - 0.5) > 1e-6) Near.Equal(nearest, drift.DriftMm, 1e-6, x);
        Near.Equal(drift.Drift * drift.LengthMm, drift.DriftMm, 1e-12, x);
        Assert.InRange(drift.Drift, -0.5, 0.5);
    }, iter: 500);

    [Fact]
    public void Half_a_repeat_over_is_brick()
    {
        var (kinds, lie, _) = Strung([8, 2], 40, 185);
        Assert.Equal(0.5, Math.Abs(RepeatDriftModel.Of(kinds, lie)!.Drift));
        Assert.Equal(0, RepeatDriftModel.Of(kinds, Strung([8, 2], 40, 190).Lie)!.Drift);
    }

    // Reference: the three-gap theorem (Steinhaus' conjecture, proved by V. T. Sos, J. Suranyi and S. Swierczkowski, 1957-1959; statement read in the
    // abstract of T. van Ravenstein, J. Austral. Math. Soc. 1988, Zbl 0663.10039): points at steps of a round a circle leave gaps of at most three
    // lengths, and of three the longest is the sum of the other two.
    [Fact]
    public void Starts_of_the_repeats_round_the_wrist_leave_gaps_of_at_most_three_lengths() => Rows.Sample(x =>
    {
        var (_, lie, _) = Strung(x.Repeat, x.Times, x.Turn);
        var places = Enumerable.Range(0, x.Times).Select(m => lie.AngleDegAt(lie.StartsMm[m * x.Repeat.Length])).Order().ToArray();
        var gaps = places.Zip(places.Skip(1).Append(places[0] + 360), (a, b) => b - a).Order().ToArray();
        // Different gaps are told apart at a thousandth of a degree; rounding is ten million times finer. Nearer than that counts as one.
        var lengths = new List<double>();
        foreach (var gap in gaps)
            if (lengths.Count == 0 || gap - lengths[^1] > 1e-6) lengths.Add(gap);
        Assert.InRange(lengths.Count, 1, 3);
        if (lengths.Count == 3) Near.Equal(lengths[0] + lengths[1], lengths[2], 1e-5, x);
    }, iter: 500);

    [Fact]
    public void A_drift_tells_how_much_of_a_ball_stays_over_its_like() => Gen.Select(Gen.Double[2, 9], Gen.Double[1, 9], Gen.Double[100, 250]).Sample((ball, gap, turn) =>
    {
        var (kinds, lie, repeat) = Strung([ball, gap], 200, turn);
        var beads = LatticePieces.Kinds;
        var piece = SamplePieces.Piece([beads[0], beads[3]], kinds);
        var report = new LiningUpModel(piece, SamplePieces.Choices with { Shuffles = 1 }).Measure(lie, 8, 4, 1);
        var drift = Math.Abs(RepeatDriftModel.Of(kinds, lie)!.DriftMm);
        // In a row without ends: a ball moved by the drift keeps what is left of it, and what comes in of the next one.
        var kept = Math.Max(0, ball - drift) + Math.Max(0, ball - (repeat - drift));
        // The row's ends cut at most two repeats out of those that lie over something.
        Near.Equal(kept / ball, report.Kinds.Single(k => k.BeadId == "ball").Share!.Value, 2 * repeat / (lie.BeadedMm - turn), (ball, gap, turn));
    }, iter: 300);

    [Fact]
    public void An_order_that_does_not_repeat_has_no_drift()
    {
        var lie = new Lie([8, 8, 2, 8], 188, 30, 180);
        Assert.Null(RepeatDriftModel.Of([0, 1, 2, 0], lie));
        Assert.Null(RepeatDriftModel.Of([0], new Lie([8], 188, 30, 180)));
        Assert.Equal(1, RepeatDriftModel.Of([0, 0], new Lie([8, 8], 188, 30, 180))!.Beads);
    }
}
