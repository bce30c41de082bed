using System.Collections.Immutable;
using Coilwright.Core.Buying;
using Coilwright.Core.Classes;
using Coilwright.Core.Faults;
using Coilwright.Core.Findings;
using Coilwright.Core.Kits;
using Coilwright.Core.Making;
using Coilwright.Core.Pieces;
using Coilwright.Core.Pricing;
using Coilwright.Core.Readings;
using Coilwright.Core.Shopping;
using Coilwright.Core.Tests.Grading;
using Coilwright.Core.Tests.Pricing;
using CsCheck;

namespace Coilwright.Core.Tests.Classes;

/// <summary>A class on a piece: times and money are added up here a second time, in fractions of whole numbers.</summary>
public class ClassPlanTests
{
    // 24 balls, 32 chips, 24 dots, 16 bars: 96 beads.
    private static readonly Piece Design = GradedPieces.Written("a = 3 ball\nb = 4 chip\n8 (a, 2 dot, b, bar, dot, bar)");

    private static readonly (string Bead, int Each, int Holds, decimal Price)[] Bought = [("ball", 24, 100, 4), ("chip", 32, 50, 2.10m), ("dot", 24, 200, 1.7m), ("bar", 16, 1, 0.35m)];

    private static readonly PriceList Prices = new([.. Bought.Select(b => new Offer(b.Bead, "post", "bag", b.Holds, [new PriceStep(1, b.Price)]))], [new Supplier("post")], "EUR");

    private static readonly TimedStep[] Timed =
    [
        new("lay out", 6, false, [Sold.Piece]),
        new("cut", 1.5m, false, [Sold.Piece]) { Does = [StepAction.CutWire] },
        new("ends", 7, false, [Sold.Piece]) { Does = [StepAction.FirstEnd, StepAction.LastEnd] },
        new("string", 26, false, [Sold.Piece]) { Does = [StepAction.StringBeads] },
        new("count", 8, false, [Sold.Piece, Sold.Kit]),
        new("try on", 2, false, [Sold.Piece]) { Does = [StepAction.TryOn] },
        new("photograph", 20, true, [Sold.Piece, Sold.Kit]),
    ];

    private static CostSheet Sheet(params TimedStep[] steps) => new()
    {
        WagePerHour = 16.5m,
        WastePercent = 4,
        Wire = new WirePack(4.8m, 24, null),
        Steps = [.. steps],
        Overheads = [new Overhead("rent", null, null, 96, 40, [Sold.Kit]), new Overhead("odds", 3, null, null, null, [Sold.Kit])],
        Fees = [new Fee("card", 1.9m, 0.15m)],
        Rules = [new PriceRule("shop", "cost * 2", Sold.Piece, [], null, null), new PriceRule("seat", "shop * 0.65", Sold.Kit, ["card"], 0.5m, null)],
    };

    private static Costs Checked(CostSheet sheet)
    {
        Assert.True(Costs.TryMake(sheet, out var costs, out var faults), string.Join('\n', faults));
        return costs!;
    }

    private static ClassSources Sources(CostSheet? sheet = null) => new() { Prices = Prices, Costs = Checked(sheet ?? Sheet(Timed)) };

    private static ClassPlan Made(ClassAsk ask, ClassSources? sources = null, Piece? piece = null)
    {
        Assert.True(ClassPlan.TryMake(piece ?? Design, SamplePieces.Data, ask, sources ?? Sources(), new SupplierSets(), out var plan, out var faults), string.Join('\n', faults));
        return plan!;
    }

    private static readonly ClassAsk Usual = new() { Participants = 8, Factor = 2.5m, Start = new TimeOnly(10, 0), End = new TimeOnly(13, 0) };

    private static Fraction Kit(ClassPlan plan, int kits)
    {
        Fraction beads = 0m;
        foreach (var (_, each, holds, price) in Bought) beads += (Fraction)each * price / holds;
        var cut = Math.Ceiling(plan.Reckoned.Wire.CutMm - 1e-6);
        var materials = beads * 1.04m + (Fraction)4.8m * (decimal)cut / ((Fraction)24m * 188.5m);
        var labour = ((Fraction)8m + (Fraction)20m / kits) * 16.5m / 60m;
        return (materials + labour) * 1.03m + (Fraction)96m / 40m;
    }

