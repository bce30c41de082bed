using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace Coilwright.Documents.Tests.Rendering;

/// <summary>Opens a page in a real browser without a window and lets a script answer a question about it.</summary>
public static partial class Chromium
{
    /// <summary>The browser; another one than Debian's is named by COILWRIGHT_CHROMIUM.</summary>
    public static string Program { get; } = Environment.GetEnvironmentVariable("COILWRIGHT_CHROMIUM") ?? "/usr/bin/chromium";

    /// <summary>What the script's last expression, or the promise it gives, comes to as JSON.</summary>
    public static JsonElement Ask(string html, int widthPx, string script)
    {
        using var place = new Workplace();
        var asking = $"""
            <script>
            (async () => {script})().then(a => a, e => ({"{"} error: String(e) {"}"})).then(a => {"{"}
              const at = document.createElement("script"); at.type = "application/json"; at.id = "answer";
              at.textContent = btoa(unescape(encodeURIComponent(JSON.stringify(a)))); document.body.appendChild(at);
            {"}"});
            </script>
            </body>
            """;
        var end = html.LastIndexOf("</body>", StringComparison.Ordinal);
        var file = place.File("page.html", Encoding.UTF8.GetBytes(html[..end] + asking + html[(end + 7)..]));
        var dom = Programs.Output(Program, "--no-sandbox", "--headless", "--disable-gpu", "--disable-background-networking",
            "--user-data-dir=" + place.File("profile"), "--window-size=" + widthPx.ToString(CultureInfo.InvariantCulture) + ",900",
            "--virtual-time-budget=20000", "--dump-dom", "file://" + file);
        var answer = Answer().Match(dom);
        Assert.True(answer.Success, "The page gave no answer.");
        return JsonDocument.Parse(Convert.FromBase64String(answer.Groups[1].Value)).RootElement.Clone();
    }

    [GeneratedRegex("id=\"answer\">([A-Za-z0-9+/=]*)</script>")]
    private static partial Regex Answer();
}
