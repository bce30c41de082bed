namespace Coilwright.Wording;

/// <summary>The page of shopping.</summary>
public sealed record ShopPageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Over the spares.</summary>
    public required string SparesHeading { get; init; }

    /// <summary>What spares are.</summary>
    public required string SparesHint { get; init; }

    /// <summary>Spares in a hundred.</summary>
    public required string SparePercent { get; init; }

    /// <summary>Spares with each piece.</summary>
    public required string SparePerPiece { get; init; }

    /// <summary>Whether stock is used.</summary>
    public required string UseStock { get; init; }

    /// <summary>Over the prices.</summary>
    public required string PricesHeading { get; init; }

    /// <summary>The prices that are kept: {offers} of {suppliers}, since {date}.</summary>
    public required string PricesKept { get; init; }

    /// <summary>No prices are kept.</summary>
    public required string PricesNone { get; init; }

    /// <summary>Brings a file of prices in.</summary>
    public required string BringPrices { get; init; }

    /// <summary>Heading of the days that suppliers take.</summary>
    public required string SupplierDays { get; init; }

    /// <summary>What they are.</summary>
    public required string SupplierDaysHint { get; init; }

    /// <summary>It is being planned.</summary>
    public required string Planning { get; init; }

    /// <summary>It could not be planned.</summary>
    public required string NotPlanned { get; init; }

    /// <summary>Puts what was bought into stock.</summary>
    public required string ItCame { get; init; }

    /// <summary>Without a currency lots have no cost.</summary>
    public required string NoCurrency { get; init; }

    /// <summary>So many lots are in stock now: {lots}.</summary>
    public required string Received { get; init; }

    /// <summary>It was not put into stock.</summary>
    public required string NotReceived { get; init; }

    /// <summary>Looks where a little more makes more.</summary>
    public required string LookForMore { get; init; }

    /// <summary>Saves the list as comma-separated values.</summary>
    public required string SaveCsv { get; init; }

    /// <summary>Saves the list as a workbook.</summary>
    public required string SaveXlsx { get; init; }
}
