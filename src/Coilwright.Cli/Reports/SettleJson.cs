using Coilwright.Core.Pieces;
using Coilwright.Core.Settle;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>How a piece lies as JSON, <c>coilwright.settle/1</c>: described in docs/settle.schema.json, and promised to outsiders.</summary>
internal static class SettleJson
{
    public const string Schema = "coilwright.settle/1";

    public static byte[] Of(Settled s, Piece piece, ReckoningChoices choices, Language language)
    {
        using var json = new JsonPage(language);
        var sentences = new SettleSentences(s, piece, choices, language);
        string IdOf(int index) => piece.Beads[piece.Order.Kinds[index]].Id;
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", piece.Title);
            json.Text("outcome", Words.Of(s.Outcome));
            json.Text("reason", s.Reason is { } reason ? Words.Of(reason) : null);
            using (json.Object("wrist"))
            {
                json.Mm("wristMm", s.Request.WristMm);
                json.Ratio("aspect", s.Request.Aspect);
                json.Ratio("taper", s.Request.Taper);
                json.Text("arm", Words.Of(s.Request.Pose));
            }
            using (json.Object("solved"))
            {
                json.Whole("steps", s.Steps);
                using (json.Array("stageSteps"))
                    foreach (var steps in s.StageSteps) json.Item(steps);
                // A search that found no rest has its path all the same; one that was never begun has none.
                var begun = s.StartedFrom.RadiusMm > 0;
                json.Small("residualN", begun && double.IsFinite(s.ResidualN) ? s.ResidualN : null);
                json.Mm("worstOverlapMm", s.Worn is null ? null : s.WorstOverlapMm);
                json.YesOrNo("onEdge", s.Worn is null ? null : s.OnEdge);
                json.Mm("startRadiusMm", begun ? s.StartedFrom.RadiusMm : null);
                json.Mm("startPitchMm", begun ? s.StartedFrom.PitchMm : null);
            }
            Size(json, "relaxed", s.Relaxed);
            Size(json, "worn", s.Worn);
            using (json.Object("quick"))
            {
                json.Ratio("turns", s.Quick.Turns);
                json.Mm("wirePerTurnMm", s.Quick.WirePerTurnMm);
                json.Mm("differenceMm", s.Lie?.WirePerTurnMm - s.Quick.WirePerTurnMm);
            }
            json.Ratio("bearingShare", s.Worn is null ? null : s.BearingShare);
            Gap(json, "widestGap", s.Widest, IdOf);
            using (json.Array("gaps"))
                foreach (var gap in s.Gaps) Gap(json, null, gap, IdOf);
            using (json.Array("touching"))
                foreach (var gap in s.Touching) Gap(json, null, gap, IdOf);
            using (json.Array("pushes"))
                foreach (var push in s.Pushes)
                    using (json.Object())
                    {
                        json.Text("kind", Words.Of(push.Kind));
                        json.Whole("index", push.First);
                        json.Whole("otherIndex", push.Second);
                        json.Ratio("forceN", push.ForceN);
                    }
            using (json.Object("held"))
            {
                json.Ratio("slidingN", s.Worn is null ? null : s.Held.SlidingN);
                json.Ratio("turningNmm", s.Worn is null ? null : s.Held.TurningNmm);
            }
            using (json.Object("stress"))
            {
                json.Ratio("stressMPa", s.Worn is null ? null : s.StressMPa);
                json.Ratio("leastStrengthMPa", s.StrengthMPa);
            }
            using (json.Array("focal"))
                foreach (var stand in s.FocalStands)
                    using (json.Object())
                    {
                        json.Text("arm", Words.Of(stand.Pose));
                        json.YesOrNo("rests", stand.Rests);
                        json.Deg("angleDeg", stand.Rests ? stand.AngleDeg : null);
                        json.Mm("alongMm", stand.Rests ? stand.AlongMm : null);
                        json.Deg("tipsDeg", stand.Rests ? stand.TipsDeg : null);
                        json.Deg("leansDeg", stand.Rests ? stand.LeansDeg : null);
                    }
            if (s.FocalKept is { } kept)
                using (json.Object("focalKept"))
                {
                    json.Text("arm", Words.Of(kept.Pose));
                    json.Ratio("holdNmm", kept.HoldNmm);
                    json.Ratio("pressesNmm", kept.PressesNmm);
                    json.Ratio("leastFriction", kept.LeastFriction);
                    json.Deg("tipsDeg", kept.TipsDeg);
                }
            else json.Null("focalKept", null);
            using (json.Array("order"))
                foreach (var bead in s.Beads)
                    using (json.Object())
                    {
                        json.Whole("index", bead.Index);
                        json.Text("bead", IdOf(bead.Index));
                        json.Deg("angleDeg", bead.AngleDeg);
                        using (json.Array("placeMm"))
                            for (var k = 0; k < 3; k++) json.ItemMm(bead.Place[k]);
                        using (json.Array("along"))
                            for (var k = 0; k < 3; k++) json.ItemRatio(bead.Along[k]);
                        using (json.Array("outwards"))
                            for (var k = 0; k < 3; k++) json.ItemRatio(bead.Outwards[k]);
                        json.Mm("offWristMm", bead.OffWristMm);
                    }
            using (json.Array("signs"))
                foreach (var sign in SettleSigns.Of(s, choices)) json.Item(Words.Of(sign));
            using (json.Array("withoutWeight"))
                foreach (var id in s.WithoutWeight) json.Item(id);
            using (json.Array("says"))
            {
                if (sentences.Trouble() is { } trouble) json.Item(trouble);
                foreach (var sentence in sentences.Says().Concat(sentences.Minds())) json.Item(sentence);
            }
        }
        return json.ToBytes();
    }

    private static void Size(JsonPage json, string name, TurnSize? size)
    {
        if (size is not { } s)
        {
            json.Null(name, null);
            return;
        }
        using var scope = json.Object(name);
        json.Ratio("turns", s.Turns);
        json.Mm("wirePerTurnMm", s.WirePerTurnMm);
        json.Mm("pitchMm", s.PitchMm);
        json.Mm("circumferenceMm", s.CircumferenceMm);
        json.Mm("insideMm", s.InsideMm);
    }

    private static void Gap(JsonPage json, string? name, TurnGap? gap, Func<int, string> idOf)
    {
        if (gap is not { } g)
        {
            json.Null(name!, null);
            return;
        }
        using var scope = json.Object(name);
        json.Whole("index", g.Bead);
        json.Text("bead", idOf(g.Bead));
        json.Whole("overIndex", g.Over);
        json.Text("overBead", idOf(g.Over));
        json.Mm("gapMm", g.GapMm);
    }
}
