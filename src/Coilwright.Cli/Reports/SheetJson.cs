using Coilwright.Core.Costing;
using Coilwright.Core.Readings;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What a pattern sheet was written to, as JSON, <c>coilwright.sheet/1</c>: described in docs/sheet.schema.json, and promised to outsiders.</summary>
internal static class SheetJson
{
    public const string Schema = "coilwright.sheet/1";

    public static byte[] Of(Reckoned r, PageSetup setup, IEnumerable<string> files, Language language)
    {
        using var json = new JsonPage(language);
        using (json.Object())
        {
            DocumentJson.Head(json, Schema, r, setup, language);
            using (json.Array("files"))
                foreach (var file in files) json.Item(file);
            Materials(json, r);
            ReckonJson.Notices(json, r, new BeadNames(r), language);
        }
        return json.ToBytes();
    }

    private static void Materials(JsonPage json, Reckoned r)
    {
        var list = MaterialsList.Of(r.Piece);
        using var scope = json.Object("materials");
        using (json.Array("beads"))
            foreach (var (line, kind) in list.Lines.Zip(r.Counts))
                using (json.Object())
                {
                    json.Text("bead", line.Bead.Id);
                    json.Text("letter", kind.Letter);
                    json.Whole("use", line.Use);
                    json.Whole("packs", line.Packs, WhyNotCodes.PackUnknown);
                    json.Whole("bought", line.Bought, WhyNotCodes.PackUnknown);
                    json.Money("cost", line.Cost, line.Packs is null ? WhyNotCodes.PackUnknown : WhyNotCodes.PriceUnknown);
                }
        json.Money("knownCost", list.KnownCost, WhyNotCodes.PriceUnknown);
        json.Whole("unpriced", list.Unpriced);
    }
}
