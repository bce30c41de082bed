namespace Coilwright.Core.Faults;

// Offers, what is in stock, and units of sale.
public static partial class FaultCodes
{
    /// <summary>An offer says no price.</summary>
    public const string BuyingNoPrice = "buying.no-price";

    /// <summary>The first price step is not from one unit.</summary>
    public const string BuyingFirstStep = "buying.first-step";

    /// <summary>A price step is from no more units than the one from {before} on.</summary>
    public const string BuyingStepsOverlap = "buying.steps-overlap";

    /// <summary>A supplier is listed twice.</summary>
    public const string BuyingSupplierTwice = "buying.supplier-twice";

    /// <summary>Money is given more finely than in ten-thousandths.</summary>
    public const string BuyingTooFine = "buying.too-fine";

    /// <summary>The bead of an item of stock has another id than the item, which is {key}.</summary>
    public const string StockBeadId = "stock.bead-id";

    /// <summary>A part of one is asked for, where things are counted one by one.</summary>
    public const string StockWhole = "stock.whole";

    /// <summary>A cost has no currency of three capitals, or a currency no cost.</summary>
    public const string StockCurrencyForm = "stock.currency-form";

    /// <summary>Lots of {item} are in {other} so far, and this one is not.</summary>
    public const string StockCurrencyDiffers = "stock.currency-differs";

    /// <summary>More of {item} is asked for than is free: {free} {unit}, that is {onHand} less the {reserved} that are reserved.</summary>
    public const string StockNotEnough = "stock.not-enough";

    /// <summary>More is asked for than is left of a lot of {item}: {there} {unit}.</summary>
    public const string StockLotNotEnough = "stock.lot-not-enough";

    /// <summary>More is asked for than is left of a reservation of {item}: {left} {unit}.</summary>
    public const string StockReservationLess = "stock.reservation-less";

    /// <summary>Fewer of {item} were counted than are reserved: {left} {unit} would be there, {reserved} are reserved.</summary>
    public const string StockReserved = "stock.reserved";

    /// <summary>More of {item} comes back than went out: {out} {unit}.</summary>
    public const string StockMoreThanOut = "stock.more-than-out";

    /// <summary>There is no such lot of {item}.</summary>
    public const string StockNoLot = "stock.no-lot";

    /// <summary>There is no such reservation of {item}, or nothing is left of it.</summary>
    public const string StockNoReservation = "stock.no-reservation";

    /// <summary>There is no item of this key; {nearest} is the likeliest.</summary>
    public const string StockNoItem = "stock.no-item";

    /// <summary>An item of this key is there already: {item}.</summary>
    public const string StockThere = "stock.there";

    /// <summary>An item is counted in another unit than it was.</summary>
    public const string StockUnitDiffers = "stock.unit-differs";

    /// <summary>A movement has the id of another that was done: of {item}.</summary>
    public const string StockIdTaken = "stock.id-taken";

    /// <summary>A supplier's word for a unit of sale may be {one} or {other}, and is not guessed.</summary>
    public const string SaleUnitUnclear = "sale-unit.unclear";

    /// <summary>What a unit of sale holds is not known; {needs} is the field that would tell.</summary>
    public const string SaleUnitNeeds = "sale-unit.needs";

    /// <summary>An item is not sold by such a unit: it is counted in {countedIn}.</summary>
    public const string SaleUnitOther = "sale-unit.other";

    /// <summary>What a unit of sale holds comes to not even one.</summary>
    public const string SaleUnitHoldsNone = "sale-unit.holds-none";

    /// <summary>An item of stock cannot be read: {item}; {detail} is the code of what is wrong in it.</summary>
    public const string StockItemUnreadable = "stock.item-unreadable";
}
