namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="OrderViewWords"/>.</summary>
internal static class GermanBenchOrder
{
    internal static OrderViewWords Make() => new()
    {
        Heading = "Fädelreihenfolge",
        View = "Ansicht",
        AsCards = "als Karten",
        AsText = "als Text",
        Between = "dazwischen",
    };
}
