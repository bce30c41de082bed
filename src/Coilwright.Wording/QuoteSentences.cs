using System.Globalization;
using Coilwright.Core.Beads;
using Coilwright.Core.Listings;
using Coilwright.Core.Quotes;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Core.Substitutes;

namespace Coilwright.Wording;

/// <summary>The answer to a custom order in a maker's words: what goes to the customer, and what it comes from, which does not.</summary>
/// <param name="quote">The quote.</param>
/// <param name="listing">What is told of the size that is ordered.</param>
/// <param name="language">The language.</param>
public sealed class QuoteSentences(Quote quote, Listing listing, Language language)
{
    private readonly QuoteWords _words = language.Quote;
    private readonly ListingSentences _listing = new(listing, language);
    private readonly BeadNames _names = new(quote.Size.Reckoned);

    /// <summary>Its title.</summary>
    public string Title => $"{_words.Title}: {quote.Size.Piece.Title}";

    /// <summary>What goes to the customer, part by part; the first has the title for its heading. Nothing of what it costs the maker.</summary>
    public IEnumerable<ListingPart> ForTheCustomer()
    {
        yield return new(Title, [.. Head()], false);
        var parts = _listing.Parts().ToArray();
        foreach (var heading in new[] { language.Listing.SizeHeading, language.Listing.MaterialsHeading }) yield return parts.First(p => p.Heading == heading);
        yield return new(_words.PriceHeading, [.. Price()], false);
        yield return new(_words.WhenHeading, [When()], false);
        foreach (var heading in new[] { language.Listing.MetalsHeading, language.Listing.CautionsHeading }) yield return parts.First(p => p.Heading == heading);
    }

    /// <summary>The same as plain text to copy: LF at the ends of lines, none at the end of the text.</summary>
    public string Text() => string.Join("\n\n", ForTheCustomer().Select(part => part.Heading + "\n" + (part.IsList ? string.Join('\n', part.Lines.Select(l => "- " + l)) : string.Join(' ', part.Lines))));

    /// <summary>For whom, of which day, what, and what is swapped in it.</summary>
    public IEnumerable<string> Head()
    {
        if (quote.Ask.For.Length > 0) yield return language.Sentence(_words.For, ("for", quote.Ask.For));
        yield return language.Sentence(_words.Dated, ("on", Day(quote.Ask.On)));
        yield return language.Sentence(_words.What, ("name", quote.Size.Piece.Title), ("several", quote.Ask.Count > 1 ? quote.Ask.Count : null), ("wristMm", quote.Ask.WristMm));
        foreach (var swap in quote.Ask.Swaps)
            yield return language.Sentence(_words.Swapped, ("bead", SwappedOut(swap)), ("with", swap.With.Name));
    }

    /// <summary>The price, the deposit and how long both stand.</summary>
    public IEnumerable<string> Price()
    {
        if (quote.Price is not { } price) yield return _words.PriceNotTold;
        else
        {
            yield return quote.Ask.Count == 1 ? language.Sentence(_words.PriceEach, ("price", Money(price.Outcome.Price)))
                : language.Sentence(_words.PriceAll, ("count", quote.Ask.Count), ("price", Money(price.Outcome.Price)), ("total", Money(quote.Total!.Value)));
            if (quote is { Deposit: { } deposit, Rest: { } rest })
                yield return language.Sentence(_words.Deposit, ("percent", Percent()), ("deposit", Money(deposit)), ("rest", Money(rest)));
        }
        if (quote.Ask.Until is { } until) yield return language.Sentence(_words.Until, ("until", Day(until)));
        yield return _words.NoAdvice;
    }

    /// <summary>When the beads are there.</summary>
    public string When() => quote.Arrivals.AllAtHome ? _words.AllAtHome
        : quote.BeadsThereOn is { } day ? language.Sentence(day == quote.Ask.On ? _words.ThereAtOnce : _words.There, ("on", Day(quote.Ask.On)), ("days", quote.Arrivals.Days), ("day", Day(day))) : _words.NotToldWhen;

    /// <summary>What stands against promising it, and what is to be known before; that nothing does where nothing does.</summary>
    public IEnumerable<string> Reasons() => quote.Reasons.IsEmpty ? [_words.CanBePromised] : quote.Reasons.SelectMany(Of);