    [Fact]
    public void What_a_class_costs_and_from_how_many_on_it_pays_is_what_fractions_say() =>
        Gen.Select(Gen.Int[1, 30], Gen.Int[0, 4], Gen.Int[0, 120], Gen.Int[0, 200], Gen.Bool).Sample((participants, spare, around, room, first) =>
        {
            var plan = Made(Usual with { Participants = participants, SpareKits = spare, AroundMinutes = around, Room = room, Beforehand = first ? ["cutWire", "firstEnd"] : [] });
            Fraction Total(int n) => Kit(plan, n + spare) * (n + spare) + (180m + around + (Fraction)(first ? 5m : 0m) * (n + spare)) * 16.5m / 60m + room;
            AssertSame(Total(participants), plan.Cost.Total!.Value);
            AssertSame(Total(participants) / participants, plan.CostEach!.Value);
            // The rule that it names is rounded up to a cent first.
            var price = ((Total(participants) / participants * 2m).Up(0.01m) * 0.65m).Up(0.5m);
            Assert.True((price - plan.Price!.Outcome.Price).IsZero, $"{plan.Price.Outcome.Price} against {price}");
            var left = price - price * 1.9m / 100m - 0.15m;
            AssertSame(left - Total(participants) / participants, plan.Price.Outcome.Gain);
            var even = Enumerable.Range(1, ClassAsk.MostParticipants).Cast<int?>().FirstOrDefault(n => !(left * n!.Value < Total(n.Value)));
            Assert.Equal(even, plan.BreakEven);
        }, iter: 60, threads: 1);

    private static void AssertSame(Fraction expected, decimal found) => Assert.True((expected - found).Abs < 0.0000000000000000000001m, $"{found} against {expected}");

    [Fact]
    public void Every_step_begins_when_minutes_of_work_outside_of_breaks_say()
    {
        // Half minutes: at each the group works, waits or rests.
        var gen = Gen.Select(Gen.Select(Gen.Int[0, 20].Select(n => 2 * n), Gen.Int[1, 3], Gen.Int[0, 4].Select(n => new[] { 0, 0, 0, 10, 45 }[n])).Array[1, 8], Gen.Int[0, 60], Gen.Int[1, 30], Gen.Int[1, 60], Gen.Int[1, 30]);
        gen.Sample((works, first, length, gap, second) =>
        {
            ClassWork[] all = [.. works.Select((w, n) => new ClassWork(null, new TimedStep($"{n}", 1, false, []), w.Item1 == 0 ? null : w.Item1 / 2m, w.Item2, w.Item3 / 2m))];
            (int From, int To)[] breaks = [(first, first + length), (first + length + gap, first + length + gap + second)];
            var table = Timetable.Of(all, breaks.Select(b => (b.From / 2m, b.To / 2m)), 1.5m);
            var (tick, done) = (0, new List<(decimal From, decimal To)>());
            for (var n = 0; n < works.Length; n++)
            {
                var work = works[n];
                while (InBreak(tick)) tick++;
                var from = tick;
                // An even number of half minutes by 1.5 is a whole one.
                for (var left = work.Item1 * work.Item2 * 3 / 2; left > 0; left--)
                {
                    while (InBreak(tick)) tick++;
                    tick++;
                }
                done.Add((from / 2m, tick / 2m));
                if (work.Item3 == 0 || work.Item1 == 0 || n == works.Length - 1) continue;
                tick += work.Item3;
            }
            for (var n = 0; n < all.Length; n++)
            {
                Stretch[] its = [.. table.Stretches.Where(s => s.Kind == StretchKind.Work && s.Work == all[n])];
                Assert.Equal(done[n], (its[0].From, its[^1].To));
                Assert.Equal(all[n].GroupMinutes(1.5m) ?? 0, its.Sum(s => s.To - s.From));
                Assert.Equal(works.Take(n).Any(w => w.Item1 == 0), its[0].IsAtEarliest);
                Assert.All(its.Skip(1), s => Assert.True(s.GoesOn));
                Assert.All(its, s => Assert.All(breaks, b => Assert.True(s.To <= b.From / 2m || s.From >= b.To / 2m)));
            }
            Assert.Equal(table.Stretches.Where(s => s.Kind == StretchKind.Work).Max(s => s.To), table.Minutes);

            bool InBreak(int at) => breaks.Any(b => b.From <= at && at < b.To);
        }, iter: 300, threads: 1);
    }

