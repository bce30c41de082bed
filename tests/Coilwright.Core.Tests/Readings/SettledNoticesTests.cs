using Coilwright.Core.Beads;
using Coilwright.Core.Pieces;
using Coilwright.Core.Readings;
using Coilwright.Core.Settle;

namespace Coilwright.Core.Tests.Readings;

/// <summary>What settling found, among the notices.</summary>
public class SettledNoticesTests
{
    private static readonly Piece Focal = SamplePieces.Piece(
        [SamplePieces.Bead("rondelle", "rondelle", 5, 8), SamplePieces.Bead("stone", "focal", 20, 25, 8, role: Role.Focal, with: d => d with { HoleOffsetMm = 2.5 })],
        Enumerable.Range(0, 61).Select(i => i == 30 ? 1 : 0));

    private static readonly Lazy<Settled> OfFocal = new(() => Settling.Of(Focal, SamplePieces.Choices, new SettleRequest(165)));

    private static Reckoned Reckoned(Func<ReckoningChoices, ReckoningChoices>? with = null, double wristMm = 165) =>
        Reckoning.Of(Focal, SamplePieces.Data with { Choices = (with ?? (c => c))(SamplePieces.Choices) }, new ReckonRequest { WristMm = wristMm });

    private static Notice? Find(Reckoned reckoned, Settled settled, string code) => SettledNotices.Among(reckoned, settled).Notices.SingleOrDefault(n => n.Code == code);

    [Fact]
    public void Turns_that_gape_by_more_than_the_choice_are_told_with_where()
    {
        var (settled, widest) = (OfFocal.Value, OfFocal.Value.Widest!.Value);
        Assert.Null(Find(Reckoned(c => c with { GapesOverMm = widest.GapMm }), settled, NoticeCodes.TurnsGape));
        var over = widest.GapMm - 1e-6;
        var told = Find(Reckoned(c => c with { GapesOverMm = over }), settled, NoticeCodes.TurnsGape)!;
        Assert.Equal(Severity.Info, told.Severity);
        Assert.Equal((widest.GapMm, over, widest.Bead + 1.0, settled.Beads[widest.Bead].AngleDeg), (told.Numbers["gapMm"], told.Numbers["overMm"], told.Numbers["number"], told.Numbers["angleDeg"]));
        Assert.Equal([widest.Bead, widest.Over], told.Positions);
    }

    [Fact]
    public void A_focal_that_tips_by_more_than_the_choice_is_told()
    {
        var settled = OfFocal.Value;
        var most = settled.FocalStands.Where(s => s.Rests).Max(s => Math.Abs(s.TipsDeg));
        Assert.Null(Find(Reckoned(c => c with { TipsOverDeg = most }), settled, NoticeCodes.FocalTips));
        var told = Find(Reckoned(c => c with { TipsOverDeg = most - 1e-6 }), settled, NoticeCodes.FocalTips)!;
        Assert.Equal((Severity.Warn, "stone", most), (told.Severity, told.BeadId, told.Numbers["tipsDeg"]));
        Assert.Equal([30], told.Positions);
    }

    [Fact]
    public void A_shape_that_would_jump_is_told()
    {
        Assert.False(OfFocal.Value.OnEdge);
        Assert.Null(Find(Reckoned(), OfFocal.Value, NoticeCodes.OnAKnifesEdge));
        Assert.NotNull(Find(Reckoned(), OfFocal.Value with { OnEdge = true }, NoticeCodes.OnAKnifesEdge));
    }

    // Settling weighs the same two things as the formula, and its word counts.
    [Fact]
    public void Loose_and_tight_are_told_once_and_by_what_settling_found()
    {
        var settled = OfFocal.Value;
        var room = settled.Relaxed!.Value.InsideMm - settled.Request.WristMm;
        // On a wrist of 100 mm the formula finds it loose; what settled on 165 does not.
        var loose = Reckoned(wristMm: 100);
        Assert.Contains(loose.Notices, n => n.Code == NoticeCodes.HangsLoose);
        Assert.Null(Find(loose, settled, NoticeCodes.HangsLoose));
        var told = Find(Reckoned(c => c with { LooseFromMm = room }), settled, NoticeCodes.HangsLoose)!;
        Assert.Equal((room, 165), (told.Numbers["looseMm"], told.Numbers["wristMm"]));

        // The sample steel tells no strength: without one nothing is too tight.
        Assert.Null(Find(Reckoned(c => c with { StressShareFrom = 0 }), settled, NoticeCodes.StressNearStrength));
        var strong = settled with { StrengthMPa = 1900 };
        var share = settled.StressMPa / 1900;
        var tight = Find(Reckoned(c => c with { StressShareFrom = 0.999 * share }), strong, NoticeCodes.StressNearStrength)!;
        Assert.Equal((settled.StressMPa, 1900, share), (tight.Numbers["stressMPa"], tight.Numbers["strengthMPa"], tight.Numbers["share"]));
        Assert.Null(Find(Reckoned(c => c with { StressShareFrom = 1.001 * share }), strong, NoticeCodes.StressNearStrength));
    }

    [Fact]
    public void Worst_come_first_and_where_no_rest_was_found_nothing_is_added()
    {
        var reckoned = Reckoned(c => c with { GapesOverMm = 0, TipsOverDeg = 0 });
        var all = SettledNotices.Among(reckoned, OfFocal.Value).Notices;
        Assert.Equal(all.Select(n => n.Severity).OrderDescending(), all.Select(n => n.Severity));
        var steelless = Focal with { Wire = Focal.Wire with { Steel = null } };
        Assert.Same(reckoned, SettledNotices.Among(reckoned, Settling.Of(steelless, SamplePieces.Choices, new SettleRequest(165), TestContext.Current.CancellationToken)));
    }
}
