using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Batches;
using Coilwright.Core.Beads;
using Coilwright.Core.Buying;
using Coilwright.Core.Cutting;
using Coilwright.Core.Editing;
using Coilwright.Core.Faults;
using Coilwright.Core.Grading;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Core.Substitutes;

namespace Coilwright.Core.Quotes;

/// <summary>What may stand in for a bead that is not at home.</summary>
/// <param name="Item">The bead.</param>
/// <param name="Found">Beads of which enough is at home for all that are ordered, the best first.</param>
public sealed record QuoteStandIns(ShoppingItem Item, ImmutableArray<Substitute> Found);

/// <summary>The answer to a custom order: the piece graded to the wrist, what must be bought and when it is there, the price, the deposit and the time at the bench.</summary>
/// <remarks>Money is decimal; the price is rounded by its rule and the deposit up to a cent, nothing else is. Days are counted on the calendar from the day of the quote. That it cannot be promised is an
/// answer with its reasons.</remarks>
public sealed record Quote
{
    /// <summary>Stand-ins told for each bead at most.</summary>
    public const int MostStandIns = 3;

    private Quote() { }

    /// <summary>What was ordered.</summary>
    public required QuoteAsk Ask { get; init; }

    /// <summary>The design, with what was swapped.</summary>
    public required Sizes Sizes { get; init; }

    /// <summary>For each bead that was swapped, by its name in the order, what it is called.</summary>
    public required ImmutableDictionary<string, string> Swapped { get; init; }

    /// <summary>The size that is ordered.</summary>
    public Size Size => Sizes.All[0];

    /// <summary>What is needed, at home and bought.</summary>
    public required ShoppingPlan Supplies { get; init; }

    /// <summary>When it is there.</summary>
    public required Arrivals Arrivals { get; init; }

    /// <summary>For each bead that is not at home what may stand in for it.</summary>
    public required ImmutableArray<QuoteStandIns> StandIns { get; init; }

    /// <summary>What one costs, and what every rule asks.</summary>
    public required PricePlan Prices { get; init; }

    /// <summary>What the chosen rule asks for one; null where there is none.</summary>
    public required AskedPrice? Price { get; init; }

    /// <summary>Steps of work, for all that are ordered.</summary>
    public required ImmutableArray<BatchStep> Steps { get; init; }

    /// <summary>How the wire at hand is cut; null when nobody said what is there.</summary>
    public required CuttingPlan? Wire { get; init; }

    /// <summary>Wire to cut for all that are ordered, whole mm.</summary>
    public long CutMm => (long)Ask.Count * WireDemand.Of(Size.Reckoned, Ask.Count).WholeMm;

    /// <summary>The price of all that are ordered; null without a rule.</summary>
    public decimal? Total => Price?.Outcome.Price * Ask.Count;

    /// <summary>What is paid before work begins; null where none is asked for or there is no price.</summary>
    public decimal? Deposit => Ask.DepositPercent is { } percent && Total is { } total ? Math.Min(total, PriceRounding.Up(total * percent / 100, PriceRounding.Cent)) : null;

    /// <summary>What is paid afterwards; null without a deposit.</summary>
    public decimal? Rest => Total - Deposit;

    /// <summary>The day on which all beads are there if they are ordered on the day of the quote; null when that is not known.</summary>
    public DateOnly? BeadsThereOn => Arrivals.Days is { } days ? Ask.On.AddDays(days) : null;

    /// <summary>Time at the bench for all, minutes; null when no step was timed.</summary>
    public decimal? Minutes => Steps.IsEmpty ? null : Steps.Sum(s => s.Minutes);

    /// <summary>The currency of all amounts; null when nobody said.</summary>
    public string? Currency => Prices.Currency;

    /// <summary>What stands against it, and what is to be known; the first ones hinder.</summary>
    public ImmutableArray<QuoteReason> Reasons { get; private init; } = [];

