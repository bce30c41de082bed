namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="QuotePageWords"/>.</summary>
internal static class GermanBenchQuote
{
    internal static QuotePageWords Make() => new()
    {
        Heading = "Angebot",
        Lead = "Jemand möchte ein eigenes Stück: Handgelenk und Tag nennen, und es steht da, was es braucht, wann die Perlen da sind und was zu verlangen ist. Zuerst steht, was hinausgeht, dann, woher es kommt.",
        AskHeading = "Was bestellt ist",
        For = "Wer fragt (wenn gewünscht)",
        Wrist = "Das Handgelenk",
        Count = "Wie viele gleiche",
        Rule = "Preis nach",
        Deposit = "Anzahlung, Prozent",
        On = "Tag des Angebots",
        Until = "Gilt bis",
        Working = "Wird ausgerechnet…",
        NotMade = "Es lässt sich nicht ausrechnen:",
        SavePdf = "Angebot als PDF speichern",
        SaveWorkings = "Rechnung als PDF speichern",
        SavePage = "Angebot als Webseite speichern",
        SaveWorkingsPage = "Rechnung als Webseite speichern",
        Swaps = "Andere Perlen an ihrer Stelle",
        SwapsHint = "Nur für diese Bestellung: Perlen des Stücks und solche im Vorrat. Das Stück bleibt, wie es ist.",
        AsItIs = "wie es ist",
        OpenHint = "Eine Zahl öffnen, um zu sehen, woher sie kommt.",
    };
}