    [Fact]
    public void Timed_steps_stand_where_she_wrote_them_and_share_their_minutes_by_steps_and_beads()
    {
        var plan = Made(Usual);
        Assert.Equal(["lay out", "CutWire", "FirstEnd"], plan.Works.Take(3).Select(w => w.Timed?.Name ?? w.Step!.Action.ToString()));
        Assert.Equal(["LastEnd", "TryOn"], plan.Works.TakeLast(2).Select(w => w.Step!.Action.ToString()));
        Assert.Equal([6m, 1.5m, 3.5m], plan.Works.Take(3).Select(w => w.OwnMinutes!.Value));
        ClassWork[] strings = [.. plan.Works.Where(w => w.Step?.Action == StepAction.StringBeads)];
        Assert.All(strings, w => AssertSame((Fraction)26m * w.Step!.Strung!.Beads / 96m, w.OwnMinutes!.Value));
        Assert.Equal(96, strings.Sum(w => w.Step!.Strung!.Beads));
        // 6 + 1.5 + 7 + 26 + 2, by 2.5.
        Assert.Equal(106.25m, Math.Round(plan.Timetable.Minutes, 20));
        Assert.Equal(["lay out", "cutWire", "firstEnd"], plan.CouldBeBeforehand.Select(w => w.Key));
        Assert.Equal(78.75m, Math.Round(plan.Shortened!.Minutes, 20));
        // What is counted out when a kit is packed is no step of the class, nor is what is timed for a whole batch.
        Assert.DoesNotContain(plan.Works, w => w.Timed?.Name is "count" or "photograph");
        Assert.Empty(plan.Reasons);
    }

    [Fact]
    public void What_is_done_beforehand_leaves_the_class_and_is_paid_for_every_kit()
    {
        var plan = Made(Usual with { SpareKits = 2, Beforehand = ["lay out", "cutWire", "firstEnd"] });
        Assert.Equal(78.75m, Math.Round(plan.Timetable.Minutes, 20));
        Assert.Equal(11m * 10, plan.Cost.BeforehandMinutes);
        Assert.Null(plan.Shortened);
        Assert.DoesNotContain(plan.Tools, t => t.Tool == BenchTool.Ruler);
        // The last end is trimmed all the same.
        Assert.Contains(plan.Tools, t => t.Tool == BenchTool.Shears);
    }

    [Theory]
    [InlineData(1, 8, 1)]
    [InlineData(3, 3, 3)]
    [InlineData(4, 2, 4)]
    [InlineData(20, 1, 8)]
    public void Who_shares_a_tool_takes_turns_at_it(int share, int tools, int turns)
    {
        var plan = Made(Usual with { Shared = share == 1 ? Usual.Shared : Usual.Shared.Add(BenchTool.Shears, share) });
        Assert.Equal(tools, plan.Tools.First(t => t.Tool == BenchTool.Shears).Count);
        Assert.Equal(8, plan.Tools.First(t => t.Tool == BenchTool.EyeProtection).Count);
        foreach (var work in plan.Works) Assert.Equal(work.Step?.Action is StepAction.CutWire or StepAction.LastEnd ? turns : 1, work.Turns);
        Assert.Equal(106.25m + (turns - 1) * 5m * 2.5m, Math.Round(plan.Timetable.Minutes, 20));
        Assert.Equal(turns > 1, plan.Reasons.Contains(ClassReason.TakeTurns));
    }

