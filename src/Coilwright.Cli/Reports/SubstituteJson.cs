using Coilwright.Core.Readings;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Beads that may stand in for another as JSON, <c>coilwright.substitute/1</c>: described in docs/substitute.schema.json, and promised to outsiders.</summary>
internal static class SubstituteJson
{
    public const string Schema = "coilwright.substitute/1";

    /// <summary>The page.</summary>
    public static byte[] Of(SubstitutesFound found, Language language)
    {
        using var json = new JsonPage(language);
        var sentences = new SubstituteSentences(found, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("bead", found.Bead.Id);
            json.Whole("need", found.Now.Piece.Order.Kinds.Count(k => k == found.Kind));
            using (json.Object("now")) Piece(json, found.Now);
            using (json.Array("substitutes"))
                foreach (var s in found.All)
                    using (json.Object())
                    {
                        json.Text("bead", s.Bead.Id);
                        json.Text("name", s.Bead.Name);
                        json.Whole("have", s.Have);
                        json.YesOrNo("enough", s.IsEnough);
                        json.YesOrNo("bringsStop", s.BringsStop);
                        using (json.Object("distance"))
                        {
                            json.Ratio("total", s.Likeness.Total);
                            json.Ratio("length", s.Likeness.Length);
                            json.Ratio("across", s.Likeness.Across);
                            json.Ratio("bore", s.Likeness.Bore);
                            json.Ratio("colour", s.Likeness.Colour);
                            json.Ratio("shape", s.Likeness.Shape);
                            json.Ratio("material", s.Likeness.Material);
                        }
                        using (json.Object("piece")) Piece(json, s.With);
                        json.Text("says", sentences.Differs(s));
                    }
        }
        return json.ToBytes();
    }

    private static void Piece(JsonPage json, Reckoned reckoned)
    {
        json.Mm("beadedMm", reckoned.Lie.BeadedMm);
        json.Ratio("turnsWorn", reckoned.Fit.TurnsWorn);
        json.YesOrNo("fits", reckoned.Fit.Fits);
        json.Mm("cutMm", reckoned.Wire.CutMm);
        json.Ratio("cover", reckoned.LiningUp.Cover, reckoned.LiningUp.WhyNull.GetValueOrDefault("cover", "too-little-over"));
        json.G("totalG", reckoned.Mass.TotalG, WhyNotCodes.MassUnknown);
    }
}
