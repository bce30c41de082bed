using System.Collections.Immutable;

namespace Coilwright.Core.Faults;

/// <summary>One thing wrong with what was written down: a code and the values that a sentence needs, never the sentence itself.</summary>
/// <remarks>
/// <para>Is about input (a bead narrower than its hole, an unknown name in the order). It is not a <see cref="Readings.Notice"/>, which speaks
/// of a sound piece that does not do what its maker wants.</para>
/// <para><see cref="Field"/> is a path in the piece file, as <c>beads[2].boreMm</c>; relative when a part reports it and made whole by
/// <see cref="Under"/>. <see cref="Line"/> and <see cref="Column"/> count from 1 and are 0 where the part that found the fault has no text.</para>
/// </remarks>
/// <param name="Code">Stable code, as <c>value.above</c>; the sentence is made from it by Coilwright.Wording.</param>
/// <param name="Field">Path of the field, or empty for the whole.</param>
/// <param name="Value">The value found, as written.</param>
/// <param name="Values">What the sentence needs beside it: limits, units, the nearest known name.</param>
public sealed record Fault(string Code, string Field, string Value, ImmutableSortedDictionary<string, string> Values)
{
    /// <summary>Line in the text that was read, from 1; 0 when unknown.</summary>
    public int Line { get; init; }

    /// <summary>Column in that line in characters, from 1; 0 when unknown.</summary>
    public int Column { get; init; }

    /// <summary>Makes a fault from a code, a field, the value found and pairs of name and value for the sentence.</summary>
    public static Fault Of(string code, string field, string value, params ReadOnlySpan<(string Name, string Value)> values)
    {
        var builder = ImmutableSortedDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var (name, text) in values) builder[name] = text;
        return new Fault(code, field, value, builder.ToImmutable());
    }

    /// <summary>The same fault with its field path under a parent's, as <c>boreMm</c> under <c>beads[2]</c>.</summary>
    public Fault Under(string parent) =>
        this with { Field = Field.Length == 0 ? parent : Field[0] == '[' ? parent + Field : parent + "." + Field };

    /// <summary>The same fault at a place in a text.</summary>
    public Fault At(int line, int column) => this with { Line = line, Column = column };
}

/// <summary>The codes of <see cref="Fault"/>. Each has one sentence per language in Coilwright.Wording; a test holds the two lists together.</summary>
public static class FaultCodes
{
    /// <summary>A number must be more than {min} {unit}.</summary>
    public const string ValueAbove = "value.above";

    /// <summary>A number must be at least {min} {unit}.</summary>
    public const string ValueAtLeast = "value.at-least";

    /// <summary>A number must be at most {max} {unit}.</summary>
    public const string ValueAtMost = "value.at-most";

    /// <summary>A number is not finite (NaN or infinite).</summary>
    public const string ValueNotFinite = "value.not-finite";

    /// <summary>A range has its smaller number second; {min} and {max} as written.</summary>
    public const string RangeReversed = "value.range-reversed";

    /// <summary>A text is empty where a name is needed.</summary>
    public const string TextEmpty = "text.empty";

    /// <summary>A text is longer than {max} characters.</summary>
    public const string TextTooLong = "text.too-long";

    /// <summary>An id does not match <c>[a-z][a-z0-9-]*</c>.</summary>
    public const string IdForm = "id.form";

    /// <summary>An id is used twice; {first} is where it was seen first.</summary>
    public const string IdTwice = "id.twice";

    /// <summary>A word that the order notation keeps for itself is used as a name; {known} lists such words.</summary>
    public const string IdReserved = "id.reserved";

    /// <summary>One of a list of words was expected; {known} lists them, {nearest} is the likeliest.</summary>
    public const string WordUnknown = "word.unknown";

    /// <summary>The hole is not narrower than the bead; {limit} mm is the bead's smaller measure across the hole.</summary>
    public const string BoreTooWide = "bead.bore-too-wide";

