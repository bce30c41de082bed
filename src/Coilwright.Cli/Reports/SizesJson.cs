using System.Collections.Immutable;
using Coilwright.Core.Grading;
using Coilwright.Core.Making;
using Coilwright.Core.StringingMaterials.MemoryWire;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>The sizes of a design as JSON, <c>coilwright.sizes/1</c>: described in docs/sizes.schema.json, and promised to outsiders.</summary>
internal static class SizesJson
{
    public const string Schema = "coilwright.sizes/1";

    /// <summary>The page.</summary>
    /// <param name="sizes">The sizes.</param>
    /// <param name="request">What was asked.</param>
    /// <param name="language">The language.</param>
    /// <param name="written">Where each size was written; empty when they were not.</param>
    public static byte[] Of(Sizes sizes, SizesRequest request, Language language, ImmutableArray<string> written)
    {
        using var json = new JsonPage(language);
        var (said, design) = (new SizesSentences(sizes, language), sizes.Base.Piece);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", design.Title);
            json.Whole("seed", request.Seed);
            json.Whole("effort", request.Effort);
            json.Mm("baseWristMm", design.Wearer.WristMm);
            json.Ratio("turns", sizes.Turns);
            json.Mm("overlapMm", sizes.OverlapMm);
            json.Mm("toleranceMm", sizes.ToleranceMm);
            json.YesOrNo("mirrored", sizes.IsMirrored);
            using (json.Array("gaps"))
                foreach (var gap in sizes.Gaps)
                    using (json.Object())
                    {
                        json.Text("bead", design.Beads[gap.Kind].Id);
                        json.Whole("firstBead", gap.First + 1);
                        json.Whole("beads", gap.Count);
                    }
            using (json.Array("sizes"))
                for (var i = 0; i < sizes.All.Length; i++) One(json, sizes, sizes.All[i], said, written.IsEmpty ? null : written[i]);
            var materials = sizes.Materials;
            using (json.Array("materials"))
                foreach (var line in materials.Lines)
                    using (json.Object())
                    {
                        json.Text("bead", line.Bead.Id);
                        using (json.Array("uses"))
                            foreach (var use in line.Uses) json.Item(use);
                        json.Whole("most", line.Most);
                        json.Whole("oneOfEach", line.ForOneOfEach.Use);
                        json.Whole("packs", line.ForOneOfEach.Packs);
                        json.Money("cost", line.ForOneOfEach.Cost);
                    }
        }
        return json.ToBytes();
    }

    private static void One(JsonPage json, Sizes sizes, Size size, SizesSentences said, string? file)
    {
        using var scope = json.Object();
        json.Mm("wristMm", size.WristMm);
        json.YesOrNo("isBase", size.IsBase);
        json.YesOrNo("comesOut", size.ComesOut);
        json.Mm("wantedMm", size.WantedMm);
        json.Mm("beadedMm", size.Reckoned.Lie.BeadedMm);
        json.Mm("offMm", size.OffMm);
        json.Ratio("turnsWorn", size.Reckoned.Fit.TurnsWorn);
        json.Mm("wornCircumferenceMm", size.Reckoned.Worn.CircumferenceMm);
        json.Mm("cutMm", size.Reckoned.Wire.CutMm);
        json.Ratio("loopsToCut", size.Reckoned.Wire.LoopsToCut);
        using (json.Object("coil"))
        {
            json.Text("answer", Words.Of(size.Coil.Answer));
            json.Mm("loopMm", size.Coil.Wire.LoopMm);
            json.Mm("insideMm", size.Coil.Wire.By(CoilDatum.Inside).SizeMm);
            json.Mm("askedLoopMm", size.Coil.AskedLoopMm);
        }
        json.Whole("focalTurn", size.Reckoned.Focal?.Turn, WhyNotCodes.NoFocal);
        json.Deg("focalAngleDeg", size.Reckoned.Focal?.AngleDeg, WhyNotCodes.NoFocal);
        json.Ratio("againstWish", size.Against);
        json.YesOrNo("failsWish", size.FailsWish);
        json.YesOrNo("proven", size.IsProven);
        json.Whole("beads", size.Piece.Order.Count);
        using (json.Object("counts"))
            foreach (var kind in size.Reckoned.Counts) json.Whole(kind.Bead.Id, kind.Count);
        using (json.Array("runs"))
            foreach (var run in size.Runs)
                using (json.Object())
                {
                    json.Whole("gap", run.Gap);
                    json.Text("bead", run.BeadId);
                    json.Whole("from", run.From);
                    json.Whole("to", run.To);
                }
        using (json.Array("groups"))
            foreach (var group in size.Groups)
                using (json.Object())
                {
                    json.Text("end", group.AtStart ? "start" : "finish");
                    json.YesOrNo("more", group.IsMore);
                    json.Text("group", group.Group);
                    Runs("beads", group.Beads);
                    Runs("beside", group.Beside);
                }
        using (json.Array("says"))
            foreach (var sentence in said.Notes(size).Prepend(said.Change(size))) json.Item(sentence);
        json.Text("orderText", size.Piece.OrderText);
        json.Text("file", file);

        void Runs(string name, ImmutableArray<RunPart> runs)
        {
            using var array = json.Array(name);
            foreach (var run in runs)
                using (json.Object())
                {
                    json.Text("bead", sizes.Base.Piece.Beads[run.Kind].Id);
                    json.Whole("count", run.Count);
                }
        }
    }
}
