using System.Collections.Immutable;
using Bunit;
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
    public void A_notice_that_means_no_beads_has_nothing_to_show()
    {
        var reckoned = Reckoning.Of(Examples.Boardwalk, Examples.Data) with
        {
            Notices = [Notice.Of(NoticeCodes.HangsLoose, Severity.Warn, numbers: [("looseMm", 30), ("wristMm", 120)])],
        };
        Assert.Empty(Render<NoticesList>(p => p.Add(c => c.Reckoned, reckoned)).FindAll("button"));
    }
}
