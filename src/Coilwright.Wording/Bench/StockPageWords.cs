using System.Collections.Frozen;
using Coilwright.Core.Stock;

namespace Coilwright.Wording;

/// <summary>The pages of the stock: the list of what is in the drawers, and one item with its history.</summary>
public sealed record StockPageWords
{
    /// <summary>Heading, and the way to it.</summary>
    public required string Heading { get; init; }

    /// <summary>What the page is for.</summary>
    public required string Lead { get; init; }

    /// <summary>The box to search in.</summary>
    public required string Search { get; init; }

    /// <summary>Shows only what is below the least to have.</summary>
    public required string OnlyLow { get; init; }

    /// <summary>Nothing is in stock.</summary>
    public required string NoneYet { get; init; }

    /// <summary>Nothing goes with what is searched for.</summary>
    public required string NoneFound { get; init; }

    /// <summary>How much there is in all: {items}, {low}.</summary>
    public required string Totals { get; init; }

    /// <summary>What all of it cost: {average}, {firstIn}, each an amount with its currency.</summary>
    public required string TotalValue { get; init; }

    /// <summary>How many items are not counted in it: {items}.</summary>
    public required string NotValued { get; init; }

    /// <summary>The list, for who cannot see it: heading.</summary>
    public required string List { get; init; }

    /// <summary>What lies in the drawers.</summary>
    public required string OnHand { get; init; }

    /// <summary>What of it is kept back.</summary>
    public required string Reserved { get; init; }

    /// <summary>What can be taken.</summary>
    public required string Free { get; init; }

    /// <summary>The drawer.</summary>
    public required string Drawer { get; init; }

    /// <summary>The least that she wants to have.</summary>
    public required string Par { get; init; }

    /// <summary>The same, short.</summary>
    public required string ParShort { get; init; }

    /// <summary>It runs low: {missing}.</summary>
    public required string Low { get; init; }

    /// <summary>How much is missing to the least to have.</summary>
    public required string Missing { get; init; }

    /// <summary>The value.</summary>
    public required string Value { get; init; }

    /// <summary>The value by average.</summary>
    public required string Average { get; init; }

    /// <summary>The value first in, first out.</summary>
    public required string FirstIn { get; init; }

    /// <summary>What it cost is not known.</summary>
    public required string ValueUnknown { get; init; }

    /// <summary>An amount: {amount}, {currency}.</summary>
    public required string Money { get; init; }

    /// <summary>Saves the list as a table for other programs.</summary>
    public required string SaveCsv { get; init; }

    /// <summary>Saves the list as a workbook.</summary>
    public required string SaveXlsx { get; init; }

    /// <summary>Adding an item: heading.</summary>
    public required string AddItem { get; init; }

    /// <summary>Its name in orders.</summary>
    public required string Key { get; init; }

