using System.Collections.Frozen;
using Coilwright.Core.Made;

namespace Coilwright.Wording;

/// <summary>The pages of what was made: the book, one record of it, and the shows.</summary>
public sealed record MadeWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>The list: heading.</summary>
    public required string List { get; init; }

    /// <summary>The box to search in.</summary>
    public required string Search { get; init; }

    /// <summary>Choosing which are shown.</summary>
    public required string Show { get; init; }

    /// <summary>All of them.</summary>
    public required string All { get; init; }

    /// <summary>Those that are hers to sell.</summary>
    public required string ToSell { get; init; }

    /// <summary>Those that are gone.</summary>
    public required string Gone { get; init; }

    /// <summary>Nothing was made yet.</summary>
    public required string NoneYet { get; init; }

    /// <summary>Nothing goes with what is searched for.</summary>
    public required string NoneFound { get; init; }

    /// <summary>A record's number: {number}.</summary>
    public required string Number { get; init; }

    /// <summary>All of it was taken back.</summary>
    public required string Void { get; init; }

    /// <summary>How many are at home: {count}.</summary>
    public required string AtHome { get; init; }

    /// <summary>How many are at a show: {count}, {show}.</summary>
    public required string AtShow { get; init; }

    /// <summary>How many are sold: {count}.</summary>
    public required string Sold { get; init; }

    /// <summary>How many were given away: {count}.</summary>
    public required string Given { get; init; }

    /// <summary>How many were lost: {count}.</summary>
    public required string Lost { get; init; }

    /// <summary>How many were taken apart: {count}.</summary>
    public required string Apart { get; init; }

    /// <summary>For which wrist: {wristMm}.</summary>
    public required string ForWrist { get; init; }

    /// <summary>The price that is asked: {price}.</summary>
    public required string Asked { get; init; }

    /// <summary>Writing a new one down: heading.</summary>
    public required string WriteOne { get; init; }

    /// <summary>The piece that it was strung from.</summary>
    public required string Piece { get; init; }

    /// <summary>From none on the shelf.</summary>
    public required string NoPiece { get; init; }

    /// <summary>What it is called.</summary>
    public required string Name { get; init; }

    /// <summary>The day.</summary>
    public required string Day { get; init; }

    /// <summary>How many.</summary>
    public required string Count { get; init; }

    /// <summary>The wrist.</summary>
    public required string Wrist { get; init; }

    /// <summary>The price of one.</summary>
    public required string Price { get; init; }

    /// <summary>The currency.</summary>
    public required string Currency { get; init; }

    /// <summary>For whom it is.</summary>
    public required string ForWhom { get; init; }

    /// <summary>To whom it went.</summary>
    public required string ToWhom { get; init; }

    /// <summary>A note.</summary>
    public required string Note { get; init; }

    /// <summary>What becomes of names.</summary>
    public required string NamesHint { get; init; }

    /// <summary>The beads that went into it: heading.</summary>
    public required string Beads { get; init; }

    /// <summary>Books them out of stock.</summary>
    public required string TakeOut { get; init; }

    /// <summary>What that does.</summary>
    public required string TakeOutHint { get; init; }

    /// <summary>Heading of what else goes out of stock.</summary>
    public required string Also { get; init; }

    /// <summary>What it is.</summary>
    public required string AlsoHint { get; init; }

    /// <summary>Which item.</summary>
    public required string AlsoItem { get; init; }

    /// <summary>How many in all.</summary>
    public required string AlsoHowMany { get; init; }

    /// <summary>How long in all, mm.</summary>
    public required string AlsoMm { get; init; }

    /// <summary>How heavy in all, g.</summary>
    public required string AlsoGrams { get; init; }

    /// <summary>Adds an item.</summary>
    public required string AlsoAdd { get; init; }

    /// <summary>Leaves an item out.</summary>
    public required string AlsoLeaveOut { get; init; }

    /// <summary>A bead is no item of stock.</summary>
    public required string NotInStock { get; init; }

    /// <summary>The lot that it is taken from: {bead}.</summary>
    public required string Lot { get; init; }

    /// <summary>Whichever came first.</summary>
    public required string EarliestLot { get; init; }

    /// <summary>Writes it down.</summary>
    public required string Write { get; init; }

    /// <summary>It is written down.</summary>
    public required string Done { get; init; }

    /// <summary>It is not; what was typed is still there.</summary>
    public required string NotDone { get; init; }

    /// <summary>What is typed is no day.</summary>
    public required string NoDay { get; init; }

    /// <summary>The accounts: heading.</summary>
    public required string Accounts { get; init; }

    /// <summary>The first day.</summary>
    public required string From { get; init; }

    /// <summary>The last day.</summary>
    public required string To { get; init; }

    /// <summary>Puts names into the file.</summary>
    public required string WithNames { get; init; }

    /// <summary>The sum in one currency: {lines}, {received}, {fees}, {left}.</summary>
    public required string SumOf { get; init; }

    /// <summary>Nothing came in.</summary>
    public required string NoMoney { get; init; }

    /// <summary>Tax is none of ours.</summary>
    public required string TaxHint { get; init; }

    /// <summary>Saves the accounts as a table.</summary>
    public required string SaveCsv { get; init; }

    /// <summary>Saves them as a workbook.</summary>
    public required string SaveXlsx { get; init; }

    /// <summary>The day, over a column.</summary>
    public required string ColDay { get; init; }

    /// <summary>The number, over a column.</summary>
    public required string ColNumber { get; init; }

    /// <summary>What it was, over a column.</summary>
    public required string ColWhat { get; init; }

    /// <summary>What it was for, over a column.</summary>
    public required string ColKind { get; init; }

    /// <summary>How many, over a column.</summary>
    public required string ColCount { get; init; }

    /// <summary>To whom, over a column.</summary>
    public required string ColWho { get; init; }

    /// <summary>Where, over a column.</summary>
    public required string ColWhere { get; init; }

    /// <summary>What was received, over a column.</summary>
    public required string ColReceived { get; init; }

    /// <summary>What was paid back, over a column.</summary>
    public required string ColPaidBack { get; init; }

    /// <summary>Fees, over a column.</summary>
    public required string ColFees { get; init; }

    /// <summary>Tax, over a column.</summary>
    public required string ColTax { get; init; }

    /// <summary>A line of sums.</summary>
    public required string Sum { get; init; }

    /// <summary>Choosing what happened to it.</summary>
    public required string WhatHappened { get; init; }

    /// <summary>A price is asked.</summary>
    public required string DoAsk { get; init; }

    /// <summary>Sold.</summary>
    public required string DoSell { get; init; }

    /// <summary>Given away.</summary>
    public required string DoGive { get; init; }

    /// <summary>Came back.</summary>
    public required string DoBack { get; init; }

    /// <summary>Repaired.</summary>
    public required string DoMend { get; init; }

    /// <summary>Re-sized.</summary>
    public required string DoResize { get; init; }

    /// <summary>Lost.</summary>
    public required string DoLose { get; init; }

    /// <summary>Taken apart.</summary>
    public required string DoApart { get; init; }

    /// <summary>What was received.</summary>
    public required string Received { get; init; }

    /// <summary>Fees.</summary>
    public required string Fees { get; init; }

    /// <summary>Where.</summary>
    public required string Where { get; init; }

    /// <summary>From where it went.</summary>
    public required string FromWhere { get; init; }

    /// <summary>At home.</summary>
    public required string Home { get; init; }

    /// <summary>Which came back.</summary>
    public required string WhichCame { get; init; }

    /// <summary>What was paid back.</summary>
    public required string Refund { get; init; }

    /// <summary>What was received for it.</summary>
    public required string Fee { get; init; }

    /// <summary>What was done.</summary>
    public required string WhatDone { get; init; }

    /// <summary>The new wrist.</summary>
    public required string NewWrist { get; init; }

    /// <summary>Shows what a size changes.</summary>
    public required string ShowChange { get; init; }

    /// <summary>A new wire: {from}, {to} in loops.</summary>
    public required string WireLonger { get; init; }

    /// <summary>The wire serves: {from}, {to} in loops.</summary>
    public required string WireShorter { get; init; }

    /// <summary>The wire stays.</summary>
    public required string WireSame { get; init; }

    /// <summary>Takes the beads that are added out of stock: {beads}.</summary>
    public required string TakeMore { get; init; }

    /// <summary>Brings the beads back into stock.</summary>
    public required string BeadsBack { get; init; }

    /// <summary>What happened: heading.</summary>
    public required string History { get; init; }

    /// <summary>Takes an entry back.</summary>
    public required string TakeBack { get; init; }

    /// <summary>It was taken back.</summary>
    public required string WasTakenBack { get; init; }

    /// <summary>The order as it was strung: heading.</summary>
    public required string AsStrung { get; init; }

    /// <summary>Which state it is: {title}, {revision}.</summary>
    public required string AsStrungHint { get; init; }

    /// <summary>Making it again: heading.</summary>
    public required string Reorder { get; init; }

    /// <summary>What that does.</summary>
    public required string ReorderHint { get; init; }

    /// <summary>Does it.</summary>
    public required string ReorderDo { get; init; }

    /// <summary>Erasing names: heading.</summary>
    public required string Erase { get; init; }

    /// <summary>What that does.</summary>
    public required string EraseHint { get; init; }

    /// <summary>She is sure.</summary>
    public required string EraseSure { get; init; }

    /// <summary>Does it.</summary>
    public required string EraseDo { get; init; }

    /// <summary>It was made: {count}.</summary>
    public required string DidMake { get; init; }

    /// <summary>A price: {price}.</summary>
    public required string DidAsk { get; init; }

    /// <summary>Sold: {count}, {price}, and where known {fees}, {where}.</summary>
    public required string DidSell { get; init; }

    /// <summary>Given away: {count}.</summary>
    public required string DidGive { get; init; }

    /// <summary>Came back: {count}, and where known {price}.</summary>
    public required string DidBack { get; init; }

    /// <summary>Repaired: {done}, and where known {price}.</summary>
    public required string DidMend { get; init; }

    /// <summary>Re-sized: {done}, {wristMm}, and where known {price}.</summary>
    public required string DidResize { get; init; }

    /// <summary>Lost: {count}.</summary>
    public required string DidLose { get; init; }

    /// <summary>Taken apart: {count}.</summary>
    public required string DidApart { get; init; }

    /// <summary>Taken to a show: {count}, {show}.</summary>
    public required string DidPack { get; init; }

    /// <summary>Home from a show: {count}, {show}.</summary>
    public required string DidUnpack { get; init; }

    /// <summary>An entry was taken back.</summary>
    public required string DidTakeBack { get; init; }

    /// <summary>Names were erased.</summary>
    public required string DidErase { get; init; }

    /// <summary>The page of shows: heading, and the way to it.</summary>
    public required string Shows { get; init; }

    /// <summary>What it is for.</summary>
    public required string ShowsLead { get; init; }

    /// <summary>What to bring: heading.</summary>
    public required string Bring { get; init; }

    /// <summary>There is nothing at home to sell.</summary>
    public required string BringNone { get; init; }

    /// <summary>The show.</summary>
    public required string ShowName { get; init; }

    /// <summary>How many of one go along: {name}.</summary>
    public required string BringCount { get; init; }

    /// <summary>Writes down what goes along.</summary>
    public required string PackDo { get; init; }

    /// <summary>Prints the list.</summary>
    public required string Print { get; init; }

    /// <summary>What was taken: {received}, {fees}.</summary>
    public required string Takings { get; init; }

    /// <summary>How many were taken there.</summary>
    public required string TallyTaken { get; init; }

    /// <summary>How many were sold.</summary>
    public required string TallySold { get; init; }

    /// <summary>How many came home.</summary>
    public required string TallyBack { get; init; }

    /// <summary>How many are still there.</summary>
    public required string TallyStill { get; init; }

    /// <summary>How many of one were sold: {name}.</summary>
    public required string SoldOf { get; init; }

    /// <summary>What was received for them: {name}.</summary>
    public required string ReceivedFor { get; init; }

    /// <summary>Coming home: heading.</summary>
    public required string ComingHome { get; init; }

    /// <summary>What that does.</summary>
    public required string ComingHomeHint { get; init; }

    /// <summary>Writes it down.</summary>
    public required string HomeDo { get; init; }

    /// <summary>What money came in by.</summary>
    public required FrozenDictionary<AccountKind, string> Kinds { get; init; }
}