    /// <summary>Whether it can be promised as it stands.</summary>
    public bool CanBePromised => Reasons.All(r => r > QuoteReason.Loses);

    /// <summary>Works it out.</summary>
    /// <param name="design">The design, in its base size.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="ask">What was ordered.</param>
    /// <param name="sources">What it is reckoned from.</param>
    /// <param name="buyer">Finds what to buy.</param>
    /// <param name="quote">The quote.</param>
    /// <param name="faults">Why there is none: a rule that is not known or sells no piece, an end before the quote's own day, a deposit of more than all, a swap of a bead that is not strung, or what <see cref="ShoppingList"/> and <see cref="PricePlan"/> refuse.</param>
    /// <param name="cancel">Stops it; what comes of it then is to be thrown away.</param>
    /// <exception cref="ArgumentException">The wrist is out of range.</exception>
    public static bool TryMake(Piece design, ReckoningData data, QuoteAsk ask, QuoteSources sources, IBuyer buyer, out Quote? quote, out ImmutableArray<Fault> faults, CancellationToken cancel = default)
    {
        quote = null;
        faults = Check(ask, sources.Costs.Sheet);
        if (!faults.IsEmpty) return false;
        var swapped = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        foreach (var swap in ask.Swaps)
        {
            if (Swapping(design, swap, data, out faults) is not { } other) return false;
            swapped[swap.Bead] = design.Beads.First(b => b.Id == swap.Bead).Name;
            design = other;
        }
        var sizes = Grader.Of(design, data, new SizesRequest([ask.WristMm]), cancel: cancel);
        cancel.ThrowIfCancellationRequested();
        var size = sizes.All[0];
        ShoppingPiece[] ordered = [new(design.Title, size.Piece, ask.Count)];
        if (!ShoppingList.TryMake(ordered, sources.Spares, sources.Home, sources.Prices, out var missing, out faults)) return false;
        // A price knows no home: what is taken from a drawer is bought again.
        if (!ShoppingList.TryMake(ordered, Spares.None, ImmutableDictionary<string, int>.Empty, sources.Prices, out var all, out faults)) return false;
        var demand = WireDemand.Of(size.Reckoned, ask.Count, design.Title);
        if (!PricePlan.TryMake(sources.Costs, all!, WireUse.Of(demand), sources.Lots, null, out var prices, out faults)) return false;
        var supplies = new ShoppingPlan(missing!, buyer.Find(missing!.Buying, null, cancel));
        var made = new Quote
        {
            Ask = ask,
            Sizes = sizes,
            Swapped = swapped.ToImmutable(),
            Supplies = supplies,
            Arrivals = Arrivals.Of(supplies),
            StandIns = [.. missing.Items.Where(i => i.Missing > 0 && i.Bead is not null).Select(i => new QuoteStandIns(i, InPlaceOf(i, size.Piece, ask.Count, sources.Others, data, cancel)))],
            Prices = prices!,
            Price = prices!.Prices.FirstOrDefault(p => p.Rule.Sells == Sold.Piece && (ask.Rule is null || p.Rule.Name == ask.Rule)),
            Steps = BatchStep.All(sources.Costs.Sheet, Sold.Piece, ask.Count),
            Wire = sources.Wire is { } wire && ask.Count <= CuttingRules.MostPieces ? WireCutting.Of([demand], wire, sources.Cutting, data.Choices, cancel: cancel) : null,
        };
        quote = made with { Reasons = [.. made.ReasonsOf().Order()] };
        cancel.ThrowIfCancellationRequested();
        return true;
    }