    /// <summary>How that is written.</summary>
    public required string KeyHint { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What it is counted in.</summary>
    public required string CountedIn { get; init; }

    /// <summary>Other names, and how they are written.</summary>
    public required string Aliases { get; init; }

    /// <summary>Adds it.</summary>
    public required string Add { get; init; }

    /// <summary>Adding the beads of a piece: heading.</summary>
    public required string FromPiece { get; init; }

    /// <summary>What that does.</summary>
    public required string FromPieceHint { get; init; }

    /// <summary>The piece.</summary>
    public required string Piece { get; init; }

    /// <summary>Adds them.</summary>
    public required string AddBeads { get; init; }

    /// <summary>What came of it: {added}, {there}.</summary>
    public required string BeadsAdded { get; init; }

    /// <summary>Deliveries from a file: heading.</summary>
    public required string BringIn { get; init; }

    /// <summary>The way to choose one.</summary>
    public required string BringInChoose { get; init; }

    /// <summary>What such a file is: {columns}.</summary>
    public required string BringInHint { get; init; }

    /// <summary>All of it can be taken in: {rows}, {file}.</summary>
    public required string BringInReady { get; init; }

    /// <summary>Something in it is wrong: {wrong}, {rows}, {file}.</summary>
    public required string BringInWrong { get; init; }

    /// <summary>It cannot be read at all: {file}.</summary>
    public required string BringInNot { get; init; }

    /// <summary>Takes it in.</summary>
    public required string BringInAll { get; init; }

    /// <summary>Does not.</summary>
    public required string BringInLeave { get; init; }

    /// <summary>It was taken in: {rows}.</summary>
    public required string BroughtIn { get; init; }

    /// <summary>A line of the file: {line}.</summary>
    public required string Line { get; init; }

    /// <summary>The line brings an item that is not in stock yet.</summary>
    public required string NewItem { get; init; }

    /// <summary>Choosing what is to be done with an item.</summary>
    public required string WhatHappened { get; init; }

    /// <summary>A delivery.</summary>
    public required string TakeIn { get; init; }

    /// <summary>Something was taken.</summary>
    public required string Take { get; init; }

    /// <summary>It was counted again.</summary>
    public required string Count { get; init; }

    /// <summary>Something is kept back.</summary>
    public required string KeepBack { get; init; }

    /// <summary>Something came back.</summary>
    public required string BringBack { get; init; }

    /// <summary>Writes a movement down.</summary>
    public required string Keep { get; init; }

    /// <summary>The unit of sale.</summary>
    public required string SaleUnit { get; init; }

    /// <summary>How many of them.</summary>
    public required string HowMany { get; init; }

    /// <summary>How many are in one, where that is known.</summary>
    public required string Holds { get; init; }

    /// <summary>How long one is.</summary>
    public required string StrandLength { get; init; }

    /// <summary>How many strands are in a hank.</summary>
    public required string Strands { get; init; }

    /// <summary>What one weighs, g.</summary>
    public required string Weight { get; init; }

    /// <summary>How long a bead is.</summary>
    public required string BeadLength { get; init; }

    /// <summary>How many weigh a gram.</summary>
    public required string PerGram { get; init; }

    /// <summary>What that comes to: {quantity}.</summary>
    public required string ComesTo { get; init; }

    /// <summary>What all of it cost.</summary>
    public required string Cost { get; init; }

    /// <summary>The currency.</summary>
    public required string Currency { get; init; }

    /// <summary>Who sold it.</summary>
    public required string Supplier { get; init; }

    /// <summary>The supplier's own number.</summary>
    public required string Number { get; init; }

    /// <summary>The day it came.</summary>
    public required string Received { get; init; }

    /// <summary>How much.</summary>
    public required string HowMuch { get; init; }

    /// <summary>What for.</summary>
    public required string For { get; init; }

    /// <summary>From which lot.</summary>
    public required string FromLot { get; init; }

    /// <summary>From the earliest.</summary>
    public required string EarliestLot { get; init; }

    /// <summary>Into the last that something went out of.</summary>
    public required string LastLot { get; init; }

    /// <summary>All lots together.</summary>
    public required string AllLots { get; init; }

    /// <summary>How much was found.</summary>
    public required string Counted { get; init; }

    /// <summary>Counting without counting each: heading.</summary>
    public required string Helper { get; init; }

    /// <summary>Choosing how.</summary>
    public required string HelperHow { get; init; }

    /// <summary>Counts by weight.</summary>
    public required string ByWeight { get; init; }

    /// <summary>Counts by a row.</summary>
    public required string ByRow { get; init; }

    /// <summary>Beads in the sample.</summary>
    public required string Sample { get; init; }

    /// <summary>What the sample weighs, g.</summary>
    public required string SampleWeight { get; init; }

    /// <summary>What all of them weigh, g.</summary>
    public required string AllWeight { get; init; }

    /// <summary>The scale's smallest step, g.</summary>
    public required string ScaleStep { get; init; }

    /// <summary>How long the row is.</summary>
    public required string RowLength { get; init; }

    /// <summary>The count: {count}.</summary>
    public required string About { get; init; }

    /// <summary>The count and how far it may be off: {count}, {least}, {most}.</summary>
    public required string AboutBetween { get; init; }

    /// <summary>The sample weighs too little for the scale.</summary>
    public required string TooLight { get; init; }

    /// <summary>Takes the count over.</summary>
    public required string TakeCount { get; init; }

    /// <summary>The lots: heading.</summary>
    public required string Lots { get; init; }

    /// <summary>None came yet.</summary>
    public required string NoLots { get; init; }

    /// <summary>A lot: {left} of {came}.</summary>
    public required string LotLeft { get; init; }

    /// <summary>What is kept back: heading.</summary>
    public required string Kept { get; init; }

    /// <summary>Something kept back: {quantity}, {date}.</summary>
    public required string KeptSince { get; init; }

    /// <summary>Lets it go.</summary>
    public required string Release { get; init; }

    /// <summary>Takes it.</summary>
    public required string TakeKept { get; init; }

    /// <summary>The item itself: heading.</summary>
    public required string Describe { get; init; }

    /// <summary>Keeps the description.</summary>
    public required string KeepDescription { get; init; }

    /// <summary>It is kept.</summary>
    public required string Done { get; init; }

    /// <summary>It was not kept; what was typed is still there.</summary>
    public required string NotDone { get; init; }

    /// <summary>The item was described anew in another window meanwhile.</summary>
    public required string Behind { get; init; }

    /// <summary>The history: heading.</summary>
    public required string History { get; init; }

    /// <summary>Shows all of it: {entries}.</summary>
    public required string AllHistory { get; init; }

    /// <summary>A delivery in the history: {quantity}, and where known {supplier}, {number}, {cost}.</summary>
    public required string DidReceive { get; init; }

    /// <summary>Something taken: {quantity}.</summary>
    public required string DidUse { get; init; }

    /// <summary>Something taken that was kept back: {quantity}.</summary>
    public required string DidUseKept { get; init; }

    /// <summary>Something kept back: {quantity}.</summary>
    public required string DidReserve { get; init; }

    /// <summary>Something let go.</summary>
    public required string DidRelease { get; init; }

    /// <summary>Counted again: {quantity}, {by} with its sign.</summary>
    public required string DidRecount { get; init; }

    /// <summary>Something that came back: {quantity}.</summary>
    public required string DidReturn { get; init; }

    /// <summary>What is typed is no number: {min}, {max}.</summary>
    public required string NoNumber { get; init; }

    /// <summary>What is typed is no day.</summary>
    public required string NoDay { get; init; }

    /// <summary>What an item may be counted in.</summary>
    public required FrozenDictionary<StockUnit, string> Units { get; init; }
}
