using System.Collections.Frozen;

namespace Coilwright.Wording;

/// <summary>The page of prices.</summary>
public sealed record PricePageWords
{
    /// <summary>Heading.</summary>
    public required string Heading { get; init; }

    /// <summary>What it is for.</summary>
    public required string Lead { get; init; }

    /// <summary>Over the choice of a piece.</summary>
    public required string WhatHeading { get; init; }

    /// <summary>The piece.</summary>
    public required string Piece { get; init; }

    /// <summary>How many are made together.</summary>
    public required string Together { get; init; }

    /// <summary>What beads are reckoned at.</summary>
    public required string BeadsAt { get; init; }

    /// <summary>What the prices say.</summary>
    public required string AtList { get; init; }

    /// <summary>What those in stock cost on average.</summary>
    public required string AtAverage { get; init; }

    /// <summary>What those in stock cost, first in first out.</summary>
    public required string AtFirstIn { get; init; }

    /// <summary>What the last two do.</summary>
    public required string AtHint { get; init; }

    /// <summary>It is being worked out.</summary>
    public required string Working { get; init; }

    /// <summary>There is no piece.</summary>
    public required string NoPiece { get; init; }

    /// <summary>It cannot be worked out.</summary>
    public required string NotPriced { get; init; }

    /// <summary>The list that is kept cannot be read.</summary>
    public required string Unreadable { get; init; }

    /// <summary>Over the tree.</summary>
    public required string OpenHint { get; init; }

    /// <summary>Box of another price.</summary>
    public required string AtPrice { get; init; }

    /// <summary>What it does.</summary>
    public required string AtPriceHint { get; init; }

    /// <summary>Over how each rule came to its price.</summary>
    public required string HowHeading { get; init; }

    /// <summary>Over the costs.</summary>
    public required string CostsHeading { get; init; }

    /// <summary>What they are.</summary>
    public required string CostsLead { get; init; }

    /// <summary>They are kept since {date}.</summary>
    public required string CostsKept { get; init; }

    /// <summary>There are none yet.</summary>
    public required string CostsNone { get; init; }

    /// <summary>What is written cannot be read as it stands.</summary>
    public required string NotYet { get; init; }

    /// <summary>Brings a file of costs in.</summary>
    public required string Bring { get; init; }

    /// <summary>Saves the costs as a file.</summary>
    public required string Save { get; init; }

    /// <summary>Takes the last change back.</summary>
    public required string Back { get; init; }

    /// <summary>One more line of {list}.</summary>
    public required string AddLine { get; init; }

    /// <summary>Takes a line out.</summary>
    public required string TakeOut { get; init; }

    /// <summary>A line of a list: {list}, {number}.</summary>
    public required string LineOf { get; init; }

    /// <summary>A line is not filled in yet.</summary>
    public required string StillEmpty { get; init; }

    /// <summary>What formulas can name: {figures}.</summary>
    public required string FormulaHelp { get; init; }

    /// <summary>Opens that.</summary>
    public required string FormulaHelpHead { get; init; }

    /// <summary>There are no fees to choose.</summary>
    public required string NoFees { get; init; }

    /// <summary>What is sold, by word.</summary>
    public required FrozenDictionary<string, string> Sold { get; init; }

    /// <summary>The lists, by their names in the file.</summary>
    public required FrozenDictionary<string, string> Lists { get; init; }

    /// <summary>The fields, by their names in the file.</summary>
    public required FrozenDictionary<string, string> Fields { get; init; }
}
