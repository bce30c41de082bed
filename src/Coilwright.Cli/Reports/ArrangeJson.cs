using Coilwright.Core.Arrangement;
using Coilwright.Core.Editing;
using Coilwright.Core.Pieces;
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
            json.Text("judgedBy", Words.Of(arranged.JudgedBy));
            json.Whole("gaps", arranged.Gaps.Length);
            json.Ratio("waysLog10", Math.Log10(arranged.Ways));
            json.Whole("groups", arranged.FreeGroups);
            json.Ratio("groupWaysLog10", Math.Log10(arranged.GroupWays));
            json.Text("whyNone", arranged.WhyNone == NoIdeas.None ? null : Words.Of(arranged.WhyNone));
            using (json.Array("conflict"))
                foreach (var rule in arranged.Conflict)
                    using (json.Object())
                    {
                        json.Text("rule", rule.Code);
                        json.Text("bead", rule.BeadId);
                        json.Text("of", rule.Rule is { } of ? PieceRules.FieldOf(of) : null);
                        using (json.Array("names"))
                            foreach (var name in rule.Rule?.Named ?? []) json.Item(name);
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
                        var restring = idea.Edit as Restring;
                        var moved = RowSwaps.Done(piece.Order, restring?.Swaps ?? []);
                        json.Text("kind", Words.Of(idea.Kind));
                        json.Whole("changed", idea.Changed);
                        json.Deg("startAngleDeg", (idea.Edit as SetWearer)?.Wearer.StartAngleDeg);
                        json.Mm("coilLoopMm", (idea.Edit as SetWire)?.Wire.LoopMm);
                        using (json.Array("swaps"))
                            foreach (var swap in restring?.Swaps ?? [])
                                using (json.Object())
                                {
                                    json.Whole("firstBead", swap.First + 1);
                                    json.Whole("beads", swap.Count);
                                    json.Whole("otherFirstBead", swap.OtherFirst + 1);
                                    json.Whole("otherBeads", swap.OtherCount);
                                }
                        using (json.Array("standIns"))
                        {
                            foreach (var standIn in restring?.StandIns ?? []) StandIn(json, standIn.First, standIn.Count, standIn.Bead, standIn.With);
                            if (idea.Edit is ReplaceEverywhere everywhere) StandIn(json, 0, piece.Order.Count, everywhere.Bead, everywhere.With);
                        }
                        using (json.Array("runs"))
                            foreach (var run in idea.Runs)
                                using (json.Object())
                                {
                                    json.Text("bead", piece.Beads[moved.Kinds[run.First]].Id);
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

    private static void StandIn(JsonPage json, int first, int count, string bead, string with)
    {
        using var scope = json.Object();
        json.Text("bead", bead);
        json.Text("with", with);
        json.Whole("firstBead", first + 1);
        json.Whole("beads", count);
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
