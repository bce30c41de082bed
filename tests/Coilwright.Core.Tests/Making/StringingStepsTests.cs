using System.Collections.Immutable;
using System.Globalization;
using Coilwright.Core.Lies;
using Coilwright.Core.Making;
using Coilwright.Core.Stringing;
using CsCheck;

namespace Coilwright.Core.Tests.Making;

public class StringingStepsTests
{
    private static StringingOrder Order(string kinds, params GroupRun[] groups) => new([.. kinds.Select(k => k - 'A')], [.. groups]);

    private static string Times(string unit, int times) => string.Concat(Enumerable.Repeat(unit, times));

    // As a maker would note it: "wrack: 2A, 3(1A, 1C), 4A-1B-".
    private static string[] Noted(StringingOrder order, Lie? lie = null) => [.. StringingSteps.Of(order, lie).Select(s =>
        (s.Group is null ? "" : s.Group + ": ") + (s.Times > 1 ? s.Times + " times " : "") + string.Join(", ", s.Parts.Select(Noted)))];

    private static string Noted(StepPart part) => part switch
    {
        RunPart run => run.Count.ToString(CultureInfo.InvariantCulture) + (char)('A' + run.Kind),
        RepeatPart repeat => $"{repeat.Times}({string.Join(", ", repeat.Parts.Select(Noted))})",
        BetweenPart between => $"{between.Count}{(char)('A' + between.Kind)} with {string.Join(" and ", between.Between.Select(Noted))} between",
        _ => "?",
    };

    // Every bead one millimetre of wire, so that a turn is so many beads.
    private static Lie Turns(int beads, double beadsInTurn) => new([.. Enumerable.Repeat(1.0, beads)], beadsInTurn, 30, 180);

    [Fact]
    public void Beads_of_one_kind_are_said_once() => Assert.Equal(["3A, 1B, 2A"], Noted(Order("AAABAA")));

    [Fact]
    public void A_running_repeat_is_said_once() => Assert.Equal(["45(3A, 1B)"], Noted(Order(Times("AAAB", 45))));

    [Fact]
    public void Beads_with_the_same_between_are_said_so() => Assert.Equal(["1C, 4A with 1B between, 1C"], Noted(Order("CABABABAC")));

    [Fact]
    public void Several_beads_may_stand_between() => Assert.Equal(["3A with 2B and 1C between"], Noted(Order("ABBCABBCA")));

    [Fact]
    public void Two_beads_and_one_between_are_said_as_they_are() => Assert.Equal(["1A, 1B, 1A"], Noted(Order("ABA")));

    [Fact]
    public void Of_two_repeats_the_one_that_says_more_is_taken() => Assert.Equal(["2(3A with 1B between, 1C)"], Noted(Order("ABABACABABAC")));

    [Fact]
    public void A_repeat_may_stand_in_a_repeat_and_no_deeper()
    {
        var inner = Times("AABB", 3) + "C";
        Assert.Equal(["2(3(2A, 2B), 1C)"], Noted(Order(Times(inner, 2))));
        var deeper = string.Join(", ", Noted(Order(Times(Times(inner, 2) + "D", 2))));
        Assert.Equal(2, Deepest(deeper));
    }

    private static int Deepest(string noted)
    {
        int depth = 0, deepest = 0;
        foreach (var c in noted) deepest = Math.Max(deepest, depth += c == '(' ? 1 : c == ')' ? -1 : 0);
        return deepest;
    }

    [Fact]
    public void Named_groups_are_steps_and_loose_beads_between_them_too() =>
        Assert.Equal(["1C", "wave: 1A, 1B", "2C", "crest: 3A"], Noted(Order("CABCCAAA", new("wave", 1, 2), new("crest", 5, 3))));

    [Fact]
    public void A_group_strung_several_times_on_end_is_one_step() =>
        Assert.Equal(["wave: 3 times 1A, 1B", "1C", "wave: 1A, 1B"], Noted(Order("ABABABCAB", new("wave", 0, 2), new("wave", 2, 2), new("wave", 4, 2), new("wave", 7, 2))));

    [Fact]
    public void A_group_that_differs_under_the_same_name_is_a_step_of_its_own() =>
        Assert.Equal(["wave: 1A, 1B", "wave: 1B, 1A"], Noted(Order("ABBA", new("wave", 0, 2), new("wave", 2, 2))));

    [Fact]
    public void Of_nested_groups_the_innermost_count() =>
        Assert.Equal(["1A", "eye: 1B", "1A"], Noted(Order("ABA", new("wave", 0, 3), new("eye", 1, 1))));

    [Fact]
    public void A_long_stretch_of_loose_beads_is_several_steps()
    {
        var steps = StringingSteps.Of(Order("ABCDEFGHIJKLMNOPQRST"));
        Assert.Equal([8, 8, 4], steps.Select(s => s.Parts.Length));
        Assert.Equal([0, 8, 16], steps.Select(s => s.First));
    }

    [Fact]
    public void A_running_repeat_is_parted_where_a_turn_begins_never_inside_one_time() =>
        Assert.Equal(["5(3A, 1B)", "5(3A, 1B)", "2(3A, 1B)"], Noted(Order(Times("AAAB", 12)), Turns(48, 19)));

    [Fact]
    public void Beads_of_one_kind_are_parted_where_a_turn_begins() =>
        Assert.Equal(["10A", "10A", "4A"], Noted(Order(new string('A', 24)), Turns(24, 10)));

    [Fact]
    public void A_group_is_never_parted_but_several_on_end_are() =>
        Assert.Equal(["wave: 2 times 2A, 2B", "wave: 2A, 2B"], Noted(Order("AABBAABBAABB", new("wave", 0, 4), new("wave", 4, 4), new("wave", 8, 4)), Turns(12, 7)));

