using Coilwright.Core.Tray;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>What is told of a tray as JSON, <c>coilwright.tray/1</c>: described in docs/tray.schema.json, and promised to outsiders.</summary>
internal static class TrayJson
{
    public const string Schema = "coilwright.tray/1";

    /// <summary>The page.</summary>
    public static byte[] Of(TrayTold told, Language language)
    {
        using var json = new JsonPage(language);
        using (json.Object())
        {
            json.Text("schema", Schema);
            json.Whole("kinds", told.Kinds);
            if (told.Found is { } found)
                using (json.Object("found"))
                {
                    json.Whole("count", found.Count);
                    using (json.Array("shown"))
                        foreach (var kind in found.Shown)
                            using (json.Object())
                                foreach (var column in TrayColumns.All)
                                    if (column.TextOf(kind) is { Length: > 0 } text) json.Text(column.Name, text);
                }
            if (told.Import is { } import)
                using (json.Object("list"))
                {
                    using (json.Array("columns"))
                        foreach (var (head, column) in told.Columns)
                            using (json.Object())
                            {
                                json.Text("head", head);
                                json.Text("column", column ?? "");
                            }
                    json.Whole("adds", import.Count(TrayRowDoes.Adds));
                    json.Whole("changes", import.Count(TrayRowDoes.Changes));
                    json.Whole("same", import.Count(TrayRowDoes.Nothing));
                    json.Whole("wrong", import.Count(TrayRowDoes.IsWrong));
                    json.YesOrNo("taken", told.Taken);
                    using (json.Array("rows"))
                        foreach (var row in import.Rows)
                            using (json.Object())
                            {
                                json.Whole("line", row.Line);
                                json.Text("id", row.Key);
                                json.Text("does", Words.Of(row.Does));
                                using (json.Array("differences"))
                                    foreach (var change in row.Changes)
                                        using (json.Object())
                                        {
                                            json.Text("column", change.Column);
                                            json.Text("before", change.Before);
                                            json.Text("after", change.After);
                                        }
                                using (json.Array("faults"))
                                    foreach (var fault in row.Faults)
                                        using (json.Object())
                                        {
                                            json.Text("code", fault.Code);
                                            json.Text("message", TrayText.Said(fault, language));
                                        }
                            }
                }
            if (told.File is { } file) json.Text("written", file);
        }
        return json.ToBytes();
    }
}
