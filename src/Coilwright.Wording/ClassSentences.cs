using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Classes;
using Coilwright.Core.Making;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;

namespace Coilwright.Wording;

/// <summary>A stretch of a class in words.</summary>
/// <param name="Time">When it begins.</param>
/// <param name="Minutes">How long it is.</param>
/// <param name="What">What is done.</param>
/// <param name="Stretch">The stretch.</param>
public sealed record SaidStretch(string Time, string Minutes, string What, Stretch Stretch);

/// <summary>A class on a piece in a maker's words.</summary>
/// <param name="plan">The class.</param>
/// <param name="language">The language.</param>
/// <param name="mark">Marks a key letter where it stands in a sentence; null leaves it as it is.</param>
/// <param name="own">Cleans the maker's own words of such marks; null leaves them as they are.</param>
public sealed class ClassSentences(ClassPlan plan, Language language, Func<string, string>? mark = null, Func<string, string>? own = null)
{
    private readonly ClassWords _words = language.Class;
    private readonly PatternSentences _pattern = new(plan.Reckoned, language, mark, own);
    private readonly PriceSentences _prices = new(plan.Prices, language);
    private readonly BeadNames _names = new(plan.Reckoned);

    /// <summary>Its title.</summary>
    public string Title => language.Fill(_words.Title, ("name", Own(plan.Reckoned.Piece.Title)));

    /// <summary>How many take part, and when.</summary>
    public IEnumerable<string> Head()
    {
        yield return language.Sentence(_words.Takers, ("participants", plan.Ask.Participants), ("spare", plan.Ask.SpareKits is > 0 and var spare ? spare : null));
        if (plan.Ask.Start is not null)
            yield return language.Sentence(_words.Hours, ("start", Clock(0)), ("end", plan.Available is { } end ? Clock(end) : null), ("open", plan.Available is null ? 1 : null));
    }

    /// <summary>What stands against it, and what is to be known; that nothing does where nothing does.</summary>
    public IEnumerable<string> Reasons() => plan.Reasons.IsEmpty ? [_words.CanBeHeld] : plan.Reasons.SelectMany(Of);

    /// <summary>What is packed.</summary>
    public IEnumerable<string> Kits()
    {
        var kit = plan.Kits.Kits[0];
        yield return language.Sentence(_words.Kits, ("kits", kit.Count), ("beads", kit.Beads), ("spare", kit.Bags.Sum(b => b.Spare) is > 0 and var spare ? spare : null));
        foreach (var line in plan.Kits.Picks.Where(p => p.Aside > 0)) yield return language.Fill(_words.Aside, ("count", line.Aside), ("bead", NameOf(line.Item)));
    }

    /// <summary>The bags of each kit: key letter, bead, in each, in all, at home, to buy. What is laid aside for all is in the count of all.</summary>
    public IEnumerable<string[]> Bags() => plan.Kits.Kits[0].Bags.Select(bag =>
    {
        var line = plan.Supplies.Lines.First(l => l.Item.Id == bag.Item);
        return new[] { bag.Letter, NameOf(line.Item), Count(bag.Count), Count(line.Item.Use + line.Item.Spare), Count(line.Item.Home), Count(line.Bought) };
    });

    /// <summary>In which drawers beads lie, where that is known.</summary>
    public IEnumerable<string> Drawers() => plan.Kits.Picks.Where(p => !p.Drawers.IsEmpty).Select(p => language.Fill(_words.Drawers, ("bead", NameOf(p.Item)), ("drawers", string.Join(", ", p.Drawers))));

    /// <summary>What buying costs; nothing where nothing is bought for money.</summary>
    public IEnumerable<string> Buying()
    {
        if (plan.Supplies.Plan is { Purchases.IsEmpty: false } buying) yield return language.Sentence(_words.Buying, ("total", Money(buying.Total)));
    }

    /// <summary>The wire of all kits.</summary>
    public string Wire() => language.Sentence(language.Batch.Wire, ("count", plan.KitCount), ("loops", plan.Reckoned.Wire.LoopsToCut), ("cutMm", plan.Reckoned.Wire.CutMm), ("allMm", plan.CutMm));