    /// <summary>A shape needs a field that is missing; {shape}.</summary>
    public const string ShapeNeeds = "bead.shape-needs";

    /// <summary>A field has no meaning for this shape; {shape}.</summary>
    public const string ShapeHasNo = "bead.shape-has-no";

    /// <summary>The hole would leave the bead: its offset is more than half the thickness less half the bore; {limit} mm.</summary>
    public const string HoleOutside = "bead.hole-outside";

    /// <summary>A colour is not <c>#rrggbb</c>.</summary>
    public const string ColourForm = "colour.form";

    /// <summary>A length is given in two ways; {fields}.</summary>
    public const string LengthTwice = "bead.length-twice";

    /// <summary>A length is missing; {fields} lists the ways it can be given.</summary>
    public const string LengthMissing = "bead.length-missing";

    /// <summary>A material is not in the data and the bead gives neither density nor mass; {known}, {nearest}.</summary>
    public const string MaterialUnknown = "bead.material-unknown";

    /// <summary>A steel is not in the data; {known}, {nearest}.</summary>
    public const string SteelUnknown = "wire.steel-unknown";

    /// <summary>A gauge name is not one of AWG or SWG.</summary>
    public const string GaugeForm = "wire.gauge-form";

    /// <summary>The coil's size is missing or given in two ways; {fields}.</summary>
    public const string CoilSize = "wire.coil-size";

    /// <summary>A field is not known at this place; {nearest} is the likeliest, {known} lists all.</summary>
    public const string FieldUnknown = "field.unknown";

    /// <summary>A field stands twice; {firstLine} is where it stood first.</summary>
    public const string FieldTwice = "field.twice";

    /// <summary>A field that must be there is missing.</summary>
    public const string FieldMissing = "field.missing";

    /// <summary>A field has the wrong JSON type; {expected} and {found} are each one of <see cref="FaultTypes"/>.</summary>
    public const string FieldType = "field.type";

    /// <summary>One of {fields} must be given, and only one; {given} is how many are, as a numeral.</summary>
    public const string FieldOneOf = "field.one-of";

    /// <summary>A field has no meaning beside {other}, which is written at {otherField}.</summary>
    public const string FieldNotWith = "field.not-with";

    /// <summary>A rule of the order names a bead and a group, {value} and {other}, so that it is not clear what it counts.</summary>
    public const string RuleMixed = "rule.mixed";

    /// <summary>A bead is named as standing in for itself.</summary>
    public const string StandInItself = "stand-in.itself";

    /// <summary>The order is empty.</summary>
    public const string OrderEmpty = "order.empty";

    /// <summary>Something else was expected; {expected} is one of <see cref="OrderExpectations"/>. The value is empty at the end of a line.</summary>
    public const string OrderExpected = "order.expected";

    /// <summary>A name in the order is neither a bead nor a group; {nearest} is the likeliest.</summary>
    public const string OrderUnknownName = "order.unknown-name";

    /// <summary>A name in the order has letters that names do not have; {lower} is its small form where that is a name, {nearest} the likeliest.</summary>
    public const string OrderNameForm = "order.name-form";

    /// <summary>A group in the order is named by a word that the notation keeps for itself; {known} lists those.</summary>
    public const string OrderNameReserved = "order.name-reserved";

    /// <summary>A group contains itself; {path} tells how.</summary>
    public const string OrderGroupInItself = "order.group-in-itself";

    /// <summary>A group is named twice; {firstLine}.</summary>
    public const string OrderGroupTwice = "order.group-twice";

    /// <summary>A group has the id of a bead.</summary>
    public const string OrderGroupIsBead = "order.group-is-bead";

    /// <summary>A count is 0 or above {max}.</summary>
    public const string OrderCount = "order.count";

    /// <summary>Brackets or groups stand deeper than {max} inside one another.</summary>
    public const string OrderTooDeep = "order.too-deep";