    [Fact]
    public void The_group_waits_for_glue_through_a_break_and_nobody_for_the_last_step()
    {
        var capped = Design with { Ends = Design.Ends with { Start = new WireEnd(EndFinish.GluedCap, 4), Finish = new WireEnd(EndFinish.GluedCap, 4) } };
        TimedStep[] glued = [.. Timed.Select(s => s.Name == "ends" ? s with { WaitMinutes = 30 } : s)];
        var plan = Made(Usual with { Breaks = [new ClassBreak(new TimeOnly(10, 40), 15)] }, Sources(Sheet(glued)), capped);
        // 11 minutes by 2.5 are 27.5: the glue sets until 57.5, the break is over at 55.
        Stretch[] waits = [.. plan.Timetable.Stretches.Where(s => s.Kind == StretchKind.Wait)];
        Assert.Equal((27.5m, 57.5m), (waits[0].From, waits[0].To));
        Assert.Equal(57.5m, plan.Timetable.Stretches.First(s => s.Work?.Step?.Action == StepAction.StringBeads).From);
        Assert.Equal(2, waits.Length);
        Assert.Equal(166.25m, Math.Round(plan.Timetable.Minutes, 20));
        Assert.Contains(plan.Tools, t => t.Tool == BenchTool.Glue);
        Assert.DoesNotContain(plan.Tools, t => t.Tool == BenchTool.RoundNosePliers);
        Assert.DoesNotContain(ClassReason.GlueNotTold, plan.Reasons);
        Assert.Contains(ClassReason.GlueNotTold, Made(Usual, piece: capped).Reasons);
        // A step that is the last one keeps nobody waiting.
        var last = Timetable.Of([new ClassWork(null, glued[2], 7, 1, 30)], [], 1);
        Assert.Equal(7, last.Minutes);
        Assert.DoesNotContain(last.Stretches, s => s.Kind == StretchKind.Wait);
    }

    [Fact]
    public void What_does_not_fit_is_told_with_the_steps_that_are_not_done()
    {
        var plan = Made(Usual with { End = new TimeOnly(11, 40) });
        Assert.False(plan.CanBeHeld);
        Assert.Equal([ClassReason.TooLong], plan.Reasons);
        Assert.Equal(6.25m, Math.Round(plan.OverMinutes!.Value, 20));
        // The last end would be done at 101.25, trying on at 106.25.
        Assert.Equal(["LastEnd", "TryOn"], plan.NotDone.Select(w => w.Step!.Action.ToString()));
        Assert.True(plan.Shortened!.Minutes < plan.Available);
    }

    [Fact]
    public void Kits_are_those_of_the_kit_plan_and_what_is_missing_is_bought()
    {
        var spares = new Spares(new SparesRule(5, 1), ImmutableSortedDictionary<string, SparesRule>.Empty);
        var home = new HomeStock(new Dictionary<string, int> { ["ball"] = 100 }, ImmutableDictionary<string, ImmutableArray<string>>.Empty);
        var plan = Made(Usual with { SpareKits = 1 }, Sources() with { Spares = spares, Home = home });
        Assert.Equal(9, plan.Kits.Kits[0].Count);
        Assert.Equal(Bought.Select(b => (b.Bead, b.Each + 1)), plan.Kits.Kits[0].Bags.Select(b => (b.Item, b.Count)));
        var ball = plan.Supplies.Lines[0];
        // 9 kits of 24, 5 % of 216, one in each: 216 + 11 + 9; 100 are there, and bags hold 100.
        Assert.Equal((236, 100, 200), (ball.Item.Use + ball.Item.Spare, ball.Item.Home, ball.Bought));
        Assert.Equal(9 * (long)Math.Ceiling(plan.Reckoned.Wire.CutMm - 1e-6), plan.CutMm);
    }

