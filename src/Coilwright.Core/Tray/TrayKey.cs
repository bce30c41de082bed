using System.Text;

namespace Coilwright.Core.Tray;

/// <summary>The key of a kind out of what a maker's own list calls it: <c>PB 1234/Ü</c> is <c>pb-1234-u</c>.</summary>
public static class TrayKey
{
    /// <summary>The key: letters and digits without accents, a dash for each run of other signs; one that would begin with a digit begins with <c>b-</c>. Empty
    /// for a text without a letter or digit that a key may have. What is too long stays so, and is told as that.</summary>
    /// <param name="text">An article number or a name.</param>
    public static string Of(string text)
    {
        var key = new StringBuilder(text.Length);
        foreach (var sign in Folded.Of(text))
            if (char.IsAsciiLetterLower(sign) || char.IsAsciiDigit(sign)) key.Append(sign);
            else if (key.Length > 0 && key[^1] != '-') key.Append('-');
        var trimmed = key.ToString().TrimEnd('-');
        return trimmed.Length > 0 && char.IsAsciiDigit(trimmed[0]) ? "b-" + trimmed : trimmed;
    }
}
