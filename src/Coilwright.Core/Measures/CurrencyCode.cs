namespace Coilwright.Core.Measures;

/// <summary>The form of a currency: three capital letters, as ISO 4217 has them. Whether there is such a currency is not looked up.</summary>
public static class CurrencyCode
{
    /// <summary>How many letters it has.</summary>
    public const int Letters = 3;

    /// <summary>Whether a text has that form.</summary>
    public static bool Is(string text) => text.Length == Letters && text.All(char.IsAsciiLetterUpper);
}