    /// <summary>What changes from the base size, and what else there is to know of this one.</summary>
    public IEnumerable<string> Size()
    {
        var said = new SizesSentences(quote.Sizes, language);
        yield return said.Change(quote.Size);
        foreach (var sentence in said.Keeps().Concat(said.Notes(quote.Size))) yield return sentence;
    }

    /// <summary>A bead's name for people; caps in a word.</summary>
    public string NameOf(ShoppingItem item) => item.Bead?.Name ?? language.Shop.Caps;

    /// <summary>What is needed: bead, to use, to spare, at home, missing, when it is here.</summary>
    public IEnumerable<string[]> Beads() => quote.Arrivals.Lines.Select(l => new[]
    {
        NameOf(l.Line.Item), Count(l.Line.Item.Use), Count(l.Line.Item.Spare), Count(l.Line.Item.Home), Count(l.Line.Item.Missing), Here(l),
    });

    /// <summary>What is bought of what is missing, from whom and in how many days: a line for each bead.</summary>
    public IEnumerable<string> From() => quote.Arrivals.Lines.Where(l => l.Line.Item.Missing > 0).Select(l => $"{NameOf(l.Line.Item)}: {FromOf(l)}");

    /// <summary>What buying costs, which is not the price; nothing where nothing is bought for money.</summary>
    public IEnumerable<string> Buying()
    {
        if (quote.Supplies.Plan is { Purchases.IsEmpty: false } plan) yield return language.Sentence(_words.BuyNote, ("total", Money(plan.Total)));
    }

    /// <summary>What may stand in for what is not at home.</summary>
    public IEnumerable<string> StandIns() => quote.StandIns.SelectMany(s => s.Found.IsEmpty ? [language.Sentence(_words.NoStandIn, ("bead", NameOf(s.Item)))] : s.Found.Select(f => StandIn(s.Item, f)));

    /// <summary>A bead that may stand in for another.</summary>
    public string StandIn(ShoppingItem item, Substitute found)
    {
        var said = new SubstituteSentences(new SubstitutesFound(quote.Size.Reckoned, KindOf(item), [found]), language);
        return string.Join(' ', said.Against(found).Prepend(language.Sentence(_words.StandIn, ("bead", NameOf(item)), ("with", found.Bead.Name), ("have", found.Have), ("differs", said.Differs(found)))));
    }

    /// <summary>The wire, and whether there is enough.</summary>
    public IEnumerable<string> Wire()
    {
        yield return language.Sentence(_words.WireCut, ("count", quote.Ask.Count), ("loops", quote.Size.Reckoned.Wire.LoopsToCut), ("cutMm", quote.Size.Reckoned.Wire.CutMm));
        if (quote.Wire is not { } wire) yield return _words.WireNotTold;
        else if (wire.ComesOut) yield return _words.WireEnough;
        else
            foreach (var sentence in new CutSentences(wire, language).NotCut()) yield return sentence;
    }

    /// <summary>How the price came about: the rule, the sum, the deposit.</summary>
    public IEnumerable<string> How()
    {
        if (quote.Price is not { } price) yield break;
        yield return new PriceSentences(quote.Prices, language).RuleOf(price);
        if (quote.Ask.Count > 1) yield return language.Sentence(_words.TotalHow, ("count", quote.Ask.Count), ("price", Money(price.Outcome.Price)), ("total", Money(quote.Total!.Value)));
        if (quote is { Deposit: { } deposit, Rest: { } rest, Total: { } total })
            yield return language.Sentence(_words.DepositHow, ("percent", Percent()), ("total", Money(total)), ("deposit", Money(deposit)), ("rest", Money(rest)));
    }

    /// <summary>How long each step takes; nothing where none was timed.</summary>
    public IEnumerable<string> Steps() => quote.Steps.Select(s => language.Fill(quote.Ask.Count == 1 ? _words.Step : s.Step.PerBatch ? language.Batch.Once : language.Batch.Each,
        ("name", s.Step.Name), ("each", Minutes(s.Step.Minutes)), ("minutes", Minutes(s.Minutes))));

    /// <summary>How long it takes in all, or that it is not told.</summary>
    public string Time() => quote.Minutes is not { } minutes ? _words.NotTimed
        : language.Sentence(_words.TimeInAll, ("minutes", Minutes(minutes)), ("each", quote.Ask.Count > 1 ? Minutes(minutes / quote.Ask.Count) : null));

    /// <summary>An amount with its currency where that is known.</summary>
    public string Money(decimal amount) => quote.Currency is { } currency ? $"{language.Amount(amount)}\u00a0{currency}" : language.Amount(amount);

