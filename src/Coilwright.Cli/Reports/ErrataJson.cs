using Coilwright.Core.Making;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What a pattern says otherwise, as JSON, <c>coilwright.errata/1</c>: described in docs/errata.schema.json, and promised to outsiders.</summary>
internal static class ErrataJson
{
    public const string Schema = "coilwright.errata/1";

    public static byte[] Of(PatternChanges changes, IEnumerable<string> files, Language language)
    {
        using var json = new JsonPage(language);
        var said = new ErrataSentences(changes, language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Text("title", changes.New.Piece.Title);
            json.Text("oldTitle", changes.Old.Piece.Title);
            json.Text("language", language.Code);
            json.YesOrNo("isEmpty", said.IsEmpty);
            using (json.Array("beads"))
                foreach (var kind in changes.Kinds)
                    using (json.Object())
                    {
                        json.Text("bead", kind.Bead);
                        json.Text("oldLetter", kind.OldLetter);
                        json.Text("newLetter", kind.NewLetter);
                        json.Whole("old", kind.Old);
                        json.Whole("new", kind.New);
                    }
            Corrections(json, "figures", said.Figures());
            Corrections(json, "steps", said.Steps());
            Corrections(json, "checks", said.Checks());
            using (json.Array("mindFirst"))
                foreach (var sentence in said.MindFirst()) json.Item(sentence);
            using (json.Array("settled"))
                foreach (var note in said.Settled()) json.Item(note);
            using (json.Array("files"))
                foreach (var file in files) json.Item(file);
        }
        return json.ToBytes();
    }

    private static void Corrections(JsonPage json, string name, IEnumerable<Correction> corrections)
    {
        using var list = json.Array(name);
        foreach (var correction in corrections)
            using (json.Object())
            {
                json.Text("what", correction.What);
                json.Text("old", correction.Old);
                json.Text("new", correction.New);
            }
    }
}