    /// <summary>The order strings more than {max} beads.</summary>
    public const string OrderTooMany = "order.too-many";

    /// <summary>The order strings named groups more than {max} times.</summary>
    public const string OrderTooManyGroups = "order.too-many-groups";

    /// <summary>The order's text is longer than {max} characters.</summary>
    public const string OrderTooLong = "order.too-long";

    /// <summary>A closing bracket is missing; {openLine}, {openColumn} tell where it was opened.</summary>
    public const string OrderUnclosed = "order.unclosed";

    /// <summary>A measured row names a bead that the order does not reach; {beads} is how many there are.</summary>
    public const string MeasuredBeyond = "measured.beyond";

    /// <summary>A measured row is absurd against the beads' own lengths; {expected} mm.</summary>
    public const string MeasuredAbsurd = "measured.absurd";

    /// <summary>An edit means a bead that the order does not reach; {beads} is how many there are.</summary>
    public const string EditNoSuchBead = "edit.no-such-bead";

    /// <summary>An edit means no bead at all.</summary>
    public const string EditNothingChosen = "edit.nothing-chosen";

    /// <summary>An edit needs at least {least} beads.</summary>
    public const string EditTooFew = "edit.too-few";

    /// <summary>An edit needs neighbouring beads, and others stand between these.</summary>
    public const string EditNotTogether = "edit.not-together";

    /// <summary>Beads are to become a group, and hold only a part of the group {group}.</summary>
    public const string EditCutsGroup = "edit.cuts-group";

    /// <summary>The beads stand in no group together.</summary>
    public const string EditNoGroup = "edit.no-group";

    /// <summary>The name given is that of a group with other beads.</summary>
    public const string EditGroupDiffers = "edit.group-differs";

    /// <summary>A part of the order's text is meant that is not there, or strings nothing.</summary>
    public const string EditNotStrung = "edit.not-strung";

    /// <summary>An edit would change nothing.</summary>
    public const string EditChangesNothing = "edit.changes-nothing";

    /// <summary>An edit would leave no bead on the wire.</summary>
    public const string EditNothingLeft = "edit.nothing-left";

    /// <summary>The notation has no words for what an edit would string.</summary>
    public const string EditNotWritten = "edit.not-written";

    /// <summary>The piece has no kind of bead of this id; {nearest} is the likeliest.</summary>
    public const string EditBeadUnknown = "edit.bead-unknown";

    /// <summary>A kind of bead is to go, and the order strings it {times} times.</summary>
    public const string EditBeadInUse = "edit.bead-in-use";

    /// <summary>A kind of bead is to go, and the group {group}, which is not strung, names it.</summary>
    public const string EditBeadInGroup = "edit.bead-in-group";

    /// <summary>There is no measured row of this number.</summary>
    public const string EditNoSuchRow = "edit.no-such-row";

    /// <summary>A measured row no longer holds, for its beads are others now: beads {first} to {last} were {total} mm. Told beside an edit that was done.</summary>
    public const string EditRowLost = "edit.row-lost";

    /// <summary>The file is not UTF-8; {offset} is the first bad byte.</summary>
    public const string FileNotUtf8 = "file.not-utf8";

    /// <summary>The file is not JSON at this place; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileNotJson = "file.not-json";

    /// <summary>The file ends in the middle.</summary>
    public const string FileTruncated = "file.truncated";

    /// <summary>The file is larger than {max}.</summary>
    public const string FileTooLarge = "file.too-large";

    /// <summary>The file cannot be read; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileUnreadable = "file.unreadable";

    /// <summary>The target cannot be written; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string FileUnwritable = "file.unwritable";

    /// <summary>One of several files cannot be written when others are already: {written}; {detail} as before.</summary>
    public const string FileUnwritableAfter = "file.unwritable-after";

    /// <summary>The format is not one that this program reads; {known}.</summary>
    public const string FormatUnknown = "file.format";