    /// <summary>A day as it is written everywhere: <c>2026-03-31</c>.</summary>
    public static string Day(DateOnly day) => day.ToString("O", CultureInfo.InvariantCulture);

    private IEnumerable<string> Of(QuoteReason reason)
    {
        switch (reason)
        {
            case QuoteReason.SizeDoesNotComeOut:
                var off = quote.Size.OffMm;
                yield return language.Sentence(_words.SizeOff, ("mm", off), ("short", off < 0 ? 1 : null), ("long", off < 0 ? null : 1), ("toleranceMm", quote.Sizes.ToleranceMm));
                break;
            case QuoteReason.ReportSaysStop:
                yield return language.Sentence(_words.SaysStop, ("notices", string.Join("; ", quote.Size.Reckoned.Notices.Where(n => n.Severity == Severity.Stop).Select(n => language.Say(n, _names.Of).Short).Distinct())));
                break;
            case QuoteReason.CannotBeHad:
                foreach (var want in quote.Supplies.List.CannotBeHad)
                    yield return language.Sentence(_words.CannotBeHad, ("missing", want.Amount), ("bead", NameOf(quote.Supplies.List.Items.First(i => i.Id == want.Item))));
                break;
            case QuoteReason.Loses:
                yield return language.Sentence(_words.Loses, ("rule", quote.Price!.Rule.Name), ("loss", Money(-quote.Price.Outcome.Gain)), ("least", Money(quote.Price.LeastPrice)));
                break;
            case QuoteReason.BeadsUnpriced:
                var prices = new PriceSentences(quote.Prices, language);
                string[] names = [.. quote.Prices.Products[0].Unpriced.Select(prices.NameOf)];
                yield return language.Sentence(_words.Unpriced, ("count", names.Length), ("names", string.Join(", ", names)));
                break;
            case QuoteReason.DayNotTold:
                string[] untold = [.. quote.Arrivals.Suppliers.Where(s => s.Name != PriceList.Unnamed && s.LeadDays is null).Select(s => s.Name)];
                string[] nobody = [.. quote.Arrivals.Lines.Where(l => l.Why == WhyNoDay.NobodySells).Select(l => NameOf(l.Line.Item))];
                yield return language.Sentence(_words.DayNotTold, ("names", string.Join(", ", untold)), ("nobody", string.Join(", ", nobody)));
                break;
            default:
                yield return language.Sentence(reason switch
                {
                    QuoteReason.NoOrderCanBeSent => _words.NoOrderCanBeSent,
                    QuoteReason.NoRule => _words.NoRule,
                    QuoteReason.SmallerCoilWanted => _words.SmallerCoil,
                    QuoteReason.LargerCoilWanted => _words.LargerCoil,
                    QuoteReason.WireShort => _words.WireShort,
                    _ => _words.NotTimed,
                }, ("loopMm", quote.Size.Coil.AskedLoopMm));
                break;
        }
    }

    private string Here(Arrival line) => line.Days switch
    {
        0 when line.Line.Item.Missing == 0 => _words.AtHomeAlready,
        { } days => language.Fill(_words.HereOn, ("day", Day(quote.Ask.On.AddDays(days))), ("days", days)),
        null => _words.HereUnknown,
    };

    private string FromOf(Arrival line) => line.From.IsEmpty ? line.Why == WhyNoDay.CannotBeHad ? _words.HereUnknown : _words.NobodySells
        : string.Join("; ", line.From.Select(f => language.Fill(_words.FromLine, ("packs", PackWords.Of(f.Units, new Pack(f.Offer.Unit, f.Offer.Holds), language)),
            ("supplier", f.Supplier.Name == PriceList.Unnamed ? _words.OwnPrice : f.Supplier.Name), ("cost", Money(f.Cost)), ("days", f.Supplier.LeadDays))));

    private string SwappedOut(Swap swap) => quote.Swapped.GetValueOrDefault(swap.Bead, swap.Bead);

    private int KindOf(ShoppingItem item) => Enumerable.Range(0, quote.Size.Piece.Beads.Length).First(k => quote.Size.Piece.Beads[k].Id == item.Id);

    private string Percent() => language.Number((double)quote.Ask.DepositPercent!.Value, 4);

    private string Minutes(decimal minutes) => language.Number((double)minutes, 1);

    private string Count(int count) => language.Number(count, 0);
}
