using Coilwright.Core.Alignment;
using Coilwright.Core.Fit;
using Coilwright.Core.Readings;
using Coilwright.Core.Settle;
using Coilwright.Core.Spread;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Every reading of a piece as JSON, <c>coilwright.reckon/1</c>: described in docs/reckon.schema.json, and promised to outsiders.</summary>
internal static class ReckonJson
{
    public const string Schema = "coilwright.reckon/1";

    public static byte[] Of(Reckoned r, ReckonRequest request, Language language, Settled? settled = null)
    {
        using var json = new JsonPage(language);
        var names = new BeadNames(r);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", r.Piece.Title);
            json.Mm("wristMm", r.WristMm);
            json.Whole("seed", request.Seed);
            using (json.Object("totals"))
            {
                json.Whole("beads", r.Piece.Order.Count);
                json.Whole("kinds", r.Counts.Length);
                json.Whole("groups", r.Piece.Order.Groups.Length);
            }
            using (json.Object("counts"))
                foreach (var kind in r.Counts) json.Whole(kind.Bead.Id, kind.Count);
            Kinds(json, r);
            using (json.Object("lengths"))
            {
                json.Mm("ruledMm", r.RuledMm);
                json.Mm("beadedMm", r.Lie.BeadedMm);
                json.Mm("relaxedBeadedMm", r.RelaxedBeadedMm);
                json.Mm("cutMm", r.Wire.CutMm);
            }
            Fit(json, r);
            if (settled is not null) Settled(json, settled);
            Alignment(json, r);
            Wire(json, r.Wire);
            Focal(json, r.Focal);
            Repeat(json, r.Repeat);
            Spread(json, r);
            Mass(json, r.Mass);
            Strength(json, r.Strength);
            Wrists(json, r.Wrists);
            Order(json, r);
            Notices(json, r, names, language);
        }
        return json.ToBytes();
    }

    private static void Settled(JsonPage json, Settled settled)
    {
        using var scope = json.Object("settled");
        json.Text("outcome", Words.Of(settled.Outcome));
        json.Text("reason", settled.Reason is { } reason ? Words.Of(reason) : null);
        json.Mm("wornCircumferenceMm", settled.Worn?.CircumferenceMm);
        json.Mm("quickCircumferenceMm", 2 * Math.PI * settled.Quick.RadiusMm);
        json.Mm("wirePerTurnMm", settled.Worn?.WirePerTurnMm);
        json.Mm("quickWirePerTurnMm", settled.Quick.WirePerTurnMm);
    }

    private static void Kinds(JsonPage json, Reckoned r)
    {
        using var array = json.Array("kinds");
        foreach (var (kind, passing) in r.Counts.Zip(r.Passing))
            using (json.Object())
            {
                json.Text("bead", kind.Bead.Id);
                json.Text("name", kind.Bead.Name);
                json.Text("letter", kind.Letter);
                json.Text("role", Words.Of(kind.Bead.Role));
                json.Whole("count", kind.Count);
                json.Mm("lengthMm", kind.Bead.LengthMm);
                json.Mm("ruledMm", kind.RuledMm);
                json.Text("passes", Words.Of(passing.Passes));
                json.Mm("clearanceMm", passing.ClearanceMm, WhyNotCodes.BoreUnknown);
                json.Mm("longestMm", passing.LongestMm, passing.ClearanceMm is null ? WhyNotCodes.BoreUnknown : WhyNotCodes.AnyLength);
                json.Mm("neededBoreMm", passing.NeededBoreMm, WhyNotCodes.NoHole);
            }
    }

    private static void Fit(JsonPage json, Reckoned r)
    {
        var (fit, worn) = (r.Fit, r.Worn);
        using var scope = json.Object("fit");
        json.YesOrNo("fits", fit.Fits);
        using (json.Array("reasons"))
            foreach (var reason in fit.Reasons) json.Item(reason);
        json.Mm("wornCircumferenceMm", worn.CircumferenceMm);
        json.Mm("wornBandMm", worn.BandMm);
        json.Text("wornBy", Words.Of(worn.By));
        json.Mm("wirePerTurnMm", worn.WirePerTurnMm);
        json.Mm("radiusMm", worn.RadiusMm);
        json.Mm("pitchMm", worn.PitchMm);
        json.Mm("bearingReachMm", worn.BearingReachMm);
        json.Mm("roomMm", worn.RoomMm);
        json.Mm("insideRelaxedMm", fit.InsideRelaxedMm);
        json.Ratio("turnsWorn", fit.TurnsWorn);
        json.Ratio("turnsWornFrom", fit.TurnsWornFrom);
        json.Ratio("turnsWornTo", fit.TurnsWornTo);
        json.Ratio("turnsRelaxed", fit.TurnsRelaxed);
        json.Ratio("turnsDesigned", fit.TurnsDesigned, WhyNotCodes.TurnsNotSaid);
        json.Mm("endsOverlapMm", fit.EndsOverlapMm);
        json.Whole("overlapTurns", fit.OverlapTurns);
        json.Deg("startAngleDeg", r.Lie.StartAngleDeg);
        using (json.Object("endLoopHidden"))
        {
            json.YesOrNo("start", fit.EndLoopHidden[0], WhyNotCodes.NoEndLoop);
            json.YesOrNo("finish", fit.EndLoopHidden[1], WhyNotCodes.NoEndLoop);
        }
    }

    private static void Alignment(JsonPage json, Reckoned r)
    {
        var report = r.LiningUp;
        using var scope = json.Object("alignment");
        json.Text("word", Words.Of(report.Word));
        Reading("cover", report.Cover);
        Reading("coverExact", report.CoverExact);
        json.YesOrNo("groupsAreRuns", report.GroupsAreRuns);
        json.YesOrNo("failsWish", report.FailsWish);
        Reading("share", report.Share);
        Reading("chance", report.Chance);
        Reading("relative", report.Relative);
        Reading("relativeAveraged", report.RelativeAveraged);
        Reading("rank", report.Rank);
        Reading("strictShare", report.StrictShare);
        Reading("strictRelative", report.StrictRelative);
        json.Mm("averagingMm", r.Worn.AveragingMm);
        json.Mm("overMm", report.OverMm);
        json.Mm("hiddenMm", report.HiddenMm);
        using (json.Array("pairs"))
            foreach (var pair in report.Pairs)
                using (json.Object())
                {
                    json.Text("name", pair.Name);
                    json.Whole("firstA", pair.FirstA);
                    json.Whole("countA", pair.CountA);
                    json.Whole("firstB", pair.FirstB);
                    json.Whole("countB", pair.CountB);
                    json.Whole("turnA", pair.TurnA);
                    json.Whole("turnB", pair.TurnB);
                    json.Deg("angleDeg", pair.AngleDeg);
                    json.Mm("offSquareMm", pair.OffSquareMm);
                    json.Mm("overlapMm", pair.OverlapMm);
                    json.Mm("overlapFromMm", pair.OverlapFromMm);
                    json.Mm("overlapToMm", pair.OverlapToMm);
                }
        using (json.Array("kinds"))
            foreach (var kind in report.Kinds)
                using (json.Object())
                {
                    json.Text("bead", kind.BeadId);
                    json.Mm("overMm", kind.OverMm);
                    json.Mm("overOwnMm", kind.OverOwnMm);
                    json.Ratio("share", kind.Share, WhyNotCodes.NoneOver);
                    json.Ratio("chance", kind.Chance, WhyNotCodes.OneBead);
                }
        using (json.Array("curve"))
            foreach (var point in r.Curve)
                using (json.Object())
                {
                    json.Mm("wristMm", point.WristMm);
                    json.Mm("wornCircumferenceMm", point.CircumferenceMm);
                    json.Mm("wirePerTurnMm", point.WirePerTurnMm);
                    json.Ratio("turnsWorn", point.TurnsWorn);
                    json.Ratio("cover", point.Cover, WhyNotCodes.NotOnThisWrist);
                    json.Ratio("coverExact", point.CoverExact, WhyNotCodes.NotOnThisWrist);
                    json.Ratio("relative", point.Relative, WhyNotCodes.NotOnThisWrist);
                    json.YesOrNo("failsWish", point.FailsWish);
                }

        void Reading(string name, double? value) => json.Ratio(name, value, report.WhyNull.GetValueOrDefault(name));
    }

    private static void Wire(JsonPage json, WireReport wire)
    {
        using var scope = json.Object("wire");
        json.Mm("beadedMm", wire.BeadedMm);
        json.Mm("endsMm", wire.EndsMm);
        json.Mm("gripMm", wire.GripMm);
        json.Mm("spareMm", wire.SpareMm);
        json.Mm("cutMm", wire.CutMm);
        json.Ratio("loops", wire.Loops);
        json.G("loopMassG", wire.LoopMassG, WhyNotCodes.SteelUnknown);
        json.Mm("trimStartMm", wire.TrimStartMm);
        json.Mm("trimFinishMm", wire.TrimFinishMm);
        json.Mm("slackMm", wire.SlackMm, WhyNotCodes.NotCut);
    }

    private static void Focal(JsonPage json, FocalPlace? focal)
    {
        if (focal is null)
        {
            json.Null("focal", WhyNotCodes.NoFocal);
            return;
        }
        using var scope = json.Object("focal");
        json.Whole("index", focal.Index);
        json.Text("bead", focal.BeadId);
        json.Whole("turn", focal.Turn);
        json.Deg("angleDeg", focal.AngleDeg);
        json.Mm("offMm", focal.OffMm);
        json.Deg("moveStartDeg", focal.MoveStartDeg);
        json.Deg("angleFromDeg", focal.AngleFromDeg);
        json.Deg("angleToDeg", focal.AngleToDeg);
    }

    private static void Repeat(JsonPage json, RepeatDrift? repeat)
    {
        if (repeat is null)
        {
            json.Null("repeat", WhyNotCodes.NoRepeat);
            return;
        }
        using var scope = json.Object("repeat");
        json.Whole("beads", repeat.Beads);
        json.Mm("lengthMm", repeat.LengthMm);
        json.Ratio("drift", repeat.Drift);
        json.Mm("driftMm", repeat.DriftMm);
    }

    private static void Spread(JsonPage json, Reckoned r)
    {
        var spread = r.Spread;
        using var scope = json.Object("spread");
        json.Whole("draws", spread.Draws);
        json.Mm("lengthSdMm", spread.LengthSdMm);
        Band("lengthMm", spread.LengthMm, json.Mm, null);
        json.Ratio("fitsShare", spread.FitsShare, WhyNotCodes.NothingWanted);
        Band("cover", spread.Cover, json.Ratio, r.LiningUp.WhyNull.GetValueOrDefault("cover", "too-little-over"));
        Band("relative", spread.Relative, json.Ratio, r.LiningUp.WhyNull.GetValueOrDefault("relative", "too-little-over"));
        Band("focalDeg", spread.FocalDeg, json.Deg, WhyNotCodes.NoFocal);

        void Band(string name, SpreadBand? band, Action<string, double?, string?> write, string? why)
        {
            if (band is not { } b)
            {
                json.Null(name, why);
                return;
            }
            using var ends = json.Object(name);
            write("from", b.From, null);
            write("to", b.To, null);
        }
    }

    private static void Strength(JsonPage json, StrengthReport? strength)
    {
        if (strength is null)
        {
            json.Null("strength", WhyNotCodes.SteelUnknown);
            return;
        }
        using var scope = json.Object("strength");
        json.Mm("openingMomentNmm", strength.OpeningMomentNmm);
        json.Mm("stressMPa", strength.StressMPa);
        json.Mm("leastStrengthMPa", strength.LeastStrengthMPa, WhyNotCodes.StrengthUnknown);
        json.Ratio("share", strength.Share, WhyNotCodes.StrengthUnknown);
    }

    private static void Mass(JsonPage json, MassReport mass)
    {
        var whole = mass.BeadsG is null ? WhyNotCodes.MassUnknown : WhyNotCodes.SteelUnknown;
        using var scope = json.Object("mass");
        json.G("totalG", mass.TotalG, whole);
        json.G("beadsG", mass.BeadsG, WhyNotCodes.MassUnknown);
        json.G("wireG", mass.WireG, WhyNotCodes.SteelUnknown);
        json.G("perTurnG", mass.PerTurnG, whole);
        json.G("postageG", mass.PostageG, whole);
        using var unknown = json.Array("unknownBeads");
        foreach (var bead in mass.UnknownBeads) json.Item(bead);
    }

    private static void Wrists(JsonPage json, WristsServed wrists)
    {
        using var scope = json.Object("wrists");
        json.Mm("fromMm", wrists.FromMm, WhyNotCodes.NoWrist);
        json.Mm("toMm", wrists.ToMm, WhyNotCodes.NoWrist);
        using var fails = json.Array("wishFails");
        foreach (var stretch in wrists.WishFails)
            using (json.Object())
            {
                json.Mm("fromMm", stretch.FromMm);
                json.Mm("toMm", stretch.ToMm);
                json.YesOrNo("failsMix", stretch.FailsMix);
                json.YesOrNo("failsColumns", stretch.FailsColumns);
            }
    }

    private static void Order(JsonPage json, Reckoned r)
    {
        using var array = json.Array("order");
        for (var i = 0; i < r.Lie.Count; i++)
        {
            var bead = r.Piece.Beads[r.Piece.Order.Kinds[i]];
            using var scope = json.Object();
            json.Whole("index", i);
            json.Text("bead", bead.Id);
            json.Whole("turn", r.Lie.Turn(i));
            json.Mm("startMm", r.Lie.StartsMm[i]);
            json.Mm("lengthMm", bead.LengthMm);
            json.Mm("shareMm", r.Lie.SharesMm[i]);
            json.Deg("angleDeg", r.Lie.AngleDeg(i));
        }
    }

    internal static void Notices(JsonPage json, Reckoned r, BeadNames names, Language language)
    {
        using var array = json.Array("notices");
        foreach (var notice in r.Notices)
        {
            var said = language.Say(notice, names.Of);
            using var scope = json.Object();
            json.Text("code", notice.Code);
            json.Text("severity", Words.Of(notice.Severity));
            json.Text("message", said.Message);
            json.Text("whatToDo", said.WhatToDo);
            json.Text("bead", notice.BeadId);
            using (json.Object("values"))
            {
                foreach (var (name, number) in notice.Numbers) json.ByUnit(name, number);
                foreach (var (name, word) in notice.Words) json.Text(name, word);
            }
            using var positions = json.Array("positions");
            foreach (var position in notice.Positions) json.Item(position);
        }
    }
}
