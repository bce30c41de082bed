namespace Coilwright.Wording;

/// <summary>Words of shopping for several pieces. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record ShopWords
{
    /// <summary><c>--on</c>.</summary>
    public required string OnOption { get; init; }

    /// <summary>When an order is there: {days} days after it is sent, on {day} when sent on {on}.</summary>
    public required string There { get; init; }

    /// <summary>It is there the same day.</summary>
    public required string ThereAtOnce { get; init; }

    /// <summary>When it is there is not told.</summary>
    public required string ThereUnknown { get; init; }

    /// <summary>What <c>shop</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--spares</c>.</summary>
    public required string SparesOption { get; init; }

    /// <summary><c>--home</c>.</summary>
    public required string HomeOption { get; init; }

    /// <summary><c>--prices</c>.</summary>
    public required string PricesOption { get; init; }

    /// <summary><c>--wire</c>.</summary>
    public required string WireOption { get; init; }

    /// <summary><c>--more</c>.</summary>
    public required string MoreOption { get; init; }

    /// <summary><c>--effort</c>.</summary>
    public required string EffortOption { get; init; }

    /// <summary>A file of prices in the examples.</summary>
    public required string ExamplePrices { get; init; }

    /// <summary>Title of the list.</summary>
    public required string Title { get; init; }

    /// <summary>What it is for: {pieces}.</summary>
    public required string For { get; init; }

    /// <summary>So many of a piece: {count}, {name}.</summary>
    public required string PieceOf { get; init; }

    /// <summary>{other} describes {bead} otherwise than {first}.</summary>
    public required string DescribedOtherwise { get; init; }

    /// <summary>No spares were asked for.</summary>
    public required string NoSpares { get; init; }

    /// <summary>Heading of what is needed.</summary>
    public required string NeedHeading { get; init; }

    /// <summary>Heading of the column of beads.</summary>
    public required string BeadColumn { get; init; }

    /// <summary>Heading of the column of beads used.</summary>
    public required string UseColumn { get; init; }

    /// <summary>Heading of the column of spares.</summary>
    public required string SpareColumn { get; init; }

    /// <summary>Heading of the column of beads at home.</summary>
    public required string HomeColumn { get; init; }

    /// <summary>Heading of the column of beads missing.</summary>
    public required string MissingColumn { get; init; }

    /// <summary>Caps for glued ends.</summary>
    public required string Caps { get; init; }

    /// <summary>Dangles that hang in end loops.</summary>
    public required string Dangles { get; init; }

    /// <summary>Heading of what to buy.</summary>
    public required string BuyHeading { get; init; }

    /// <summary>{missing} of {bead} cannot be had from anybody.</summary>
    public required string CannotBeHad { get; init; }

    /// <summary>Every order would be too small.</summary>
    public required string OrdersTooSmall { get; init; }

    /// <summary>Everything is at home.</summary>
    public required string NothingToBuy { get; init; }

    /// <summary>A supplier, {name}: the goods cost {goods}; sending them {freight}, or nothing where that is {free} or more.</summary>
    public required string Supplier { get; init; }

    /// <summary>Goods for {goods} at the prices that stand in the pieces.</summary>
    public required string UnnamedSupplier { get; init; }

    /// <summary>One thing to buy: {packs} of {bead}, the supplier's {number}, for {cost}.</summary>
    public required string Line { get; init; }

    /// <summary>{count} of {bead} of which no pack is known.</summary>
    public required string LooseLine { get; init; }

    /// <summary>Heading of what has no price.</summary>
    public required string UnpricedHeading { get; init; }

    /// <summary>Heading of the wire.</summary>
    public required string WireHeading { get; init; }

    /// <summary>{count} of the wire {name}, for {cost}.</summary>
    public required string WireLine { get; init; }

    /// <summary>No wire is to be bought.</summary>
    public required string WireNone { get; init; }

    /// <summary>The wire does not come out.</summary>
    public required string WireShort { get; init; }

    /// <summary>Heading of the sum.</summary>
    public required string SumHeading { get; init; }

    /// <summary>No price is known.</summary>
    public required string NoPrices { get; init; }

    /// <summary>What all costs: {total}, in it {freight} for sending and {wire} for wire; {unpriced} things have none.</summary>
    public required string Total { get; init; }

    /// <summary>No plan costs less.</summary>
    public required string Proven { get; init; }

    /// <summary>A cheaper plan may exist, at most {share} cheaper, not under {least}.</summary>
    public required string AtLeast { get; init; }

    /// <summary>Heading of what is left over.</summary>
    public required string LeftHeading { get; init; }

    /// <summary>Heading of the column of how many are left.</summary>
    public required string LeftColumn { get; init; }

    /// <summary>Heading of the column of what those left cost.</summary>
    public required string LeftCostColumn { get; init; }

    /// <summary>What all left-over ones cost: {cost}.</summary>
    public required string LeftInAll { get; init; }

    /// <summary>Heading of what more can be made.</summary>
    public required string MoreHeading { get; init; }

    /// <summary>{count} more of {name} for nothing.</summary>
    public required string MoreOfLeftovers { get; init; }

    /// <summary>{count} more of {name} for {extra}, {each} each.</summary>
    public required string MoreFor { get; init; }

    /// <summary>The same, of plans that are not proven.</summary>
    public required string MoreForPerhaps { get; init; }

    /// <summary>Something cannot be had.</summary>
    public required string MoreUnknown { get; init; }

    /// <summary>What has no price is not counted in.</summary>
    public required string MoreUnpriced { get; init; }

    /// <summary>None of up to {most} more comes cheaper than the one before it.</summary>
    public required string MoreNone { get; init; }

    /// <summary>Heading of the column of suppliers.</summary>
    public required string SupplierColumn { get; init; }

    /// <summary>Heading of the column of suppliers' numbers.</summary>
    public required string NumberColumn { get; init; }

    /// <summary>Heading of the column of names in the order.</summary>
    public required string ItemColumn { get; init; }

    /// <summary>Heading of the column of units of sale.</summary>
    public required string UnitColumn { get; init; }

    /// <summary>Heading of the column of what a unit holds.</summary>
    public required string HoldsColumn { get; init; }

    /// <summary>Heading of the column of units to buy.</summary>
    public required string UnitsColumn { get; init; }

    /// <summary>Heading of the column of beads in them.</summary>
    public required string BeadsColumn { get; init; }

    /// <summary>Heading of the column of costs.</summary>
    public required string CostColumn { get; init; }

    /// <summary>Heading of the column of currencies.</summary>
    public required string CurrencyColumn { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>It was written: {file}.</summary>
    public required string Written { get; init; }

    /// <summary>A table in the examples.</summary>
    public required string ExampleTable { get; init; }

    /// <summary><c>--shelf</c>.</summary>
    public required string ShelfOption { get; init; }
}
