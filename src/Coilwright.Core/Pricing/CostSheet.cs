using System.Collections.Immutable;
using Coilwright.Core.Making;

namespace Coilwright.Core.Pricing;

/// <summary>What is sold.</summary>
public enum Sold
{
    /// <summary>The finished piece.</summary>
    Piece,

    /// <summary>A kit to make it from: the same materials, not strung.</summary>
    Kit,

    /// <summary>The pattern alone: no materials.</summary>
    Pattern,
}

/// <summary>A pack of the wire, and how much of it goes into one: by loops, or by how many it makes.</summary>
/// <param name="Price">Of one pack, 0 or more.</param>
/// <param name="Loops">Loops in one pack, above 0; null when it is told by pieces.</param>
/// <param name="Pieces">How many one pack makes, 1 or more; null when it is told by loops.</param>
public sealed record WirePack(decimal Price, decimal? Loops, int? Pieces);

/// <summary>A finding or something to pack it in.</summary>
/// <param name="Name">Its name.</param>
/// <param name="IsPackaging">Whether it is packaging, not a finding.</param>
/// <param name="Count">How many go into one, 1 or more.</param>
/// <param name="Price">Of one pack, 0 or more.</param>
/// <param name="Holds">How many one pack holds, 1 or more.</param>
/// <param name="For">What it goes into.</param>
public sealed record CostItem(string Name, bool IsPackaging, int Count, decimal Price, int Holds, ImmutableArray<Sold> For);

/// <summary>A step of work that was timed.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Minutes">How long it takes, 0 or more.</param>
/// <param name="PerBatch">Whether it is done once for all that are made together, not for each.</param>
/// <param name="For">What it is done for.</param>
public sealed record TimedStep(string Name, decimal Minutes, bool PerBatch, ImmutableArray<Sold> For)
{
    /// <summary>Which steps of the pattern it is, each once; they share its minutes evenly. Empty when the maker does not say, or it is none of them.</summary>
    public ImmutableArray<StepAction> Does { get; init; } = [];

    /// <summary>How long what was done must be left alone afterwards, as glue that sets, minutes above 0; null for not at all. No work: it is in no price.</summary>
    public decimal? WaitMinutes { get; init; }
}

/// <summary>A share of what the studio costs, whatever is made. One of the three ways is not null.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Percent">In a hundred of materials and labour together, 0 or more.</param>
/// <param name="PerHour">For each hour of work, 0 or more.</param>
/// <param name="PerMonth">For a month, shared by <paramref name="Pieces"/>, 0 or more.</param>
/// <param name="Pieces">How many are made in a month, 1 or more; told with <paramref name="PerMonth"/>.</param>
/// <param name="For">What bears it.</param>
public sealed record Overhead(string Name, decimal? Percent, decimal? PerHour, decimal? PerMonth, int? Pieces, ImmutableArray<Sold> For);

/// <summary>What someone keeps of a price: a card fee, a listing, a gallery's share.</summary>
/// <param name="Name">By this name rules call it.</param>
/// <param name="Percent">In a hundred of the price, 0 or more.</param>
/// <param name="Fixed">Of each sale, 0 or more.</param>
public sealed record Fee(string Name, decimal Percent, decimal Fixed);

/// <summary>What is paid once, however many are sold.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Amount">0 or more.</param>
/// <param name="For">What must bring it in.</param>
public sealed record Outlay(string Name, decimal Amount, ImmutableArray<Sold> For);

/// <summary>A way to price, as the maker wrote it.</summary>
/// <param name="Name">By this name other rules call it, <c>[a-z][a-z0-9_]*</c>.</param>
/// <param name="Formula">Its formula.</param>
/// <param name="Sells">What is sold at it.</param>
/// <param name="Fees">Fees that are kept of it, by name.</param>
/// <param name="RoundUpTo">Its price goes up to the next multiple of this, above 0; null when it does not.</param>
/// <param name="EndIn">Its price goes up to the next that ends in this; null when it does not. One of the two at most.</param>
public sealed record PriceRule(string Name, string Formula, Sold Sells, ImmutableArray<string> Fees, decimal? RoundUpTo, decimal? EndIn)
{
    /// <summary>A price rounded as the rule asks: up, and to the cent where it asks for nothing.</summary>
    public decimal Rounded(decimal price) => EndIn is { } ending ? PriceRounding.Ending(price, ending) : PriceRounding.Up(price, RoundUpTo ?? PriceRounding.Cent);
}

/// <summary>What a studio's work costs, as the maker wrote it down. What she did not write is not counted.</summary>
public sealed record CostSheet
{
    /// <summary>Nothing but the beads is known.</summary>
    public static readonly CostSheet Empty = new();

    /// <summary>Three letters of ISO 4217; null when nobody said.</summary>
    public string? Currency { get; init; }

    /// <summary>What an hour of work is to be paid; null for none.</summary>
    public decimal? WagePerHour { get; init; }

    /// <summary>Beads that break or do not match, in a hundred of the beads' cost; null when nobody said.</summary>
    public decimal? WastePercent { get; init; }

    /// <summary>The wire; null when nobody said.</summary>
    public WirePack? Wire { get; init; }

    /// <summary>Findings and packaging.</summary>
    public ImmutableArray<CostItem> Items { get; init; } = [];

    /// <summary>Steps of work.</summary>
    public ImmutableArray<TimedStep> Steps { get; init; } = [];

    /// <summary>Overheads.</summary>
    public ImmutableArray<Overhead> Overheads { get; init; } = [];

    /// <summary>Fees.</summary>
    public ImmutableArray<Fee> Fees { get; init; } = [];

    /// <summary>Outlays.</summary>
    public ImmutableArray<Outlay> Outlays { get; init; } = [];

    /// <summary>Ways to price.</summary>
    public ImmutableArray<PriceRule> Rules { get; init; } = [];
}
