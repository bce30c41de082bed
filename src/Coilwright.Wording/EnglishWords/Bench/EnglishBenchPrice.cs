using System.Collections.Frozen;

namespace Coilwright.Wording.EnglishWords;

/// <summary>English of <see cref="PricePageWords"/>.</summary>
internal static class EnglishBenchPrice
{
    internal static PricePageWords Make() => new()
    {
        Heading = "Prices",
        Lead = "What a piece costs you, opened to the last line, and what to ask for it by your own rules, side by side.",
        WhatHeading = "Which piece",
        Piece = "Piece",
        Together = "How many are made together",
        BeadsAt = "Beads cost",
        AtList = "what the prices say",
        AtAverage = "what those in stock cost, on average",
        AtFirstIn = "what those in stock cost, first in, first out",
        AtHint = "Where enough of a bead is in stock it costs what you paid for it; else what the prices say. Each line says which.",
        Working = "Working it out…",
        NoPiece = "There is no piece on the shelf yet.",
        NotPriced = "It cannot be worked out:",
        Unreadable = "The costs that are kept cannot be read. Bring in a file to put in their place.",
        OpenHint = "Open a line to see what it is the sum of.",
        AtPrice = "Another price",
        AtPriceHint = "Type a price to see what it leaves under each rule.",
        HowHeading = "How each price comes about",
        CostsHeading = "Your costs and rules",
        CostsLead = "Every figure can be changed here; what is empty is not counted. Kept as soon as all of it can be read.",
        CostsKept = "Kept {date}.",
        CostsNone = "Nothing is told yet: write it here, or bring in a file.",
        NotYet = "Not kept yet: what is marked below must be mended first. What is kept stays as it was.",
        Bring = "Bring in a file of costs (.costs.json)",
        Save = "Save as a file",
        Back = "Take the last change back",
        AddLine = "One more",
        TakeOut = "Take out",
        LineOf = "{list}, line {number}",
        StillEmpty = "Fill in what is marked, or take the line out.",
        FormulaHelp = "A formula has numbers with a decimal point, + - * / ( ) %, min, max, up(value, step), ending(value, ending), the names of other rules, and these figures: {figures}.",
        FormulaHelpHead = "What a formula can name",
        NoFees = "No fees are written yet.",
        Sold = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["piece"] = "piece",
            ["kit"] = "kit",
            ["pattern"] = "pattern",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Lists = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            [""] = "In general",
            ["wire"] = "A pack of wire",
            ["findings"] = "Findings",
            ["packaging"] = "Packaging",
            ["steps"] = "Work, step by step",
            ["overheads"] = "Overheads",
            ["fees"] = "Fees",
            ["outlays"] = "Paid once",
            ["rules"] = "Rules for prices",
        }.ToFrozenDictionary(StringComparer.Ordinal),
        Fields = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["currency"] = "Currency (three letters)",
            ["wagePerHour"] = "An hour of work",
            ["wastePercent"] = "Beads that break, %",
            ["price"] = "Price of a pack",
            ["loops"] = "Loops in it",
            ["pieces"] = "or: pieces from it",
            ["name"] = "Name",
            ["count"] = "How many in one",
            ["holds"] = "A pack holds",
            ["for"] = "For",
            ["minutes"] = "Minutes",
            ["perBatch"] = "Once for all together",
            ["percent"] = "In a hundred",
            ["perHour"] = "or: an hour",
            ["perMonth"] = "or: a month",
            ["monthPieces"] = "pieces a month",
            ["fixed"] = "On each sale",
            ["amount"] = "Amount",
            ["sells"] = "Sells",
            ["formula"] = "Formula",
            ["fees"] = "Fees",
            ["roundUpTo"] = "Up to the next",
            ["endIn"] = "or: ends in",
        }.ToFrozenDictionary(StringComparer.Ordinal),
    };
}
