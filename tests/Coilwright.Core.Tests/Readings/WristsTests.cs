using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using CsCheck;

namespace Coilwright.Core.Tests.Readings;

/// <summary>The wrists a piece suits and the curve over wrists, each against reckoning wrist by wrist.</summary>
public class WristsTests
{
    private static readonly ReckoningData Quick = SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 1, SpreadDraws = 1, CurveStepMm = 20 } };

    private static readonly Bead Round8 = SamplePieces.Bead("round", "round", 8);
    private static readonly Bead Disc = SamplePieces.Bead("disc", "rondelle", 4, 8, role: Role.Accent);

    private static Gen<Piece> Pieces =>
        from order in Gen.Int[0, 1].Array[15, 110]
        from wrist in Gen.Double[120, 240]
        from loop in Gen.Double[150, 220]
        from turns in Gen.Double[0.5, 6]
        from says in Gen.Int[0, 3]
        from overlap in Gen.Double[-10, 40]
        select SamplePieces.Piece([Round8, Disc], order, wrist, loop) with
        {
            // Nothing said; turns; turns and overlap; overlap.
            Wishes = new Wishes { Turns = says is 1 or 2 ? Math.Round(2 * turns) / 2 : null },
            Ends = SamplePieces.Piece([Round8], [0]).Ends with { OverlapMm = says >= 2 ? overlap : null },
        };

    [Fact]
    public void The_wrists_served_are_those_on_which_trying_finds_nothing_amiss() => Pieces.Sample(piece =>
    {
        var own = Reckoning.Of(piece, Quick);
        var designed = piece.Wishes.Turns ?? own.Fit.TurnsWorn;
        var good = new List<double>();
        const double step = 2;
        for (var wrist = Wearer.LeastWristMm; wrist <= Wearer.MostWristMm; wrist += step)
        {
            var r = Reckoning.Of(piece, Quick, new ReckonRequest { WristMm = wrist });
            var amiss = r.Notices.Any(n => n.Code is NoticeCodes.HangsLoose or NoticeCodes.UnderOneTurn)
                || designed - r.Fit.TurnsWorn >= SamplePieces.Choices.FewerTurnsFrom
                // Held against the turns that it has on the wrist it is reckoned for.
                || (piece.Ends.OverlapMm is { } wanted
                    && r.Lie.BeadedMm - own.Fit.OverlapTurns * r.Worn.WirePerTurnMm < wanted - SamplePieces.Choices.OverlapToleranceMm);
            if (!amiss) good.Add(wrist);
        }
        var served = own.Wrists;
        if (served.FromMm is not { } from || served.ToMm is not { } to)
        {
            Assert.Empty(good);
            return;
        }
        // What trying finds lies in one stretch, and its ends within a step of what is told.
        Assert.True(to >= from);
        if (good.Count == 0)
        {
            Assert.True(to - from < step);
            return;
        }
        Near.Equal(good.Count - 1, (good[^1] - good[0]) / step, 1e-9);
        Assert.InRange(good[0] - from, -1e-6, step);
        Assert.InRange(to - good[^1], -1e-6, step);
    }, iter: 25);

    [Fact]
    public void A_wrist_at_the_end_of_those_served_is_just_served()
    {
        var piece = SamplePieces.Piece([Round8], Enumerable.Repeat(0, 94), 165) with { Wishes = new Wishes { Turns = 4 } };
        var to = Reckoning.Of(piece, Quick).Wrists.ToMm!.Value;
        Assert.DoesNotContain(At(to - 0.01).Notices, n => n.Code == NoticeCodes.FewerTurns);
        Assert.Contains(At(to + 0.01).Notices, n => n.Code == NoticeCodes.FewerTurns);
        Reckoned At(double wrist) => Reckoning.Of(piece, Quick, new ReckonRequest { WristMm = wrist });
    }

    [Fact]
    public void Where_she_did_not_say_how_many_turns_it_suits_wrists_like_its_wearers()
    {
        // Five turns on her 165 mm: on a wrist that takes a quarter turn less it is another piece, though it would still go round an ankle once.
        var piece = SamplePieces.Piece([Round8], Enumerable.Repeat(0, 118), 165);
        var served = Reckoning.Of(piece, Quick).Wrists;
        Assert.InRange(served.ToMm!.Value, 165, 185);
        Assert.InRange(served.FromMm!.Value, 140, 165);
    }

    [Fact]
    public void The_curve_says_of_each_wrist_what_reckoning_on_it_says() =>
        Gen.Select(Gen.Int[0, 1].Array[30, 110], Gen.Double[60, 390], Gen.Enum<LiningUpWish>()).Sample((order, wrist, wish) =>
        {
            var data = Quick with { Choices = Quick.Choices with { CurveStepMm = 7.5 } };
            var piece = SamplePieces.Piece([Round8, Disc], order, wrist) with { Wishes = new Wishes { LiningUp = wish } };
            var reckoned = Reckoning.Of(piece, data);
            foreach (var point in reckoned.Curve)
            {
                if (point.WristMm is < Wearer.LeastWristMm or > Wearer.MostWristMm) continue;
                var there = Reckoning.Of(piece, data, new ReckonRequest { WristMm = point.WristMm });
                Assert.Equal(there.Worn.CircumferenceMm, point.CircumferenceMm);
                Assert.Equal(there.Worn.WirePerTurnMm, point.WirePerTurnMm);
                Assert.Equal(there.Fit.TurnsWorn, point.TurnsWorn);
                Assert.Equal((there.LiningUp.Cover, there.LiningUp.CoverExact, there.LiningUp.RelativeAveraged, there.LiningUp.FailsWish),
                    (point.Cover, point.CoverExact, point.Relative, point.FailsWish));
            }
            // The stretches on which it fails are the runs of points that fail.
            var failing = reckoned.Curve.Where(p => p.FailsWish).Select(p => p.WristMm).ToArray();
            Assert.Equal(failing, reckoned.Curve.Select(p => p.WristMm).Where(w => reckoned.Wrists.WishFails.Any(s => w >= s.FromMm && w <= s.ToMm)));
        }, iter: 15);

    // Reckoned on the wrists beside each border, not on the curve's own: inside it fails in the way told, a border's width further on it does not.
    [Fact]
    public void The_wish_fails_just_to_the_borders_that_are_told()
    {
        var data = Quick with { Choices = Quick.Choices with { CurveStepMm = 1 } };
        var borders = 0;
        Wishes[] all = [new() { LiningUp = LiningUpWish.Mix }, new() { LiningUp = LiningUpWish.Columns }, new() { LiningUp = LiningUpWish.Mix, Groups = Wishes.None.Groups.Add("disc", LiningUpWish.Columns) }];
        foreach (var (rounds, wishes) in Enumerable.Range(2, 4).SelectMany(rounds => all.Select(wishes => (rounds, wishes))))
        {
            var piece = SamplePieces.Piece([Round8, Disc], Enumerable.Range(0, 90).Select(i => i % (rounds + 3) < rounds ? 0 : 1)) with { Wishes = wishes };
            var reckoned = Reckoning.Of(piece, data);
            foreach (var stretch in reckoned.Wrists.WishFails)
            {
                Assert.Equal((stretch.FailsMix, stretch.FailsColumns), On(stretch.FromMm));
                Assert.Equal((stretch.FailsMix, stretch.FailsColumns), On(stretch.ToMm));
                if (stretch.FromMm > reckoned.Curve[0].WristMm) Outside(stretch.FromMm - WishFailure.BorderMm);
                if (stretch.ToMm < reckoned.Curve[^1].WristMm) Outside(stretch.ToMm + WishFailure.BorderMm);

                void Outside(double wrist)
                {
                    borders++;
                    Assert.NotEqual((stretch.FailsMix, stretch.FailsColumns), On(wrist));
                }
            }

            (bool, bool) On(double wrist) => Reckoning.Of(piece, data, new ReckonRequest { WristMm = wrist }).LiningUp is var there ? (there.FailsMix, there.FailsColumns) : default;
        }
        Assert.True(borders > 6, $"{borders} borders were looked at.");
    }

    [Theory]
    [InlineData(50)]
    [InlineData(60)]
    [InlineData(165)]
    [InlineData(197)]
    [InlineData(400)]
    public void The_curve_covers_the_datas_wrists_and_the_wearers_own_on_one_step(double wrist)
    {
        var curve = Reckoning.Of(SamplePieces.Piece([Round8], Enumerable.Repeat(0, 94), wrist), SamplePieces.Data with { Choices = SamplePieces.Choices with { Shuffles = 1, SpreadDraws = 1 } }).Curve;
        Assert.InRange(curve[0].WristMm, 30, Math.Min(138, wrist - 10 + 1e-9));
        Assert.InRange(curve[^1].WristMm, Math.Max(198, wrist + 9), 410);
        Assert.All(curve.Zip(curve.Skip(1)), p => Near.Equal(1, p.Second.WristMm - p.First.WristMm, 1e-9));
        Assert.Contains(curve, p => Math.Abs(p.WristMm - 138) < 1e-9);
        Assert.InRange(curve.Length, 61, 274);
    }

    [Theory]
    [InlineData(49.9, null)]
    [InlineData(400.1, null)]
    [InlineData(double.NaN, null)]
    [InlineData(null, 75.0)]
    [InlineData(null, 800.1)]
    [InlineData(null, double.NaN)]
    public void A_wrist_or_circumference_that_nobody_has_is_refused(double? wrist, double? circumference) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Reckoning.Of(SamplePieces.Piece([Round8], [0, 0]), Quick,
            new ReckonRequest { WristMm = wrist, WornCircumferenceMm = circumference }));

    [Fact]
    public void A_long_focal_does_not_stop_a_small_circumference_from_being_reckoned()
    {
        // A focal of 30 mm on a wrist of 130 mm: the maker measured 150 mm.
        var star = SamplePieces.Bead("star", "focal", 30, 20, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2, Seat = new Seat(10, 2) });
        var order = Enumerable.Repeat(0, 60).ToArray();
        order[30] = 1;
        var piece = SamplePieces.Piece([Round8, star], order, 130);
        Assert.InRange(Reckoning.LeastCircumferenceMm(piece), 70, 80);
        Assert.Equal(150, Reckoning.Of(piece, Quick, new ReckonRequest { WornCircumferenceMm = 150 }).Worn.CircumferenceMm);
    }
}
