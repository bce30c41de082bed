using Coilwright.Core.Readings;
using Coilwright.Documents.Packs;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What a pack was written to, as JSON, <c>coilwright.publish/1</c>: described in docs/publish.schema.json, and promised to outsiders. What is in it, the pack's own manifest says too.</summary>
internal static class PublishJson
{
    public const string Schema = "coilwright.publish/1";

    public static byte[] Of(Reckoned reckoned, MadePack pack, string target, Language language)
    {
        using var json = new JsonPage(language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", reckoned.Piece.Title);
            json.Text("file", target);
            json.Whole("bytes", pack.Zip.Length);
            json.Text("language", language.Code);
            using (json.Array("files"))
                foreach (var file in pack.Files)
                    using (json.Object())
                    {
                        json.Text("name", file.Name);
                        json.Whole("bytes", file.Bytes.Length);
                        json.Text("sha256", file.Sha256);
                    }
            ReckonJson.Notices(json, reckoned, new BeadNames(reckoned), language);
        }
        return json.ToBytes();
    }
}