    /// <summary>Arrays and objects stand deeper than {max} inside one another.</summary>
    public const string FileTooDeep = "file.too-deep";

    /// <summary>A data file of the program itself is missing or wrong; {file}, and {detail}: one of
    /// <see cref="FaultDetails"/>, or else the code of what is wrong in it.</summary>
    public const string DataBroken = "data.broken";

    /// <summary>Another program holds the shelf of pieces, and did not let go for as long as was waited.</summary>
    public const string ShelfLocked = "shelf.locked";

    /// <summary>The shelf's file, or its folder, may not be written to.</summary>
    public const string ShelfReadOnly = "shelf.read-only";

    /// <summary>The disk that the shelf is on is full.</summary>
    public const string ShelfDiskFull = "shelf.disk-full";

    /// <summary>The file is no shelf of pieces.</summary>
    public const string ShelfNotOne = "shelf.not-one";

    /// <summary>The shelf is in a form of a newer program: {found}, where this one knows up to {known}.</summary>
    public const string ShelfNewer = "shelf.newer";

    /// <summary>The shelf's file is damaged; {reason} is what was found, and empty when the system did not say.</summary>
    public const string ShelfDamaged = "shelf.damaged";

    /// <summary>The folder of the shelf cannot be reached or made; {detail} is one of <see cref="FaultDetails"/>.</summary>
    public const string ShelfUnreachable = "shelf.unreachable";

    /// <summary>A state of a piece on the shelf cannot be read: {title}, {revision}; {detail} is the code of what is wrong in it.</summary>
    public const string ShelfPieceUnreadable = "shelf.piece-unreadable";

    /// <summary>The shelf cannot be used for another reason, as {reason} in the system's own words.</summary>
    public const string ShelfOther = "shelf.other";

    /// <summary>The file named for a backup is the one that the shelf itself lies in, or one beside it that belongs to it.</summary>
    public const string ShelfOwnFile = "shelf.own-file";

    /// <summary>The address of the database cannot be read: the value is a name in it that is not understood, empty when it cannot be told; {missing} is a part that is not there.</summary>
    public const string DatabaseAddress = "database.address";

    /// <summary>No database server answers at that place.</summary>
    public const string DatabaseUnreachable = "database.unreachable";

    /// <summary>The database server went away in the middle.</summary>
    public const string DatabaseLost = "database.lost";

    /// <summary>The database server did not answer for as long as was waited.</summary>
    public const string DatabaseSlow = "database.slow";

    /// <summary>The database server does not let this user in: name, password or the server's own rules.</summary>
    public const string DatabaseRefused = "database.refused";

    /// <summary>The server has no database of that name.</summary>
    public const string DatabaseMissing = "database.missing";

    /// <summary>This user may not do that in the database.</summary>
    public const string DatabaseNoRights = "database.no-rights";

    /// <summary>The database takes no changes: a copy, or set so.</summary>
    public const string DatabaseReadOnly = "database.read-only";

    /// <summary>The database server's disk is full.</summary>
    public const string DatabaseFull = "database.full";

    /// <summary>The database server takes no more connections.</summary>
    public const string DatabaseCrowded = "database.crowded";

    /// <summary>The database holds something else under our name.</summary>
    public const string DatabaseNotOurs = "database.not-ours";

    /// <summary>The database cannot be used for another reason, as {reason} in the server's own words.</summary>
    public const string DatabaseOther = "database.other";

    /// <summary>What is in a database is not backed up or restored here, but with the server's own means.</summary>
    public const string DatabaseBackup = "database.backup";

    /// <summary>A photo is larger than {max}.</summary>
    public const string PhotoTooLarge = "photo.too-large";

    /// <summary>A file is not a photo of the kind that it is said to be; {known} lists the kinds.</summary>
    public const string PhotoKind = "photo.kind";