    /// <summary>The tools: which, one for how many, how many.</summary>
    public IEnumerable<string[]> Tools() => plan.Tools.Select(t => new[] { _words.Tools[t.Tool], Count(t.Share), Count(t.Count) });

    /// <summary>The class by the clock.</summary>
    public IEnumerable<SaidStretch> Timetable() => plan.Timetable.Stretches.Select(s => new SaidStretch(
        s.IsAtEarliest ? language.Fill(_words.AtEarliest, ("time", Clock(s.From))) : Clock(s.From), s.Work is { OwnMinutes: null } ? _words.NotTimedCell : Minutes(s.To - s.From), WhatOf(s), s));

    /// <summary>How long all of it takes.</summary>
    public string Takes() => plan.Timetable.Minutes == 0 ? _words.TakesUnknown : language.Sentence(_words.Takes, ("minutes", Minutes(plan.Timetable.Minutes)), ("breaks", Some(plan.Timetable.BreakMinutes)), ("least", plan.Timetable.HasUntimed ? 1 : null));

    /// <summary>What is done beforehand.</summary>
    public IEnumerable<string> Beforehand()
    {
        if (!plan.Beforehand.Any()) yield return _words.NothingBeforehand;
        foreach (var work in plan.Beforehand)
            yield return language.Sentence(_words.Done, ("step", Whole(work)), ("minutes", work.OwnMinutes is { } own ? Minutes(own * plan.KitCount) : null), ("kits", plan.KitCount), ("untimed", work.OwnMinutes is null ? 1 : null));
    }

    /// <summary>What more could be done beforehand, and what that brings; nothing where nothing more can.</summary>
    public IEnumerable<string> CouldBeBeforehand()
    {
        if (plan.Shortened is not { } shorter) yield break;
        if (shorter.Minutes == plan.Timetable.Minutes)
        {
            yield return language.Sentence(_words.Could, ("steps", List(plan.CouldBeBeforehand)));
            yield break;
        }
        var over = shorter.Minutes - plan.Available;
        yield return language.Sentence(_words.Shortens, ("steps", List(plan.CouldBeBeforehand)), ("minutes", Minutes(shorter.Minutes)), ("fits", over <= 0 && !shorter.HasUntimed ? 1 : null), ("over", over > 0 ? Minutes(over.Value) : null));
    }

    /// <summary>What it costs: for what, how much.</summary>
    public IEnumerable<(string For, string Amount, bool IsSum)> Cost()
    {
        var cost = plan.Cost;
        yield return (language.Fill(_words.CostKits, ("kits", cost.Kits), ("each", Amount(cost.KitEach))), Amount(cost.KitsTotal), false);
        yield return cost.TeachingMinutes is { } teaching ? (language.Fill(_words.CostTeaching, ("minutes", Minutes(teaching))), Amount(AtWage(teaching)), false) : (_words.CostTeachingUnknown, "–", false);
        if (cost.AroundMinutes > 0) yield return (language.Fill(_words.CostAround, ("minutes", Minutes(cost.AroundMinutes))), Amount(AtWage(cost.AroundMinutes)), false);
        if (cost.BeforehandMinutes > 0) yield return (language.Fill(_words.CostBeforehand, ("minutes", Minutes(cost.BeforehandMinutes))), Amount(AtWage(cost.BeforehandMinutes)), false);
        if (cost.Room > 0) yield return (_words.CostRoom, Amount(cost.Room), false);
        if (cost.Total is not { } total) yield break;
        yield return (_words.CostTotal, Amount(total), true);
        yield return (language.Fill(_words.CostEach, ("participants", plan.Ask.Participants)), Amount(plan.CostEach!.Value), true);
    }

    /// <summary>What one kit costs, line by line: name, how, amount.</summary>
    public IEnumerable<string[]> KitLines() => _prices.Lines(plan.Kit);

    /// <summary>What a kit's cost leaves out.</summary>
    public IEnumerable<string> Gaps() => plan.Kit.Gaps.Select(_prices.Of);

