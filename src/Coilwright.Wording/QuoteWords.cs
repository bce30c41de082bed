namespace Coilwright.Wording;

/// <summary>Words of the answer to a custom order. Names in braces are filled in; see <see cref="Template"/>.</summary>
public sealed record QuoteWords
{
    /// <summary>What <c>quote</c> does.</summary>
    public required string Verb { get; init; }

    /// <summary><c>--wrist</c>.</summary>
    public required string WristOption { get; init; }

    /// <summary><c>--count</c>.</summary>
    public required string CountOption { get; init; }

    /// <summary><c>--for</c>.</summary>
    public required string ForOption { get; init; }

    /// <summary><c>--rule</c>.</summary>
    public required string RuleOption { get; init; }

    /// <summary><c>--among</c>.</summary>
    public required string AmongOption { get; init; }

    /// <summary><c>--swap</c>.</summary>
    public required string SwapOption { get; init; }

    /// <summary><c>--deposit</c>.</summary>
    public required string DepositOption { get; init; }

    /// <summary><c>--on</c>.</summary>
    public required string OnOption { get; init; }

    /// <summary><c>--until</c>.</summary>
    public required string UntilOption { get; init; }

    /// <summary><c>--wire</c>.</summary>
    public required string WireOption { get; init; }

    /// <summary><c>--out</c>.</summary>
    public required string OutOption { get; init; }

    /// <summary>Title of what goes to the customer.</summary>
    public required string Title { get; init; }

    /// <summary>Title of what stays with the maker.</summary>
    public required string WorkingsTitle { get; init; }

    /// <summary>What it is.</summary>
    public required string WorkingsLead { get; init; }

    /// <summary>Who asks, {for}.</summary>
    public required string For { get; init; }

    /// <summary>The day, {on}.</summary>
    public required string Dated { get; init; }

    /// <summary>{count} of {name} for a wrist of {wristMm}.</summary>
    public required string What { get; init; }

    /// <summary>{with} in place of {bead}.</summary>
    public required string Swapped { get; init; }

    /// <summary>Heading of the price.</summary>
    public required string PriceHeading { get; init; }

    /// <summary>{price} for one.</summary>
    public required string PriceEach { get; init; }

    /// <summary>{count} at {price} are {total}.</summary>
    public required string PriceAll { get; init; }

    /// <summary>No price.</summary>
    public required string PriceNotTold { get; init; }

    /// <summary>{percent} of it, {deposit}, is paid before work begins, {rest} afterwards.</summary>
    public required string Deposit { get; init; }

    /// <summary>It stands until {until}.</summary>
    public required string Until { get; init; }

    /// <summary>It is no advice on taxes.</summary>
    public required string NoAdvice { get; init; }

    /// <summary>Heading of when the beads are there.</summary>
    public required string WhenHeading { get; init; }

    /// <summary>Nothing must be ordered.</summary>
    public required string AllAtHome { get; init; }

    /// <summary>They are there on {day}, {days} days after ordering on {on}.</summary>
    public required string There { get; init; }

    /// <summary>They can be had on {on} itself.</summary>
    public required string ThereAtOnce { get; init; }

    /// <summary>That is not known.</summary>
    public required string NotToldWhen { get; init; }

    /// <summary>Heading of what stands against it.</summary>
    public required string ReasonsHeading { get; init; }

    /// <summary>Nothing stands against it.</summary>
    public required string CanBePromised { get; init; }

    /// <summary>It is {mm} too long or short at this size; {short} where it is too short.</summary>
    public required string SizeOff { get; init; }

    /// <summary>The report says stop: {notices}.</summary>
    public required string SaysStop { get; init; }

    /// <summary>{missing} of {bead} cannot be had.</summary>
    public required string CannotBeHad { get; init; }

    /// <summary>Every order would be too small.</summary>
    public required string NoOrderCanBeSent { get; init; }

    /// <summary>No rule prices a piece.</summary>
    public required string NoRule { get; init; }

    /// <summary>The rule {rule} loses {loss} on each; from {least} on nothing is lost.</summary>
    public required string Loses { get; init; }

    /// <summary>A smaller coil is wanted, of about {loopMm} a loop.</summary>
    public required string SmallerCoil { get; init; }

    /// <summary>A larger coil is wanted, of about {loopMm} a loop.</summary>
    public required string LargerCoil { get; init; }

    /// <summary>The wire at hand is not enough.</summary>
    public required string WireShort { get; init; }

    /// <summary>Things without a price: {count}, {names}.</summary>
    public required string Unpriced { get; init; }

    /// <summary>When the beads are there is not told: {names} without days, {nobody} that nobody sells.</summary>
    public required string DayNotTold { get; init; }

    /// <summary>No step of work was timed.</summary>
    public required string NotTimed { get; init; }

    /// <summary>Heading of the size.</summary>
    public required string SizeHeading { get; init; }

    /// <summary>Heading of the beads.</summary>
    public required string BeadsHeading { get; init; }

    /// <summary>Column of when they are there.</summary>
    public required string HereColumn { get; init; }

    /// <summary>Column of from whom.</summary>
    public required string FromColumn { get; init; }

    /// <summary>It is at home.</summary>
    public required string AtHomeAlready { get; init; }

    /// <summary>After {days} days, on {day}.</summary>
    public required string HereOn { get; init; }

    /// <summary>It is not known.</summary>
    public required string HereUnknown { get; init; }

    /// <summary>{units} of {unit} of {holds} from {supplier} for {cost}; {days} days.</summary>
    public required string FromLine { get; init; }

    /// <summary>The piece's own price.</summary>
    public required string OwnPrice { get; init; }

    /// <summary>Nobody is named.</summary>
    public required string NobodySells { get; init; }

    /// <summary>Heading of what may stand in.</summary>
    public required string StandInsHeading { get; init; }

    /// <summary>{with} for {bead}: {have} are there. {differs}</summary>
    public required string StandIn { get; init; }

    /// <summary>Nothing at home stands in for {bead}.</summary>
    public required string NoStandIn { get; init; }

    /// <summary>What buying costs, {total}, is not the price.</summary>
    public required string BuyNote { get; init; }

    /// <summary>Heading of the wire.</summary>
    public required string WireHeading { get; init; }

    /// <summary>{count} lengths of {loops} loops, {cutMm} each.</summary>
    public required string WireCut { get; init; }

    /// <summary>What wire is there is not told.</summary>
    public required string WireNotTold { get; init; }

    /// <summary>The wire at hand is enough.</summary>
    public required string WireEnough { get; init; }

    /// <summary>Heading of how the price comes about.</summary>
    public required string HowHeading { get; init; }

    /// <summary>{percent} of {total} is {deposit}, up to a cent.</summary>
    public required string DepositHow { get; init; }

    /// <summary>{count} × {price} = {total}.</summary>
    public required string TotalHow { get; init; }

    /// <summary>Heading of the time.</summary>
    public required string TimeHeading { get; init; }

    /// <summary>A step of one piece: {name}, {minutes}.</summary>
    public required string Step { get; init; }

    /// <summary>{minutes} minutes in all.</summary>
    public required string TimeInAll { get; init; }

    /// <summary>Heading of the text to copy.</summary>
    public required string TextHeading { get; init; }

    /// <summary>What goes to the customer is not written.</summary>
    public required string NotWritten { get; init; }

    /// <summary>A file was written: {file}.</summary>
    public required string Written { get; init; }
}