    /// <summary>A photo's file is broken, or ends too early.</summary>
    public const string PhotoBroken = "photo.broken";

    /// <summary>A photo has more than {max} million pixels.</summary>
    public const string PhotoTooManyPixels = "photo.too-many-pixels";

    /// <summary>A photo is narrower or lower than {min} pixels.</summary>
    public const string PhotoTooSmall = "photo.too-small";

    /// <summary>A text to be printed holds characters that the typeface lacks; {characters} lists them, {more} counts those not listed and is empty when all are.</summary>
    public const string DocumentGlyphsMissing = "document.glyphs-missing";

    /// <summary>A sheet of labels is larger than its paper: {acrossMm} and {downMm} on {paperAcrossMm} and {paperDownMm}.</summary>
    public const string LabelsDoNotFit = "labels.do-not-fit";

    /// <summary>A label has no room for what stands on it; {leastAcrossMm} and {leastDownMm} would do.</summary>
    public const string LabelsTooSmall = "labels.too-small";

    /// <summary>More labels than one file holds; {max}.</summary>
    public const string LabelsTooMany = "labels.too-many";

    /// <summary>A colourway strings another order, or its beads stand in another order, than the piece.</summary>
    public const string ColourwayOther = "colourway.other-order";

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

    /// <summary>There is no such record of what was made, or all of it was taken back.</summary>
    public const string MadeNoRecord = "made.no-record";

    /// <summary>A step has the id of another that was written down.</summary>
    public const string MadeIdTaken = "made.id-taken";

    /// <summary>Fewer are there than are to go: {there} at home, or at {show}.</summary>
    public const string MadeTooFew = "made.too-few";

    /// <summary>More are to come back than are out: {out}.</summary>
    public const string MadeTooManyBack = "made.too-many-back";

    /// <summary>A day lies before the one on which it was made, or went: {made}.</summary>
    public const string MadeBefore = "made.before";

    /// <summary>Fees are more than was received: {price}.</summary>
    public const string MadeFeesAbove = "made.fees-above";

    /// <summary>Money is paid back in another currency than it came in: {other}.</summary>
    public const string MadeCurrencyDiffers = "made.currency-differs";

    /// <summary>More money is paid back than is left of what came in: {left} {currency}.</summary>
    public const string MadeRefundAbove = "made.refund-above";

    /// <summary>There is no such step that counts in this record.</summary>
    public const string MadeNoStep = "made.no-step";

    /// <summary>A later step rests on the one that is to be taken back.</summary>
    public const string MadeRestsOn = "made.rests-on";

    /// <summary>All were lost or taken apart.</summary>
    public const string MadeNoneLeft = "made.none-left";

    /// <summary>There is no such piece on the shelf, or no such state of it.</summary>
    public const string MadeNoPiece = "made.no-piece";

    /// <summary>A record of what was made cannot be read; {detail} is the code of what is wrong in it.</summary>
    public const string MadeUnreadable = "made.unreadable";

    /// <summary>A supplier's word for a unit of sale may be {one} or {other}, and is not guessed.</summary>
    public const string SaleUnitUnclear = "sale-unit.unclear";

    /// <summary>What a unit of sale holds is not known; {needs} is the field that would tell.</summary>
    public const string SaleUnitNeeds = "sale-unit.needs";

    /// <summary>An item is not sold by such a unit: it is counted in {countedIn}.</summary>
    public const string SaleUnitOther = "sale-unit.other";

    /// <summary>What a unit of sale holds comes to not even one.</summary>
    public const string SaleUnitHoldsNone = "sale-unit.holds-none";

    /// <summary>A cell of a table is no number with a decimal point and at most three decimals where things are counted.</summary>
    public const string TableNumber = "table.number";

    /// <summary>A cell of a table is no day.</summary>
    public const string TableDay = "table.day";

    /// <summary>A table cannot be told into lines and cells from some line on.</summary>
    public const string TableBroken = "table.broken";