    /// <summary>What a place is sold for, what that leaves, and from how many on the class pays for itself.</summary>
    public IEnumerable<string> Price()
    {
        if (plan.Price is not { } price)
        {
            yield return plan.Reasons.Contains(ClassReason.NoRule) ? _words.NoRule : _words.PriceUnknown;
            yield break;
        }
        yield return _prices.RuleOf(price);
        yield return language.Sentence(_words.Leaves, ("each", Money(price.Outcome.Gain)), ("all", Money(price.Outcome.Gain * plan.Ask.Participants)), ("hour", price.Outcome.PayPerHour is { } hour ? Money(hour) : null));
        yield return plan.BreakEven is { } count ? language.Sentence(_words.BreakEven, ("count", count), ("price", Money(price.Outcome.Price)))
            : language.Sentence(_words.NeverEven, ("most", ClassAsk.MostParticipants), ("price", Money(price.Outcome.Price)));
    }

    /// <summary>The cautions of the work, those of metal where a bead is of metal.</summary>
    public IEnumerable<string> Cautions() => plan.Cautions.Select(_pattern.Of).Concat(plan.Kits.Kits[0].HasMetal ? [language.Cautions.Metals] : []);

    /// <summary>What lies at each place: tools, those that are shared told so.</summary>
    public IEnumerable<string> AtAPlace() => plan.Tools.Select(t => t.Share == 1 ? _words.Tools[t.Tool] : language.Fill(_words.SheetShared, ("tool", _words.Tools[t.Tool]), ("share", t.Share)));

    /// <summary>The wire of one kit.</summary>
    public string WireEach() => language.Fill(_words.SheetWire, ("loops", plan.Reckoned.Wire.LoopsToCut), ("cutMm", plan.Reckoned.Wire.CutMm));

    /// <summary>A step, whole: what to do, and what to check afterwards where beads are on the wire.</summary>
    public string Whole(ClassWork work) => work.Step is not { } step ? Own(work.Timed!.Name) : _pattern.Of(step);

    /// <summary>What to check after a step; empty where there is nothing.</summary>
    public string Check(ClassWork work) => work.Step is { Action: StepAction.StringBeads } step ? _pattern.Check(step) : "";

    /// <summary>A step that is done already.</summary>
    public string DoneAlready(ClassWork work) => language.Fill(_words.SheetDone, ("step", Whole(work)));

    /// <summary>A step in a word.</summary>
    public string InAWord(ClassWork work) => work.Step is { } step ? _words.Actions[step.Action] : Own(work.Timed!.Name);

    /// <summary>A bead's name for people; caps and dangles in a word.</summary>
    public string NameOf(ShoppingItem item) => item.Bead is { } bead ? Own(bead.Name) : item.Id == ShoppingItem.GluedCap ? language.Price.Caps : language.Price.Dangles;

    /// <summary>So many minutes from the beginning, by the clock where one is told, else in hours and minutes. A day later is told so.</summary>
    public string Clock(decimal minutes)
    {
        var whole = (long)Math.Round((plan.Ask.Start is { } start ? start.Hour * 60 + start.Minute : 0) + minutes, MidpointRounding.AwayFromZero);
        var text = string.Create(CultureInfo.InvariantCulture, $"{whole % 1440 / 60:00}:{whole % 60:00}");
        return whole < 1440 ? text : string.Create(CultureInfo.InvariantCulture, $"{text} (+{whole / 1440})");
    }

    /// <summary>An amount with its currency where that is known.</summary>
    public string Money(decimal amount) => _prices.Money(amount);

    private string Own(string text) => own is null ? text : own(text);

    private string WhatOf(Stretch stretch) => stretch switch
    {
        { Kind: StretchKind.Break } => _words.Break,
        { Kind: StretchKind.Wait } => language.Sentence(_words.Wait, ("step", InAWord(stretch.Work!))),
        { GoesOn: true } => language.Fill(_words.GoesOn, ("step", Whole(stretch.Work!))),
        { Work.Turns: > 1 } => language.Fill(_words.InTurns, ("step", Whole(stretch.Work)), ("turns", stretch.Work.Turns)),
        _ => Whole(stretch.Work!),
    };