    private static ImmutableArray<Fault> Check(QuoteAsk ask, CostSheet sheet)
    {
        var found = ImmutableArray.CreateBuilder<Fault>();
        ImmutableArray<string> rules = [.. sheet.Rules.Where(r => r.Sells == Sold.Piece).Select(r => r.Name)];
        if (ask.Rule is { } rule && !rules.Contains(rule)) found.Add(Fault.Of(FaultCodes.WordUnknown, "rule", rule, ("known", string.Join(", ", rules)), ("nearest", NearestName.Of(rule, rules) ?? "")));
        if (ask.Until is { } until && until < ask.On) found.Add(Fault.Of(FaultCodes.QuoteEndsBefore, "until", Day(until), ("on", Day(ask.On))));
        if (ask.DepositPercent is > 100) found.Add(Fault.Of(FaultCodes.ValueAtMost, "deposit", ask.DepositPercent.Value.ToString(CultureInfo.InvariantCulture), ("max", "100"), ("unit", "")));
        return found.ToImmutable();
    }

    private static string Day(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    private static int KindOf(Piece piece, string bead) => piece.Order.Kinds.First(k => piece.Beads[k].Id == bead);

    // By the edits of the bench, so that the order stays written as it was. The other bead stands for what the one was in the design, where it can.
    private static Piece? Swapping(Piece piece, Swap swap, ReckoningData data, out ImmutableArray<Fault> faults)
    {
        ImmutableArray<string> strung = [.. piece.Order.Kinds.Distinct().Select(k => piece.Beads[k].Id)];
        if (!strung.Contains(swap.Bead))
        {
            faults = [Fault.Of(FaultCodes.WordUnknown, "swaps", swap.Bead, ("known", string.Join(", ", strung)), ("nearest", NearestName.Of(swap.Bead, strung) ?? ""))];
            return null;
        }
        var old = piece.Beads[KindOf(piece, swap.Bead)];
        var with = swap.With.Description with { Role = old.Role, Shows = old.Description.Shows };
        PieceEdit[] edits = piece.Beads.Any(b => b.Id == with.Id) ? [] : [new AddBead(Bead.TryMake(with, out _, out _) ? with : swap.With.Description)];
        foreach (var edit in edits.Append(new ReplaceEverywhere(swap.Bead, with.Id)))
        {
            switch (PieceEditing.Apply(piece, edit, data))
            {
                case EditOutcome.Done done: piece = done.Piece; break;
                case EditOutcome.Refused refused:
                    faults = refused.Why;
                    return null;
            }
        }
        faults = [];
        return piece;
    }

    // Only what is there for all that are ordered: another bead that must be bought too is no help.
    private static ImmutableArray<Substitute> InPlaceOf(ShoppingItem item, Piece piece, int count, ImmutableArray<Candidate> others, ReckoningData data, CancellationToken cancel)
    {
        Candidate[] enough = [.. others.Where(o => o.Have >= (long)item.Each[0] * count)];
        return enough.Length == 0 ? [] : Substituting.For(piece, KindOf(piece, item.Id), enough, data, MostStandIns, cancel);
    }

    private IEnumerable<QuoteReason> ReasonsOf()
    {
        if (!Size.ComesOut) yield return QuoteReason.SizeDoesNotComeOut;
        if (Size.Reckoned.Notices.Any(n => n.Severity == Severity.Stop)) yield return QuoteReason.ReportSaysStop;
        if (Size.Coil.Answer == CoilAnswer.SmallerWanted) yield return QuoteReason.SmallerCoilWanted;
        if (Size.Coil.Answer == CoilAnswer.LargerWanted) yield return QuoteReason.LargerCoilWanted;
        if (!Supplies.List.CannotBeHad.IsEmpty) yield return QuoteReason.CannotBeHad;
        if (Supplies.Plan is null) yield return QuoteReason.NoOrderCanBeSent;
        if (Price is null) yield return QuoteReason.NoRule;
        else if (Price.Outcome.Gain < 0) yield return QuoteReason.Loses;
        if (Wire is { ComesOut: false }) yield return QuoteReason.WireShort;
        if (Prices.Products[0].Unpriced.Any()) yield return QuoteReason.BeadsUnpriced;
        if (Arrivals.Days is null) yield return QuoteReason.DayNotTold;
        if (Steps.IsEmpty) yield return QuoteReason.NotTimed;
    }
}