    /// <summary>A cell of a list of beads is no number with one decimal point or comma at most.</summary>
    public const string TrayNumber = "tray.number";

    /// <summary>A cell of a list of beads is no size as labels have it.</summary>
    public const string TraySize = "tray.size";

    /// <summary>A workbook cannot be read, or is none.</summary>
    public const string WorkbookBroken = "workbook.broken";

    /// <summary>A kind of bead in the tray cannot be read: {kind}; {detail} is the code of what is wrong in it.</summary>
    public const string TrayUnreadable = "tray.unreadable";

    /// <summary>A table has heads and no line.</summary>
    public const string TableNoRows = "table.no-rows";

    /// <summary>A table has more than {max} lines.</summary>
    public const string TableTooLong = "table.too-long";

    /// <summary>An item of stock cannot be read: {item}; {detail} is the code of what is wrong in it.</summary>
    public const string StockItemUnreadable = "stock.item-unreadable";

    /// <summary>A currency is not three capital letters.</summary>
    public const string CurrencyForm = "currency.form";

    /// <summary>Costs and prices are in two currencies; {other} is that of the prices.</summary>
    public const string CurrenciesDiffer = "currency.differs";

    /// <summary>What is in stock of {bead} was paid for in one currency, and the costs or other beads are in {other}.</summary>
    public const string LotCurrencyDiffers = "currency.lot-differs";

    /// <summary>A quote ends before its own day, {on}.</summary>
    public const string QuoteEndsBefore = "quote.ends-before";

    /// <summary>A time of a class is not after another, {other}.</summary>
    public const string TimeNotAfter = "class.time-not-after";

    /// <summary>Eye protection is shared.</summary>
    public const string NeverShared = "class.never-shared";

    /// <summary>A name is used twice where each is used once.</summary>
    public const string NameTwice = "name.twice";

    /// <summary>A rule for a price has a name that a formula could not write.</summary>
    public const string PriceRuleNameForm = "price-rule.name-form";

    /// <summary>A rule for a price has the name of a figure or function; {known} lists them.</summary>
    public const string PriceRuleNameTaken = "price-rule.name-taken";

    /// <summary>A rule for a price comes to less than nothing: {price}.</summary>
    public const string PriceBelowZero = "price-rule.below-zero";

    /// <summary>The fees of a rule keep {percent} in a hundred of the price.</summary>
    public const string FeesTakeAll = "fees.take-all";

    /// <summary>At character {at} of a formula a number, a name or a bracket is missing.</summary>
    public const string FormulaValueExpected = "formula.value-expected";

    /// <summary>At character {at} of a formula stands what is neither a sign to reckon with nor its end.</summary>
    public const string FormulaSignExpected = "formula.sign-expected";

    /// <summary>At character {at} of a formula a bracket should close.</summary>
    public const string FormulaBracketOpen = "formula.bracket-open";

    /// <summary>{function} of a formula, at character {at}, does not have two values, nor more where it can.</summary>
    public const string FormulaValues = "formula.values";

    /// <summary>A formula names {name} at character {at}, which is no figure and no rule; {nearest} is the likeliest, {known} lists all.</summary>
    public const string FormulaNameUnknown = "formula.name-unknown";

    /// <summary>A formula comes back to its own rule by way of {way}; {at} is the character where it goes that way.</summary>
    public const string FormulaCycle = "formula.cycle";

    /// <summary>A formula divides by nought at character {at}.</summary>
    public const string FormulaDividesByZero = "formula.divides-by-zero";

    /// <summary>A formula comes to more than can be reckoned at character {at}.</summary>
    public const string FormulaTooLarge = "formula.too-large";

    /// <summary>A formula rounds up to a step that is none, at character {at}.</summary>
    public const string FormulaStep = "formula.step";

    /// <summary>A formula asks at character {at} for an ending that no price has.</summary>
    public const string FormulaEnding = "formula.ending";
}

