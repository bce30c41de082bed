using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Buying;
using Coilwright.Core.Cutting;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Kits;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;

namespace Coilwright.Core.Classes;

/// <summary>A tool and how many of it a class takes.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Share">How many share one, 1 where each has one.</param>
/// <param name="Count">How many for all participants; the maker's own is beside them.</param>
public sealed record ClassTool(BenchTool Tool, int Share, int Count);

/// <summary>A class on one piece: kits to pack, tools, every step by the clock, what does not fit, what a place costs and how many must come.</summary>
/// <remarks>That it cannot be held as it is planned is an answer with its reasons. Spare beads and spare kits are packed; of the cost only spare kits are a part, beads being covered by the waste.</remarks>
public sealed record ClassPlan
{
    private ClassPlan() { }

    /// <summary>The class.</summary>
    public required ClassAsk Ask { get; init; }

    /// <summary>The readings of the piece.</summary>
    public required Reckoned Reckoned { get; init; }

    /// <summary>The kits.</summary>
    public required KitPlan Kits { get; init; }

    /// <summary>What is needed for them, at home and bought.</summary>
    public required ShoppingPlan Supplies { get; init; }

    /// <summary>The tools of what is done in the class.</summary>
    public required ImmutableArray<ClassTool> Tools { get; init; }

    /// <summary>Every step, those done beforehand among them.</summary>
    public required ImmutableArray<ClassWork> Works { get; init; }

    /// <summary>The class by the clock.</summary>
    public required Timetable Timetable { get; init; }

    /// <summary>The same with all done beforehand that can be; null when nothing more can.</summary>
    public required Timetable? Shortened { get; init; }

    /// <summary>What a kit costs by her rules, and the currency of all amounts.</summary>
    public required PricePlan Prices { get; init; }

    /// <summary>What one kit costs, line by line.</summary>
    public required CostOf Kit { get; init; }

    /// <summary>What the class costs.</summary>
    public required ClassCost Cost { get; init; }

    /// <summary>What the rule asks for a place; null without a rule, or when it is not known how long she teaches.</summary>
    public required AskedPrice? Price { get; init; }

    /// <summary>From how many participants on places at that price bring in what the class costs, her wage among it; null when no number that is planned for does, or there is no price.</summary>
    /// <remarks>As many spare kits are packed, as long is taught; kits of fewer or more are priced anew.</remarks>
    public required int? BreakEven { get; init; }

    /// <summary>What stands against it, and what is to be known; the first ones hinder.</summary>
    public ImmutableArray<ClassReason> Reasons { get; private init; } = [];

    /// <summary>Whether it can be held as it is planned.</summary>
    public bool CanBeHeld => Reasons.All(r => r > ClassReason.Loses);

    /// <summary>Kits to pack.</summary>
    public int KitCount => Ask.Participants + Ask.SpareKits;

    /// <summary>Wire to cut for all kits, whole mm.</summary>
    public long CutMm => (long)KitCount * WireDemand.Of(Reckoned, KitCount).WholeMm;

    /// <summary>How many times as long as the maker a learner takes.</summary>
    public decimal Factor => Ask.Factor ?? 1;

    /// <summary>Minutes from beginning to end; null when no end was told.</summary>
    public decimal? Available => AvailableTo(Ask);

    /// <summary>By how many minutes it is too long; null when it is not, or no end was told.</summary>
    public decimal? OverMinutes => Timetable.Minutes > Available ? Timetable.Minutes - Available : null;

    /// <summary>Steps that are not done when the time is up.</summary>
    public IEnumerable<ClassWork> NotDone => Timetable.Stretches.Where(s => s.Kind == StretchKind.Work && s.To > Available).Select(s => s.Work!).Distinct();

    /// <summary>Steps that are done beforehand.</summary>
    public IEnumerable<ClassWork> Beforehand => Works.Where(w => IsBeforehand(w, Ask));

    /// <summary>Steps that could be done beforehand too.</summary>
    public IEnumerable<ClassWork> CouldBeBeforehand => Works.Where(w => w.CanBeBeforehand && !IsBeforehand(w, Ask));

    /// <summary>Steps without a time.</summary>
    public IEnumerable<ClassWork> NotTimed => Works.Where(w => w.OwnMinutes is null);

    /// <summary>Timed steps of pieces that give no time, being done once for a batch.</summary>
    public IEnumerable<TimedStep> OnceForBatch => Prices.Costs.Sheet.Steps.Where(s => s.PerBatch && s.For.Contains(Sold.Piece));

    /// <summary>What one place costs; null when it is not known how long she teaches.</summary>
    public decimal? CostEach => Cost.Total / Ask.Participants;

    /// <summary>The cautions of all steps, each once.</summary>
    public ImmutableArray<Caution> Cautions => [.. Works.Where(w => w.Step is not null).SelectMany(w => w.Step!.Cautions).Distinct().Order()];

    private static decimal? AvailableTo(ClassAsk ask) => ask is { Start: { } start, End: { } end } ? MinutesFrom(start, end) : null;

