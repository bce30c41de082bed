using System.Collections.Immutable;
using Coilwright.Core.Classes;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A class on a piece as JSON, <c>coilwright.class/1</c>: described in docs/class.schema.json, and promised to outsiders.</summary>
internal static class ClassJson
{
    public const string Schema = "coilwright.class/1";

    /// <summary>The page.</summary>
    public static byte[] Of(ClassPlan plan, Language language, ImmutableArray<string> files)
    {
        using var json = new JsonPage(language);
        var said = new ClassSentences(plan, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", plan.Reckoned.Piece.Title);
            json.Whole("participants", plan.Ask.Participants);
            json.Whole("spareKits", plan.Ask.SpareKits);
            json.Money("factor", PriceJson.Four(plan.Ask.Factor));
            json.Text("start", plan.Ask.Start is null ? null : said.Clock(0));
            json.Text("end", plan.Available is { } available ? said.Clock(available) : null);
            json.YesOrNo("canBeHeld", plan.CanBeHeld);
            using (json.Array("reasons"))
                foreach (var reason in plan.Reasons) json.Item(Words.Of(reason));
            Timetable(json, plan, said);
            Steps(json, plan, said);
            Kits(json, plan);
            using (json.Array("tools"))
                foreach (var tool in plan.Tools)
                    using (json.Object())
                    {
                        json.Text("tool", Words.Of(tool.Tool));
                        json.Whole("oneFor", tool.Share);
                        json.Whole("count", tool.Count);
                    }
            Cost(json, plan);
            using (json.Array("cautions"))
                foreach (var caution in plan.Cautions) json.Item(Words.Of(caution));
            using (json.Array("says"))
                foreach (var sentence in said.Reasons().Append(said.Takes()).Concat(said.Beforehand()).Concat(said.CouldBeBeforehand()).Concat(said.Kits()).Append(said.Wire()).Concat(said.Gaps()).Concat(said.Price()).Concat(said.Cautions())) json.Item(sentence);
            using (json.Array("written"))
                foreach (var file in files) json.Item(file);
        }
        return json.ToBytes();
    }

    private static void Timetable(JsonPage json, ClassPlan plan, ClassSentences said)
    {
        using var scope = json.Object("timetable");
        json.Money("minutes", PriceJson.Four(plan.Timetable.Minutes));
        json.YesOrNo("isAtLeast", plan.Timetable.HasUntimed);
        json.Money("available", PriceJson.Four(plan.Available));
        json.Money("overMinutes", PriceJson.Four(plan.OverMinutes));
        json.Money("breakMinutes", PriceJson.Four(plan.Timetable.BreakMinutes));
        json.Money("waitMinutes", PriceJson.Four(plan.Timetable.WaitMinutes));
        json.Money("withAllBeforehand", PriceJson.Four(plan.Shortened?.Minutes));
        using var array = json.Array("stretches");
        foreach (var stretch in plan.Timetable.Stretches)
        {
            using var one = json.Object();
            json.Text("kind", Words.Of(stretch.Kind));
            json.Whole("step", stretch.Work is { } work ? plan.Works.IndexOf(work) + 1 : null);
            json.Money("from", PriceJson.Four(stretch.From));
            json.Money("to", PriceJson.Four(stretch.To));
            json.Text("clock", plan.Ask.Start is null ? null : said.Clock(stretch.From));
            json.YesOrNo("goesOn", stretch.GoesOn);
            json.YesOrNo("isAtEarliest", stretch.IsAtEarliest);
        }
    }

    private static void Steps(JsonPage json, ClassPlan plan, ClassSentences said)
    {
        var before = plan.Beforehand.ToHashSet();
        using var array = json.Array("steps");
        foreach (var work in plan.Works)
        {
            using var scope = json.Object();
            json.Text("id", work.Step?.Id);
            json.Text("action", work.Step is { } step ? Words.Of(step.Action) : null);
            json.Text("name", work.Timed?.Name);
            json.Text("text", said.Whole(work));
            json.Money("ownMinutes", PriceJson.Four(work.OwnMinutes), WhyNotCodes.NoTime);
            json.Money("groupMinutes", PriceJson.Four(before.Contains(work) ? 0 : work.GroupMinutes(plan.Factor)), WhyNotCodes.NoTime);
            json.Whole("turns", work.Turns);
            json.Money("waitMinutes", PriceJson.Four(work.WaitMinutes));
            json.YesOrNo("canBeBeforehand", work.CanBeBeforehand);
            json.YesOrNo("isBeforehand", before.Contains(work));
            using var cautions = json.Array("cautions");
            foreach (var caution in work.Step?.Cautions ?? []) json.Item(Words.Of(caution));
        }
    }

    private static void Kits(JsonPage json, ClassPlan plan)
    {
        var kit = plan.Kits.Kits[0];
        using var scope = json.Object("kits");
        json.Whole("count", plan.KitCount);
        json.Mm("cutMm", plan.Reckoned.Wire.CutMm);
        json.Money("cutAllMm", plan.CutMm);
        json.Money("buyingTotal", plan.Supplies.Plan?.Total, WhyNotCodes.NoOrderCanBeSent);
        using var array = json.Array("bags");
        foreach (var bag in kit.Bags)
        {
            var line = plan.Supplies.Lines.First(l => l.Item.Id == bag.Item);
            using var one = json.Object();
            json.Text("item", bag.Item);
            json.Text("letter", bag.Letter.Length > 0 ? bag.Letter : null);
            json.Text("name", bag.Kind?.Bead.Name);
            json.Whole("use", bag.Use);
            json.Whole("spare", bag.Spare);
            json.Whole("all", line.Item.Use + line.Item.Spare);
            json.Whole("home", line.Item.Home);
            json.Whole("missing", line.Item.Missing);
            json.Whole("buy", line.Bought);
            json.Money("cost", line.Cost, WhyNotCodes.PriceUnknown);
        }
    }

    private static void Cost(JsonPage json, ClassPlan plan)
    {
        var cost = plan.Cost;
        json.Text("currency", plan.Prices.Currency);
        using (json.Object("cost"))
        {
            json.Whole("kits", cost.Kits);
            json.Money("kitEach", PriceJson.Four(cost.KitEach));
            json.Money("kitsTotal", PriceJson.Four(cost.KitsTotal));
            json.Money("teachingMinutes", PriceJson.Four(cost.TeachingMinutes), WhyNotCodes.NoTime);
            json.Money("aroundMinutes", PriceJson.Four(cost.AroundMinutes));
            json.Money("beforehandMinutes", PriceJson.Four(cost.BeforehandMinutes));
            json.Money("wagePerHour", PriceJson.Four(cost.WagePerHour), WhyNotCodes.NoWage);
            json.Money("labour", PriceJson.Four(cost.Labour), WhyNotCodes.NoTime);
            json.Money("room", PriceJson.Four(cost.Room));
            json.Money("total", PriceJson.Four(cost.Total), WhyNotCodes.NoTime);
            json.Money("each", PriceJson.Four(plan.CostEach), WhyNotCodes.NoTime);
            using (json.Array("kitGaps"))
                foreach (var gap in plan.Kit.Gaps) json.Item(Words.Of(gap));
            PriceJson.Line(json, "kit", plan.Kit.Cost);
        }
        if (plan.Price is { } price) using (json.Object("price")) PriceJson.Price(json, price); else json.Null("price", plan.Cost.Total is null ? WhyNotCodes.NoTime : WhyNotCodes.NoPlaceRule);
        json.Whole("breakEven", plan.BreakEven, plan.Price is null ? null : WhyNotCodes.NoGain);
    }
}