/// <summary>The words that <see cref="FaultCodes.FieldType"/> uses for JSON types, and the kinds of number asked for.</summary>
public static class FaultTypes
{
    /// <summary>A text in quotes.</summary>
    public const string Text = "text";

    /// <summary>A number.</summary>
    public const string Number = "number";

    /// <summary>A number without a fraction.</summary>
    public const string WholeNumber = "whole-number";

    /// <summary>A list in square brackets.</summary>
    public const string List = "list";

    /// <summary>An object in curly brackets.</summary>
    public const string Fields = "fields";

    /// <summary><c>true</c> or <c>false</c>.</summary>
    public const string YesOrNo = "yes-or-no";

    /// <summary><c>null</c>.</summary>
    public const string Nothing = "nothing";

    /// <summary>A number, or one of a list of words.</summary>
    public const string NumberOrWord = "number-or-word";

    /// <summary>A text in quotes, or an object in curly brackets.</summary>
    public const string TextOrFields = "text-or-fields";

    /// <summary>Two numbers in square brackets.</summary>
    public const string TwoNumbers = "two-numbers";
}

/// <summary>Why a file could not be read as JSON, opened or written: the values of {detail} in the file codes.</summary>
public static class FaultDetails
{
    /// <summary>Nothing but blanks is in the file.</summary>
    public const string Empty = "empty";

    /// <summary>A comma stands before a closing bracket.</summary>
    public const string TrailingComma = "trailing-comma";

    /// <summary>A comment stands in the JSON; comments belong in the order's text.</summary>
    public const string Comment = "comment";

    /// <summary>A text is not closed on its line.</summary>
    public const string TextNotClosed = "text-not-closed";

    /// <summary>A backslash in a text is followed by what it cannot be followed by.</summary>
    public const string Escape = "escape";

    /// <summary>More follows after the end.</summary>
    public const string AfterTheEnd = "after-the-end";

    /// <summary>Something else was expected here.</summary>
    public const string Unexpected = "unexpected";

    /// <summary>There is no such file or folder.</summary>
    public const string NotFound = "not-found";

    /// <summary>It is a folder.</summary>
    public const string IsFolder = "is-folder";

    /// <summary>The file's rights, or the folder's, do not allow it.</summary>
    public const string NotAllowed = "not-allowed";

    /// <summary>The disk is full, or a limit on the size of files is reached.</summary>
    public const string DiskFull = "disk-full";

    /// <summary>The path is empty, too long or has characters that no path has.</summary>
    public const string PathForm = "path-form";

    /// <summary>The system gave another reason, as {reason} in its own words.</summary>
    public const string Other = "other";
}

/// <summary>What the order notation expected: the values of {expected} in <see cref="FaultCodes.OrderExpected"/>.</summary>
public static class OrderExpectations
{
    /// <summary>A count, a bead, a group, a bracket, <c>mirror</c> or <c>backwards</c>.</summary>
    public const string Item = "item";

    /// <summary>What a count counts: a bead, a group, a bracket, <c>mirror</c> or <c>backwards</c>.</summary>
    public const string Part = "part";

    /// <summary>What is strung backwards: a bead, a group or a bracket.</summary>
    public const string NameOrBracket = "name-or-bracket";

    /// <summary>An opening bracket.</summary>
    public const string OpeningBracket = "opening-bracket";

    /// <summary>The word <c>between</c>.</summary>
    public const string Between = "between";

    /// <summary>A comma or the end of the line.</summary>
    public const string CommaOrLineEnd = "comma-or-line-end";

    /// <summary>A comma, the end of the line or a closing bracket.</summary>
    public const string CommaOrClosingBracket = "comma-or-closing-bracket";

    /// <summary>A line of its own, outside all brackets, for a group written down with <c>=</c>.</summary>
    public const string LineOfItsOwn = "line-of-its-own";
}
