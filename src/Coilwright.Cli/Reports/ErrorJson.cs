using Coilwright.Core.Faults;
using Coilwright.Wording;

namespace Coilwright.Cli.Reports;

/// <summary>Faults as JSON: the first one in full, all further ones alike under <c>more</c>. Described in docs/error.schema.json.</summary>
internal static class ErrorJson
{
    public static byte[] Of(IReadOnlyList<Fault> faults, string? file, Language language)
    {
        using var json = new JsonPage();
        using (json.Object())
        using (json.Object("error"))
        {
            Write(json, faults[0], file, language);
            using (json.Array("more"))
                foreach (var fault in faults.Skip(1))
                    using (json.Object())
                        Write(json, fault, file, language);
        }
        return json.ToBytes();
    }

    private static void Write(JsonPage json, Fault fault, string? file, Language language)
    {
        var words = language.Say(fault);
        json.Text("code", fault.Code);
        json.Text("message", words.Message);
        json.Text("file", file);
        json.Whole("line", fault.Line == 0 ? null : fault.Line);
        json.Whole("column", fault.Column == 0 ? null : fault.Column);
        json.Text("field", fault.Field.Length == 0 ? null : fault.Field);
        json.Text("value", fault.Value.Length == 0 ? null : fault.Value);
        json.Text("rule", words.Rule);
        json.Text("mend", words.Mend.Length == 0 ? null : words.Mend);
    }
}