    private static bool IsBeforehand(ClassWork work, ClassAsk ask) => work.CanBeBeforehand && ask.Beforehand.Contains(work.Key);

    /// <summary>Plans it.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="data">Materials, steels and our choices.</param>
    /// <param name="ask">The class.</param>
    /// <param name="sources">What it is reckoned from.</param>
    /// <param name="buyer">Finds what to buy.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="faults">Why there is none: a rule that is not known, times out of order, a step that cannot be done beforehand, eye protection that is shared, or what <see cref="ShoppingList"/> and <see cref="PricePlan"/> refuse.</param>
    /// <param name="cancel">Stops it; what comes of it then is to be thrown away.</param>
    public static bool TryMake(Piece piece, ReckoningData data, ClassAsk ask, ClassSources sources, IBuyer buyer, out ClassPlan? plan, out ImmutableArray<Fault> faults, CancellationToken cancel = default)
    {
        plan = null;
        var reckoned = Reckoning.Of(piece, data, null, cancel);
        cancel.ThrowIfCancellationRequested();
        var (sheet, kits) = (sources.Costs.Sheet, ask.Participants + ask.SpareKits);
        var works = ClassWork.Of(reckoned, sheet, ask);
        faults = [.. Check(ask, sheet, works)];
        if (!faults.IsEmpty) return false;

        var packed = new ShoppingPiece(piece.Title, piece, kits);
        if (!KitPlan.TryMake([new KitPiece(packed, reckoned)], sources.Spares, sources.Home, sources.Prices, out var bags, out faults)) return false;
        if (!ShoppingList.TryMake([packed], sources.Spares, sources.Home?.Free ?? ImmutableDictionary<string, int>.Empty, sources.Prices, out var missing, out faults)) return false;
        if (!ShoppingList.TryMake([packed], Spares.None, ImmutableDictionary<string, int>.Empty, sources.Prices, out var all, out faults)) return false;
        var wire = WireUse.Of(WireDemand.Of(reckoned, kits));
        if (!PricePlan.TryMake(sources.Costs, all!, wire, sources.Lots, null, out var prices, out faults)) return false;

        var breaks = ask.Breaks.Select(b => (From: MinutesFrom(ask.Start!.Value, b.At), b.Minutes)).OrderBy(b => b.From).Select(b => (b.From, b.From + b.Minutes)).ToArray();
        cancel.ThrowIfCancellationRequested();
        var timetable = Timetable.Of([.. works.Where(w => !IsBeforehand(w, ask))], breaks, ask.Factor ?? 1);
        var kit = CostOf.Of(Sold.Kit, sheet, all!, wire, sources.Lots);
        var teaching = AvailableTo(ask) ?? (timetable.HasUntimed ? null : timetable.Minutes);
        var made = new ClassPlan
        {
            Ask = ask,
            Reckoned = reckoned,
            Kits = bags!,
            Supplies = new ShoppingPlan(missing!, buyer.Find(missing!.Buying, null, cancel)),
            Tools = [.. timetable.Stretches.Where(s => s.Work?.Step is not null).SelectMany(s => StepTools.Of(s.Work!.Step!.Action, piece.Ends)).Distinct().Order()
                .Select(t => (Tool: t, Share: Math.Min(ask.Shared.GetValueOrDefault(t, 1), ask.Participants))).Select(t => new ClassTool(t.Tool, t.Share, (ask.Participants - 1) / t.Share + 1))],
            Works = works,
            Timetable = timetable,
            Shortened = works.Any(w => w.CanBeBeforehand && !IsBeforehand(w, ask)) ? Timetable.Of([.. works.Where(w => !w.CanBeBeforehand)], breaks, ask.Factor ?? 1) : null,
            Prices = prices!,
            Kit = kit,
            Cost = new ClassCost(kits, kit.Cost.Amount!.Value, teaching, ask.AroundMinutes, works.Where(w => IsBeforehand(w, ask)).Sum(w => w.OwnMinutes ?? 0) * kits, sheet.WagePerHour, ask.Room),
            Price = null,
            BreakEven = null,
        };
        cancel.ThrowIfCancellationRequested();
        if ((ask.Rule ?? sheet.Rules.FirstOrDefault(r => r.Sells == Sold.Kit)?.Name) is { } rule && made.Cost.Minutes is { } minutes)
        {
            var place = CostOf.PlaceInClass(made.Kit, kits, ask.Participants, minutes, sheet.WagePerHour, ask.Room);
            if (!PricePlan.TryAsk(sources.Costs, rule, place, out var price, out faults)) return false;
            made = made with { Price = price, BreakEven = EvenAt(made, price!.Outcome, packed, wire, sources) };
        }
        plan = made with { Reasons = [.. made.ReasonsOf().Order()] };
        cancel.ThrowIfCancellationRequested();
        return true;
    }

    /// <summary>Minutes from one time of a day to another; below 0 when that is earlier.</summary>
    internal static decimal MinutesFrom(TimeOnly from, TimeOnly to) => (to.Ticks - from.Ticks) / (decimal)TimeSpan.TicksPerMinute;

