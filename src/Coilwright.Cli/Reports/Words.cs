namespace Coilwright.Cli.Reports;

/// <summary>The fixed words of the JSON contract for the core's choices: their own names in camel case.</summary>
internal static class Words
{
    public static string Of<T>(T value) where T : struct, Enum
    {
        var name = value.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
