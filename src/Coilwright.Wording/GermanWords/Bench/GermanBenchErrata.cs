namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ErrataPageWords"/>.</summary>
internal static class GermanBenchErrata
{
    internal static ErrataPageWords Make() => new()
    {
        Heading = "Berichtigungen",
        Lead = "Was in einer Fassung der Anleitung falsch ist, die schon in Händen ist, und was in einer späteren steht: zum Drucken und Verschicken.",
        Old = "Die Fassung, die andere haben",
        New = "Die richtige Fassung",
        Look = "Die Berichtigung, wie sie gespeichert wird",
        Making = "Die beiden Fassungen werden verglichen.",
        NotMade = "Die Berichtigung lässt sich nicht herstellen:",
        OneAlone = "Bisher gibt es nur eine Fassung. Jede Änderung am Stück oder an seiner Anleitung ergibt eine weitere.",
        Since = "Berichtigungen seitdem",
    };
}
