using System.Collections.Immutable;
using Bunit;
using Coilwright.Core.Cures;
using Coilwright.Core.Editing;
using Coilwright.Core.Readings;
using Coilwright.Web.Components.Bench;
using Microsoft.AspNetCore.Components;

namespace Coilwright.Web.Tests.Components;

public sealed class NoticesListTests : BunitContext
{
    [Fact]
    public void Show_me_hands_on_the_beads_that_the_notice_means()
    {
        var notice = Notice.Of(NoticeCodes.UnderOneTurn, Severity.Stop, numbers: [("turnsWorn", 0.5)], positions: [3, 4, 5]);
        var reckoned = Reckoning.Of(Examples.Boardwalk, Examples.Data) with { Notices = [notice] };
        ImmutableArray<int> shown = [];
        var list = Render<NoticesList>(p => p.Add(c => c.Reckoned, reckoned)
            .Add(c => c.Show, EventCallback.Factory.Create<ImmutableArray<int>>(this, beads => shown = beads)));
        Assert.Contains("The beads make only 0.5 turns", list.Find(".notice").TextContent, StringComparison.Ordinal);
        list.Find(".notice button").Click();
        Assert.Equal([3, 4, 5], shown);
    }

    [Fact]
    public void A_cure_says_what_it_does_and_what_it_brings_and_is_tried_by_its_button()
    {
        var notice = Notice.Of(NoticeCodes.HangsLoose, Severity.Info, numbers: [("looseMm", 30), ("wristMm", 120)]);
        var reckoned = Reckoning.Of(Examples.Boardwalk, Examples.Data) with { Notices = [notice] };
        var cure = new Cure(CureCodes.TakeOff, new RemoveBeads(BeadPlaces.One(3)), reckoned.Counts[0].Bead.Id,
            ImmutableSortedDictionary<string, double>.Empty.Add("number", 4), ImmutableSortedDictionary<string, string>.Empty)
        {
            Brings = [Notice.Of(NoticeCodes.FewerTurns, Severity.Warn)],
        };
        Cure? tried = null;
        var list = Render<NoticesList>(p => p.Add(c => c.Reckoned, reckoned).Add(c => c.Cures, ImmutableDictionary<Notice, Cure>.Empty.Add(notice, cure))
            .Add(c => c.Try, EventCallback.Factory.Create<Cure>(this, c => tried = c)));
        Assert.Contains($"Then this comes: fewer turns than you designed.", list.Find(".notice").TextContent, StringComparison.Ordinal);
        var button = list.Find("button.cure");
        Assert.Equal($"Try it: take off bead 4, {reckoned.Counts[0].Bead.Name} (A)", button.TextContent);
        button.Click();
        Assert.Same(cure, tried);
    }

    // What is her choice or for the rule to tell stands in the notice itself.
    [Theory]
    [InlineData(NoticeCodes.TurnsGape, true)]
    [InlineData(NoticeCodes.FocalTips, true)]
    [InlineData(NoticeCodes.OnAKnifesEdge, true)]
    [InlineData(NoticeCodes.HeavyForItsTurns, false)]
    [InlineData(NoticeCodes.BoreUnknown, false)]
    public void What_only_settling_anew_would_cure_says_so_and_has_nothing_to_try(string code, bool says)
    {
        Assert.Equal(says, CureTable.None[code] == WhyNoCure.SettleAnew);
        var bead = Examples.Boardwalk.Beads[0].Id;
        var notice = Notice.Of(code, Severity.Warn, bead, [("gapMm", 2), ("overMm", 1), ("number", 3), ("angleDeg", 10), ("overDeg", 8), ("tipsDeg", 12), ("totalG", 30), ("perTurnG", 15), ("heavyG", 10), ("neededBoreMm", 1), ("wireMm", 0.6)]);
        var reckoned = Reckoning.Of(Examples.Boardwalk, Examples.Data) with { Notices = [notice] };
        var list = Render<NoticesList>(p => p.Add(c => c.Reckoned, reckoned));
        Assert.Equal(says, list.Find(".notice").TextContent.Contains("shows once you look again how it sits", StringComparison.Ordinal));
        Assert.Empty(list.FindAll("button.cure"));
    }

    [Fact]
    public void A_notice_that_means_no_beads_has_nothing_to_show()
    {
        var reckoned = Reckoning.Of(Examples.Boardwalk, Examples.Data) with
        {
            Notices = [Notice.Of(NoticeCodes.HangsLoose, Severity.Warn, numbers: [("looseMm", 30), ("wristMm", 120)])],
        };
        Assert.Empty(Render<NoticesList>(p => p.Add(c => c.Reckoned, reckoned)).FindAll("button"));
    }
}