    // Kits of each number are priced anew, since packs are cheaper by the dozen and what is timed once for a batch is shared by fewer.
    private static int? EvenAt(ClassPlan plan, PriceOutcome place, ShoppingPiece packed, WireUse wire, ClassSources sources)
    {
        var beforehand = plan.Cost.BeforehandMinutes / plan.KitCount;
        for (var n = 1; n <= ClassAsk.MostParticipants; n++)
        {
            var kits = n + plan.Ask.SpareKits;
            if (!ShoppingList.TryMake([packed with { Count = kits }], Spares.None, ImmutableDictionary<string, int>.Empty, sources.Prices, out var list, out _)) return null;
            var cost = plan.Cost with { Kits = kits, KitEach = CostOf.Of(Sold.Kit, sources.Costs.Sheet, list!, wire, sources.Lots).Cost.Amount!.Value, BeforehandMinutes = beforehand * kits };
            if (n * place.Left >= cost.Total) return n;
        }
        return null;
    }

    private static IEnumerable<Fault> Check(ClassAsk ask, CostSheet sheet, ImmutableArray<ClassWork> works)
    {
        ImmutableArray<string> rules = [.. sheet.Rules.Select(r => r.Name)];
        if (ask.Rule is { } rule && !rules.Contains(rule)) yield return Unknown("rule", rule, rules);
        ImmutableArray<string> can = [.. works.Where(w => w.CanBeBeforehand).Select(w => w.Key)];
        foreach (var key in ask.Beforehand.Where(k => !can.Contains(k))) yield return Unknown("beforehand", key, can);
        if (ask.Shared.ContainsKey(BenchTool.EyeProtection)) yield return Fault.Of(FaultCodes.NeverShared, "share", nameof(BenchTool.EyeProtection));
        if (ask.Start is not { } start)
        {
            if (ask.End is not null || !ask.Breaks.IsEmpty) yield return Fault.Of(FaultCodes.FieldMissing, "start", "");
            yield break;
        }
        if (ask.End <= start) yield return NotAfter("end", ask.End.Value, start);
        var free = start;
        foreach (var pause in ask.Breaks.OrderBy(b => b.At))
        {
            if (pause.At < free) yield return NotAfter("breaks", pause.At, free);
            else if (ask.End is { } end && pause.At >= end) yield return NotAfter("end", end, pause.At);
            free = pause.At.AddMinutes(pause.Minutes, out var days);
            if (days > 0) free = TimeOnly.MaxValue;
        }
    }

    private static Fault Unknown(string field, string value, ImmutableArray<string> known) =>
        Fault.Of(FaultCodes.WordUnknown, field, value, ("known", string.Join(", ", known)), ("nearest", NearestName.Of(value, known) ?? ""));

    private static Fault NotAfter(string field, TimeOnly time, TimeOnly other) => Fault.Of(FaultCodes.TimeNotAfter, field, Text(time), ("other", Text(other)));

    private static string Text(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);

    private IEnumerable<ClassReason> ReasonsOf()
    {
        var sheet = Prices.Costs.Sheet;
        if (Reckoned.Notices.Any(n => n.Severity == Severity.Stop)) yield return ClassReason.ReportSaysStop;
        if (Ask.Participants > Ask.Places) yield return ClassReason.TooFewPlaces;
        if (OverMinutes is not null) yield return ClassReason.TooLong;
        if (!Supplies.List.CannotBeHad.IsEmpty) yield return ClassReason.CannotBeHad;
        if (Supplies.Plan is null) yield return ClassReason.NoOrderCanBeSent;
        if (Price?.Outcome.Gain < 0) yield return ClassReason.Loses;
        if (NotTimed.Any())
        {
            yield return ClassReason.NotTimed;
            if (Works.Any(w => w.Timed is not null)) yield return ClassReason.StepsNotNamed;
            if (OnceForBatch.Any()) yield return ClassReason.OnceForBatch;
        }
        if (GlueIsUntold()) yield return ClassReason.GlueNotTold;
        if (Ask.Factor is null) yield return ClassReason.FactorNotTold;
        if (Timetable.Stretches.Any(s => s.Work?.Turns > 1)) yield return ClassReason.TakeTurns;
        if (Ask.End is null) yield return ClassReason.EndNotTold;
        if (Ask.Rule is null && sheet.Rules.All(r => r.Sells != Sold.Kit)) yield return ClassReason.NoRule;
        if (sheet.WagePerHour is null) yield return ClassReason.NoWage;
        if (Kit.Unpriced.Any()) yield return ClassReason.BeadsUnpriced;
    }

    // What is glued beforehand sets beforehand.
    private bool GlueIsUntold() => Timetable.Stretches.Any(s => s is { Kind: StretchKind.Work, Work: { WaitMinutes: 0, Step: { } step } } && EndOf(step) is { Finish: EndFinish.GluedCap });

    private WireEnd? EndOf(PatternStep step) => step.Action switch { StepAction.FirstEnd => Reckoned.Piece.Ends.Start, StepAction.LastEnd => Reckoned.Piece.Ends.Finish, _ => null };
}