    private IEnumerable<string> Of(ClassReason reason)
    {
        switch (reason)
        {
            case ClassReason.ReportSaysStop:
                yield return language.Sentence(_words.SaysStop, ("notices", string.Join("; ", plan.Reckoned.Notices.Where(n => n.Severity == Severity.Stop).Select(n => language.Say(n, _names.Of).Short).Distinct())));
                break;
            case ClassReason.TooLong:
                yield return language.Sentence(_words.TooLong, ("over", Minutes(plan.OverMinutes!.Value)), ("available", Minutes(plan.Available!.Value)), ("breaks", Some(plan.Timetable.BreakMinutes)),
                    ("wait", Some(plan.Timetable.WaitMinutes)), ("turns", Some(TurnMinutes())), ("steps", List(plan.NotDone)));
                foreach (var sentence in CouldBeBeforehand()) yield return sentence;
                break;
            case ClassReason.CannotBeHad:
                foreach (var want in plan.Supplies.List.CannotBeHad) yield return language.Sentence(_words.CannotBeHad, ("missing", want.Amount), ("bead", NameOf(ItemOf(want))));
                break;
            case ClassReason.Loses:
                yield return language.Sentence(_words.Loses, ("rule", plan.Price!.Rule.Name), ("loss", Money(-plan.Price.Outcome.Gain)), ("least", Money(plan.Price.LeastPrice)));
                break;
            case ClassReason.BeadsUnpriced:
                string[] names = [.. plan.Kit.Unpriced.Select(l => Own(_prices.NameOf(l)))];
                yield return language.Sentence(_words.Unpriced, ("count", names.Length), ("names", string.Join(", ", names)));
                break;
            default:
                yield return language.Sentence(reason switch
                {
                    ClassReason.TooFewPlaces => _words.TooFewPlaces,
                    ClassReason.NoOrderCanBeSent => _words.NoOrderCanBeSent,
                    ClassReason.NotTimed => _words.NotTimed,
                    ClassReason.StepsNotNamed => _words.StepsNotNamed,
                    ClassReason.OnceForBatch => _words.OnceForBatch,
                    ClassReason.GlueNotTold => _words.GlueNotTold,
                    ClassReason.FactorNotTold => _words.FactorNotTold,
                    ClassReason.TakeTurns => _words.TakeTurns,
                    ClassReason.EndNotTold => _words.EndNotTold,
                    ClassReason.NoRule => _words.NoRule,
                    _ => _words.NoWage,
                }, ("participants", plan.Ask.Participants), ("places", plan.Ask.Places), ("minutes", Minutes(TurnMinutes())), ("steps", reason switch
                {
                    ClassReason.NotTimed => List(plan.NotTimed),
                    ClassReason.StepsNotNamed => List(plan.Works.Where(w => w.Timed is not null)),
                    ClassReason.OnceForBatch => string.Join(", ", plan.OnceForBatch.Select(s => Own(s.Name))),
                    _ => List(InTurns()),
                }));
                break;
        }
    }

    private IEnumerable<ClassWork> InTurns() => plan.Works.Where(w => w.Turns > 1 && !plan.Beforehand.Contains(w));

    // What taking turns adds.
    private decimal TurnMinutes() => InTurns().Sum(w => (w.OwnMinutes ?? 0) * plan.Factor * (w.Turns - 1));

    private ShoppingItem ItemOf(Want want) => plan.Supplies.List.Items.First(i => i.Id == want.Item);

    private string List(IEnumerable<ClassWork> works) => string.Join(", ", works.Select(InAWord).Distinct());

    private decimal AtWage(decimal minutes) => minutes * (plan.Cost.WagePerHour ?? 0) / 60;

    private string? Some(decimal minutes) => minutes > 0 ? Minutes(minutes) : null;

    private string Minutes(decimal minutes) => language.Number((double)minutes, 1);

    private string Amount(decimal amount) => language.Amount(amount);

    private string Count(int count) => language.Number(count, 0);
}
