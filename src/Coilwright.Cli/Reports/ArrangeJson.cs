using Coilwright.Core.Arrangement;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Better orders as JSON, <c>coilwright.arrange/1</c>: described in docs/arrange.schema.json, and promised to outsiders.</summary>
internal static class ArrangeJson
{
    public const string Schema = "coilwright.arrange/1";

    /// <summary>The page.</summary>
    /// <param name="arranged">What was found.</param>
    /// <param name="request">What was asked.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where the best was written; null when there was nothing to write.</param>
    public static byte[] Of(Arranged arranged, ArrangeRequest request, Language language, string? file)
    {
        using var json = new JsonPage(language);
        var sentences = new IdeaSentences(arranged, language);
        var piece = arranged.Before.Piece;
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", piece.Title);
            json.Whole("seed", request.Seed);
            json.Whole("effort", request.Effort);
            json.YesOrNo("wasStopped", arranged.WasStopped);
            json.Whole("gaps", arranged.Gaps.Length);
            json.Ratio("waysLog10", Math.Log10(arranged.Ways));
            json.Text("whyNone", arranged.WhyNone == NoIdeas.None ? null : Words.Of(arranged.WhyNone));
            using (json.Array("conflict"))
                foreach (var rule in arranged.Conflict)
                    using (json.Object())
                    {
                        json.Text("rule", rule.Code);
                        json.Text("bead", rule.BeadId);
                    }
            using (json.Array("wrists"))
                foreach (var wrist in arranged.Wrists)
                    using (json.Object())
                    {
                        json.Mm("wristMm", wrist.WristMm);
                        json.Ratio("weight", wrist.Weight);
                    }
            using (json.Object("before"))
            {
                Judged(json, arranged.BeforeJudged);
                json.Mm("beadedMm", arranged.Before.Lie.BeadedMm);
            }
            using (json.Array("ideas"))
                foreach (var idea in arranged.Ideas)
                    using (json.Object())
                    {
                        json.Text("kind", Words.Of(idea.Kind));
                        json.Whole("changed", idea.Changed);
                        using (json.Array("runs"))
                            foreach (var run in idea.Edit.Runs)
                                using (json.Object())
                                {
                                    json.Text("bead", piece.Beads[piece.Order.Kinds[run.First]].Id);
                                    json.Whole("firstBead", run.First + 1);
                                    json.Whole("beads", run.Count);
                                    json.Whole("to", run.To);
                                }
                        Judged(json, idea.Judged);
                        json.Mm("beadedMm", idea.After.Lie.BeadedMm);
                        json.Mm("cutMm", idea.After.Wire.CutMm);
                        json.Deg("focalAngleDeg", idea.After.Focal?.AngleDeg, WhyNotCodes.NoFocal);
                        json.YesOrNo("proven", idea.IsProven);
                        using (json.Array("says"))
                            foreach (var sentence in sentences.Changes(idea).Concat(sentences.Effects(idea)).Append(sentences.Proof(idea))) json.Item(sentence);
                    }
            Best(json, arranged);
            json.Text("file", file);
        }
        return json.ToBytes();
    }

    private static void Judged(JsonPage json, OrderJudgement judged)
    {
        json.Ratio("againstWish", judged.Loss);
        using var array = json.Array("failsOnWristsMm");
        foreach (var wrist in judged.FailingMm) json.ItemMm(wrist);
    }

    // By the tables alone: what they leave out is in docs/theory/arrange.md.
    private static void Best(JsonPage json, Arranged arranged)
    {
        if (arranged.Best is not { } best)
        {
            json.Text("tables", null);
            return;
        }
        using var scope = json.Object("tables");
        json.Ratio("before", arranged.TableLoss);
        json.Ratio("best", best.Loss);
        json.Ratio("bound", best.Bound);
        json.YesOrNo("proven", best.IsProven);
        using var array = json.Array("leastByBeadsChanged");
        foreach (var least in arranged.LeastLossByChange) json.ItemRatio(least);
    }
}