    [Fact]
    public void Ids_say_which_group_and_which_of_its_stringings() =>
        Assert.Equal(["first", "wave.1", "after.wave.1", "wave.2", "wave.4", "after.wave.4", "after.wave.4.b"],
            StringingSteps.Of(Order("CABCABABBA" + "ABCDEFGHI", new("wave", 1, 2), new("wave", 4, 2), new("wave", 6, 2), new("wave", 8, 2))).Select(s => s.Id));

    [Fact]
    public void A_row_longer_than_the_table_is_said_too_and_its_repeats_with_it()
    {
        // Two hundred beads that hardly repeat, then a repeat, then a hundred more.
        var random = new Random(7);
        var plain = new string([.. Enumerable.Range(0, 200).Select(_ => (char)('A' + random.Next(4)))]);
        var order = Order(plain + Times("EFG", 60) + plain[..100]);
        var noted = string.Join(", ", Noted(order));
        Assert.Contains("60(1E, 1F, 1G)", noted, StringComparison.Ordinal);
        Assert.Equal(order.Kinds, StringingSteps.Of(order).SelectMany(s => s.Kinds));
    }

    private static readonly Gen<StringingOrder> Orders = Gen.Select(Gen.Int[0, 3].Array[1, 60], Gen.Int[0, 59].Array[0, 8]).Select((kinds, cuts) =>
    {
        var bounds = cuts.Select(c => c % kinds.Length).Append(0).Append(kinds.Length).Distinct().Order().ToArray();
        var groups = ImmutableArray.CreateBuilder<GroupRun>();
        for (var i = 0; i + 1 < bounds.Length; i += 2) groups.Add(new GroupRun("g" + kinds[bounds[i]], bounds[i], bounds[i + 1] - bounds[i]));
        return new StringingOrder([.. kinds], groups.ToImmutable());
    });

    [Fact]
    public void Followed_to_the_letter_the_steps_string_the_order() => Gen.Select(Orders, Gen.Double[2, 30], Gen.Bool).Sample((order, turn, byTurn) =>
    {
        var strung = new List<int>();
        foreach (var step in StringingSteps.Of(order, byTurn ? Turns(order.Count, turn) : null))
        {
            Assert.Equal(strung.Count, step.First);
            strung.AddRange(step.Kinds);
            Assert.Equal(strung.Count, step.End);
        }
        Assert.Equal(order.Kinds, strung);
    });

    [Fact]
    public void Ids_are_told_apart() => Orders.Sample(order =>
    {
        var ids = StringingSteps.Of(order).Select(s => s.Id).ToArray();
        Assert.Equal(ids.Length, ids.Distinct().Count());
    });

    // The cheapest saying sought in another way: every saying of every stretch is written out by rewriting, and the cheapest text kept.
    [Fact]
    public void No_saying_is_shorter() => Gen.Int[0, 2].Array[1, 9].Sample(kinds =>
    {
        var said = StringingSteps.Of(new StringingOrder([.. kinds], [new GroupRun("all", 0, kinds.Length)])).Single().Parts;
        Assert.Equal(EverySaying.CheapestOf(kinds), EverySaying.CostOf(said));
    }, iter: 300);
}

// Costs as the saying's own document states them, by a search that knows no tables: all texts that can be made of a row, by parting, repeating and putting between.
internal static class EverySaying
{
    public static int CostOf(ImmutableArray<StepPart> parts, bool inside = false) => parts.Sum(p => p switch
    {
        RunPart => 2,
        RepeatPart r => CostOf(r.Parts, true) + 2 + (inside ? 1 : 0),
        BetweenPart b => 2 + 2 + (inside ? 1 : 0) + b.Between.Length * 2 + b.Between.Length - 1,
        _ => throw new InvalidOperationException(),
    }) + parts.Length - 1;

    public static int CheapestOf(int[] kinds)
    {
        var runs = new List<(int Kind, int Count)>();
        foreach (var kind in kinds)
            if (runs.Count > 0 && runs[^1].Kind == kind) runs[^1] = (kind, runs[^1].Count + 1);
            else runs.Add((kind, 1));
        return Row([.. runs], 2, false);
    }

    private static int Row((int Kind, int Count)[] runs, int repeats, bool inside)
    {
        var least = int.MaxValue;
        for (var first = 1; first <= runs.Length; first++)
            if (One(runs[..first], repeats, inside) is { } one)
                least = Math.Min(least, first == runs.Length ? one : one + 1 + Row(runs[first..], repeats, inside));
        return least;
    }

    private static int? One((int Kind, int Count)[] runs, int repeats, bool inside)
    {
        if (runs.Length == 1) return 2;
        if (repeats == 0) return null;
        int? least = null;
        for (var times = 2; times <= runs.Length / 2; times++)
            if (runs.Length % times == 0 && runs.Length / times is var unit && Enumerable.Range(0, times).All(t => runs.Skip(t * unit).Take(unit).SequenceEqual(runs.Take(unit))))
                least = Least(least, Row(runs[..unit], repeats - 1, true) + 2 + (inside ? 1 : 0));
        for (var between = 1; between <= 3; between++)
            if (runs.Length % (between + 1) == 1 && runs.Length > 2 * between + 1 && runs[0].Count == 1
                && Enumerable.Range(0, runs.Length).All(i => runs[i] == runs[i % (between + 1)]))
                least = Least(least, 4 + (inside ? 1 : 0) + between * 2 + between - 1);
        return least;
    }

    private static int Least(int? one, int other) => one is { } known ? Math.Min(known, other) : other;
}
