using System.Collections.Immutable;
using Coilwright.Core.Batches;
using Coilwright.Core.Cutting;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Making several alike as JSON, <c>coilwright.batch/1</c>: described in docs/batch.schema.json, and promised to outsiders.</summary>
internal static class BatchJson
{
    public const string Schema = "coilwright.batch/1";

    /// <summary>The page.</summary>
    public static byte[] Of(BatchPlan plan, CuttingPlan? wire, Language language, ImmutableArray<string> files)
    {
        using var json = new JsonPage(language);
        var said = new BatchSentences(plan, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", plan.Reckoned.Piece.Title);
            json.Whole("count", plan.Count);
            json.YesOrNo("reportSaysStop", !plan.Reckoned.Fit.Fits);
            json.Whole("traysEach", plan.TraysEach);
            json.YesOrNo("isByTurn", plan.IsByTurn);
            using (json.Array("wells"))
                foreach (var well in plan.Wells)
                    using (json.Object())
                    {
                        json.Whole("tray", well.Tray);
                        json.Whole("well", well.Well);
                        json.Whole("turn", well.Turn);
                        json.Text("bead", well.Kind.Bead.Id);
                        json.Text("letter", well.Kind.Letter);
                        json.Whole("count", well.Count);
                    }
            using (json.Array("beside"))
                foreach (var kind in plan.Beside) json.Item(kind.Bead.Id);
            using (json.Array("fetch"))
                foreach (var kind in plan.Reckoned.Counts)
                    using (json.Object())
                    {
                        json.Text("bead", kind.Bead.Id);
                        json.Money("count", (decimal)kind.Count * plan.Count);
                    }
            json.Mm("cutMm", plan.Reckoned.Wire.CutMm);
            json.Ratio("loopsToCut", plan.Reckoned.Wire.LoopsToCut);
            json.Mm("cutAllMm", plan.CutMm);
            json.YesOrNo("wireIsEnough", wire?.ComesOut);
            using (json.Array("coils"))
                foreach (var coil in wire?.Coils ?? [])
                    using (json.Object())
                    {
                        json.Text("name", wire!.Lots[coil.Lot].Name);
                        json.Whole("times", coil.Times);
                        json.Whole("lengths", coil.Cuts.Length);
                        json.Whole("leftMm", coil.LeftMm);
                        json.YesOrNo("isKept", coil.IsKept);
                    }
            using (json.Array("steps"))
                foreach (var step in plan.Steps)
                    using (json.Object())
                    {
                        json.Text("name", step.Step.Name);
                        json.YesOrNo("once", step.Step.PerBatch);
                        json.Money("minutes", step.Minutes);
                    }
            json.Money("minutes", plan.Steps.IsEmpty ? null : plan.Minutes);
            json.Money("minutesEach", plan.Steps.IsEmpty ? null : Math.Round(plan.MinutesEach, 4));
            using (json.Array("says"))
                foreach (var sentence in said.Mind().Concat(said.Trays()).Append(said.Wire()).Append(said.Time())) json.Item(sentence);
            using (json.Array("written"))
                foreach (var file in files) json.Item(file);
        }
        return json.ToBytes();
    }
}
