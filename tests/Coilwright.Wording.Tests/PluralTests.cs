using System.Diagnostics;
using System.Globalization;
using System.Text.Json;

namespace Coilwright.Wording.Tests;

/// <summary>Plurals against the outside: the rules of the Unicode CLDR, as Node.js carries them (<c>Intl.PluralRules</c>); Node builds the typeface too, so it is there.</summary>
public class PluralTests
{
    // CLDR's own order of the categories; a template gives its forms in this order, those that the language has.
    private static readonly string[] Categories = ["zero", "one", "two", "few", "many", "other"];

    // Whole numbers as counts, and figures as they are printed: at most two decimals, no nought at the end.
    private static readonly string[] Numbers = [.. Enumerable.Range(0, 300).Select(n => n.ToString(CultureInfo.InvariantCulture)),
        "1000", "1000000", "0.5", "0.01", "0.99", "1.5", "1.01", "2.25", "3.94", "10.1", "21.1", "100.01"];

    public static TheoryData<string> Codes_ => [.. Languages.All.Select(l => l.Code)];

    [Theory, MemberData(nameof(Codes_))]
    public void A_language_chooses_its_plural_form_as_CLDR_does(string code)
    {
        var language = Languages.Find(code)!;
        // The number of decimals that are printed is part of the rule (CLDR's v), so it is handed over with each number.
        var script = $$"""
            const numbers = {{JsonSerializer.Serialize(Numbers)}};
            const of = text => { const d = (text.split('.')[1] || '').length; return new Intl.PluralRules('{{code}}', { minimumFractionDigits: d }).select(Number(text)); };
            console.log(JSON.stringify({ has: new Intl.PluralRules('{{code}}').resolvedOptions().pluralCategories, is: numbers.map(of) }));
            """;
        using var answer = JsonDocument.Parse(Node(script));
        var has = answer.RootElement.GetProperty("has").EnumerateArray().Select(c => c.GetString()!).OrderBy(c => Array.IndexOf(Categories, c)).ToList();
        var chosen = answer.RootElement.GetProperty("is").EnumerateArray().Select(c => has.IndexOf(c.GetString()!));
        Assert.Equal(Numbers.Zip(chosen), Numbers.Select(n => (n, language.PluralForm(n))));
    }

    private static string Node(string script)
    {
        using var node = Process.Start(new ProcessStartInfo("node", ["-e", script]) { RedirectStandardOutput = true })!;
        var text = node.StandardOutput.ReadToEnd();
        node.WaitForExit();
        Assert.Equal(0, node.ExitCode);
        return text;
    }
}