    [Fact]
    public void Every_reason_is_given_where_it_holds_and_nowhere_else()
    {
        (ClassReason, ClassPlan)[] all =
        [
            (ClassReason.TooFewPlaces, Made(Usual with { Places = 7 })),
            (ClassReason.TooLong, Made(Usual with { End = new TimeOnly(11, 0) })),
            (ClassReason.CannotBeHad, Made(Usual, Sources() with { Prices = Prices with { Offers = [Prices.Offers[0] with { Most = 1 }, .. Prices.Offers.Skip(1)] } })),
            (ClassReason.NoOrderCanBeSent, Made(Usual, Sources() with { Prices = Prices with { Suppliers = [new Supplier("post") { LeastOrder = 100_000 }] } })),
            (ClassReason.Loses, Made(Usual, Sources(Sheet(Timed) with { Rules = [new PriceRule("seat", "cost / 2", Sold.Kit, [], null, null)] }))),
            (ClassReason.NotTimed, Made(Usual, Sources(Sheet([.. Timed.Where(s => s.Name is not ("try on" or "lay out" or "photograph"))])))),
            (ClassReason.FactorNotTold, Made(Usual with { Factor = null })),
            (ClassReason.TakeTurns, Made(Usual with { Shared = Usual.Shared.Add(BenchTool.File, 2) })),
            (ClassReason.EndNotTold, Made(Usual with { End = null })),
            (ClassReason.NoRule, Made(Usual, Sources(Sheet(Timed) with { Rules = [] }))),
            (ClassReason.NoWage, Made(Usual, Sources(Sheet(Timed) with { WagePerHour = null }))),
            (ClassReason.BeadsUnpriced, Made(Usual, Sources() with { Prices = Prices with { Offers = [.. Prices.Offers.Skip(1)] } })),
        ];
        Assert.All(all, a => Assert.Equal([a.Item1], a.Item2.Reasons));
        Assert.All(all, a => Assert.Equal(a.Item1 > ClassReason.Loses, a.Item2.CanBeHeld));
        var untimed = Made(Usual with { End = null }, Sources(Sheet([.. Timed.Where(s => s.Name is not "try on")])));
        Assert.Equal([ClassReason.NotTimed, ClassReason.StepsNotNamed, ClassReason.OnceForBatch, ClassReason.EndNotTold], untimed.Reasons);
        Assert.Null(untimed.Cost.Total);
        Assert.Null(untimed.Price);
        var narrow = SamplePieces.Bead("ball", "round", 6, 6, 6, bore: 0.4);
        var stopped = Made(Usual, piece: Design with { Beads = [narrow, .. Design.Beads.Skip(1)] });
        Assert.Contains(ClassReason.ReportSaysStop, stopped.Reasons);
        Assert.Contains(stopped.Reckoned.Notices, n => n.Severity == Severity.Stop);
    }

    [Fact]
    public void Her_own_minutes_told_for_the_class_stand_in_place_of_those_of_the_costs()
    {
        var told = ImmutableSortedDictionary<StepAction, decimal>.Empty.Add(StepAction.StringBeads, 48).Add(StepAction.CutWire, 2);
        var plan = Made(Usual with { Minutes = told, Factor = 1 });
        // 6 + 2 + 7 + 48 + 2.
        Assert.Equal(65m, Math.Round(plan.Timetable.Minutes, 20));
    }

    [Fact]
    public void A_slip_is_told_with_its_field()
    {
        (ClassAsk Ask, string Code, string Field)[] all =
        [
            (Usual with { Rule = "seet" }, FaultCodes.WordUnknown, "rule"),
            (Usual with { Beforehand = ["lastEnd"] }, FaultCodes.WordUnknown, "beforehand"),
            (Usual with { Start = null }, FaultCodes.FieldMissing, "start"),
            (Usual with { End = new TimeOnly(10, 0) }, FaultCodes.TimeNotAfter, "end"),
            (Usual with { Breaks = [new ClassBreak(new TimeOnly(9, 59), 10)] }, FaultCodes.TimeNotAfter, "breaks"),
            (Usual with { Breaks = [new ClassBreak(new TimeOnly(13, 0), 10)] }, FaultCodes.TimeNotAfter, "end"),
            (Usual with { Breaks = [new ClassBreak(new TimeOnly(11, 0), 20), new ClassBreak(new TimeOnly(11, 19), 5)] }, FaultCodes.TimeNotAfter, "breaks"),
            (Usual with { Shared = Usual.Shared.Add(BenchTool.EyeProtection, 2) }, FaultCodes.NeverShared, "share"),
        ];
        foreach (var (ask, code, field) in all)
        {
            Assert.False(ClassPlan.TryMake(Design, SamplePieces.Data, ask, Sources(), new SupplierSets(), out var plan, out var faults));
            Assert.Null(plan);
            Assert.Equal((code, field), (Assert.Single(faults).Code, faults[0].Field));
        }
    }
}
