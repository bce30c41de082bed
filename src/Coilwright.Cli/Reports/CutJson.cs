using System.Collections.Immutable;
using Coilwright.Core.Cutting;
using Coilwright.Core.Readings;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A cutting plan as JSON, <c>coilwright.cut/1</c>: described in docs/cut.schema.json, and promised to outsiders.</summary>
internal static class CutJson
{
    public const string Schema = "coilwright.cut/1";

    /// <summary>The page.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="sayStop">Pieces whose report says stop.</param>
    /// <param name="language">The language.</param>
    /// <param name="file">Where the wire that is there afterwards was written; null when it was not.</param>
    public static byte[] Of(CuttingPlan plan, ImmutableArray<int> sayStop, Language language, string? file)
    {
        using var json = new JsonPage(language);
        var sentences = new CutSentences(plan, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            Pieces(json, plan, sayStop);
            Wire(json, plan);
            json.Whole("lossMm", plan.LossMm);
            Coils(json, plan);
            json.YesOrNo("comesOut", plan.ComesOut);
            NotCut(json, plan);
            json.Text("aim", Words.Of(plan.Aim));
            json.YesOrNo("proven", plan.IsProven);
            json.YesOrNo("wasStopped", plan.WasStopped);
            json.Whole("newCoils", plan.NewCoils);
            json.Whole("leastNewCoils", plan.LeastNewCoils);
            json.Whole("offcutsUsed", plan.OffcutsUsed);
            json.Money("cost", plan.Cost, WhyNotCodes.PriceUnknown);
            json.Money("leastCost", plan.LeastCost);
            json.Mm("keptMm", plan.KeptMm);
            json.Mm("wasteMm", plan.WasteMm);
            using (json.Array("says"))
                foreach (var sentence in sentences.NotCut().Concat(sentences.Sum())) json.Item(sentence);
            using (json.Array("cautions"))
                foreach (var caution in language.Cautions.OfMemoryWire) json.Item(caution);
            json.Text("file", file);
        }
        return json.ToBytes();
    }

    private static void Pieces(JsonPage json, CuttingPlan plan, ImmutableArray<int> sayStop)
    {
        using var array = json.Array("pieces");
        for (var p = 0; p < plan.Pieces.Length; p++)
        {
            var piece = plan.Pieces[p];
            using var scope = json.Object();
            json.Text("name", piece.Name);
            json.Text("letter", KeyLetters.Of(p));
            json.Whole("count", piece.Count);
            json.Mm("cutMm", piece.CutMm);
            json.Whole("wholeMm", piece.WholeMm);
            json.YesOrNo("reportSaysStop", sayStop.Contains(p));
        }
    }

    private static void Wire(JsonPage json, CuttingPlan plan)
    {
        using var array = json.Array("wire");
        for (var l = 0; l < plan.Lots.Length; l++)
        {
            var lot = plan.Lots[l];
            using var scope = json.Object();
            json.Text("name", lot.Name);
            json.Mm("lengthMm", lot.LengthMm);
            json.Mm("loopMm", lot.Wire.LoopMm);
            json.Ratio("loops", lot.Loops);
            json.Whole("howMany", lot.Count);
            json.Money("price", lot.Price);
            json.YesOrNo("offcut", lot.IsOffcut);
            json.Whole("begun", plan.Coils.Where(c => c.Lot == l).Sum(c => c.Times));
        }
    }

    private static void Coils(JsonPage json, CuttingPlan plan)
    {
        using var array = json.Array("coils");
        foreach (var coil in plan.Coils)
        {
            using var scope = json.Object();
            json.Whole("wire", coil.Lot);
            json.Whole("times", coil.Times);
            using (json.Array("cuts"))
                foreach (var cut in coil.Cuts)
                    using (json.Object())
                    {
                        json.Whole("piece", cut.Piece);
                        json.Whole("lengthMm", cut.LengthMm);
                        json.Whole("loops", cut.Mark.Loops);
                        json.Whole("restMm", cut.Mark.RestMm);
                        json.Whole("fromMm", cut.FromMm);
                    }
            using (json.Object("left"))
            {
                json.Whole("lengthMm", coil.LeftMm);
                json.Whole("loops", coil.Left.Loops);
                json.Whole("restMm", coil.Left.RestMm);
                json.YesOrNo("kept", coil.IsKept);
            }
        }
    }

    private static void NotCut(JsonPage json, CuttingPlan plan)
    {
        using (json.Array("notCut"))
            foreach (var not in plan.NotCut)
                using (json.Object())
                {
                    json.Whole("piece", not.Piece);
                    json.Whole("count", not.Count);
                    json.Mm("lengthMm", not.LengthMm);
                    json.Text("why", Words.Of(not.Why));
                }
        using (json.Array("moreWouldDo"))
            foreach (var more in plan.More)
                using (json.Object())
                {
                    json.Whole("wire", more.Lot);
                    json.Whole("count", more.Count);
                    json.YesOrNo("proven", more.IsProven);
                }
        json.Mm("leastMissingMm", plan.LeastMissingMm);
    }
}
