using Coilwright.Core.Palettes;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>How colours go together as JSON, <c>coilwright.palette/1</c>: described in docs/palette.schema.json, and promised to outsiders.</summary>
internal static class PaletteJson
{
    public const string Schema = "coilwright.palette/1";

    /// <summary>The page.</summary>
    public static byte[] Of(PaletteReport report, Language language)
    {
        using var json = new JsonPage(language);
        var sentences = new PaletteSentences(report, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", report.Reckoned.Piece.Title);
            json.Mm("wristMm", report.Reckoned.WristMm);
            json.Ratio("vanishDifference", report.Reckoned.Choices.VanishDifference);
            json.Ratio("greyStep", report.Reckoned.Choices.GreyStep);
            json.Ratio("alongMean", report.AlongMean, WhyNotCodes.NoColoursBeside);
            json.Ratio("acrossMean", report.AcrossMean, WhyNotCodes.NoColoursBeside);
            using (json.Array("kinds"))
                foreach (var kind in report.Kinds)
                    using (json.Object())
                    {
                        json.Text("letter", kind.Kind.Letter);
                        json.Text("bead", kind.Kind.Bead.Id);
                        using (json.Object("lab"))
                        {
                            json.Ratio("l", kind.Lab.L);
                            json.Ratio("a", kind.Lab.A);
                            json.Ratio("b", kind.Lab.B);
                        }
                        json.Ratio("greyL", kind.GreyL);
                        using (json.Object("colours"))
                            foreach (var sight in Enum.GetValues<Sight>())
                                using (json.Array(Words.Of(sight)))
                                    foreach (var colour in kind.Seen(sight)) json.Item(colour.ToString());
                    }
            using (json.Array("withoutColour"))
                foreach (var kind in report.WithoutColour) json.Item(kind.Bead.Id);
            using (json.Array("pairs"))
                foreach (var pair in report.Pairs)
                    using (json.Object())
                    {
                        json.Text("one", pair.One.Kind.Bead.Id);
                        json.Text("other", pair.Other.Kind.Bead.Id);
                        json.YesOrNo("beside", pair.AreBeside);
                        json.Whole("places", pair.Places);
                        json.Mm("overMm", pair.OverMm);
                        using (json.Object("seen"))
                            foreach (var seen in pair.Seen)
                                using (json.Object(Words.Of(seen.Sight)))
                                {
                                    json.Ratio("least", seen.Least);
                                    json.Ratio("most", seen.Most);
                                    json.Text("told", Words.Of(seen.Told));
                                }
                    }
            using (json.Object("says"))
                foreach (var sight in Enum.GetValues<Sight>())
                    using (json.Array(Words.Of(sight)))
                        foreach (var sentence in sentences.Lost(sight)) json.Item(sentence);
        }
        return json.ToBytes();
    }
}
