using Coilwright.Core.Listings;
using Coilwright.Core.Measures;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>A listing as JSON, <c>coilwright.listing/1</c>: described in docs/listing.schema.json, and promised to outsiders.</summary>
internal static class ListingJson
{
    public const string Schema = "coilwright.listing/1";

    /// <summary>The page.</summary>
    public static byte[] Of(Listed listed, Language language)
    {
        using var json = new JsonPage(language);
        var (listing, sentences) = (listed.Listing, new ListingSentences(listed.Listing, language));
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("piece", listed.Name);
            json.Text("title", sentences.TitleLine());
            json.Text("summary", sentences.Summary());
            json.Text("text", sentences.Text());
            json.Whole("beads", listing.Beads);
            json.Ratio("turns", listing.Reckoned.Fit.TurnsWorn);
            Length(json, "length", listing.LengthMm);
            Length(json, "width", listing.WidthMm);
            Length(json, "thickness", listing.ThicknessMm);
            Length(json, "inside", listing.InsideMm);
            Length(json, "insideAcross", listing.InsideAcrossMm);
            json.G("massG", listing.MassG, listing.Reckoned.Mass.BeadsG is null ? WhyNotCodes.MassUnknown : WhyNotCodes.SteelUnknown);
            json.Ratio("massOz", listing.MassG / Ounce.Grams, listing.Reckoned.Mass.BeadsG is null ? WhyNotCodes.MassUnknown : WhyNotCodes.SteelUnknown);
            json.Mm("suitsFromMm", listing.Reckoned.Wrists.FromMm);
            json.Mm("suitsToMm", listing.Reckoned.Wrists.ToMm);
            json.Mm("suitsBandMm", listing.Reckoned.Worn.BandMm);
            using (json.Array("materials"))
                foreach (var material in listing.Materials)
                    using (json.Object())
                    {
                        json.Text("material", material.Material?.Key ?? material.Other);
                        json.Whole("beads", material.Count);
                        json.YesOrNo("isMetal", material.Material?.IsMetal);
                        using (json.Array("kinds"))
                            foreach (var kind in material.Kinds) json.Item(kind.Bead.Id);
                    }
            using (json.Array("finishes"))
                foreach (var finish in listing.Finishes) json.Item(finish);
            using (json.Array("smallParts"))
                foreach (var kind in listing.SmallParts) json.Item(kind.Bead.Id);
            using (json.Array("forTheMaker"))
                foreach (var sentence in sentences.ForTheMaker(listed.Cautions.SmallParts)) json.Item(sentence);
            using (json.Array("metalLimits"))
                foreach (var limit in listed.Cautions.Metals)
                    using (json.Object())
                    {
                        json.Text("key", limit.Key);
                        json.Text("metal", limit.Metal);
                        json.Ratio("value", limit.Value);
                        json.Text("unit", limit.Unit);
                        json.Text("source", limit.Source);
                    }
            if (listed.Fit is { } fit) Fit(json, fit, language); else json.Null("fit", null);
        }
        return json.ToBytes();
    }

    private static void Fit(JsonPage json, FitAnswer fit, Language language)
    {
        using var scope = json.Object("fit");
        json.Mm("wristMm", fit.On.WristMm);
        json.Text("answer", Words.Of(fit.Answer));
        json.Text("because", Words.Of(fit.Why));
        json.Ratio("turns", fit.On.Fit.TurnsWorn);
        json.Ratio("turnsFrom", fit.On.Fit.TurnsWornFrom);
        json.Ratio("turnsTo", fit.On.Fit.TurnsWornTo);
        json.Ratio("turnsDesigned", fit.DesignedTurns);
        json.Mm("endsOverlapMm", fit.On.Fit.EndsOverlapMm);
        json.Deg("focalAngleDeg", fit.On.Focal?.AngleDeg);
        json.Text("liningUp", Words.Of(fit.On.LiningUp.Word));
        json.Mm("moreBeadsMm", fit.MoreBeadsMm);
        json.YesOrNo("isNearBorder", fit.IsNearBorder);
        json.Mm("bandMm", fit.BandMm);
        json.Text("text", new FitAnswerSentences(fit, language).Text());
    }

    private static void Length(JsonPage json, string name, double mm)
    {
        json.Mm(name + "Mm", mm);
        json.Ratio(name + "In", mm / InchFraction.MmPerInch);
    }
}
