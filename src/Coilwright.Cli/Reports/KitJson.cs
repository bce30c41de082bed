using System.Collections.Immutable;
using Coilwright.Core.Kits;
using Coilwright.Core.Shopping;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A batch of kits as JSON, <c>coilwright.kit/1</c>: described in docs/kit.schema.json, and promised to outsiders.</summary>
internal static class KitJson
{
    public const string Schema = "coilwright.kit/1";

    /// <summary>The page.</summary>
    /// <param name="plan">The batch.</param>
    /// <param name="language">The language.</param>
    /// <param name="files">The files that were written.</param>
    public static byte[] Of(KitPlan plan, Language language, ImmutableArray<string> files)
    {
        using var json = new JsonPage(language);
        var sentences = new KitSentences(plan, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            Kits(json, plan, sentences);
            Picks(json, plan, sentences);
            json.YesOrNo("homeKnown", plan.HomeIsKnown);
            Now(json, plan);
            using (json.Array("says"))
                foreach (var sentence in sentences.Mind().Concat(sentences.Now())) json.Item(sentence);
            using (json.Array("cautions"))
                foreach (var caution in sentences.Cautions()) json.Item(caution);
            using (json.Array("files"))
                foreach (var file in files) json.Item(file);
        }
        return json.ToBytes();
    }

    private static void Kits(JsonPage json, KitPlan plan, KitSentences sentences)
    {
        using var array = json.Array("kits");
        foreach (var kit in plan.Kits)
        {
            using var scope = json.Object();
            json.Text("name", kit.Name);
            json.Text("title", kit.Reckoned.Piece.Title);
            json.Whole("count", kit.Count);
            json.Whole("beads", kit.Beads);
            json.Mm("cutMm", kit.Reckoned.Wire.CutMm);
            json.Ratio("loopsToCut", kit.Reckoned.Wire.LoopsToCut);
            json.YesOrNo("reportSaysStop", kit.SaysStop);
            using var bags = json.Array("bags");
            foreach (var bag in kit.Bags)
            {
                using var line = json.Object();
                json.Text("item", bag.Item);
                json.Text("letter", bag.Letter);
                json.Text("name", sentences.NameOf(bag));
                json.Whole("use", bag.Use);
                json.Whole("spare", bag.Spare);
                json.Whole("count", bag.Count);
            }
        }
    }

    private static void Picks(JsonPage json, KitPlan plan, KitSentences sentences)
    {
        using var array = json.Array("picks");
        foreach (var pick in plan.Picks)
        {
            using var scope = json.Object();
            json.Text("item", pick.Item.Id);
            json.Text("name", sentences.NameOf(pick.Item));
            using (json.Array("drawers"))
                foreach (var drawer in pick.Drawers) json.Item(drawer);
            json.Whole("take", pick.All);
            json.Whole("inBags", pick.InBags);
            json.Whole("aside", pick.Aside);
            json.Whole("home", pick.Item.Home);
            json.Whole("missing", pick.Item.Missing);
            using (json.Array("describedOtherwise"))
                foreach (var p in pick.Item.DescribedOtherwise) json.Item(p);
        }
    }

    private static void Now(JsonPage json, KitPlan plan)
    {
        using var array = json.Array("now");
        foreach (var now in plan.Now)
        {
            using var scope = json.Object();
            json.Whole("kit", now.Kit);
            json.Whole("count", now.Count);
            Items(json, "runOutFirst", now.First);
            json.Whole("withOneMorePack", now.Then?.Count, WhyNotCodes.PackUnknown);
            Items(json, "runOutThen", now.Then?.First ?? []);
            using var each = json.Array("each");
            foreach (var (item, enough) in now.Each)
            {
                using var line = json.Object();
                json.Text("item", item.Id);
                json.Whole("home", item.Home);
                json.Whole("count", enough);
            }
        }
    }

    private static void Items(JsonPage json, string name, ImmutableArray<ShoppingItem> items)
    {
        using var array = json.Array(name);
        foreach (var item in items) json.Item(item.Id);
    }
}
