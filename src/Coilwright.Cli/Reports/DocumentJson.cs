using Coilwright.Core.Readings;
using Coilwright.Documents.Pages;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What the answers of all verbs have in common that write a document of one piece.</summary>
internal static class DocumentJson
{
    /// <summary>Which piece it is, on which wrist, and how it is printed.</summary>
    public static void Head(JsonPage json, string schema, Reckoned r, PageSetup setup, Language language)
    {
        json.Text("schema", schema);
        json.Text("title", r.Piece.Title);
        json.Mm("wristMm", r.WristMm);
        json.Text("paper", setup.Paper.Name.ToLowerInvariant());
        json.Text("language", language.Code);
        json.YesOrNo("largePrint", setup.LargePrint);
        json.YesOrNo("greyscale", setup.Greyscale);
        json.YesOrNo("inkSaving", setup.InkSaving);
    }
}
