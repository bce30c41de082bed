namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="OrderViewWords"/>.</summary>
internal static class EnglishBenchOrder
{
    internal static OrderViewWords Make() => new()
    {
        Heading = "Stringing order",
        View = "Shown",
        AsCards = "as cards",
        AsText = "as text",
        Between = "between",
    };
}
