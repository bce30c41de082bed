using System.Text.RegularExpressions;

namespace Coilwright.Cli.Tests;

/// <summary>By what a written page shows how it was asked for.</summary>
internal static partial class PaperMarks
{
    public static bool IsLarge(string page) => page.Contains("font-size: 150%", StringComparison.Ordinal);

    /// <summary>Every colour has as much red as green and blue.</summary>
    public static bool IsGrey(string page) => Colour().Matches(page).All(c => c.Groups[1].Value == c.Groups[2].Value && c.Groups[2].Value == c.Groups[3].Value);

    /// <summary>Notes stand on the white of the paper.</summary>
    public static bool HasNoGround(string page) => page.Contains("--wash: #ffffff", StringComparison.Ordinal);

    [GeneratedRegex("[\": ]#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})\\b")]
    private static partial Regex Colour();
}
