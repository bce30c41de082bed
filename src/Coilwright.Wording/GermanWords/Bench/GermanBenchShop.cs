namespace Coilwright.Wording.GermanWords;

/// <summary>German of <see cref="ShopPageWords"/>.</summary>
internal static class GermanBenchShop
{
    internal static ShopPageWords Make() => new()
    {
        Heading = "Einkauf",
        Lead = "Wähle, was du machen möchtest. Perlen werden über alle Stücke zusammengezählt, abzüglich des Vorrats, und in ganzen Packungen so geplant, dass alles zusammen am wenigsten kostet.",
        SparesHeading = "Ersatz und Vorrat",
        SparesHint = "Für Perlen, die zerbrechen oder schlecht gebohrt sind.",
        SparePercent = "Auf hundert Perlen",
        SparePerPiece = "Zu jedem Stück, von jeder Perle",
        UseStock = "Zuerst den Vorrat verbrauchen",
        PricesHeading = "Preise",
        PricesKept = "{offers} {offers:Angebot|Angebote} von {suppliers} {suppliers:Händler|Händlern}, vom {date}.",
        SupplierDays = "Wie lange Händler brauchen",
        SupplierDaysHint = "Tage von der Bestellung, bis die Ware da ist, nach dem Kalender; 0, wo du sie mitnimmst. Leer: nicht bekannt.",
        PricesNone = "Noch keine: Packung und Preis, die bei jeder Perle stehen, zählen.",
        BringPrices = "Eine Preisdatei übernehmen",
        Planning = "Der billigste Weg wird gesucht …",
        NotPlanned = "Dies konnte nicht geplant werden.",
        ItCame = "Es ist da: in den Vorrat legen",
        NoCurrency = "Die Preise nennen keine Währung, also haben die Posten keine Kosten.",
        Received = "{lots} {lots:Posten ist|Posten sind} jetzt im Vorrat.",
        NotReceived = "Es wurde nicht in den Vorrat gelegt.",
        LookForMore = "Nachsehen, wo ein wenig mehr mehr ergibt",
        SaveCsv = "Als CSV sichern",
        SaveXlsx = "Als XLSX sichern",
    };
}
