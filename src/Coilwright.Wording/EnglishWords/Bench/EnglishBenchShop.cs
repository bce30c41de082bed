namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="ShopPageWords"/>.</summary>
internal static class EnglishBenchShop
{
    internal static ShopPageWords Make() => new()
    {
        Heading = "Shopping",
        Lead = "Choose what you want to make. Beads are added up over all pieces, less what is in stock, and planned in whole packs from whoever sells them for the least in all.",
        SparesHeading = "Spares and stock",
        SparesHint = "For beads that break or are badly drilled.",
        SparePercent = "Of every hundred beads",
        SparePerPiece = "With each piece, of every bead",
        UseStock = "Use what is in stock first",
        PricesHeading = "Prices",
        PricesKept = "{offers} {offers:offer|offers} of {suppliers} {suppliers:supplier|suppliers}, kept on {date}.",
        SupplierDays = "How long suppliers take",
        SupplierDaysHint = "Days from ordering until the goods are here, counted on the calendar; 0 where you take them with you. Empty: not told.",
        PricesNone = "None yet: the pack and price that stand with each bead count.",
        BringPrices = "Bring in a file of prices",
        Planning = "Looking for the cheapest way…",
        NotPlanned = "This could not be planned.",
        ItCame = "It has come: put it into stock",
        NoCurrency = "The prices name no currency, so the lots will have no cost.",
        Received = "{lots} {lots:lot is|lots are} in stock now.",
        NotReceived = "It was not put into stock.",
        LookForMore = "Look where buying a little more makes more",
        SaveCsv = "Save as CSV",
        SaveXlsx = "Save as XLSX",
    };
}
